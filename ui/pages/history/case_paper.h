// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/case_file.h"
#include "core/record/row.h"
#include "ui/paint/paper.h"
#include "ui/paint/time_axis.h"

namespace littoral::ui {

/// The case in the order of the page, by its painters. `axis` gives the stretch of the strip. All outlive the job.
[[nodiscard]] PaperJob casePaper(const facade::CaseFile& file, const record::Row& row, const TimeAxis& axis);

} // namespace littoral::ui
