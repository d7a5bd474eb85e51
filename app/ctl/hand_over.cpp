// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/hand_over.h"

#include "app/ctl/one_tank.h"
#include "app/ctl/verbs.h"
#include "core/facts/fact_book.h"
#include "core/wording/finding_sentences.h"
#include "core/wording/hand_over_words.h"
#include "core/wording/numbers.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <cmath>
#include <set>

namespace littoral::ctl {

using namespace Qt::StringLiterals;
using facade::HandOver;
using facade::HandOverTask;
using facade::HelperSheet;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("littoralctl", text);
}

QString taskLine(const HandOverTask& task, const QDate& today)
{
    const QString tank = task.tank.isEmpty() ? words("The whole row") : task.tank;
    return u"  %1  %2: %3. %4\n"_s.arg(wording::weekdayText(task.day, today), tank, task.what, task.why);
}

QString listText(const QString& head, const std::vector<HandOverTask>& tasks, const QDate& today)
{
    QString text = u'\n' + head + u'\n';
    for (const HandOverTask& task : tasks) {
        text += taskLine(task, today);
    }
    return tasks.empty() ? text + u"  "_s + words("Nothing.") + u'\n' : text;
}

QString linesText(const QString& head, const QStringList& lines)
{
    QString text = u"  "_s + head + u'\n';
    for (const QString& line : lines) {
        text += u"    "_s + line + u'\n';
    }
    return lines.isEmpty() ? QString() : text;
}

/// The cautions stand before the work; one that has been printed is only named again.
QString cautionsText(const HelperSheet& sheet, const facts::FactBook& book, std::set<QString>& printed)
{
    QStringList lines;
    for (const QString& id : sheet.cautions) {
        const facts::Caution* caution = book.caution(id);
        if (caution == nullptr) {
            continue;
        }
        const QString title = wording::factText(caution->title);
        if (!printed.insert(id).second) {
            lines << words("%1 %2: as above.").arg(id, title);
            continue;
        }
        lines << words("%1 %2").arg(id, title);
        for (const facts::CautionPoint& point : caution->points) {
            lines << u"- "_s + wording::factText(point.text);
        }
    }
    return linesText(words("Cautions"), lines);
}

QString sheetText(const HelperSheet& sheet, const facts::FactBook& book, std::set<QString>& printed, const QDate& today)
{
    QString text = u'\n' + words("Helper's sheet: %1").arg(sheet.name) + u'\n';
    text += linesText(words("When all is well"), sheet.known);
    text += cautionsText(sheet, book, printed);
    text += linesText(words("Every day"), sheet.daily);
    QStringList tasks;
    for (const HandOverTask& task : sheet.tasks) {
        tasks << words("%1: %2. %3").arg(wording::weekdayText(task.day, today), task.what, task.howMuch).trimmed()
              << u"  "_s + task.how;
    }
    text += linesText(words("On its day"), tasks);
    text += linesText(words("Do not"), sheet.doNot);
    QStringList signs;
    for (const facade::CallSign& sign : sheet.signs) {
        signs << sign.sign << u"  "_s + sign.steps.join(u' ');
    }
    return text + linesText(words("Call when"), signs);
}

QString handOverText(const HandOver& over, const facts::FactBook& book)
{
    const QDate today = over.today;
    QString text = words("Journey %1").arg(wording::journeyTitle(over.journey, today)) + u'\n';
    for (const QString& line : over.call) {
        text += u"  "_s + line + u'\n';
    }
    text += u'\n' + words("To prepare") + u'\n';
    for (const facade::Preparation& one : over.preparations) {
        const QString days = one.from == one.until ? wording::weekdayText(one.from, today)
                                                   : wording::dateRangeText(one.from, one.until, today);
        const QString what = one.tank.isEmpty() ? one.text : words("%1: %2").arg(one.tank, one.text);
        text += u"  %1  %2\n"_s.arg(days, what);
        text += one.remark.isEmpty() ? QString() : u"      "_s + one.remark + u'\n';
    }
    text += listText(words("Before leaving"), over.before, today);
    text += listText(words("Waits until the return"), over.after, today);
    text += linesText(words("On the day of return"), over.onReturn);
    text += words("The helper's tasks: %1 minutes and %2 over the journey, daily looks not counted.")
                .arg(QString::number(over.helperMinutes()), wording::litresText(over.helperLitres())) +
            u'\n';
    std::set<QString> printed;
    for (const HelperSheet& sheet : over.sheets) {
        text += sheetText(sheet, book, printed, today);
    }
    return text + u'\n' + words("Source: %1").arg(over.source) + u' ' + over.deferral + u'\n';
}

