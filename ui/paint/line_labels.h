// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <optional>
#include <vector>

namespace littoral::ui {

/// A line that wants its name written on it.
struct NamedLine
{
    std::vector<QPointF> points; ///< from left to right
    QSizeF text;
};

/// Where each name goes, as long as `lines`: close to its own line, off the other lines and names, inside `plot`,
/// rather to the right. Nothing for a line without points or a name that finds no free place. Pure; the same lines give
/// the same places.
[[nodiscard]] std::vector<std::optional<QRectF>> placeLineLabels(const std::vector<NamedLine>& lines,
                                                                 const QRectF& plot, double gap);

} // namespace littoral::ui
