// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/sample_row.h"

#include "core/care/due.h"
#include "core/facade/keeper.h"
#include "core/facade/row_edit.h"
#include "core/facade/sample_shelf.h"
#include "core/facade/sample_truth.h"
#include "core/facade/sample_water.h"
#include "core/record/shown.h"

#include <QCoreApplication>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>
#include <cmath>
#include <set>

namespace littoral::facade {

using namespace Qt::StringLiterals;
using record::EntryKind;

namespace {

constexpr std::uint64_t kSampleSeed = 20261125;
// Readings are taken in the morning, before the change of that day; shares of a day after the flooding hour.
constexpr double kTestBeforeHour = -2.2 / 24.0;
constexpr double kChangeAfterHour = -1.0 / 24.0;

double value(const QJsonObject& object, QLatin1String key, double otherwise = 0.0)
{
    return object.value(key).toDouble(otherwise);
}

QString text(const QJsonObject& object, QLatin1String key)
{
    return object.value(key).toString();
}

template <typename Enum> Enum chosen(const QString& code, std::initializer_list<const char*> codes)
{
    int index = 0;
    for (const char* known : codes) {
        if (code == QLatin1String(known)) {
            return static_cast<Enum>(index);
        }
        ++index;
    }
    return static_cast<Enum>(0);
}

/// Between the points of a scripted level, straight lines.
double between(const QJsonArray& points, double day)
{
    QJsonArray before = points.first().toArray();
    for (const QJsonValue& point : points) {
        const QJsonArray here = point.toArray();
        if (here[0].toDouble() >= day) {
            const double span = here[0].toDouble() - before[0].toDouble();
            const double share = span > 0.0 ? (day - before[0].toDouble()) / span : 0.0;
            return before[1].toDouble() + share * (here[1].toDouble() - before[1].toDouble());
        }
        before = here;
    }
    return before[1].toDouble();
}

class SampleMaker
{
public:
    SampleMaker(const record::Moment& now, store::Edit& edit)
        : m_now(now)
        , m_edit(edit)
    {
    }

    void make(const QJsonObject& scenario)
    {
        for (const QJsonValue& source : scenario.value("sources"_L1).toArray()) {
            addSource(source.toObject());
        }
        for (const QJsonValue& source : scenario.value("sources"_L1).toArray()) {
            addParts(source.toObject());
        }
        for (const QJsonValue& kit : scenario.value("kits"_L1).toArray()) {
            addKit(kit.toObject());
        }
        int position = 0;
        for (const QJsonValue& tank : scenario.value("tanks"_L1).toArray()) {
            addTank(tank.toObject(), ++position);
        }
        for (record::Entry& entry : m_transfers) {
            entry.otherTank = m_tankByName.value(entry.note);
            entry.note.clear();
            m_edit.put(std::move(entry));
        }
        m_edit.set(u"about"_s, text(scenario, "about"_L1));
    }

private:
    struct Place
    {
        record::Tank tank;
        record::Layout layout;
        double lastDay = 0.0;
    };

    void addSource(const QJsonObject& from)
    {
        record::SourceWater water = sampleSource(from);
        water.id = m_edit.put(water);
        m_sourceByKey.insert(text(from, "key"_L1), water.id);
        m_sources.push_back(std::move(water));
    }

    /// Once all waters have their ids: a blend may stand before its parts.
    void addParts(const QJsonObject& from)
    {
        const QJsonObject parts = from.value("parts"_L1).toObject();
        const auto blend =
            std::ranges::find(m_sources, m_sourceByKey.value(text(from, "key"_L1)), &record::SourceWater::id);
        if (parts.isEmpty() || blend == m_sources.end()) {
            return;
        }
        blend->firstPart = m_sourceByKey.value(text(parts, "first"_L1));
        blend->secondPart = m_sourceByKey.value(text(parts, "second"_L1));
        blend->firstShare = value(parts, "first_share"_L1);
        m_edit.put(*blend);
    }

