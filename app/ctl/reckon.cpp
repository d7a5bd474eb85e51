// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/ctl/arguments.h"
#include "app/ctl/text_table.h"
#include "app/ctl/verbs.h"
#include "core/sheets/fill.h"
#include "core/sheets/text_input.h"
#include "core/wording/caution_words.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace littoral::ctl {

using namespace Qt::StringLiterals;

namespace {

constexpr int kMostWords = 64;

QString words(const char* text)
{
    return QCoreApplication::translate("littoralctl", text);
}

QString withUnit(const QString& text, const QString& unit)
{
    return unit.isEmpty() ? text : words("%1 %2").arg(text, unit);
}

QString listText()
{
    std::vector<QStringList> rows;
    for (const sheets::Sheet& sheet : sheets::sheets()) {
        rows.push_back({sheet.key, sheet.title, sheet.purpose});
    }
    return textTable({words("Sheet"), words("Title"), words("What for")}, rows) + u'\n' +
           words("littoralctl reckon SHEET shows what a sheet takes.") + u'\n';
}

/// How a blank may be left: its preset, "may be left out", or nothing when it must be given.
QString whenEmpty(const sheets::Input& input)
{
    if (!input.preset.isEmpty()) {
        return words("%1 if not given").arg(input.preset);
    }
    return input.optional ? words("may be left out") : words("needed");
}

QString rangeText(const sheets::Input& input)
{
    if (input.kind != sheets::InputKind::Choice) {
        return withUnit(
            words("%1 to %2").arg(QString::number(input.lowest, 'g', 6), QString::number(input.highest, 'g', 6)),
            input.unit);
    }
    QStringList codes;
    for (const sheets::Choice& choice : input.choices) {
        codes << choice.code;
    }
    return codes.join(u'|');
}

QString sheetText(const sheets::Sheet& sheet)
{
    std::vector<QStringList> rows;
    for (const sheets::Input& input : sheet.inputs) {
        rows.push_back({input.key, input.label, whenEmpty(input), rangeText(input)});
    }
    return words("%1: %2.").arg(sheet.title, sheet.purpose) + u"\n\n"_s +
           textTable({words("Name"), words("Meaning"), words("When empty"), words("Range")}, rows, 2) + u'\n' +
           words("For example: littoralctl reckon %1 %2").arg(sheet.key, sheet.example) + u'\n';
}

QString movesText(const sheets::Answer& answer)
{
    std::vector<QStringList> rows;
    for (const sheets::Move& move : answer.moves) {
        rows.push_back({move.label, move.before, withUnit(move.after, move.unit), move.note});
    }
    return rows.empty()
               ? QString()
               : u'\n' + textTable({words("What else moves"), words("Now"), words("Then"), words("Note")}, rows, 2);
}

QString answerText(const sheets::Sheet& sheet, const sheets::Answer& answer)
{
    QString text = sheet.title + u'\n';
    for (const QString& origin : answer.origins) {
        text += u"  "_s + origin + u'\n';
    }
    text += u"\n  "_s + answer.formula + u"\n  "_s + answer.figures + u"\n\n"_s;
    for (const wording::CautionText& caution : wording::cautionsBefore(facts::builtInFacts(), answer.cautions)) {
        text += words("Caution (%1): %2").arg(caution.id, wording::cautionText(caution)) + u"\n\n"_s;
    }
    std::vector<QStringList> rows;
    for (const sheets::Figure& figure : answer.results) {
        rows.push_back({figure.label, withUnit(figure.text, figure.unit), figure.range});
    }
    text += textTable({words("Result"), words("Value"), words("Range")}, rows, 2) + movesText(answer) + u'\n';
    for (const QString& note : answer.notes) {
        text += u"  "_s + note + u'\n';
    }
    return text + u"\n  "_s + words("Source: %1").arg(answer.source) + u'\n';
}

QJsonObject figureJson(const sheets::Figure& figure)
{
    QJsonObject object{
        {u"key"_s, figure.key}, {u"label"_s, figure.label}, {u"text"_s, figure.text}, {u"main"_s, figure.main}};
    if (!figure.isWords) {
        object.insert(u"value"_s, figure.value);
        object.insert(u"unit"_s, figure.unit);
    }
    if (figure.low && figure.high) {
        object.insert(u"low"_s, *figure.low);
        object.insert(u"high"_s, *figure.high);
    }
    return object;
}

QByteArray answerJson(const sheets::Answer& answer)
{
    QJsonArray results;
    for (const sheets::Figure& figure : answer.results) {
        results.append(figureJson(figure));
    }
    QJsonArray moves;
    for (const sheets::Move& move : answer.moves) {
        moves.append(QJsonObject{{u"label"_s, move.label},
                                 {u"unit"_s, move.unit},
                                 {u"before"_s, move.before},
                                 {u"after"_s, move.after},
                                 {u"note"_s, move.note}});
    }
    QJsonArray cautions;
    for (const wording::CautionText& caution : wording::wholeCautions(facts::builtInFacts(), answer.cautions)) {
        cautions.append(QJsonObject{{u"id"_s, caution.id}, {u"text"_s, wording::cautionText(caution)}});
    }
    return QJsonDocument(QJsonObject{{u"sheet"_s, answer.sheet},
                                     {u"formula"_s, answer.formula},
                                     {u"figures"_s, answer.figures},
                                     {u"results"_s, results},
                                     {u"moves"_s, moves},
                                     {u"notes"_s, QJsonArray::fromStringList(answer.notes)},
                                     {u"cautions"_s, cautions},
                                     {u"filled"_s, QJsonArray::fromStringList(answer.origins)},
                                     {u"source"_s, answer.source}})
        .toJson();
}

QByteArray listJson()
{
    QJsonArray all;
    for (const sheets::Sheet& sheet : sheets::sheets()) {
        QJsonArray inputs;
        for (const sheets::Input& input : sheet.inputs) {
            inputs.append(QJsonObject{{u"name"_s, input.key},
                                      {u"label"_s, input.label},
                                      {u"unit"_s, input.unit},
                                      {u"preset"_s, input.preset},
                                      {u"needed"_s, input.preset.isEmpty() && !input.optional}});
        }
        all.append(QJsonObject{{u"sheet"_s, sheet.key}, {u"title"_s, sheet.title}, {u"inputs"_s, inputs}});
    }
    return QJsonDocument(QJsonObject{{u"sheets"_s, all}}).toJson();
}

/// Puts the newest figures of a tank into the blanks that were left; the exit code when that failed.
std::optional<int> fill(Context& context, const Arguments& arguments, const sheets::Sheet& sheet,
                        sheets::Values& values)
{
    if (!arguments.isSet(u"tank"_s) && !arguments.isSet(u"store"_s)) {
        return std::nullopt;
    }
    if (!arguments.isSet(u"tank"_s) || !arguments.isSet(u"store"_s)) {
        return arguments.misused(context, words("--tank and --store go together."));
    }
    const OpenStore keeper = openStore(context, arguments.value(u"store"_s), store::Access::ReadOnly);
    if (!keeper) {
        return keeper.code;
    }
    const record::Tank* tank = findTank(context, keeper->row(), arguments.value(u"tank"_s));
    if (tank == nullptr) {
        return kRefused;
    }
    values = sheets::fillFromRecord(sheet, keeper->row(), tank->id, context.clock.now(), values);
    return std::nullopt;
}

} // namespace

