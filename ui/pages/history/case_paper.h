// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/case_file.h"
#include "core/facade/reset_forecast.h"
#include "core/record/row.h"
#include "ui/paint/paper.h"
#include "ui/paint/time_axis.h"

#include <memory>

namespace littoral::ui {

/// The case in the order of the page, by its painters. `axis` gives the stretch of the strip; `reset` may be null. The
/// others outlive the job.
[[nodiscard]] PaperJob casePaper(const facade::CaseFile& file,
                                 const std::shared_ptr<const facade::ResetForecast>& reset, const record::Row& row,
                                 const TimeAxis& axis);

} // namespace littoral::ui
