// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/bench_sheet.h"

#include "core/record/parameter.h"
#include "core/record/shown.h"
#include "core/sheets/shown_units.h"
#include "core/sheets/text_input.h"

#include <QCoreApplication>
#include <QSet>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;
using sheets::Input;
using sheets::InputKind;
using sheets::Values;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("BenchSheet", text);
}

constexpr double kLargeShare = 0.5; // more at once is a large step for animals used to the water: common practice

/// Optional or assumed blanks that belong to what the sheet is for, and so are never folded away.
bool isCentral(const QString& sheet, const QString& key)
{
    static const QMap<QString, QSet<QString>> central{
        {u"co2"_s, {u"temp"_s, u"phbase"_s, u"indicator"_s}},
        {u"target"_s, {u"source"_s, u"litres"_s}},
        {u"change"_s, {u"source"_s, u"litres"_s}},
        {u"changes"_s, {u"source"_s, u"litres"_s}},
        {u"ammonia"_s, {u"temp"_s}},
        {u"oxygen"_s, {u"do"_s}},
        {u"light"_s, {u"target"_s}},
        {u"heater"_s, {u"loss"_s, u"heater"_s}},
        {u"stocking"_s, {u"protein"_s}},
    };
    return central.value(sheet).contains(key);
}

bool isFolded(const QString& sheet, const Input& input, bool typed)
{
    const bool secondary = input.optional || (!input.preset.isEmpty() && !input.exact);
    return secondary && input.kind != InputKind::Choice && !typed && !isCentral(sheet, input.key);
}

/// Parameter whose unit a blank without one of its own is reckoned in; nullptr for pure numbers.
const record::Parameter* parameterOf(const sheets::Sheet& sheet, const Input& input, const Values& values)
{
    const auto chosen = [&](const QString& choice) -> const record::Parameter* {
        const Input* asked = sheet.input(choice);
        if (asked == nullptr) {
            return nullptr;
        }
        return record::findParameter(values.contains(choice) ? values.value(choice).text : asked->preset);
    };
    if (input.fill.key.startsWith(u'@')) {
        return chosen(input.fill.key.mid(1));
    }
    // A target is in the unit of what it is the target of.
    return input.key == u"target"_s && input.unit.isEmpty() ? chosen(u"parameter"_s) : nullptr;
}

} // namespace

QString typedText(const sheets::Value& value)
{
    return value.error && value.series.empty() ? u"%1±%2"_s.arg(value.text, QString::number(*value.error, 'g', 3))
                                               : value.text;
}

bool isPlannable(const sheets::Write& write)
{
    return write.entry && write.entry->kind != record::EntryKind::Note;
}

std::vector<double> proposedChanges(const BenchSheet& open)
{
    std::vector<double> shares;
    if (!open.answer()) {
        return shares;
    }
    for (const sheets::Write& write : open.answer()->writes) {
        if (write.task && write.task->fraction) {
            shares.push_back(*write.task->fraction);
        }
    }
    const sheets::Figure* half = open.answer()->find(u"in2"_s);
    if (shares.size() == 1 && shares.front() > kLargeShare && half != nullptr && half->value > 0.0) {
        return {half->value / 100.0, half->value / 100.0};
    }
    return shares;
}

BenchSheet::BenchSheet(const sheets::Sheet& sheet, record::TankId tank)
    : m_sheet(&sheet)
    , m_tank(tank)
{
}

void BenchSheet::type(const QString& key, const QString& text)
{
    if (text.trimmed().isEmpty()) {
        m_typed.remove(key);
    } else {
        m_typed.insert(key, text.trimmed());
    }
}

void BenchSheet::typeShown(const QString& key, const QString& text)
{
    type(key, withShownUnit(key, text.trimmed()));
}

/// A bare number is meant in the unit beside the field. It is kept with that unit, so that it still means the same when
/// another one stands there.
QString BenchSheet::withShownUnit(const QString& key, const QString& text) const
{
    const Input* input = m_sheet->input(key);
    if (text.isEmpty() || input == nullptr || input->kind != InputKind::Number || !text.back().isDigit()) {
        return text;
    }
    const record::Measure shown = sheets::measureOf(unitOf(*input), record::shownUnits());
    return shown.isCanonical() ? text : words("%1 %2").arg(text, shown.label);
}

/// What was typed, without the unit that stands beside the field anyway; with the sheet's own where another stands
/// there.
QString BenchSheet::fieldText(const Input& input) const
{
    const QString text = m_typed.value(input.key);
    const record::Measure shown = sheets::measureOf(unitOf(input), record::shownUnits());
    if (input.kind != InputKind::Number || shown.isCanonical()) {
        return text;
    }
    if (text.endsWith(u' ' + shown.label)) {
        return text.chopped(shown.label.size() + 1);
    }
    return text.back().isDigit() ? words("%1 %2").arg(text, unitOf(input)) : text;
}

void BenchSheet::refresh(const record::Row& row, const record::Moment& now, record::SourceWaterId source)
{
    parseTyped();
    Values choices;
    for (auto it = m_values.cbegin(); it != m_values.cend(); ++it) {
        const Input* input = m_sheet->input(it.key());
        if (input != nullptr && input->kind == InputKind::Choice) {
            choices.insert(it.key(), it.value());
        }
    }
    const Values untouched = benchFill(*m_sheet, row, m_tank, now, choices, source);
    for (auto it = untouched.cbegin(); it != untouched.cend(); ++it) {
        // What was typed wrongly is not quietly replaced by the record: the sheet waits for it.
        if (!m_values.contains(it.key()) && !m_wrong.contains(it.key())) {
            m_values.insert(it.key(), it.value());
        }
    }
    describe(untouched);
    reckon();
}

