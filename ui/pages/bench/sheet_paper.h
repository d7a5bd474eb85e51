// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/facade/row_plan.h"
#include "ui/models/bench_sheet.h"

#include <QString>
#include <vector>

namespace littoral::ui {

/// What goes on paper, in order; a sheet carries the name of the tank it was reckoned for.
struct PaperSheet
{
    BenchSheet sheet;
    QString tankName;
};

/// Worksheets and the row's plan as a PDF of A4 pages, drawn in the light look by the painters of the page. Faults:
/// Storage when the file cannot be written.
[[nodiscard]] Result<void> printSheets(const QString& path, const std::vector<PaperSheet>& sheets,
                                       const std::optional<facade::RowPlan>& plan, const record::Row& row,
                                       const record::Moment& now);

} // namespace littoral::ui
