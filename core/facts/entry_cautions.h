// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/due.h"
#include "core/facts/fact_book.h"
#include "core/record/entry.h"

namespace littoral::facts {

/// Ids of the cautions to read before what an entry of this kind writes down: those of the kind, of the work its
/// subject closes, and of the words in its subject. Each once, the kind's first.
[[nodiscard]] QStringList cautionsFor(const FactBook& book, record::EntryKind kind, const QString& subject);
/// The same before a round of work: the one that care names (by its template, or by what set it off) first.
[[nodiscard]] QStringList cautionsFor(const FactBook& book, const care::DueItem& item);
[[nodiscard]] QStringList cautionsFor(const FactBook& book, const care::WorkTemplate& work);

} // namespace littoral::facts
