// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/sample_row.h"

#include "core/facade/forecast_case.h"
#include "core/forecast/forecaster.h"
#include "tests/support/temp_store.h"

using namespace littoral;
using namespace Qt::StringLiterals;
using test::TempKeeper;

TEST(SampleRow, EndsTodayAndSaysThatItIsInvented)
{
    TempKeeper t;
    ASSERT_TRUE(facade::makeSampleRow(t.keeper, t.clock.now()));
    const record::Row& row = t.keeper.row();
    EXPECT_GE(row.tanks.size(), 6u);
    EXPECT_TRUE(row.settings.value(u"about"_s).startsWith(u"Invented"_s));
    std::size_t earlier = 0;
    for (const auto& [id, layout] : row.layouts) {
        earlier += layout.layout.ended ? 1u : 0u;
        for (const record::Reading& reading : layout.readings) {
            EXPECT_LE(reading.at, t.clock.now());
        }
        for (const record::Entry& entry : layout.entries) {
            EXPECT_TRUE(entry.planned || entry.at <= t.clock.now());
        }
    }
    EXPECT_EQ(earlier, 1u);
    EXPECT_GT(row.recordCount(), 800u);
    const record::Tank* young = row.tankNamed(u"Slate Ford"_s);
    ASSERT_NE(young, nullptr);
    const record::LayoutRecord* layout = row.currentLayout(young->id, t.clock.now());
    EXPECT_NEAR(record::daysBetween(layout->layout.flooded, t.clock.now()), 16.0, 0.5);
    const record::Reading* nitrite = layout->newest(u"no2"_s, t.clock.now());
    ASSERT_NE(nitrite, nullptr);
    EXPECT_GT(nitrite->value, 0.3) << "the young tank is in its nitrite weeks";
}

TEST(SampleRow, IsTheSameEachTimeButForItsDates)
{
    TempKeeper a;
    TempKeeper b;
    b.clock.set(a.clock.now().plusDays(30));
    ASSERT_TRUE(facade::makeSampleRow(a.keeper, a.clock.now()));
    ASSERT_TRUE(facade::makeSampleRow(b.keeper, b.clock.now()));
    ASSERT_EQ(a.keeper.row().recordCount(), b.keeper.row().recordCount());
    const auto typed = [](const record::Row& row) {
        QStringList all;
        for (const auto& [id, layout] : row.layouts) {
            for (const record::Reading& r : layout.readings) {
                all << r.typed;
            }
        }
        all.sort();
        return all;
    };
    EXPECT_EQ(typed(a.keeper.row()), typed(b.keeper.row()));
}

TEST(SampleRow, OddsOfTheYoungTankNarrowAsReadingsAreAdmitted)
{
    TempKeeper t;
    ASSERT_TRUE(facade::makeSampleRow(t.keeper, t.clock.now()));
    const record::Row& row = t.keeper.row();
    const auto layout = row.currentLayout(row.tankNamed(u"Slate Ford"_s)->id, t.clock.now())->layout.id;
    std::vector<double> widths;
    for (const double daysAgo : {14.0, 0.0}) {
        facade::ForecastOptions options;
        options.horizonDays = 60.0;
        const auto made = facade::forecastCase(row, layout, t.clock.now().plusDays(-daysAgo), options);
        ASSERT_TRUE(made) << made.error().sentence();
        const auto answer = forecast::forecast(made->request);
        ASSERT_TRUE(answer) << answer.error().sentence();
        EXPECT_TRUE(answer->diagnostics.fitted);
        const forecast::Band& nitrite = answer->complete.day;
        widths.push_back(std::min(nitrite[5], answer->complete.lastDay) - nitrite[1]);
    }
    EXPECT_LT(widths[1], widths[0]);
}
