// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/stock/load_chart.h"

#include "core/record/parameter.h"
#include "core/wording/numbers.h"
#include "ui/paint/marks.h"
#include "ui/theme/figures.h"

#include <QFontMetrics>
#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

constexpr double kHoursPerDay = 24.0;

double shown(const QString& parameter, double value)
{
    return record::findParameter(parameter)->shown().fromCanonical(value);
}

QString load(double value)
{
    return wording::numberText(value, value < 10.0 ? 1 : 0);
}

} // namespace

LoadChart::LoadChart(Theme& theme, QWidget* parent)
    : ChartWidget(parent)
    , m_theme(theme)
    , m_ammonia(theme)
    , m_nitrite(theme)
{
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Load and water after adding"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&theme, &Theme::changed, this, [this] {
        updateGeometry();
        update();
    });
}

void LoadChart::setTrial(std::shared_ptr<const facade::AdditionTrial> trial)
{
    m_trial = std::move(trial);
    if (m_trial != nullptr) {
        setPlot(m_ammonia, u"tan"_s, m_trial->ammonia, m_trial->ammoniaBefore, m_trial->ammoniaLimit);
        setPlot(m_nitrite, u"no2"_s, m_trial->nitrite, m_trial->nitriteBefore, m_trial->nitriteLimit);
    }
    partsChanged();
    setAccessibleDescription(partSentence(m_part));
    update();
}

double LoadChart::perHour(double mgN_per_L_d) const
{
    return mgN_per_L_d * m_trial->net_L / kHoursPerDay;
}

QString LoadChart::partSentence(int part) const
{
    if (m_trial == nullptr) {
        return {};
    }
    const facade::AdditionTrial& trial = *m_trial;
    if (part == 0) {
        return tr("Load now %1 mg nitrogen an hour, with them %2 more; the filter can take %3 to %4 today, 8 in 10.")
            .arg(load(perHour(trial.loadNow)), load(perHour(trial.loadAdded)), load(perHour(trial.capacity[1])),
                 load(perHour(trial.capacity[5])));
    }
    const QString parameter = part == 1 ? u"tan"_s : u"no2"_s;
    const auto& bands = part == 1 ? trial.ammonia : trial.nitrite;
    double high = 0.0;
    for (const forecast::Band& band : bands) {
        high = std::max(high, band[5]);
    }
    return tr("%1 after adding: upper end of the 8-in-10 range %2 at most, limit %3.")
        .arg(wording::parameterName(parameter), wording::valueWithUnit(parameter, high),
             wording::valueWithUnit(parameter, part == 1 ? trial.ammoniaLimit : trial.nitriteLimit));
}

int LoadChart::barHeight() const
{
    return QFontMetrics(m_theme.font(11)).height() * 2 + m_theme.px(38);
}

int LoadChart::plotHeight() const
{
    return QFontMetrics(m_theme.font(11)).height() * 2 + m_theme.px(66);
}

QRect LoadChart::partRect(int part) const
{
    if (part == 0) {
        return {0, 0, width(), barHeight()};
    }
    return {0, barHeight() + (part - 1) * plotHeight(), width(), plotHeight()};
}

QSize LoadChart::sizeHint() const
{
    return {m_theme.px(320), barHeight() + 2 * plotHeight() + 4};
}

QSize LoadChart::minimumSizeHint() const
{
    return {m_theme.px(180), sizeHint().height()};
}

void LoadChart::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (m_trial != nullptr) {
        paintBar(painter, partRect(0));
        paintPlot(painter, partRect(1), 1);
        paintPlot(painter, partRect(2), 2);
    } else {
        painter.setFont(m_theme.font(12));
        painter.setPen(m_theme[Token::Ink2]);
        painter.drawText(rect(), Qt::AlignCenter | Qt::TextWordWrap,
                         tr("Choose an animal: its load is run through this tank's forecast."));
    }
    paintFocusRing(painter, m_theme[Token::Accent]);
}