    void addKit(const QJsonObject& from)
    {
        record::TestKit kit;
        kit.name = text(from, "name"_L1);
        kit.parameter = text(from, "parameter"_L1);
        kit.unit = text(from, "unit"_L1);
        kit.kind = chosen<record::KitKind>(text(from, "kind"_L1), {"card", "drops", "strip", "digital"});
        for (const QJsonValue& step : from.value("steps"_L1).toArray()) {
            kit.steps.push_back(step.toDouble());
        }
        kit.waitMinutes = static_cast<int>(value(from, "wait"_L1));
        kit.opened = m_now.localDate().addDays(-75);
        kit.expires = m_now.localDate().addDays(kit.parameter == u"po4"_s ? 12 : 160);
        kit.id = m_edit.put(kit);
        m_kits.insert(text(from, "key"_L1), std::move(kit));
    }

    void addTank(const QJsonObject& from, int position)
    {
        record::Tank tank;
        tank.name = text(from, "name"_L1);
        tank.position = position;
        const QJsonArray glass = from.value("glass_cm"_L1).toArray();
        tank.length_cm = glass[0].toDouble();
        tank.depth_cm = glass[1].toDouble();
        tank.height_cm = glass[2].toDouble();
        tank.glass_mm = value(from, "glass_mm"_L1, 6.0);
        tank.note = QCoreApplication::translate("Sample", "Invented, for looking around.");
        tank.id = m_edit.put(tank);
        m_tankByName.insert(tank.name, tank.id);
        const QJsonObject targets = from.value("targets"_L1).toObject();
        for (auto it = targets.begin(); it != targets.end(); ++it) {
            const record::Unit& unit = record::inUsualUnits(*record::findParameter(it.key())).shown();
            record::Target target;
            target.tank = tank.id;
            target.parameter = it.key();
            target.low = unit.toCanonical(it->toArray()[0].toDouble());
            target.high = unit.toCanonical(it->toArray()[1].toDouble());
            m_edit.put(std::move(target));
        }
        int number = 0;
        for (const QJsonValue& layout : from.value("layouts"_L1).toArray()) {
            addLayout(tank, layout.toObject(), ++number);
        }
    }

    void addLayout(const record::Tank& tank, const QJsonObject& from, int number)
    {
        Place place{tank, facts(from, number), 0.0};
        place.layout.tank = tank.id;
        place.layout.id = m_edit.put(place.layout);
        place.lastDay = record::daysBetween(place.layout.flooded, place.layout.ended.value_or(m_now));
        for (const QJsonValue& given : from.value("regimens"_L1).toArray()) {
            record::DoseRegimen regimen = sampleRegimen(given.toObject(), m_now.localDate());
            regimen.tank = tank.id;
            regimen.layout = place.layout.id;
            m_edit.put(std::move(regimen));
        }
        const std::vector<SampleTruth::Change> changes = addChanges(place, from);
        addFeed(place, from);
        addMedia(place, from);
        addEntries(place, from);
        addReadings(place, from, changes);
        addLevels(place, from);
    }

    record::Layout facts(const QJsonObject& from, int number) const
    {
        record::Layout layout;
        layout.number = number;
        const int hour = static_cast<int>(value(from, "hour"_L1, 10));
        const QDate today = m_now.localDate();
        layout.flooded = local(today.addDays(-static_cast<qint64>(value(from, "flooded_days_ago"_L1))), QTime(hour, 0));
        if (from.contains("ended_days_ago"_L1)) {
            layout.ended = local(today.addDays(-static_cast<qint64>(value(from, "ended_days_ago"_L1))), QTime(15, 0));
        }
        layout.start = chosen<record::StartMethod>(text(from, "start"_L1),
                                                   {"new-media", "mature-media", "starter", "dry-start", "dark-start"});
        layout.bed = chosen<record::Bed>(text(from, "bed"_L1), {"rich-soil", "mild-soil", "spent-soil", "inert"});
        layout.bed_L = value(from, "bed_litres"_L1);
        layout.rock_kg = value(from, "rock_kg"_L1);
        layout.plants = chosen<record::PlantDensity>(text(from, "plants"_L1), {"none", "sparse", "medium", "dense"});
        layout.source = m_sourceByKey.value(text(from, "source"_L1));
        layout.temperature_C = value(from, "temperature_c"_L1, 24.0);
        layout.lightHours = value(from, "light_hours"_L1, 6.0);
        if (from.contains("co2_mg_per_l"_L1)) {
            layout.co2 = record::Co2Mode::Pressurised;
            layout.co2Target_mg_per_L = value(from, "co2_mg_per_l"_L1);
        }
        return layout;
    }

