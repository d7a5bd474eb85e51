// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/journeys_csv.h"

#include <gtest/gtest.h>

namespace {

using namespace Qt::StringLiterals;
using namespace littoral;

const record::Moment kNow = record::Moment::fromIso(u"2026-11-25T08:00:00Z"_s);

record::Row rowWithJourney()
{
    record::Row row;
    row.journeys.push_back({{7},
                            {2026, 12, 23},
                            {2027, 1, 3},
                            u"Ida, next door"_s,
                            u"+00 12; +00 13"_s,
                            u"\"key\" under the\npot"_s,
                            kNow});
    return row;
}

TEST(JourneysCsv, WhatIsWrittenReadsBack)
{
    const record::Row row = rowWithJourney();
    const QByteArray csv = exchange::journeysCsv(row);
    EXPECT_TRUE(exchange::isJourneysCsv(csv));
    exchange::Problems problems;
    int skipped = 0;
    const auto back = exchange::readJourneysCsv(csv, u"journeys.csv"_s, {}, kNow, problems, skipped);
    EXPECT_TRUE(problems.isEmpty()) << problems.sentences().join(u'\n').toStdString();
    ASSERT_EQ(back.size(), 1U);
    record::Journey wanted = row.journeys.front();
    wanted.id = {};
    EXPECT_EQ(back.front(), wanted);
    const auto again = exchange::readJourneysCsv(csv, u"journeys.csv"_s, row, kNow, problems, skipped);
    EXPECT_TRUE(again.empty());
    EXPECT_EQ(skipped, 1) << "what is there already";
}

TEST(JourneysCsv, WrongRowsAreNamed)
{
    exchange::Problems problems;
    int skipped = 0;
    const QByteArray csv = "leaves,returns,helper\n2026-12-23,2026-12-23,Ida\n23.12.2026,2027-01-03,Ida\n";
    EXPECT_TRUE(exchange::readJourneysCsv(csv, u"j.csv"_s, {}, kNow, problems, skipped).empty());
    EXPECT_EQ(problems.count(), 2);
    EXPECT_TRUE(problems.sentences().front().contains(u"j.csv, row 2"_s));
    exchange::Problems columns;
    EXPECT_TRUE(exchange::readJourneysCsv("leaves,returns,hotel\n", u"j.csv"_s, {}, kNow, columns, skipped).empty());
    EXPECT_TRUE(columns.sentences().front().contains(u"\"hotel\""_s));
    EXPECT_FALSE(exchange::isJourneysCsv("tank,at,parameter,value\n"));
}

} // namespace