void BenchSheet::parseTyped()
{
    m_values.clear();
    m_wrong.clear();
    for (auto it = m_typed.cbegin(); it != m_typed.cend(); ++it) {
        const Input* input = m_sheet->input(it.key());
        if (input == nullptr) {
            continue;
        }
        if (const auto value = sheets::parseValue(*input, it.value())) {
            m_values.insert(it.key(), *value);
        } else {
            m_wrong.insert(it.key(), value.error());
        }
    }
}

QString BenchSheet::unitOf(const Input& input) const
{
    if (!input.unit.isEmpty()) {
        return input.unit;
    }
    const record::Parameter* parameter = parameterOf(*m_sheet, input, m_values);
    return parameter == nullptr ? QString() : record::inUsualUnits(*parameter).shown().label;
}

BenchBlank BenchSheet::describe(const Input& input, const Values& untouched) const
{
    BenchBlank blank;
    blank.input = &input;
    const record::Measure shown = sheets::measureOf(unitOf(input), record::shownUnits());
    const auto inShown = [&](const QString& text) {
        return input.kind == InputKind::Number ? sheets::shownText(text, shown) : text;
    };
    blank.unit = shown.label;
    const bool typed = m_typed.contains(input.key);
    blank.folded = isFolded(m_sheet->key, input, typed);
    const bool known = untouched.contains(input.key) && input.kind != InputKind::Choice;
    if (typed) {
        blank.from = BenchBlank::From::Typed;
        blank.text = fieldText(input);
        blank.origin = words("typed");
        if (known) {
            blank.wayBack = inShown(untouched.value(input.key).text);
        }
        if (m_wrong.contains(input.key)) {
            const Error& error = m_wrong[input.key];
            blank.problem = QString::fromStdString(error.what);
            blank.mend = QString::fromStdString(error.mend);
        }
        return blank;
    }
    if (known) {
        blank.from = BenchBlank::From::Record;
        blank.text = inShown(untouched.value(input.key).text);
        blank.origin = untouched.value(input.key).origin;
        return blank;
    }
    if (!input.preset.isEmpty()) {
        blank.from = BenchBlank::From::Preset;
        blank.text = inShown(input.preset);
        blank.origin = input.kind == InputKind::Choice ? QString()
                       : input.exact                   ? words("usual choice")
                                                       : words("assumed");
        return blank;
    }
    blank.missing = !input.optional;
    blank.origin = input.optional ? words("may stay empty") : words("still needed");
    return blank;
}

void BenchSheet::describe(const Values& untouched)
{
    m_blanks.clear();
    for (const Input& input : m_sheet->inputs) {
        m_blanks.push_back(describe(input, untouched));
    }
}

const BenchBlank* BenchSheet::blank(const QString& key) const
{
    const auto found = std::ranges::find_if(m_blanks, [&](const BenchBlank& b) { return b.input->key == key; });
    return found == m_blanks.end() ? nullptr : &*found;
}

/// The blank a refusal is about: sheets name its key.
BenchBlank* BenchSheet::blame(const Error& error)
{
    const auto found = std::ranges::find_if(
        m_blanks, [&](const BenchBlank& b) { return b.input->key == QString::fromStdString(error.where); });
    return found == m_blanks.end() ? nullptr : &*found;
}

void BenchSheet::reckon()
{
    m_answer.reset();
    m_problem.clear();
    m_mend.clear();
    QStringList missing;
    QStringList wrong;
    for (const BenchBlank& blank : m_blanks) {
        if (!blank.problem.isEmpty()) {
            wrong << blank.input->label;
        } else if (blank.missing) {
            missing << blank.input->label;
        }
    }
    m_waiting = !missing.isEmpty() || !wrong.isEmpty();
    if (!wrong.isEmpty()) {
        m_problem = words("Not reckoned: see %1.").arg(wrong.join(u", "_s));
        return;
    }
    if (!missing.isEmpty()) {
        m_problem = words("Still needed: %1.").arg(missing.join(u", "_s));
        return;
    }
    const auto answer = sheets::evaluate(*m_sheet, m_values);
    if (answer) {
        m_answer = sheets::inShownUnits(*m_sheet, *answer);
        return;
    }
    m_problem = QString::fromStdString(answer.error().what);
    m_mend = QString::fromStdString(answer.error().mend);
    if (BenchBlank* blank = blame(answer.error())) {
        blank->problem = m_problem;
        blank->mend = m_mend;
        blank->folded = false;
    }
}

QJsonObject BenchSheet::toJson() const
{
    QJsonObject typed;
    for (auto it = m_typed.cbegin(); it != m_typed.cend(); ++it) {
        typed.insert(it.key(), it.value());
    }
    // Ids are microseconds and exact in a JSON number (core/store/edit.h).
    return {{u"sheet"_s, m_sheet->key}, {u"tank"_s, m_tank.value}, {u"typed"_s, typed}};
}

std::optional<BenchSheet> BenchSheet::fromJson(const QJsonObject& object)
{
    const sheets::Sheet* sheet = sheets::findSheet(object.value(u"sheet"_s).toString());
    if (sheet == nullptr) {
        return std::nullopt;
    }
    BenchSheet open(*sheet, record::TankId{object.value(u"tank"_s).toInteger()});
    const QJsonObject typed = object.value(u"typed"_s).toObject();
    for (auto it = typed.begin(); it != typed.end(); ++it) {
        open.type(it.key(), it.value().toString());
    }
    return open;
}

} // namespace littoral::ui
