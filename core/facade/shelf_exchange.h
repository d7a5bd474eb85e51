// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/problems.h"
#include "core/record/row.h"
#include "core/store/edit.h"

#include <QByteArray>
#include <QString>

/// The supplies, which belong to the row and to no tank, as JSON. resources/formats.md has every key.
namespace littoral::facade {

/// "littoral-supplies", version 1; empty when there are none.
[[nodiscard]] QByteArray suppliesJson(const record::Row& row);
/// Whether the file is that.
[[nodiscard]] bool isShelfJson(const QByteArray& bytes);

struct ShelfCounts
{
    int added = 0;
    int skipped = 0; ///< there already, the same in every respect
};
/// Reads the file into `edit`. What is wrong is added to `problems` with its path; then nothing of the edit
/// may be written. A supply that is there already but differs is a problem: it is not replaced unasked.
ShelfCounts readShelfJson(const QByteArray& bytes, const QString& fileName, const record::Row& row, store::Edit& edit,
                          exchange::Problems& problems);

} // namespace littoral::facade
