// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>
#include <span>
#include <vector>

namespace littoral::record {

/// A unit a parameter may be typed in: canonical = typed * factor + offset. The code says the chemical basis where
/// there is one ("mg/L NO2", "mg/L N"), so a bare "mg/L" never has to be guessed at.
struct Unit
{
    QString code;  ///< as in files
    QString label; ///< as on screen
    double factor = 1.0;
    double offset = 0.0;

    [[nodiscard]] double toCanonical(double typed) const { return typed * factor + offset; }
    [[nodiscard]] double fromCanonical(double canonical) const { return (canonical - offset) / factor; }
};

/// What a reading measures. The first unit is the canonical one in which values are kept and compared; `shown` is the
/// one people meet first.
struct Parameter
{
    QString key;    ///< as in files and rules: tan, no2, no3, ph, kh, gh, temp ...
    QString name;   ///< "Total ammonia"
    QString symbol; ///< "NH₃/₄"
    std::vector<Unit> units;
    int shownUnit = 0;
    int decimals = 1;   ///< in the shown unit
    double lowest = 0;  ///< impossible below, canonical
    double highest = 0; ///< impossible above, canonical

    [[nodiscard]] const Unit& canonical() const { return units.front(); }
    [[nodiscard]] const Unit& shown() const { return units[static_cast<std::size_t>(shownUnit)]; }
    [[nodiscard]] const Unit* unit(const QString& code) const; ///< nullptr when it has no such unit
};

/// Every parameter the program knows, in the order in which they are shown. To add one, add a row to parameter.cpp.
[[nodiscard]] std::span<const Parameter> parameters();
/// By key, or by its name or symbol in any case; nullptr when unknown.
[[nodiscard]] const Parameter* findParameter(const QString& keyOrName);

} // namespace littoral::record
