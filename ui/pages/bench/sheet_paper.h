// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/row_plan.h"
#include "ui/models/bench_sheet.h"
#include "ui/paint/paper.h"

#include <QString>
#include <optional>
#include <vector>

namespace littoral::ui {

/// What goes on paper, in order; a sheet carries the name of the tank it was reckoned for.
struct PaperSheet
{
    BenchSheet sheet;
    QString tankName;
};

/// Worksheets and the row's plan, drawn by the painters of the page. `row` outlives the job.
[[nodiscard]] PaperJob sheetPaper(std::vector<PaperSheet> sheets, std::optional<facade::RowPlan> plan,
                                  const record::Row& row, const record::Moment& now);

} // namespace littoral::ui
