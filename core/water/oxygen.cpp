// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/oxygen.h"

#include "core/water/carbonate.h"
#include "core/water/refusal.h"

#include <cmath>

namespace littoral::water {

double vapourPressure_atm(double t_C)
{
    const double kelvin = t_C + kZeroCelsius_K;
    return std::exp(11.8571 - 3840.70 / kelvin - 216961.0 / (kelvin * kelvin));
}

Result<double> standardPressure_atm(double height_m)
{
    if (!within(height_m, -500.0, 5000.0)) {
        return refuse("The height must lie from 500 m below to 5000 m above the sea.");
    }
    return std::pow(1.0 - 2.25577e-5 * height_m, 5.25588);
}

Result<double> oxygenSaturation_mg_per_L(double t_C, double pressure_atm)
{
    if (!within(t_C, 0.0, 40.0)) {
        return refuse("The oxygen formula holds from 0 to 40 °C.");
    }
    if (!within(pressure_atm, 0.5, 1.1)) {
        return refuse("The oxygen formula holds from 0.5 to 1.1 atm.");
    }
    const double kelvin = t_C + kZeroCelsius_K;
    const double inverse = 1.0 / kelvin;
    const double atOne =
        std::exp(-139.34411 +
                 inverse * (1.575701e5 + inverse * (-6.642308e7 + inverse * (1.243800e10 - inverse * 8.621949e11))));
    const double theta = 0.000975 - 1.426e-5 * t_C + 6.436e-8 * t_C * t_C;
    const double u = vapourPressure_atm(t_C);
    return atOne * pressure_atm * (1.0 - u / pressure_atm) * (1.0 - theta * pressure_atm) / ((1.0 - u) * (1.0 - theta));
}

double schmidtCo2(double t_C)
{
    return 1911.1 + t_C * (-118.11 + t_C * (3.4527 - t_C * 0.041320));
}

double schmidtOxygen(double t_C)
{
    return 1800.6 + t_C * (-120.10 + t_C * (3.7818 - t_C * 0.047608));
}

double co2TransferPerOxygen(double t_C)
{
    return std::sqrt(schmidtOxygen(t_C) / schmidtCo2(t_C));
}

double relaxed(double start, double equilibrium, double rate_per_h, double hours)
{
    return equilibrium + (start - equilibrium) * std::exp(-rate_per_h * hours);
}

double feedToHold_g_per_h(double level_mg_per_L, double equilibrium_mg_per_L, double rate_per_h, double net_L)
{
    return rate_per_h * net_L * (level_mg_per_L - equilibrium_mg_per_L) / 1000.0;
}

Result<OxygenSwing> oxygenSwing(const OxygenDay& day)
{
    if (!(day.exchange_per_h > 0.0)) {
        return refuse("Without exchange through the surface the balance has no steady day.");
    }
    if (!within(day.lightHours, 0.0, 24.0)) {
        return refuse("A day has 0 to 24 hours of light.");
    }
    OxygenSwing swing;
    swing.lightLevel = day.saturation_mg_per_L + (day.production - day.respiration) / day.exchange_per_h;
    swing.darkLevel = day.saturation_mg_per_L - day.respiration / day.exchange_per_h;
    const double a = std::exp(-day.exchange_per_h * day.lightHours);
    const double b = std::exp(-day.exchange_per_h * (24.0 - day.lightHours));
    swing.dusk = (swing.lightLevel * (1.0 - a) + a * swing.darkLevel * (1.0 - b)) / (1.0 - a * b);
    swing.dawn = swing.darkLevel + (swing.dusk - swing.darkLevel) * b;
    return swing;
}

double lightResponse(double most, double slope, double light)
{
    return most > 0.0 ? most * std::tanh(slope * light / most) : 0.0;
}

double co2PerOxygen_g_per_g(double quotient)
{
    return kMolarMassCO2 / (quotient * 2.0 * atomic::kO);
}

} // namespace littoral::water
