// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/plan_desk.h"

#include "core/care/adopted_plan.h"
#include "tests/support/temp_store.h"

#include <algorithm>

using namespace littoral;
using namespace Qt::StringLiterals;
using test::TempKeeper;

namespace {

/// A tank in its first weeks with a few readings, and its forecast.
struct YoungTank
{
    YoungTank()
        : forecasts(t.keeper)
        , layout(t.addTank(u"Slate Ford"_s, 10))
    {
        t.read(layout, u"tan"_s, u"2"_s, 6.0);
        t.read(layout, u"tan"_s, u"1"_s, 1.0);
        t.read(layout, u"no2"_s, u"0.5"_s, 1.0);
        t.change(layout, 0.5, 2.0);
        forecasts.refresh();
        forecasts.wait();
    }

    [[nodiscard]] const record::LayoutRecord& record() const { return *t.keeper.row().layout(layout); }

    /// Days from today on which water is due, to `days` ahead.
    [[nodiscard]] std::vector<int> dueDays(int days) const
    {
        const record::Moment now = t.clock.now();
        std::vector<int> found;
        for (const auto& item : care::dueWork(t.keeper.row(), layout, now, now.localDate().addDays(days))) {
            if (item.kind == care::WorkKind::WaterChange) {
                found.push_back(static_cast<int>(now.localDate().daysTo(item.due)));
            }
        }
        return found;
    }

    void adoptPlan(const forecast::ChangePlan& plan, double windowDays = 35.0)
    {
        const auto basis = forecasts.result(layout);
        ASSERT_NE(basis, nullptr);
        const auto changes = facade::plannedChanges(*basis, plan, record(), windowDays);
        const auto done = facade::adopt(t.keeper, layout, u"30 % every 7 days"_s, plan, changes);
        ASSERT_TRUE(done) << done.error().sentence();
    }

    TempKeeper t;
    facade::Forecasts forecasts;
    record::LayoutId layout;
};

} // namespace

TEST(PlanDesk, ComparesTheGridAndPreviewsOnePlan)
{
    YoungTank tank;
    facade::PlanDesk desk(tank.t.keeper, tank.forecasts);
    int compared = 0;
    std::vector<bool> quick;
    QObject::connect(&desk, &facade::PlanDesk::compared, [&] { ++compared; });
    QObject::connect(&desk, &facade::PlanDesk::previewReady,
                     [&](record::LayoutId id) { quick.push_back(desk.previewOf(id)->quick); });
    desk.compare(tank.layout, u"G2"_s);
    EXPECT_TRUE(desk.isComparing(tank.layout));
    desk.wait();
    EXPECT_EQ(compared, 1);
    EXPECT_FALSE(desk.isComparing(tank.layout));
    const auto plans = desk.plans(tank.layout);
    ASSERT_NE(plans, nullptr);
    EXPECT_GE(plans->table.outcomes.size(), 61u); // sixty plans and the present one
    EXPECT_TRUE(plans->table.outcomes.front().present);
    EXPECT_EQ(plans->basis, tank.forecasts.result(tank.layout));
    EXPECT_GT(plans->net_L, 40.0);
    // Asked again with nothing new, nothing is done.
    desk.compare(tank.layout, u"G2"_s);
    EXPECT_FALSE(desk.isComparing(tank.layout));

    // Of two requests in a row the newest wins; its quick answer comes before the full one.
    const forecast::ChangePlan heavy{0.7, 1.0};
    desk.preview(tank.layout, {0.2, 7.0}, u"G2"_s);
    desk.preview(tank.layout, heavy, u"G2"_s);
    desk.wait();
    ASSERT_FALSE(quick.empty());
    EXPECT_FALSE(quick.back());
    EXPECT_TRUE(quick.front());
    const auto preview = desk.previewOf(tank.layout);
    ASSERT_NE(preview, nullptr);
    EXPECT_EQ(preview->plan, heavy);
    const auto none = std::ranges::find_if(
        plans->table.outcomes, [](const forecast::PlanOutcome& o) { return !o.present && o.plan.fraction == 0.0; });
    ASSERT_NE(none, plans->table.outcomes.end());
    // More water, lower peaks: the sign of it is common practice.
    EXPECT_LT(preview->outcome.nitriteAbove(0.3), none->nitriteAbove(0.3) + 1e-9);
    EXPECT_LT(preview->outcome.hoursNitriteOver, none->hoursNitriteOver);
    desk.dropPreview(tank.layout);
    EXPECT_EQ(desk.previewOf(tank.layout), nullptr);
}

