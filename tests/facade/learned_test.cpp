// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/learned.h"

#include "core/forecast/case_scenario.h"
#include "core/forecast/forecaster.h"
#include "core/forecast/priors.h"
#include "core/sim/run.h"
#include "tests/support/temp_store.h"

#include <algorithm>
#include <cmath>

using namespace littoral;
using namespace Qt::StringLiterals;
using test::TempKeeper;
using Kind = facade::LearnedFact::Kind;

namespace {

/// Two layouts of 90 days on rich soil that released three times the usual nitrogen, read every third day for seven
/// weeks, and a new one on the same soil. What was read is run forward from known values, without reading errors.
struct Row
{
    Row()
    {
        record::SourceWater tap;
        tap.name = u"tap"_s;
        tap.nitrate_mgN_per_L = 1.0;
        tap.chloramine = record::YesNoUnknown::No;
        tap.alkalinity_meq_per_L = 1.5;
        for (const char* parameter : {"tan", "no2"}) {
            record::TestKit kit;
            kit.name = u"meter"_s;
            kit.parameter = QLatin1String(parameter);
            kit.unit = u"mg/L N"_s;
            kit.kind = record::KitKind::Digital;
            store::Edit edit(u"kit"_s);
            edit.put(kit);
            EXPECT_TRUE(t.keeper.commit(edit));
        }
        store::Edit edit(u"tap"_s);
        source = edit.put(tap);
        EXPECT_TRUE(t.keeper.commit(edit));
        first = finished(u"Fen Corner"_s, 1.3);
        second = finished(u"Mill Race"_s, 1.5);
        fresh = t.addTank(u"Slate Ford"_s, 1);
        fillFrom(fresh);
    }

    void fillFrom(record::LayoutId id)
    {
        record::Layout layout = t.keeper.row().layout(id)->layout;
        layout.source = source;
        store::Edit edit(u"source"_s);
        edit.put(layout);
        EXPECT_TRUE(t.keeper.commit(edit));
    }

    record::LayoutId finished(const QString& name, double soil_z)
    {
        const auto layout = t.addTank(name, 90);
        fillFrom(layout);
        for (int day = 2; day < 50; day += 2) {
            t.change(layout, 0.4, 90.0 - day + 0.25);
        }
        facade::ForecastOptions options;
        options.withPlan = false;
        options.learn = false;
        const record::Moment until = t.clock.now().plusDays(-90.0 + 50.0);
        const auto made = facade::forecastCase(t.keeper.row(), layout, until, options);
        EXPECT_TRUE(made);
        const forecast::Prior prior(made->request.tank);
        std::vector<double> z(prior.dimension(), 0.0);
        z[forecast::kUnknownFastSoil] = soil_z;
        sim::Scenario scenario = forecast::scenarioOf(made->request.tank, 50.0, false);
        for (int day = 1; day < 50; day += 3) {
            scenario.samples.push_back(day);
        }
        std::array<sim::Member, sim::kLanes> members;
        members.fill(prior.member(z));
        sim::PackTrace trace;
        sim::runRecorded(scenario, members, sim::tankControl(1e-5), trace);
        for (std::size_t i = 0; i < scenario.samples.size(); ++i) {
            const double daysAgo = 90.0 - scenario.samples[i];
            const auto number = [](double value) { return QString::number(value, 'f', 2); };
            t.read(layout, u"tan"_s, number(trace.samples[i].totalAmmonia[0]), daysAgo, u"mg/L N"_s);
            t.read(layout, u"no2"_s, number(trace.samples[i].nitrite[0]), daysAgo, u"mg/L N"_s);
        }
        return layout;
    }

    /// Middle of total ammonia a week ahead, mg N/L.
    [[nodiscard]] double ammoniaAhead(facade::ForecastCase& made, facade::Learning& learning) const
    {
        learning.teach(made);
        const auto answer = forecast::forecast(made.request);
        EXPECT_TRUE(answer);
        return answer->substances[0].water[7][3];
    }

    TempKeeper t;
    record::SourceWaterId source;
    record::LayoutId first, second, fresh;
};

} // namespace

TEST(Learned, SoilThatReleasedMuchIsExpectedToDoSoAgain)
{
    Row row;
    facade::Learning learning;
    auto taught = facade::forecastCase(row.t.keeper.row(), row.fresh, row.t.clock.now());
    ASSERT_TRUE(taught);
    ASSERT_EQ(taught->lessons.size(), 2u);
    facade::ForecastOptions options;
    options.learn = false;
    auto plain = facade::forecastCase(row.t.keeper.row(), row.fresh, row.t.clock.now(), options);
    ASSERT_TRUE(plain);
    EXPECT_NE(taught->fingerprint, plain->fingerprint);
    const double with = row.ammoniaAhead(*taught, learning);
    const double without = row.ammoniaAhead(*plain, learning);
    EXPECT_GT(with, 1.25 * without);
    EXPECT_TRUE(plain->learned.facts.empty());

    const auto soil = std::ranges::find(taught->learned.facts, Kind::SoilRelease, &facade::LearnedFact::kind);
    ASSERT_NE(soil, taught->learned.facts.end());
    EXPECT_GT(soil->typical, 1.3);
    EXPECT_LT(soil->learned80, soil->prior80);
    EXPECT_EQ(soil->from, (std::vector<record::LayoutId>{row.first, row.second}));
    // The plain prior's 80 % range of a lognormal with deviation 0.8: exp(1.2816 x 0.8) (standard normal table).
    EXPECT_NEAR(soil->prior80, 2.788, 2e-3);

    // The store's switch turns it off for everyone.
    store::Edit off(u"switch"_s);
    off.set(facade::kLearnSetting, u"off"_s);
    ASSERT_TRUE(row.t.keeper.commit(off));
    auto switched = facade::forecastCase(row.t.keeper.row(), row.fresh, row.t.clock.now());
    ASSERT_TRUE(switched);
    EXPECT_TRUE(switched->lessons.empty());
    EXPECT_DOUBLE_EQ(row.ammoniaAhead(*switched, learning), without);
    EXPECT_TRUE(learning.of(row.t.keeper.row(), row.fresh, row.t.clock.now()).facts.empty());
}

TEST(Learned, OnlyWhatIsSharedIsLearned)
{
    Row row;
    record::Layout sand = row.t.keeper.row().layout(row.fresh)->layout;
    sand.bed = record::Bed::Inert;
    sand.source = {};
    store::Edit edit(u"sand"_s);
    edit.put(sand);
    ASSERT_TRUE(row.t.keeper.commit(edit));
    const auto made = facade::forecastCase(row.t.keeper.row(), row.fresh, row.t.clock.now());
    ASSERT_TRUE(made);
    for (const facade::Lessons& lessons : made->lessons) {
        EXPECT_EQ(lessons.about, (std::vector<Kind>{Kind::ChangeGain}));
    }
    // Nobody teaches himself, and a layout of a few weeks teaches nobody.
    const auto old = facade::forecastCase(row.t.keeper.row(), row.first, row.t.clock.now());
    ASSERT_TRUE(old);
    ASSERT_EQ(old->lessons.size(), 1u);
    EXPECT_EQ(old->lessons.front().teacher->layout, row.second);
    EXPECT_TRUE(facade::teachersOf(row.t.keeper.row(), row.t.clock.now().plusDays(-40.0)).empty());
}
