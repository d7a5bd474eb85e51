// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/tank_document.h"

#include "core/base/random.h"
#include "core/exchange/instant.h"
#include "core/water/nitrogen.h"
#include "tests/exchange/small_row.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <gtest/gtest.h>

namespace littoral::exchange {

using namespace Qt::StringLiterals;
using record::EntryKind;

namespace {

const record::Moment kNow = record::Moment::fromIso(u"2026-11-25T08:00:00Z"_s);

constexpr auto kTank = R"({
  "format": "littoral-tank", "version": 1,
  "name": "Heron Reach", "note": "by the window",
  "length_cm": 60, "depth_cm": 45, "height_cm": 40, "glass_mm": 8, "gap_cm": 4, "net_litres": 82.5,
  "flooded": "2026-11-09T10:00:00Z", "start": "dark-start",
  "bed": {"kind": "rich-soil", "litres": 14}, "rock": {"kg": 6.5, "hardens": true},
  "source": {"name": "well", "kh_dkh": 4, "nitrate_mg_per_l": 10, "nitrate_as": "NO3", "chloramine": "no"},
  "co2": {"on": true, "target_mg_per_l": 22, "hours": 7},
  "temperature_c": 23.5, "plants": "dense", "light": {"hours": 6, "par": 70},
  "kits": [{"name": "card", "parameter": "no3", "unit": "mg/L NO3", "kind": "card", "steps": [0, 5, 10, 20, 40], "reads_nitrite_too": true}],
  "targets": [{"parameter": "temp", "unit": "C", "low": 22, "high": 25}],
  "entries": [
    {"kind": "water-change", "at": {"day": 2}, "percent": 50},
    {"kind": "water-change", "at": "2026-12-01T09:00:00Z", "planned": true, "fraction": 0.4},
    {"kind": "dose", "at": {"day": 0.5}, "subject": "ammonia", "amount": 2, "unit": "mg/L N"},
    {"kind": "dose", "at": {"day": 0.5}, "subject": "starter", "amount": 1},
    {"kind": "feeding", "at": {"day": 14}, "planned": true, "amount": 0.05, "unit": "mg/L/d N"},
    {"kind": "addition", "at": {"day": 28}, "planned": true, "subject": "shrimp", "count": 10, "load_mgn_per_l_d": 0.03},
    {"kind": "media-transfer", "at": {"day": 0}, "subject": "squeezings", "fraction": 0.3, "other_tank": "Fen Corner"},
    {"kind": "co2-change", "at": {"day": 3}, "target_mg_per_l": 30, "hours": 8}
  ],
  "readings": [
    {"at": {"day": 3.5}, "parameter": "no3", "value": "5-10", "kit": "card"},
    {"at": "2026-11-14T07:30:00+01:00", "parameter": "tan", "value": 1.5, "unit": "mg/L NH4", "note": "evening"}
  ],
  "tasks": [{"template": "water-change", "due": "2026-11-12", "state": "done", "closed_at": "2026-11-11T10:00:00Z", "closed_by_entry": 0}]
})";

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

/// The tank file with one key changed, as JSON.
QByteArray changed(const std::function<void(QJsonObject&)>& change)
{
    QJsonObject object = QJsonDocument::fromJson(kTank).object();
    change(object);
    return QJsonDocument(object).toJson();
}

} // namespace

