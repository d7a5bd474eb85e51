// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/moment.h"

#include <QString>
#include <optional>

namespace littoral::exchange {

/// ISO 8601: "2026-11-25", "2026-11-25 07:40", "2026-11-25T07:40:10+01:00". Without an offset it is local clock time; a
/// day alone is noon of that day. Nothing else is taken: "25.11.2026" and "11/25/2026" leave room for a mistake.
[[nodiscard]] std::optional<record::Moment> parseInstant(const QString& text);
/// "07:40" or "07:40:10".
[[nodiscard]] std::optional<QTime> parseTime(const QString& text);
/// ISO with offset; milliseconds only where there are any, so that nothing is lost.
[[nodiscard]] QString instantText(const record::Moment& moment);

} // namespace littoral::exchange
