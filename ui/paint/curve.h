// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/theme/theme.h"

#include <QRectF>
#include <QString>
#include <optional>
#include <vector>

class QPainter;

namespace littoral::ui {

/// How a result answers to one of the inputs, with its doubt, and where it stands now.
struct Curve
{
    struct Point
    {
        double x = 0.0;
        double y = 0.0;
        double low = 0.0; ///< equal to y where the doubt is not known
        double high = 0.0;
    };

    std::vector<Point> points; ///< x ascending
    QString title;             ///< "nitrate after one change, mg/L"
    QString xTitle;            ///< "share changed, %"
    QString parameter;         ///< gives hue; may be empty
    std::optional<Point> here;
    QString hereText; ///< "52 %: 20 mg/L, 18–22"
    std::optional<double> bandLow, bandHigh;
    QString bandText;           ///< "target band 10–25"
    std::optional<double> line; ///< a limit drawn across
    QString lineText;
};

/// Height the curve asks for.
[[nodiscard]] int curveHeight(const Theme& theme);
void paintCurve(QPainter& painter, const QRectF& box, const Theme& theme, const Curve& curve);

/// Several measures of the same thing one under another on one scale, each with its doubt.
struct Measures
{
    struct Row
    {
        QString name;
        QString value; ///< "32 mg/L", or why there is none
        std::optional<double> middle, low, high;
    };

    std::vector<Row> rows;
    QString unit;
    QString parameter;
    std::optional<double> bandLow, bandHigh;
    QString bandText;
};

[[nodiscard]] int measuresHeight(const Theme& theme, const Measures& measures);
void paintMeasures(QPainter& painter, const QRectF& box, const Theme& theme, const Measures& measures);

} // namespace littoral::ui
