// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/bench_curve.h"

#include "core/record/parameter.h"
#include "core/record/shown.h"
#include "core/sheets/reckoner.h"
#include "core/wording/entry_words.h"
#include "core/wording/numbers.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

constexpr int kPoints = 41;

QString words(const char* text)
{
    return QCoreApplication::translate("BenchCurve", text);
}

/// Which input of which sheet is swept, and which result is drawn. The span is about where the input stands.
struct Sweep
{
    const char16_t* sheet;
    const char16_t* reckonedBy; ///< the sheet the curve is made with
    const char16_t* input;
    const char16_t* result;
    double reach;     ///< either side of where the input stands; 0: from `low` to `high`
    double low, high; ///< the whole span, and the bounds of a reach
    const char16_t* parameter;
};

constexpr std::array kSweeps{
    Sweep{u"target", u"change", u"share", u"after", 0, 0, 90, u""},
    Sweep{u"change", u"change", u"share", u"after", 0, 0, 90, u""},
    Sweep{u"co2", u"co2", u"ph", u"co2", 0.35, 4.5, 9.5, u"co2"},
    Sweep{u"ammonia", u"ammonia", u"ph", u"", 1.0, 4.5, 10.5, u"tan"},
    Sweep{u"oxygen", u"oxygen", u"temp", u"", 0, 5, 35, u"do"},
    Sweep{u"light", u"light", u"hours", u"sum", 0, 1, 14, u"par"},
    Sweep{u"heater", u"heater", u"room", u"", 0, 5, 30, u"temp"},
    Sweep{u"accumulate", u"accumulate", u"share", u"", 0, 5, 90, u""},
    Sweep{u"stocking", u"stocking", u"share", u"", 0, 5, 90, u"no3"},
    Sweep{u"dip", u"dip", u"parts", u"strength", 0, 5, 60, u"cl"},
};

const Sweep* sweepOf(const QString& sheet)
{
    const auto found = std::ranges::find_if(kSweeps, [&](const Sweep& s) { return sheet == QStringView(s.sheet); });
    return found == kSweeps.end() ? nullptr : &*found;
}

const sheets::Figure* figureOf(const sheets::Answer& answer, const QString& key)
{
    if (!key.isEmpty()) {
        return answer.find(key);
    }
    const auto main = std::ranges::find_if(answer.results, &sheets::Figure::main);
    return main == answer.results.end() || main->isWords ? nullptr : &*main;
}

Curve::Point pointOf(double x, const sheets::Figure& figure)
{
    return {x, figure.value, figure.low.value_or(figure.value), figure.high.value_or(figure.value)};
}

QString withUnit(const QString& text, const QString& unit)
{
    return unit.isEmpty() ? text : words("%1 %2").arg(text, unit);
}

/// Values of the open sheet as the sheet that draws the curve takes them.
sheets::Values valuesFor(const sheets::Sheet& by, const sheets::Values& values)
{
    sheets::Values taken;
    for (const sheets::Input& input : by.inputs) {
        if (values.contains(input.key)) {
            taken.insert(input.key, values.value(input.key));
        }
    }
    return taken;
}

/// Where the swept input stands: its value, or the result of that name (the target sheet reckons the share).
std::optional<double> standing(const BenchSheet& open, const sheets::Input& swept)
{
    if (open.sheet().input(swept.key) != nullptr) {
        if (open.values().contains(swept.key)) {
            return open.values().value(swept.key).number;
        }
        bool ok = false;
        const double preset = swept.preset.toDouble(&ok);
        return ok ? std::optional(preset) : std::nullopt;
    }
    const sheets::Figure* figure = open.answer()->find(swept.key);
    return figure == nullptr ? std::nullopt : std::optional(figure->value);
}

QString parameterOf(const Sweep& sweep, const BenchSheet& open)
{
    const QString fixed = QString::fromUtf16(sweep.parameter);
    if (!fixed.isEmpty()) {
        return fixed;
    }
    const BenchBlank* chosen = open.blank(u"parameter"_s);
    return chosen == nullptr ? QString() : chosen->text;
}

void addTarget(Curve& curve, const BenchSheet& open, const record::Row& row)
{
    const record::Target* target = row.target(open.tank(), curve.parameter);
    const record::Parameter* parameter = record::findParameter(curve.parameter);
    if (target == nullptr || parameter == nullptr) {
        return;
    }
    const auto shown = [&](const std::optional<double>& edge) {
        return edge ? std::optional(record::inUsualUnits(*parameter).shown().fromCanonical(*edge)) : std::nullopt;
    };
    curve.bandLow = shown(target->low);
    curve.bandHigh = shown(target->high);
    curve.bandText = words("wanted band of this tank");
}

void addLimits(Curve& curve, const BenchSheet& open, const record::Row& row)
{
    const QString key = open.sheet().key;
    if (key == u"co2"_s) {
        curve.bandLow = 15.0;
        curve.bandHigh = 30.0;
        curve.bandText = words("15–30 with animals, common practice");
    } else if (key == u"ammonia"_s) {
        curve.line = 0.02;
        curve.lineText = words("0.02, common practice for animals");
    } else if (key == u"target"_s || key == u"change"_s) {
        addTarget(curve, open, row);
    }
}

