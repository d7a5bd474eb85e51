// SPDX-License-Identifier: GPL-3.0-or-later
// The weighing itself: three-valued items, what counts how much, what is never known.
#include "core/findings/findings.h"

#include "core/wording/finding_sentences.h"
#include "tests/findings/small_row.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

using namespace littoral;
using namespace Qt::StringLiterals;
using findings::Verdict;
using record::EntryKind;

namespace {

Verdict verdict(const findings::CaseView& view, const QString& item)
{
    const facts::Evidence parsed = facts::parseEvidence(item + u" ::2"_s, u"test"_s).value();
    return findings::judge(parsed, view).verdict;
}

findings::CaseView viewOf(SmallRow& row, double age)
{
    return {facts::builtInFacts(), row.row, row.sorted(), row.at(age)};
}

const findings::Finding* find(const findings::Report& report, const QString& id)
{
    const auto found =
        std::ranges::find_if(report.ranked, [&](const findings::Finding& f) { return f.condition->id == id; });
    return found == report.ranked.end() ? nullptr : &*found;
}

} // namespace

TEST(Judging, NumbersAreComparedInTheUnitOfTheRule)
{
    SmallRow row;
    row.read(u"no3"_s, 20, 2.0); // mg/L N, 8.85 mg/L as nitrate (atomic weights: 62.005 / 14.007)
    const auto view = viewOf(row, 21);
    EXPECT_NEAR(view.known(u"no3"_s)->value, 8.85, 0.01);
    EXPECT_EQ(verdict(view, u"no3<5"_s), Verdict::Fails);
    EXPECT_EQ(verdict(view, u"no3<10"_s), Verdict::Holds);
    EXPECT_EQ(verdict(view, u"no3 in 8..9"_s), Verdict::Holds);
    EXPECT_EQ(verdict(view, u"age_d in 5..45"_s), Verdict::Holds);
    EXPECT_EQ(verdict(view, u"po4<0.3"_s), Verdict::Unknown);
}

TEST(Judging, AReadingTooCoarseToDecideIsUnknown)
{
    SmallRow row;
    auto& below = row.read(u"po4"_s, 20, 0.25);
    below.censoring = record::Censoring::Below;
    below.low = 0.0;
    below.high = 0.5;
    const auto view = viewOf(row, 21);
    EXPECT_EQ(verdict(view, u"po4<0.3"_s), Verdict::Unknown);
    EXPECT_EQ(verdict(view, u"po4<0.5"_s), Verdict::Holds);
    EXPECT_EQ(verdict(view, u"po4>0.5"_s), Verdict::Fails);
    EXPECT_EQ(verdict(view, u"po4>=0.1"_s), Verdict::Unknown);
}

TEST(Judging, OldLooksAndReadingsAreNotKnown)
{
    SmallRow row;
    row.read(u"tan"_s, 10, 1.0);
    row.look(u"colour=brown"_s, 10);
    row.look(u"colour=green"_s, 30);
    row.look(u"nonsense=7"_s, 30);
    EXPECT_EQ(verdict(viewOf(row, 20), u"tan_n>=1"_s), Verdict::Holds);
    EXPECT_EQ(verdict(viewOf(row, 31), u"tan_n>=1"_s), Verdict::Unknown);
    EXPECT_EQ(verdict(viewOf(row, 20), u"colour=brown"_s), Verdict::Holds);
    EXPECT_EQ(verdict(viewOf(row, 31), u"colour=brown"_s), Verdict::Fails); // the newest day's look stands
    EXPECT_EQ(verdict(viewOf(row, 60), u"colour=green"_s), Verdict::Unknown);
}

TEST(Judging, EventsSpeakOnlyWhenTheyAreOnRecord)
{
    SmallRow row;
    row.enter(EntryKind::LightChange, 50);
    const auto view = viewOf(row, 60);
    EXPECT_EQ(verdict(view, u"ev:light_change<14d"_s), Verdict::Holds);
    EXPECT_EQ(verdict(view, u"ev:light_change<6h"_s), Verdict::Unknown);
    EXPECT_EQ(verdict(view, u"ev:power_cut<14d"_s), Verdict::Unknown);
    EXPECT_EQ(verdict(view, u"ev:filter_service>30d"_s), Verdict::Holds);
    EXPECT_EQ(verdict(view, u"ev:filter_service>90d"_s), Verdict::Unknown); // younger than that
    EXPECT_EQ(verdict(view, u"ev:light_change>14d"_s), Verdict::Fails);
    SmallRow silent;
    EXPECT_EQ(verdict(viewOf(silent, 60), u"ev:filter_service>30d"_s), Verdict::Unknown);
}

