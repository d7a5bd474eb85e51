// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/record/row.h"

#include <optional>
#include <span>
#include <vector>

/// What a source water comes to, whether measured or made up of its parts. Everything that reckons with source water
/// asks here.
namespace littoral::record {

enum class Origin {
    Unknown,
    Measured, ///< stated for this water: goes before anything reckoned
    Reckoned, ///< from the parts of a blend and their shares
    Assumed,  ///< demineralised water without figures of its own: free of salts
};

struct SourceFigure
{
    std::optional<double> value;
    Origin origin = Origin::Unknown;
};

struct SourceProfile
{
    SourceFigure nitrate_mgN_per_L;
    SourceFigure alkalinity_meq_per_L;
    SourceFigure hardness_mmol_per_L;
    SourceFigure chloride_mg_per_L;
    /// Of a blend from the alkalinity and the carbon of its parts, never as a mean of pH.
    SourceFigure ph;
    YesNoUnknown chloramine = YesNoUnknown::Unknown;
    Origin chloramineOrigin = Origin::Unknown;
};

/// One water of a blend that is no blend itself, and its share of the litres.
struct SourcePart
{
    const SourceWater* water = nullptr; ///< points into what was passed in
    double share = 0.0;
};

/// What is poured together for one litre: the water itself when it is no blend; blends of blends are taken apart. The
/// error says which blend has a part missing, no share, or holds itself.
[[nodiscard]] Result<std::vector<SourcePart>> sourceParts(std::span<const SourceWater> all, const SourceWater& water);

/// A blend whose parts cannot be told has its own figures and nothing else.
[[nodiscard]] SourceProfile sourceProfile(std::span<const SourceWater> all, const SourceWater& water);
/// Everything unknown when there is no such water.
[[nodiscard]] SourceProfile sourceProfile(const Row& row, SourceWaterId water);

/// What is wrong with the blends of the row, a sentence each; empty: sound.
[[nodiscard]] QStringList blendProblems(std::span<const SourceWater> all);

/// Tap water or taps mixed, and nothing softer; false where the parts are not known.
[[nodiscard]] bool isAllFromTap(std::span<const SourceWater> all, const SourceWater& water);

} // namespace littoral::record
