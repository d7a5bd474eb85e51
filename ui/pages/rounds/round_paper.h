// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/rounds_model.h"
#include "ui/models/work_model.h"
#include "ui/paint/paper.h"

namespace littoral::ui {

/// The round to walk with a pencil: an empty box for each due reading with the time beside it and the last value and
/// the kit below, work to tick, and lines for what is seen; tank by tank or kit by kit. Both models outlive the job.
[[nodiscard]] PaperJob roundPaper(const RoundsModel& readings, const WorkModel& work, RoundsModel::Order order);

} // namespace littoral::ui
