// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/track_record.h"

#include "app/ctl/one_tank.h"
#include "app/ctl/text_table.h"
#include "app/ctl/verbs.h"
#include "core/facade/next_tests.h"
#include "core/wording/numbers.h"
#include "core/wording/plan_sentences.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace littoral::ctl {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("littoralctl", text);
}

QStringList heldRow(const QString& what, const facade::HeldBands& held)
{
    return {what,
            QString::number(held.readings),
            QString::number(held.inside50),
            QString::number(held.inside80),
            QString::number(held.inside95),
            held.persistence > 0.0 ? QString::number(held.error / held.persistence, 'f', 2) : u"?"_s};
}

QString recordText(const record::Row& row, const facade::TrackRecord& record)
{
    QString text = words("Kept forecasts: %1.").arg(record.forecasts) + u'\n';
    for (const QString& sentence : {wording::heldBandsText(record.all.readings, record.all.inside80),
                                    wording::sharpnessText(record.all.error, record.all.persistence),
                                    wording::heldDatesText(record.dates.closed, record.dates.inside80),
                                    wording::wideningText(record.inflation)}) {
        text += sentence.isEmpty() ? QString() : sentence + u'\n';
    }
    for (const auto& [gate, held] : record.gates) {
        text += wording::heldGateText(gate, held.closed, held.inside80) + u'\n';
    }
    if (record.all.readings == 0) {
        return text;
    }
    std::vector<QStringList> rows{heldRow(words("All"), record.all)};
    for (const auto& [parameter, held] : record.parameters) {
        rows.push_back(heldRow(wording::parameterName(parameter), held));
    }
    for (const auto& [layout, held] : record.layouts) {
        rows.push_back(heldRow(facade::layoutTitle(row, layout), held));
    }
    return text + u'\n' +
           textTable({QString(), words("Readings"), words("In 5 of 10"), words("In 8 of 10"), words("In 19 of 20"),
                      words("Against last reading")},
                     rows, 2);
}

QJsonObject heldObject(const facade::HeldBands& held)
{
    const auto rounded = [](double value) { return QString::number(value, 'g', 6).toDouble(); };
    QJsonArray pit;
    for (const double probability : held.pit) {
        pit.append(rounded(probability));
    }
    return {{u"readings"_s, held.readings},
            {u"inside_50"_s, held.inside50},
            {u"inside_80"_s, held.inside80},
            {u"inside_95"_s, held.inside95},
            {u"compared"_s, held.compared},
            {u"error"_s, rounded(held.error)},
            {u"persistence_error"_s, rounded(held.persistence)},
            {u"pit"_s, pit}};
}

QJsonObject datesObject(const facade::HeldDates& held)
{
    QJsonArray errors;
    for (const double days : held.errors_d) {
        errors.append(days);
    }
    return {{u"closed"_s, held.closed}, {u"inside_80"_s, held.inside80}, {u"errors_days"_s, errors}};
}

QByteArray recordJson(const record::Row& row, const facade::TrackRecord& record)
{
    QJsonObject parameters;
    for (const auto& [parameter, held] : record.parameters) {
        parameters.insert(parameter, heldObject(held));
    }
    QJsonArray layouts;
    for (const auto& [layout, held] : record.layouts) {
        QJsonObject object = heldObject(held);
        object.insert(u"layout"_s, facade::layoutTitle(row, layout));
        layouts.append(object);
    }
    QJsonObject gates;
    for (const auto& [gate, held] : record.gates) {
        gates.insert(gate, datesObject(held));
    }
    return QJsonDocument(QJsonObject{{u"forecasts"_s, record.forecasts},
                                     {u"all"_s, heldObject(record.all)},
                                     {u"parameters"_s, parameters},
                                     {u"layouts"_s, layouts},
                                     {u"dates"_s, datesObject(record.dates)},
                                     {u"gates"_s, gates},
                                     {u"widening"_s, record.inflation}})
        .toJson();
}

/// Kept forecasts of one tank's layouts, or of all.
Result<std::vector<record::IssuedForecast>> issuedOf(const facade::Keeper& keeper, store::Store& store,
                                                     const record::Tank* only)
{
    std::vector<record::IssuedForecast> all;
    for (const auto& [id, layout] : keeper.row().layouts) {
        if (only != nullptr && layout.layout.tank != only->id) {
            continue;
        }
        auto issued = store.issuedForecasts(id);
        if (!issued) {
            return issued.error();
        }
        std::ranges::move(*issued, std::back_inserter(all));
    }
    return all;
}

} // namespace

int runRecord(Context& context, const QStringList& line)
{
    Arguments arguments(
        u"record FILE [--tank NAME] [--json]"_s,
        words("Shows how forecasts that were kept turned out: how many later readings their bands "
              "held, how far off their middles were, and how their dates held. The workbench keeps "
              "forecasts by itself, \"forecast\" with --keep."),
        {u"littoralctl record row.littoral"_s, u"littoralctl record row.littoral --tank \"Fen Corner\" --json"_s});
    declareTank(arguments, Naming::Optional);
    arguments.flag(u"json"_s, words("Write JSON."));
    if (const auto code = arguments.parse(context, line, 1, 1)) {
        return *code;
    }
    const NamedTank named = openNamedTank(context, arguments, store::Access::ReadOnly, Naming::Optional);
    if (!named) {
        return named.code;
    }
    const auto issued = issuedOf(*named.store.keeper, *named->store(), named.tank);
    if (!issued) {
        return context.fail(issued.error());
    }
    const facade::TrackRecord record = facade::trackRecord(named.row(), *issued);
    context.out << (arguments.json() ? QString::fromUtf8(recordJson(named.row(), record))
                                     : recordText(named.row(), record));
    return kDone;
}

} // namespace littoral::ctl
