// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/co2_trials.h"

#include "core/facts/fact_book.h"
#include "core/water/hardness.h"

#include <gtest/gtest.h>

namespace littoral::facade {
namespace {

using namespace Qt::StringLiterals;
using record::EntryKind;

const record::Moment kSet = record::Moment::fromIso(u"2026-11-20T10:00:00Z"_s);

class Co2TrialsTest : public ::testing::Test
{
protected:
    Co2TrialsTest()
    {
        m_layout.layout.id.value = 10;
        m_layout.layout.temperature_C = 25.0;
    }
    record::Entry& enter(EntryKind kind, double hours, const QString& subject = {})
    {
        record::Entry entry;
        entry.id.value = ++m_next;
        entry.kind = kind;
        entry.at = kSet.plusDays(hours / 24.0);
        entry.subject = subject;
        m_layout.entries.push_back(entry);
        return m_layout.entries.back();
    }
    void read(const QString& parameter, double canonical, double hours)
    {
        record::Reading reading;
        reading.id.value = ++m_next;
        reading.parameter = parameter;
        reading.at = kSet.plusDays(hours / 24.0);
        reading.value = reading.low = reading.high = canonical;
        m_layout.readings.push_back(reading);
    }
    [[nodiscard]] std::vector<Co2Trial> trials(double hours = 200.0)
    {
        std::ranges::stable_sort(m_layout.entries, {}, [](const record::Entry& e) { return e.at.utcMs(); });
        std::ranges::stable_sort(m_layout.readings, {}, [](const record::Reading& r) { return r.at.utcMs(); });
        return co2Trials(m_row, m_layout, m_book, kSet.plusDays(hours / 24.0));
    }

    record::Row m_row;
    record::LayoutRecord m_layout;
    facts::FactBook m_book = facts::factsFor(m_row).book;
    qint64 m_next = 0;
};

TEST_F(Co2TrialsTest, ReadingsColourAndAnimalsOfTwoDays)
{
    record::Entry& set = enter(EntryKind::Co2Change, 0.0, u"opened a little"_s);
    set.amount = 25.0;
    set.second = 8.0;
    read(u"kh"_s, 4.0 * water::kMeqPerDegree, -48.0);
    read(u"ph"_s, 7.2, -2.0);
    read(u"ph"_s, 7.0, 3.0);
    read(u"ph"_s, 6.6, 72.0); // too late
    enter(EntryKind::Observation, 5.0, u"indicator=green"_s);
    enter(EntryKind::Observation, 6.0, u"an_gasp"_s).severity = 2;
    enter(EntryKind::Observation, 60.0, u"an_gasp"_s).severity = 3; // too late
    enter(EntryKind::Observation, 6.0, u"alg_dust"_s).severity = 2; // no animal
    const auto all = trials();
    ASSERT_EQ(all.size(), 1U);
    const Co2Trial& trial = all.front();
    EXPECT_EQ(trial.target_mg_per_L, 25.0);
    EXPECT_EQ(trial.colour, u"green"_s);
    ASSERT_TRUE(trial.before);
    EXPECT_NEAR(trial.before->hours, -2.0, 1e-6);
    ASSERT_EQ(trial.after.size(), 1U);
    // CO2 at pH 7.0, 4 dKH and 25 °C: the usual chart gives 14.1 mg/L and full speciation 8 to 11 % less (PHREEQC 3,
    // the check values of the carbonate model).
    ASSERT_TRUE(trial.after.front().co2);
    EXPECT_GT(*trial.after.front().co2, 12.4);
    EXPECT_LT(*trial.after.front().co2, 14.2);
    EXPECT_LT(*trial.after.front().co2Low, *trial.after.front().co2);
    EXPECT_GT(*trial.after.front().co2High, *trial.after.front().co2);
    ASSERT_EQ(trial.signs.size(), 1U);
    EXPECT_EQ(trial.signs.front().severity, 2);
    EXPECT_TRUE(trial.gasping);
}

TEST_F(Co2TrialsTest, TheNextChangeEndsATrialAndTheNewestIsFirst)
{
    enter(EntryKind::Co2Change, 0.0);
    enter(EntryKind::Co2Change, 24.0);
    enter(EntryKind::Co2Change, 300.0).planned = true;
    read(u"ph"_s, 7.0, 5.0);
    read(u"ph"_s, 6.8, 30.0);
    const auto all = trials(400.0);
    ASSERT_EQ(all.size(), 2U);
    EXPECT_NEAR(all[0].after.front().ph, 6.8, 1e-12);
    ASSERT_EQ(all[1].after.size(), 1U);
    EXPECT_NEAR(all[1].after.front().ph, 7.0, 1e-12);
    EXPECT_FALSE(all[1].after.front().co2) << "no KH was read";
}

TEST_F(Co2TrialsTest, LossesCountAndNothingAmissIsALook)
{
    enter(EntryKind::Co2Change, 0.0);
    enter(EntryKind::Observation, 4.0, u"an_gasp"_s).severity = 0;
    const auto calm = trials();
    EXPECT_TRUE(calm.front().looked);
    EXPECT_TRUE(calm.front().signs.empty());
    EXPECT_FALSE(calm.front().gasping);
    enter(EntryKind::Loss, 20.0, u"cherry shrimp"_s).count = 2;
    EXPECT_TRUE(trials().front().signs.front().loss);
}

} // namespace
} // namespace littoral::facade
