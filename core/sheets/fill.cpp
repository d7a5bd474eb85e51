// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheets/fill.h"

#include "core/record/shown.h"
#include "core/record/source_profile.h"
#include "core/sheets/reckoner.h"
#include "core/water/uncertain.h"
#include "core/water/units.h"
#include "core/wording/numbers.h"

#include <algorithm>
#include <cmath>

namespace littoral::sheets {

using namespace Qt::StringLiterals;

namespace {

/// A number the record holds, in the blank's unit.
struct Known
{
    double number = 0.0;
    std::optional<double> error;
    int decimals = 1;
    QString origin;
};

class Filler
{
public:
    Filler(const record::Row& row, const record::Tank& tank, const record::LayoutRecord& layout,
           const record::Moment& now)
        : m_row(row)
        , m_tank(tank)
        , m_layout(layout)
        , m_now(now)
    {
    }

    [[nodiscard]] std::optional<Known> find(const Fill& fill) const
    {
        switch (fill.from) {
        case FillFrom::Reading:
            return reading(fill);
        case FillFrom::NetVolume:
            return netVolume();
        case FillFrom::Source:
            return source(fill);
        case FillFrom::Layout:
            return layoutField(fill.key);
        case FillFrom::Glass:
            return glass(fill.key);
        case FillFrom::Nothing:
            break;
        }
        return std::nullopt;
    }

private:
    [[nodiscard]] static const record::Unit& unitOf(const record::Parameter& parameter, const QString& code)
    {
        const record::Unit* unit = code.isEmpty() ? nullptr : parameter.unit(code);
        return unit == nullptr ? record::inUsualUnits(parameter).shown() : *unit;
    }

    /// Half of what lies between the colours, or half a range; nothing when only the typed digits tell.
    [[nodiscard]] std::optional<double> doubtOf(const record::Reading& reading,
                                                const record::Parameter& parameter) const
    {
        if (reading.censoring != record::Censoring::None) {
            return 0.5 * std::abs(reading.high - reading.low);
        }
        const record::TestKit* kit = m_row.kit(reading.kit);
        const record::Unit* printed = kit == nullptr ? nullptr : parameter.unit(kit->unit);
        if (printed == nullptr || kit->steps.empty()) {
            return std::nullopt;
        }
        return water::kitStepError(printed->fromCanonical(reading.value), kit->steps) * printed->factor;
    }

    [[nodiscard]] std::optional<Known> reading(const Fill& fill) const
    {
        const record::Parameter* parameter = record::findParameter(fill.key);
        const record::Reading* newest = m_layout.newest(fill.key, m_now);
        if (parameter == nullptr || newest == nullptr) {
            return std::nullopt;
        }
        const record::Unit& unit = unitOf(*parameter, fill.unit);
        Known known;
        known.number = unit.fromCanonical(newest->value);
        if (const auto doubt = doubtOf(*newest, *parameter)) {
            known.error = *doubt / unit.factor;
        }
        known.decimals = record::inUsualUnits(*parameter).decimals;
        known.origin = words("reading of %1").arg(wording::dateText(newest->at.localDate(), m_now.localDate()));
        return known;
    }

    [[nodiscard]] std::optional<Known> netVolume() const
    {
        const auto net = record::netVolume(m_tank, m_layout.layout);
        if (!net) {
            return std::nullopt;
        }
        return Known{net->litres, std::nullopt, net->litres < 100.0 ? 1 : 0,
                     net->reckoned ? words("reckoned from the tank's measures, bed and rock")
                                   : words("measured when it was filled")};
    }

    [[nodiscard]] std::optional<Known> source(const Fill& fill) const
    {
        const record::SourceWater* water = m_row.source(m_layout.layout.source);
        const record::Parameter* parameter = record::findParameter(fill.key);
        if (water == nullptr || parameter == nullptr) {
            return std::nullopt;
        }
        const record::SourceProfile profile = record::sourceProfile(m_row.sources, *water);
        const QMap<QString, record::SourceFigure> figures{{u"no3"_s, profile.nitrate_mgN_per_L},
                                                          {u"kh"_s, profile.alkalinity_meq_per_L},
                                                          {u"gh"_s, profile.hardness_mmol_per_L},
                                                          {u"ph"_s, profile.ph},
                                                          {u"cl"_s, profile.chloride_mg_per_L}};
        const record::SourceFigure figure = figures.value(fill.key);
        if (!figure.value) {
            return std::nullopt;
        }
        return Known{unitOf(*parameter, fill.unit).fromCanonical(*figure.value), std::nullopt,
                     record::inUsualUnits(*parameter).decimals, originText(figure.origin).arg(water->name)};
    }

