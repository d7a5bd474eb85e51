// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/lanes/lanes_bar.h"

#include "ui/paint/marks.h"
#include "ui/style/segmented.h"
#include "ui/theme/figures.h"
#include "ui/widgets/flow_layout.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <algorithm>
#include <array>
#include <cmath>

namespace littoral::ui {

namespace {

struct DateSpan
{
    double back, ahead;
};
struct AgeSpan
{
    int days;
};
constexpr std::array kDateSpans{DateSpan{7, 7}, DateSpan{28, 21}, DateSpan{84, 28}, DateSpan{365, 28}};
constexpr std::array kAgeSpans{AgeSpan{28}, AgeSpan{63}, AgeSpan{120}, AgeSpan{365}};

QString weeksText(const DateSpan& span)
{
    if (span.back >= 365) {
        return LanesBar::tr("1 year back, 4 weeks");
    }
    return LanesBar::tr("%1 weeks back, %2 ahead", "how much of the time axis is shown")
        .arg(std::lround(span.back / 7))
        .arg(std::lround(span.ahead / 7));
}

} // namespace

MarkLegend::MarkLegend(const Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
}

void MarkLegend::setEntries(std::vector<Entry> entries)
{
    if (entries == m_entries) {
        return;
    }
    m_entries = std::move(entries);
    QStringList names;
    for (const Entry& entry : m_entries) {
        names << entry.name;
    }
    setAccessibleName(tr("Parameters on show: %1").arg(names.join(QStringLiteral(", "))));
    setToolTip(names.join(QLatin1Char('\n')));
    updateGeometry();
    update();
}

double MarkLegend::widthOf(const Entry& entry) const
{
    return m_theme.px(14) + figuresWidth(m_theme.font(11.5, 500), entry.name) + m_theme.px(14);
}

QSize MarkLegend::sizeHint() const
{
    // Little is asked for, what is left is taken: the controls come first.
    return {m_theme.px(90), m_theme.px(24)};
}

QSize MarkLegend::minimumSizeHint() const
{
    return {m_theme.px(30), m_theme.px(24)};
}

void MarkLegend::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setFont(m_theme.font(11.5, 500));
    const double more = m_theme.px(28);
    double used = 0.0;
    std::size_t count = 0;
    while (count < m_entries.size()) {
        const double next = used + widthOf(m_entries[count]);
        const bool last = count + 1 == m_entries.size();
        if (next + (last ? 0.0 : more) > width()) {
            break;
        }
        used = next;
        ++count;
    }
    if (count == 0) {
        return; // a bare number says nothing; the lane headers name the marks as well
    }
    const std::size_t left = m_entries.size() - count;
    double x = width() - used - (left > 0 ? more : 0.0);
    for (std::size_t i = 0; i < count; ++i) {
        const Entry& entry = m_entries[i];
        drawParameterMark(painter, m_theme, entry.parameter, {x + m_theme.px(4), height() / 2.0}, m_theme.px(kMarkSize),
                          m_theme[Token::Panel]);
        painter.setPen(m_theme[Token::Ink]);
        drawFigures(painter, QRectF(x + m_theme.px(13), 0, width(), height()), Qt::AlignVCenter | Qt::AlignLeft,
                    entry.name);
        x += widthOf(entry);
    }
    if (left > 0) {
        painter.setPen(m_theme[Token::Ink2]);
        drawFigures(painter, QRectF(x, 0, more, height()), Qt::AlignVCenter | Qt::AlignLeft,
                    tr("+%1", "further entries of the legend").arg(left));
    }
}

