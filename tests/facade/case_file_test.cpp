// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/case_file.h"
#include "core/wording/entry_words.h"
#include "core/wording/review_points.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace littoral;
using namespace Qt::StringLiterals;
using facade::CaseEvidence;
using facade::CaseFile;
using facade::EvidenceSide;
using record::EntryKind;

namespace {

const record::Moment kNow = record::Moment::fromIso(u"2026-11-25T08:00:00Z"_s);

class CaseFileTest : public ::testing::Test
{
protected:
    CaseFileTest()
    {
        m_tank = addTank(u"Fen Corner"_s, 96);
        m_other = addTank(u"Low Weir"_s, 203);
    }

    record::TankId addTank(const QString& name, int ageDays)
    {
        record::Tank tank;
        tank.id.value = ++m_id;
        tank.name = name;
        tank.length_cm = 40;
        tank.depth_cm = 30;
        tank.height_cm = 30;
        m_row.tanks.push_back(tank);
        record::Layout layout;
        layout.id.value = ++m_id;
        layout.tank = tank.id;
        layout.flooded = kNow.plusDays(-ageDays);
        m_row.layouts[layout.id].layout = layout;
        return tank.id;
    }
    record::LayoutRecord& layout(record::TankId tank)
    {
        const auto found =
            std::ranges::find_if(m_row.layouts, [&](const auto& one) { return one.second.layout.tank == tank; });
        return found->second;
    }
    record::Entry& put(record::TankId tank, EntryKind kind, double daysAgo, const QString& subject = {})
    {
        record::Entry entry;
        entry.id.value = ++m_id;
        entry.tank = tank;
        entry.layout = layout(tank).layout.id;
        entry.kind = kind;
        entry.at = kNow.plusDays(-daysAgo);
        entry.subject = subject;
        layout(tank).entries.push_back(entry);
        return layout(tank).entries.back();
    }
    void see(const QString& subject, int severity, double daysAgo)
    {
        put(m_tank, EntryKind::Observation, daysAgo, subject).severity = severity;
    }
    void read(record::TankId tank, const QString& parameter, const QString& typed, double daysAgo)
    {
        record::Reading reading;
        reading.id.value = ++m_id;
        reading.tank = tank;
        reading.layout = layout(tank).layout.id;
        reading.parameter = parameter;
        reading.at = kNow.plusDays(-daysAgo);
        const auto typedIn = record::setTypedValue(reading, typed, record::findParameter(parameter)->shown().code);
        ASSERT_TRUE(typedIn) << typedIn.error().sentence();
        layout(tank).readings.push_back(reading);
    }
    CaseFile make(facade::CaseRequest request = {})
    {
        record::sortRow(m_row);
        if (!request.question.layout) {
            request.question = facade::caseQuestions(m_row, m_tank, kNow).front();
        }
        return facade::caseFile(m_row, request, kNow);
    }

    record::Row m_row;
    record::TankId m_tank, m_other;
    qint64 m_id = 0;
};

const facade::CaseFinding* findingOf(const CaseFile& file, const QString& id)
{
    const auto found = std::ranges::find(file.findings, id, &facade::CaseFinding::id);
    return found == file.findings.end() ? nullptr : &*found;
}

const CaseEvidence* evidenceOf(const facade::CaseFinding& finding, const QString& key)
{
    const auto found = std::ranges::find(finding.evidence, key, &CaseEvidence::key);
    return found == finding.evidence.end() ? nullptr : &*found;
}

const facade::TalkPoint& pointOf(const CaseFile& file, const QString& key)
{
    return *std::ranges::find(file.talk.points, key, &facade::TalkPoint::key);
}

} // namespace

TEST_F(CaseFileTest, ARunEndsWhereNothingWasSeenForAMonthOrItWasGone)
{
    see(u"melt"_s, 2, 90);
    see(u"melt"_s, 3, 20);
    see(u"melt"_s, 2, 12);
    see(u"alg_dust"_s, 1, 30);
    see(u"alg_dust"_s, 0, 25);
    see(u"alg_dust"_s, 1, 3);
    put(m_tank, EntryKind::Observation, 2, u"colour=brown"_s);
    record::sortRow(m_row);
    const auto questions = facade::caseQuestions(m_row, m_tank, kNow);
    ASSERT_EQ(questions.size(), 5U);
    EXPECT_EQ(questions[0].subject, u"melt"_s);
    EXPECT_EQ(questions[0].worst, 3);
    EXPECT_DOUBLE_EQ(record::daysBetween(questions[0].onset, kNow), 20.0);
    EXPECT_DOUBLE_EQ(record::daysBetween(questions[0].last, kNow), 12.0);
    EXPECT_EQ(questions[1].subject, u"alg_dust"_s);
    EXPECT_DOUBLE_EQ(record::daysBetween(questions[1].onset, kNow), 3.0);
    EXPECT_TRUE(questions.back().subject.isEmpty());
    EXPECT_EQ(questions.back().onset, kNow);
}

