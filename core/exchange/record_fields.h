// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/field_reader.h"
#include "core/exchange/name_book.h"
#include "core/record/entry.h"
#include "core/record/reading.h"

#include <QJsonObject>
#include <optional>

/// One reading and one entry as named fields: the same names, rules and units in CSV columns and in JSON objects.
namespace littoral::exchange {

/// Reads parameter, value, unit, kit and note. The unit may be left out where a kit is named or the parameter has only
/// one; it is never guessed. Tank, layout and instant are the caller's. Complaints go to `fields`.
[[nodiscard]] std::optional<record::Reading> readReading(FieldReader& fields, const NameBook& names);

/// Reads what an entry of that kind has, and refuses the rest. One with `entered` was written by an export and is taken
/// as it was kept, whatever it lacks. `net_L`: water in the tank, to turn litres changed into a fraction; nothing when
/// it is not known. An unknown `other_tank` is a complaint unless `strangers` is given, which collects such names
/// instead (a tank file may come from another row).
[[nodiscard]] std::optional<record::Entry> readEntry(FieldReader& fields, record::EntryKind kind, const NameBook& names,
                                                     std::optional<double> net_L, QStringList* strangers = nullptr);

/// The same fields written out; `at`, `entered`, tank and layout are the caller's. Empty ones are left out.
[[nodiscard]] QJsonObject readingFields(const record::Reading& reading, const NameBook& names);
[[nodiscard]] QJsonObject entryFields(const record::Entry& entry, const NameBook& names);

/// A unit as people write it ("ppm NO2", "mg/l NO₃-N", "°C") turned into the code the parameter knows, where it has
/// one; otherwise as it stands.
[[nodiscard]] QString unitCode(const record::Parameter& parameter, const QString& written);

} // namespace littoral::exchange
