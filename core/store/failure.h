// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <QCoreApplication>
#include <QString>

class QSqlError;

namespace littoral::store {

/// Translation context of everything this module says.
struct Words
{
    Q_DECLARE_TR_FUNCTIONS(Store)
};

/// An Error with all three parts filled in: what happened, where, how to mend it.
[[nodiscard]] Error failure(Fault fault, const QString& what, const QString& where, const QString& mend);

/// What SQLite said about `path`, as a fault a caller can act on (Busy, Damaged, Conflict, Storage).
[[nodiscard]] Error sqlFailure(const QSqlError& error, const QString& path);

/// The file is a store, but its contents do not hold together; `detail` is SQLite's own finding.
[[nodiscard]] Error damagedFailure(const QString& path, const QString& detail);

[[nodiscard]] Error otherFileFailure(const QString& path);
[[nodiscard]] Error newerFailure(const QString& path, int version, int ours);

} // namespace littoral::store