TEST(PlanDesk, NothingHappensWithoutAForecast)
{
    TempKeeper t;
    facade::Forecasts forecasts(t.keeper);
    facade::PlanDesk desk(t.keeper, forecasts);
    const auto layout = t.addTank(u"Slate Ford"_s, 10);
    desk.compare(layout, u"G1"_s);
    desk.preview(layout, {}, u"G1"_s);
    EXPECT_FALSE(desk.isComparing(layout));
    EXPECT_EQ(desk.plans(layout), nullptr);
    EXPECT_EQ(desk.previewOf(layout), nullptr);
}

TEST(PlanDesk, AnAdoptedPlanIsTheDueWorkAndTheForecastsPlan)
{
    YoungTank tank;
    // By the cadence such a tank is changed more often than weekly.
    const auto before = tank.dueDays(20);
    ASSERT_GE(before.size(), 4u);
    tank.t.change(tank.layout, 0.4, -3.0, true); // planned by hand for three days from now
    tank.adoptPlan({0.3, 7.0});

    const auto days = tank.dueDays(34);
    EXPECT_EQ(days, (std::vector<int>{5, 12, 19, 26, 33})); // the last change was two days ago
    for (const auto& item :
         care::dueWork(tank.t.keeper.row(), tank.layout, tank.t.clock.now(), tank.t.clock.today().addDays(30))) {
        if (item.kind == care::WorkKind::WaterChange) {
            EXPECT_EQ(item.reason.basis, care::Basis::Planned);
            EXPECT_DOUBLE_EQ(item.fraction.value_or(0.0), 0.3);
        }
        EXPECT_NE(item.templateKey, u"cadence-ease"_s);
    }
    // After its last change the cadence goes on.
    EXPECT_GT(tank.dueDays(60).size(), 6u);

    const auto made = facade::forecastCase(tank.t.keeper.row(), tank.layout, tank.t.clock.now());
    ASSERT_TRUE(made);
    EXPECT_EQ(made->plan, facade::PlanFollowed::Recorded);
    std::vector<double> ahead;
    for (const forecast::Event& event : made->request.tank.events) {
        if (event.kind == forecast::EventKind::WaterChange && event.day > made->request.tank.decisionDay) {
            ahead.push_back(std::round(event.day - made->request.tank.decisionDay));
        }
    }
    ASSERT_GE(ahead.size(), 6u);
    EXPECT_EQ((std::vector<double>(ahead.begin(), ahead.begin() + 5)), (std::vector<double>{5, 12, 19, 26, 33}));

    ASSERT_EQ(tank.t.keeper.row().plans.size(), 1u);
    EXPECT_EQ(tank.t.keeper.lastChangeText(), u"Plan adopted: 30 % every 7 days, Slate Ford"_s);
    // One undo takes all of it back.
    ASSERT_TRUE(tank.t.keeper.undo());
    EXPECT_TRUE(tank.t.keeper.row().plans.empty());
    const auto& entries = tank.record().entries;
    EXPECT_EQ(std::ranges::count_if(entries, &record::Entry::planned), 1);
}

TEST(PlanDesk, AnotherPlanTakesThePlaceOfTheFirst)
{
    YoungTank tank;
    tank.adoptPlan({0.3, 7.0});
    const auto basis = tank.forecasts.result(tank.layout);
    const auto changes = facade::plannedChanges(*basis, {0.5, 2.0}, tank.record(), 14.0);
    const facade::Adoption adoption = facade::adoptionOf(tank.record(), changes, tank.t.clock.now());
    EXPECT_EQ(adoption.replaced.size(), 5u);
    EXPECT_EQ(adoption.added.size(), changes.size());
    tank.adoptPlan({0.5, 2.0}, 14.0);
    EXPECT_EQ(tank.dueDays(13), (std::vector<int>{0, 2, 4, 6, 8, 10, 12}));
}

TEST(PlanDesk, APlanOfNoChangesSilencesTheCadence)
{
    YoungTank tank;
    tank.adoptPlan({0.0, 7.0});
    EXPECT_TRUE(tank.dueDays(34).empty());
    EXPECT_FALSE(tank.dueDays(60).empty());
    // A reading that the plan did not know still asks for water: ammonia over 2 ppm without animals (common practice).
    tank.t.clock.set(tank.t.clock.now().plusDays(1.0));
    tank.t.read(tank.layout, u"tan"_s, u"8"_s, 0.1);
    EXPECT_FALSE(tank.dueDays(10).empty());
}

