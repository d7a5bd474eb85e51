// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/due.h"
#include "core/record/regimen.h"

#include <QStringList>

/// Doses of a regimen in words.
namespace littoral::wording {

/// "4 mL": an amount as a syringe or a scale is read, three figures at most.
[[nodiscard]] QString doseAmount(double amount, const QString& unit);
/// "Dose 4 mL of Green Mix".
[[nodiscard]] QString doseTitle(const care::DueItem& item);
/// Why it is due, and how much of the full dose it is.
[[nodiscard]] QStringList doseReasons(const care::DueItem& item, const QDate& today);
/// "every 2 days", "Mon, Wed and Fri".
[[nodiscard]] QString doseDays(int everyDays, int weekdays);
/// "Green Mix: 4 mL every 2 days from 25 Nov; adds 1.2 mg/L NO₃, 0.1 mg/L PO₄ each time" for a list; without litres the
/// rise is left out.
[[nodiscard]] QString regimenLine(const record::DoseRegimen& regimen, std::optional<double> net_L, const QDate& today);

} // namespace littoral::wording
