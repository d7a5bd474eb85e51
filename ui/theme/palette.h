// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/theme/tokens.h"

#include <QPalette>

namespace littoral::ui {

/// Every role of every group from the tokens, so that no stock widget falls back to a colour of its own.
[[nodiscard]] QPalette paletteOf(const Tokens& tokens);

} // namespace littoral::ui