TEST(Judging, AnotherSourceAtAChangeIsAChangeOfSource)
{
    SmallRow row;
    row.change(10, 0.3).source = record::SourceWaterId{5};
    row.change(17, 0.3).source = record::SourceWaterId{6};
    EXPECT_EQ(verdict(viewOf(row, 20), u"ev:source_change<10d"_s), Verdict::Holds);
    EXPECT_EQ(verdict(viewOf(row, 16), u"ev:source_change<10d"_s), Verdict::Unknown);
}

TEST(Reckoning, FollowsTheDefinitions)
{
    SmallRow row;
    row.change(14, 0.5);
    row.change(18, 0.5);
    auto& light = row.enter(EntryKind::LightChange, 5);
    light.amount = 8.0;
    light.second = 100.0;
    for (const auto& [age, ph] : {std::pair{16.0, 6.6}, {17.0, 6.8}, {18.0, 6.7}}) {
        row.read(u"ph"_s, age, ph);
    }
    row.read(u"tan"_s, 18, 1.0);
    row.read(u"temp"_s, 18, 25.0);
    row.read(u"flow"_s, 2, 600.0);
    row.read(u"flow"_s, 18, 300.0);
    const auto view = viewOf(row, 20);
    EXPECT_NEAR(view.known(u"wc_frac_7d"_s)->value, 0.75, 1e-9); // 1 - 0.5 * 0.5
    EXPECT_NEAR(view.known(u"wc_frac_now"_s)->value, 0.5, 1e-9);
    EXPECT_NEAR(view.known(u"dli"_s)->value, 2.88, 1e-9); // 100 µmol/m²/s for 8 h is 2.88 mol/m² (3600 s each)
    EXPECT_NEAR(view.known(u"co2_swing"_s)->value, 0.1, 1e-9);
    EXPECT_NEAR(view.known(u"flow_pct"_s)->value, 50.0, 1e-9);
    EXPECT_NEAR(view.known(u"temp_minus_set"_s)->value, 1.0, 1e-9);
    // Emerson et al. 1975: pKa 9.2463 at 25 °C, so 0.283 % of total ammonia is free at pH 6.7.
    EXPECT_NEAR(view.known(u"nh3_n"_s)->value, 0.00283, 0.00002);
}

TEST(Weighing, AddsUpAsStated)
{
    SmallRow row;
    row.look(u"raised_dots=yes"_s, 40);
    row.look(u"wipes_off=easy"_s, 40);
    const auto view = viewOf(row, 41);
    const auto weighing = findings::weigh(*view.book().condition(u"alg_spot"_s), view);
    // occasional -2; raised dots +3; comes off only under a blade, but seen easy -1.5; age over 30 +1; easily wiped -3
    EXPECT_NEAR(weighing.points, -2.5, 1e-9);
    EXPECT_NEAR(weighing.signPoints, 3.0, 1e-9);
}

TEST(Weighing, NamingCountsAndSoDoesGone)
{
    SmallRow row;
    row.enter(EntryKind::Observation, 20, u"alg_tuft"_s).severity = 2;
    const auto seen = viewOf(row, 21);
    const double named = findings::weigh(*seen.book().condition(u"alg_tuft"_s), seen).points;
    EXPECT_NEAR(findings::weigh(*seen.book().condition(u"alg_tuft"_s), seen).signPoints, 2.0, 1e-9);
    const double alike = findings::weigh(*seen.book().condition(u"alg_staghorn"_s), seen).points;
    row.enter(EntryKind::Observation, 25, u"alg_tuft"_s).severity = 0;
    const auto gone = viewOf(row, 26);
    EXPECT_NEAR(findings::weigh(*gone.book().condition(u"alg_tuft"_s), gone).points, named - 6.0, 1e-9);
    const double after = findings::weigh(*gone.book().condition(u"alg_staghorn"_s), gone).points;
    EXPECT_NEAR(alike - after, 1.0, 1e-9);
}

