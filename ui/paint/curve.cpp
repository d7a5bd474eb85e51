// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/curve.h"

#include "ui/paint/marks.h"
#include "ui/paint/value_scale.h"
#include "ui/theme/figures.h"

#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>
#include <QPolygonF>
#include <algorithm>

namespace littoral::ui {

namespace {

QColor hueOf(const Theme& theme, const QString& parameter)
{
    return parameter.isEmpty() ? theme[Token::Accent] : theme.tokens().parameter(parameter);
}

QColor tinted(QColor colour, double alpha)
{
    colour.setAlphaF(static_cast<float>(alpha));
    return colour;
}

QString tickText(double value, int decimals)
{
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale.toString(value, 'f', decimals).replace(u'-', u'−');
}

/// The plot's frame of reference, made once and used by every part of the drawing.
class CurvePlot
{
public:
    CurvePlot(QPainter& painter, const QRectF& box, const Theme& theme, const Curve& curve)
        : m_painter(painter)
        , m_theme(theme)
        , m_curve(curve)
        , m_small(theme.font(11))
        , m_line(QFontMetricsF(m_small).height())
    {
        double least = curve.points.front().low;
        double most = curve.points.front().high;
        const auto include = [&](double value) {
            least = std::min(least, value);
            most = std::max(most, value);
        };
        for (const Curve::Point& point : curve.points) {
            include(point.low);
            include(point.high);
        }
        for (const auto& edge : {curve.bandLow, curve.bandHigh, curve.line}) {
            if (edge) {
                include(*edge);
            }
        }
        m_y = niceScale(least, most, 5);
        m_x = niceScale(curve.points.front().x, curve.points.back().x, 6);
        m_x.low = curve.points.front().x;
        m_x.high = curve.points.back().x;
        double widest = 0.0;
        for (const double tick : m_y.ticks) {
            widest = std::max(widest, figuresWidth(m_small, tickText(tick, m_y.decimals)));
        }
        m_plot = box.adjusted(widest + theme.px(10), m_line + theme.px(6), -theme.px(4), -(2 * m_line + theme.px(8)));
    }

    void paint()
    {
        m_painter.save();
        m_painter.setRenderHint(QPainter::Antialiasing);
        m_painter.setFont(m_small);
        axes();
        targetBand();
        limit();
        doubt();
        line();
        titles();
        legend();
        here();
        m_painter.restore();
    }

private:
    [[nodiscard]] double x(double value) const
    {
        return m_plot.left() + (value - m_x.low) / (m_x.high - m_x.low) * m_plot.width();
    }
    [[nodiscard]] double y(double value) const { return m_y.y(value, m_plot.top(), m_plot.bottom()); }

    void axes()
    {
        for (const double tick : m_y.ticks) {
            m_painter.setPen(QPen(m_theme[Token::Rule], 1));
            m_painter.drawLine(QPointF(m_plot.left(), y(tick)), QPointF(m_plot.right(), y(tick)));
            m_painter.setPen(m_theme[Token::Ink3]);
            drawFigures(m_painter, QRectF(0, y(tick) - m_line / 2, m_plot.left() - m_theme.px(6), m_line),
                        Qt::AlignRight | Qt::AlignVCenter, tickText(tick, m_y.decimals));
        }
        m_painter.setPen(QPen(m_theme[Token::Rule2], 1));
        m_painter.drawLine(m_plot.bottomLeft(), m_plot.bottomRight());
        for (const double tick : m_x.ticks) {
            if (tick < m_x.low - 1e-9 || tick > m_x.high + 1e-9) {
                continue;
            }
            const QString text = tickText(tick, m_x.decimals);
            const double half = figuresWidth(m_small, text) / 2;
            const double middle = std::clamp(x(tick), m_plot.left() + half - 2, m_plot.right() - half + 2);
            m_painter.setPen(QPen(m_theme[Token::Rule2], 1));
            m_painter.drawLine(QPointF(x(tick), m_plot.bottom()), QPointF(x(tick), m_plot.bottom() + 4));
            m_painter.setPen(m_theme[Token::Ink3]);
            drawFigures(m_painter, QRectF(middle - half - 1, m_plot.bottom() + 5, 2 * half + 2, m_line),
                        Qt::AlignCenter, text);
        }
    }

