// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/forecast_case.h"

#include "core/care/due.h"
#include "core/care/gates.h"
#include "core/facade/case_events.h"
#include "core/facade/case_kits.h"
#include "core/facade/evidence.h"
#include "core/facade/learned.h"
#include "core/water/units.h"
#include "core/wording/numbers.h"
#include "core/wording/plan_sentences.h"

#include <QCoreApplication>
#include <algorithm>
#include <bit>
#include <cmath>

namespace littoral::facade {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Forecast", text);
}

// Past this age the weeks of the cycle no longer matter and a settled tank's priors start a shorter run.
constexpr double kSettledAfterDays = 120.0;
constexpr double kSettledRunDays = 45.0;
// Members run at least to this age, as the completion date is stated against it.
constexpr double kCompletionHorizonDay = 60.0;
// Soil in the tank when the keeper has not said how much: about 5 cm over the bed (common practice).
constexpr double kUsualSoil_L_per_L = 0.17;

forecast::SoilKind soilOf(record::Bed bed)
{
    switch (bed) {
    case record::Bed::RichSoil:
        return forecast::SoilKind::Rich;
    case record::Bed::MildSoil:
        return forecast::SoilKind::Mild;
    case record::Bed::SpentSoil:
    case record::Bed::Inert:
        break;
    }
    return forecast::SoilKind::Inert;
}

