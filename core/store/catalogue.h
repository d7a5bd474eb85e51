// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"

namespace littoral::store {

/// Brings table parameter up to the program's catalogue, so that the file explains its own units. Parameters the
/// program does not know are left alone. Writes only when something differs; outside the journal, since no keeper did
/// it.
[[nodiscard]] Result<void> syncCatalogue(Connection& connection);

} // namespace littoral::store
