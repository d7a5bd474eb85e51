// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/editors/bulk_bar.h"

#include "ui/models/entries_model.h"
#include "ui/models/entry_words.h"
#include "ui/widgets/flow_layout.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

/// A field and the button that uses it stay together when the bar wraps.
QWidget* together(QWidget* field, QWidget* button)
{
    auto* pair = new QWidget;
    auto* line = new QHBoxLayout(pair);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(4);
    line->addWidget(field);
    line->addWidget(button);
    return pair;
}

} // namespace

BulkBar::BulkBar(facade::Keeper& keeper, Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_keeper(keeper)
    , m_count(new Text(theme, TextStyle::SecondaryStrong))
    , m_shift(new QLineEdit)
    , m_subject(new QLineEdit)
    , m_tank(new QComboBox)
    , m_kit(new QComboBox)
{
    setAccessibleName(tr("Change the selected records together"));
    m_shift->setPlaceholderText(tr("2 h, -1 d"));
    m_shift->setAccessibleName(tr("Later by; minus for earlier"));
    m_subject->setPlaceholderText(tr("subject"));
    m_subject->setAccessibleName(tr("Subject for the selected entries"));
    m_tank->setAccessibleName(tr("Tank for the selected records"));
    m_kit->setAccessibleName(tr("Kit for the selected readings"));
    for (QLineEdit* field : {m_shift, m_subject}) {
        field->setMinimumWidth(theme.px(90));
        field->setMaximumWidth(theme.px(140));
    }
    auto* flow = new FlowLayout(this, 10);
    flow->setContentsMargins(0, 0, 0, 0);
    auto* move = addButton(tr("Move in time"), tr("Move the selected records in time"));
    auto* put = addButton(tr("Put into tank"), tr("Put the selected records into that tank"));
    auto* kit = addButton(tr("Set kit"), tr("Set the kit of the selected readings"));
    auto* subject = addButton(tr("Set subject"), tr("Set the subject of the selected entries"));
    flow->addWidget(m_count);
    flow->addWidget(together(m_shift, move));
    flow->addWidget(together(m_tank, put));
    flow->addWidget(together(m_kit, kit));
    flow->addWidget(together(m_subject, subject));
    connect(move, &QPushButton::clicked, this, &BulkBar::move);
    connect(subject, &QPushButton::clicked, this, &BulkBar::takeSubject);
    connect(put, &QPushButton::clicked, this, [this] {
        facade::BulkChange change;
        change.tank.value = m_tank->currentData().toLongLong();
        emit wanted(change);
    });
    connect(kit, &QPushButton::clicked, this, [this] {
        facade::BulkChange change;
        change.kit = record::KitId{m_kit->currentData().toLongLong()};
        emit wanted(change);
    });
    setSelected(0);
}

QPushButton* BulkBar::addButton(const QString& text, const QString& name)
{
    auto* button = new QPushButton(text);
    button->setAccessibleName(name);
    m_buttons << button;
    return button;
}

void BulkBar::setSelected(int count)
{
    m_count->setText(tr("%n selected", nullptr, count));
    for (QPushButton* button : std::as_const(m_buttons)) {
        button->setEnabled(count > 0 && !m_keeper.isReadOnly());
    }
}

void BulkBar::fillChoices()
{
    const QVariant tank = m_tank->currentData();
    const QVariant kit = m_kit->currentData();
    m_tank->clear();
    for (const record::Tank& it : m_keeper.row().tanks) {
        m_tank->addItem(it.name, it.id.value);
    }
    m_kit->clear();
    m_kit->addItem(tr("no kit"), 0);
    for (const record::TestKit& it : m_keeper.row().kits) {
        const record::Parameter* parameter = record::findParameter(it.parameter);
        m_kit->addItem(
            tr("%1, %2", "kit, what it reads").arg(it.name, parameter == nullptr ? it.parameter : parameter->name),
            it.id.value);
    }
    m_tank->setCurrentIndex(std::max(0, m_tank->findData(tank)));
    m_kit->setCurrentIndex(std::max(0, m_kit->findData(kit)));
}

void BulkBar::move()
{
    const auto shift = shiftFrom(m_shift->text());
    if (!shift || *shift == 0) {
        emit notUnderstood(tr("\"%1\" is not a span of time. Type 2 h, 90 min, 1 d or 1 w, with a minus for earlier.")
                               .arg(m_shift->text().trimmed()));
        m_shift->setFocus();
        return;
    }
    facade::BulkChange change;
    change.shift_ms = shift;
    emit wanted(change);
}

void BulkBar::takeSubject()
{
    const QString typed = m_subject->text().simplified();
    if (typed.isEmpty()) {
        emit notUnderstood(tr("Type the subject the entries are to have."));
        m_subject->setFocus();
        return;
    }
    facade::BulkChange change;
    // A code the rules know, whichever kind of entry it belongs to, else the words as typed.
    QString kept = typed;
    for (int kind = 0; kind <= static_cast<int>(record::EntryKind::Note) && kept == typed; ++kind) {
        kept = subjectFrom(static_cast<record::EntryKind>(kind), typed);
    }
    change.subject = kept;
    emit wanted(change);
}

} // namespace littoral::ui
