// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"
#include "ui/paint/paper.h"
#include "ui/widgets/lanes/lane_cursor.h"

#include <QTimeZone>

namespace littoral::ui {

/// The whole row on paper: for each tank its lane of the last 30 days with the forecast of the coming three weeks, as
/// drawn on the page, then its newest readings and the work that comes next. `row` outlives the job.
[[nodiscard]] PaperJob rowPaper(std::vector<LanePtr> lanes, const record::Row& row, const record::Moment& now,
                                const QTimeZone& zone);

} // namespace littoral::ui