    record::Moment local(const QDate& day, const QTime& time) const
    {
        return record::Moment::fromDateTime(QDateTime(day, time, Qt::OffsetFromUTC, m_now.offsetSeconds()));
    }

    record::Entry entryAt(const Place& place, double day, EntryKind kind) const
    {
        record::Entry entry;
        entry.tank = place.tank.id;
        entry.layout = place.layout.id;
        entry.kind = kind;
        entry.at = place.layout.flooded.plusDays(day);
        entry.enteredAt = std::min(entry.at, m_now);
        return entry;
    }

    std::vector<SampleTruth::Change> addChanges(const Place& place, const QJsonObject& from)
    {
        std::vector<SampleTruth::Change> changes;
        for (const QJsonValue& item : from.value("changes"_L1).toArray()) {
            const QJsonObject rule = item.toObject();
            const record::SourceWaterId source =
                rule.contains("source"_L1) ? m_sourceByKey.value(text(rule, "source"_L1)) : place.layout.source;
            for (double day = value(rule, "from"_L1); day <= value(rule, "to"_L1); day += value(rule, "every"_L1)) {
                if (const double at = day + kChangeAfterHour; at < place.lastDay) {
                    changes.push_back({at, value(rule, "fraction"_L1), source});
                }
            }
        }
        for (const SampleTruth::Change& change : changes) {
            record::Entry entry = entryAt(place, change.day, EntryKind::WaterChange);
            entry.fraction = change.fraction;
            entry.source = change.source;
            m_edit.put(std::move(entry));
        }
        return changes;
    }

    void addFeed(const Place& place, const QJsonObject& from)
    {
        for (const QJsonValue& item : from.value("feed"_L1).toArray()) {
            record::Entry entry = entryAt(place, item["day"_L1].toDouble(), EntryKind::Feeding);
            entry.amount = item["rate"_L1].toDouble();
            entry.unit = u"mg/L/d N"_s;
            m_edit.put(std::move(entry));
        }
    }

    void addMedia(const Place& place, const QJsonObject& from)
    {
        for (const QJsonValue& item : from.value("media"_L1).toArray()) {
            record::Entry entry = entryAt(place, item["day"_L1].toDouble(), EntryKind::MediaTransfer);
            entry.subject = u"media"_s;
            entry.fraction = item["share"_L1].toDouble();
            entry.note = item["from"_L1].toString(); // resolved when all tanks are known
            m_transfers.push_back(std::move(entry));
        }
    }

    void addEntries(const Place& place, const QJsonObject& from)
    {
        for (const QJsonValue& item : from.value("entries"_L1).toArray()) {
            const QJsonObject given = item.toObject();
            const auto kind = record::entryKindFromCode(text(given, "kind"_L1));
            record::Entry entry = entryAt(place, value(given, "day"_L1), kind.value_or(EntryKind::Note));
            entry.subject = text(given, "subject"_L1);
            entry.unit = text(given, "unit"_L1);
            entry.where = text(given, "where"_L1);
            entry.note = text(given, "note"_L1);
            entry.planned = given.value("planned"_L1).toBool();
            entry.source = m_sourceByKey.value(text(given, "source"_L1));
            const auto optional = [&](QLatin1String key, std::optional<double>& into) {
                if (given.contains(key)) {
                    into = value(given, key);
                }
            };
            optional("amount"_L1, entry.amount);
            optional("second"_L1, entry.second);
            optional("fraction"_L1, entry.fraction);
            optional("coverage"_L1, entry.coverage);
            if (given.contains("count"_L1)) {
                entry.count = given.value("count"_L1).toInt();
            }
            if (given.contains("severity"_L1)) {
                entry.severity = given.value("severity"_L1).toInt();
            }
            if (entry.kind == EntryKind::MediaTransfer) {
                entry.note = text(given, "to"_L1);
                m_transfers.push_back(std::move(entry));
            } else {
                m_edit.put(std::move(entry));
            }
        }
    }