TEST(TankJson, readsAWholeTank)
{
    const TankDocument document = mustRead(kTank);
    EXPECT_EQ(document.tank.name, u"Heron Reach"_s);
    EXPECT_DOUBLE_EQ(document.tank.length_cm, 60.0);
    ASSERT_EQ(document.layouts.size(), 1u);
    const record::LayoutRecord& record = document.layouts.front();
    EXPECT_EQ(record.layout.start, record::StartMethod::DarkStart);
    EXPECT_EQ(record.layout.bed, record::Bed::RichSoil);
    EXPECT_DOUBLE_EQ(record.layout.bed_L, 14.0);
    EXPECT_TRUE(record.layout.rockHardens);
    EXPECT_DOUBLE_EQ(*record.layout.measuredNet_L, 82.5);
    EXPECT_EQ(record.layout.co2, record::Co2Mode::Pressurised);
    EXPECT_DOUBLE_EQ(record.layout.co2Hours, 7.0);
    EXPECT_EQ(record.layout.plants, record::PlantDensity::Dense);
    EXPECT_FALSE(record.layout.followsCadence);
    ASSERT_EQ(document.sources.size(), 1u);
    const record::SourceWater& well = document.sources.front();
    EXPECT_EQ(record.layout.source, well.id);
    // 10 mg/L as NO3 is 10 * 14.007 / 62.004 = 2.259 mg/L N (IUPAC standard atomic weights, 2021 abridged).
    EXPECT_NEAR(*well.nitrate_mgN_per_L, 2.259, 0.001);
    // 4 German degrees are 4 * 0.3566 = 1.427 meq/L (DIN 38409-6: 1 °dH = 10 mg/L CaO).
    EXPECT_NEAR(*well.alkalinity_meq_per_L, 1.427, 0.001);
    EXPECT_EQ(well.chloramine, record::YesNoUnknown::No);
    ASSERT_EQ(record.entries.size(), 8u);
    EXPECT_EQ(record.entries[0].at, record.layout.flooded.plusDays(2.0));
    EXPECT_DOUBLE_EQ(*record.entries[0].fraction, 0.5);
    EXPECT_TRUE(record.entries[1].planned);
    EXPECT_EQ(record.entries[6].otherTank.value, 2);
    ASSERT_EQ(record.readings.size(), 2u);
    EXPECT_EQ(record.readings[0].kit, document.kits.front().id);
    EXPECT_EQ(record.readings[0].censoring, record::Censoring::Between);
    EXPECT_EQ(record.readings[1].typed, u"1.5"_s);
    ASSERT_EQ(record.tasks.size(), 1u);
    EXPECT_EQ(record.tasks[0].closedBy, record.entries[0].id);
    ASSERT_EQ(document.targets.size(), 1u);
    EXPECT_DOUBLE_EQ(*document.targets[0].high, 25.0);
}

TEST(TankJson, roundTrip)
{
    const TankDocument document = mustRead(kTank);
    const NameBook names(test::smallRow());
    const QByteArray written = tankJson(document, names);
    const TankDocument again = mustRead(written);
    EXPECT_TRUE(document == again) << written.toStdString();
    EXPECT_EQ(written, tankJson(again, names));
}

TEST(TankJson, roundTripThroughARow)
{
    record::Row row = test::smallRow();
    const TankDocument read = mustRead(kTank);
    // Into the row under its own ids, as an import does.
    record::Tank tank = read.tank;
    tank.id.value = 50;
    row.tanks.push_back(tank);
    record::SourceWater well = read.sources.front();
    well.id.value = 60;
    row.sources.push_back(well);
    record::TestKit card = read.kits.front();
    card.id.value = 70;
    row.kits.clear();
    row.kits.push_back(card);
    record::Target target = read.targets.front();
    target.tank = tank.id;
    target.id.value = 80;
    row.targets.push_back(target);
    record::LayoutRecord layout = read.layouts.front();
    layout.layout.id.value = 90;
    layout.layout.tank = tank.id;
    layout.layout.source = well.id;
    for (qint64 id = 100; record::Entry & entry : layout.entries) {
        entry.id.value = ++id;
    }
    layout.tasks.front().closedBy = layout.entries.front().id;
    layout.readings.front().kit = card.id;
    row.layouts.emplace(layout.layout.id, layout);
    EXPECT_TRUE(tankDocument(row, tank.id) == read);
}

TEST(TankJson, keepsSeveralLayoutsAndMilliseconds)
{
    TankDocument document = mustRead(kTank);
    record::LayoutRecord earlier = document.layouts.front();
    earlier.layout.flooded = record::Moment::fromIso(u"2025-03-01T10:00:00.250Z"_s);
    earlier.layout.ended = record::Moment::fromIso(u"2026-10-30T10:00:00Z"_s);
    earlier.readings.clear();
    earlier.entries.clear();
    earlier.tasks.clear();
    document.layouts.front().layout.number = 2;
    document.layouts.front().layout.id.value = -2;
    for (auto& reading : document.layouts.front().readings) {
        reading.layout.value = -2;
    }
    for (auto& entry : document.layouts.front().entries) {
        entry.layout.value = -2;
    }
    for (auto& task : document.layouts.front().tasks) {
        task.layout.value = -2;
    }
    document.layouts.insert(document.layouts.begin(), earlier);
    const QByteArray written = tankJson(document, NameBook(test::smallRow()));
    EXPECT_TRUE(written.contains("2025-03-01T10:00:00.250Z"));
    EXPECT_TRUE(document == mustRead(written)) << written.toStdString();
}

