// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/limits.h"
#include "core/facade/case_file.h"

/// The parts a case file is put together from.
namespace littoral::facade {

[[nodiscard]] Talk talkOf(const record::LayoutRecord& layout, const care::Limits& limits,
                          const findings::Report& report, const record::Moment& at);
[[nodiscard]] Comparison comparisonOf(const record::Row& row, const record::LayoutRecord& layout,
                                      const CaseRequest& request, const QString& fallback, const record::Moment& at);
/// Coverage of a subject as a series in percent, with the observations it rests on.
[[nodiscard]] StripSeries coverSeries(const record::LayoutRecord& layout, const QString& subject);
/// Tank's name, with the layout's where it is an earlier one.
[[nodiscard]] QString layoutTitle(const record::Row& row, const record::LayoutRecord& layout);

} // namespace littoral::facade