int runReckon(Context& context, const QStringList& line)
{
    Arguments arguments(
        u"reckon [SHEET [NAME=VALUE...]] [--tank NAME --store FILE] [--json]"_s,
        words("Reckons one worksheet. Without a sheet it lists them all; a sheet alone shows what it takes. Bare "
              "numbers go to its inputs in order; a doubt may follow one, as in kh=4±0.5."),
        {u"littoralctl reckon co2 6.6 4"_s, u"littoralctl reckon target now=33 target=20 source=8 litres=470"_s,
         u"littoralctl reckon ammonia --tank \"Heron Reach\" --store row.littoral"_s});
    arguments.operand(u"SHEET"_s, words("The sheet, one word."));
    arguments.operand(u"NAME=VALUE"_s, words("Its inputs."));
    arguments.option(u"tank"_s, u"NAME"_s, words("Fill what is not given from this tank's newest readings."));
    arguments.option(u"store"_s, u"FILE"_s, words("The store the tank is in."));
    arguments.flag(u"json"_s, words("Print JSON instead of text."));
    if (const auto code = arguments.parse(context, line, 0, kMostWords)) {
        return *code;
    }
    QStringList typed = arguments.operands();
    if (typed.isEmpty()) {
        context.out << (arguments.json() ? QString::fromUtf8(listJson()) : listText());
        return kDone;
    }
    const auto named = sheets::parseLine(typed.first());
    if (!named) {
        return context.fail(named.error());
    }
    typed.removeFirst();
    const sheets::Sheet& sheet = *named->sheet;
    if (typed.isEmpty() && !arguments.isSet(u"tank"_s) && !arguments.isSet(u"store"_s) && !arguments.json()) {
        context.out << sheetText(sheet);
        return kDone;
    }
    const auto parsed = sheets::parseValues(sheet, typed);
    if (!parsed) {
        return context.fail(parsed.error());
    }
    sheets::Values values = *parsed;
    if (const auto code = fill(context, arguments, sheet, values)) {
        return *code;
    }
    const auto answer = sheets::evaluate(sheet, values);
    if (!answer) {
        return context.fail(answer.error());
    }
    context.out << (arguments.json() ? QString::fromUtf8(answerJson(*answer)) : answerText(sheet, *answer));
    return kDone;
}

} // namespace littoral::ctl
