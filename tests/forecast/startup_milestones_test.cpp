// SPDX-License-Identifier: GPL-3.0-or-later
// Published start-up figures against the prior. Sources stand beside each figure in the data file. Rows the prior does
// not meet are kept as known misses: the test fails when one of them turns into a hit or disappears, too, so that
// nobody loses sight of them.
#include "tests/forecast/milestone_rows.h"

#include <gtest/gtest.h>

#include <cstdio>
#include <set>

namespace littoral::forecast::published {
namespace {

std::vector<Row> rows()
{
    return readRows(LITTORAL_SOURCE_DIR "/tests/data/forecast/startup_milestones.csv");
}

TEST(StartupMilestones, AreAllThereWithASourceAndAReason)
{
    const std::set<std::string> known{"met", "missed", "not usable"};
    std::set<std::string> ids;
    for (const Row& row : rows()) {
        ids.insert(row.id);
        EXPECT_TRUE(known.contains(row.expected)) << row.id;
        EXPECT_FALSE(row.source.empty() || row.evidence.empty() || row.note.empty()) << row.id;
    }
    const std::set<std::string> all{"M01", "M02", "M03", "M04", "M05", "M06", "M07", "M08", "M09", "M10", "M11",
                                    "M12", "M13", "M14", "M15", "M16", "M17", "M18", "P01", "P02", "P03"};
    EXPECT_EQ(ids, all);
}

TEST(StartupMilestones, AreMetOrKnownToBeMissed)
{
    Judge judge(300);
    for (const Row& row : rows()) {
        if (!row.usable()) {
            continue;
        }
        const Verdict v = judge.of(row);
        std::printf("%s %-50s %6.2f/%.2f/%.2f %s\n", row.id.c_str(), row.quantity.c_str(), v.q10, v.q50, v.q90,
                    v.hit ? "met" : "missed");
        EXPECT_EQ(v.hit ? "met" : "missed", row.expected) << row.id << " " << row.quantity << ": " << row.note;
    }
}

} // namespace
} // namespace littoral::forecast::published
