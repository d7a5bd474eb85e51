// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/moment.h"

#include <QDate>
#include <QString>

namespace littoral::ui {

/// "25 Nov 07:30".
[[nodiscard]] QString momentText(const record::Moment& at, const QDate& today);
/// How long ago, for a cell: "today", "1 d", "30 d".
[[nodiscard]] QString agoText(const QDate& day, const QDate& today);
/// Reads "2026-11-25 07:30", "25 Nov 07:30", "07:30" (today), "25.11.2026", "25 Nov 2026". Invalid when not understood.
[[nodiscard]] record::Moment momentFrom(const QString& text, const record::Moment& now);
/// What momentFrom reads back without loss of more than seconds: "2026-11-25 07:30".
[[nodiscard]] QString momentEditText(const record::Moment& at);

} // namespace littoral::ui
