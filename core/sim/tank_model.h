// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sim/model_constants.h"
#include "core/sim/parameters.h"

namespace littoral::sim {

/// A factor kept as numerator and denominator, so that each rate needs one division.
template <typename Real> struct Ratio
{
    Real over{};
    Real under{};
};

/// Temperature, pH, alkalinity, free-ammonia and nitrous-acid factors of the two oxidations.
/// Injected: CO2 changes between two levels; the factors are averaged over the day by the share of time at each.
template <bool Injected> struct WaterFactors
{
    template <typename Real> struct Both
    {
        Ratio<Real> ammonia;
        Ratio<Real> nitrite;
    };

    template <typename Real>
    LITTORAL_INLINE static Both<Real> atLevel(const Coefficients<Real>& c, const Real& tan, const Real& nitrite,
                                              const Real& alkalinity, const Real& carbon)
    {
        const Real k = alkalinity * 1000.0;
        const Real h = 0.5 * (root(k * k + carbon) - k);
        const Real acid = c.ammoniumAcid + h;             // FA = tan Ka / acid
        const Real nitrous = h + kNitrousAcid_umol_per_L; // FNA = nitrite h / nitrous
        const Real inhibitedNitrous = nitrous + nitrite * h * (1.0 / kNitrousOnBoth_mgN_per_L);
        const Real tanAcid = tan * c.ammoniumAcid;
        const Real common = acid * nitrous * h;
        const Real squared = h * h;
        const Real edge = h + kHighHalf_umol_per_L;
        Both<Real> both;
        both.ammonia.over = common;
        both.ammonia.under = (edge + squared * c.inverseLowAmmonia) *
                             (acid + tanAcid * (1.0 / kFreeAmmoniaOnAmmonia_mgN_per_L)) * inhibitedNitrous;
        both.nitrite.over = common;
        both.nitrite.under = (edge + squared * c.inverseLowNitrite) *
                             (acid + tanAcid * (1.0 / kFreeAmmoniaOnNitrite_mgN_per_L)) * inhibitedNitrous;
        return both;
    }

    template <typename Real>
    LITTORAL_INLINE static Ratio<Real> blend(const Ratio<Real>& on, const Ratio<Real>& off, const Real& share)
    {
        return {share * on.over * off.under + (1.0 - share) * off.over * on.under, on.under * off.under};
    }

    template <typename Real>
    LITTORAL_INLINE static Both<Real> of(const Coefficients<Real>& c, const Real& tan, const Real& nitrite,
                                         const Real& alkalinity)
    {
        Both<Real> both = atLevel(c, tan, nitrite, alkalinity, c.carbonOff);
        if constexpr (Injected) {
            const Both<Real> on = atLevel(c, tan, nitrite, alkalinity, c.carbonOn);
            both.ammonia = blend(on.ammonia, both.ammonia, c.shareOn);
            both.nitrite = blend(on.nitrite, both.nitrite, c.shareOn);
        }
        const Real buffer = positive(alkalinity);
        both.ammonia.over *= c.ammoniaTemperature * buffer;
        both.ammonia.under *= buffer + kAlkalinityHalf_meq_per_L;
        both.nitrite.over *= c.nitriteTemperature;
        return both;
    }
};

/// All factors one: for comparison with closed forms and reference runs.
struct UnitFactors
{
    template <typename Real> struct Both
    {
        Ratio<Real> ammonia;
        Ratio<Real> nitrite;
    };

    template <typename Real>
    LITTORAL_INLINE static Both<Real> of(const Coefficients<Real>&, const Real&, const Real&, const Real&)
    {
        const Real one = broadcast<Real>(1.0);
        return {{one, one}, {one, one}};
    }
};

/// Rates of change per day of one tank (Real = double) or several (Real = Pack). Capacity form of the two-step
/// nitrification model: yield cancels out of everything a test kit can see. Knows nothing of who integrates it.
template <typename Real, typename Factors> class TankModel final
{
public:
    explicit TankModel(const Coefficients<Real>& coefficients)
        : m_c(coefficients)
    {
    }

    [[nodiscard]] Coefficients<Real>& coefficients() { return m_c; }
    [[nodiscard]] const Coefficients<Real>& coefficients() const { return m_c; }

    /// Time does not enter: rates change only through events.
    LITTORAL_INLINE void operator()(const State<Real>& y, State<Real>& rate) const
    {
        const Real tan = positive(y[kTotalAmmonia]);
        const Real nitrite = positive(y[kNitrite]);
        const Real nitrate = positive(y[kNitrate]);
        const Real capacityA = positive(y[kAmmoniaCapacity]);
        const Real capacityN = positive(y[kNitriteCapacity]);
        const Real plants = positive(y[kPlants]);

        const auto factor = Factors::of(m_c, tan, nitrite, y[kAlkalinity]);
        const Real useA = factor.ammonia.over * tan / (factor.ammonia.under * (m_c.ammoniaHalf + tan));
        const Real useN = factor.nitrite.over * nitrite / (factor.nitrite.under * (m_c.nitriteHalf + nitrite));
        const Real oxidisedA = capacityA * useA;
        const Real oxidisedN = capacityN * useN;

        const Real fast = m_c.fastSoil * positive(y[kFastSoil]);
        const Real slow = m_c.slowSoil * positive(y[kSlowSoil]);
        const Real rotted = m_c.ammonification * positive(y[kOrganic]);
        const Real denitrified = m_c.denitrification * nitrate;

        // Plants take ammonia first; the share of it is sA = tan / (half + tan), the rest of the demand is for nitrate.
        const Real tanSum = tan + kPlantAmmoniaHalf_mgN_per_L;
        const Real nitrateSum = nitrate + kPlantNitrateHalf_mgN_per_L;
        const Real demand = m_c.uptake * plants / (tanSum * nitrateSum);
        const Real takenA = demand * tan * nitrateSum;
        const Real takenZ = demand * kPlantAmmoniaHalf_mgN_per_L * nitrate;

        rate[kTotalAmmonia] = fast + slow + rotted + m_c.excretion - oxidisedA - takenA;
        rate[kNitrite] = oxidisedA - oxidisedN;
        rate[kNitrate] = oxidisedN - takenZ - denitrified;
        rate[kAmmoniaCapacity] =
            capacityA * (m_c.ammoniaGrowth * useA * (1.0 - capacityA * m_c.inverseCeiling) - m_c.decayAmmonia);
        rate[kNitriteCapacity] =
            capacityN * (m_c.nitriteGrowth * useN * (1.0 - capacityN * m_c.inverseCeiling) - m_c.decayNitrite);
        rate[kFastSoil] = -fast;
        rate[kSlowSoil] = -slow;
        rate[kOrganic] = m_c.feed - rotted;
        rate[kAlkalinity] = (rotted - 2.0 * oxidisedA - takenA + takenZ + denitrified) * (1.0 / kNitrogen_mg_per_meq) -
                            m_c.soilBuffering * (y[kAlkalinity] - kSoilAlkalinity_meq_per_L);
        rate[kPlants] = m_c.plantGrowth * plants * (1.0 - plants);
        rate[kRemoved] = takenA + takenZ + denitrified;
    }

private:
    Coefficients<Real> m_c;
};

} // namespace littoral::sim