    [[nodiscard]] static QString originText(record::Origin origin)
    {
        switch (origin) {
        case record::Origin::Reckoned:
            return words("source water \"%1\", reckoned from its parts");
        case record::Origin::Assumed:
            return words("source water \"%1\", taken as free of salts");
        case record::Origin::Measured:
        case record::Origin::Unknown:
            break;
        }
        return words("source water \"%1\"");
    }

    [[nodiscard]] static std::optional<Known> positive(double value, const QString& origin)
    {
        return value > 0.0 ? std::optional(Known{value, std::nullopt, 1, origin}) : std::nullopt;
    }

    [[nodiscard]] std::optional<Known> layoutField(const QString& field) const
    {
        const record::Layout& layout = m_layout.layout;
        const QString origin = words("set for this layout");
        const QMap<QString, double> fields{{u"temperature"_s, layout.temperature_C},
                                           {u"co2-target"_s, layout.co2Target_mg_per_L},
                                           {u"co2-hours"_s, layout.co2Hours},
                                           {u"light-hours"_s, layout.lightHours},
                                           {u"par"_s, layout.lightPar},
                                           {u"flow"_s, layout.filterFlow_L_per_h},
                                           {u"bed"_s, layout.bed_L},
                                           {u"rock"_s, layout.rock_kg},
                                           {u"gap"_s, layout.gap_cm}};
        return positive(fields.value(field), origin);
    }

    [[nodiscard]] std::optional<Known> glass(const QString& measure) const
    {
        const QMap<QString, double> measures{{u"length"_s, m_tank.length_cm},
                                             {u"depth"_s, m_tank.depth_cm},
                                             {u"height"_s, m_tank.height_cm},
                                             {u"glass"_s, m_tank.glass_mm}};
        return positive(measures.value(measure), words("measures of the tank"));
    }

    const record::Row& m_row;
    const record::Tank& m_tank;
    const record::LayoutRecord& m_layout;
    const record::Moment& m_now;
};

/// More decimals than people usually see where rounding would change the sum by more than half a per cent.
int decimalsThatTell(double number, int decimals)
{
    constexpr int kMost = 4;
    constexpr double kLost = 0.005;
    while (decimals < kMost) {
        const double scale = std::pow(10.0, decimals);
        if (std::abs(std::round(number * scale) / scale - number) <= kLost * std::abs(number)) {
            break;
        }
        ++decimals;
    }
    return decimals;
}

/// "@parameter" as the choice of that name stands.
Fill resolved(const Sheet& sheet, const Fill& fill, const Values& typed)
{
    if (!fill.key.startsWith(u'@')) {
        return fill;
    }
    const QString choice = fill.key.mid(1);
    const Input* input = sheet.input(choice);
    const QString code = typed.contains(choice) ? typed.value(choice).text
                         : input == nullptr     ? QString()
                                                : input->preset;
    return {fill.from, code, {}};
}

} // namespace

Values fillFromRecord(const Sheet& sheet, const record::Row& row, record::TankId tank, const record::Moment& now,
                      const Values& typed)
{
    Values values = typed;
    const record::Tank* found = row.tank(tank);
    const record::LayoutRecord* layout = row.currentLayout(tank, now);
    if (found == nullptr || layout == nullptr) {
        return values;
    }
    const Filler filler(row, *found, *layout, now);
    for (const Input& input : sheet.inputs) {
        if (values.contains(input.key)) {
            continue;
        }
        auto known = filler.find(resolved(sheet, input.fill, typed));
        // A tank without a thermometer reading still has the temperature it is set to.
        if (!known && input.fill.from == FillFrom::Reading && input.fill.key == u"temp"_s) {
            known = filler.find({FillFrom::Layout, u"temperature"_s, {}});
        }
        if (!known || known->number < input.lowest || known->number > input.highest) {
            continue;
        }
        Value value;
        known->decimals = decimalsThatTell(known->number, known->decimals);
        value.step = std::pow(10.0, -known->decimals);
        value.number = known->number;
        value.error = known->error;
        value.text = wording::numberText(known->number, known->decimals);
        value.origin = known->origin;
        values.insert(input.key, value);
    }
    return values;
}

} // namespace littoral::sheets
