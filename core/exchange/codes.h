// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/reading.h"
#include "core/record/regimen.h"
#include "core/record/tank.h"
#include "core/record/task.h"

#include <QString>
#include <QStringList>
#include <optional>

/// The words that files and the command line use for choices: "rich-soil", "mature-media" ... Lower case, never
/// translated.
namespace littoral::exchange {

[[nodiscard]] QString code(record::StartMethod value);
[[nodiscard]] QString code(record::Bed value);
[[nodiscard]] QString code(record::PlantDensity value);
[[nodiscard]] QString code(record::Co2Mode value);
[[nodiscard]] QString code(record::YesNoUnknown value);
[[nodiscard]] QString code(record::SourceKind value);
[[nodiscard]] QString code(record::KitKind value);
[[nodiscard]] QString code(record::TaskState value);
[[nodiscard]] QString code(record::DoseForm value);

/// "mon" ... "sun" of the days whose bit is set, Monday bit 0; the other way round nothing for another word.
[[nodiscard]] QStringList weekdayCodes(int days);
[[nodiscard]] std::optional<int> weekdayFromCode(const QString& word);

/// Nothing when there is no such word.
template <typename T> [[nodiscard]] std::optional<T> fromCode(const QString& word);
/// All the words there are, in the order of the enumeration.
template <typename T> [[nodiscard]] QStringList codes();

} // namespace littoral::exchange
