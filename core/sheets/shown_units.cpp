// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheets/shown_units.h"

#include "core/sheets/reckoner.h"
#include "core/water/hardness.h"
#include "core/water/nitrogen.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace littoral::sheets {

using namespace Qt::StringLiterals;
using record::HardnessUnit;
using record::Measure;
using record::NitrogenUnit;
using record::Units;

namespace {

Measure hardness(const QString& unit, HardnessUnit chosen)
{
    if (chosen == HardnessUnit::PpmCaCO3) {
        return {u"ppm CaCO₃"_s, water::kCaCO3MgPerDegree};
    }
    // "°d" is either hardness: its moles cannot be told without knowing which.
    if (chosen == HardnessUnit::Degrees || unit == u"°d"_s) {
        return {unit};
    }
    return unit == u"dKH"_s ? Measure{u"meq/L"_s, water::kMeqPerDegree} : Measure{u"mmol/L"_s, water::kMmolPerDegree};
}

Measure concentration(const QString& unit, NitrogenUnit chosen)
{
    if (chosen == NitrogenUnit::Ppm && !unit.contains(u"/L/"_s)) {
        return {u"ppm"_s + unit.mid(4)};
    }
    if (chosen == NitrogenUnit::AsNitrogen && unit == u"mg/L NO₃"_s) {
        return {u"mg/L N"_s, 1.0 / water::kNitratePerN};
    }
    if (chosen == NitrogenUnit::AsNitrogen && unit == u"mg/L NO₂"_s) {
        return {u"mg/L N"_s, 1.0 / water::kNitritePerN};
    }
    return {unit};
}

std::optional<double> numberIn(QString text)
{
    text.replace(u',', u'.');
    text.replace(QChar(0x2212), u'-');
    text.remove(QChar(0x2009)); // between thousands
    bool ok = false;
    const double value = text.toDouble(&ok);
    return ok ? std::optional(value) : std::nullopt;
}

void show(Figure& figure, const Measure& measure)
{
    figure.unit = measure.label;
    if (figure.isWords || measure.isCanonical()) {
        return;
    }
    const double doubt = figure.low && figure.high ? 0.5 * (*figure.high - *figure.low) * measure.factor : 0.0;
    figure.value = measure.shown(figure.value);
    figure.text = deservedText(figure.value, doubt);
    if (figure.low && figure.high) {
        figure.low = measure.shown(*figure.low);
        figure.high = measure.shown(*figure.high);
        const int place = deservedPlace(figure.value, doubt);
        figure.range = words("%1–%2").arg(roundedText(*figure.low, place), roundedText(*figure.high, place));
    }
}

} // namespace

Measure measureOf(const QString& unit, const Units& units)
{
    if (unit == u"L"_s) {
        return record::volumeMeasure(units);
    }
    if (unit == u"L/d"_s) {
        Measure volume = record::volumeMeasure(units);
        volume.label += u"/d"_s;
        return volume;
    }
    if (unit == u"cm"_s) {
        return record::lengthMeasure(units);
    }
    if (unit == u"°C"_s) {
        return record::temperatureMeasure(units);
    }
    if (unit == u"dKH"_s || unit == u"dGH"_s || unit == u"°d"_s) {
        return hardness(unit, units.hardness);
    }
    return unit.startsWith(u"mg/L"_s) ? concentration(unit, units.nitrogen) : Measure{unit};
}

std::vector<Measure> measuresOf(const QString& unit)
{
    std::vector<Measure> all;
    for (const Units& units : {Units{},
                               Units{NitrogenUnit::AsNitrogen, HardnessUnit::Molar, record::TemperatureUnit::Fahrenheit,
                                     record::VolumeUnit::UsGallons, record::LengthUnit::Inches},
                               Units{.nitrogen = NitrogenUnit::Ppm, .hardness = HardnessUnit::PpmCaCO3}}) {
        const Measure measure = measureOf(unit, units);
        if (std::ranges::find(all, measure.label, &Measure::label) == all.end()) {
            all.push_back(measure);
        }
    }
    return all;
}

QString shownText(const QString& text, const Measure& measure)
{
    const auto number = measure.isCanonical() ? std::nullopt : numberIn(text);
    return number ? plainText(measure.shown(*number)) : text;
}

Answer inShownUnits(const Sheet& sheet, Answer answer)
{
    const Units units = record::shownUnits();
    QStringList own;
    const auto measure = [&](const QString& unit) {
        const Measure made = measureOf(unit, units);
        if (!made.isCanonical() && !own.contains(unit)) {
            own << unit;
        }
        return made;
    };
    for (const Input& input : sheet.inputs) {
        (void)measure(input.unit);
    }
    for (Figure& figure : answer.results) {
        show(figure, measure(figure.unit));
    }
    for (Move& move : answer.moves) {
        const Measure made = measure(move.unit);
        move.before = shownText(move.before, made);
        move.after = shownText(move.after, made);
        move.unit = made.label;
    }
    if (!own.isEmpty()) {
        answer.notes << words("The formula and its figures are in %1.").arg(own.join(u", "_s));
    }
    return answer;
}

} // namespace littoral::sheets
