// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/due.h"

#include "app/ctl/one_tank.h"
#include "app/ctl/text_table.h"
#include "app/ctl/verbs.h"
#include "core/care/easing.h"
#include "core/facade/due_calendar.h"
#include "core/facade/ease_desk.h"
#include "core/facade/row_load.h"
#include "core/facts/entry_cautions.h"
#include "core/wording/caution_words.h"
#include "core/wording/numbers.h"
#include "core/wording/sentences.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>
#include <cmath>

namespace littoral::ctl {

using namespace Qt::StringLiterals;

namespace {

constexpr int kDaysShown = 7;
constexpr int kMostDays = 92;

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

/// The forecast's odds at the looser cadence, asked only where the record would bear easing; then the question with
/// them.
std::optional<care::DueItem> easeQuestionOf(const record::Row& row, const record::LayoutRecord& layout,
                                            const record::Moment& now)
{
    const record::LayoutId id = layout.layout.id;
    const auto candidate = care::easeCandidate(row, id, now);
    if (!candidate) {
        return std::nullopt;
    }
    ForecastQuestion question;
    question.asOf = now;
    question.causes = false;
    const std::vector<TankForecast> all = runForecasts(row, {layout.layout.tank}, question);
    if (all.front().error) {
        return std::nullopt;
    }
    const auto odds = facade::oddsAtLooser(all.front().result(), candidate->looser,
                                           care::easeLimits(care::stockAt(layout, now).any()));
    return odds ? care::easeQuestion(row, id, now, *odds) : std::nullopt;
}

std::vector<TankWork> workOf(const record::Row& row, const record::Moment& now, const record::Tank* only, int days)
{
    const QDate until = now.localDate().addDays(days);
    std::vector<TankWork> all;
    for (const record::Tank& tank : row.tanks) {
        const record::LayoutRecord* layout = row.currentLayout(tank.id, now);
        if (layout == nullptr || (only != nullptr && tank.id != only->id)) {
            continue;
        }
        all.push_back({tank.name, care::dueWork(row, layout->layout.id, now, until)});
        if (auto question = easeQuestionOf(row, *layout, now)) {
            all.back().items.push_back(std::move(*question));
        }
    }
    std::vector<care::DueItem> shared = only == nullptr ? care::rowWork(row, now, until) : std::vector<care::DueItem>();
    if (!shared.empty()) {
        all.push_back({QString(), std::move(shared)});
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

QJsonArray loadJson(const facade::RowLoad& load)
{
    QJsonArray days;
    for (const facade::LoadDay& day : load.days) {
        QJsonObject object{{u"day"_s, day.day.toString(Qt::ISODate)},
                           {u"tasks"_s, day.tasks},
                           {u"minutes"_s, day.minutes},
                           {u"litres"_s, QString::number(day.litres, 'f', 1).toDouble()},
                           {u"collides"_s, day.collides}};
        if (day.collides) {
            object.insert(u"large"_s, QJsonArray::fromStringList(day.large));
        }
        if (day.freerDay) {
            object.insert(u"freer_day"_s, day.freerDay->toString(Qt::ISODate));
        }
        days.append(object);
    }
    return days;
}

QByteArray dueJson(const std::vector<TankWork>& all, const std::optional<facade::RowLoad>& load, const QDate& today)
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
            if (item.amount) {
                object.insert(u"amount"_s, QString::number(*item.amount, 'g', 3).toDouble());
                object.insert(u"unit"_s, item.unit);
            }
            if (item.litres) {
                object.insert(u"litres"_s, QString::number(*item.litres, 'f', 1).toDouble());
            }
            items.append(object);
        }
    }
    QJsonObject object{{u"on"_s, today.toString(Qt::ISODate)}, {u"work"_s, items}};
    if (load) {
        object.insert(u"days"_s, loadJson(*load));
    }
    return QJsonDocument(object).toJson();
}

QString loadText(const facade::RowLoad& load, const QDate& today)
{
    std::vector<QStringList> rows;
    for (const facade::LoadDay& day : load.days) {
        rows.push_back({wording::weekdayText(day.day, today), QString::number(day.tasks), QString::number(day.minutes),
                        QString::number(std::lround(day.litres)),
                        wording::collisionText(day.large, day.freerDay, today)});
    }
    return textTable({words("Day"), words("Tasks"), words("Minutes"), words("Litres"), QString()}, rows, 2);
}

QString dueText(const std::vector<TankWork>& all, const std::optional<facade::RowLoad>& load, const QDate& today,
                int days)
{
    QString text;
    for (const TankWork& tank : all) {
        text +=
            (text.isEmpty() ? QString() : u"\n"_s) + (tank.tank.isEmpty() ? words("The whole row") : tank.tank) + u'\n';
        if (tank.items.empty()) {
            text += u"  "_s + words("Nothing is due within %1 days.").arg(days) + u'\n';
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
    if (text.isEmpty()) {
        return words("There are no tanks in this store yet.") + u'\n';
    }
    return load ? text + u'\n' + words("Day by day, all tanks") + u'\n' + loadText(*load, today) : text;
}

/// To the file, or to stdout when it is "-". The exit code.
int writeCalendar(Context& context, const QByteArray& calendar, const QString& path)
{
    if (path == u"-"_s) {
        context.out << QString::fromUtf8(calendar);
        return kDone;
    }
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(calendar) != calendar.size() || !file.commit()) {
        return context.fail(words("%1: it cannot be written: %2").arg(path, file.errorString()), kFailed);
    }
    return kDone;
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
    Arguments arguments(
        u"due FILE [--tank NAME] [--on DATE] [--days N] [--json | --csv | --ics FILE]"_s,
        words("Shows for each tank what is overdue, due, and due in the next seven days, and why. With --days also the "
              "minutes and litres of each day over all tanks, and the days on which large water changes collide."),
        {u"littoralctl due row.littoral"_s, u"littoralctl due row.littoral --on 2026-12-24 --csv"_s,
         u"littoralctl due row.littoral --days 14"_s, u"littoralctl due row.littoral --days 30 --ics due.ics"_s});
    declareTank(arguments, Naming::Optional);
    arguments.option(u"on"_s, u"DATE"_s, words("As it stands on that day; today if not given."));
    arguments.option(u"days"_s, u"N"_s, words("So many days ahead, 1 to 92, with the load of each day."));
    arguments.option(u"ics"_s, u"FILE"_s, words("Write an iCalendar file; - for standard output."));
    arguments.dataFormats();
    if (const auto code = arguments.parse(context, line, 1, 1)) {
        return *code;
    }
    bool bad = false;
    const auto wanted = arguments.number(context, u"days"_s, 1, kMostDays, bad);
    const std::optional<record::Moment> now = momentAsked(context, arguments);
    if (!now || bad) {
        return kUsage;
    }
    if (arguments.isSet(u"ics"_s) && (arguments.json() || arguments.csv())) {
        return arguments.misused(context, words("Choose one of --json, --csv and --ics."));
    }
    const NamedTank named = openNamedTank(context, arguments, store::Access::ReadOnly, Naming::Optional);
    if (!named) {
        return named.code;
    }
    const int days = static_cast<int>(wanted.value_or(kDaysShown));
    const QDate today = now->localDate();
    if (arguments.isSet(u"ics"_s)) {
        const QByteArray calendar = facade::dueCalendar(named.row(), *now, today.addDays(days),
                                                        named.tank == nullptr ? record::TankId{} : named.tank->id);
        return writeCalendar(context, calendar, arguments.value(u"ics"_s));
    }
    const std::vector<TankWork> all = workOf(named.row(), *now, named.tank, days);
    const auto load = wanted ? std::optional(facade::rowLoad(named.row(), *now, days)) : std::nullopt;
    if (arguments.json()) {
        context.out << QString::fromUtf8(dueJson(all, load, today));
    } else if (arguments.csv()) {
        context.out << dueCsv(all, today);
    } else {
        context.out << dueText(all, load, today, days);
    }
    return kDone;
}

} // namespace littoral::ctl
