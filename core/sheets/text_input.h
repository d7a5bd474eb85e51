// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sheets/sheet.h"

/// Sheets as people type them, in the find field and on the command line: "co2 6.6 4", "co2 ph=6.6 kh=4±0.5 temp=77F".
namespace littoral::sheets {

/// One blank. A number may carry its doubt ("6.6±0.1", "6.6+-0.1") and a unit ("3 meq/L", "77F", "20gal"), which is
/// converted to the blank's own; point or comma as decimal mark, but "1,250" is refused as ambiguous. A choice is its
/// code. A series has '/' or ';' between its numbers.
[[nodiscard]] Result<Value> parseValue(const Input& input, const QString& text);

/// "name=value" in any order; bare ones go to the blanks in order, skipping those already named. Refuses a name the
/// sheet does not have, naming the nearest, and one too many.
[[nodiscard]] Result<Values> parseValues(const Sheet& sheet, const QStringList& words);

struct Request
{
    const Sheet* sheet = nullptr;
    Values values;
};
/// A whole line; its first word is the sheet. Double quotes keep a value with spaces together.
[[nodiscard]] Result<Request> parseLine(const QString& line);

/// The key or name among `known` nearest to what was typed, if it is near at all.
[[nodiscard]] std::optional<QString> nearest(const QString& typed, const QStringList& known);

} // namespace littoral::sheets
