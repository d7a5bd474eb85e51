// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"
#include "core/store/edit.h"

#include <QJsonArray>

namespace littoral::facade {

/// What the sample row keeps in stock, its waters and tanks found by name, and the weighings of its cylinders.
void addSampleShelf(const record::Row& row, const QJsonArray& supplies, const record::Moment& now, store::Edit& edit);

} // namespace littoral::facade
