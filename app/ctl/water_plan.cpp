// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/row_plan.h"

#include "app/ctl/arguments.h"
#include "app/ctl/text_table.h"
#include "app/ctl/verbs.h"
#include "core/record/shown.h"
#include "core/wording/numbers.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLocale>

namespace littoral::ctl {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("littoralctl", text);
}

double tenths(double value)
{
    return QString::number(value, 'f', 1).toDouble();
}

QString plain(double value)
{
    return QString::number(value, 'f', 1);
}

QString plain(const std::optional<double>& value)
{
    return value ? plain(*value) : QString();
}

QString tanksOf(const facade::WaterDay& day)
{
    QStringList tanks;
    for (const facade::PlannedWater& change : day.changes) {
        tanks << (change.fraction ? words("%1 %2").arg(change.tankName, wording::percentText(*change.fraction))
                                  : change.tankName);
    }
    return tanks.join(u", "_s);
}

QJsonArray watersJson(const std::vector<care::WaterPart>& waters)
{
    QJsonArray list;
    for (const care::WaterPart& water : waters) {
        list.append(QJsonObject{{u"water"_s, water.name}, {u"litres"_s, tenths(water.litres)}});
    }
    return list;
}

QJsonObject jsonOf(const facade::PlannedWater& change)
{
    QJsonObject object{{u"tank"_s, change.tankName},
                       {u"large"_s, change.large},
                       {u"by_hand"_s, change.byHand},
                       {u"days_over"_s, change.daysOver},
                       {u"demineralised_L"_s, tenths(change.demineralised_L)},
                       {u"to_treat_L"_s, tenths(change.toTreat_L)}};
    if (!change.source.isEmpty()) {
        object.insert(u"source"_s, change.source);
    }
    if (!change.parts.empty()) {
        object.insert(u"waters"_s, watersJson(change.parts));
    }
    if (change.fraction) {
        object.insert(u"fraction"_s, QString::number(*change.fraction, 'g', 3).toDouble());
    }
    if (change.litres) {
        object.insert(u"litres"_s, tenths(*change.litres));
    }
    return object;
}

QByteArray planJson(const facade::RowPlan& plan)
{
    QJsonArray days;
    for (const facade::WaterDay& day : plan.days) {
        QJsonArray changes;
        for (const facade::PlannedWater& change : day.changes) {
            changes.append(jsonOf(change));
        }
        QJsonObject object{{u"day"_s, day.day.toString(Qt::ISODate)},
                           {u"litres"_s, tenths(day.litres)},
                           {u"demineralised_L"_s, tenths(day.demineralised_L)},
                           {u"to_treat_L"_s, tenths(day.toTreat_L)},
                           {u"collides"_s, day.collides},
                           {u"changes"_s, changes}};
        if (day.conditioner_mL) {
            object.insert(u"conditioner_mL"_s, tenths(*day.conditioner_mL));
        }
        if (day.freerDay) {
            object.insert(u"freer_day"_s, day.freerDay->toString(Qt::ISODate));
        }
        days.append(object);
    }
    QJsonObject all{{u"days"_s, days},
                    {u"litres"_s, tenths(plan.litres)},
                    {u"demineralised_L"_s, tenths(plan.demineralised_L)},
                    {u"to_treat_L"_s, tenths(plan.toTreat_L)},
                    {u"waters"_s, watersJson(plan.waters)},
                    {u"collisions"_s, plan.collisions},
                    {u"volume_unknown"_s, QJsonArray::fromStringList(plan.volumeUnknown)},
                    {u"blend_unknown"_s, QJsonArray::fromStringList(plan.blendUnknown)}};
    if (plan.conditioner_mL) {
        all.insert(u"conditioner_mL"_s, tenths(*plan.conditioner_mL));
    }
    return QJsonDocument(all).toJson();
}

QString planCsv(const facade::RowPlan& plan)
{
    std::vector<QStringList> rows;
    for (const facade::WaterDay& day : plan.days) {
        rows.push_back({day.day.toString(Qt::ISODate), plain(day.litres), plain(day.toTreat_L),
                        plain(day.demineralised_L), plain(day.conditioner_mL), day.collides ? u"yes"_s : u"no"_s,
                        tanksOf(day)});
    }
    return csvTable(
        {u"day"_s, u"litres"_s, u"to_treat_L"_s, u"demineralised_L"_s, u"conditioner_mL"_s, u"collides"_s, u"tanks"_s},
        rows);
}

