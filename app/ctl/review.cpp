// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/ctl/one_tank.h"
#include "app/ctl/verbs.h"
#include "core/care/age.h"
#include "core/facade/reset_forecast.h"
#include "core/wording/finding_sentences.h"
#include "core/wording/numbers.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QMap>
#include <algorithm>
#include <cmath>
#include <optional>

namespace littoral::ctl {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("littoralctl", text);
}

struct Point
{
    QString parameter;
    findings::ChangePoint change;
};

struct Review
{
    QString tank;
    int age = 0;
    QDate today;
    bool onsetFound = false; ///< false: nothing went wrong on record, the time asked about stands in for it
    findings::ChangeReview changes;
    std::vector<Point> points;
    std::vector<findings::Exposure> exposures;
    std::optional<facade::ResetForecast> reset; ///< of a layout that runs, if wanted
};

Review reviewOf(const record::Row& row, const record::LayoutRecord& layout, const record::Moment& now,
                const std::optional<record::Moment>& onset)
{
    Review review;
    review.today = now.localDate();
    review.age = care::ageDays(layout.layout, review.today);
    review.onsetFound = onset.has_value();
    review.changes = findings::whatChanged(row, layout, onset.value_or(now));
    for (const record::Parameter& parameter : record::parameters()) {
        for (const findings::ChangePoint& point : findings::changePoints(layout, parameter.key, now)) {
            review.points.push_back({parameter.key, point});
        }
    }
    for (const findings::Limit& limit : findings::limitsFor(row, layout, now)) {
        findings::Exposure exposure = findings::exposure(row, layout, limit, layout.layout.flooded, now);
        if (exposure.readings > 0) {
            review.exposures.push_back(std::move(exposure));
        }
    }
    return review;
}

QString onsetText(const Review& review)
{
    const QString day = wording::dateText(review.changes.onset.localDate(), review.today);
    return review.onsetFound ? words("Trouble began on %1.").arg(day)
                             : words("Nothing on record went wrong; the days before %1 are looked at.").arg(day);
}

const QMap<QString, record::StartMethod>& starts()
{
    static const QMap<QString, record::StartMethod> all{{u"new-media"_s, record::StartMethod::NewMedia},
                                                        {u"mature-media"_s, record::StartMethod::MatureMedia},
                                                        {u"starter"_s, record::StartMethod::Starter}};
    return all;
}

std::optional<record::StartMethod> startOf(const QString& code)
{
    const auto found = starts().find(code.isEmpty() ? u"new-media"_s : code);
    return found == starts().end() ? std::nullopt : std::optional(*found);
}

QString resetText(const facade::ResetForecast& made)
{
    const facade::ResetTable table = facade::resetTable(made);
    QString text = u'\n' + words("Carry on, or start afresh: both forecast") + u"\n  "_s + table.headline + u'\n';
    for (const QStringList& row : table.rows) {
        text += u"  "_s +
                words("%1: carrying on %2, changes until then %3; starting afresh %4, changes until then %5")
                    .arg(row.value(0), row.value(1), row.value(2), row.value(3), row.value(4)) +
                u'\n';
    }
    for (const QString& sentence : table.sentences) {
        text += u"  "_s + sentence + u'\n';
    }
    return text;
}

