// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"
#include "core/sheets/sheet.h"

namespace littoral::sheets {

/// What the record of a tank puts into the blanks of a sheet: newest readings (with their kit's doubt), net volume, the
/// source water, the layout. Blanks in `typed` are left alone; choices there decide which parameter is meant. Each
/// value says where it came from. A tank without a running layout, or a blank the record knows nothing about, adds
/// nothing.
[[nodiscard]] Values fillFromRecord(const Sheet& sheet, const record::Row& row, record::TankId tank,
                                    const record::Moment& now, const Values& typed);

} // namespace littoral::sheets