double median(std::vector<double> values)
{
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

/// FNV-1a over what decides the answer: small, stable across machines, and only ever compared with itself.
class Fingerprint
{
public:
    void add(quint64 value)
    {
        for (int byte = 0; byte < 8; ++byte) {
            m_hash = (m_hash ^ ((value >> (8 * byte)) & 0xffu)) * 0x100000001b3ull;
        }
    }
    void add(double value) { add(std::bit_cast<quint64>(value)); }
    void add(const QString& text)
    {
        for (const QChar c : text) {
            add(static_cast<quint64>(c.unicode()));
        }
    }
    [[nodiscard]] quint64 value() const { return m_hash; }

private:
    quint64 m_hash = 0xcbf29ce484222325ull;
};

struct Builder
{
    const record::Row& row;
    const record::LayoutRecord& full;
    const record::LayoutRecord& known; ///< as known at asOf
    ForecastCase& out;

    forecast::TankCase& tank() { return out.request.tank; }

    void setup(double litres)
    {
        const record::Layout& layout = known.layout;
        forecast::Setup& setup = tank().setup;
        setup.soil = soilOf(layout.bed);
        setup.soil_L_per_L = layout.bed_L > 0.0 && litres > 0.0 ? layout.bed_L / litres : kUsualSoil_L_per_L;
        if (setup.soil != forecast::SoilKind::Inert && layout.bed_L <= 0.0) {
            out.remarks << words("How much soil there is was not stated; a usual bed was taken.");
        }
        setup.plants = static_cast<forecast::PlantDensity>(static_cast<int>(layout.plants));
        setup.co2 = {layout.co2 == record::Co2Mode::Pressurised, layout.co2Target_mg_per_L, layout.co2Hours};
        if (const record::Entry* set = known.lastDone(record::EntryKind::Co2Change, out.asOf)) {
            setup.co2.level_mg_per_L = set->amount.value_or(setup.co2.level_mg_per_L);
            setup.co2.hoursPerDay = set->second.value_or(setup.co2.hoursPerDay);
        }
        std::vector<double> temperatures;
        for (const record::Reading* reading : known.readingsOf(u"temp"_s)) {
            temperatures.push_back(reading->value);
        }
        setup.temperature_C = temperatures.empty() ? layout.temperature_C : median(std::move(temperatures));
        const double age = tank().decisionDay;
        setup.established = age > kSettledAfterDays;
        setup.startDay = setup.established ? age - kSettledRunDays : 0.0;
        sources();
    }

    void sources()
    {
        const record::SourceProfile own = record::sourceProfile(row, known.layout.source);
        tank().setup.sources = {caseWater(own, known)};
        out.sources = {known.layout.source};
        if (!own.nitrate_mgN_per_L.value) {
            out.remarks << words(
                "Nitrate of the source water is not stated; a wide range was taken. A reading of it would help.");
        }
        if (!own.alkalinity_meq_per_L.value && known.readingsOf(u"kh"_s).empty()) {
            out.remarks << words("Alkalinity (KH) is not known; %1 was taken.")
                               .arg(wording::valueWithUnit(u"kh"_s, water::GermanDegrees{4.0}.alkalinity().value));
        }
    }

    void readings()
    {
        CaseKits kits(row, out);
        for (const record::Reading& reading : known.readings) {
            const double day = record::daysBetween(out.flooded, reading.at);
            if (day >= tank().setup.startDay && day >= 0.0) {
                kits.add(reading, day);
            }
        }
    }

    /// Feeding and animals, those planned included, unless the load was given.
    void load(const std::optional<double>& given)
    {
        FilterLoad& load = out.load;
        if (given) {
            load = {*given, 0.0, 0.0, 0, true};
        } else {
            for (const forecast::Event& event : tank().events) {
                if (event.kind == forecast::EventKind::FeedRate) {
                    load.feeding = event.amount;
                } else if (event.kind == forecast::EventKind::LivestockRate) {
                    (event.day <= tank().decisionDay ? load.animals : load.planned) += event.amount;
                }
            }
            load.animals = std::max(load.animals, 0.0);
            load.planned = std::max(load.planned, -load.animals);
        }
        out.request.load_mgN_per_L_d = std::max(load.total(), 0.0);
        const QString remark = wording::loadRemark(load.feeding, load.animals, load.planned, load.stated);
        if (!remark.isEmpty()) {
            out.remarks << remark;
        }
        if (load.unknownAnimals > 0 && !load.stated) {
            out.remarks << words("Planned animals whose load is not stated count for nothing in what the filter has to "
                                 "carry. Additions of this kind: %1.")
                               .arg(load.unknownAnimals);
        }
    }

    /// Which gate's date the next tests are to narrow.
    void focus(const record::Row& then, const QString& wanted)
    {
        const auto& gates = out.request.gates;
        const auto place = [&](const QString& key) {
            const auto found = std::ranges::find(gates, key.toStdString(), &forecast::GateRule::key);
            return found == gates.end() ? -1 : static_cast<int>(found - gates.begin());
        };
        if (!wanted.isEmpty() || gates.empty()) {
            out.request.focusGate = place(wanted);
            return;
        }
        for (const care::GateState& gate : care::gateStates(then, known.layout.id, out.asOf)) {
            if (gate.state() != care::Known::Met && place(gate.key) >= 0) {
                out.request.focusGate = place(gate.key);
                return;
            }
        }
    }

    void lessons(const ForecastOptions& options)
    {
        if (!options.learn || row.settings.value(kLearnSetting) == u"off"_s) {
            return;
        }
        out.lessons = options.teachers != nullptr ? lessonsFor(full, *options.teachers)
                                                  : lessonsFor(full, teachersOf(row, out.asOf));
    }

    void seed(const QString& name)
    {
        Fingerprint identity;
        identity.add(name.toCaseFolded());
        identity.add(static_cast<quint64>(out.flooded.utcMs()));
        for (const forecast::CaseReading& reading : tank().readings) {
            identity.add(reading.day);
            identity.add(reading.low);
            identity.add(reading.high);
        }
        out.request.seed = identity.value();
    }

    void fingerprint()
    {
        Fingerprint all;
        all.add(static_cast<quint64>(out.request.seed));
        const forecast::Setup& setup = tank().setup;
        for (const double value : {setup.soil_L_per_L, setup.temperature_C, setup.co2.level_mg_per_L,
                                   setup.co2.hoursPerDay, out.request.horizonDays, out.request.stepDays}) {
            all.add(value);
        }
        // What is still to come is told apart by the day alone: the answer of this morning is still the answer at noon.
        const double now = tank().decisionDay;
        all.add(std::floor(now));
        all.add(static_cast<quint64>(setup.soil) * 64 + static_cast<quint64>(setup.plants) * 8 +
                (setup.co2.injected ? 1u : 0u));
        for (const forecast::SourceWater& water : setup.sources) {
            all.add(water.nitrate_mgN_per_L.value_or(-1.0));
            all.add(water.alkalinity_meq_per_L);
            all.add(static_cast<quint64>(water.chloramine));
        }
        for (const forecast::Event& event : tank().events) {
            all.add(event.day > now ? std::floor(event.day) : event.day);
            all.add(event.amount);
            all.add(static_cast<quint64>(event.kind) * 1024 + static_cast<quint64>(event.source));
        }
        for (const forecast::Kit& kit : tank().kits) {
            all.add(kit.unitsPerMgN);
            all.add(static_cast<quint64>(kit.steps.size()));
            for (const double step : kit.steps) {
                all.add(step);
            }
        }
        all.add(out.request.load_mgN_per_L_d);
        all.add(static_cast<quint64>(out.request.focusGate + 1));
        for (const forecast::GateRule& gate : out.request.gates) { // the keeper may have set them
            all.add(gate.minDay);
            all.add(gate.total_mgN_per_L);
            all.add(gate.free_mgN_per_L);
            all.add(gate.nitrite_mgN_per_L);
            all.add(gate.spanDays);
        }
        all.add(out.request.inflation);
        for (const Lessons& lessons : out.lessons) {
            all.add(lessons.teacher->fingerprint);
            all.add(static_cast<quint64>(lessons.about.size()));
        }
        out.fingerprint = all.value();
    }
};

} // namespace

