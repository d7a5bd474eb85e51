// SPDX-License-Identifier: GPL-3.0-or-later
// Phases, alerts and the standing of a layout.
#include "core/care/limits.h"
#include "core/care/standing.h"
#include "tests/care/care_row.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using namespace Qt::StringLiterals;
using namespace littoral;
using care::CyclePhase;
using care::LayoutPhase;
using care::StandingReason;
using care::Status;
using record::EntryKind;

void pair(CareRow& row, int age, double tan, double no2)
{
    row.read(u"tan"_s, age, tan);
    row.read(u"no2"_s, age, no2);
}

care::Standing standing(CareRow& row, int age, int hour = 18)
{
    return care::standing(row.sorted(), row.layoutId, CareRow::at(age, hour));
}

TEST(Phase, ByAge)
{
    CareRow row;
    const auto phase = [&](int age, int hour = 18) { return care::phase(row.record(), CareRow::at(age, hour)); };
    EXPECT_EQ(phase(-1), LayoutPhase::Planned);
    EXPECT_EQ(phase(0, 9), LayoutPhase::Planned);
    EXPECT_EQ(phase(0, 11), LayoutPhase::Week1);
    EXPECT_EQ(phase(7, 23), LayoutPhase::Week1);
    EXPECT_EQ(phase(8, 0), LayoutPhase::Week2);
    EXPECT_EQ(phase(14), LayoutPhase::Week2);
    EXPECT_EQ(phase(15), LayoutPhase::Weeks3To4);
    EXPECT_EQ(phase(29), LayoutPhase::Weeks5To6);
    EXPECT_EQ(phase(43), LayoutPhase::Weeks7To8);
    EXPECT_EQ(phase(57), LayoutPhase::Mature);
    EXPECT_EQ(phase(366), LayoutPhase::Old);
    row.layout().ended = CareRow::at(20);
    EXPECT_EQ(phase(100), LayoutPhase::Weeks3To4);
    EXPECT_EQ(*care::daysOf(LayoutPhase::Weeks3To4).first, 15);
    EXPECT_EQ(*care::daysOf(LayoutPhase::Weeks3To4).last, 28);
}

/// A plain cycle: ammonia to day 12, nitrite to day 32, clear from day 35.
CareRow cycled()
{
    CareRow row;
    const std::vector<std::array<double, 3>> days{{2, 1.0, 0.0},   {5, 2.0, 0.02},  {9, 3.0, 0.05}, {12, 1.2, 0.1},
                                                  {15, 0.3, 0.6},  {19, 0.1, 1.5},  {24, 0.1, 1.6}, {28, 0.05, 0.8},
                                                  {32, 0.05, 0.2}, {35, 0.0, 0.02}, {39, 0.0, 0.0}, {44, 0.0, 0.0},
                                                  {50, 0.0, 0.0},  {60, 0.0, 0.0}};
    for (const auto& day : days) {
        pair(row, static_cast<int>(day[0]), day[1], day[2]);
    }
    return row;
}

TEST(Cycle, PhasesInTheirOrder)
{
    CareRow row = cycled();
    std::vector<CyclePhase> phases;
    for (const care::CyclePhaseSpan& span : care::cyclePhases(row.sorted().layouts.at(row.layoutId), CareRow::at(62))) {
        phases.push_back(span.phase);
    }
    EXPECT_THAT(phases, testing::ElementsAre(CyclePhase::Unknown, CyclePhase::AmmoniaRising, CyclePhase::AmmoniaFalling,
                                             CyclePhase::NitriteRising, CyclePhase::NitriteFalling, CyclePhase::Clear,
                                             CyclePhase::GrowingIn, CyclePhase::Settled));
}

TEST(Cycle, SpansAreWithoutGapsAndAgreeWithThePhaseAtAnInstant)
{
    CareRow row = cycled();
    const auto spans = care::cyclePhases(row.sorted().layouts.at(row.layoutId), CareRow::at(62));
    EXPECT_EQ(spans.front().from, row.layout().flooded);
    EXPECT_EQ(spans.back().to, CareRow::at(62));
    for (std::size_t i = 0; i < spans.size(); ++i) {
        EXPECT_TRUE(i == 0 || spans[i - 1].to == spans[i].from);
        EXPECT_EQ(care::cyclePhase(row.record(), spans[i].from), spans[i].phase);
        EXPECT_EQ(care::cyclePhase(row.record(), spans[i].to.plusMs(-1)), spans[i].phase);
    }
}

TEST(Cycle, OldReadingsLeaveASettledTankSettledAndAYoungOneUnknown)
{
    CareRow row = cycled();
    EXPECT_EQ(care::cyclePhase(row.record(), CareRow::at(200)), CyclePhase::Settled);
    CareRow young;
    pair(young, 3, 2.0, 0.0);
    EXPECT_EQ(care::cyclePhase(young.record(), CareRow::at(23)), CyclePhase::AmmoniaRising);
    EXPECT_EQ(care::cyclePhase(young.record(), CareRow::at(25)), CyclePhase::Unknown);
}

TEST(Cycle, EarlySilenceIsNotClearButMatureMediaMayBe)
{
    CareRow fresh;
    pair(fresh, 3, 0.0, 0.0);
    EXPECT_EQ(care::cyclePhase(fresh.record(), CareRow::at(3)), CyclePhase::Unknown);
    CareRow mature(record::StartMethod::MatureMedia);
    pair(mature, 2, 0.5, 0.05);
    EXPECT_EQ(care::cyclePhase(mature.record(), CareRow::at(2)), CyclePhase::MatureMediaSettling);
    pair(mature, 4, 0.0, 0.0);
    EXPECT_EQ(care::cyclePhase(mature.record(), CareRow::at(4)), CyclePhase::Clear);
}

