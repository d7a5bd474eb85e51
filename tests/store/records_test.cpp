// SPDX-License-Identifier: GPL-3.0-or-later
#include "temp_store.h"

#include <limits>

using namespace littoral;
using namespace littoral::testing;
using namespace Qt::StringLiterals;
using namespace littoral::record;
using store::Edit;

namespace {

template <typename T> Result<void> put(TempStore& temp, T record)
{
    Edit edit(u"put"_s);
    edit.put(std::move(record));
    return temp->apply(edit);
}

constexpr double kNan = std::numeric_limits<double>::quiet_NaN();

/// Refused with a complete error, and nothing in the store has moved.
template <typename T> void expectRefused(TempStore& temp, T record, Fault fault)
{
    const QString before = dump(temp.path());
    const auto result = put(temp, std::move(record));
    ASSERT_FALSE(result);
    EXPECT_TRUE(complete(result.error(), fault));
    EXPECT_EQ(dump(temp.path()), before);
}

} // namespace

TEST(Records, EveryFieldComesBack)
{
    TempStore temp;
    const Everything ids = fill(*temp);
    temp.reopen();
    const auto row = *temp->load();
    const LayoutRecord& layout = row.layouts.at(ids.layout);

    const Tank& tank = *row.tank(ids.tank);
    EXPECT_EQ(tank.name, u"Slate Ford"_s);
    EXPECT_EQ(tank.depth_cm, 30.5);
    EXPECT_EQ(tank.note, u"by the window, 24 °C"_s);
    EXPECT_EQ(layout.layout.start, StartMethod::DarkStart);
    EXPECT_EQ(layout.layout.bed, Bed::SpentSoil);
    EXPECT_EQ(layout.layout.plants, PlantDensity::Dense);
    EXPECT_EQ(layout.layout.co2, Co2Mode::Pressurised);
    EXPECT_EQ(layout.layout.measuredNet_L, 48.2);
    EXPECT_EQ(layout.layout.source, ids.source);
    EXPECT_TRUE(layout.layout.rockHardens);
    EXPECT_FALSE(layout.layout.followsCadence);
    EXPECT_EQ(row.source(ids.source)->kind, SourceKind::Blend);
    EXPECT_EQ(row.source(ids.source)->chloramine, YesNoUnknown::Yes);
    EXPECT_EQ(row.source(ids.source)->chloride_mg_per_L, 21.0);
    EXPECT_EQ(row.kits.front().kind, KitKind::Drops);
    EXPECT_EQ(row.kits.front().steps, (std::vector<double>{0.0, 0.05, 0.1, 0.2, 0.4, 0.8}));
    EXPECT_EQ(row.kits.front().expires, QDate(2027, 2, 28));
    const Reading& reading = layout.readings.front();
    EXPECT_EQ(reading.typed, u"<0,05"_s);
    EXPECT_EQ(reading.unit, u"mg/L NO2"_s);
    EXPECT_EQ(reading.censoring, Censoring::Below);
    EXPECT_NEAR(reading.high, 0.05 / 3.284, 1e-5); // NO2 : N by IUPAC atomic weights (N 14.007, O 15.999)
    EXPECT_EQ(reading.kit, ids.kit);
    EXPECT_EQ(reading.enteredAt, moment("2026-11-25T06:31:00Z"));
    const Entry& entry = layout.entries.front();
    EXPECT_EQ(entry.kind, EntryKind::WaterChange);
    EXPECT_EQ(entry.plannedFor, moment("2026-11-24T20:00:00+01:00"));
    EXPECT_EQ(entry.load_mgN_per_L_d, 0.02);
    EXPECT_EQ(entry.severity, 2);
    EXPECT_EQ(entry.where, u"left pane"_s);
    EXPECT_EQ(entry.note, u"\"quoted\" 'and' ; odd – µ"_s);
    EXPECT_EQ(row.source(ids.source)->firstPart, ids.osmosis);
    EXPECT_EQ(row.source(ids.source)->secondPart, ids.rain);
    EXPECT_EQ(row.source(ids.source)->firstShare, 0.35);
    EXPECT_EQ(layout.layout.uptakeLow_mg_per_L_wk, 2.5);
    EXPECT_EQ(layout.layout.uptakeHigh_mg_per_L_wk, 8.0);
    ASSERT_EQ(layout.regimens.size(), 1U);
    const DoseRegimen& regimen = layout.regimens.front();
    EXPECT_EQ(regimen.name, u"green mix"_s);
    EXPECT_EQ(regimen.form, DoseForm::Stock);
    EXPECT_EQ(regimen.salt, u"kno3"_s);
    EXPECT_EQ(regimen.stock_g, 60.0);
    EXPECT_EQ(regimen.stock_mL, 500.0);
    EXPECT_EQ(regimen.iron_mg_per_mL, 0.05);
    EXPECT_EQ(regimen.everyDays, 0);
    EXPECT_EQ(regimen.weekdays, 0b0010101);
    EXPECT_EQ(regimen.until, QDate(2026, 12, 24));
    EXPECT_FALSE(regimen.leanStart);
    EXPECT_EQ(regimen.note, u"shake first"_s);
    const Task& task = layout.tasks.front();
    EXPECT_EQ(task.due, QDate(2026, 11, 24));
    EXPECT_EQ(task.movedTo, QDate(2026, 11, 25));
    EXPECT_EQ(task.state, TaskState::Done);
    EXPECT_EQ(task.closedBy, ids.entry);
    EXPECT_EQ(row.templates.front().definition, QByteArray(R"({"every": 14, "name": "Trim \u00fc stems"})"));
    EXPECT_EQ(row.targets.front().high, 25.5);
    EXPECT_EQ(row.plans.front().body, QByteArray(R"([{"day":1,"fraction":0.5}])"));
    EXPECT_EQ(row.supplies.front().amount, 180.0);
    const Journey& journey = row.journeys.front();
    EXPECT_EQ(journey.leaves, QDate(2026, 12, 23));
    EXPECT_EQ(journey.returns, QDate(2027, 1, 3));
    EXPECT_EQ(journey.helper, u"Ida, next door"_s);
    EXPECT_EQ(journey.phone, u"+00 (0)12 345"_s);
    EXPECT_EQ(journey.note, u"has the key"_s);
    EXPECT_EQ(journey.enteredAt, moment("2026-11-25T08:10:00+01:00"));
    EXPECT_EQ(row.settings.value(u"language"_s), u"en"_s);
    EXPECT_EQ(temp->issuedForecasts(ids.layout)->front().asOf, moment("2026-11-25T07:30:00+01:00"));
    const auto photos = *temp->photos(ids.layout);
    ASSERT_EQ(photos.size(), 1U);
    EXPECT_TRUE(photos.front().jpeg.isEmpty());
    EXPECT_EQ(photos.front().height, 1066);
    EXPECT_EQ(*temp->photoBytes(ids.photo), QByteArray::fromHex("ffd8ffe000104a46494600010100ffd9"));
    EXPECT_TRUE(complete(temp->photoBytes(PhotoId{7}).error(), Fault::NotFound));
}

