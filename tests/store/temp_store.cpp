// SPDX-License-Identifier: GPL-3.0-or-later
#include "temp_store.h"

#include "core/store/connection.h"
#include "core/store/journal.h"
#include "core/store/table.h"

#include <QJsonDocument>
#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <sys/wait.h>
#include <unistd.h>

namespace littoral::testing {

using namespace Qt::StringLiterals;
using namespace record;
using store::Edit;

namespace {

/// A connection of its own, without the program's settings.
void withDatabase(const QString& path, const std::function<void(QSqlDatabase&)>& body)
{
    {
        QSqlDatabase database = QSqlDatabase::addDatabase(u"QSQLITE"_s, u"tamper"_s);
        database.setDatabaseName(path);
        ASSERT_TRUE(database.open()) << database.lastError().text().toStdString();
        body(database);
        database.close();
    }
    QSqlDatabase::removeDatabase(u"tamper"_s);
}

void fillTank(Edit& edit, Everything& ids)
{
    Tank tank = tankNamed(u"Slate Ford"_s);
    tank.position = 2;
    tank.length_cm = 60.0;
    tank.depth_cm = 30.5;
    tank.height_cm = 36.0;
    tank.note = u"by the window, 24 °C"_s;
    ids.tank = edit.put(tank);
    ids.otherTank = edit.put(tankNamed(u"Fern Hollow"_s));

    SourceWater osmosis;
    osmosis.name = u"osmosis"_s;
    osmosis.kind = SourceKind::ReverseOsmosis;
    ids.osmosis = edit.put(osmosis);
    SourceWater rain;
    rain.name = u"rain butt"_s;
    rain.kind = SourceKind::Rain;
    ids.rain = edit.put(rain);

    SourceWater source;
    source.name = u"kitchen tap"_s;
    source.kind = SourceKind::Blend;
    source.nitrate_mgN_per_L = 2.5;
    source.chloramine = YesNoUnknown::Yes;
    source.alkalinity_meq_per_L = 1.1;
    source.hardness_mmol_per_L = 0.9;
    source.ph = 7.6;
    source.chloride_mg_per_L = 21.0;
    source.note = u"winter"_s;
    source.firstPart = ids.osmosis;
    source.secondPart = ids.rain;
    source.firstShare = 0.35;
    ids.source = edit.put(source);

    Layout layout = layoutIn(ids.tank);
    layout.number = 2;
    layout.name = u"river bank"_s;
    layout.ended = moment("2026-12-24T18:00:00+01:00");
    layout.start = StartMethod::DarkStart;
    layout.bed = Bed::SpentSoil;
    layout.bed_L = 9.0;
    layout.rock_kg = 4.5;
    layout.rockHardens = true;
    layout.gap_cm = 2.5;
    layout.measuredNet_L = 48.2;
    layout.plants = PlantDensity::Dense;
    layout.source = ids.source;
    layout.co2 = Co2Mode::Pressurised;
    layout.co2Target_mg_per_L = 22.0;
    layout.lightPar = 65.0;
    layout.filterFlow_L_per_h = 480.0;
    layout.followsCadence = false;
    layout.note = u"slope to the left"_s;
    layout.uptakeLow_mg_per_L_wk = 2.5;
    layout.uptakeHigh_mg_per_L_wk = 8.0;
    ids.layout = edit.put(layout);
    ids.otherLayout = edit.put(layoutIn(ids.otherTank));
}

void fillWork(Edit& edit, Everything& ids)
{
    Entry entry;
    entry.tank = ids.tank;
    entry.layout = ids.layout;
    entry.kind = EntryKind::WaterChange;
    entry.at = moment("2026-11-25T07:40:00+01:00");
    entry.plannedFor = moment("2026-11-24T20:00:00+01:00");
    entry.plannedFraction = 0.5;
    entry.subject = u"weekly"_s;
    entry.fraction = 0.45;
    entry.amount = 21.7;
    entry.unit = u"L"_s;
    entry.second = 3.0;
    entry.proteinShare = 0.42;
    entry.count = 3;
    entry.load_mgN_per_L_d = 0.02;
    entry.severity = 2;
    entry.coverage = 0.1;
    entry.where = u"left pane"_s;
    entry.source = ids.source;
    entry.note = u"\"quoted\" 'and' ; odd – µ"_s;
    entry.enteredAt = moment("2026-11-25T07:45:00+01:00");
    ids.entry = edit.put(entry);

    Entry transfer;
    transfer.tank = ids.otherTank;
    transfer.layout = ids.otherLayout;
    transfer.kind = EntryKind::MediaTransfer;
    transfer.at = moment("2026-11-20T12:00:00+01:00");
    transfer.otherTank = ids.tank;
    transfer.source = ids.source;
    ids.transfer = edit.put(transfer);

    Task task;
    task.tank = ids.tank;
    task.layout = ids.layout;
    task.templateKey = u"water-change"_s;
    task.title = u"Water change"_s;
    task.due = QDate(2026, 11, 24);
    task.movedTo = QDate(2026, 11, 25);
    task.snoozed = true;
    task.state = TaskState::Done;
    task.closedAt = moment("2026-11-25T07:45:00+01:00");
    task.closedBy = ids.entry;
    task.reason = u"away"_s;
    task.fraction = 0.5;
    task.enteredAt = moment("2026-11-23T07:45:00+01:00");
    ids.task = edit.put(task);
}

void fillMeasuring(Edit& edit, Everything& ids)
{
    TestKit kit;
    kit.name = u"nitrite drops"_s;
    kit.parameter = u"no2"_s;
    kit.unit = u"mg/L NO2"_s;
    kit.kind = KitKind::Drops;
    kit.steps = {0.0, 0.05, 0.1, 0.2, 0.4, 0.8};
    kit.readsNitriteToo = true;
    kit.waitMinutes = 5;
    kit.lot = u"A1"_s;
    kit.opened = QDate(2026, 1, 31);
    kit.expires = QDate(2027, 2, 28);
    kit.note = u"cool place"_s;
    kit.retired = true;
    ids.kit = edit.put(kit);

    Reading reading = readingOf(ids.tank, ids.layout, u"<0,05"_s, moment("2026-11-25T07:30:00+01:00"));
    reading.kit = ids.kit;
    reading.note = u"after feeding"_s;
    reading.enteredAt = moment("2026-11-25T07:31:00+01:00");
    ids.reading = edit.put(reading);

    Target target;
    target.tank = ids.tank;
    target.parameter = u"temp"_s;
    target.low = 22.0;
    target.high = 25.5;
    ids.target = edit.put(target);
}

void fillRest(Edit& edit, Everything& ids)
{
    Photo photo;
    photo.tank = ids.tank;
    photo.layout = ids.layout;
    photo.at = moment("2026-11-25T07:50:00+01:00");
    photo.jpeg = QByteArray::fromHex("ffd8ffe000104a46494600010100ffd9");
    photo.width = 1600;
    photo.height = 1066;
    photo.note = u"front"_s;
    ids.photo = edit.put(photo);

    DoseRegimen regimen;
    regimen.tank = ids.tank;
    regimen.layout = ids.layout;
    regimen.name = u"green mix"_s;
    regimen.form = DoseForm::Stock;
    regimen.salt = u"kno3"_s;
    regimen.stock_g = 60.0;
    regimen.stock_mL = 500.0;
    regimen.nitrate_mg_per_mL = 1.0;
    regimen.phosphate_mg_per_mL = 0.2;
    regimen.potassium_mg_per_mL = 3.0;
    regimen.magnesium_mg_per_mL = 0.4;
    regimen.iron_mg_per_mL = 0.05;
    regimen.amount = 2.5;
    regimen.everyDays = 0;
    regimen.weekdays = 0b0010101;
    regimen.from = QDate(2026, 11, 10);
    regimen.until = QDate(2026, 12, 24);
    regimen.leanStart = false;
    regimen.note = u"shake first"_s;
    ids.regimen = edit.put(regimen);

    Supply supply;
    supply.name = u"conditioner"_s;
    supply.kind = u"conditioner"_s;
    supply.amount = 180.0;
    supply.unit = u"mL"_s;
    supply.opened = QDate(2026, 10, 1);
    supply.expires = QDate(2028, 10, 1);
    supply.lot = u"7"_s;
    supply.note = u"shelf"_s;
    ids.supply = edit.put(supply);

    TaskTemplate taskTemplate;
    taskTemplate.key = u"trim-stems"_s;
    taskTemplate.definition = R"({"every": 14, "name": "Trim \u00fc stems"})";
    taskTemplate.disabled = true;
    ids.taskTemplate = edit.put(taskTemplate);

    Plan plan;
    plan.layout = ids.layout;
    plan.name = u"gentle"_s;
    plan.created = moment("2026-11-25T08:00:00+01:00");
    plan.adopted = moment("2026-11-25T08:05:00+01:00");
    plan.body = R"([{"day":1,"fraction":0.5}])";
    ids.plan = edit.put(plan);

    IssuedForecast forecast;
    forecast.layout = ids.layout;
    forecast.issued = moment("2026-11-25T08:00:00+01:00");
    forecast.asOf = moment("2026-11-25T07:30:00+01:00");
    forecast.model = u"1"_s;
    forecast.body = R"({"rows":[1,2.5,null]})";
    ids.forecast = edit.put(forecast);

    Journey journey;
    journey.leaves = QDate(2026, 12, 23);
    journey.returns = QDate(2027, 1, 3);
    journey.helper = u"Ida, next door"_s;
    journey.phone = u"+00 (0)12 345"_s;
    journey.note = u"has the key"_s;
    journey.enteredAt = moment("2026-11-25T08:10:00+01:00");
    ids.journey = edit.put(journey);
}

} // namespace

TempStore::TempStore()
{
    auto made = store::Store::create(path());
    EXPECT_TRUE(succeeded(made));
    m_store = std::move(*made);
}

void TempStore::reopen()
{
    m_store.reset();
    auto opened = store::Store::open(path());
    ASSERT_TRUE(succeeded(opened));
    m_store = std::move(*opened);
}

Moment moment(const char* iso)
{
    return Moment::fromIso(QString::fromLatin1(iso));
}

Tank tankNamed(const QString& name)
{
    Tank tank;
    tank.name = name;
    return tank;
}

Layout layoutIn(TankId tank)
{
    Layout layout;
    layout.tank = tank;
    layout.flooded = moment("2026-11-01T10:00:00+01:00");
    return layout;
}

Reading readingOf(TankId tank, LayoutId layout, const QString& typed, const Moment& at)
{
    Reading reading;
    reading.tank = tank;
    reading.layout = layout;
    reading.parameter = u"no2"_s;
    reading.at = at;
    EXPECT_TRUE(succeeded(setTypedValue(reading, typed, u"mg/L NO2"_s)));
    return reading;
}

Everything fill(store::Store& store)
{
    Everything ids;
    Edit edit(u"one of everything"_s);
    fillTank(edit, ids);
    fillMeasuring(edit, ids);
    fillWork(edit, ids);
    fillRest(edit, ids);
    edit.set(u"language"_s, u"en"_s);
    EXPECT_TRUE(succeeded(store.apply(edit)));
    return ids;
}

QString dump(const QString& path)
{
    auto connection = store::Connection::open(path, store::Mode::QueryOnly);
    EXPECT_TRUE(succeeded(connection));
    QString text;
    const auto append = [&](const store::Table& table) {
        store::Statement query = (*connection)->prepare(table.select + u" ORDER BY id"_s);
        EXPECT_TRUE(succeeded(query.exec()));
        while (query.next()) {
            const auto row = store::rowToJson(table, store::valuesOf(query.row(), table.columns.size()));
            text += table.name + u' ' + QString::fromUtf8(QJsonDocument(row).toJson(QJsonDocument::Compact)) + u'\n';
        }
    };
    for (const store::Table* table : store::recordTables()) {
        append(*table);
    }
    append(store::settingTable());
    return text;
}

QVariant ask(const QString& path, const QString& sql)
{
    QVariant answer;
    withDatabase(path, [&](QSqlDatabase& database) {
        QSqlQuery query(database);
        ASSERT_TRUE(query.exec(sql)) << query.lastError().text().toStdString();
        if (query.next()) {
            answer = query.value(0);
        }
    });
    return answer;
}

void tamper(const QString& path, const QStringList& statements)
{
    withDatabase(path, [&](QSqlDatabase& database) {
        for (const QString& statement : statements) {
            QSqlQuery query(database);
            ASSERT_TRUE(query.exec(statement)) << statement.toStdString() << query.lastError().text().toStdString();
        }
    });
}

::testing::AssertionResult complete(const Error& error, Fault fault)
{
    if (error.fault != fault) {
        return ::testing::AssertionFailure()
               << "another fault (" << static_cast<int>(error.fault) << "): " << error.sentence();
    }
    if (error.what.empty() || error.where.empty() || error.mend.empty()) {
        return ::testing::AssertionFailure() << "a part is missing: what \"" << error.what << "\", where \""
                                             << error.where << "\", mend \"" << error.mend << '"';
    }
    return ::testing::AssertionSuccess();
}

bool asCommonUser(const std::function<bool()>& body)
{
    constexpr uid_t kNobody = 65534;
    const pid_t child = ::fork();
    if (child == 0) {
        if (::geteuid() == 0 &&
            (::setresgid(kNobody, kNobody, kNobody) != 0 || ::setresuid(kNobody, kNobody, kNobody) != 0)) {
            ::_exit(2);
        }
        const bool good = body();
        std::fflush(nullptr);
        ::_exit(good ? 0 : 1);
    }
    int status = 0;
    return child > 0 && ::waitpid(child, &status, 0) == child && WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

} // namespace littoral::testing
