// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/shelf_exchange.h"

#include "core/care/supplies.h"
#include "core/care/work_template.h"
#include "core/exchange/object_reader.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>
#include <functional>

namespace littoral::facade {

using namespace Qt::StringLiterals;
using exchange::ObjectReader;
using exchange::Problems;

namespace {

constexpr int kVersion = 1;
const QString kSupplies = u"littoral-supplies"_s;

QString words(const char* text)
{
    return QCoreApplication::translate("ShelfExchange", text);
}

void put(QJsonObject& object, const QString& key, const QString& text)
{
    if (!text.isEmpty()) {
        object.insert(key, text);
    }
}

void put(QJsonObject& object, const QString& key, const std::optional<double>& number)
{
    if (number) {
        object.insert(key, *number);
    }
}

QJsonObject supplyObject(const record::Row& row, const record::Supply& supply)
{
    QJsonObject object{{u"name"_s, supply.name}, {u"kind"_s, supply.kind}};
    put(object, u"amount"_s, supply.amount);
    put(object, u"unit"_s, supply.unit);
    put(object, u"opened"_s, supply.opened.toString(Qt::ISODate));
    put(object, u"expires"_s, supply.expires.toString(Qt::ISODate));
    put(object, u"lot"_s, supply.lot);
    put(object, u"note"_s, supply.note);
    const care::SupplyUse use = care::supplyUse(row, supply.id);
    put(object, u"per_litre"_s, use.perLitre);
    put(object, u"empty_g"_s, use.empty_g);
    if (const record::SourceWater* source = row.source(use.source)) {
        put(object, u"source"_s, source->name);
    }
    if (const record::Tank* tank = row.tank(use.tank)) {
        put(object, u"tank"_s, tank->name);
    }
    return object;
}

QByteArray fileOf(const QString& format, QJsonObject body)
{
    body.insert(u"format"_s, format);
    body.insert(u"version"_s, kVersion);
    return QJsonDocument(body).toJson(QJsonDocument::Indented);
}

QDate readDay(ObjectReader& item, const QString& key)
{
    const QString text = item.text(key);
    const QDate day = QDate::fromString(text, Qt::ISODate);
    if (!text.isEmpty() && !day.isValid()) {
        item.complain(key, words("\"%1\" is not a date such as 2026-11-25.").arg(text));
    }
    return day;
}

bool sameName(const QString& a, const QString& b)
{
    return a.trimmed().compare(b.trimmed(), Qt::CaseInsensitive) == 0;
}

care::SupplyUse readUse(ObjectReader& item, const record::Row& row)
{
    care::SupplyUse use;
    use.perLitre = item.number(u"per_litre"_s, 1e-9, 1e6);
    use.empty_g = item.number(u"empty_g"_s, 1e-9, 1e6);
    if (const QString name = item.text(u"source"_s); !name.isEmpty()) {
        const auto found = std::ranges::find_if(
            row.sources, [&](const record::SourceWater& source) { return sameName(source.name, name); });
        if (found == row.sources.end()) {
            item.complain(u"source"_s,
                          words("There is no source water \"%1\" here. Bring in its tank first.").arg(name));
        } else {
            use.source = found->id;
        }
    }
    if (const QString name = item.text(u"tank"_s); !name.isEmpty()) {
        if (const record::Tank* tank = row.tankNamed(name)) {
            use.tank = tank->id;
        } else {
            item.complain(u"tank"_s, words("There is no tank \"%1\" here. Bring it in first.").arg(name));
        }
    }
    return use;
}

void readSupply(ObjectReader& item, const record::Row& row, store::Edit& edit, ShelfCounts& counts)
{
    record::Supply supply;
    supply.name = item.text(u"name"_s).trimmed();
    if (supply.name.isEmpty()) {
        item.need(u"name"_s);
    }
    supply.kind = item.text(u"kind"_s);
    if (std::ranges::find(care::supplyKinds(), supply.kind) == care::supplyKinds().end()) {
        const QStringList known(care::supplyKinds().begin(), care::supplyKinds().end());
        item.complain(u"kind"_s, words("\"%1\" is not one of %2.").arg(supply.kind, known.join(u", "_s)));
    }
    supply.amount = item.number(u"amount"_s, 0.0, 1e9);
    supply.unit = item.text(u"unit"_s);
    supply.opened = readDay(item, u"opened"_s);
    supply.expires = readDay(item, u"expires"_s);
    supply.lot = item.text(u"lot"_s);
    supply.note = item.text(u"note"_s);
    const care::SupplyUse use = readUse(item, row);
    item.refuseOthers();
    const auto there = std::ranges::find_if(row.supplies, [&](const record::Supply& other) {
        return sameName(other.name, supply.name) && other.lot == supply.lot;
    });
    if (there != row.supplies.end()) {
        supply.id = there->id;
        if (supply == *there && use == care::supplyUse(row, there->id)) {
            ++counts.skipped;
        } else {
            item.complain(u"name"_s, words("There is a supply \"%1\" already, and it differs.").arg(supply.name));
        }
        return;
    }
    const record::SupplyId id = edit.put(supply);
    if (const QString text = care::supplyUseText(use); !text.isEmpty()) {
        edit.set(care::supplyUseKey(id), text);
    }
    ++counts.added;
}

QString formatOf(const QByteArray& bytes)
{
    return QJsonDocument::fromJson(bytes).object()[u"format"_s].toString();
}

} // namespace

QByteArray suppliesJson(const record::Row& row)
{
    QJsonArray list;
    for (const record::Supply& supply : row.supplies) {
        list.append(supplyObject(row, supply));
    }
    return list.isEmpty() ? QByteArray() : fileOf(kSupplies, {{u"supplies"_s, list}});
}

bool isShelfJson(const QByteArray& bytes)
{
    return formatOf(bytes) == kSupplies;
}

ShelfCounts readShelfJson(const QByteArray& bytes, const QString& fileName, const record::Row& row, store::Edit& edit,
                          Problems& problems)
{
    ShelfCounts counts;
    ObjectReader top(QJsonDocument::fromJson(bytes).object(), fileName, QString(), problems);
    static_cast<void>(top.text(u"format"_s)); // read by whoever chose this reader
    if (top.number(u"version"_s, 1.0, 1e6) != kVersion) {
        top.complain(u"version"_s, words("This program reads version %1 of the format.").arg(kVersion));
        return counts;
    }
    for (ObjectReader& item : top.objects(u"supplies"_s)) {
        readSupply(item, row, edit, counts);
    }
    top.refuseOthers();
    return counts;
}

} // namespace littoral::facade