    void targetBand()
    {
        if (!m_curve.bandLow && !m_curve.bandHigh) {
            return;
        }
        const double top = y(std::min(m_curve.bandHigh.value_or(m_y.high), m_y.high));
        const double bottom = y(std::max(m_curve.bandLow.value_or(m_y.low), m_y.low));
        m_painter.fillRect(QRectF(m_plot.left(), top, m_plot.width(), bottom - top),
                           tinted(hueOf(m_theme, m_curve.parameter), 0.11));
    }

    void limit()
    {
        if (!m_curve.line) {
            return;
        }
        m_painter.setPen(QPen(m_theme[Token::Watch], 1.2, Qt::DashLine));
        m_painter.drawLine(QPointF(m_plot.left(), y(*m_curve.line)), QPointF(m_plot.right(), y(*m_curve.line)));
    }

    void doubt()
    {
        QPolygonF outline;
        for (const Curve::Point& point : m_curve.points) {
            outline << QPointF(x(point.x), y(point.high));
        }
        for (auto it = m_curve.points.rbegin(); it != m_curve.points.rend(); ++it) {
            outline << QPointF(x(it->x), y(it->low));
        }
        m_painter.setPen(Qt::NoPen);
        m_painter.setBrush(tinted(hueOf(m_theme, m_curve.parameter), 0.2));
        m_painter.drawPolygon(outline);
    }

    void line()
    {
        QPolygonF path;
        for (const Curve::Point& point : m_curve.points) {
            path << QPointF(x(point.x), y(point.y));
        }
        m_painter.setBrush(Qt::NoBrush);
        m_painter.setPen(QPen(hueOf(m_theme, m_curve.parameter), 2.0));
        m_painter.drawPolyline(path);
    }

    void titles()
    {
        m_painter.setPen(m_theme[Token::Ink2]);
        m_painter.drawText(QRectF(0, m_plot.top() - m_line - m_theme.px(6), m_plot.right(), m_line),
                           Qt::AlignRight | Qt::AlignVCenter, m_curve.title);
        m_painter.setPen(m_theme[Token::Ink3]);
        m_painter.drawText(QRectF(0, m_plot.bottom() + 5 + m_line, m_plot.right(), m_line),
                           Qt::AlignRight | Qt::AlignVCenter, m_curve.xTitle);
    }

    /// What the band and the limit are, below the axis where no line runs through the words.
    void legend()
    {
        const double top = m_plot.bottom() + 5 + m_line;
        const double swatch = m_theme.px(16);
        const double room = m_plot.width() - QFontMetricsF(m_small).horizontalAdvance(m_curve.xTitle) - m_theme.px(40);
        const bool band = !m_curve.bandText.isEmpty() && (m_curve.bandLow || m_curve.bandHigh);
        if (!band && !m_curve.line) {
            return;
        }
        const QRectF sample(m_plot.left(), top + m_line * 0.2, swatch, m_line * 0.6);
        if (band) {
            m_painter.fillRect(sample, tinted(hueOf(m_theme, m_curve.parameter), 0.25));
        } else {
            m_painter.setPen(QPen(m_theme[Token::Watch], 1.2, Qt::DashLine));
            m_painter.drawLine(QPointF(sample.left(), sample.center().y()),
                               QPointF(sample.right(), sample.center().y()));
        }
        m_painter.setPen(m_theme[Token::Ink2]);
        m_painter.drawText(
            QRectF(sample.right() + m_theme.px(6), top, room, m_line), Qt::AlignLeft | Qt::AlignVCenter,
            QFontMetricsF(m_small).elidedText(band ? m_curve.bandText : m_curve.lineText, Qt::ElideRight, room));
    }

    void here()
    {
        if (!m_curve.here || m_curve.here->x < m_x.low || m_curve.here->x > m_x.high) {
            return;
        }
        const QPointF at(x(m_curve.here->x), y(m_curve.here->y));
        m_painter.setPen(QPen(m_theme[Token::Accent], 1.6));
        m_painter.drawLine(QPointF(at.x(), m_plot.top()), QPointF(at.x(), m_plot.bottom()));
        m_painter.setPen(QPen(m_theme[Token::Ink3], 1, Qt::DashLine));
        m_painter.drawLine(QPointF(m_plot.left(), at.y()), at);
        drawMark(m_painter, Mark::Square, at, kMarkSize * m_theme.textScale(), hueOf(m_theme, m_curve.parameter),
                 m_theme[Token::Panel]);
        hereLabel(at);
    }