void LoadChart::paintBar(QPainter& painter, const QRectF& room) const
{
    const QFont small = m_theme.font(11);
    const int line = QFontMetrics(small).height();
    const double now = perHour(m_trial->loadNow);
    const double added = perHour(m_trial->loadAdded);
    const double low = perHour(m_trial->capacity[1]);
    const double high = perHour(m_trial->capacity[5]);
    const double most = std::max({now + added, high, 0.1}) * 1.12;
    const QRectF bar(room.left() + 2, room.top() + line + m_theme.px(8), room.width() - 4, m_theme.px(16));
    const auto x = [&](double value) { return bar.left() + bar.width() * value / most; };
    painter.setFont(small);
    painter.setPen(m_theme[Token::Ink2]);
    painter.drawText(QRectF(room.left(), room.top(), room.width(), line), Qt::AlignLeft,
                     tr("Load, mg nitrogen an hour"));
    painter.setPen(QPen(m_theme[Token::Rule2], 1));
    painter.setBrush(m_theme[Token::Sunk]);
    painter.drawRect(bar);
    painter.fillRect(QRectF(x(0), bar.top() + 1, x(now) - x(0), bar.height() - 2), m_theme[Token::Ink3]);
    painter.fillRect(QRectF(x(now), bar.top() + 1, std::max(2.0, x(now + added) - x(now)), bar.height() - 2),
                     m_theme[Token::Accent]);
    QColor can = m_theme[Token::Ok];
    painter.setPen(QPen(can, 2));
    painter.drawLine(QPointF(x(low), bar.top() - m_theme.px(4)), QPointF(x(low), bar.bottom() + m_theme.px(4)));
    painter.drawLine(QPointF(x(high), bar.top() - m_theme.px(4)), QPointF(x(high), bar.bottom() + m_theme.px(4)));
    can.setAlphaF(0.22F);
    painter.fillRect(
        QRectF(x(low), bar.top() - m_theme.px(4), std::max(2.0, x(high) - x(low)), bar.height() + m_theme.px(8)), can);
    const QRectF below(room.left() + 2, bar.bottom() + m_theme.px(6), room.width() - 4, line);
    const QString left = tr("now %1, with them +%2").arg(load(now), load(added));
    const QString right = tr("filter can take %1–%2").arg(load(low), load(high));
    painter.setPen(m_theme[Token::Ink]);
    drawFigures(painter, below, Qt::AlignLeft, left);
    painter.setPen(m_theme[Token::Ok]);
    const bool fits = figuresWidth(small, left) + figuresWidth(small, right) + m_theme.px(10) < below.width();
    drawFigures(painter, fits ? below : QRectF(room.left() + 2, room.top(), room.width() - 4, line), Qt::AlignRight,
                right);
}

void LoadChart::setPlot(CardChart& chart, const QString& parameter, const std::vector<forecast::Band>& with,
                        const std::vector<forecast::Band>& without, double limit) const
{
    CardChartData data;
    data.parameter = parameter;
    data.limit = shown(parameter, limit);
    const std::vector<double>& days = m_trial->days;
    for (std::size_t i = 0; i < with.size() && i < days.size(); ++i) {
        const double day = days[i] - days.front();
        data.low.emplace_back(day, shown(parameter, with[i][1]));
        data.middle.emplace_back(day, shown(parameter, with[i][3]));
        data.high.emplace_back(day, shown(parameter, with[i][5]));
        data.before.emplace_back(day, shown(parameter, without[i][3]));
    }
    chart.setData(data);
}

void LoadChart::paintPlot(QPainter& painter, const QRectF& room, int part)
{
    const QString parameter = part == 1 ? u"tan"_s : u"no2"_s;
    const double limit = shown(parameter, part == 1 ? m_trial->ammoniaLimit : m_trial->nitriteLimit);
    CardChart& chart = part == 1 ? m_ammonia : m_nitrite;
    const QFont small = m_theme.font(11);
    const int line = QFontMetrics(small).height();
    painter.setFont(small);
    drawParameterMark(painter, m_theme, parameter, QPointF(room.left() + m_theme.px(5), room.top() + line / 2.0),
                      m_theme.px(kMarkSize), m_theme[Token::Panel]);
    painter.setPen(m_theme[Token::Ink2]);
    painter.drawText(QRectF(room.left() + m_theme.px(14), room.top(), room.width(), line), Qt::AlignLeft,
                     tr("%1 after adding, %2")
                         .arg(wording::parameterName(parameter), record::findParameter(parameter)->shown().label));
    if (m_trial->days.size() < 2) {
        return;
    }
    const QRectF plot = chart.paint(
        painter, QRectF(room.left(), room.top() + line, room.width(), room.height() - 2 * line - m_theme.px(6)));
    const double y = chart.y(limit, plot);
    painter.setFont(small);
    painter.setPen(m_theme[Token::Ink]);
    drawFigures(painter, QRectF(plot.left(), y - line - 1, plot.width(), line), Qt::AlignRight | Qt::AlignBottom,
                tr("limit %1").arg(wording::numberText(limit, 2)));
    painter.setPen(m_theme[Token::Ink3]);
    const QRectF axis(plot.left(), plot.bottom() + 2, plot.width(), line);
    painter.drawText(axis, Qt::AlignLeft, tr("today"));
    drawFigures(painter, axis, Qt::AlignRight,
                tr("+%1 days").arg(qRound(m_trial->days.back() - m_trial->days.front())));
}

void LoadChart::keyPressEvent(QKeyEvent* event)
{
    const int step = event->key() == Qt::Key_Down ? 1 : event->key() == Qt::Key_Up ? -1 : 0;
    if (step == 0 || m_trial == nullptr) {
        event->ignore();
        return;
    }
    m_part = std::clamp(m_part + step, 0, partCount() - 1);
    setAccessibleDescription(partSentence(m_part));
    announcePart();
}

void LoadChart::focusInEvent(QFocusEvent* event)
{
    ChartWidget::focusInEvent(event);
    announcePart();
    update();
}

void LoadChart::focusOutEvent(QFocusEvent* event)
{
    ChartWidget::focusOutEvent(event);
    update();
}

} // namespace littoral::ui
