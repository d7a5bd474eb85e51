// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/supplies.h"

#include "app/ctl/arguments.h"
#include "app/ctl/text_table.h"
#include "app/ctl/verbs.h"
#include "core/wording/supply_sentences.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace littoral::ctl {

using namespace Qt::StringLiterals;
using care::SupplyStanding;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("littoralctl", text);
}

QString basisCode(care::SupplyBasis basis)
{
    switch (basis) {
    case care::SupplyBasis::Stated:
        return u"stated"_s;
    case care::SupplyBasis::Doses:
        return u"doses"_s;
    case care::SupplyBasis::Weighings:
        return u"weighings"_s;
    case care::SupplyBasis::Date:
        return u"date"_s;
    }
    return {};
}

/// "expired", "wanted" (it ought to be got now), "ok", "unknown".
QString stateCode(const SupplyStanding& standing, const QDate& today)
{
    if (standing.expired(today)) {
        return u"expired"_s;
    }
    const QDate wanted = standing.wanted();
    return wanted.isValid() && wanted <= today                               ? u"wanted"_s
           : wanted.isValid() || standing.basis != care::SupplyBasis::Stated ? u"ok"_s
                                                                             : u"unknown"_s;
}

QString stateText(const SupplyStanding& standing, const QDate& today)
{
    const QString code = stateCode(standing, today);
    return code == u"expired"_s  ? words("past its date")
           : code == u"wanted"_s ? words("get it now")
           : code == u"ok"_s     ? words("ok")
                                 : words("unknown");
}

QString isoDay(const QDate& day)
{
    return day.toString(Qt::ISODate);
}

QString figure(const std::optional<double>& value)
{
    return value ? QString::number(*value, 'g', 4) : QString();
}

QByteArray asJson(const std::vector<SupplyStanding>& all, const QDate& today)
{
    QJsonArray list;
    for (const SupplyStanding& it : all) {
        QJsonObject object{{u"name"_s, it.name},
                           {u"kind"_s, it.kind},
                           {u"test_kit"_s, static_cast<bool>(it.kit)},
                           {u"state"_s, stateCode(it, today)},
                           {u"basis"_s, basisCode(it.basis)},
                           {u"unit"_s, it.unit},
                           {u"why"_s, wording::supplyReasons(it, today).join(u' ')}};
        const auto number = [&](const QString& key, const std::optional<double>& value) {
            if (value) {
                object.insert(key, QString::number(*value, 'g', 4).toDouble());
            }
        };
        const auto day = [&](const QString& key, const QDate& value) {
            if (value.isValid()) {
                object.insert(key, isoDay(value));
            }
        };
        number(u"stated"_s, it.stated);
        number(u"remaining"_s, it.remaining);
        number(u"per_day"_s, it.perDay);
        number(u"days_left"_s, it.daysLeft);
        day(u"runs_out"_s, it.runsOut);
        day(u"expires"_s, it.expires);
        day(u"wanted_by"_s, it.wanted());
        list.append(object);
    }
    return QJsonDocument(QJsonObject{{u"on"_s, isoDay(today)}, {u"supplies"_s, list}}).toJson();
}

QString asCsv(const std::vector<SupplyStanding>& all, const QDate& today)
{
    std::vector<QStringList> rows;
    for (const SupplyStanding& it : all) {
        rows.push_back({it.name, it.kind, stateCode(it, today), basisCode(it.basis), figure(it.remaining), it.unit,
                        figure(it.perDay), figure(it.daysLeft), isoDay(it.runsOut), isoDay(it.expires),
                        isoDay(it.wanted()), wording::supplyReasons(it, today).join(u' ')});
    }
    return csvTable({u"name"_s, u"kind"_s, u"state"_s, u"basis"_s, u"remaining"_s, u"unit"_s, u"per_day"_s,
                     u"days_left"_s, u"runs_out"_s, u"expires"_s, u"wanted_by"_s, u"why"_s},
                    rows);
}

QString asText(const std::vector<SupplyStanding>& all, const QDate& today)
{
    if (all.empty()) {
        return words("Nothing is kept in stock in this store yet, and no test kit has a date.") + u'\n';
    }
    std::vector<QStringList> rows;
    for (const SupplyStanding& it : all) {
        rows.push_back({it.name, wording::supplyKindName(it.kind), wording::remainingText(it),
                        wording::daysLeftText(it), wording::expiryText(it, today), stateText(it, today)});
    }
    return textTable({words("Name"), words("Kind"), words("Left"), words("Lasts"), words("Date"), words("State")},
                     rows);
}

} // namespace

int runSupplies(Context& context, const QStringList& line)
{
    Arguments arguments(u"supplies FILE [--on DATE] [--json | --csv]"_s,
                        words("Shows what is in stock: what is left by the doses, water changes and weighings on "
                              "record, how long it lasts at the present use, and what is past its date."),
                        {u"littoralctl supplies row.littoral"_s, u"littoralctl supplies row.littoral --json"_s});
    arguments.operand(u"FILE"_s, words("The store, a file ending in .littoral."));
    arguments.option(u"on"_s, u"DATE"_s, words("As it stands on that day; today if not given."));
    arguments.dataFormats();
    if (const auto code = arguments.parse(context, line, 1, 1)) {
        return *code;
    }
    bool bad = false;
    const record::Moment now = arguments.isSet(u"on"_s)
                                   ? arguments.instant(context, u"on"_s, bad).value_or(context.clock.now())
                                   : context.clock.now();
    if (bad) {
        return kUsage;
    }
    const OpenStore keeper = openStore(context, arguments.operands()[0], store::Access::ReadOnly);
    if (!keeper) {
        return keeper.code;
    }
    const std::vector<SupplyStanding> all = care::supplyStandings(keeper->row(), now);
    const QDate today = now.localDate();
    context.out << (arguments.json()  ? QString::fromUtf8(asJson(all, today))
                    : arguments.csv() ? asCsv(all, today)
                                      : asText(all, today));
    return kDone;
}

} // namespace littoral::ctl