QString reviewText(const Review& review)
{
    QString text = words("%1, day %2").arg(review.tank).arg(review.age) + u'\n' + onsetText(review) + u'\n';
    text += u'\n' +
            words("What changed from %1 to %2, largest first")
                .arg(wording::dateText(review.changes.from.localDate(), review.today),
                     wording::dateText(review.changes.onset.localDate(), review.today)) +
            u'\n';
    if (review.changes.changes.empty()) {
        text += u"  "_s + words("Nothing that stands apart from this layout's own record.") + u'\n';
    }
    bool reading = false;
    for (const findings::Change& change : review.changes.changes) {
        if (!change.wasDone() && !reading) {
            text += u"  "_s + words("In the readings:") + u'\n';
            reading = true;
        }
        text += u"  %1 (%2)\n"_s.arg(wording::changeText(change, review.today), wording::changeSize(change));
    }
    text += words("Coming before is not causing: it takes dose, order in time and a way in which it acts.") + u'\n';
    text += u'\n' + words("Change points in the readings (Pettitt's test)") + u'\n';
    if (review.points.empty()) {
        text += u"  "_s + words("None found, or too few readings.") + u'\n';
    }
    for (const Point& point : review.points) {
        text += u"  "_s + wording::changePointText(point.parameter, point.change, review.today) + u'\n';
    }
    text += u'\n' + words("Exposure since flooding, straight lines between readings") + u'\n';
    if (review.exposures.empty()) {
        text += u"  "_s + words("No readings to reckon it from.") + u'\n';
    }
    for (const findings::Exposure& exposure : review.exposures) {
        text += u"  "_s + wording::exposureText(exposure, review.today) + u'\n';
    }
    return review.reset ? text + resetText(*review.reset) : text;
}

double rounded(double value)
{
    return std::round(value * 1000.0) / 1000.0;
}

QJsonArray changesJson(const Review& review)
{
    QJsonArray all;
    for (const findings::Change& change : review.changes.changes) {
        all.append(QJsonObject{{u"done"_s, change.wasDone()},
                               {u"key"_s, change.key},
                               {u"text"_s, wording::changeText(change, review.today)},
                               {u"before"_s, rounded(change.before)},
                               {u"after"_s, rounded(change.after)},
                               {u"z"_s, rounded(change.z)},
                               {u"own_spread"_s, change.ownSpread},
                               {u"first"_s, change.first.toIso()}});
    }
    return all;
}

QJsonObject wayJson(const facade::ResetWay& way)
{
    const auto day = [&](double age) {
        return std::isfinite(age) ? QJsonValue(rounded(std::max(0.0, age - way.ageNow))) : QJsonValue();
    };
    QJsonArray gates;
    for (const facade::ResetGate& gate : way.gates) {
        gates.append(
            QJsonObject{{u"key"_s, gate.key},
                        {u"days"_s, QJsonArray{day(gate.odds.day[1]), day(gate.odds.day[3]), day(gate.odds.day[5])}},
                        {u"not_by_last"_s, rounded(gate.odds.notByLast)},
                        {u"changes"_s, rounded(gate.changes)},
                        {u"litres"_s, rounded(gate.litres)}});
    }
    return {{u"fitted"_s, way.fitted},
            {u"readings"_s, way.readings},
            {u"changes"_s, rounded(way.changes)},
            {u"litres"_s, rounded(way.litres)},
            {u"gates"_s, gates},
            {u"assumed"_s, QJsonArray::fromStringList(way.assumed)},
            {u"learned"_s, QJsonArray::fromStringList(way.learned)}};
}

QJsonObject resetJson(const facade::ResetForecast& made)
{
    return {{u"start"_s, starts().key(made.start)},
            {u"window_days"_s, facade::kResetWindow_d},
            {u"keep"_s, wayJson(made.keep)},
            {u"fresh"_s, wayJson(made.fresh)}};
}

