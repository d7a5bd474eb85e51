// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/case_kits.h"

#include "core/record/shown.h"

#include <QCoreApplication>
#include <algorithm>
#include <limits>

namespace littoral::facade {

using namespace Qt::StringLiterals;

namespace {

// Steps of the usual liquid colour cards, in mg/L as the ion or as NH3 (common practice).
const std::vector<double> kAmmoniaCard{0, 0.25, 0.5, 1, 2, 4, 8};
const std::vector<double> kNitriteCard{0, 0.25, 0.5, 1, 2, 5};
const std::vector<double> kNitrateCard{0, 5, 10, 20, 40, 80, 160};
// Strips have about half as many pads (common practice: scatter 1.6 times a card's).
constexpr double kStripScatter = 1.6;

record::TestKit usualCard(const QString& parameter)
{
    record::TestKit kit;
    kit.parameter = parameter;
    kit.kind = record::KitKind::Card;
    kit.unit = record::inUsualUnits(*record::findParameter(parameter)).shown().code;
    kit.steps = parameter == u"tan"_s ? kAmmoniaCard : parameter == u"no2"_s ? kNitriteCard : kNitrateCard;
    return kit;
}

} // namespace

forecast::Kit likelihoodKit(const record::TestKit& kit)
{
    const record::Unit* unit = record::findParameter(kit.parameter)->unit(kit.unit);
    forecast::Kit made;
    made.substance = *substanceOf(kit.parameter);
    made.steps = kit.steps;
    made.unitsPerMgN = unit == nullptr ? 1.0 : 1.0 / unit->factor;
    // Colour tests for nitrate reduce it to nitrite first and so read both (common practice).
    made.readsNitriteToo = kit.readsNitriteToo || (kit.parameter == u"no3"_s && kit.kind != record::KitKind::Digital);
    made.scatterFactor = kit.kind == record::KitKind::Strip ? kStripScatter : 1.0;
    return made;
}

record::TestKit kitOf(const record::Row& row, const record::Reading& reading)
{
    const record::TestKit* stored = row.kit(reading.kit);
    return stored != nullptr && stored->parameter == reading.parameter ? *stored : usualCard(reading.parameter);
}

forecast::CaseReading likelihoodReading(const record::Reading& reading, const forecast::Kit& kit)
{
    forecast::CaseReading made;
    made.low = std::max(0.0, reading.low * kit.unitsPerMgN);
    made.high = reading.censoring == record::Censoring::Above ? std::numeric_limits<double>::infinity()
                                                              : reading.high * kit.unitsPerMgN;
    made.below = reading.censoring == record::Censoring::Below;
    made.tag = reading.id.value;
    return made;
}

std::optional<forecast::Substance> substanceOf(const QString& parameter)
{
    if (parameter == u"tan"_s) {
        return forecast::Substance::TotalAmmonia;
    }
    if (parameter == u"no2"_s) {
        return forecast::Substance::Nitrite;
    }
    if (parameter == u"no3"_s) {
        return forecast::Substance::Nitrate;
    }
    return std::nullopt;
}

int CaseKits::kitIndex(const record::Reading& reading)
{
    const record::TestKit kit = kitOf(m_row, reading);
    const bool usable = static_cast<bool>(kit.id);
    const record::KitId id = kit.id;
    for (std::size_t i = 0; i < m_out.kits.size(); ++i) {
        if (m_out.kits[i].id == id && m_out.kits[i].parameter == reading.parameter) {
            return static_cast<int>(i);
        }
    }
    if (!usable) {
        m_out.remarks << QCoreApplication::translate("Forecast",
                                                     "%1 was entered without a kit; a common colour card was taken.")
                             .arg(record::findParameter(reading.parameter)->name);
    }
    m_out.kits.push_back(kit);
    m_out.request.tank.kits.push_back(likelihoodKit(kit));
    return static_cast<int>(m_out.kits.size()) - 1;
}

void CaseKits::add(const record::Reading& reading, double day)
{
    if (!substanceOf(reading.parameter)) {
        return;
    }
    const int kit = kitIndex(reading);
    forecast::CaseReading made = likelihoodReading(reading, m_out.request.tank.kits[static_cast<std::size_t>(kit)]);
    made.day = day;
    made.kit = kit;
    m_out.request.tank.readings.push_back(made);
}

} // namespace littoral::facade
