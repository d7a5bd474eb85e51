// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/record/row.h"

#include <QByteArray>
#include <QStringList>

namespace littoral::facade {

/// Writes the row into a directory, made if need be: readings.csv, entries.csv, journeys.csv and supplies.json if there
/// are any, one JSON file per tank in tanks/, and knowledge.json where the keeper has conditions, species, rules, notes
/// or templates of their own. Each file is complete or not there. Refuses (Conflict) to replace a file unless
/// `overwrite`. Returns the paths written. Photographs are not in it: a backup of the store holds those.
[[nodiscard]] Result<QStringList> exportRow(const record::Row& row, const QString& directory, bool overwrite);

/// One tank as JSON that importTankJson reads back; NotFound when it is not in the row.
[[nodiscard]] Result<QByteArray> exportTankJson(const record::Row& row, record::TankId tank);

} // namespace littoral::facade