TEST(PlanDesk, RoundsOfAPlanCanBeMovedSkippedAndDone)
{
    YoungTank tank;
    tank.adoptPlan({0.3, 7.0}, 28.0);
    ASSERT_EQ(tank.dueDays(27), (std::vector<int>{5, 12, 19, 26}));
    const auto round = [&](int day) {
        const record::Moment now = tank.t.clock.now();
        for (const auto& item : care::dueWork(tank.t.keeper.row(), tank.layout, now, now.localDate().addDays(30))) {
            if (item.kind == care::WorkKind::WaterChange && item.due == now.localDate().addDays(day)) {
                return item;
            }
        }
        ADD_FAILURE() << "no round on day " << day;
        return care::DueItem{};
    };
    ASSERT_TRUE(tank.t.keeper.moveTo(round(12), tank.t.clock.today().addDays(14)));
    EXPECT_EQ(tank.dueDays(27), (std::vector<int>{5, 14, 19, 26}));
    ASSERT_TRUE(tank.t.keeper.markDone(round(5), tank.t.clock.now()));
    EXPECT_EQ(tank.dueDays(27), (std::vector<int>{14, 19, 26}));
    ASSERT_TRUE(tank.t.keeper.skip(round(19), u"away"_s));
    EXPECT_EQ(tank.dueDays(27), (std::vector<int>{14, 26}));
}

TEST(PlanDesk, AChangeOfTodayIsStillToComeWhenItsHourHasPassed)
{
    YoungTank tank;
    tank.adoptPlan({0.5, 2.0});
    ASSERT_EQ(tank.dueDays(1), (std::vector<int>{0}));
    tank.t.clock.set(tank.t.clock.now().plusDays(0.4));
    const auto made = facade::forecastCase(tank.t.keeper.row(), tank.layout, tank.t.clock.now());
    ASSERT_TRUE(made);
    const auto next = std::ranges::find_if(made->request.tank.events, [&](const forecast::Event& event) {
        return event.kind == forecast::EventKind::WaterChange && event.day > made->request.tank.decisionDay;
    });
    ASSERT_NE(next, made->request.tank.events.end());
    EXPECT_LT(next->day, made->request.tank.decisionDay + 0.1);
}

TEST(PlanDesk, TheLoadComesFromFeedingAnimalsAndWhatIsPlanned)
{
    TempKeeper t;
    const auto layout = t.addTank(u"Slate Ford"_s, 10);
    const auto enter = [&](record::EntryKind kind, double daysAgo, std::optional<double> load) {
        record::Entry entry;
        entry.layout = layout;
        entry.kind = kind;
        entry.at = t.clock.now().plusDays(-daysAgo);
        entry.planned = daysAgo < 0.0;
        if (kind == record::EntryKind::Feeding) {
            entry.amount = load;
            entry.unit = u"mg/L/d N"_s;
        } else {
            entry.subject = u"shrimp"_s;
            entry.load_mgN_per_L_d = load;
        }
        ASSERT_TRUE(t.keeper.enter(entry));
    };
    const auto plain = facade::forecastCase(t.keeper.row(), layout, t.clock.now());
    ASSERT_TRUE(plain);
    EXPECT_DOUBLE_EQ(plain->request.load_mgN_per_L_d, 0.0);
    enter(record::EntryKind::Feeding, 2.0, 0.03);
    enter(record::EntryKind::Addition, 1.0, 0.02);
    enter(record::EntryKind::Addition, -7.0, 0.05);
    enter(record::EntryKind::Addition, -9.0, std::nullopt);
    const auto made = facade::forecastCase(t.keeper.row(), layout, t.clock.now());
    ASSERT_TRUE(made);
    EXPECT_NEAR(made->request.load_mgN_per_L_d, 0.10, 1e-12);
    EXPECT_EQ(made->load.unknownAnimals, 1);
    EXPECT_NE(made->fingerprint, plain->fingerprint);
    EXPECT_TRUE(made->remarks.join(u' ').contains(u"held against"_s));
    facade::ForecastOptions options;
    options.load_mgN_per_L_d = 0.2;
    options.focusGate = u"complete"_s;
    const auto stated = facade::forecastCase(t.keeper.row(), layout, t.clock.now(), options);
    ASSERT_TRUE(stated);
    EXPECT_DOUBLE_EQ(stated->request.load_mgN_per_L_d, 0.2);
    EXPECT_EQ(stated->request.focusGate, -1);
    EXPECT_EQ(made->request.focusGate, 0); // no gate of a ten-day-old tank is open
}