QString noteOf(const facade::WaterDay& day, const QDate& today)
{
    if (!day.collides) {
        return {};
    }
    return day.freerDay ? words("Large changes collide; %1 has none.").arg(wording::weekdayText(*day.freerDay, today))
                        : words("Large changes collide.");
}

QString planText(const facade::RowPlan& plan)
{
    const QDate today = plan.days.front().day;
    const record::Measure volume = record::volumeMeasure(record::shownUnits());
    const auto water = [&](double litres) { return plain(volume.shown(litres)); };
    std::vector<QStringList> rows;
    for (const facade::WaterDay& day : plan.days) {
        if (day.changes.empty()) {
            continue;
        }
        rows.push_back({wording::weekdayText(day.day, today), water(day.litres), water(day.toTreat_L),
                        water(day.demineralised_L), plain(day.conditioner_mL), tanksOf(day), noteOf(day, today)});
    }
    if (rows.empty()) {
        return words("No water changes are due in these days.") + u'\n';
    }
    rows.push_back({words("In all"),
                    water(plan.litres),
                    water(plan.toTreat_L),
                    water(plan.demineralised_L),
                    plain(plan.conditioner_mL),
                    {},
                    {}});
    QString text = textTable({words("Day"), words("Water, %1").arg(volume.label),
                              words("To treat, %1").arg(volume.label), words("Demineralised, %1").arg(volume.label),
                              words("Conditioner, mL"), words("Tanks"), words("Note")},
                             rows);
    QStringList waters;
    for (const care::WaterPart& water : plan.waters) {
        waters << words("%1 L of %2").arg(plain(water.litres), water.name);
    }
    if (!waters.isEmpty()) {
        text += words("Waters in all: %1.").arg(QLocale().createSeparatedList(waters)) + u'\n';
    }
    for (const QString& tank : plan.volumeUnknown) {
        text += words("%1 has no measures: its litres are missing from the sums.").arg(tank) + u'\n';
    }
    for (const QString& blend : plan.blendUnknown) {
        text += words("The parts of \"%1\" are not stated: all of it is counted as water to treat. Name its two waters "
                      "and their share.")
                    .arg(blend) +
                u'\n';
    }
    return text;
}

} // namespace

int runWaterPlan(Context& context, const QStringList& line)
{
    Arguments arguments(
        u"water-plan FILE [--on DATE] [--days N] [--conditioner ML] [--json | --csv]"_s,
        words("Shows the water the whole row needs day by day: litres, tap water to treat, demineralised water, and "
              "the days on which large changes fall together."),
        {u"littoralctl water-plan row.littoral"_s, u"littoralctl water-plan row.littoral --conditioner 5 --csv"_s});
    arguments.operand(u"FILE"_s, words("The store, a file ending in .littoral."));
    arguments.option(u"on"_s, u"DATE"_s, words("As it stands on that day; today if not given."));
    arguments.option(u"days"_s, u"N"_s, words("How many days, 1 to 92; 14 if not given."));
    arguments.option(u"conditioner"_s, u"ML"_s,
                     words("Millilitres of conditioner for 100 L of new water, as its label says."));
    arguments.dataFormats();
    if (const auto code = arguments.parse(context, line, 1, 1)) {
        return *code;
    }
    bool bad = false;
    facade::RowPlanOptions options;
    const auto days = arguments.number(context, u"days"_s, 1, 92, bad);
    options.days = days ? static_cast<int>(*days) : options.days;
    options.conditioner_mL_per_100L = bad ? std::nullopt : arguments.number(context, u"conditioner"_s, 0, 1000, bad);
    const auto asked = bad || !arguments.isSet(u"on"_s) ? std::optional(context.clock.now())
                                                        : arguments.instant(context, u"on"_s, bad);
    if (bad || !asked) {
        return kUsage;
    }
    const OpenStore keeper = openStore(context, arguments.operands()[0], store::Access::ReadOnly);
    if (!keeper) {
        return keeper.code;
    }
    const facade::RowPlan plan = facade::rowPlan(keeper->row(), *asked, options);
    if (arguments.json()) {
        context.out << QString::fromUtf8(planJson(plan));
    } else if (arguments.csv()) {
        context.out << planCsv(plan);
    } else {
        context.out << planText(plan);
    }
    return kDone;
}

} // namespace littoral::ctl
