// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"
#include "core/store/migrations.h"
#include "core/store/store.h"

namespace littoral::store {

struct OpenedFile
{
    std::unique_ptr<Connection> connection;
    QString copyBeforeUpgrade;
};

/// Makes the file (Conflict if there is one) and its tables.
[[nodiscard]] Result<OpenedFile> createFile(const QString& path, const std::vector<Migration>& ladder);

/// Looks at the header first, so that a file that is not ours, or newer, is not touched at all; then opens, upgrades
/// and checks it. A file or folder that cannot be written is opened for reading.
[[nodiscard]] Result<OpenedFile> openFile(const QString& path, Access access, const std::vector<Migration>& ladder);

} // namespace littoral::store