TEST(Findings, NothingSeenIsNoFinding)
{
    SmallRow row;
    row.read(u"tan"_s, 18, 0.3);
    const auto report = findings::findings(viewOf(row, 19));
    for (const findings::Finding& finding : report.ranked) {
        EXPECT_FALSE(finding.seen) << finding.condition->id.toStdString();
        EXPECT_LE(finding.bar, 0.35);
        EXPECT_NE(finding.support, findings::Support::Strong);
        EXPECT_NE(finding.support, findings::Support::Fair);
    }
    EXPECT_FALSE(report.check.has_value());
}

TEST(Findings, TheSameRecordGivesTheSameOrder)
{
    SmallRow row;
    row.look(u"strands=yes"_s, 30);
    row.look(u"colour=green"_s, 30);
    const auto first = findings::findings(viewOf(row, 31));
    const auto again = findings::findings(viewOf(row, 31));
    ASSERT_EQ(first.ranked.size(), again.ranked.size());
    for (std::size_t i = 0; i < first.ranked.size(); ++i) {
        EXPECT_EQ(first.ranked[i].condition, again.ranked[i].condition);
        EXPECT_GE(first.ranked[i].bar, 0.0);
        EXPECT_LE(first.ranked[i].bar, 1.0);
    }
}

// Practice: between soft hair and slippery thread the feel of the threads decides, between soft hair and branching tuft
// whether they branch. The check has to be one of those that tell the rivals apart.
TEST(DecidingCheck, AsksForWhatTellsTheRivalsApart)
{
    SmallRow row;
    row.look(u"strands=yes"_s, 30);
    row.look(u"colour=bright_green"_s, 30);
    const auto report = findings::findings(viewOf(row, 31));
    ASSERT_TRUE(report.check.has_value());
    EXPECT_TRUE(report.check->key->key == u"slippery"_s || report.check->key->key == u"branches"_s)
        << report.check->key->key.toStdString();
    EXPECT_GT(report.check->expectedShift, 0.0);
    EXPECT_LE(report.check->expectedShift, 1.0);
    ASSERT_GE(report.check->answers.size(), 2u);
    bool differ = false;
    for (const findings::Answer& answer : report.check->answers) {
        differ = differ || answer.first != report.check->answers.front().first;
    }
    EXPECT_TRUE(differ);
}

TEST(DecidingCheck, AnAnswerDoesWhatItSaid)
{
    SmallRow row;
    row.look(u"strands=yes"_s, 30);
    row.look(u"colour=bright_green"_s, 30);
    const auto view = viewOf(row, 31);
    const auto check = findings::findings(view).check;
    ASSERT_TRUE(check.has_value());
    for (const findings::Answer& answer : check->answers) {
        if (answer.tick.isEmpty()) {
            continue;
        }
        SmallRow then;
        then.look(u"strands=yes"_s, 30);
        then.look(u"colour=bright_green"_s, 30);
        then.look(check->key->key + u'=' + answer.tick, 30.5);
        const auto after = findings::findings(viewOf(then, 31));
        const findings::Finding* led = find(after, answer.first->id);
        ASSERT_NE(led, nullptr);
        EXPECT_LE(led - after.ranked.data(), 1) << answer.tick.toStdString();
    }
}

TEST(Sentences, SayWhatWasKnownAndNeverAPercentage)
{
    SmallRow row;
    row.look(u"raised_dots=yes"_s, 40);
    row.look(u"wipes_off=blade_only"_s, 40);
    row.read(u"po4"_s, 40, 0.1);
    const auto report = findings::findings(viewOf(row, 41));
    const findings::Finding* spot = find(report, u"alg_spot"_s);
    ASSERT_NE(spot, nullptr);
    EXPECT_EQ(spot->support, findings::Support::Strong);
    QStringList lines;
    for (const findings::Judged* judged : spot->holding()) {
        lines << wording::evidenceText(*judged, facts::builtInFacts(), row.at(41).localDate());
    }
    const QString all = lines.join(u'\n');
    EXPECT_TRUE(all.contains(u"Phosphate 0.1 mg/L PO₄ on 10 Apr: below 0.3 mg/L PO₄ counts."_s)) << all.toStdString();
    EXPECT_TRUE(all.contains(u"How does it come off? Seen: only under a blade."_s)) << all.toStdString();
    EXPECT_FALSE(all.contains(u'%')) << all.toStdString();
    EXPECT_FALSE(all.contains(u'!')) << all.toStdString();
    for (const findings::Judged* judged : spot->unknown()) {
        EXPECT_FALSE(wording::unknownText(*judged, facts::builtInFacts()).isEmpty());
    }
}
