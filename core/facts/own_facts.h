// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facts/fact_book.h"

#include <QJsonObject>
#include <optional>

/// What the keeper changed or added, record by record. Each is a setting of the store, "fact.KIND.ID", and holds one
/// JSON object as the program's own files do; resources/facts/README.md describes the fields. Writing a setting is an
/// ordinary change: it undoes, and it leaves the program's own record untouched beneath it.
namespace littoral::facts {

enum class FactKind {
    Condition,
    Species,
    Caution, ///< the keeper adds points; those of the program always stay
    Gate,
    Limit,
};

[[nodiscard]] QString factKindCode(FactKind kind); ///< "condition" ...
[[nodiscard]] std::optional<FactKind> factKindFromCode(const QString& code);
[[nodiscard]] QString factSetting(FactKind kind, const QString& id); ///< "fact.condition.alg_dust"

/// The program's own record as one object with its id under "id"; nothing when it has none.
[[nodiscard]] std::optional<QJsonObject> builtInObject(FactKind kind, const QString& id);
/// The keeper's; nothing when there is none.
[[nodiscard]] std::optional<QJsonObject> ownObject(const record::Row& row, FactKind kind, const QString& id);
[[nodiscard]] bool isOwn(const record::Row& row, FactKind kind, const QString& id);

/// Checks a record as the program's files are checked, among the facts of the row. The error says what, where and how
/// to mend it.
[[nodiscard]] Result<void> checkFact(const record::Row& row, FactKind kind, const QString& id,
                                     const QJsonObject& object);
/// What is kept in the setting.
[[nodiscard]] QString settingText(const QJsonObject& object);

/// An id for a record of this name that nothing has yet: small letters, figures and underscores.
[[nodiscard]] QString freshId(const record::Row& row, FactKind kind, const QString& name);

} // namespace littoral::facts
