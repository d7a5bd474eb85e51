// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/stock_model.h"

/// Parts stockOf is put together from.
namespace littoral::facade {

void addPlants(StockModel& model, const record::LayoutRecord& layout, const record::Moment& now,
               const facts::FactBook& book);
/// What speaks against each animal beside the others and in this tank.
void addConcerns(StockModel& model, const record::LayoutRecord& layout, const record::Moment& now);
void addMoves(StockModel& model, const record::Row& row, const record::Moment& now);
void addClock(StockModel& model, const record::LayoutRecord& layout, const record::Moment& now);

} // namespace littoral::facade