Result<ForecastCase> forecastCase(const record::Row& row, record::LayoutId layoutId, const record::Moment& asOf,
                                  const ForecastOptions& options)
{
    const record::LayoutRecord* full = row.layout(layoutId);
    if (full == nullptr) {
        return Error{Fault::NotFound, words("That layout is not in the store.").toStdString(), {}, {}};
    }
    const record::Tank* tank = row.tank(full->layout.tank);
    if (full->layout.ended && *full->layout.ended <= asOf) {
        return Error{Fault::BadInput, words("This layout had ended by then.").toStdString(),
                     tank == nullptr ? std::string() : tank->name.toStdString(),
                     words("Ask for a day while it was running, with --as-of.").toStdString()};
    }
    const record::Row then = asKnownAt(row, layoutId, asOf);
    ForecastCase out;
    out.layout = layoutId;
    out.asOf = asOf;
    out.flooded = full->layout.flooded;
    out.request.tank.decisionDay = std::max(0.0, record::daysBetween(out.flooded, asOf));
    out.request.horizonDays = options.horizonDays;
    out.request.stepDays = options.stepDays;
    out.request.extraDays = options.extraDays;
    out.request.inflation = options.inflation;

    Builder builder{row, *full, *then.layout(layoutId), out};
    const auto volume = tank == nullptr ? std::nullopt : record::netVolume(*tank, full->layout);
    builder.setup(volume ? volume->litres : 0.0);
    builder.readings();
    const double lastDay = std::max(kCompletionHorizonDay, out.request.tank.decisionDay + options.horizonDays);
    CaseEvents events(row, *full, then, volume ? volume->litres : 0.0, out);
    events.collectPast();
    if (options.withPlan) {
        events.collectPlan(lastDay);
    }
    events.finish();
    builder.load(options.load_mgN_per_L_d);
    if (options.withGates) {
        out.request.gates = care::gateRules(then, layoutId);
        builder.focus(then, options.focusGate);
    }
    builder.lessons(options);
    builder.seed(tank == nullptr ? QString() : tank->name);
    builder.fingerprint();
    return out;
}

} // namespace littoral::facade
