// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"

#include <QDate>
#include <QString>
#include <optional>
#include <vector>

/// What is kept in stock, how long it lasts, and what is past its date. Reckoned from the record each time: nothing is
/// counted down in the store, so an entry typed late or taken back sets the figure right by itself.
namespace littoral::care {

/// How a supply is used up besides the doses entered under its name. Kept in Row::settings under supplyUseKey().
struct SupplyUse
{
    std::optional<double> perLitre; ///< of the supply's unit per litre of new water, at every water change
    record::SourceWaterId source;   ///< only changes with this water; none: all
    record::TankId tank;            ///< a cylinder: the tank at which it hangs
    std::optional<double> empty_g;  ///< a cylinder: its weight empty, with what is always weighed with it

    bool operator==(const SupplyUse&) const = default;
};
[[nodiscard]] QString supplyUseKey(record::SupplyId supply); ///< "supply.use.<id>"
[[nodiscard]] SupplyUse supplyUse(const record::Row& row, record::SupplyId supply);
/// As kept: a JSON object, empty when there is nothing to keep.
[[nodiscard]] QString supplyUseText(const SupplyUse& use);

/// Kinds a supply may have, as in files; the first is what a new one is.
[[nodiscard]] const std::vector<QString>& supplyKinds();

/// `amount` in `from` as `to`; nothing where the units measure different things or are not known. mg, g, kg; mL, L;
/// anything else only into itself.
[[nodiscard]] std::optional<double> inUnit(double amount, const QString& from, const QString& to);

enum class SupplyBasis {
    Stated,    ///< nothing was used that can be counted: what was stated stands
    Doses,     ///< less doses, tests and water changes since
    Weighings, ///< a cylinder on the scale
    Date,      ///< a test kit: only its date is known
};

/// How one supply, or one test kit with a date, stands.
struct SupplyStanding
{
    record::SupplyId supply; ///< none for a test kit
    record::KitId kit;
    QString name;
    QString kind;
    QString unit; ///< of the figures below; grams of gas for a cylinder that was weighed
    SupplyBasis basis = SupplyBasis::Stated;
    QDate since; ///< counted from: opened, or first of the weighings
    std::optional<double> stated;
    std::optional<double> remaining;
    std::optional<double> perDay;
    std::optional<double> daysLeft;
    QDate runsOut;
    QDate expires;
    int doses = 0;     ///< counted
    int changes = 0;   ///< water changes counted
    int weighings = 0; ///< of a cylinder
    int uncounted = 0; ///< doses in a unit that does not convert

    [[nodiscard]] bool expired(const QDate& today) const { return expires.isValid() && expires < today; }
    /// The day by which it ought to be got: a week before it runs out, two weeks before its date; invalid when neither
    /// is in sight.
    [[nodiscard]] QDate wanted() const;
    /// Whether it is its date that makes it wanted, not what is left.
    [[nodiscard]] bool wantedByDate() const;
    /// Key under which closed and moved rounds are kept: "supply.<id>", "kit.<id>".
    [[nodiscard]] QString key() const;
};

/// Every supply and every kit in use that has a date, as they stand at `now`: soonest wanted first, then by name.
[[nodiscard]] std::vector<SupplyStanding> supplyStandings(const record::Row& row, const record::Moment& now);
[[nodiscard]] SupplyStanding standingOf(const record::Row& row, const record::Supply& supply,
                                        const record::Moment& now);

} // namespace littoral::care
