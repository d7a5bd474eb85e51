// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/sample_shelf.h"

#include "core/care/supplies.h"

#include <QJsonObject>
#include <algorithm>

namespace littoral::facade {

using namespace Qt::StringLiterals;

namespace {

std::optional<double> numberIn(const QJsonObject& from, const QString& key)
{
    return from[key].isDouble() ? std::optional(from[key].toDouble()) : std::nullopt;
}

void addWeighings(const record::Row& row, const QJsonArray& weighings, record::TankId tank, const record::Moment& now,
                  store::Edit& edit)
{
    const record::LayoutRecord* layout = row.currentLayout(tank, now);
    const auto scale = std::ranges::find(row.kits, u"cylinder"_s, &record::TestKit::parameter);
    for (const QJsonValue& weighing : weighings) {
        record::Reading reading;
        reading.tank = tank;
        reading.parameter = u"cylinder"_s;
        reading.at = reading.enteredAt = now.plusDays(-weighing[0].toDouble());
        reading.kit = scale == row.kits.end() ? record::KitId{} : scale->id;
        const QString grams = QString::number(weighing[1].toInt());
        if (layout != nullptr && reading.at >= layout->layout.flooded &&
            record::setTypedValue(reading, grams, u"g"_s)) {
            reading.layout = layout->layout.id;
            edit.put(std::move(reading));
        }
    }
}

} // namespace

void addSampleShelf(const record::Row& row, const QJsonArray& supplies, const record::Moment& now, store::Edit& edit)
{
    for (const QJsonValue& value : supplies) {
        const QJsonObject from = value.toObject();
        record::Supply supply;
        supply.name = from[u"name"_s].toString();
        supply.kind = from[u"kind"_s].toString();
        supply.amount = numberIn(from, u"amount"_s);
        supply.unit = from[u"unit"_s].toString();
        if (const auto days = numberIn(from, u"opened_days_ago"_s)) {
            supply.opened = now.localDate().addDays(-static_cast<qint64>(*days));
        }
        if (const auto days = numberIn(from, u"expires_in_days"_s)) {
            supply.expires = now.localDate().addDays(static_cast<qint64>(*days));
        }
        care::SupplyUse use;
        use.perLitre = numberIn(from, u"per_litre"_s);
        use.empty_g = numberIn(from, u"empty_g"_s);
        const auto source = std::ranges::find(row.sources, from[u"source"_s].toString(), &record::SourceWater::name);
        use.source = source == row.sources.end() ? record::SourceWaterId{} : source->id;
        if (const record::Tank* tank = row.tankNamed(from[u"tank"_s].toString())) {
            use.tank = tank->id;
            addWeighings(row, from[u"weighings"_s].toArray(), tank->id, now, edit);
        }
        const record::SupplyId id = edit.put(supply);
        edit.set(care::supplyUseKey(id), care::supplyUseText(use));
    }
}

} // namespace littoral::facade
