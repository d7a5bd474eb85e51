// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/entry.h"

#include <QString>

namespace littoral::wording {

/// One line that tells what an entry says: "Water change 40 %", "Observation: melt, clear, back left".
[[nodiscard]] QString entryText(const record::Entry& entry);

/// The one or two words that stand beside an entry's picture on a lane: "40", "melt 2", "12 shrimp", "8 h"; may be
/// empty.
[[nodiscard]] QString entryWord(const record::Entry& entry);

/// A subject as people read it: built-in codes ("trim-stems", "alg_diatom") in words, anything else as typed.
[[nodiscard]] QString subjectText(const QString& subject);

/// The word of a severity, 0..4; empty outside.
[[nodiscard]] QString severityWord(int severity);

/// The shortest text that reads back as `value` to `digits` significant figures: "0.05", "12", "1500".
[[nodiscard]] QString plainNumber(double value, int digits = 4);

} // namespace littoral::wording
