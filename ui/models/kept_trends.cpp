// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/kept_trends.h"

#include <QCryptographicHash>
#include <QJsonArray>
#include <QJsonDocument>
#include <QSettings>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

const QStringList& arrangementWords()
{
    static const QStringList words{u"overlay"_s, u"stacked"_s, u"grid"_s};
    return words;
}

/// A path is no good settings key: its separators would make groups of it.
QString keyOf(const QString& path)
{
    return u"trends/"_s +
           QString::fromLatin1(QCryptographicHash::hash(path.toUtf8(), QCryptographicHash::Sha1).toHex());
}

std::vector<KeptTrend> readAll(const record::Row& row)
{
    std::vector<KeptTrend> all;
    const QString text = row.settings.value(QString::fromUtf16(kTrendViewsSetting));
    for (const QJsonValue& value : QJsonDocument::fromJson(text.toUtf8()).array()) {
        if (auto one = trendFromJson(value.toObject()); one && !one->name.isEmpty()) {
            all.push_back(std::move(*one));
        }
    }
    return all;
}

QString written(std::vector<KeptTrend> all)
{
    std::ranges::sort(all,
                      [](const KeptTrend& a, const KeptTrend& b) { return a.name.localeAwareCompare(b.name) < 0; });
    QJsonArray array;
    for (const KeptTrend& one : all) {
        array.append(toJson(one));
    }
    return QString::fromUtf8(QJsonDocument(array).toJson(QJsonDocument::Compact));
}

} // namespace

QJsonObject toJson(const KeptTrend& trend)
{
    QJsonArray layouts;
    for (const record::LayoutId id : trend.layouts) {
        layouts.append(QString::number(id.value)); // more digits than a double has
    }
    const TrendOptions& options = trend.options;
    return {{u"name"_s, trend.name},
            {u"layouts"_s, layouts},
            {u"parameters"_s, QJsonArray::fromStringList(trend.parameters)},
            {u"arrangement"_s, arrangementWords().at(static_cast<qsizetype>(options.arrangement))},
            {u"targets"_s, options.targets},
            {u"events"_s, options.events},
            {u"forecast"_s, options.forecast},
            {u"steps"_s, options.steps},
            {u"log"_s, options.logarithmic},
            {u"age"_s, trend.mode == AxisMode::Age},
            {u"from_d"_s, trend.from_d},
            {u"to_d"_s, trend.to_d}};
}

std::optional<KeptTrend> trendFromJson(const QJsonObject& object)
{
    if (!object.value(u"layouts"_s).isArray() || !object.value(u"parameters"_s).isArray()) {
        return std::nullopt;
    }
    KeptTrend made;
    made.name = object.value(u"name"_s).toString();
    for (const QJsonValue& value : object.value(u"layouts"_s).toArray()) {
        made.layouts.push_back(record::LayoutId{value.toString().toLongLong()});
    }
    for (const QJsonValue& value : object.value(u"parameters"_s).toArray()) {
        if (record::findParameter(value.toString()) != nullptr || value.toString() == u"nh3"_s) {
            made.parameters << value.toString();
        }
    }
    const qsizetype arrangement = arrangementWords().indexOf(object.value(u"arrangement"_s).toString());
    made.options.arrangement = static_cast<TrendArrangement>(std::max<qsizetype>(0, arrangement));
    made.options.targets = object.value(u"targets"_s).toBool(true);
    made.options.events = object.value(u"events"_s).toBool(true);
    made.options.forecast = object.value(u"forecast"_s).toBool(true);
    made.options.steps = object.value(u"steps"_s).toBool(true);
    made.options.logarithmic = object.value(u"log"_s).toBool(false);
    made.mode = object.value(u"age"_s).toBool() ? AxisMode::Age : AxisMode::Calendar;
    made.from_d = object.value(u"from_d"_s).toDouble(made.from_d);
    made.to_d = object.value(u"to_d"_s).toDouble(made.to_d);
    return made.to_d > made.from_d ? std::optional(made) : std::nullopt;
}

std::vector<KeptTrend> keptTrends(const record::Row& row)
{
    std::vector<KeptTrend> all = readAll(row);
    for (KeptTrend& one : all) {
        std::erase_if(one.layouts, [&row](record::LayoutId id) { return row.layout(id) == nullptr; });
    }
    return all;
}

QString withTrend(const record::Row& row, const KeptTrend& trend)
{
    std::vector<KeptTrend> all = readAll(row);
    std::erase_if(all, [&trend](const KeptTrend& other) { return other.name == trend.name; });
    all.push_back(trend);
    return written(std::move(all));
}

QString withoutTrend(const record::Row& row, const QString& name)
{
    std::vector<KeptTrend> all = readAll(row);
    std::erase_if(all, [&name](const KeptTrend& other) { return other.name == name; });
    return all.empty() ? QString() : written(std::move(all));
}

std::optional<KeptTrend> lastTrend(const QString& path)
{
    if (path.isEmpty()) {
        return std::nullopt;
    }
    const QByteArray text = QSettings(u"Littoral"_s, u"Littoral"_s).value(keyOf(path)).toByteArray();
    return trendFromJson(QJsonDocument::fromJson(text).object());
}

void keepLastTrend(const QString& path, const KeptTrend& trend)
{
    if (!path.isEmpty()) {
        QSettings(u"Littoral"_s, u"Littoral"_s)
            .setValue(keyOf(path), QJsonDocument(toJson(trend)).toJson(QJsonDocument::Compact));
    }
}

} // namespace littoral::ui
