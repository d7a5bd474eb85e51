// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/rounds/reading_sparkline.h"

#include "core/wording/numbers.h"
#include "ui/models/day_words.h"
#include "ui/paint/marks.h"
#include "ui/paint/value_scale.h"
#include "ui/theme/figures.h"

#include <QFontMetrics>
#include <QLocale>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>

namespace littoral::ui {

namespace {
constexpr qint64 kDay = 86'400'000;
constexpr int kDaysBack = 21;
constexpr int kDaysAhead = 5;
} // namespace

double ReadingSparkline::Frame::x(qint64 at) const
{
    return area.left() + static_cast<double>(at - from) / static_cast<double>(to - from) * area.width();
}

double ReadingSparkline::Frame::y(double value) const
{
    return area.bottom() - (value - low) / (high - low) * area.height();
}

ReadingSparkline::ReadingSparkline(Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
{
    setAccessibleName(tr("Last three weeks of this parameter"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::MinimumExpanding);
    connect(&theme, &Theme::changed, this, [this] {
        updateGeometry();
        update();
    });
}

void ReadingSparkline::clear()
{
    m_parameter.clear();
    m_points.clear();
    m_band.clear();
    m_typed.reset();
    update();
}

void ReadingSparkline::show(const record::LayoutRecord& layout, const record::Parameter& parameter,
                            const record::Moment& now, const facade::ForecastResult* forecast)
{
    m_parameter = parameter.key;
    m_now = now.utcMs();
    m_offset = now.offsetSeconds();
    m_points.clear();
    m_band.clear();
    m_typed.reset();
    const qint64 from = m_now - kDaysBack * kDay;
    for (const record::Reading* reading : layout.readingsOf(parameter.key)) {
        if (reading->at.utcMs() >= from && reading->at.utcMs() <= m_now) {
            const bool below = reading->censoring == record::Censoring::Below;
            m_points.push_back({reading->at.utcMs(),
                                parameter.shown().fromCanonical(below ? reading->high : reading->value),
                                reading->censoring});
        }
    }
    if (forecast != nullptr) {
        for (const TrendBand& band : trendBands(*forecast, parameter)) {
            if (band.at >= m_now - kDay && band.at <= m_now + kDaysAhead * kDay) {
                m_band.push_back(band);
            }
        }
    }
    setAccessibleDescription(
        m_points.empty() ? tr("No reading in the last three weeks")
                         : tr("Readings: %1, newest %2").arg(m_points.size()).arg(m_points.back().value, 0, 'g', 3));
    update();
}

void ReadingSparkline::setTyped(std::optional<double> value, bool odd)
{
    m_typed = value;
    m_odd = odd;
    update();
}

QSize ReadingSparkline::sizeHint() const
{
    return {m_theme.px(380), m_theme.px(130)};
}

QSize ReadingSparkline::minimumSizeHint() const
{
    return {m_theme.px(200), m_theme.px(110)};
}

ReadingSparkline::Frame ReadingSparkline::frame() const
{
    Frame f;
    const int labels = static_cast<int>(figuresWidth(m_theme.font(10.5), QStringLiteral("0000"))) + m_theme.px(10);
    f.area = QRectF(rect()).adjusted(labels, m_theme.px(10), -m_theme.px(10),
                                     -QFontMetrics(m_theme.font(10.5)).height() - m_theme.px(8));
    f.from = m_now - kDaysBack * kDay;
    f.to = m_now + kDaysAhead * kDay;
    double low = 1e300;
    double high = -1e300;
    const auto take = [&](double value) {
        low = std::min(low, value);
        high = std::max(high, value);
    };
    for (const Point& point : m_points) {
        take(point.value);
    }
    for (const TrendBand& band : m_band) {
        take(band.low);
        take(band.high);
    }
    if (m_typed) {
        take(*m_typed);
    }
    if (low > high) {
        low = 0.0;
        high = 1.0;
    }
    const ValueScale scale = niceScale(low, high, 4);
    f.low = scale.low;
    f.high = scale.high;
    return f;
}

void ReadingSparkline::paintAxes(QPainter& painter, const Frame& f) const
{
    const ValueScale scale = niceScale(f.low, f.high, 4);
    painter.fillRect(QRectF(f.x(m_now), f.area.top(), f.area.right() - f.x(m_now), f.area.height()),
                     m_theme[Token::Future]);
    painter.setFont(m_theme.font(10.5));
    const int height = QFontMetrics(painter.font()).height();
    for (double tick : scale.ticks) {
        painter.setPen(m_theme[Token::Rule]);
        painter.drawLine(QPointF(f.area.left(), f.y(tick)), QPointF(f.area.right(), f.y(tick)));
        painter.setPen(m_theme[Token::Ink3]);
        drawFigures(painter, QRectF(0, f.y(tick) - height / 2.0, f.area.left() - m_theme.px(6), height),
                    Qt::AlignRight | Qt::AlignVCenter, QLocale().toString(tick, 'f', scale.decimals));
    }
    const record::Moment now(m_now, m_offset);
    for (int back : {14, 7, 0}) {
        const record::Moment at = now.plusDays(-back);
        painter.setPen(m_theme[Token::Ink3]);
        const QString label = back == 0 ? tr("today") : wording::dateText(at.localDate(), now.localDate());
        const double width = figuresWidth(painter.font(), label) + 4;
        drawFigures(painter, QRectF(f.x(at.utcMs()) - width / 2, f.area.bottom() + m_theme.px(3), width, height),
                    Qt::AlignCenter, label);
    }
    painter.setPen(QPen(m_theme[Token::Ink], 1.5));
    painter.drawLine(QPointF(f.x(m_now), f.area.top()), QPointF(f.x(m_now), f.area.bottom()));
}

void ReadingSparkline::paintBand(QPainter& painter, const Frame& f) const
{
    if (m_band.size() < 2) {
        return;
    }
    QPolygonF band;
    QPolygonF middle;
    for (const TrendBand& point : m_band) {
        band << QPointF(f.x(point.at), f.y(point.high));
        middle << QPointF(f.x(point.at), f.y(point.middle));
    }
    for (auto point = m_band.rbegin(); point != m_band.rend(); ++point) {
        band << QPointF(f.x(point->at), f.y(point->low));
    }
    QColor fill = m_theme.tokens().parameter(m_parameter);
    painter.setPen(QPen(fill, 1.2, Qt::DashLine));
    painter.drawPolyline(middle);
    fill.setAlphaF(0.22F);
    painter.setPen(Qt::NoPen);
    painter.setBrush(fill);
    painter.drawPolygon(band);
    painter.setBrush(Qt::NoBrush);
}

void ReadingSparkline::paintReadings(QPainter& painter, const Frame& f) const
{
    const QColor hue = m_theme.tokens().parameter(m_parameter);
    const Mark mark = Tokens::mark(m_parameter);
    painter.setPen(QPen(hue, 1.5));
    for (std::size_t i = 1; i < m_points.size(); ++i) {
        painter.drawLine(QPointF(f.x(m_points[i - 1].at), f.y(m_points[i - 1].value)),
                         QPointF(f.x(m_points[i].at), f.y(m_points[i].value)));
    }
    const double size = m_theme.px(8);
    for (const Point& point : m_points) {
        const QPointF at(f.x(point.at), f.y(point.value));
        if (point.censoring == record::Censoring::Below || point.censoring == record::Censoring::Above) {
            drawCensoredMark(painter, mark, at, size, hue, m_theme[Token::Panel],
                             point.censoring == record::Censoring::Below);
        } else {
            drawMark(painter, mark, at, size, hue, m_theme[Token::Panel]);
        }
    }
    if (m_typed) {
        const QPointF at(f.x(m_now), f.y(*m_typed));
        drawMark(painter, mark, at, size * 1.4, m_odd ? m_theme[Token::Watch] : hue, m_theme[Token::Panel], true);
    }
}

void ReadingSparkline::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(m_theme[Token::Rule]);
    painter.setBrush(m_theme[Token::Panel]);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 4, 4);
    painter.setBrush(Qt::NoBrush);
    if (m_parameter.isEmpty()) {
        return;
    }
    const Frame f = frame();
    paintAxes(painter, f);
    if (m_points.empty() && m_band.empty() && !m_typed) {
        painter.setFont(m_theme.font(11));
        painter.setPen(m_theme[Token::Ink3]);
        painter.drawText(f.area, Qt::AlignCenter | Qt::TextWordWrap, tr("No reading in the last three weeks"));
        return;
    }
    painter.setClipRect(f.area.adjusted(-6, -8, 6, 8));
    paintBand(painter, f);
    paintReadings(painter, f);
}

} // namespace littoral::ui
