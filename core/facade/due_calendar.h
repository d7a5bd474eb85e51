// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/due.h"
#include "core/record/row.h"

#include <QByteArray>

namespace littoral::facade {

/// Due work as iCalendar: every open round up to `until`, what is overdue on today, each with its reason and rule. One
/// tank alone if given, else all of them and the work for the whole row. UIDs stay the same for the same round of the
/// same layout, so that importing it again replaces.
[[nodiscard]] QByteArray dueCalendar(const record::Row& row, const record::Moment& now, const QDate& until,
                                     record::TankId only = {});

} // namespace littoral::facade