/// Free ammonia climbs tenfold with a unit of pH: where the curve runs far above its limit the limit would sit on the
/// floor, so the figure is drawn in the part around where the sheet stands.
void addPoints(Curve& curve, const sheets::Sheet& by, sheets::Values values, const Sweep& sweep, double from, double to)
{
    const QString key = QString::fromUtf16(sweep.input);
    for (int i = 0; i < kPoints; ++i) {
        sheets::Value& swept = values[key];
        swept.number = from + (to - from) * i / (kPoints - 1);
        swept.text = QString::number(swept.number);
        swept.error = 0.0; // the axis is exact; the doubt drawn is that of the other blanks
        swept.step = 0.0;
        const auto answer = sheets::evaluate(by, values);
        const sheets::Figure* figure = answer ? figureOf(*answer, QString::fromUtf16(sweep.result)) : nullptr;
        if (figure != nullptr) {
            curve.points.push_back(pointOf(swept.number, *figure));
        }
    }
}

} // namespace

std::optional<Curve> benchCurve(const BenchSheet& open, const record::Row& row)
{
    const Sweep* sweep = sweepOf(open.sheet().key);
    const sheets::Sheet* by = sweep == nullptr ? nullptr : sheets::findSheet(QString::fromUtf16(sweep->reckonedBy));
    const sheets::Input* swept = by == nullptr ? nullptr : by->input(QString::fromUtf16(sweep->input));
    if (swept == nullptr || !open.answer()) {
        return std::nullopt;
    }
    const auto at = standing(open, *swept);
    if (!at) {
        return std::nullopt;
    }
    const double from = sweep->reach > 0.0 ? std::max(sweep->low, *at - sweep->reach) : std::min(sweep->low, *at);
    const double to = sweep->reach > 0.0 ? std::min(sweep->high, *at + sweep->reach) : std::max(sweep->high, *at);
    Curve curve;
    curve.parameter = parameterOf(*sweep, open);
    sheets::Values values = valuesFor(*by, open.values());
    addPoints(curve, *by, values, *sweep, std::max(from, swept->lowest), std::min(to, swept->highest));
    if (curve.points.size() < 2) {
        return std::nullopt;
    }
    sheets::Value& here = values[swept->key];
    here.number = *at;
    here.step = 0.0;
    here.error = 0.0;
    const auto answer = sheets::evaluate(*by, values);
    const sheets::Figure* figure = answer ? figureOf(*answer, QString::fromUtf16(sweep->result)) : nullptr;
    if (figure == nullptr) {
        return std::nullopt;
    }
    curve.title = figure->unit.isEmpty() ? figure->label : words("%1, %2").arg(figure->label, figure->unit);
    curve.xTitle = swept->unit.isEmpty() ? swept->label : words("%1, %2").arg(swept->label, swept->unit);
    curve.here = pointOf(*at, *figure);
    const QString atText = withUnit(wording::plainNumber(*at, 3), swept->unit);
    curve.hereText = figure->range.isEmpty()
                         ? words("%1: %2").arg(atText, withUnit(figure->text, figure->unit))
                         : words("%1: %2 (%3)").arg(atText, withUnit(figure->text, figure->unit), figure->range);
    addLimits(curve, open, row);
    return curve;
}

std::optional<Measures> benchMeasures(const BenchSheet& open)
{
    if (open.sheet().key != u"co2"_s || !open.answer()) {
        return std::nullopt;
    }
    struct Way
    {
        const char16_t* key;
        QString name;
        QString needs;
    };
    const std::array ways{
        Way{u"co2", words("pH and KH"), {}},
        Way{u"drop", words("pH drop"), words("give the pH of a degassed sample")},
        Way{u"drops", words("Indicator"), words("give the pH its colour stands for")},
    };
    Measures measures;
    measures.parameter = u"co2"_s;
    measures.bandLow = 15.0;
    measures.bandHigh = 30.0;
    measures.bandText = words("15–30 with animals, common practice");
    for (const Way& way : ways) {
        const sheets::Figure* figure = open.answer()->find(QString::fromUtf16(way.key));
        if (figure == nullptr) {
            measures.rows.push_back({way.name, way.needs, {}, {}, {}});
            continue;
        }
        measures.unit = figure->unit;
        const QString value = figure->range.isEmpty()
                                  ? withUnit(figure->text, figure->unit)
                                  : words("%1 (%2) %3").arg(figure->text, figure->range, figure->unit);
        measures.rows.push_back({way.name, value, figure->value, figure->low, figure->high});
    }
    return measures;
}

PlainTable benchTable(const std::optional<Curve>& curve, const std::optional<Measures>& measures)
{
    PlainTable table;
    if (curve) {
        table.caption = words("%1 against %2, as a table").arg(curve->title, curve->xTitle);
        table.header = {curve->xTitle, curve->title, words("Low"), words("High")};
        double nearest = 0.0;
        for (const Curve::Point& point : curve->points) {
            const double doubt = std::max(point.high - point.y, point.y - point.low);
            const int place = sheets::deservedPlace(point.y, doubt);
            const bool known = doubt > 0.0;
            table.rows.push_back({sheets::plainText(point.x), sheets::deservedText(point.y, doubt),
                                  known ? sheets::roundedText(point.low, place) : QString(),
                                  known ? sheets::roundedText(point.high, place) : QString()});
            if (curve->here && (table.currentRow < 0 || std::abs(point.x - curve->here->x) < nearest)) {
                nearest = std::abs(point.x - curve->here->x);
                table.currentRow = static_cast<int>(table.rows.size()) - 1;
            }
        }
    } else if (measures) {
        table.caption = words("The ways side by side, as a table");
        table.header = {words("Way"), words("Result")};
        for (const Measures::Row& row : measures->rows) {
            table.rows.push_back({row.name, row.value});
        }
    }
    return table;
}

} // namespace littoral::ui