QJsonObject taskJson(const HandOverTask& task)
{
    QJsonObject object{{u"tank"_s, task.tank},
                       {u"day"_s, task.day.toString(Qt::ISODate)},
                       {u"due"_s, task.item.due.toString(Qt::ISODate)},
                       {u"work"_s, task.item.templateKey},
                       {u"what"_s, task.what},
                       {u"minutes"_s, task.item.minutes},
                       {u"why"_s, task.why}};
    if (task.item.litres) {
        object.insert(u"litres"_s, QString::number(*task.item.litres, 'f', 1).toDouble());
    }
    if (task.hand == facade::Hand::Helper) {
        object.insert(u"how"_s, task.how);
        object.insert(u"how_much"_s, task.howMuch);
        object.insert(u"cautions"_s, QJsonArray::fromStringList(task.cautions));
    }
    return object;
}

QJsonArray tasksJson(const std::vector<HandOverTask>& tasks)
{
    QJsonArray all;
    for (const HandOverTask& task : tasks) {
        all.append(taskJson(task));
    }
    return all;
}

QJsonObject sheetJson(const HelperSheet& sheet)
{
    QJsonArray signs;
    for (const facade::CallSign& sign : sheet.signs) {
        signs.append(QJsonObject{{u"sign"_s, sign.sign},
                                 {u"steps"_s, QJsonArray::fromStringList(sign.steps)},
                                 {u"caution"_s, sign.caution}});
    }
    return {{u"tank"_s, sheet.name},
            {u"age_days"_s, sheet.ageDays},
            {u"young"_s, sheet.young},
            {u"known"_s, QJsonArray::fromStringList(sheet.known)},
            {u"daily"_s, QJsonArray::fromStringList(sheet.daily)},
            {u"tasks"_s, tasksJson(sheet.tasks)},
            {u"do_not"_s, QJsonArray::fromStringList(sheet.doNot)},
            {u"call_when"_s, signs},
            {u"cautions"_s, QJsonArray::fromStringList(sheet.cautions)}};
}

QByteArray handOverJson(const HandOver& over)
{
    QJsonArray preparations;
    for (const facade::Preparation& one : over.preparations) {
        preparations.append(QJsonObject{{u"key"_s, one.key},
                                        {u"tank"_s, one.tank},
                                        {u"from"_s, one.from.toString(Qt::ISODate)},
                                        {u"until"_s, one.until.toString(Qt::ISODate)},
                                        {u"text"_s, one.text},
                                        {u"broken"_s, one.broken},
                                        {u"remark"_s, one.remark}});
    }
    QJsonArray sheets;
    for (const HelperSheet& sheet : over.sheets) {
        sheets.append(sheetJson(sheet));
    }
    QJsonArray days;
    for (const facade::HelperDay& day : over.days) {
        days.append(QJsonObject{{u"day"_s, day.day.toString(Qt::ISODate)},
                                {u"minutes"_s, day.minutes},
                                {u"litres"_s, QString::number(day.litres, 'f', 1).toDouble()}});
    }
    return QJsonDocument(QJsonObject{{u"leaves"_s, over.journey.leaves.toString(Qt::ISODate)},
                                     {u"returns"_s, over.journey.returns.toString(Qt::ISODate)},
                                     {u"helper"_s, over.journey.helper},
                                     {u"call"_s, QJsonArray::fromStringList(over.call)},
                                     {u"preparations"_s, preparations},
                                     {u"before"_s, tasksJson(over.before)},
                                     {u"sheets"_s, sheets},
                                     {u"after"_s, tasksJson(over.after)},
                                     {u"days"_s, days},
                                     {u"on_return"_s, QJsonArray::fromStringList(over.onReturn)}})
        .toJson();
}