TEST(Records, EveryEnumeratorAndEveryEntryKindComesBack)
{
    TempStore temp;
    const Everything ids = fill(*temp);
    for (int kind = 0; kind <= static_cast<int>(EntryKind::Note); ++kind) {
        Entry entry;
        entry.tank = ids.tank;
        entry.layout = ids.layout;
        entry.kind = static_cast<EntryKind>(kind);
        entry.at = moment("2026-11-26T08:00:00+01:00").plusMs(kind);
        Edit edit(u"kind"_s);
        const EntryId id = edit.put(entry);
        ASSERT_TRUE(succeeded(temp->apply(edit)));
        EXPECT_EQ(temp->load()->layouts.at(ids.layout).entries.back().kind, entry.kind);
        // The code in the file is the one that files and command line use.
        EXPECT_EQ(ask(temp.path(), u"SELECT kind FROM entry WHERE id = %1"_s.arg(id.value)).toString(),
                  entryKindCode(entry.kind));
    }
}

TEST(Records, IdsAreUniqueRiseAndFitAJsonNumber)
{
    qint64 last = 0;
    for (int i = 0; i < 100'000; ++i) {
        const qint64 id = Edit::nextId();
        ASSERT_GT(id, last);
        last = id;
    }
    EXPECT_LT(last, qint64{1} << 53); // RFC 8259 section 6: integers up to 2^53 are exact in a double
}

TEST(Records, RecordsOfOneEditMayReferToEachOtherInAnyOrder)
{
    TempStore temp;
    Edit edit(u"backwards"_s);
    const TankId tank{Edit::nextId()};
    const LayoutId layout{Edit::nextId()};
    edit.put(readingOf(tank, layout, u"0.1"_s, moment("2026-11-25T07:30:00+01:00")));
    Layout made = layoutIn(tank);
    made.id = layout;
    edit.put(made);
    Tank named = tankNamed(u"Late"_s);
    named.id = tank;
    edit.put(named);
    ASSERT_TRUE(succeeded(temp->apply(edit)));
    ASSERT_TRUE(succeeded(temp->undo()));
    ASSERT_TRUE(succeeded(temp->redo()));
    EXPECT_EQ(temp->load()->recordCount(), 1U);
}