    void hereLabel(QPointF at)
    {
        const QFont strong = m_theme.font(11, 600);
        const double width = figuresWidth(strong, m_curve.hereText) + m_theme.px(8);
        const bool leftwards = at.x() - m_plot.left() > width + m_theme.px(8);
        const double left =
            leftwards ? at.x() - width - m_theme.px(6) : std::min(at.x() + m_theme.px(8), m_plot.right() - width);
        const double below = at.y() + m_theme.px(5);
        const double top = below + m_line < m_plot.bottom() ? below : at.y() - m_line - m_theme.px(6);
        const QRectF label(left, top, width, m_line + 2);
        m_painter.setPen(Qt::NoPen);
        m_painter.setBrush(tinted(m_theme[Token::Panel], 0.82));
        m_painter.drawRoundedRect(label, 3, 3);
        m_painter.setFont(strong);
        m_painter.setPen(m_theme[Token::Ink]);
        drawFigures(m_painter, label, Qt::AlignCenter, m_curve.hereText);
        m_painter.setFont(m_small);
    }

    QPainter& m_painter;
    const Theme& m_theme;
    const Curve& m_curve;
    QFont m_small;
    double m_line;
    ValueScale m_x, m_y;
    QRectF m_plot;
};

/// Rows on a shared scale that starts at zero.
class MeasurePlot
{
public:
    MeasurePlot(QPainter& painter, const QRectF& box, const Theme& theme, const Measures& measures)
        : m_painter(painter)
        , m_theme(theme)
        , m_measures(measures)
        , m_box(box)
        , m_body(theme.font(13))
        , m_strong(theme.font(13, 600))
        , m_small(theme.font(11))
        , m_row(QFontMetricsF(m_body).height() + theme.px(10))
    {
        double most = measures.bandHigh.value_or(0.0) * 1.15;
        double names = 0.0;
        double values = 0.0;
        for (const Measures::Row& row : measures.rows) {
            most = std::max(most, row.high.value_or(row.middle.value_or(0.0)));
            names = std::max(names, QFontMetricsF(m_body).horizontalAdvance(row.name));
            if (row.middle) {
                values = std::max(values, figuresWidth(m_strong, row.value));
            }
        }
        m_scale = niceScale(0.0, most, 6);
        m_names = std::min(names + theme.px(12), box.width() * 0.38);
        m_values = values + theme.px(12);
        m_plot = QRectF(box.left() + m_names + m_values, box.top() + QFontMetricsF(m_small).height() + theme.px(4),
                        std::max(10.0, box.width() - m_names - m_values - theme.px(6)),
                        m_row * static_cast<double>(measures.rows.size()));
    }

    void paint()
    {
        m_painter.save();
        m_painter.setRenderHint(QPainter::Antialiasing);
        ground();
        double top = m_plot.top();
        for (const Measures::Row& row : m_measures.rows) {
            paintRow(row, top);
            top += m_row;
        }
        m_painter.restore();
    }

private:
    [[nodiscard]] double x(double value) const
    {
        return m_plot.left() +
               (std::min(value, m_scale.high) - m_scale.low) / (m_scale.high - m_scale.low) * m_plot.width();
    }

