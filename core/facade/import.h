// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/record/ids.h"

#include <QStringList>

namespace littoral::facade {

class Keeper;

/// What an import brought, or on a dry run would bring. With problems, nothing was written.
struct ImportSummary
{
    int tanks = 0;
    record::TankId lastTank; ///< the last one added; zero on a dry run
    int readings = 0;
    int entries = 0;
    int facts = 0; ///< records of knowledge, notes and templates
    int journeys = 0;
    int shelf = 0;        ///< supplies
    int skipped = 0;      ///< already there, or twice in the files
    QStringList problems; ///< file, row or key, and what is wrong with it
    QStringList remarks;  ///< what was taken for granted or left out
};

/// Brings in readings and entries (.csv), whole tanks, supplies and a keeper's knowledge (.json), all files in one
/// change: either everything is written or nothing is, and one undo takes it back. Rows in a CSV file may belong to a
/// tank of a JSON file named before it. Fails (NotFound, Storage) when a file cannot be read or the store refuses; what
/// is wrong inside the files is in `problems`.
[[nodiscard]] Result<ImportSummary> importFiles(Keeper& keeper, const QStringList& paths, bool dryRun);

/// The same for CSV files alone.
[[nodiscard]] Result<ImportSummary> importCsvFiles(Keeper& keeper, const QStringList& paths, bool dryRun);

/// One tank file. BadInput when it has problems, which are then in `summary`, if given. On a dry run the id is zero.
[[nodiscard]] Result<record::TankId> importTankJson(Keeper& keeper, const QString& path, bool dryRun,
                                                    ImportSummary* summary = nullptr);

} // namespace littoral::facade
