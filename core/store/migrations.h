// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"

#include <QString>
#include <QStringList>
#include <vector>

namespace littoral::store {

/// One step of the schema: what takes a store from `version` - 1 to `version`. To add one, add a numbered file to
/// resources/schema and raise kSchemaVersion; files that were released are never edited.
struct Migration
{
    int version = 0;
    QString sql;
};

/// The numbered files in the program's resources, in order.
[[nodiscard]] std::vector<Migration> builtInMigrations();

/// Statements of a script: split at semicolons outside text and comments. Scripts hold no triggers.
[[nodiscard]] QStringList statementsOf(const QString& script);

struct Migrated
{
    enum class Outcome { Current, Created, Upgraded };
    Outcome outcome = Outcome::Current;
    int from = 0;
    QString copy; ///< where the store lies as it was before; empty when it was not upgraded
};

/// Takes the store up the ladder to its last rung, each rung in a transaction of its own with its version stamp,
/// foreign keys checked before commit. A store that holds something is first copied aside. NewerStore when it stands
/// above the ladder; any failure rolls its rung back and its Error says where the copy lies.
[[nodiscard]] Result<Migrated> migrate(Connection& connection, const std::vector<Migration>& ladder);

} // namespace littoral::store