    void putReading(const Place& place, const record::TestKit& kit, double day, const QString& typed)
    {
        record::Reading reading;
        reading.tank = place.tank.id;
        reading.layout = place.layout.id;
        reading.parameter = kit.parameter;
        reading.at = place.layout.flooded.plusDays(day);
        reading.kit = kit.id;
        reading.enteredAt = std::min(reading.at, m_now);
        if (record::setTypedValue(reading, typed, kit.unit)) {
            m_edit.put(std::move(reading));
        }
    }

    void addReadings(const Place& place, const QJsonObject& from, const std::vector<SampleTruth::Change>& changes)
    {
        struct Test
        {
            double day;
            const record::TestKit* kit;
        };
        std::vector<Test> tests;
        for (const QJsonValue& item : from.value("tests"_L1).toArray()) {
            const QJsonObject rule = item.toObject();
            const auto kit = m_kits.constFind(text(rule, "kit"_L1));
            if (kit == m_kits.constEnd() || kit->parameter == u"ph"_s) {
                continue;
            }
            for (double day = value(rule, "from"_L1); day <= value(rule, "to"_L1); day += value(rule, "every"_L1)) {
                if (day + kTestBeforeHour < place.lastDay) {
                    tests.push_back({day + kTestBeforeHour, &*kit});
                }
            }
        }
        std::ranges::stable_sort(tests, {}, &Test::day);
        std::set<double> days;
        for (const Test& test : tests) {
            days.insert(test.day);
        }
        const auto volume = record::netVolume(place.tank, place.layout);
        const SampleTruth truth(from, place.layout, volume ? volume->litres : 0.0, changes, m_sources,
                                {days.begin(), days.end()}, place.lastDay);
        for (const Test& test : tests) {
            const SampleTruth::Level& level = truth.at(test.day);
            const record::Unit& unit = *record::findParameter(test.kit->parameter)->unit(test.kit->unit);
            // A colour test for nitrate reads part of the nitrite as well (common practice).
            const double canonical = test.kit->parameter == u"tan"_s ? level.totalAmmonia_mgN_per_L
                                     : test.kit->parameter == u"no2"_s
                                         ? level.nitrite_mgN_per_L
                                         : level.nitrate_mgN_per_L + 0.35 * level.nitrite_mgN_per_L;
            putReading(place, *test.kit, test.day, readThrough(*test.kit, unit.fromCanonical(canonical), m_random));
        }
    }

    void addLevels(const Place& place, const QJsonObject& from)
    {
        for (const QJsonValue& item : from.value("levels"_L1).toArray()) {
            const QJsonObject rule = item.toObject();
            const auto kit = m_kits.constFind(text(rule, "kit"_L1));
            if (kit == m_kits.constEnd()) {
                continue;
            }
            for (double day = value(rule, "from"_L1); day <= value(rule, "to"_L1); day += value(rule, "every"_L1)) {
                const double at = day + kTestBeforeHour;
                if (at < place.lastDay) {
                    const double level =
                        between(rule.value("points"_L1).toArray(), day) + value(rule, "noise"_L1) * m_random.normal();
                    putReading(place, *kit, at, readThrough(*kit, level, m_random));
                }
            }
        }
    }

