// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"

namespace littoral::ui {

/// The record of one layout as it stood when `day` began: readings and done entries of that day and later taken out,
/// tasks that were closed since open again. What was due then and is not due now has been done on this round, so that a
/// round needs no record of its own and is there unchanged after a restart.
[[nodiscard]] record::Row rowAtDayStart(const record::Row& row, record::LayoutId layout, const QDate& day);

} // namespace littoral::ui
