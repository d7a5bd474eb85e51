// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/codes.h"
#include "core/exchange/problems.h"

#include <QJsonArray>
#include <QJsonObject>
#include <QSet>
#include <QString>
#include <optional>

namespace littoral::exchange {

/// A JSON object read key by key. Complains, with the path from the top ("tank.json, bed.kind"), about a value of the
/// wrong type or out of range, and through refuseOthers() about each key nobody asked for: a misspelt key is never
/// taken for an absent one.
class ObjectReader final
{
public:
    ObjectReader(QJsonObject object, QString fileName, QString path, Problems& problems);

    /// There and not null: null says that something is not known, as leaving it out does.
    [[nodiscard]] bool has(const QString& key) const
    {
        const QJsonValue found = m_object.value(key);
        return !found.isUndefined() && !found.isNull();
    }
    [[nodiscard]] QString text(const QString& key);
    [[nodiscard]] std::optional<double> number(const QString& key, double lowest, double highest);
    [[nodiscard]] std::optional<bool> flag(const QString& key);
    [[nodiscard]] QJsonArray array(const QString& key);
    /// Nothing when absent or not an object (which is complained about).
    [[nodiscard]] std::optional<ObjectReader> object(const QString& key);
    /// The objects of an array, each with its own path.
    [[nodiscard]] std::vector<ObjectReader> objects(const QString& key);
    [[nodiscard]] QJsonValue value(const QString& key);

    /// One of the words of an enumeration.
    template <typename T> [[nodiscard]] std::optional<T> choice(const QString& key)
    {
        const QString word = text(key);
        if (word.isEmpty()) {
            return std::nullopt;
        }
        const std::optional<T> value = fromCode<T>(word);
        if (!value) {
            complainChoice(key, word, codes<T>());
        }
        return value;
    }

    void need(const QString& key); ///< complains that it is missing
    void complain(const QString& key, const QString& sentence);
    void refuseOthers();

    [[nodiscard]] const QString& path() const { return m_path; }
    [[nodiscard]] const QJsonObject& json() const { return m_object; }
    void ask(const QString& key) { m_asked.insert(key); }

private:
    [[nodiscard]] QString placeOf(const QString& key) const;
    void complainChoice(const QString& key, const QString& word, const QStringList& words);

    QJsonObject m_object;
    QString m_fileName;
    QString m_path;
    Problems* m_problems;
    QSet<QString> m_asked;
};

} // namespace littoral::exchange
