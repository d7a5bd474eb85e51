// SPDX-License-Identifier: GPL-3.0-or-later
#include "temp_store.h"

#include <ctime>

using namespace littoral;
using namespace littoral::testing;
using namespace Qt::StringLiterals;
using namespace littoral::record;
using store::Edit;

namespace {

Moment cameBack(TempStore& temp, const Moment& at)
{
    Edit edit(u"time"_s);
    const TankId tank = edit.put(tankNamed(u"T"_s));
    const LayoutId layout = edit.put(layoutIn(tank));
    edit.put(readingOf(tank, layout, u"0.1"_s, at));
    EXPECT_TRUE(succeeded(temp->apply(edit)));
    temp.reopen();
    const Moment read = temp->load()->layouts.at(layout).readings.front().at;
    EXPECT_TRUE(succeeded(temp->undo()));
    return read;
}

} // namespace

// Summer time ends on the last Sunday of October and begins on the last Sunday of March, at 01:00 UTC (Directive
// 2000/84/EC): in 2026 on 25 October and 29 March.
TEST(Times, InstantAndTypedOffsetComeBackAcrossClockChanges)
{
    TempStore temp;
    for (const char* iso : {"2026-10-25T02:30:00+02:00", "2026-10-25T02:30:00+01:00", "2026-10-25T00:10:00+02:00",
                            "2026-10-25T23:50:00+01:00", "2026-03-29T01:59:59+01:00", "2026-03-29T03:00:00+02:00",
                            "2026-07-01T00:00:00+14:00", "2026-07-01T23:59:59-12:00", "1969-12-31T23:00:00-09:30"}) {
        const Moment typed = moment(iso);
        const Moment read = cameBack(temp, typed);
        EXPECT_EQ(read.utcMs(), typed.utcMs()) << iso;
        EXPECT_EQ(read.offsetSeconds(), typed.offsetSeconds()) << iso;
        EXPECT_EQ(read.localDate(), typed.localDate()) << iso;
        EXPECT_EQ(read.toIso(), QString::fromLatin1(iso));
    }
}

TEST(Times, ARepeatedHourKeepsItsOrder)
{
    TempStore temp;
    Edit edit(u"night"_s);
    const TankId tank = edit.put(tankNamed(u"T"_s));
    const LayoutId layout = edit.put(layoutIn(tank));
    edit.put(readingOf(tank, layout, u"0.2"_s, moment("2026-10-25T02:10:00+01:00")));
    edit.put(readingOf(tank, layout, u"0.1"_s, moment("2026-10-25T02:50:00+02:00")));
    ASSERT_TRUE(succeeded(temp->apply(edit)));
    const auto row = temp->load();
    const auto& readings = row->layouts.at(layout).readings;
    EXPECT_EQ(readings.at(0).typed, u"0.1"_s);
    EXPECT_EQ(readings.at(1).typed, u"0.2"_s);
}

TEST(Times, MillisecondsAreKept)
{
    TempStore temp;
    const Moment at(1'785'000'000'123, -12'600);
    EXPECT_EQ(cameBack(temp, at).utcMs(), at.utcMs());
}
