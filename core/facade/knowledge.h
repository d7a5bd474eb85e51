// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/record/row.h"
#include "core/store/edit.h"

#include <QByteArray>
#include <QStringList>

/// What a keeper made of the program's knowledge, as a file: own conditions, species, points of cautions, gates and
/// limits, notes of the guide, and changed task templates. resources/formats.md has every key.
namespace littoral::facade {

/// "littoral-knowledge", version 1; empty when the row has none of its own.
[[nodiscard]] QByteArray knowledgeJson(const record::Row& row);
/// Whether a JSON file says that it is one.
[[nodiscard]] bool isKnowledgeJson(const QByteArray& json);

struct KnowledgeImport
{
    int records = 0;      ///< that are new or differ
    int skipped = 0;      ///< that are there already
    QStringList problems; ///< file, record, field, and what is wrong; then nothing may be written
};
/// Reads such a file for a row, checks its records among those of the row as the program's own are checked, and puts
/// what is new into `edit`. One that the row has in another version is replaced.
[[nodiscard]] KnowledgeImport readKnowledge(const QByteArray& json, const QString& fileName, const record::Row& row,
                                            store::Edit& edit);

} // namespace littoral::facade
