// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/cycle/cycle_bar.h"

#include "ui/style/segmented.h"
#include "ui/widgets/flow_layout.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>
#include <QSignalBlocker>

namespace littoral::ui {

CycleBar::CycleBar(Theme& theme, TimeAxis& axis, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_axis(axis)
    , m_name(new Text(theme, TextStyle::Name))
    , m_facts(new Text(theme, TextStyle::Body))
    , m_mode(new SegmentedControl(tr("Time axis"), {tr("Calendar"), tr("Days since flooding")}))
    , m_reference(new QCheckBox(tr("Earlier layout at the same age")))
    , m_fit(new Text(theme, TextStyle::Secondary))
    , m_table(new QPushButton(tr("Table")))
    , m_refit(new QPushButton(tr("Refit")))
{
    setAccessibleName(tr("Page bar of Cycle"));
    m_facts->setToken(Token::Ink2);
    m_table->setCheckable(true);
    m_table->setProperty("keyHint", QStringLiteral("T"));
    m_table->setAccessibleName(tr("Show the charts as a table"));
    m_refit->setProperty("keyHint", QStringLiteral("R"));
    m_refit->setAccessibleName(tr("Fit the forecast to what is entered now"));
    m_reference->hide();
    auto* flowing = new QWidget;
    auto* flow = new FlowLayout(flowing, theme.px(12));
    flow->setContentsMargins(0, 0, 0, 0);
    for (QWidget* each : std::initializer_list<QWidget*>{m_name, m_facts, m_mode, m_reference}) {
        flow->addWidget(each);
    }
    auto* line = new QHBoxLayout(this);
    line->setContentsMargins(16, 6, 16, 6);
    line->setSpacing(12);
    line->addWidget(flowing, 1);
    line->addWidget(m_fit);
    line->addWidget(m_table, 0, Qt::AlignTop);
    line->addWidget(m_refit, 0, Qt::AlignTop);
    const auto showMode = [this] { m_mode->setCurrent(m_axis.mode() == AxisMode::Age ? 1 : 0); };
    showMode();
    connect(m_mode, &SegmentedControl::chosen, this,
            [this](int index) { m_axis.setMode(index == 1 ? AxisMode::Age : AxisMode::Calendar); });
    connect(&axis, &TimeAxis::modeChanged, this, showMode);
    connect(m_reference, &QCheckBox::toggled, this, &CycleBar::referenceChanged);
    connect(m_table, &QPushButton::toggled, this, &CycleBar::tableWanted);
    connect(m_refit, &QPushButton::clicked, this, &CycleBar::refitWanted);
    connect(&theme, &Theme::changed, this, qOverload<>(&QWidget::update));
}

void CycleBar::setModel(const CycleModel& model)
{
    m_name->setText(model.name);
    m_facts->setText(model.facts);
    m_facts->setVisible(!model.facts.isEmpty());
    m_fit->setText(model.fitLine);
    m_refit->setToolTip(model.fitLine);
    m_refit->setAccessibleDescription(model.fitLine);
    m_reference->setText(model.referenceName);
    m_reference->setAccessibleName(model.referenceName);
    m_reference->setVisible(!model.referenceName.isEmpty());
    const bool charts = model.layout.value != 0;
    m_mode->setEnabled(charts);
    m_table->setEnabled(charts);
    m_refit->setEnabled(charts);
    layout()->invalidate();
}

void CycleBar::setTable(bool table)
{
    const QSignalBlocker quiet(m_table);
    m_table->setChecked(table);
}

bool CycleBar::withReference() const
{
    return m_reference->isChecked() && !m_reference->isHidden();
}

void CycleBar::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    // Where the line does not fit it is still the tip and description of the button beside it.
    m_fit->setVisible(width() >= m_theme.px(1240));
}

void CycleBar::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme[Token::Sunk]);
    painter.fillRect(QRect(0, height() - 1, width(), 1), m_theme[Token::Rule]);
}

} // namespace littoral::ui