TEST(TankJson, namesThePathOfEachProblem)
{
    struct Case
    {
        std::function<void(QJsonObject&)> change;
        QString start;
    };
    const auto in = [](const QString& key, const QString& inner, const QJsonValue& value) {
        return [=](QJsonObject& top) {
            QJsonObject object = top.value(key).toObject();
            object.insert(inner, value);
            top.insert(key, object);
        };
    };
    const auto entry = [](const QJsonObject& object) {
        return [=](QJsonObject& top) { top.insert(u"entries"_s, QJsonArray{object}); };
    };
    const auto without = [](const QString& key) { return [=](QJsonObject& top) { top.remove(key); }; };
    const auto with = [](const QString& key, const QJsonValue& value) {
        return [=](QJsonObject& top) { top.insert(key, value); };
    };
    const std::vector<Case> cases{
        {with(u"lenght_cm"_s, 60), u"t.json, lenght_cm: This is not known here. Did you mean \"length_cm\"?"_s},
        {in(u"bed"_s, u"liters"_s, 60), u"t.json, bed.liters: This is not known here. Did you mean \"litres\"?"_s},
        {in(u"bed"_s, u"kind"_s, u"mud"_s), u"t.json, bed.kind: \"mud\" is not one of rich-soil"_s},
        {without(u"bed"_s), u"t.json, bed: This is needed"_s},
        {without(u"flooded"_s), u"t.json, flooded: This is needed"_s},
        {without(u"name"_s), u"t.json, name: This is needed"_s},
        {without(u"start"_s), u"t.json, start: This is needed"_s},
        {with(u"start"_s, u"wet"_s), u"t.json, start: \"wet\" is not one of"_s},
        {with(u"temperature_c"_s, 75), u"t.json, temperature_c: 75 is outside"_s},
        {with(u"temperature_c"_s, u"24"_s), u"t.json, temperature_c: A number is expected"_s},
        {with(u"flooded"_s, u"9 Nov"_s), u"t.json, flooded: This is not an instant"_s},
        {in(u"source"_s, u"nitrate_as"_s, u"?"_s), u"t.json, source.nitrate_as: Say what the nitrate"_s},
        {with(u"source"_s, u"lake"_s), u"t.json, source: There is no source water \"lake\""_s},
        {in(u"co2"_s, u"on"_s, 1), u"t.json, co2.on: This is either"_s},
        {entry({{u"kind"_s, u"note"_s}, {u"note"_s, u"x"_s}}), u"t.json, entries[0].at: This is needed"_s},
        {entry({{u"kind"_s, u"note"_s}, {u"note"_s, u"x"_s}, {u"at"_s, QJsonObject{{u"days"_s, 1}}}}),
         u"t.json, entries[0].at.day: This is needed"_s},
        {entry({{u"kind"_s, u"dance"_s}, {u"at"_s, u"2026-11-10"_s}}), u"t.json, entries[0].kind: There is no kind"_s},
        {entry({{u"kind"_s, u"note"_s}, {u"note"_s, u"x"_s}, {u"fraction"_s, 1}, {u"at"_s, u"2026-11-10"_s}}),
         u"t.json, entries[0].fraction: This does not belong"_s},
        {with(u"entries"_s, QJsonArray{3}), u"t.json, entries[0]: An object"_s},
        {with(u"readings"_s,
              QJsonArray{QJsonObject{{u"at"_s, u"2026-11-10"_s}, {u"parameter"_s, u"no2"_s}, {u"value"_s, 1}}}),
         u"t.json, readings[0].unit: Nitrite needs its unit"_s},
        {with(u"kits"_s, QJsonArray{QJsonObject{{u"name"_s, u"card"_s},
                                                {u"parameter"_s, u"no3"_s},
                                                {u"unit"_s, u"mg/L NO3"_s},
                                                {u"steps"_s, QJsonArray{0, 5, 5}}}}),
         u"t.json, kits[0].steps: The steps are numbers"_s},
        {with(u"version"_s, 2), u"t.json, version: This program reads version 1"_s},
        {with(u"format"_s, u"else"_s), u"t.json, format: "_s},
    };
    for (const Case& example : cases) {
        SCOPED_TRACE(example.start.toStdString());
        Problems problems;
        EXPECT_FALSE(read(changed(example.change), problems));
        ASSERT_FALSE(problems.isEmpty());
        const QStringList sentences = problems.sentences();
        const bool found =
            std::ranges::any_of(sentences, [&](const QString& s) { return s.startsWith(example.start); });
        EXPECT_TRUE(found) << sentences.join(u'\n').toStdString();
    }
}