    const record::Moment m_now;
    store::Edit& m_edit;
    Random m_random{kSampleSeed};
    std::vector<record::SourceWater> m_sources;
    QMap<QString, record::SourceWaterId> m_sourceByKey;
    QMap<QString, record::TestKit> m_kits;
    QMap<QString, record::TankId> m_tankByName;
    std::vector<record::Entry> m_transfers;
};

/// The scenario tells what happened; the plain routine (glass, prefilter, looks) is filled in from the cadences
/// themselves, all but the work that the scenario leaves open.
class RoutineWork
{
public:
    RoutineWork(const record::Row& row, const record::Moment& now, store::Edit& edit)
        : m_row(row)
        , m_now(now)
        , m_edit(edit)
    {
    }

    void add(const QJsonObject& scenario)
    {
        for (const QJsonValue& given : scenario.value("tanks"_L1).toArray()) {
            const record::Tank* tank = m_row.tankNamed(given["name"_L1].toString());
            const record::LayoutRecord* layout = tank == nullptr ? nullptr : m_row.currentLayout(tank->id, m_now);
            if (layout == nullptr) {
                continue;
            }
            const QJsonArray open = given["leave_open"_L1].toArray();
            for (const care::DueItem& item : care::dueWork(m_row, layout->layout.id, m_now, m_now.localDate())) {
                if (!open.contains(item.templateKey)) {
                    close(*layout, item);
                }
            }
        }
        for (const care::DueItem& item : care::rowWork(m_row, m_now, m_now.localDate())) {
            m_edit.set(u"care.done."_s + item.templateKey, m_now.localDate().addDays(-3).toString(Qt::ISODate));
        }
    }

private:
    void close(const record::LayoutRecord& layout, const care::DueItem& item)
    {
        const auto entry = item.plannedEntry || item.kind == care::WorkKind::WaterChange
                               ? std::nullopt
                               : entryThatCloses(m_row, item, m_now);
        if (!entry) {
            if (item.kind == care::WorkKind::Look) {
                record::Task done;
                done.tank = item.tank;
                done.layout = item.layout;
                done.templateKey = item.templateKey;
                done.due = item.cadenceDue;
                done.state = record::TaskState::Done;
                done.closedAt = layout.layout.flooded.plusDays(0.2);
                done.enteredAt = *done.closedAt;
                m_edit.put(std::move(done));
            }
            return;
        }
        // The last time was a third of an interval ago, so that the next one is still to come; a few earlier ones
        // before it.
        const double interval = item.reason.intervalDays > 0.0 ? item.reason.intervalDays : 3.0;
        const int times = item.reason.intervalDays > 0.0 ? 6 : 1;
        for (int i = 0; i < times; ++i) {
            record::Entry done = *entry;
            done.at = m_now.plusDays(-interval * (0.34 + i) - 0.05);
            if (done.at > layout.layout.flooded.plusDays(0.5)) {
                done.enteredAt = done.at;
                m_edit.put(std::move(done));
            }
        }
    }

    const record::Row& m_row;
    const record::Moment m_now;
    store::Edit& m_edit;
};

} // namespace

Result<void> makeSampleRow(Keeper& keeper, const record::Moment& now)
{
    QFile file(u":/sample/scenario.json"_s);
    QJsonParseError problem;
    const QJsonDocument scenario =
        file.open(QIODevice::ReadOnly) ? QJsonDocument::fromJson(file.readAll(), &problem) : QJsonDocument();
    if (!scenario.isObject()) {
        return Error{
            Fault::BadInput,
            Keeper::tr("The sample row's scenario cannot be read: %1.").arg(problem.errorString()).toStdString(),
            "scenario.json", Keeper::tr("Install the program again.").toStdString()};
    }
    store::Edit edit(Keeper::tr("sample row"));
    SampleMaker(now, edit).make(scenario.object());
    if (auto made = keeper.commit(edit); !made) {
        return made;
    }
    store::Edit upkeep(Keeper::tr("sample row"));
    RoutineWork(keeper.row(), now, upkeep).add(scenario.object());
    addSampleShelf(keeper.row(), scenario.object()["supplies"_L1].toArray(), now, upkeep);
    return keeper.commit(upkeep);
}

} // namespace littoral::facade
