// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/theme/theme.h"

namespace littoral::ui::test {

/// The one theme the application's style follows in tests, set to a look: the style outlives each test, so this does
/// too. Whoever changes it sets it back to light at 1.
Theme& lookOfAll(Scheme scheme = Scheme::Light, double textScale = 1.0);

} // namespace littoral::ui::test