LanesBar::LanesBar(const Theme& theme, TimeAxis& axis, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_axis(axis)
{
    setAccessibleName(tr("Lanes, page bar"));
    makeControls();
    auto* whole = new QHBoxLayout(this);
    auto* controls = new QWidget;
    auto* flow = new FlowLayout(controls, 12);
    flow->setContentsMargins(0, 0, 0, 0);
    for (QWidget* widget : std::initializer_list<QWidget*>{m_mode, m_spanLabel, m_span, m_forecast, m_targets, m_done,
                                                           m_freeAmmonia, m_phases, m_filter}) {
        flow->addWidget(widget);
    }
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    controls->setSizePolicy(policy);
    whole->addWidget(controls);
    whole->addWidget(m_legend, 1);
    whole->addWidget(m_now);
    connect(&m_axis, &TimeAxis::modeChanged, this, &LanesBar::modeChanged);
    connect(&m_axis, &TimeAxis::rangeChanged, this, &LanesBar::rangeChanged);
    connect(&m_theme, &Theme::changed, this, &LanesBar::applyTheme);
    applyTheme();
    modeChanged();
}

QCheckBox* LanesBar::check(const QString& text, bool on)
{
    auto* box = new QCheckBox(text);
    box->setChecked(on);
    connect(box, &QCheckBox::toggled, this, &LanesBar::optionsChanged);
    return box;
}

void LanesBar::makeControls()
{
    m_mode = new SegmentedControl(tr("Time axis"), {tr("Calendar"), tr("Days since flooding")});
    m_spanLabel = new QLabel(tr("Span"));
    m_span = new QComboBox;
    m_span->setAccessibleName(tr("Span of the time axis"));
    m_span->setPlaceholderText(tr("as zoomed"));
    m_spanLabel->setBuddy(m_span);
    m_forecast = check(tr("Forecast"), true);
    m_targets = check(tr("Targets"), true);
    m_done = check(tr("Done work"), true);
    m_freeAmmonia = check(tr("Free ammonia"), false);
    m_phases = check(tr("Phases"), true);
    m_filter = new QLineEdit;
    m_filter->setAccessibleName(tr("Show only tanks whose name has"));
    m_filter->setPlaceholderText(tr("tank name"));
    m_filter->setClearButtonEnabled(true);
    m_filter->installEventFilter(this);
    m_filter->hide();
    m_legend = new MarkLegend(m_theme);
    m_now = new QPushButton(tr("Now"));
    m_now->setProperty("keyHint", QStringLiteral("N"));
    connect(m_mode, &SegmentedControl::chosen, this,
            [this](int index) { m_axis.setMode(index == 0 ? AxisMode::Calendar : AxisMode::Age); });
    connect(m_span, &QComboBox::activated, this, &LanesBar::applySpan);
    connect(m_now, &QPushButton::clicked, this, &LanesBar::nowWanted);
    connect(m_filter, &QLineEdit::textChanged, this, &LanesBar::filterChanged);
}

LaneOptions LanesBar::options() const
{
    return {m_forecast->isChecked(), m_targets->isChecked(), m_done->isChecked(), m_freeAmmonia->isChecked(),
            m_phases->isChecked()};
}

void LanesBar::setExtent(qint64 first, qint64 last, double oldestDays)
{
    m_first = first;
    m_last = last;
    m_oldestDays = oldestDays;
}

void LanesBar::fillSpans()
{
    m_span->clear();
    if (m_axis.mode() == AxisMode::Calendar) {
        for (const DateSpan& span : kDateSpans) {
            m_span->addItem(weeksText(span));
        }
    } else {
        for (const AgeSpan& span : kAgeSpans) {
            m_span->addItem(tr("Day 0 to %1").arg(span.days));
        }
    }
    m_span->addItem(tr("Everything"));
    rangeChanged();
}

void LanesBar::applySpan(int index)
{
    m_applying = true;
    const int last = m_span->count() - 1;
    if (m_axis.mode() == AxisMode::Calendar) {
        if (index == last) {
            const qint64 span = std::max<qint64>(m_last - m_first, 14 * kDayMs);
            m_axis.setRange(m_first - span / 50, m_last + span / 50);
        } else {
            const DateSpan& span = kDateSpans[static_cast<std::size_t>(index)];
            m_axis.showAround(span.back, span.ahead);
        }
    } else {
        const double days = index == last ? m_oldestDays : kAgeSpans[static_cast<std::size_t>(index)].days;
        m_axis.setRange(-kDayMs / 4, static_cast<qint64>((days + 0.25) * static_cast<double>(kDayMs)));
    }
    m_applying = false;
    m_span->setCurrentIndex(index);
}

void LanesBar::rangeChanged()
{
    if (m_applying) {
        return;
    }
    // The choice stands for as long as the range is as wide as it says.
    const double days = static_cast<double>(m_axis.to() - m_axis.from()) / static_cast<double>(kDayMs);
    int match = -1;
    if (m_axis.mode() == AxisMode::Calendar) {
        for (std::size_t i = 0; i < kDateSpans.size(); ++i) {
            match = std::abs(kDateSpans[i].back + kDateSpans[i].ahead - days) < 0.01 ? static_cast<int>(i) : match;
        }
    } else {
        for (std::size_t i = 0; i < kAgeSpans.size(); ++i) {
            match = std::abs(kAgeSpans[i].days + 0.5 - days) < 0.01 ? static_cast<int>(i) : match;
        }
    }
    m_span->setCurrentIndex(match);
}

void LanesBar::modeChanged()
{
    const bool age = m_axis.mode() == AxisMode::Age;
    m_mode->setCurrent(age ? 1 : 0);
    m_phases->setVisible(age);
    m_freeAmmonia->setVisible(!age);
    m_now->setAccessibleDescription(age ? tr("Shows now in the selected lane") : tr("Shows now"));
    fillSpans();
    emit optionsChanged();
}

void LanesBar::openFilter()
{
    m_filter->show();
    m_filter->setFocus(Qt::ShortcutFocusReason);
    m_filter->selectAll();
}

bool LanesBar::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_filter && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Escape) {
            m_filter->clear();
            m_filter->hide();
            emit filterClosed();
            return true;
        }
        if (key == Qt::Key_Return || key == Qt::Key_Enter) {
            emit filterClosed();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

void LanesBar::applyTheme()
{
    layout()->setContentsMargins(m_theme.px(14), m_theme.px(6), m_theme.px(14), m_theme.px(6));
    layout()->setSpacing(m_theme.px(12));
    QFont small = m_theme.font(12.5);
    for (QWidget* widget : std::initializer_list<QWidget*>{m_mode, m_span, m_spanLabel, m_forecast, m_targets, m_done,
                                                           m_freeAmmonia, m_phases, m_filter, m_now}) {
        widget->setFont(small);
    }
    const auto segments = m_mode->findChildren<QPushButton*>();
    for (QPushButton* segment : segments) {
        segment->setFont(small);
    }
    m_filter->setMinimumWidth(m_theme.px(140));
    m_legend->updateGeometry();
    update();
}

void LanesBar::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme[Token::Panel]);
    painter.fillRect(QRect(0, height() - 1, width(), 1), m_theme[Token::Rule]);
}

} // namespace littoral::ui
