// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/supplies.h"

#include <QDate>
#include <QString>
#include <QStringList>

/// How things in stock stand, in words.
namespace littoral::wording {

/// "Conditioner", "Salt" ... of a supply's kind; the code itself when it is none of ours.
[[nodiscard]] QString supplyKindName(const QString& kind);
/// "Get more Clear drops", "Renew Drops B, its date is near or past".
[[nodiscard]] QString supplyTitle(const care::SupplyStanding& standing);
/// "About 120 mL", "3.2 kg", "unknown": what is left.
[[nodiscard]] QString remainingText(const care::SupplyStanding& standing);
/// "about 9 days", "more than a year", empty when it cannot be told.
[[nodiscard]] QString daysLeftText(const care::SupplyStanding& standing);
/// "good until 30 Apr 2027", "53 days past its date"; empty without a date.
[[nodiscard]] QString expiryText(const care::SupplyStanding& standing, const QDate& today);
/// What is left and from what that is reckoned, when it runs out, its date. Whole sentences.
[[nodiscard]] QStringList supplyReasons(const care::SupplyStanding& standing, const QDate& today);

} // namespace littoral::wording
