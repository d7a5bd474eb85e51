// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wording/plan_sentences.h"

#include <gtest/gtest.h>

using namespace littoral;
using namespace Qt::StringLiterals;

namespace {

const QDate kToday(2026, 11, 25);
const record::Moment kFlooded = record::Moment::fromIso(u"2026-11-09T10:00:00Z"_s);

} // namespace

TEST(PlanSentences, NamesOfPlans)
{
    EXPECT_EQ(wording::planName({0.3, 3.0}, kToday, kToday), u"30 % every 3 days"_s);
    EXPECT_EQ(wording::planName({0.5, 1.0, 14.0}, kToday, kToday), u"50 % daily, half from 9 Dec"_s);
    EXPECT_EQ(wording::planName({0.0, 7.0}, kToday, kToday), u"no change"_s);
    EXPECT_EQ(wording::planName({0.3, 7.0}, kToday, kToday, u"rain barrel"_s), u"30 % every 7 days from rain barrel"_s);
    EXPECT_EQ(wording::presentPlanName(), u"as planned now"_s);
    EXPECT_EQ(wording::planAdoptedLabel(u"30 % every 3 days"_s, u"Slate Ford"_s),
              u"Plan adopted: 30 % every 3 days, Slate Ford"_s);
}

TEST(PlanSentences, TheNextTest)
{
    forecast::TestValue test;
    test.substance = forecast::Substance::Nitrite;
    test.day = 18.0;
    test.width_d = 6.2;
    test.expectedWidth_d = 4.1;
    EXPECT_EQ(wording::nextTestText(test, kFlooded, kToday),
              u"A nitrite test on 27 Nov would narrow the range from 6 days to about 4."_s);
    const forecast::TestOutcome zero{0.0, 0.0, 0.4, 18.0, 20.0, 23.0};
    EXPECT_EQ(wording::testOutcomeText(zero, u"mg/L NO₂"_s, kFlooded, kToday),
              u"If it reads 0 mg/L NO₂ (4 in 10): 27 Nov – 2 Dec."_s);
}

TEST(PlanSentences, WhatWasLearnedNamesTheLayouts)
{
    const QString text =
        wording::learnedText(wording::LearnedKind::SoilRelease, 1.62, 2.79, 1.9, {u"Fen Corner 1"_s, u"Mill Race 2"_s});
    EXPECT_TRUE(text.contains(u"1.6 times"_s)) << text.toStdString();
    EXPECT_TRUE(text.contains(u"Fen Corner 1"_s));
    EXPECT_TRUE(text.contains(u"Mill Race 2"_s));
    EXPECT_TRUE(text.contains(u"2.8"_s));
}

TEST(PlanSentences, TheTrackRecord)
{
    EXPECT_EQ(wording::heldBandsText(41, 34), u"Of 41 readings, the 8-in-10 bands held 34 (83 in 100)."_s);
    EXPECT_EQ(wording::heldBandsText(0, 0), u"No reading has come in yet against a kept forecast."_s);
    EXPECT_TRUE(wording::sharpnessText(4.5, 10.0).contains(u"0.45 times"_s));
    EXPECT_TRUE(wording::sharpnessText(4.5, 0.0).isEmpty());
    EXPECT_TRUE(wording::wideningText(1.0).isEmpty());
    EXPECT_TRUE(wording::wideningText(1.53).contains(u"1.5 times"_s));
}

TEST(PlanSentences, ReadingsAndFilterAreToldApart)
{
    forecast::DateOdds odds;
    odds.day = {16.0, 18.0, 20.0, 21.0, 23.0, 26.0, 30.0};
    odds.gridDays = {16.0, 60.0};
    odds.cumulative = {0.02, 0.99};
    odds.notByLast = 0.01;
    odds.lastDay = 60.0;
    const QString readings = wording::readingsClearText(u"G2"_s, odds, kFlooded, kToday);
    const QString filter = wording::carriesLoadText(odds, 0.12, kFlooded, kToday);
    EXPECT_TRUE(readings.startsWith(u"Readings clear for G2"_s)) << readings.toStdString();
    EXPECT_TRUE(filter.startsWith(u"Filter carries 0.12 mg/L N a day"_s)) << filter.toStdString();
    EXPECT_TRUE(wording::carriesLoadText({}, 0.12, kFlooded, kToday).isEmpty());
    EXPECT_TRUE(wording::carriesAtGateText(0.3, 0.1).endsWith(u"3 in 10."_s));
    EXPECT_TRUE(wording::loadRemark(0.0, 0.0, 0.0, false).isEmpty());
    EXPECT_TRUE(wording::loadRemark(0.03, 0.02, 0.05, false).contains(u"0.10 mg/L N a day"_s))
        << wording::loadRemark(0.03, 0.02, 0.05, false).toStdString();
}
