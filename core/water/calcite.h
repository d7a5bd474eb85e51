// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/carbonate.h"

/// Limestone: does it dissolve, and where does that end. Direction and ceiling only; the time it takes depends on area
/// and flow and is not reckoned.
namespace littoral::water {

/// Saturation index of calcite: below 0 limestone dissolves, above it may scale. Davies activities with the two pairs
/// calcium forms with bicarbonate and carbonate; 0.01-0.03 above full speciation when there is much sulfate.
[[nodiscard]] Result<double> calciteSaturation(double pH, MeqPerL alkalinity, double calcium_mmol_per_L,
                                               const Medium& medium);

/// Simplified Langelier index from dissolved solids and "as CaCO3" figures. Sits about 0.2 below the saturation index
/// in soft water: a screen only. Refuses figures that are not above zero.
[[nodiscard]] Result<double> langelierIndex(double pH, double solids_mg_per_L, double t_C, HardnessAsCaCO3 calcium,
                                            AlkalinityAsCaCO3 alkalinity);

/// Where limestone stops dissolving.
struct LimestoneEnd
{
    double dissolved_mmol_per_L = 0.0; ///< CaCO3 gone into the water; negative when it falls out
    MeqPerL alkalinity;
    double calcium_mmol_per_L = 0.0;
    double pH = 0.0;
};
/// Water that starts with `alkalinity` and `calcium` and is held at `co2` while limestone lies in it. Hardness and
/// alkalinity rise by the same number of degrees.
[[nodiscard]] Result<LimestoneEnd> limestoneEnd(MeqPerL alkalinity, double calcium_mmol_per_L, Co2 co2,
                                                const Medium& start);

} // namespace littoral::water
