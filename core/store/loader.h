// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"
#include "core/store/connection.h"

namespace littoral::store {

/// The whole row as of one moment. Photographs' bytes and forecasts stay in the store.
[[nodiscard]] Result<record::Row> loadRow(Connection& connection);

} // namespace littoral::store
