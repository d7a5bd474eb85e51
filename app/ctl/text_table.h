// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <vector>

namespace littoral::ctl {

/// Columns lined up with spaces, for people. A column whose cells below the head are all numbers or ranges is set to
/// the right. `indent` spaces come first on each line.
[[nodiscard]] QString textTable(const QStringList& head, const std::vector<QStringList>& rows, int indent = 0);

/// The same as CSV with a header.
[[nodiscard]] QString csvTable(const QStringList& head, const std::vector<QStringList>& rows);

} // namespace littoral::ctl
