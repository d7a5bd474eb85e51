// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/entry.h"

#include <QString>

namespace littoral::ui {

/// How the form of one entry kind looks: labels of the fields it has (empty: not there).
struct EntryForm
{
    QString subject, amount, unit, second;
    QString unitProposed;
    bool fraction = false, litres = false, protein = false, count = false, load = false, severity = false,
         coverage = false, where = false, source = false, otherTank = false;
};

[[nodiscard]] EntryForm entryForm(record::EntryKind kind);

} // namespace littoral::ui