/// The journey of the line, or the one in the store when no days are given.
std::optional<record::Journey> journeyOf(Context& context, const Arguments& arguments, const record::Row& row,
                                         int& code)
{
    bool bad = false;
    const auto from = arguments.instant(context, u"from"_s, bad);
    const auto to = arguments.instant(context, u"to"_s, bad);
    if (bad) {
        code = kUsage;
        return std::nullopt;
    }
    record::Journey journey;
    if (!from && !to) {
        const record::Journey* kept = facade::journeyAround(row, context.clock.now().localDate());
        if (kept == nullptr) {
            code = arguments.misused(context, words("No journey is in the store: give --from and --to."));
            return std::nullopt;
        }
        journey = *kept;
    } else if (!from || !to) {
        code = arguments.misused(context, words("--from and --to go together."));
        return std::nullopt;
    } else {
        journey.leaves = from->localDate();
        journey.returns = to->localDate();
    }
    if (arguments.isSet(u"helper"_s)) {
        journey.helper = arguments.value(u"helper"_s);
    }
    if (arguments.isSet(u"phone"_s)) {
        journey.phone = arguments.value(u"phone"_s);
    }
    return journey;
}

} // namespace

int runHandOver(Context& context, const QStringList& line)
{
    Arguments arguments(
        u"hand-over FILE [--from DATE --to DATE] [--helper NAME] [--phone TEXT] [--keep] [--text | --json]"_s,
        words("Splits the work of a journey: what is to be done before leaving, what a helper does, what waits; with a "
              "helper's sheet for each tank. Without days the journey in the store is taken."),
        {u"littoralctl hand-over row.littoral --from 2026-12-23 --to 2027-01-03"_s,
         u"littoralctl hand-over row.littoral --from 2026-12-23 --to 2027-01-03 --helper Ida --keep"_s,
         u"littoralctl hand-over row.littoral --json"_s});
    arguments.operand(u"FILE"_s, words("The store, a file ending in .littoral."));
    arguments.option(u"from"_s, u"DATE"_s, words("The day of leaving."));
    arguments.option(u"to"_s, u"DATE"_s, words("The day of return."));
    arguments.option(u"helper"_s, u"NAME"_s, words("Who helps."));
    arguments.option(u"phone"_s, u"TEXT"_s, words("Whom to call; several are parted by a semicolon."));
    arguments.flag(u"keep"_s, words("Keep the journey in the store."));
    arguments.flag(u"text"_s, words("Print text, as without it."));
    arguments.flag(u"json"_s, words("Print JSON instead of text."));
    if (const auto code = arguments.parse(context, line, 1, 1)) {
        return *code;
    }
    const bool keep = arguments.isSet(u"keep"_s);
    const OpenStore keeper =
        openStore(context, arguments.operands()[0], keep ? store::Access::ReadWrite : store::Access::ReadOnly);
    if (!keeper) {
        return keeper.code;
    }
    int code = kDone;
    const auto journey = journeyOf(context, arguments, keeper->row(), code);
    if (!journey) {
        return code;
    }
    const auto over = facade::handOver(keeper->row(), *journey, context.clock.now());
    if (!over) {
        return context.fail(over.error());
    }
    if (keep) {
        if (const auto kept = facade::keepJourney(*keeper.keeper, *journey); !kept) {
            return context.fail(kept.error());
        }
    }
    if (arguments.json()) {
        context.out << QString::fromUtf8(handOverJson(*over));
    } else {
        context.out << handOverText(*over, facts::factsFor(keeper->row()).book);
    }
    return kDone;
}

} // namespace littoral::ctl
