// SPDX-License-Identifier: GPL-3.0-or-later
// Blends and doses in tank files.
#include "core/exchange/tank_document.h"
#include "tests/exchange/small_row.h"

#include <gtest/gtest.h>

namespace littoral::exchange {

using namespace Qt::StringLiterals;

namespace {

const record::Moment kNow = record::Moment::fromIso(u"2026-11-25T08:00:00Z"_s);

QByteArray tankWith(const QByteArray& source, const QByteArray& rest = {})
{
    return R"({"format": "littoral-tank", "version": 1, "name": "Heron Reach", "net_litres": 82.5,
  "flooded": "2026-11-09T10:00:00Z", "start": "new-media", "bed": {"kind": "inert"}, "temperature_c": 24,
  "source": )" +
           source + rest + "}";
}

const QByteArray kBlend = R"({"name": "soft", "kind": "blend", "parts": [{"source": "well", "share": 0.3},
  {"source": "osmosis", "share": 0.7}]}, "sources": [{"name": "well", "kh_dkh": 10},
  {"name": "osmosis", "kind": "reverse-osmosis"}])";

std::optional<TankDocument> read(const QByteArray& bytes, Problems& problems)
{
    return readTankJson(bytes, u"t.json"_s, NameBook(test::smallRow()), kNow, problems);
}

TankDocument mustRead(const QByteArray& bytes)
{
    Problems problems;
    auto document = read(bytes, problems);
    EXPECT_TRUE(problems.isEmpty()) << problems.sentences().join(u'\n').toStdString();
    return document.value_or(TankDocument{});
}

QStringList problemsOf(const QByteArray& bytes)
{
    Problems problems;
    EXPECT_FALSE(read(bytes, problems));
    return problems.sentences();
}

const record::SourceWater* named(const TankDocument& document, const QString& name)
{
    const auto found = std::ranges::find(document.sources, name, &record::SourceWater::name);
    return found == document.sources.end() ? nullptr : &*found;
}

} // namespace

TEST(BlendJson, PartsMayStandAfterTheBlend)
{
    const TankDocument document = mustRead(tankWith(kBlend));
    const record::SourceWater* soft = named(document, u"soft"_s);
    ASSERT_NE(soft, nullptr);
    EXPECT_EQ(soft->firstPart, named(document, u"well"_s)->id);
    EXPECT_EQ(soft->secondPart, named(document, u"osmosis"_s)->id);
    EXPECT_EQ(soft->firstShare, 0.3);
    EXPECT_EQ(document.layouts.front().layout.source, soft->id);
}

TEST(BlendJson, PartsMayBeWatersOfTheStore)
{
    const TankDocument document = mustRead(tankWith(
        R"({"name": "mixed", "kind": "blend", "parts": [{"source": "tap", "share": 0.4}, {"source": "rain", "share": 0.6}]},
           "sources": [{"name": "rain", "kind": "rain"}])"));
    EXPECT_EQ(named(document, u"mixed"_s)->firstPart.value, 5);
}

TEST(BlendJson, RefusesWhatDoesNotAddUp)
{
    const auto parts = [](const QByteArray& list) {
        return tankWith(R"({"name": "mixed", "kind": "blend", "parts": )" + list + "}");
    };
    EXPECT_FALSE(
        problemsOf(parts(R"([{"source": "tap", "share": 0.4}, {"source": "nowhere", "share": 0.6}])")).isEmpty());
    EXPECT_FALSE(problemsOf(parts(R"([{"source": "tap", "share": 0.4}, {"source": "tap", "share": 0.6}])")).isEmpty());
    EXPECT_FALSE(problemsOf(parts(R"([{"source": "tap", "share": 0.4}])")).isEmpty());
    EXPECT_FALSE(
        problemsOf(parts(R"([{"source": "mixed", "share": 0.4}, {"source": "tap", "share": 0.6}])")).isEmpty());
    EXPECT_FALSE(
        problemsOf(
            tankWith(R"({"name": "t", "parts": [{"source": "tap", "share": 1}, {"source": "tap", "share": 0}]})"))
            .isEmpty())
        << "only a blend has parts";
}

TEST(RegimenJson, ReadsAndRefuses)
{
    const TankDocument document = mustRead(tankWith(kBlend, R"(, "uptake_mg_no3_per_l_wk": {"low": 3, "high": 9},
      "regimens": [{"name": "mix", "contents_mg_per_ml": {"no3": 20, "fe": 0.1}, "amount": 3, "weekdays": ["mon", "thu"],
        "from": "2026-11-20", "lean_start": false},
       {"name": "nitrate", "form": "stock", "salt": "kno3", "stock_g": 60, "stock_ml": 500, "amount": 2.5,
        "every_days": 2, "from": "2026-11-20", "until": "2027-01-31", "note": "shake"}])"));
    const record::LayoutRecord& layout = document.layouts.front();
    EXPECT_EQ(layout.layout.uptakeLow_mg_per_L_wk, 3.0);
    EXPECT_EQ(layout.layout.uptakeHigh_mg_per_L_wk, 9.0);
    ASSERT_EQ(layout.regimens.size(), 2U);
    EXPECT_EQ(layout.regimens[0].weekdays, 0b0001001);
    EXPECT_EQ(layout.regimens[0].everyDays, 0);
    EXPECT_FALSE(layout.regimens[0].leanStart);
    EXPECT_EQ(layout.regimens[1].form, record::DoseForm::Stock);
    EXPECT_EQ(layout.regimens[1].until, QDate(2027, 1, 31));
    EXPECT_FALSE(problemsOf(tankWith(kBlend, R"(, "regimens": [{"name": "mix", "amount": 3, "every_days": 1,
      "from": "2026-11-20"}])"))
                     .isEmpty())
        << "it holds nothing";
    EXPECT_FALSE(
        problemsOf(tankWith(kBlend, R"(, "regimens": [{"name": "mix", "form": "salt", "salt": "kno3", "amount": 3,
      "weekdays": ["someday"], "from": "2026-11-20"}])"))
            .isEmpty());
}

TEST(RegimenJson, RoundTripsThroughAFile)
{
    const TankDocument first = mustRead(tankWith(kBlend, R"(, "uptake_mg_no3_per_l_wk": {"low": 3, "high": 9},
      "regimens": [{"name": "nitrate", "form": "salt", "salt": "kno3", "amount": 0.5, "every_days": 3,
        "from": "2026-11-20", "note": "dry spoon"}])"));
    record::Row row = test::smallRow();
    record::Tank tank = first.tank;
    tank.id.value = 77;
    row.tanks.push_back(tank);
    record::LayoutRecord layout = first.layouts.front();
    layout.layout.id.value = 770;
    layout.layout.tank = tank.id;
    layout.layout.source.value = 100;
    layout.regimens.front().id.value = 771;
    row.layouts.emplace(layout.layout.id, layout);
    for (record::SourceWater water : first.sources) {
        const auto own = [](record::SourceWaterId id) { return id ? record::SourceWaterId{100 - id.value - 1} : id; };
        water.id = own(water.id);
        water.firstPart = own(water.firstPart);
        water.secondPart = own(water.secondPart);
        row.sources.push_back(water);
    }
    row.layouts.at(layout.layout.id).layout.source =
        std::ranges::find(row.sources, u"soft"_s, &record::SourceWater::name)->id;
    const TankDocument out = tankDocument(row, tank.id);
    EXPECT_EQ(out.sources.size(), 3U) << "the parts go with the blend";
    const TankDocument back = mustRead(tankJson(out, NameBook(row)));
    EXPECT_EQ(back, out);
}

} // namespace littoral::exchange