TEST_F(CaseFileTest, ATankWithoutALayoutRaisesNoQuestionAndALayoutThatIsGoneGivesNothing)
{
    record::Tank bare;
    bare.id.value = 9000;
    m_row.tanks.push_back(bare);
    EXPECT_TRUE(facade::caseQuestions(m_row, bare.id, kNow).empty());
    facade::CaseRequest gone;
    gone.question.layout.value = 12345;
    EXPECT_TRUE(facade::caseFile(m_row, gone, kNow).tankName.isEmpty());
}

TEST_F(CaseFileTest, NothingRecordedIsSaidAndStillAsksTheNineQuestions)
{
    const CaseFile file = make();
    EXPECT_TRUE(file.silent);
    EXPECT_TRUE(file.findings.empty());
    EXPECT_TRUE(file.strip.series.empty());
    EXPECT_EQ(file.talk.points.size(), 9U);
    EXPECT_FALSE(file.comparison.any());
}

TEST_F(CaseFileTest, AnAnswerTurnsAnUnknownIntoEvidenceAndMovesTheSupport)
{
    layout(m_tank).layout.flooded = kNow.plusDays(-20);
    see(u"alg_diatom"_s, 2, 3);
    const CaseFile before = make();
    const facade::CaseFinding* first = findingOf(before, u"alg_diatom"_s);
    ASSERT_NE(first, nullptr);
    const CaseEvidence* open = evidenceOf(*first, u"wipes_off"_s);
    ASSERT_NE(open, nullptr);
    EXPECT_EQ(open->side, EvidenceSide::Unknown);
    ASSERT_TRUE(open->canBeAnswered());
    EXPECT_TRUE(open->rests.empty());
    const double bar = first->bar;
    const auto easy = std::ranges::find(open->answers, u"wipes_off=easy"_s, &facade::CaseAnswer::subject);
    ASSERT_NE(easy, open->answers.end());

    record::Entry answer = facade::answerEntry(m_row, layout(m_tank).layout.id, easy->subject, kNow);
    EXPECT_EQ(answer.kind, EntryKind::Observation);
    answer.id.value = ++m_id;
    layout(m_tank).entries.push_back(answer);
    const CaseFile after = make();
    const facade::CaseFinding* now = findingOf(after, u"alg_diatom"_s);
    ASSERT_NE(now, nullptr);
    const CaseEvidence* held = evidenceOf(*now, u"wipes_off"_s);
    ASSERT_NE(held, nullptr);
    EXPECT_EQ(held->side, EvidenceSide::For);
    ASSERT_EQ(held->rests.size(), 1U);
    EXPECT_EQ(held->rests.front().entry, answer.id);
    EXPECT_GT(now->bar, bar);
}

TEST_F(CaseFileTest, NamedSightingsRestOnTheirObservation)
{
    layout(m_tank).layout.flooded = kNow.plusDays(-20);
    see(u"alg_diatom"_s, 2, 3);
    const record::EntryId seen = layout(m_tank).entries.back().id;
    const CaseFile file = make();
    const facade::CaseFinding* finding = findingOf(file, u"alg_diatom"_s);
    ASSERT_NE(finding, nullptr);
    const bool rests = std::ranges::any_of(finding->evidence, [&](const CaseEvidence& evidence) {
        return evidence.side == EvidenceSide::For &&
               std::ranges::any_of(evidence.rests, [&](const facade::RecordRef& ref) { return ref.entry == seen; });
    });
    EXPECT_TRUE(rests);
    EXPECT_FALSE(finding->cautions.empty());
    for (const wording::CautionText& caution : finding->cautions) {
        EXPECT_FALSE(caution.points.isEmpty()) << caution.id.toStdString();
    }
    EXPECT_TRUE(finding->deferral.isEmpty());
}

TEST_F(CaseFileTest, AnimalsHealthIsLeftToThoseWhoAreLicensedForIt)
{
    see(u"dz_ich"_s, 3, 1);
    const CaseFile file = make();
    const facade::CaseFinding* finding = findingOf(file, u"dz_ich"_s);
    ASSERT_NE(finding, nullptr);
    EXPECT_TRUE(finding->deferral.contains(u"veterinarian"_s));
    EXPECT_FALSE(finding->cautions.empty());
}

TEST_F(CaseFileTest, WhatChangedIsCountedBackFromTheOnset)
{
    layout(m_tank).layout.lightHours = 6.0;
    put(m_tank, EntryKind::LightChange, 25).amount = 9.0;
    const record::EntryId change = layout(m_tank).entries.back().id;
    see(u"melt"_s, 3, 20);
    const CaseFile file = make();
    EXPECT_DOUBLE_EQ(static_cast<double>(file.strip.onset - file.strip.from) / 86'400'000.0, 21.0);
    const auto light = std::ranges::find(file.changes, facade::Glyph::Light, &facade::CaseChange::glyph);
    ASSERT_NE(light, file.changes.end());
    EXPECT_EQ(light->daysBefore, 5);
    EXPECT_TRUE(std::ranges::any_of(light->rests, [&](const facade::RecordRef& ref) { return ref.entry == change; }));
}

