// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/stock/load_chart.h"

#include "core/record/parameter.h"
#include "core/wording/numbers.h"
#include "ui/paint/marks.h"
#include "ui/paint/value_scale.h"
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
        paintPlot(painter, partRect(1), u"tan"_s, m_trial->ammonia, m_trial->ammoniaBefore, m_trial->ammoniaLimit);
        paintPlot(painter, partRect(2), u"no2"_s, m_trial->nitrite, m_trial->nitriteBefore, m_trial->nitriteLimit);
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

void LoadChart::paintPlot(QPainter& painter, const QRectF& room, const QString& parameter,
                          const std::vector<forecast::Band>& with, const std::vector<forecast::Band>& without,
                          double limit) const
{
    const QFont small = m_theme.font(11);
    const int line = QFontMetrics(small).height();
    const QString unit = record::findParameter(parameter)->shown().label;
    double high = limit * 1.25;
    for (const forecast::Band& band : with) {
        high = std::max(high, band[5]);
    }
    const ValueScale scale = niceScale(0.0, shown(parameter, high), 3);
    double labels = 0.0;
    for (const double tick : scale.ticks) {
        labels = std::max(labels, figuresWidth(small, wording::numberText(tick, scale.decimals)));
    }
    const QRectF plot(room.left() + labels + m_theme.px(8), room.top() + line + m_theme.px(6),
                      room.width() - labels - m_theme.px(12), room.height() - 2 * line - m_theme.px(14));
    painter.setFont(small);
    drawParameterMark(painter, m_theme, parameter, QPointF(room.left() + m_theme.px(5), room.top() + line / 2.0),
                      m_theme.px(kMarkSize), m_theme[Token::Panel]);
    painter.setPen(m_theme[Token::Ink2]);
    painter.drawText(QRectF(room.left() + m_theme.px(14), room.top(), room.width(), line), Qt::AlignLeft,
                     tr("%1 after adding, %2").arg(wording::parameterName(parameter), unit));
    for (const double tick : scale.ticks) {
        const double y = scale.y(tick, plot.top(), plot.bottom());
        painter.setPen(QPen(m_theme[Token::Rule], 1));
        painter.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y));
        painter.setPen(m_theme[Token::Ink3]);
        drawFigures(painter, QRectF(room.left(), y - line / 2.0, labels + 1, line), Qt::AlignRight | Qt::AlignVCenter,
                    wording::numberText(tick, scale.decimals));
    }
    const std::vector<double>& days = m_trial->days;
    if (days.size() < 2) {
        return;
    }
    const auto point = [&](std::size_t i, double value) {
        return QPointF(plot.left() + plot.width() * (days[i] - days.front()) / (days.back() - days.front()),
                       scale.y(std::min(scale.high, shown(parameter, value)), plot.top(), plot.bottom()));
    };
    const QColor hue = m_theme.tokens().parameter(parameter);
    QPolygonF band;
    QPolygonF middle, before;
    for (std::size_t i = 0; i < with.size(); ++i) {
        band << point(i, with[i][5]);
        middle << point(i, with[i][3]);
        before << point(i, without[i][3]);
    }
    for (std::size_t i = with.size(); i-- > 0;) {
        band << point(i, with[i][1]);
    }
    QColor fill = hue;
    fill.setAlphaF(0.22F);
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(Qt::NoPen);
    painter.setBrush(fill);
    painter.drawPolygon(band);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(m_theme[Token::Ink3], 1, Qt::DotLine));
    painter.drawPolyline(before);
    painter.setPen(QPen(hue, 1.5, Qt::DashLine));
    painter.drawPolyline(middle);
    const double y = scale.y(shown(parameter, limit), plot.top(), plot.bottom());
    painter.setPen(QPen(m_theme[Token::Ink], 1, Qt::DashLine));
    painter.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y));
    painter.setPen(m_theme[Token::Ink]);
    const QString text = tr("limit %1").arg(wording::numberText(shown(parameter, limit), 2));
    drawFigures(painter, QRectF(plot.left(), y - line - 1, plot.width(), line), Qt::AlignRight | Qt::AlignBottom, text);
    painter.setPen(m_theme[Token::Ink3]);
    const QRectF axis(plot.left(), plot.bottom() + 2, plot.width(), line);
    painter.drawText(axis, Qt::AlignLeft, tr("today"));
    drawFigures(painter, axis, Qt::AlignRight, tr("+%1 days").arg(qRound(days.back() - days.front())));
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
