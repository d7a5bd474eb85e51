// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/sample_truth.h"

#include "core/record/shown.h"
#include "core/record/source_profile.h"
#include "core/sim/run.h"

#include <QJsonArray>
#include <QLocale>
#include <algorithm>
#include <cmath>

namespace littoral::facade {

using namespace Qt::StringLiterals;

namespace {

// Scatter of one colour reading on the log scale: an eye on a card (common practice, 10-20 %).
constexpr double kEyeScatter = 0.12;

double number(const QJsonObject& object, QLatin1String key, double otherwise)
{
    return object.value(key).toDouble(otherwise);
}

double plantShare(record::PlantDensity plants)
{
    constexpr std::array kShare{0.0, 0.25, 0.6, 1.0};
    return kShare[static_cast<std::size_t>(plants)];
}

sim::Member memberOf(const QJsonObject& layout, const record::Layout& facts, double litres)
{
    const QJsonObject truth = layout.value("truth"_L1).toObject();
    const bool rich = facts.bed == record::Bed::RichSoil;
    sim::Member member;
    const double capacity = number(truth, "capacity"_L1, 0.0025);
    member.start[sim::kAmmoniaCapacity] = capacity;
    member.start[sim::kNitriteCapacity] = capacity * number(truth, "nitrite_share"_L1, 0.7);
    member.start[sim::kFastSoil] = facts.bed == record::Bed::Inert ? 0.0 : number(truth, "soil"_L1, rich ? 7.0 : 2.0);
    member.start[sim::kSlowSoil] = rich ? 4.0 : 0.0;
    member.start[sim::kOrganic] = number(truth, "melt"_L1, 0.6 * plantShare(facts.plants));
    member.start[sim::kPlants] = 0.18;
    member.uptake_mgN_per_L_d = std::max(0.03, number(truth, "uptake"_L1, 0.35 * plantShare(facts.plants)));
    member.ammoniaGrowth_per_d = number(truth, "ammonia_growth"_L1, member.ammoniaGrowth_per_d);
    member.nitriteGrowth_per_d = number(truth, "nitrite_growth"_L1, member.nitriteGrowth_per_d);
    member.media_mgN_per_L_d = number(truth, "media"_L1, member.media_mgN_per_L_d);
    member.starter_mgN_per_L_d = number(truth, "starter"_L1, member.starter_mgN_per_L_d);
    member.soilBuffering_per_d = rich && litres > 0.0 ? 0.08 : 0.0;
    member.temperature_C = facts.temperature_C;
    if (facts.co2 == record::Co2Mode::Pressurised) {
        member.co2On_mg_per_L = facts.co2Target_mg_per_L;
    }
    return member;
}

sim::SourceLevels levelsOf(const std::vector<record::SourceWater>& all, const record::SourceWater& source)
{
    const record::SourceProfile profile = record::sourceProfile(all, source);
    return {0.02, profile.nitrate_mgN_per_L.value.value_or(1.0), profile.alkalinity_meq_per_L.value.value_or(1.5)};
}

void addEvents(sim::Scenario& scenario, const QJsonObject& layout, const std::vector<SampleTruth::Change>& changes,
               const std::vector<record::SourceWater>& sources)
{
    const auto add = [&](double day, sim::EventKind kind, double amount, std::size_t source = 0) {
        if (day <= scenario.endDay) {
            scenario.events.push_back({day, kind, amount, source});
        }
    };
    for (const SampleTruth::Change& change : changes) {
        const auto found = std::ranges::find(sources, change.source, &record::SourceWater::id);
        add(change.day, sim::EventKind::WaterChange, change.fraction,
            static_cast<std::size_t>(found - sources.begin()));
    }
    for (const QJsonValue& value : layout.value("feed"_L1).toArray()) {
        add(value["day"_L1].toDouble(), sim::EventKind::FeedRate, value["rate"_L1].toDouble());
    }
    for (const QJsonValue& value : layout.value("media"_L1).toArray()) {
        add(value["day"_L1].toDouble(), sim::EventKind::MatureMedia, value["share"_L1].toDouble());
    }
    for (const QJsonValue& value : layout.value("entries"_L1).toArray()) {
        if (value["subject"_L1].toString() == u"starter"_s) {
            add(value["day"_L1].toDouble(), sim::EventKind::Starter, value["amount"_L1].toDouble());
        }
    }
    std::ranges::stable_sort(scenario.events, {}, &sim::Event::day);
}

/// Text of a number as a person writes it: no trailing zeros.
QString plain(double value, int decimals)
{
    QString text = QLocale::c().toString(value, 'f', decimals);
    if (decimals > 0) {
        while (text.endsWith(u'0')) {
            text.chop(1);
        }
        if (text.endsWith(u'.')) {
            text.chop(1);
        }
    }
    return text;
}

} // namespace

SampleTruth::SampleTruth(const QJsonObject& layout, const record::Layout& facts, double litres,
                         const std::vector<Change>& changes, const std::vector<record::SourceWater>& sources,
                         const std::vector<double>& testDays, double lastDay)
{
    sim::Scenario scenario;
    scenario.endDay = lastDay;
    scenario.co2Injected = facts.co2 == record::Co2Mode::Pressurised;
    scenario.co2ShareOfDay = facts.co2Hours / 24.0;
    scenario.stops = testDays;
    addEvents(scenario, layout, changes, sources);

    sim::Member member = memberOf(layout, facts, litres);
    for (std::size_t i = 0; i < std::min(sources.size(), sim::kMaxSources); ++i) {
        member.sources[i] = levelsOf(sources, sources[i]);
    }
    const auto own = std::ranges::find(sources, facts.source, &record::SourceWater::id);
    const sim::SourceLevels filled = own == sources.end() ? sim::SourceLevels{} : levelsOf(sources, *own);
    member.start[sim::kNitrate] = filled.nitrate_mgN_per_L;
    member.start[sim::kAlkalinity] = filled.alkalinity_meq_per_L;

    std::array<sim::Member, sim::kLanes> pack;
    pack.fill(member);
    sim::PackTrace trace;
    sim::runToStops(scenario, pack, sim::tankControl(1e-4), trace);
    for (std::size_t i = 0; i < testDays.size() && i < trace.atStops.size(); ++i) {
        const auto& state = trace.atStops[i];
        m_levels[testDays[i]] = {state[sim::kTotalAmmonia][0], state[sim::kNitrite][0], state[sim::kNitrate][0]};
    }
}

QString readThrough(const record::TestKit& kit, double trueInKitUnit, Random& random)
{
    if (kit.kind == record::KitKind::Drops) {
        return plain(std::max(0.0, std::round(trueInKitUnit * 2.0 + 0.3 * random.normal()) / 2.0), 1);
    }
    if (kit.steps.size() < 2) {
        return plain(trueInKitUnit, record::inUsualUnits(*record::findParameter(kit.parameter)).decimals);
    }
    const double offset = kit.steps[1] / 2.0;
    const double seen = std::log(std::max(0.0, trueInKitUnit) + offset) + kEyeScatter * random.normal();
    const auto nearest =
        std::ranges::min_element(kit.steps, {}, [&](double step) { return std::fabs(std::log(step + offset) - seen); });
    if (nearest == kit.steps.begin()) {
        return u"<"_s + plain(kit.steps[1], 3);
    }
    return plain(*nearest, 3);
}

} // namespace littoral::facade
