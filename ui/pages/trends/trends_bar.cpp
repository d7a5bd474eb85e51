// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/trends/trends_bar.h"

#include "ui/style/segmented.h"
#include "ui/widgets/call_field.h"
#include "ui/widgets/flow_layout.h"

#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QMenu>
#include <QPainter>
#include <QPushButton>
#include <QSignalBlocker>
#include <array>
#include <cmath>

namespace littoral::ui {

namespace {

struct DateSpan
{
    double back, ahead;
};
constexpr std::array kDateSpans{DateSpan{14, 7}, DateSpan{28, 21}, DateSpan{84, 28}, DateSpan{365, 28}};
constexpr std::array kAgeSpans{28, 42, 63, 120, 365};
constexpr double kMargin_d = 0.25; // so that the first and last marks are whole

qint64 days(double count)
{
    return static_cast<qint64>(count * static_cast<double>(kDayMs));
}

} // namespace

TrendsBar::TrendsBar(const Theme& theme, TimeAxis& axis, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_axis(axis)
    , m_arrangement(new SegmentedControl(tr("Arrangement"), {tr("Overlay"), tr("Stacked"), tr("Grid")}))
    , m_mode(new SegmentedControl(tr("Time axis"), {tr("Calendar"), tr("Days since flooding")}))
    , m_spanLabel(new QLabel(tr("Span")))
    , m_span(new QComboBox)
    , m_targets(check(tr("Targets"), true))
    , m_events(check(tr("Events"), true))
    , m_forecast(check(tr("Forecast"), true))
    , m_expected(check(tr("Expected"), true))
    , m_steps(check(tr("Kit steps"), true))
    , m_log(check(tr("Log scale"), false))
    , m_side(new SegmentedControl(tr("Beside the charts"), {tr("Choose"), tr("Read")}))
    , m_table(new QPushButton(tr("Table")))
    , m_views(new QPushButton(tr("Views")))
    , m_viewsMenu(new QMenu(this))
    , m_viewName(new CallField(tr("Name of this view"), tr("name of the view")))
    , m_export(new QPushButton(tr("Export")))
    , m_exportMenu(new QMenu(this))
{
    m_span->setAccessibleName(tr("Span of the time axis"));
    m_span->setPlaceholderText(tr("as zoomed"));
    m_spanLabel->setBuddy(m_span);
    m_expected->setToolTip(tr("What doses and water changes should have come to, with the range that uptake leaves"));
    m_steps->setToolTip(tr("Half a kit step either side of each reading"));
    m_table->setCheckable(true);
    m_table->setProperty("keyHint", QStringLiteral("T"));
    m_table->setAccessibleDescription(tr("The same values as a table"));
    m_views->setProperty("keyHint", QStringLiteral("V"));
    m_views->setAccessibleDescription(tr("Views that were kept under a name"));
    m_viewsMenu->setAccessibleName(tr("Views"));
    m_export->setProperty("keyHint", QStringLiteral("X"));
    makeExport();
    auto* line = new FlowLayout(this, 12);
    for (QWidget* widget :
         std::initializer_list<QWidget*>{m_arrangement, m_mode, m_spanLabel, m_span, m_targets, m_events, m_forecast,
                                         m_expected, m_steps, m_log, m_side, m_table, m_views, m_viewName, m_export}) {
        line->addWidget(widget);
    }
    connect(m_arrangement, &SegmentedControl::chosen, this, &TrendsBar::optionsChanged);
    connect(m_mode, &SegmentedControl::chosen, this,
            [this](int index) { m_axis.setMode(index == 0 ? AxisMode::Calendar : AxisMode::Age); });
    connect(m_span, &QComboBox::activated, this, &TrendsBar::applySpan);
    connect(m_side, &SegmentedControl::chosen, this, &TrendsBar::sideChosen);
    connect(m_table, &QPushButton::clicked, this, &TrendsBar::tableWanted);
    connect(m_views, &QPushButton::clicked, this, &TrendsBar::openViews);
    connect(m_viewName, &CallField::given, this, [this](const QString& name) {
        m_viewName->leave();
        emit viewSaveWanted(name);
    });
    connect(m_export, &QPushButton::clicked, this, &TrendsBar::openExport);
    connect(&axis, &TimeAxis::modeChanged, this, [this] {
        m_mode->setCurrent(m_axis.mode() == AxisMode::Age ? 1 : 0);
        fillSpans();
    });
    connect(&axis, &TimeAxis::rangeChanged, this, &TrendsBar::rangeChanged);
    connect(&theme, &Theme::changed, this, &TrendsBar::applyTheme);
    m_mode->setCurrent(axis.mode() == AxisMode::Age ? 1 : 0);
    m_side->setCurrent(1);
    m_side->hide();
    fillSpans();
    applyTheme();
}

QCheckBox* TrendsBar::check(const QString& text, bool on)
{
    auto* box = new QCheckBox(text);
    box->setChecked(on);
    connect(box, &QCheckBox::toggled, this, &TrendsBar::optionsChanged);
    return box;
}

void TrendsBar::makeExport()
{
    m_exportMenu->setAccessibleName(tr("Export what is on show"));
    const auto add = [this](const QString& text, TrendFile kind) {
        connect(m_exportMenu->addAction(text), &QAction::triggered, this, [this, kind] { emit exportWanted(kind); });
    };
    add(tr("&Picture (PNG)..."), TrendFile::Png);
    add(tr("&Drawing (SVG)..."), TrendFile::Svg);
    add(tr("&Values (CSV)..."), TrendFile::Csv);
}

void TrendsBar::openExport()
{
    m_exportMenu->setActiveAction(m_exportMenu->actions().value(0));
    m_exportMenu->popup(m_export->mapToGlobal(QPoint(0, m_export->height() + 2)));
}

TrendOptions TrendsBar::options() const
{
    return {static_cast<TrendArrangement>(m_arrangement->current()),
            m_targets->isChecked(),
            m_events->isChecked(),
            m_forecast->isChecked(),
            m_expected->isChecked(),
            m_steps->isChecked(),
            m_log->isChecked()};
}

void TrendsBar::setOptions(const TrendOptions& options)
{
    if (options == this->options()) {
        return;
    }
    {
        const QSignalBlocker blocker(this); // said once, when all of it holds
        m_arrangement->setCurrent(static_cast<int>(options.arrangement));
        m_targets->setChecked(options.targets);
        m_events->setChecked(options.events);
        m_forecast->setChecked(options.forecast);
        m_steps->setChecked(options.steps);
        m_log->setChecked(options.logarithmic);
    }
    emit optionsChanged();
}

void TrendsBar::setViews(const QStringList& names, bool writable)
{
    m_viewsMenu->clear();
    for (const QString& name : names) {
        QString shown = name;
        QAction* action = m_viewsMenu->addAction(shown.replace(QLatin1Char('&'), QStringLiteral("&&")));
        connect(action, &QAction::triggered, this, [this, name] { emit viewWanted(name); });
    }
    if (names.isEmpty()) {
        m_viewsMenu->addAction(tr("No view is kept yet"))->setEnabled(false);
    }
    m_viewsMenu->addSeparator();
    QAction* save = m_viewsMenu->addAction(tr("&Keep this view..."));
    connect(save, &QAction::triggered, this, &TrendsBar::askViewName);
    save->setEnabled(writable);
    QMenu* remove = m_viewsMenu->addMenu(tr("&Remove"));
    remove->setAccessibleName(tr("Remove a view"));
    remove->setEnabled(writable && !names.isEmpty());
    for (const QString& name : names) {
        QString shown = name;
        QAction* action = remove->addAction(shown.replace(QLatin1Char('&'), QStringLiteral("&&")));
        connect(action, &QAction::triggered, this, [this, name] { emit viewRemoveWanted(name); });
    }
}

void TrendsBar::openViews()
{
    m_viewsMenu->setActiveAction(m_viewsMenu->actions().value(0));
    m_viewsMenu->popup(m_views->mapToGlobal(QPoint(0, m_views->height() + 2)));
}

void TrendsBar::askViewName()
{
    m_viewName->call();
}

void TrendsBar::setArrangement(TrendArrangement arrangement)
{
    m_arrangement->setCurrent(static_cast<int>(arrangement));
    emit optionsChanged();
}

void TrendsBar::setExtent(qint64 from, qint64 to)
{
    m_from = from;
    m_to = to;
}

void TrendsBar::setTable(bool table)
{
    m_table->setChecked(table);
}

void TrendsBar::setOneSide(bool one)
{
    m_side->setVisible(one);
}

void TrendsBar::setSide(int side)
{
    m_side->setCurrent(side);
    emit sideChosen(side);
}

int TrendsBar::side() const
{
    return m_side->current();
}

void TrendsBar::fillSpans()
{
    m_span->clear();
    if (m_axis.mode() == AxisMode::Calendar) {
        for (const DateSpan& span : kDateSpans) {
            m_span->addItem(span.back >= 365 ? tr("1 year back, 4 weeks")
                                             : tr("%1 weeks back, %2 ahead", "how much of the time axis is shown")
                                                   .arg(std::lround(span.back / 7))
                                                   .arg(std::lround(span.ahead / 7)));
        }
    } else {
        for (const int span : kAgeSpans) {
            m_span->addItem(tr("Day 0 to %1").arg(span));
        }
    }
    m_span->addItem(tr("Everything"));
    rangeChanged();
}

void TrendsBar::applySpan(int index)
{
    m_applying = true;
    if (index == m_span->count() - 1) {
        const qint64 margin = std::max<qint64>((m_to - m_from) / 60, days(kMargin_d));
        m_axis.setRange(m_from - margin, m_to + margin);
    } else if (m_axis.mode() == AxisMode::Calendar) {
        const DateSpan& span = kDateSpans[static_cast<std::size_t>(index)];
        m_axis.showAround(span.back, span.ahead);
    } else {
        m_axis.setRange(-days(kMargin_d), days(kAgeSpans[static_cast<std::size_t>(index)] + kMargin_d));
    }
    m_applying = false;
    m_span->setCurrentIndex(index);
}

void TrendsBar::rangeChanged()
{
    if (m_applying) {
        return;
    }
    // The choice stands for as long as the range is as wide as it says.
    const double wide = static_cast<double>(m_axis.to() - m_axis.from()) / static_cast<double>(kDayMs);
    int match = -1;
    if (m_axis.mode() == AxisMode::Calendar) {
        for (std::size_t i = 0; i < kDateSpans.size(); ++i) {
            match = std::abs(kDateSpans[i].back + kDateSpans[i].ahead - wide) < 0.01 ? static_cast<int>(i) : match;
        }
    } else {
        for (std::size_t i = 0; i < kAgeSpans.size(); ++i) {
            const bool fits =
                std::abs(kAgeSpans[i] + 2 * kMargin_d - wide) < 0.01 && m_axis.from() <= 0 && m_axis.from() > -kDayMs;
            match = fits ? static_cast<int>(i) : match;
        }
    }
    m_span->setCurrentIndex(match);
}

void TrendsBar::applyTheme()
{
    layout()->setContentsMargins(m_theme.px(14), m_theme.px(6), m_theme.px(14), m_theme.px(6));
    const QFont small = m_theme.font(12.5);
    const auto all = findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly);
    for (QWidget* widget : all) {
        widget->setFont(small);
        const auto segments = widget->findChildren<QPushButton*>();
        for (QPushButton* segment : segments) {
            segment->setFont(small);
        }
    }
    update();
}

void TrendsBar::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme[Token::Panel]);
    painter.fillRect(QRect(0, height() - 1, width(), 1), m_theme[Token::Rule]);
}

} // namespace littoral::ui