TEST_F(CaseFileTest, ExposureCountsHoursBeyondALimitWithTheKitsError)
{
    put(m_tank, EntryKind::Addition, 60, u"cherry shrimp"_s).count = 10;
    // 60 mg/L for four days, straight: 96 h above the limit of 50 mg/L with animals (trade limit).
    read(m_tank, u"no3"_s, u"60"_s, 6);
    read(m_tank, u"no3"_s, u"60"_s, 2);
    const CaseFile file = make();
    const auto nitrate = std::ranges::find(file.exposures, u"no3"_s, &facade::CaseExposure::parameter);
    ASSERT_NE(nitrate, file.exposures.end());
    EXPECT_NEAR(nitrate->hours, 96.0, 0.01);
    EXPECT_LE(nitrate->low, nitrate->hours);
    EXPECT_GE(nitrate->high, nitrate->hours);
    EXPECT_EQ(nitrate, file.exposures.begin());
}

TEST_F(CaseFileTest, TheTalkCountsFreshAnswersAndLeavesOldOnesOpen)
{
    const CaseFile before = make();
    const int open = before.talk.open;
    put(m_tank, EntryKind::Observation, 2, u"review_bed=2"_s);
    put(m_tank, EntryKind::Observation, 20, u"review_plants=1"_s);
    const CaseFile after = make();
    EXPECT_EQ(after.talk.open, open - 1);
    EXPECT_EQ(after.talk.sum, before.talk.sum + 2);
    EXPECT_TRUE(pointOf(after, u"review_bed"_s).byHand);
    EXPECT_FALSE(pointOf(after, u"review_plants"_s).points.has_value());
    ASSERT_EQ(after.talk.ways.size(), 3U);
    EXPECT_FALSE(after.talk.leaning.isEmpty());
}

TEST_F(CaseFileTest, LossesInBothWeeksAndRaisedWaterSpeakForThemselves)
{
    put(m_tank, EntryKind::Addition, 60, u"cherry shrimp"_s).count = 10;
    put(m_tank, EntryKind::Loss, 2, u"cherry shrimp"_s).count = 1;
    put(m_tank, EntryKind::Loss, 10, u"cherry shrimp"_s).count = 1;
    read(m_tank, u"tan"_s, u"1"_s, 1);
    read(m_tank, u"no2"_s, u"0"_s, 1);
    const CaseFile file = make();
    EXPECT_EQ(pointOf(file, u"review_animals"_s).points, 2);
    EXPECT_EQ(pointOf(file, u"review_water"_s).points, 1);
}

TEST_F(CaseFileTest, AComparisonRunsStraightBetweenReadingsAndSaysHowLittleItRestsOn)
{
    // At day 96 the other tank stands half way between its readings of day 90 and day 102: 4 and 6 give 5.
    read(m_tank, u"kh"_s, u"3"_s, 10);
    read(m_tank, u"kh"_s, u"4.5"_s, 0);
    read(m_other, u"kh"_s, u"4"_s, 203 - 90);
    read(m_other, u"kh"_s, u"6"_s, 203 - 102);
    facade::CaseRequest request;
    request.compared = u"kh"_s;
    record::sortRow(m_row);
    request.question = facade::caseQuestions(m_row, m_tank, kNow).front();
    const CaseFile file = make(request);
    ASSERT_TRUE(file.comparison.any());
    EXPECT_EQ(file.comparison.other.name, u"Low Weir"_s);
    ASSERT_EQ(file.comparison.sentences.size(), 2);
    EXPECT_TRUE(file.comparison.sentences[0].contains(u"4.5"_s)) << file.comparison.sentences[0].toStdString();
    EXPECT_TRUE(file.comparison.sentences[0].contains(u"stood at 5"_s)) << file.comparison.sentences[0].toStdString();
    EXPECT_TRUE(file.comparison.sentences[1].contains(u"chance"_s));
}

TEST_F(CaseFileTest, TheSameRecordGivesTheSameOrder)
{
    see(u"melt"_s, 3, 20);
    see(u"alg_hair"_s, 2, 4);
    const CaseFile first = make();
    const CaseFile again = make();
    ASSERT_EQ(first.findings.size(), again.findings.size());
    for (std::size_t i = 0; i < first.findings.size(); ++i) {
        EXPECT_EQ(first.findings[i].id, again.findings[i].id);
        EXPECT_TRUE(i == 0 || first.findings[i].support != findings::Support::Against);
    }
}

TEST_F(CaseFileTest, AnswersReadAsSentencesInTheRecord)
{
    EXPECT_EQ(wording::subjectText(u"review_bed=2"_s), u"Smell and colour of the bed: black, rotten eggs"_s);
    EXPECT_FALSE(wording::reviewAnswerText(u"review_bed=3"_s).has_value());
    EXPECT_FALSE(wording::reviewAnswerText(u"review_bed"_s).has_value());
    const QString tick = wording::subjectText(u"wipes_off=easy"_s);
    EXPECT_FALSE(tick.contains(u'=')) << tick.toStdString();
    EXPECT_TRUE(wording::subjectText(u"dli=4"_s).contains(u"mol/m²"_s));
    EXPECT_EQ(wording::subjectText(u"no_such_key=1"_s), u"no such key=1"_s);
}
