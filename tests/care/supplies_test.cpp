// SPDX-License-Identifier: GPL-3.0-or-later
// What is left of things in stock. Sums are worked by hand beside each check; that a cylinder is judged by its weight
// and not by its gauge is common practice (the pressure over liquid CO2 stays while any liquid is left).
#include "core/care/supplies.h"
#include "core/wording/supply_sentences.h"
#include "tests/care/care_row.h"

#include <gtest/gtest.h>

using namespace littoral;
using namespace Qt::StringLiterals;
using care::SupplyBasis;

namespace {

record::Supply& shelve(CareRow& row, const QString& name, const QString& kind, double amount, const QString& unit,
                       int openedAge)
{
    record::Supply supply;
    supply.id = record::SupplyId{900 + static_cast<qint64>(row.row.supplies.size())};
    supply.name = name;
    supply.kind = kind;
    supply.amount = amount;
    supply.unit = unit;
    supply.opened = CareRow::day(openedAge);
    row.row.supplies.push_back(supply);
    return row.row.supplies.back();
}

void use(CareRow& row, const record::Supply& supply, const care::SupplyUse& how)
{
    row.row.settings.insert(care::supplyUseKey(supply.id), care::supplyUseText(how));
}

void dose(CareRow& row, int age, double amount, const QString& unit)
{
    record::Entry& entry = row.enter(record::EntryKind::Dose, age, u"green drops"_s);
    entry.amount = amount;
    entry.unit = unit;
}

} // namespace

TEST(SupplyUnits, ConvertWithinWhatTheyMeasure)
{
    EXPECT_DOUBLE_EQ(*care::inUnit(1.5, u"L"_s, u"mL"_s), 1500.0);
    EXPECT_DOUBLE_EQ(*care::inUnit(250.0, u"mg"_s, u"g"_s), 0.25);
    EXPECT_DOUBLE_EQ(*care::inUnit(3.0, u"pieces"_s, u"Pieces "_s), 3.0);
    EXPECT_FALSE(care::inUnit(1.0, u"g"_s, u"mL"_s)) << "no density is known";
    EXPECT_FALSE(care::inUnit(1.0, u"drops"_s, u"mL"_s));
}

TEST(Supplies, DosesSinceOpeningAreTakenOff)
{
    CareRow row;
    shelve(row, u"Green drops"_s, u"fertiliser"_s, 0.5, u"L"_s, 10);
    dose(row, 5, 100.0, u"mL"_s); // before it was opened
    for (int age = 12; age <= 40; age += 2) {
        dose(row, age, 5.0, u"mL"_s); // 15 doses, 75 mL
    }
    record::Entry& planned = row.enter(record::EntryKind::Dose, 41, u"green drops"_s);
    planned.amount = 50.0;
    planned.unit = u"mL"_s;
    planned.planned = true;
    dose(row, 40, 1.0, u"squirts"_s);
    const auto standing = care::standingOf(row.sorted(), row.row.supplies[0], CareRow::at(40, 18));
    EXPECT_EQ(standing.basis, SupplyBasis::Doses);
    EXPECT_EQ(standing.doses, 15);
    EXPECT_EQ(standing.uncounted, 1);
    EXPECT_NEAR(*standing.remaining, 0.425, 1e-9);
    // The last 28 days, from day 12 at 18:00: the dose at noon of day 12 is out, fourteen of 5 mL are in.
    EXPECT_NEAR(*standing.perDay, 14 * 0.005 / 28.0, 1e-9);
    EXPECT_NEAR(*standing.daysLeft, 0.425 / (14 * 0.005 / 28.0), 1e-6);
    EXPECT_EQ(standing.runsOut, CareRow::day(40).addDays(170));
    EXPECT_EQ(standing.wanted(), standing.runsOut.addDays(-7));
}

TEST(Supplies, WaterChangesUseUpWhatIsDosedByTheLitre)
{
    CareRow row;
    record::SourceWater tap, pure;
    tap.id = record::SourceWaterId{701};
    pure.id = record::SourceWaterId{702};
    row.row.sources = {tap, pure};
    row.layout().source = tap.id;
    const record::Supply supply = shelve(row, u"Conditioner"_s, u"conditioner"_s, 250.0, u"mL"_s, 1);
    care::SupplyUse how;
    how.perLitre = 0.1;
    how.source = tap.id;
    use(row, supply, how);
    EXPECT_EQ(care::supplyUse(row.row, supply.id), how) << "kept and read back";
    row.changes({2, 9, 16}); // 50 % of 100 L each: 15 mL
    row.change(20, 0.5).source = pure.id;
    const auto standing = care::standingOf(row.sorted(), row.row.supplies[0], CareRow::at(21));
    EXPECT_EQ(standing.changes, 3);
    EXPECT_NEAR(*standing.remaining, 235.0, 1e-9);
    // Opened at midnight of day 1, asked at noon of day 21: 20.5 days.
    EXPECT_NEAR(*standing.perDay, 15.0 / 20.5, 0.01);
}

TEST(Supplies, ACylinderIsReckonedByWeighings)
{
    CareRow row;
    const record::Supply supply = shelve(row, u"Steel bottle"_s, u"co2"_s, 2.0, u"kg"_s, 1);
    care::SupplyUse how;
    how.tank = row.tankId;
    how.empty_g = 5000.0;
    use(row, supply, how);
    row.read(u"cylinder"_s, 2, 6500.0);
    const auto once = care::standingOf(row.sorted(), row.row.supplies[0], CareRow::at(2, 8));
    EXPECT_EQ(once.basis, SupplyBasis::Weighings);
    EXPECT_NEAR(*once.remaining, 1500.0, 1e-9);
    EXPECT_FALSE(once.daysLeft) << "one weighing says nothing of the use";
    row.read(u"cylinder"_s, 12, 5300.0);
    const auto twice = care::standingOf(row.sorted(), row.row.supplies[0], CareRow::at(13, 8));
    EXPECT_NEAR(*twice.perDay, 120.0, 1e-9);    // 1200 g in 10 days
    EXPECT_NEAR(*twice.remaining, 180.0, 1e-9); // 300 g less a day's use since
    EXPECT_NEAR(*twice.daysLeft, 1.5, 1e-9);
    const QString why = wording::supplyReasons(twice, CareRow::day(13)).join(u' ');
    EXPECT_TRUE(why.contains(u"180 g"_s) && why.contains(u"120 g a day"_s)) << why.toStdString();
}

TEST(Supplies, NothingIsPretendedWhereNothingIsKnown)
{
    CareRow row;
    record::Supply& bare = shelve(row, u"Something"_s, u"other"_s, 0.0, {}, 1);
    bare.amount.reset();
    const auto standing = care::standingOf(row.sorted(), row.row.supplies[0], CareRow::at(30));
    EXPECT_EQ(standing.basis, SupplyBasis::Stated);
    EXPECT_FALSE(standing.remaining);
    EXPECT_FALSE(standing.wanted().isValid());
    EXPECT_EQ(wording::remainingText(standing), u"unknown"_s);
}