    void ground()
    {
        m_painter.setFont(m_small);
        const double line = QFontMetricsF(m_small).height();
        if (m_measures.bandLow && m_measures.bandHigh) {
            const QRectF band(QPointF(x(*m_measures.bandLow), m_plot.top()),
                              QPointF(x(*m_measures.bandHigh), m_plot.bottom()));
            m_painter.fillRect(band, tinted(hueOf(m_theme, m_measures.parameter), 0.14));
            m_painter.setPen(m_theme[Token::Ink2]);
            const double width = QFontMetricsF(m_small).horizontalAdvance(m_measures.bandText) + 2;
            const double left = std::clamp(band.center().x() - width / 2, m_plot.left(), m_plot.right() - width);
            m_painter.drawText(QRectF(left, m_box.top(), width, line), Qt::AlignCenter, m_measures.bandText);
        }
        for (const double tick : m_scale.ticks) {
            m_painter.setPen(QPen(m_theme[Token::Rule], 1));
            m_painter.drawLine(QPointF(x(tick), m_plot.top()), QPointF(x(tick), m_plot.bottom()));
            m_painter.setPen(m_theme[Token::Ink3]);
            const QString text = tickText(tick, m_scale.decimals);
            const double width = figuresWidth(m_small, text) + 2;
            const double left = std::clamp(x(tick) - width / 2, m_plot.left() - 4, m_plot.right() - width + 4);
            drawFigures(m_painter, QRectF(left, m_plot.bottom() + 3, width, line), Qt::AlignCenter, text);
        }
    }

    void paintRow(const Measures::Row& row, double top)
    {
        const double middle = top + m_row / 2;
        m_painter.setFont(m_body);
        m_painter.setPen(m_theme[row.middle ? Token::Ink : Token::Ink3]);
        m_painter.drawText(QRectF(m_box.left(), top, m_names, m_row), Qt::AlignLeft | Qt::AlignVCenter,
                           QFontMetricsF(m_body).elidedText(row.name, Qt::ElideRight, m_names - m_theme.px(6)));
        if (!row.middle) {
            m_painter.setFont(m_small);
            const double width = QFontMetricsF(m_small).horizontalAdvance(row.value) + m_theme.px(8);
            m_painter.fillRect(QRectF(m_box.left() + m_names, top + 2, width, m_row - 4), m_theme[Token::Panel]);
            m_painter.drawText(QRectF(m_box.left() + m_names, top, m_box.width() - m_names, m_row),
                               Qt::AlignLeft | Qt::AlignVCenter, row.value);
            return;
        }
        m_painter.setFont(m_strong);
        drawFigures(m_painter, QRectF(m_box.left() + m_names, top, m_values - m_theme.px(12), m_row),
                    Qt::AlignRight | Qt::AlignVCenter, row.value);
        const QColor hue = hueOf(m_theme, m_measures.parameter);
        if (row.low && row.high) {
            m_painter.setPen(QPen(hue, 2.0));
            m_painter.drawLine(QPointF(x(*row.low), middle), QPointF(x(*row.high), middle));
            for (const double end : {*row.low, *row.high}) {
                m_painter.drawLine(QPointF(x(end), middle - m_theme.px(4)), QPointF(x(end), middle + m_theme.px(4)));
            }
        }
        drawMark(m_painter, m_theme.tokens().mark(m_measures.parameter), QPointF(x(*row.middle), middle),
                 kMarkSize * m_theme.textScale() * 1.2, hue, m_theme[Token::Panel]);
    }

    QPainter& m_painter;
    const Theme& m_theme;
    const Measures& m_measures;
    QRectF m_box;
    QFont m_body, m_strong, m_small;
    double m_row;
    double m_names = 0.0;
    double m_values = 0.0;
    ValueScale m_scale;
    QRectF m_plot;
};

} // namespace

int curveHeight(const Theme& theme)
{
    return theme.px(190);
}

void paintCurve(QPainter& painter, const QRectF& box, const Theme& theme, const Curve& curve)
{
    if (curve.points.size() < 2 || !(curve.points.back().x > curve.points.front().x)) {
        return;
    }
    painter.save();
    painter.translate(box.topLeft());
    CurvePlot(painter, QRectF(QPointF(0, 0), box.size()), theme, curve).paint();
    painter.restore();
}

int measuresHeight(const Theme& theme, const Measures& measures)
{
    const double row = QFontMetricsF(theme.font(13)).height() + theme.px(10);
    const double small = QFontMetricsF(theme.font(11)).height();
    return static_cast<int>(row * static_cast<double>(measures.rows.size()) + 2 * small + theme.px(12));
}

void paintMeasures(QPainter& painter, const QRectF& box, const Theme& theme, const Measures& measures)
{
    if (!measures.rows.empty()) {
        MeasurePlot(painter, box, theme, measures).paint();
    }
}

} // namespace littoral::ui
