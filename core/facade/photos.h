// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"

/// Photographs stay in the store: a row in memory holds none.
namespace littoral::facade {

/// Of a layout, newest first, without their bytes; empty when the store cannot be read.
[[nodiscard]] std::vector<record::Photo> photosOfLayout(Keeper& keeper, record::LayoutId layout);
/// Of a tank, all its layouts, oldest first.
[[nodiscard]] std::vector<record::Photo> photosOf(Keeper& keeper, record::TankId tank);
[[nodiscard]] Result<QByteArray> photoBytes(Keeper& keeper, record::PhotoId id);

} // namespace littoral::facade
