// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/row.h"

#include <gtest/gtest.h>

using namespace littoral::record;
using namespace Qt::StringLiterals;

namespace {

constexpr TankId kTank{1};

Moment day(int number)
{
    return Moment::fromIso(u"2026-01-01T12:00:00Z"_s).plusDays(number);
}

Layout layout(qint64 id, int flooded, std::optional<int> ended = {})
{
    Layout it;
    it.id = LayoutId{id};
    it.tank = kTank;
    it.flooded = day(flooded);
    if (ended) {
        it.ended = day(*ended);
    }
    return it;
}

Row rowWith(const std::vector<Layout>& layouts)
{
    Row row;
    row.tanks.push_back({kTank, u"Slate Ford"_s, 0, 0, 0, 0, 0, {}});
    for (const Layout& it : layouts) {
        row.layouts[it.id].layout = it;
    }
    return row;
}

qint64 current(const Row& row, int at)
{
    const LayoutRecord* found = row.currentLayout(kTank, day(at));
    return found == nullptr ? 0 : found->layout.id.value;
}

qint64 at(const Row& row, int when)
{
    const LayoutRecord* found = row.layoutAt(kTank, day(when));
    return found == nullptr ? 0 : found->layout.id.value;
}

Reading reading(qint64 id, const QString& parameter, int when, qint64 kit = 0)
{
    Reading it;
    it.id = ReadingId{id};
    it.parameter = parameter;
    it.at = day(when);
    it.kit = KitId{kit};
    return it;
}

} // namespace

TEST(CurrentLayout, RunningElseLaterElseNewestEnded)
{
    const Row row = rowWith({layout(7, 0, 100), layout(5, 120, 200), layout(6, 300)});
    EXPECT_EQ(current(row, -10), 7) << "none runs yet: the one flooded next";
    EXPECT_EQ(current(row, 0), 7);
    EXPECT_EQ(current(row, 99), 7);
    EXPECT_EQ(current(row, 110), 5) << "between layouts: the one flooded next";
    EXPECT_EQ(current(row, 150), 5);
    EXPECT_EQ(current(row, 400), 6);
    EXPECT_EQ(current(rowWith({layout(7, 0, 100), layout(5, 120, 200)}), 250), 5) << "all ended: the newest";
    EXPECT_EQ(current(rowWith({layout(1, 0), layout(2, 50)}), 60), 2) << "two not ended: the newer";
    EXPECT_EQ(current(rowWith({}), 0), 0);
}

TEST(LayoutAt, BelongsOrIsNearest)
{
    const Row row = rowWith({layout(7, 0, 100), layout(5, 120, 200), layout(6, 300)});
    EXPECT_EQ(at(row, -5), 7);
    EXPECT_EQ(at(row, 50), 7);
    EXPECT_EQ(at(row, 104), 7) << "4 days after the end, 16 before the next";
    EXPECT_EQ(at(row, 116), 5) << "16 days after the end, 4 before the next";
    EXPECT_EQ(at(row, 120), 5);
    EXPECT_EQ(at(row, 249), 5);
    EXPECT_EQ(at(row, 251), 6);
    EXPECT_EQ(at(row, 900), 6);
    EXPECT_EQ(at(rowWith({layout(1, 0), layout(2, 50)}), 49), 1);
    EXPECT_EQ(at(rowWith({layout(1, 0, 10)}), 90), 1);
    EXPECT_EQ(at(rowWith({}), 0), 0);
}

TEST(LayoutsOf, OldestFirstOfThatTankOnly)
{
    Row row = rowWith({layout(7, 10), layout(5, 20), layout(9, 0)});
    row.layouts[LayoutId{4}].layout.tank = TankId{2};
    std::vector<qint64> ids;
    for (const LayoutRecord* it : row.layoutsOf(kTank)) {
        ids.push_back(it->layout.id.value);
    }
    EXPECT_EQ(ids, (std::vector<qint64>{9, 7, 5}));
}

