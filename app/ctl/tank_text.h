// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"

#include <QByteArray>
#include <QStringList>
#include <vector>

namespace littoral::ctl {

/// Columns of `tank list --csv`; the JSON objects have the same names.
[[nodiscard]] QStringList tankColumns();
[[nodiscard]] std::vector<QStringList> tankListRows(const record::Row& row, const record::Moment& now);
[[nodiscard]] QByteArray tankListJson(const record::Row& row, const record::Moment& now);
[[nodiscard]] QString tankListText(const record::Row& row, const record::Moment& now);

/// One tank in words: its layout, the newest reading of each parameter, the last ten entries.
[[nodiscard]] QString tankText(const record::Row& row, const record::Tank& tank, const record::Moment& now);

} // namespace littoral::ctl
