// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/style/segmented.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QPushButton>

namespace littoral::ui {

namespace {

QString placeOf(qsizetype index, qsizetype count)
{
    if (count == 1) {
        return QStringLiteral("only");
    }
    if (index == 0) {
        return QStringLiteral("first");
    }
    return index == count - 1 ? QStringLiteral("last") : QStringLiteral("middle");
}

} // namespace

SegmentedControl::SegmentedControl(const QString& accessibleName, const QStringList& choices, QWidget* parent)
    : QWidget(parent)
    , m_group(new QButtonGroup(this))
{
    setAccessibleName(accessibleName);
    auto* line = new QHBoxLayout(this);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(0);
    m_group->setExclusive(true);
    for (qsizetype i = 0; i < choices.size(); ++i) {
        auto* button = new QPushButton(choices[i]);
        button->setCheckable(true);
        button->setProperty("segment", placeOf(i, choices.size()));
        button->setAccessibleName(choices[i]);
        button->setAccessibleDescription(accessibleName);
        m_group->addButton(button, static_cast<int>(i));
        line->addWidget(button);
    }
    if (auto* first = m_group->button(0)) {
        first->setChecked(true);
    }
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    connect(m_group, &QButtonGroup::idClicked, this, &SegmentedControl::chosen);
}

int SegmentedControl::current() const
{
    return m_group->checkedId();
}

void SegmentedControl::setCurrent(int index)
{
    if (auto* button = m_group->button(index)) {
        button->setChecked(true);
    }
}

} // namespace littoral::ui
