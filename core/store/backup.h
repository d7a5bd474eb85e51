// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"

namespace littoral::store {

/// Writes a consistent copy beside `path`, checks it, and only then gives it its name. Never overwrites.
[[nodiscard]] Result<void> backupTo(Connection& connection, const QString& path);

} // namespace littoral::store
