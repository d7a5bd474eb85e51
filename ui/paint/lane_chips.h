// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/lane_model.h"
#include "ui/paint/lane_metrics.h"
#include "ui/paint/time_axis.h"

#include <QRectF>
#include <vector>

namespace littoral::ui {

enum class ChipForm {
    Full,  ///< glyph and text
    Short, ///< glyph and fraction
    Count, ///< several chips as one number
    More,  ///< further work folded to "+2"
    Glyph, ///< nothing but the glyph: at the very edge of the range
};

/// Where a chip, or a fold of several, stands. Indices are into LaneModel::chips.
struct ChipBox
{
    QRectF rect;
    ChipForm form = ChipForm::Full;
    std::vector<std::size_t> chips;
    QString text;
    bool withGlyph = false; ///< the glyph of its first chip stands before the text
    double anchor = 0.0;    ///< px of the due day, where a shifted chip's tick points
    bool overdue = false;
    bool today = false;
};

/// Rows the due work of one lane stands in, top first. `left` is the strip's edge; `nowX` the now-line.
struct ChipRoom
{
    std::vector<double> rowTops; ///< one or two
    double left = 0.0;
    double right = 0.0;
    double nowX = 0.0;
};

/// Pure: overdue chips stacked leftwards from the now-line, the most overdue nearest, beyond three the rest folded to
/// "+n"; work due today begins at the now-line; later work at its day; the tests of one day are one chip. Chips of one
/// row never overlap: what does not fit is moved right a little, then shortened, then folded to "+n", then counted.
/// With two rows, water changes take the first and all else the second.
[[nodiscard]] std::vector<ChipBox> layOutChips(const std::vector<facade::LaneChip>& chips, const AxisView& axis,
                                               qint64 flooded, const ChipRoom& room, const LaneMetrics& metrics);

/// px a chip takes with this text beside its glyph.
[[nodiscard]] double chipWidth(const LaneMetrics& metrics, const QString& text);

} // namespace littoral::ui