TEST(LookUps, ByIdNameAndTime)
{
    Row row = rowWith({layout(1, 0)});
    EXPECT_EQ(row.tankNamed(u" slate FORD "_s), row.tank(kTank));
    EXPECT_EQ(row.tankNamed(u"Slate"_s), nullptr);
    EXPECT_EQ(row.tank(TankId{9}), nullptr);
    LayoutRecord& record = row.layouts[LayoutId{1}];
    record.readings = {reading(3, u"no2"_s, 2), reading(1, u"no2"_s, 1), reading(2, u"no2"_s, 1),
                       reading(4, u"ph"_s, 5)};
    Entry done;
    done.id = EntryId{1};
    done.kind = EntryKind::Upkeep;
    done.subject = u"trim"_s;
    done.at = day(3);
    Entry planned = done;
    planned.id = EntryId{2};
    planned.planned = true;
    planned.at = day(1);
    record.entries = {done, planned};
    sortRow(row);
    EXPECT_EQ(record.readings.front().id, ReadingId{1});
    EXPECT_EQ(record.newest(u"no2"_s, day(1))->id, ReadingId{2});
    EXPECT_EQ(record.newest(u"no2"_s, day(0)), nullptr);
    EXPECT_EQ(record.readingsOf(u"no2"_s).size(), 3U);
    EXPECT_EQ(record.entries.front().id, EntryId{2});
    EXPECT_EQ(record.lastDone(EntryKind::Upkeep, day(9))->id, EntryId{1});
    EXPECT_EQ(record.lastDone(EntryKind::Upkeep, day(2)), nullptr) << "what is only planned was not done";
    EXPECT_EQ(record.lastDone(EntryKind::Upkeep, day(9), u"glass"_s), nullptr);
    EXPECT_EQ(row.recordCount(), 6U);
}

TEST(LookUps, KitOfTheNewestReadingElseTheFirstInUse)
{
    Row row = rowWith({layout(1, 0)});
    TestKit old;
    old.id = KitId{1};
    old.parameter = u"no2"_s;
    TestKit fresh = old;
    fresh.id = KitId{2};
    old.retired = true;
    row.kits = {old, fresh};
    LayoutRecord& record = row.layouts[LayoutId{1}];
    EXPECT_EQ(row.kitFor(record, u"no2"_s)->id, KitId{2});
    EXPECT_EQ(row.kitFor(record, u"ph"_s), nullptr);
    record.readings = {reading(1, u"no2"_s, 1, 1)};
    EXPECT_EQ(row.kitFor(record, u"no2"_s)->id, KitId{1});
}

TEST(EntryKinds, CodesAreUniqueAndComeBack)
{
    for (int i = 0; i <= static_cast<int>(EntryKind::Note); ++i) {
        const auto kind = static_cast<EntryKind>(i);
        EXPECT_EQ(entryKindFromCode(entryKindCode(kind)), kind);
        EXPECT_FALSE(entryKindName(kind).isEmpty());
    }
    EXPECT_FALSE(entryKindFromCode(u"unheard-of"_s));
}

TEST(Volume, MeasuredBeatsReckonedAndNothingStaysNothing)
{
    Tank tank;
    Layout it;
    EXPECT_FALSE(netVolume(tank, it)) << "no dimensions";
    it.measuredNet_L = 48.2;
    EXPECT_FALSE(netVolume(tank, it)->reckoned);
    EXPECT_EQ(netVolume(tank, it)->litres, 48.2);
    it.measuredNet_L.reset();
    // 60 x 30 x 36 cm of 6 mm glass, filled to 3 cm below the rim: inside 58.8 x 28.8 cm, water 36 - 0.6 - 3 = 32.4 cm
    // high.
    tank.length_cm = 60.0;
    tank.depth_cm = 30.0;
    tank.height_cm = 36.0;
    tank.glass_mm = 6.0;
    it.gap_cm = 3.0;
    EXPECT_TRUE(netVolume(tank, it)->reckoned);
    EXPECT_NEAR(netVolume(tank, it)->litres, 58.8 * 28.8 * 32.4 / 1000.0, 1e-9);
    EXPECT_NEAR(glassVolume_L(tank), 64.8, 1e-9);
    it.bed_L = 10.0;   // six tenths of a bed are grain
    it.rock_kg = 2.65; // a litre of quartz
    EXPECT_NEAR(netVolume(tank, it)->litres, 58.8 * 28.8 * 32.4 / 1000.0 - 6.0 - 1.0, 1e-9);
}
