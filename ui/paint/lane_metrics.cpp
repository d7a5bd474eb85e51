// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/lane_metrics.h"

#include "ui/theme/figures.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

LaneMetrics::LaneMetrics(const Theme& theme)
    : scale(theme.textScale())
    , name(theme.font(15, 600))
    , body(theme.font(12))
    , strong(theme.font(12, 600))
    , chip(theme.font(11.5, 500))
    , chipStrong(theme.font(11.5, 600))
    , small(theme.font(11))
    , smallStrong(theme.font(11, 600))
    , tick(theme.font(10))
    , bodyLine(std::ceil(lineHeight(body) * 1.12))
    , nameLine(std::ceil(lineHeight(name) * 1.05))
    , smallLine(std::ceil(lineHeight(small)))
    , tickLine(std::ceil(lineHeight(tick)))
    , glyph(std::round(14 * scale))
    , chipHeight(std::max(24.0, std::ceil(lineHeight(chip) + 6 * scale)))
    , dueRow(chipHeight + std::round(3 * scale))
    , eventRow(std::ceil(std::max(glyph, lineHeight(body)) + 4 * scale))
    , changeRow(std::round(16 * scale))
    , alertRow(std::ceil(smallLine + 5 * scale))
    , phaseRow(std::ceil(smallLine + 5 * scale))
    , tallStrip(std::round(70 * scale))
    , shortStrip(std::round(36 * scale))
    , gap(std::round(4 * scale))
{
}

double LaneMetrics::headerWidth(double viewWidth) const
{
    return std::round(std::clamp(px(262), 160.0, std::max(160.0, viewWidth * 0.34)));
}

double LaneMetrics::lineHeight(const QFont& font)
{
    return QFontMetricsF(font).height();
}

QStringList wrapped(const QFont& font, const QString& text, double width)
{
    QStringList lines;
    QString line;
    const QStringList words = text.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    for (const QString& word : words) {
        const QString longer = line.isEmpty() ? word : line + QLatin1Char(' ') + word;
        if (!line.isEmpty() && figuresWidth(font, longer) > width) {
            lines << line;
            line = word;
        } else {
            line = longer;
        }
    }
    if (!line.isEmpty()) {
        lines << line;
    }
    for (QString& each : lines) {
        each = elidedFigures(font, each, width);
    }
    return lines;
}

} // namespace littoral::ui
