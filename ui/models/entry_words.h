// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/entry.h"

#include <QString>
#include <QStringList>

namespace littoral::ui {

/// Subjects offered for a kind of entry, as people read them; anything else may be typed. Empty for kinds without a
/// subject.
[[nodiscard]] QStringList commonSubjects(record::EntryKind kind);
/// What is kept for a typed subject: the code that rules and templates know it by if it is one of the offered ones,
/// else what was typed.
[[nodiscard]] QString subjectFrom(record::EntryKind kind, const QString& typed);
/// The other way: a kept subject as people read it.
[[nodiscard]] QString subjectShown(const QString& subject);

} // namespace littoral::ui