QByteArray reviewJson(const Review& review)
{
    QJsonArray points;
    for (const Point& point : review.points) {
        points.append(QJsonObject{{u"parameter"_s, point.parameter},
                                  {u"before"_s, point.change.before.toIso()},
                                  {u"after"_s, point.change.after.toIso()},
                                  {u"level_before"_s, rounded(point.change.levelBefore)},
                                  {u"level_after"_s, rounded(point.change.levelAfter)},
                                  {u"k"_s, point.change.statistic},
                                  {u"p"_s, point.change.probability}});
    }
    QJsonArray exposures;
    for (const findings::Exposure& exposure : review.exposures) {
        exposures.append(QJsonObject{{u"parameter"_s, exposure.limit.parameter},
                                     {u"limit"_s, rounded(exposure.limit.value)},
                                     {u"above"_s, exposure.limit.above},
                                     {u"source"_s, wording::factText(exposure.limit.source)},
                                     {u"hours"_s, rounded(exposure.hours)},
                                     {u"hours_low"_s, rounded(exposure.hoursLow)},
                                     {u"hours_high"_s, rounded(exposure.hoursHigh)},
                                     {u"hours_read"_s, rounded(exposure.readHours)},
                                     {u"hours_not_read"_s, rounded(exposure.gapHours)},
                                     {u"worst"_s, rounded(exposure.worst)}});
    }
    QJsonObject object{{u"tank"_s, review.tank},
                       {u"on"_s, review.today.toString(Qt::ISODate)},
                       {u"onset"_s, review.changes.onset.toIso()},
                       {u"onset_found"_s, review.onsetFound},
                       {u"from"_s, review.changes.from.toIso()},
                       {u"changes"_s, changesJson(review)},
                       {u"change_points"_s, points},
                       {u"exposures"_s, exposures}};
    if (review.reset) {
        object[u"reset"_s] = resetJson(*review.reset);
    }
    return QJsonDocument(object).toJson();
}

Arguments reviewArguments()
{
    return {u"review FILE --tank NAME [--onset DATE] [--start METHOD] [--no-reset] [--json]"_s,
            words("Reviews a tank: what changed in the 21 days before trouble began, where its readings changed "
                  "level, and the hours it spent beyond limits."),
            {u"littoralctl review row.littoral --tank \"Fen Corner\""_s,
             u"littoralctl review row.littoral --tank Sill --onset 2026-11-02 --json"_s}};
}

void declareOptions(Arguments& arguments)
{
    declareTank(arguments);
    arguments.option(u"onset"_s, u"DATE"_s, words("When trouble began; found in the record if not given."));
    arguments.option(u"start"_s, u"METHOD"_s,
                     words("How a fresh start would begin: new-media (if not given), mature-media or starter."));
    arguments.flag(u"no-reset"_s, words("Do not forecast carrying on against starting afresh."));
    arguments.flag(u"json"_s, words("Print JSON instead of text."));
}

} // namespace

int runReview(Context& context, const QStringList& line)
{
    Arguments arguments = reviewArguments();
    declareOptions(arguments);
    if (const auto code = arguments.parse(context, line, 1, 1)) {
        return *code;
    }
    bool bad = false;
    std::optional<record::Moment> onset;
    if (arguments.isSet(u"onset"_s)) {
        onset = arguments.instant(context, u"onset"_s, bad);
    }
    if (bad) {
        return kUsage;
    }
    NamedTank named = openNamedTank(context, arguments, store::Access::ReadOnly);
    const record::Moment now = context.clock.now();
    const record::LayoutRecord* layout = named ? layoutOf(context, named, onset.value_or(now)) : nullptr;
    if (layout == nullptr) {
        return named.code;
    }
    const record::Moment until = layout->layout.ended ? std::min(*layout->layout.ended, now) : now;
    if (!onset) {
        onset = findings::onsetOf(*layout, until);
    } else if (*onset < layout->layout.flooded) {
        return context.fail(words("That is before the layout was flooded."), kRefused);
    }
    Review review = reviewOf(named.row(), *layout, until, onset);
    review.tank = named.tank->name;
    const auto start = startOf(arguments.value(u"start"_s));
    if (!start) {
        return arguments.misused(context, words("--start takes new-media, mature-media or starter."));
    }
    if (!arguments.isSet(u"no-reset"_s) && !layout->layout.ended) {
        facade::Learning learning;
        auto reset = facade::resetForecast(named.row(), layout->layout.id, *start, now, learning);
        if (reset) {
            review.reset = std::move(*reset);
        } else {
            context.err << QString::fromStdString(reset.error().sentence()) << '\n';
        }
    }
    if (arguments.json()) {
        context.out << QString::fromUtf8(reviewJson(review));
    } else {
        context.out << reviewText(review);
    }
    return kDone;
}

} // namespace littoral::ctl
