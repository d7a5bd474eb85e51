// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/bench_memory.h"

#include "ui/models/bench_list.h"

#include <QCryptographicHash>
#include <QJsonArray>
#include <QJsonDocument>
#include <QSettings>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

/// A path is no good settings key: its separators would make groups of it.
QString keyOf(const QString& store)
{
    return u"bench/"_s +
           QString::fromLatin1(QCryptographicHash::hash(store.toUtf8(), QCryptographicHash::Sha1).toHex());
}

} // namespace

void BenchMemory::load(const QString& path)
{
    m_store = path;
    m_open.clear();
    m_pins.clear();
    inFront.clear();
    conditioner_mL_per_100L.reset();
    showsWorking = true;
    m_saved = path.isEmpty() ? QByteArray() : QSettings(u"Littoral"_s, u"Littoral"_s).value(keyOf(path)).toByteArray();
    const QJsonObject kept = QJsonDocument::fromJson(m_saved).object();
    if (kept.isEmpty()) {
        pinRowPlan(); // a bench nobody has used yet shows what the row needs
        return;
    }
    inFront = kept.value(u"front"_s).toString();
    showsWorking = kept.value(u"working"_s).toBool(true);
    if (kept.contains(u"conditioner"_s)) {
        conditioner_mL_per_100L = kept.value(u"conditioner"_s).toDouble();
    }
    for (const QJsonValue& value : kept.value(u"open"_s).toArray()) {
        if (const auto sheet = BenchSheet::fromJson(value.toObject())) {
            m_open.insert_or_assign({sheet->sheet().key, sheet->tank()}, *sheet);
        }
    }
    for (const QJsonValue& value : kept.value(u"pins"_s).toArray()) {
        const QJsonObject object = value.toObject();
        if (object.isEmpty()) {
            pinRowPlan();
        } else if (const auto sheet = BenchSheet::fromJson(object)) {
            pin(*sheet);
        }
    }
}

void BenchMemory::save()
{
    if (m_store.isEmpty()) {
        return;
    }
    QJsonArray open;
    for (const auto& [place, sheet] : m_open) {
        if (!sheet.typed().isEmpty()) {
            open.append(sheet.toJson());
        }
    }
    QJsonArray pins;
    for (const Pin& pin : m_pins) {
        pins.append(pin.sheet ? pin.sheet->toJson() : QJsonObject());
    }
    QJsonObject all{{u"front"_s, inFront}, {u"working"_s, showsWorking}, {u"open"_s, open}, {u"pins"_s, pins}};
    if (conditioner_mL_per_100L) {
        all.insert(u"conditioner"_s, *conditioner_mL_per_100L);
    }
    const QByteArray text = QJsonDocument(all).toJson(QJsonDocument::Compact);
    if (text != m_saved) {
        QSettings(u"Littoral"_s, u"Littoral"_s).setValue(keyOf(m_store), text);
        m_saved = text;
    }
}

BenchSheet& BenchMemory::open(const sheets::Sheet& sheet, record::TankId tank)
{
    return m_open.try_emplace({sheet.key, tank}, sheet, tank).first->second;
}

void BenchMemory::pin(const BenchSheet& sheet)
{
    m_pins.push_back({m_nextPin++, sheet});
}

void BenchMemory::pinRowPlan()
{
    if (!hasRowPlanPinned()) {
        m_pins.push_back({m_nextPin++, std::nullopt});
    }
}

void BenchMemory::unpin(int number)
{
    std::erase_if(m_pins, [&](const Pin& pin) { return pin.number == number; });
}

bool BenchMemory::hasRowPlanPinned() const
{
    return std::ranges::any_of(m_pins, [](const Pin& pin) { return !pin.sheet; });
}

} // namespace littoral::ui