TEST(Records, PutAndRemovedAgainInOneEdit)
{
    TempStore temp;
    const Everything ids = fill(*temp);
    Edit edit(u"second thoughts"_s);
    edit.put(readingOf(ids.tank, ids.layout, u"0.3"_s, moment("2026-11-26T07:30:00+01:00")));
    edit.remove(ids.layout);
    edit.remove(ids.tank);
    ASSERT_TRUE(succeeded(temp->apply(edit)));
    ASSERT_TRUE(succeeded(temp->undo()));
    EXPECT_EQ(temp->load()->layouts.at(ids.layout).readings.size(), 1U);
}

TEST(Records, OddTextSurvives)
{
    TempStore temp;
    QString odd = u"emoji 🐟, zero"_s;
    odd += QChar(0);
    odd += u"inside, tab\t, new\nline"_s;
    Tank tank = tankNamed(odd);
    tank.note = QString(QChar(0xD800)); // a lone surrogate: comes back as the replacement character, and can be undone
    ASSERT_TRUE(succeeded(put(temp, tank)));
    EXPECT_EQ(temp->load()->tanks.front().name, odd);
    ASSERT_TRUE(succeeded(temp->undo()));
    ASSERT_TRUE(succeeded(temp->redo()));
    EXPECT_EQ(temp->load()->tanks.front().name, odd);
}

TEST(Refused, TankNamesAreTakenInAnyCase)
{
    TempStore temp;
    ASSERT_TRUE(succeeded(put(temp, tankNamed(u"Ärlen Ford"_s))));
    for (const QString& name : {u"Ärlen Ford"_s, u"ärlen ford"_s, u" ÄRLEN FORD "_s}) {
        const auto again = put(temp, tankNamed(name));
        ASSERT_FALSE(again);
        EXPECT_TRUE(complete(again.error(), Fault::Conflict));
        EXPECT_EQ(again.error().what, "There is already a tank called \"Ärlen Ford\".");
    }
    Tank same = temp->load()->tanks.front();
    same.name = u"ÄRLEN FORD"_s;
    EXPECT_TRUE(succeeded(put(temp, same))) << "its own name in another case";
}

TEST(Refused, WhatBelongsToNothing)
{
    TempStore temp;
    const Everything ids = fill(*temp);
    const Moment at = moment("2026-11-26T07:30:00+01:00");
    expectRefused(temp, readingOf(ids.tank, LayoutId{5}, u"0.1"_s, at), Fault::Conflict);
    expectRefused(temp, readingOf(ids.tank, LayoutId{}, u"0.1"_s, at), Fault::BadInput);
    expectRefused(temp, readingOf(TankId{}, ids.layout, u"0.1"_s, at), Fault::BadInput);
    expectRefused(temp, readingOf(ids.otherTank, ids.layout, u"0.1"_s, at), Fault::BadInput);
    expectRefused(temp, layoutIn(TankId{5}), Fault::Conflict);
    expectRefused(temp, layoutIn(TankId{}), Fault::BadInput);
    Reading reading = readingOf(ids.tank, ids.layout, u"0.1"_s, at);
    reading.kit = KitId{5};
    expectRefused(temp, reading, Fault::Conflict);
    Layout layout = layoutIn(ids.tank);
    layout.source = SourceWaterId{5};
    expectRefused(temp, layout, Fault::Conflict);
    Task task = temp->load()->layouts.at(ids.layout).tasks.front();
    task.closedBy = EntryId{5};
    expectRefused(temp, task, Fault::Conflict);
    Layout moved = temp->load()->layouts.at(ids.layout).layout;
    moved.tank = ids.otherTank;
    expectRefused(temp, moved, Fault::Conflict);
    Edit edit(u"gone"_s);
    edit.remove(ReadingId{5});
    EXPECT_TRUE(complete(temp->apply(edit).error(), Fault::Conflict));
}

