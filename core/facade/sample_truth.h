// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/random.h"
#include "core/record/reading.h"
#include "core/record/tank.h"

#include <QJsonObject>
#include <map>
#include <vector>

namespace littoral::facade {

/// The invented truth behind one layout of the sample row: the cycle model run with the scenario's own figures. Only
/// the sample row is made this way; a real tank's truth is never known.
class SampleTruth
{
public:
    struct Level
    {
        double totalAmmonia_mgN_per_L = 0.0;
        double nitrite_mgN_per_L = 0.0;
        double nitrate_mgN_per_L = 0.0;
    };
    struct Change
    {
        double day = 0.0;
        double fraction = 0.0;
        record::SourceWaterId source;
    };

    /// Runs the layout from flooding to `lastDay`; `testDays` sorted. Sources are looked up by the first change's
    /// order.
    SampleTruth(const QJsonObject& layout, const record::Layout& facts, double litres,
                const std::vector<Change>& changes, const std::vector<record::SourceWater>& sources,
                const std::vector<double>& testDays, double lastDay);

    [[nodiscard]] const Level& at(double testDay) const { return m_levels.at(testDay); }

private:
    std::map<double, Level> m_levels;
};

/// What a person would write down for a true level with this kit: the step the colour is nearest to, with the scatter
/// of an eye and a card; whole or half degrees for drop counts; the meter's decimals for digital kits.
[[nodiscard]] QString readThrough(const record::TestKit& kit, double trueInKitUnit, Random& random);

} // namespace littoral::facade
