// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/card_chart.h"

#include "ui/paint/faded.h"
#include "ui/paint/value_scale.h"
#include "ui/theme/figures.h"

#include <QAreaSeries>
#include <QChart>
#include <QGraphicsLayout>
#include <QLegend>
#include <QLineSeries>
#include <QPainter>
#include <QValueAxis>
#include <algorithm>

namespace littoral::ui {

namespace {

constexpr int kMostTicks = 3;
constexpr double kRange = 0.22; // opacity of the 8-in-10 range

QList<QPointF> listOf(const std::vector<QPointF>& points)
{
    return {points.begin(), points.end()};
}

} // namespace

CardChart::CardChart(const Theme& theme)
    : m_theme(theme)
    , m_chart(new QChart)
    , m_low(new QLineSeries(m_chart))
    , m_high(new QLineSeries(m_chart))
    , m_middle(new QLineSeries)
    , m_before(new QLineSeries)
    , m_limit(new QLineSeries)
    , m_range(new QAreaSeries(m_high, m_low))
    , m_days(new QValueAxis)
    , m_values(new QValueAxis)
{
    m_scene.addItem(m_chart);
    m_chart->setBackgroundVisible(false);
    m_chart->setMargins({});
    m_chart->layout()->setContentsMargins(0, 0, 0, 0);
    m_chart->legend()->hide();
    m_chart->setLocalizeNumbers(true);
    m_chart->addAxis(m_days, Qt::AlignBottom);
    m_chart->addAxis(m_values, Qt::AlignLeft);
    for (QAbstractSeries* series : std::initializer_list<QAbstractSeries*>{m_range, m_before, m_middle, m_limit}) {
        m_chart->addSeries(series);
        series->attachAxis(m_days);
        series->attachAxis(m_values);
    }
    m_days->setLabelsVisible(false);
    m_values->setTruncateLabels(false); // there is room: dots would stand for every number
    m_days->setGridLineVisible(false);
    m_values->setLineVisible(false);
}

CardChart::~CardChart() = default;

void CardChart::setData(const CardChartData& data)
{
    m_data = data;
    m_low->replace(listOf(data.low));
    m_high->replace(listOf(data.high));
    m_middle->replace(listOf(data.middle));
    m_before->replace(listOf(data.before));
    if (data.middle.size() < 2) {
        m_limit->clear();
        return;
    }
    const double first = data.middle.front().x();
    const double last = data.middle.back().x();
    double highest = data.limit * 1.25;
    for (const QPointF& point : data.high) {
        highest = std::max(highest, point.y());
    }
    m_limit->replace(QList<QPointF>{{first, data.limit}, {last, data.limit}});
    const ValueScale scale = niceScale(0.0, highest, kMostTicks);
    m_days->setRange(first, last);
    m_values->setRange(scale.low, scale.high);
    m_values->setTickCount(static_cast<int>(scale.ticks.size()));
    m_values->setLabelFormat(QStringLiteral("%.%1f").arg(scale.decimals));
}

/// Hues, pens and letters from the theme, whatever look is in force.
void CardChart::dress()
{
    const QColor hue = m_theme.tokens().parameter(m_data.parameter);
    m_range->setPen(Qt::NoPen);
    m_range->setBrush(faded(hue, kRange));
    m_middle->setPen(QPen(hue, 1.5, Qt::DashLine));
    m_before->setPen(QPen(m_theme[Token::Ink3], 1, Qt::DotLine));
    m_limit->setPen(QPen(m_theme[Token::Ink], 1, Qt::DashLine));
    m_values->setLabelsFont(m_theme.font(11));
    m_values->setLabelsBrush(m_theme[Token::Ink3]);
    m_values->setGridLinePen(QPen(m_theme[Token::Rule], 1));
    m_days->setLinePen(QPen(m_theme[Token::Rule2], 1));
}

QRectF CardChart::paint(QPainter& painter, const QRectF& room)
{
    dress();
    const QFont font = m_theme.font(11);
    const QString widest = QString::number(m_values->max(), 'f', 2);
    const double labels = figuresWidth(font, widest) + m_theme.px(12);
    const double half = QFontMetricsF(font).height() / 2;
    const QRectF plot(labels, half, std::max(10.0, room.width() - labels - m_theme.px(4)),
                      std::max(10.0, room.height() - 2 * half));
    m_chart->resize(room.size());
    m_chart->setPlotArea(plot);
    m_chart->layout()->activate();
    m_scene.setSceneRect(QRectF(QPointF(0, 0), room.size()));
    m_scene.render(&painter, room, m_scene.sceneRect(), Qt::IgnoreAspectRatio);
    return plot.translated(room.topLeft());
}

double CardChart::y(double value, const QRectF& plot) const
{
    const double share = (value - m_values->min()) / (m_values->max() - m_values->min());
    return plot.bottom() - share * plot.height();
}

} // namespace littoral::ui
