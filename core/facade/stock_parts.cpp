// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/stock_parts.h"

#include "core/care/observations.h"
#include "core/care/stock.h"

#include <algorithm>

namespace littoral::facade {

using namespace Qt::StringLiterals;
using facts::Species;
using record::Entry;
using record::EntryKind;

namespace {

/// A fish that fits the mouth of one that eats small fish (common practice: a third of its length).
constexpr double kMouthful = 1.0 / 3.0;
constexpr double kTroubleDays = 28.0;
/// The trade's two rules, by the daily sum and by PAR at the bed, differ by about half a step: nothing is called short
/// within it (judgement).
constexpr double kLightSlack = 0.5;

bool has(const Species& species, const char* flag)
{
    return species.flags.contains(QLatin1String(flag));
}

void put(AnimalRow& row, ConcernKind kind, bool serious, const QString& other = {}, double value = 0.0,
         double limit = 0.0, const QString& parameter = {})
{
    row.concerns.push_back({kind, other, parameter, value, limit, serious});
}

/// What one animal would suffer or do beside another.
void beside(AnimalRow& row, const AnimalRow& neighbour)
{
    const Species& own = *row.species;
    const Species& other = *neighbour.species;
    const QString name = other.name;
    const bool shrimp = other.kind == u"shrimp"_s;
    if (shrimp && has(own, "eats_shrimp")) {
        put(row, ConcernKind::EatsShrimp, true, name);
    } else if (shrimp && has(own, "eats_shrimp_young")) {
        put(row, ConcernKind::EatsYoungShrimp, false, name);
    }
    if (other.kind == u"snail"_s && has(own, "eats_snails") && !has(other, "eats_snails")) {
        put(row, ConcernKind::EatsSnails, true, name);
    }
    if (other.kind == u"fish"_s && has(own, "eats_small_fish") && other.size_cm <= own.size_cm * kMouthful) {
        put(row, ConcernKind::EatsSmallFish, true, name);
    }
    if (other.kind == u"fish"_s && has(own, "nips") && (has(other, "shy") || other.kind == u"fish"_s) &&
        own.id != other.id) {
        put(row, ConcernKind::NipsFins, false, name);
    }
    const struct
    {
        QLatin1String key;
        facts::Span a, b;
    } waters[]{{"temp"_L1, own.temperature_C, other.temperature_C},
               {"ph"_L1, own.ph, other.ph},
               {"gh"_L1, own.gh_deg, other.gh_deg}};
    for (const auto& water : waters) {
        if (std::max(water.a.low, water.b.low) > std::min(water.a.high, water.b.high)) {
            put(row, ConcernKind::NoCommonWater, true, name, 0.0, 0.0, water.key);
        }
    }
}

void alone(AnimalRow& row, const StockModel& model, int together)
{
    const Species& own = *row.species;
    if (own.group && together < *own.group) {
        put(row, ConcernKind::SmallGroup, true, {}, together, *own.group);
    }
    if (own.tank_L && model.net_L > 0.0 && model.net_L < *own.tank_L) {
        put(row, ConcernKind::SmallTank, true, {}, model.net_L, *own.tank_L);
    }
    if (has(own, "male_fights") && together > 1) {
        put(row, ConcernKind::MalesFight, false);
    }
    if (has(own, "territorial")) {
        put(row, ConcernKind::Territorial, false);
    }
    if (has(own, "needs_biofilm")) {
        put(row, ConcernKind::NeedsFilm, false);
    }
    if ((has(own, "eats_plants") || has(own, "eats_plants_soft"))) {
        put(row, ConcernKind::EatsPlants, false);
    }
    if (has(own, "jumper") || has(own, "escapes")) {
        put(row, ConcernKind::Jumps, false);
    }
    if (has(own, "regulated") || has(own, "invader")) {
        put(row, ConcernKind::Regulated, false);
    }
}

int lightNeed(const Species& species)
{
    return species.light == u"high"_s ? 3 : species.light == u"medium"_s ? 2 : 1;
}

int co2Need(const Species& species)
{
    return species.co2 == u"needed"_s ? 4 : species.co2 == u"helpful"_s ? 3 : species.co2 == u"optional"_s ? 2 : 1;
}

/// Does an observation tell of this plant: its own subject, or its name or genus in where it was seen?
bool tellsOf(const Entry& seen, const PlantRow& plant)
{
    if (seen.subject.compare(plant.subject, Qt::CaseInsensitive) == 0) {
        return true;
    }
    if (!plant.species) {
        return false;
    }
    if (seen.subject.compare(plant.species->scientific, Qt::CaseInsensitive) == 0) {
        return true;
    }
    const QString place = seen.where + u' ' + seen.note;
    const QString genus = plant.species->scientific.section(u' ', 0, 0);
    const QString lastWord = plant.species->name.section(u' ', -1);
    return place.contains(genus, Qt::CaseInsensitive) ||
           (lastWord.size() > 4 && place.contains(lastWord, Qt::CaseInsensitive));
}

bool isOwnSubject(const Entry& seen, const PlantRow& plant)
{
    return seen.subject.compare(plant.subject, Qt::CaseInsensitive) == 0 ||
           (plant.species && seen.subject.compare(plant.species->scientific, Qt::CaseInsensitive) == 0);
}

void look(PlantRow& plant, const record::LayoutRecord& layout, const record::Moment& now)
{
    for (const Entry& entry : layout.entries) {
        if (entry.kind != EntryKind::Observation || entry.planned || entry.at > now || entry.at < plant.since ||
            !tellsOf(entry, plant)) {
            continue;
        }
        if (isOwnSubject(entry, plant) && entry.coverage) {
            plant.cover.push_back({entry.at.utcMs(), *entry.coverage});
        }
        if (record::daysBetween(entry.at, now) > kTroubleDays || (isOwnSubject(entry, plant) && !entry.severity)) {
            continue;
        }
        plant.severity = entry.severity.value_or(0);
        plant.trouble = plant.severity > 0 ? entry.subject : QString();
        plant.troubleAt = entry.at;
    }
}

void needs(PlantRow& plant, const StockModel& model)
{
    if (!plant.species) {
        return;
    }
    plant.lightNeed = lightNeed(*plant.species);
    plant.co2Need = co2Need(*plant.species);
    if (const auto sum = model.lightSum()) {
        plant.lightShort = lightLevel(*sum) < plant.lightNeed - 1 - kLightSlack;
        plant.lightMuch = lightLevel(*sum) > plant.lightNeed + 1;
    }
    // Needed: 15 mg/L and more; helpful: some above what air and bed give.
    const double level = co2Level(model.co2_mg_per_L.value_or(3.0));
    plant.co2Short = (plant.co2Need == 4 && level < 2.0) || (plant.co2Need == 3 && level < 0.5);
}

} // namespace

void addPlants(StockModel& model, const record::LayoutRecord& layout, const record::Moment& now,
               const facts::FactBook& book)
{
    for (const Entry& entry : layout.entries) {
        if (entry.kind != EntryKind::Addition || entry.planned || entry.at > now || !care::isAboutPlants(entry)) {
            continue;
        }
        const auto known = std::ranges::find_if(model.plants, [&](const PlantRow& row) {
            return row.subject.compare(entry.subject, Qt::CaseInsensitive) == 0;
        });
        if (known != model.plants.end()) {
            known->entry = entry.id;
            known->count = known->count || entry.count
                               ? std::optional(known->count.value_or(0) + entry.count.value_or(0))
                               : std::nullopt;
            continue;
        }
        PlantRow row;
        row.subject = entry.subject;
        row.where = entry.where;
        row.count = entry.count;
        row.unit = entry.unit;
        row.since = entry.at;
        row.entry = entry.id;
        if (const Species* species = speciesNamed(book, entry.subject)) {
            row.species = *species;
        }
        model.plants.push_back(std::move(row));
    }
    for (PlantRow& plant : model.plants) {
        needs(plant, model);
        look(plant, layout, now);
        plant.status = plant.severity >= 3                       ? Status::Act
                       : plant.severity >= 1 || plant.lightShort ? Status::Watch
                       : plant.co2Short                          ? Status::Watch
                       : !plant.species && plant.cover.empty()   ? Status::Unknown
                                                                 : Status::Ok;
    }
}

void addConcerns(StockModel& model, const record::LayoutRecord& layout, const record::Moment& now)
{
    for (std::size_t i = 0; i < model.animals.size(); ++i) {
        AnimalRow& row = model.animals[i];
        for (const Entry& entry : layout.entries) {
            if (entry.kind == EntryKind::Loss && !entry.planned && entry.at <= now &&
                record::daysBetween(entry.at, now) <= kStockWaterDays && row.place == StockPlace::Here &&
                entry.subject.compare(row.subject, Qt::CaseInsensitive) == 0) {
                put(row, ConcernKind::RecentLoss, true, {}, std::max(1, entry.count.value_or(1)));
            }
        }
        if (!row.species) {
            continue;
        }
        int together = 0;
        for (std::size_t j = 0; j < model.animals.size(); ++j) {
            const AnimalRow& other = model.animals[j];
            if (!other.species) {
                continue;
            }
            if (other.species->id == row.species->id) {
                // What lives here counts towards the group of what is to come, not the other way round.
                together +=
                    j == i || other.place == StockPlace::Here || row.place != StockPlace::Here ? other.count : 0;
            } else if (row.place != StockPlace::Here || other.place == StockPlace::Here) {
                beside(row, other);
            }
        }
        alone(row, model, together);
        std::ranges::stable_sort(row.concerns, std::greater<>(), &StockConcern::serious);
    }
}

void addMoves(StockModel& model, const record::Row& row, const record::Moment& now)
{
    for (const auto& [id, layout] : row.layouts) {
        for (const Entry& entry : layout.entries) {
            if (entry.kind != EntryKind::MediaTransfer || entry.planned || entry.at > now || !entry.otherTank) {
                continue;
            }
            const bool given = entry.subject == u"given"_s;
            MediaMove move{given ? layout.layout.tank : entry.otherTank,
                           given ? entry.otherTank : layout.layout.tank,
                           entry.at,
                           entry.fraction,
                           entry.subject == u"squeezings"_s,
                           entry.id};
            // The same transfer may stand in both tanks' records.
            const auto twin = std::ranges::find_if(model.moves, [&](const MediaMove& known) {
                return known.from == move.from && known.to == move.to &&
                       std::abs(record::daysBetween(known.at, move.at)) < 1.5;
            });
            if (twin == model.moves.end()) {
                model.moves.push_back(move);
            } else if (!given) {
                twin->share = move.share;
            }
        }
    }
    std::ranges::stable_sort(model.moves, {}, &MediaMove::at);
}

void addClock(StockModel& model, const record::LayoutRecord& layout, const record::Moment& now)
{
    QuarantineClock clock;
    for (const Entry& entry : layout.entries) {
        if (entry.planned || entry.at > now) {
            continue;
        }
        const bool animals = !care::isAboutPlants(entry);
        const bool sign =
            entry.kind == EntryKind::Observation && care::isAnimalSign(entry.subject) && entry.severity.value_or(1) > 0;
        if ((entry.kind == EntryKind::Addition || entry.kind == EntryKind::Loss) && animals) {
            clock.cause =
                entry.kind == EntryKind::Loss ? QuarantineClock::Cause::Loss : QuarantineClock::Cause::Arrival;
        } else if (sign) {
            clock.cause = QuarantineClock::Cause::Sign;
        } else {
            if (entry.kind == EntryKind::Upkeep && entry.subject == u"quarantine"_s) {
                clock.done = entry.at;
            }
            continue;
        }
        clock.subject = entry.subject;
        clock.since = entry.at;
    }
    if (!clock.since.isValid()) {
        return;
    }
    clock.days = static_cast<int>(clock.since.localDate().daysTo(now.localDate()));
    if (clock.done && *clock.done < clock.since) {
        clock.done.reset();
    }
    model.clock = clock;
}

} // namespace littoral::facade
