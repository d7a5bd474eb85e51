// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/due.h"

#include "app/ctl/arguments.h"
#include "app/ctl/text_table.h"
#include "app/ctl/verbs.h"
#include "core/facts/entry_cautions.h"
#include "core/wording/caution_words.h"
#include "core/wording/sentences.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace littoral::ctl {

using namespace Qt::StringLiterals;

namespace {

constexpr int kDaysShown = 7;

QString words(const char* text)
{
    return QCoreApplication::translate("littoralctl", text);
}

struct TankWork
{
    QString tank;
    std::vector<care::DueItem> items;
};

/// "overdue", "due" today or in its grace, "coming".
QString stateCode(const care::DueItem& item, const QDate& today)
{
    return item.overdue ? u"overdue"_s : item.due <= today ? u"due"_s : u"coming"_s;
}

QString whyText(const care::DueItem& item, const QDate& today)
{
    return wording::dueReasons(item, today).join(u' ');
}

std::vector<TankWork> workOf(const record::Row& row, const record::Moment& now, const QString& onlyTank)
{
    std::vector<TankWork> all;
    for (const record::Tank& tank : row.tanks) {
        const record::LayoutRecord* layout = row.currentLayout(tank.id, now);
        if (layout != nullptr && (onlyTank.isEmpty() || tank.name == onlyTank)) {
            all.push_back({tank.name, care::dueWork(row, layout->layout.id, now, now.localDate().addDays(kDaysShown))});
        }
    }
    return all;
}

QString dueCsv(const std::vector<TankWork>& all, const QDate& today)
{
    std::vector<QStringList> rows;
    for (const TankWork& tank : all) {
        for (const care::DueItem& item : tank.items) {
            rows.push_back({tank.tank, stateCode(item, today), item.due.toString(Qt::ISODate),
                            QString::number(item.daysOver), item.templateKey, wording::dueTitle(item),
                            item.fraction ? QString::number(*item.fraction, 'g', 3) : QString(),
                            item.litres ? QString::number(*item.litres, 'f', 1) : QString(),
                            QString::number(item.minutes), QString::number(item.priority),
                            item.snoozed ? u"yes"_s : u"no"_s, whyText(item, today)});
        }
    }
    return csvTable({u"tank"_s, u"state"_s, u"due"_s, u"days_over"_s, u"work"_s, u"title"_s, u"fraction"_s, u"litres"_s,
                     u"minutes"_s, u"priority"_s, u"snoozed"_s, u"why"_s},
                    rows);
}

QByteArray dueJson(const std::vector<TankWork>& all, const QDate& today)
{
    QJsonArray items;
    for (const TankWork& tank : all) {
        for (const care::DueItem& item : tank.items) {
            QJsonObject object{
                {u"tank"_s, tank.tank},
                {u"state"_s, stateCode(item, today)},
                {u"due"_s, item.due.toString(Qt::ISODate)},
                {u"days_over"_s, item.daysOver},
                {u"work"_s, item.templateKey},
                {u"title"_s, wording::dueTitle(item)},
                {u"minutes"_s, item.minutes},
                {u"priority"_s, item.priority},
                {u"snoozed"_s, item.snoozed},
                {u"cautions"_s, QJsonArray::fromStringList(facts::cautionsFor(facts::builtInFacts(), item))},
                {u"why"_s, whyText(item, today)}};
            if (item.fraction) {
                object.insert(u"fraction"_s, QString::number(*item.fraction, 'g', 3).toDouble());
            }
            if (item.litres) {
                object.insert(u"litres"_s, QString::number(*item.litres, 'f', 1).toDouble());
            }
            items.append(object);
        }
    }
    return QJsonDocument(QJsonObject{{u"on"_s, today.toString(Qt::ISODate)}, {u"work"_s, items}}).toJson();
}

QString dueText(const std::vector<TankWork>& all, const QDate& today)
{
    QString text;
    for (const TankWork& tank : all) {
        text += (text.isEmpty() ? QString() : u"\n"_s) + tank.tank + u'\n';
        if (tank.items.empty()) {
            text += u"  "_s + words("Nothing is due within %1 days.").arg(kDaysShown) + u'\n';
        }
        for (const care::DueItem& item : tank.items) {
            text += u"  "_s + wording::dueWhen(item, today).leftJustified(16) + wording::dueTitle(item) + u'\n';
            const QString why = whyText(item, today);
            text += why.isEmpty() ? QString() : QString(18, u' ') + why + u'\n';
            const QString caution =
                wording::cautionLine(facts::builtInFacts(), facts::cautionsFor(facts::builtInFacts(), item));
            text += caution.isEmpty() || item.due > today ? QString() : QString(18, u' ') + caution + u'\n';
        }
    }
    return text.isEmpty() ? words("There are no tanks in this store yet.") + u'\n' : text;
}

/// The clock's now, or the day asked about.
std::optional<record::Moment> momentAsked(Context& context, const Arguments& arguments)
{
    if (!arguments.isSet(u"on"_s)) {
        return context.clock.now();
    }
    bool bad = false;
    const auto moment = arguments.instant(context, u"on"_s, bad);
    return bad ? std::nullopt : moment;
}

} // namespace

int runDue(Context& context, const QStringList& line)
{
    Arguments arguments(u"due FILE [--tank NAME] [--on DATE] [--json | --csv]"_s,
                        words("Shows for each tank what is overdue, due, and due in the next seven days, and why."),
                        {u"littoralctl due row.littoral"_s, u"littoralctl due row.littoral --on 2026-12-24 --csv"_s});
    arguments.operand(u"FILE"_s, words("The store, a file ending in .littoral."));
    arguments.option(u"tank"_s, u"NAME"_s, words("Only this tank."));
    arguments.option(u"on"_s, u"DATE"_s, words("As it stands on that day; today if not given."));
    arguments.dataFormats();
    if (const auto code = arguments.parse(context, line, 1, 1)) {
        return *code;
    }
    const std::optional<record::Moment> now = momentAsked(context, arguments);
    if (!now) {
        return kUsage;
    }
    const OpenStore keeper = openStore(context, arguments.operands()[0], store::Access::ReadOnly);
    if (!keeper) {
        return keeper.code;
    }
    QString only;
    if (arguments.isSet(u"tank"_s)) {
        const record::Tank* tank = findTank(context, keeper->row(), arguments.value(u"tank"_s));
        if (tank == nullptr) {
            return kRefused;
        }
        only = tank->name;
    }
    const std::vector<TankWork> all = workOf(keeper->row(), *now, only);
    if (arguments.json()) {
        context.out << QString::fromUtf8(dueJson(all, now->localDate()));
    } else if (arguments.csv()) {
        context.out << dueCsv(all, now->localDate());
    } else {
        context.out << dueText(all, now->localDate());
    }
    return kDone;
}

} // namespace littoral::ctl
