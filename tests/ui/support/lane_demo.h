// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/widgets/lanes/lane_cursor.h"

namespace littoral::ui::demo {

/// 25 Nov 2026, 07:40 at UTC+1: the instant the made-up row is looked at.
[[nodiscard]] qint64 now();
/// Noon UTC so many days from now's day.
[[nodiscard]] qint64 day(double fromNow);

/// Six made-up tanks in the states lanes have to show: two young ones with forecasts and gates, overdue work, a melt, a
/// settled tank, conductivity. Every value is invented.
[[nodiscard]] std::vector<LanePtr> sixLanes();
/// `count` lanes with `days` days of daily readings each, for size and speed.
[[nodiscard]] std::vector<LanePtr> manyLanes(int count, int days);

[[nodiscard]] facade::LaneChip chip(double dayFromNow, facade::Glyph glyph, const QString& title,
                                    const QString& shortText);

} // namespace littoral::ui::demo