TEST(Alerts, SinceTheFirstOfTheRun)
{
    CareRow row;
    for (const auto& [age, value] :
         std::vector<std::pair<int, double>>{{10, 0.5}, {12, 0.1}, {14, 0.4}, {16, 0.8}, {18, 0.5}}) {
        row.read(u"no2"_s, age, value);
    }
    const auto alerts = care::alertsOf(row.sorted(), row.layoutId, CareRow::at(19));
    ASSERT_EQ(alerts.size(), 1U);
    EXPECT_EQ(alerts[0].since, CareRow::at(14, 8));
    EXPECT_EQ(alerts[0].newest, CareRow::at(18, 8));
    EXPECT_EQ(alerts[0].level, Status::Watch);
    EXPECT_TRUE(alerts[0].forbidsAnimals);
    EXPECT_NEAR(alerts[0].limit * water::kNitritePerN, 1.0, 1e-9);
    EXPECT_TRUE(care::alertsOf(row.row, row.layoutId, CareRow::at(33)).empty()) << "two weeks on it says nothing";
}

TEST(Alerts, AnimalsMakeNitriteAnAct)
{
    CareRow row;
    row.read(u"no2"_s, 50, care::Limits{}.nitriteAnimals);
    EXPECT_TRUE(care::alertsOf(row.row, row.layoutId, CareRow::at(51)).empty());
    row.animals(u"tetra"_s, 49, 6);
    const auto alerts = care::alertsOf(row.sorted(), row.layoutId, CareRow::at(51));
    ASSERT_EQ(alerts.size(), 1U);
    EXPECT_EQ(alerts[0].level, Status::Act);
}

TEST(Alerts, TargetsObservationsAndLosses)
{
    CareRow row;
    row.target(u"gh"_s, 0.7, 1.1);
    row.read(u"gh"_s, 40, 1.0);
    EXPECT_TRUE(care::alertsOf(row.row, row.layoutId, CareRow::at(50)).empty());
    row.read(u"gh"_s, 45, 0.6);
    row.observe(u"alg_hair"_s, 46, 1);
    row.observe(u"alg_hair"_s, 48, 2);
    row.observe(u"alg_hair"_s, 49, 3);
    row.animals(u"tetra"_s, 30, 6);
    row.enter(EntryKind::Loss, 48, u"tetra"_s).count = 2;
    const auto alerts = care::alertsOf(row.sorted(), row.layoutId, CareRow::at(50));
    ASSERT_EQ(alerts.size(), 3U);
    const auto of = [&](care::AlertKind kind) { return *std::ranges::find(alerts, kind, &care::Alert::kind); };
    EXPECT_EQ(of(care::AlertKind::BelowTarget).since, CareRow::at(45, 8));
    EXPECT_EQ(of(care::AlertKind::Severity).since, CareRow::at(48, 9));
    EXPECT_EQ(of(care::AlertKind::Severity).level, Status::Act);
    EXPECT_DOUBLE_EQ(of(care::AlertKind::Losses).value, 2.0);
    EXPECT_EQ(alerts.back().level, Status::Watch) << "the most serious come first";
}

TEST(Standing, SaysWhatIsNotKnownAndWhatWouldTell)
{
    CareRow row;
    row.changes({1, 2, 3, 4, 5, 6, 7, 9, 11}, 0.5);
    EXPECT_EQ(standing(row, 0).reason, StandingReason::NothingRead);
    row.read(u"tan"_s, 12, 0.1);
    const care::Standing s = care::standing(row.sorted(), row.layoutId, CareRow::at(12, 18), {});
    EXPECT_EQ(s.status, Status::Unknown);
    EXPECT_EQ(s.reason, StandingReason::ReadingsOld);
    EXPECT_EQ(s.missing, QStringList{u"no2"_s});
}

TEST(Standing, WaitsForACycleAndIsWellWhenSettled)
{
    CareRow row = cycled();
    EXPECT_EQ(care::standing(row.sorted(), row.layoutId, CareRow::at(15, 18), {}).status, Status::Watch)
        << "nitrite is at its height";
    EXPECT_EQ(care::standing(row.row, row.layoutId, CareRow::at(12, 18), {}).status, Status::Waiting);
    EXPECT_EQ(care::standing(row.row, row.layoutId, CareRow::at(61), {}).status, Status::Ok);
    EXPECT_EQ(care::standing(row.row, row.layoutId, CareRow::at(-3), {}).reason, StandingReason::NotFlooded);
}

TEST(Standing, OverdueWorkShows)
{
    CareRow row = cycled();
    row.changes({1, 2, 3}, 0.5);
    const care::Standing s = standing(row, 61);
    EXPECT_EQ(s.status, Status::Overdue);
    EXPECT_GT(s.overdueCount, 0);
}

TEST(Standing, ChartsWhatMattersNow)
{
    CareRow row = cycled();
    EXPECT_EQ(standing(row, 12).chartParameters, (QStringList{u"tan"_s, u"no2"_s}));
    EXPECT_EQ(standing(row, 61).chartParameters, QStringList{u"no3"_s});
    row.target(u"kh"_s, 1.0, 2.0);
    row.read(u"kh"_s, 60, 0.5);
    EXPECT_EQ(standing(row, 61).chartParameters, QStringList{u"kh"_s});
    CareRow nano = cycled();
    nano.layout().measuredNet_L = 18.0;
    nano.animals(u"cherry shrimp"_s, 55, 12);
    EXPECT_EQ(standing(nano, 61).chartParameters, (QStringList{u"cond"_s, u"gh"_s}));
    EXPECT_EQ(standing(nano, 61).newest.front().parameter, u"tan"_s) << "neither of the charted was read";
}

} // namespace
