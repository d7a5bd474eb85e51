// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/facade/case_file.h"
#include "core/facade/reset_forecast.h"
#include "core/record/row.h"
#include "ui/paint/time_axis.h"

#include <QString>
#include <memory>

namespace littoral::ui {

/// The case as a PDF of A4 pages in the order of the page, light look, same painters. `axis` gives the stretch of the
/// strip; `reset` may be null. Faults: Storage when the file cannot be written.
[[nodiscard]] Result<void> printCase(const QString& path, const facade::CaseFile& file,
                                     const std::shared_ptr<const facade::ResetForecast>& reset, const record::Row& row,
                                     const TimeAxis& axis);

} // namespace littoral::ui
