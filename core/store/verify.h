// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"
#include "core/store/store.h"

namespace littoral::store {

[[nodiscard]] Result<Store::Verification> verifyStore(Connection& connection);

} // namespace littoral::store