TEST(TankJson, needsLitresOrDimensions)
{
    Problems problems;
    EXPECT_FALSE(read(changed([](QJsonObject& top) {
                          top.remove(u"net_litres"_s);
                          top.remove(u"height_cm"_s);
                      }),
                      problems));
    EXPECT_TRUE(problems.sentences().front().startsWith(u"t.json, net_litres: "_s));
    const TankDocument boxed = mustRead(changed([](QJsonObject& top) { top.remove(u"net_litres"_s); }));
    EXPECT_FALSE(boxed.layouts.front().layout.measuredNet_L);
}

TEST(TankJson, nullIsNotKnown)
{
    const TankDocument document = mustRead(changed([](QJsonObject& top) {
        top.insert(u"source"_s,
                   QJsonObject{{u"name"_s, u"tap"_s}, {u"nitrate_mg_per_l"_s, QJsonValue()}, {u"ph"_s, QJsonValue()}});
        top.insert(u"rock"_s, QJsonValue());
    }));
    EXPECT_FALSE(document.sources.front().nitrate_mgN_per_L);
    EXPECT_EQ(document.sources.front().chloramine, record::YesNoUnknown::Unknown);
    Problems problems;
    EXPECT_FALSE(read(changed([](QJsonObject& top) { top.insert(u"bed"_s, QJsonValue()); }), problems));
    EXPECT_EQ(problems.sentences(), QStringList{u"t.json, bed: This is needed and is missing."_s});
}

TEST(TankJson, saysTheLineWhereItIsNotJson)
{
    Problems problems;
    EXPECT_FALSE(read("{\n\"format\": \"littoral-tank\",\n\"version\" 1\n}", problems));
    EXPECT_TRUE(problems.sentences().front().startsWith(u"t.json, line 3: This is not JSON"_s))
        << problems.sentences().front().toStdString();
}

TEST(TankJson, survivesTornFiles)
{
    Random random(11);
    const QByteArray whole = kTank;
    int refused = 0;
    for (int round = 0; round < 400; ++round) {
        QByteArray torn = whole;
        for (auto n = 1 + random.bits() % 5; n > 0; --n) {
            torn[static_cast<qsizetype>(random.bits() % static_cast<quint64>(torn.size()))] =
                static_cast<char>(random.bits() & 0x7f);
        }
        Problems problems;
        const bool read = exchange::readTankJson(torn, u"t.json"_s, {}, kNow, problems).has_value();
        EXPECT_NE(read, !problems.isEmpty());
        refused += read ? 0 : 1;
    }
    EXPECT_GT(refused, 100);
}

TEST(Instant, takesIsoAndNothingElse)
{
    EXPECT_EQ(parseInstant(u"2026-11-25T07:40:10.5Z"_s)->utcMs() % 1000, 500);
    EXPECT_EQ(parseInstant(u"2026-11-25 07:40+0530"_s)->offsetSeconds(), 19800);
    EXPECT_EQ(*parseInstant(u"2026-11-25 07:40-08:00"_s), record::Moment::fromIso(u"2026-11-25T15:40:00Z"_s));
    for (const char* bad : {"", "2026-11", "2026-13-01", "2026-11-25T25:00", "2026-11-25T07:40+15:00", "25.11.2026",
                            "2026-11-25 7:40", "2026-11-25T07:40 x", "tomorrow"}) {
        EXPECT_FALSE(parseInstant(QString::fromLatin1(bad))) << bad;
    }
}

} // namespace littoral::exchange