TEST(Refused, WhatCannotBe)
{
    TempStore temp;
    const Everything ids = fill(*temp);
    const auto row = *temp->load();
    const auto changed = [&](auto record, auto change, Fault fault = Fault::BadInput) {
        change(record);
        expectRefused(temp, record, fault);
    };
    const LayoutRecord& layout = row.layouts.at(ids.layout);
    changed(*row.tank(ids.tank), [](Tank& it) { it.name = u"  "_s; });
    changed(*row.tank(ids.tank), [](Tank& it) { it.length_cm = -1.0; });
    changed(*row.tank(ids.tank), [](Tank& it) { it.length_cm = kNan; });
    changed(layout.layout, [](Layout& it) { it.flooded = Moment(); });
    changed(layout.layout, [](Layout& it) { it.ended = it.flooded.plusMs(-1); });
    changed(layout.layout, [](Layout& it) { it.number = 0; });
    changed(*row.source(ids.source), [](SourceWater& it) { it.ph = kNan; });
    changed(*row.source(ids.source), [](SourceWater& it) { it.firstShare = 1.2; });
    changed(*row.source(ids.source), [](SourceWater& it) { it.firstPart = it.secondPart; });
    changed(*row.source(ids.source), [](SourceWater& it) { it.firstPart = it.id; });
    changed(
        *row.source(ids.source), [](SourceWater& it) { it.firstPart.value = 99; }, Fault::Conflict);
    changed(layout.layout, [](Layout& it) { it.uptakeHigh_mg_per_L_wk = 1.0; }); // under its lower end
    changed(layout.regimens.front(), [](DoseRegimen& it) { it.name = u" "_s; });
    changed(layout.regimens.front(), [](DoseRegimen& it) { it.amount = 0.0; });
    changed(layout.regimens.front(), [](DoseRegimen& it) { it.weekdays = 0; });
    changed(layout.regimens.front(), [](DoseRegimen& it) { it.until = it.from.addDays(-1); });
    changed(layout.regimens.front(), [](DoseRegimen& it) { it.iron_mg_per_mL = kNan; });
    changed(layout.regimens.front(), [](DoseRegimen& it) { it.salt = u"no-such-salt"_s; });
    changed(row.kits.front(), [](TestKit& it) { it.parameter = u"unheard-of"_s; });
    changed(row.kits.front(), [](TestKit& it) { it.unit = u"mg/L"_s; });
    changed(row.kits.front(), [](TestKit& it) { it.steps = {1.0, 0.5}; });
    changed(row.kits.front(), [](TestKit& it) { it.waitMinutes = -1; });
    changed(layout.readings.front(), [](Reading& it) { it.at = Moment(); });
    changed(layout.readings.front(), [](Reading& it) { it.unit = u"furlong"_s; });
    changed(layout.readings.front(), [](Reading& it) { it.parameter = u"Nitrite"_s; });
    changed(layout.readings.front(), [](Reading& it) { it.value = kNan; });
    changed(layout.readings.front(), [](Reading& it) { it.low = it.high + 1.0; });
    changed(layout.entries.front(), [](Entry& it) { it.fraction = 1.5; });
    changed(layout.entries.front(), [](Entry& it) { it.severity = 5; });
    changed(layout.entries.front(), [](Entry& it) { it.amount = kNan; });
    changed(temp->photos(ids.layout)->front(), [](Photo& it) { it.id = {}; });
    changed(temp->photos(ids.layout)->front(), [](Photo& it) { it.width = Photo::kPhotoSide + 1; });
    changed(row.supplies.front(), [](Supply& it) { it.amount = kNan; });
    changed(row.journeys.front(), [](Journey& it) { it.leaves = QDate(); });
    changed(row.journeys.front(), [](Journey& it) { it.returns = it.leaves; });
    changed(row.templates.front(), [](TaskTemplate& it) { it.definition = "{"; });
    changed(row.templates.front(), [](TaskTemplate& it) { it.key.clear(); });
    changed(
        row.templates.front(), [](TaskTemplate& it) { it.id = {}; }, Fault::Conflict);
    changed(layout.tasks.front(), [](Task& it) { it.fraction = -0.1; });
    changed(row.targets.front(), [](Target& it) { it.low = 30.0; });
    changed(
        row.targets.front(), [](Target& it) { it.id = {}; }, Fault::Conflict);
    changed(row.plans.front(), [](Plan& it) { it.body = "\xff"; });
    changed(temp->issuedForecasts(ids.layout)->front(), [](IssuedForecast& it) { it.asOf = Moment(); });
    Edit edit(u"setting"_s);
    edit.set(QString(), u"x"_s);
    EXPECT_TRUE(complete(temp->apply(edit).error(), Fault::BadInput));
}

TEST(Refused, AWholeEditGoesWhenOneStepIsRefused)
{
    TempStore temp;
    const QString before = dump(temp.path());
    Edit edit(u"half good"_s);
    const TankId tank = edit.put(tankNamed(u"Good"_s));
    edit.put(layoutIn(tank));
    edit.put(tankNamed(u"good"_s));
    EXPECT_TRUE(complete(temp->apply(edit).error(), Fault::Conflict));
    EXPECT_EQ(dump(temp.path()), before);
    EXPECT_FALSE(temp->journal().undoLabel);
}

TEST(Refused, AnIdMadeElsewhereIsNotReplacedByAFreshRecord)
{
    TempStore temp;
    Edit first(u"first"_s);
    first.put(tankNamed(u"First"_s));
    ASSERT_TRUE(succeeded(temp->apply(first)));
    // The same edit again stands for another program that chanced on the same ids.
    const auto again = temp->apply(first);
    ASSERT_FALSE(again);
    EXPECT_TRUE(complete(again.error(), Fault::Conflict));
}
