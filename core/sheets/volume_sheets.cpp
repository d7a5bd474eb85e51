// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheets/families.h"
#include "core/sheets/reckoner.h"
#include "core/water/volume.h"

namespace littoral::sheets {

using namespace Qt::StringLiterals;

namespace {

/// Wood once sunk is a little heavier than water (common practice): it displaces almost its mass.
constexpr double kSunkWoodDensity = 1.1;
/// Part of a solid's mass that its displaced water does not take off again.
double submerged(double mass_kg, double density)
{
    return mass_kg - water::solidDisplacement_L(mass_kg, density);
}

/// Litres the empty glass holds up to its gap, by shape.
double inside_L(const Reckoner& in)
{
    const double glass = in.number(u"glass"_s) / 10.0;
    const double water_cm = in.number(u"height"_s) - glass - in.number(u"gap"_s);
    const QString shape = in.choice(u"shape"_s);
    if (shape == u"cylinder"_s) {
        return water::cylinder_L(in.number(u"length"_s) - 2.0 * glass, water_cm);
    }
    if (shape == u"hexagon"_s) {
        // Walls of glass g move the side in by 2 g / √3.
        return water::hexagon_L(in.number(u"length"_s) - 2.0 * glass / 1.7320508075688772, water_cm);
    }
    if (shape == u"bow"_s) {
        return water::bowFront_L(in.number(u"length"_s) - 2.0 * glass, in.number(u"depth"_s) - 2.0 * glass,
                                 in.number(u"bow"_s), water_cm);
    }
    return water::innerVolume_L(
        {in.number(u"length"_s), in.number(u"depth"_s), in.number(u"height"_s), glass, in.number(u"gap"_s)});
}

void weigh(Reckoner& in)
{
    const double bed_L = in.number(u"bed"_s);
    const double solids = in.number(u"rock"_s);
    const water::Box box{in.number(u"length"_s), in.number(u"depth"_s), in.number(u"height"_s),
                         in.number(u"glass"_s) / 10.0, in.number(u"gap"_s)};
    // Grains of soil and sand are taken as quartz: 2.65 kg/L of solid (handbook, from memory).
    constexpr double kGrain = 2.65;
    const double bedSolids_L = water::bedDisplacement_L(bed_L, in.share(u"porosity"_s));
    const double extra = bedSolids_L * (kGrain - 1.0) + submerged(solids, in.number(u"density"_s));
    const water::FloorLoad load = water::floorLoad(box, extra, in.number(u"stand"_s));
    in.result(u"mass"_s, words("Weight on the floor"), load.mass_kg, u"kg"_s);
    in.result(u"pressure"_s, words("Pressure on the base, averaged"), load.pressure_kPa, u"kPa"_s);
    in.note(words("Water over the outside base is counted, which errs on the heavy side of {net} L."));
    in.caution(u"C-LOAD"_s);
}

Result<void> netVolume(Reckoner& in)
{
    const QString shape = in.choice(u"shape"_s);
    const double inside = inside_L(in);
    if (shape == u"bow"_s && water::bowRadius_cm(in.number(u"length"_s), in.number(u"bow"_s)) <= 0.0) {
        return refused(words("A bow is deeper than nothing and at most half as deep as the tank is long."),
                       words("Give bow= in cm, measured from the straight line between the corners."), u"bow"_s);
    }
    const double bed = water::bedDisplacement_L(in.number(u"bed"_s), in.share(u"porosity"_s));
    const double rock = water::solidDisplacement_L(in.number(u"rock"_s), in.number(u"density"_s));
    const double wood = water::solidDisplacement_L(in.number(u"wood"_s), kSunkWoodDensity);
    const double net = inside - bed - rock - wood;
    if (!(inside > 0.0) || !(net > 0.0)) {
        return refused(words("Nothing is left for water inside these measures."),
                       words("Lengths are outside measures in cm, glass in mm; check bed and rock."),
                       inside > 0.0 ? u"bed"_s : u"height"_s);
    }
    in.formula(words("net = inside − bed × (1 − pores) − rock / density − wood / 1.1"));
    in.figures(words("net = {inside} − {bed} × (1 − {porosity} %) − {rock} / {density} − {wood} / 1.1 = {net} L"));
    in.mainResult(u"net"_s, words("Water in the tank"), net, u"L"_s);
    in.result(u"inside"_s, words("Inside of the glass up to the gap"), inside, u"L"_s);
    if (shape == u"box"_s) {
        const double label =
            water::outerVolume_L({in.number(u"length"_s), in.number(u"depth"_s), in.number(u"height"_s), 0.0, 0.0});
        in.result(u"label"_s, words("As a label would say it, outside measures"), label, u"L"_s);
        in.result(u"overdose"_s, words("Overdose if dosed by the label"), 100.0 * (label / net - 1.0), u"%"_s);
        weigh(in);
    }
    in.note(words("Water in the pores of the bed belongs to the tank. Buckets counted on the day of filling are better "
                  "than any sum."));
    in.write(noteEntry(words("Net volume reckoned as {net} L.")));
    return in.done();
}

} // namespace

std::vector<Sheet> volumeSheets()
{
    const QString cm = u"cm"_s;
    Sheet sheet{
        u"volume"_s,
        words("Net volume"),
        words("litres of water, not of glass: every dose is reckoned on them"),
        words("Water"),
        {
            Input::number(u"length"_s, words("Length, outside"), cm, 5, 1000)
                .usually(0.2)
                .filled(FillFrom::Glass, u"length"_s),
            Input::number(u"depth"_s, words("Depth, front to back, outside"), cm, 5, 500)
                .usually(0.2)
                .filled(FillFrom::Glass, u"depth"_s),
            Input::number(u"height"_s, words("Height, outside"), cm, 5, 300)
                .usually(0.2)
                .filled(FillFrom::Glass, u"height"_s),
            Input::number(u"glass"_s, words("Glass"), u"mm"_s, 1, 60)
                .presetTo(u"6"_s)
                .decided()
                .filled(FillFrom::Glass, u"glass"_s),
            Input::number(u"gap"_s, words("Rim to water surface"), cm, 0, 100)
                .presetTo(u"3"_s)
                .usually(0.5)
                .filled(FillFrom::Layout, u"gap"_s),
            Input::number(u"bed"_s, words("Soil or sand, poured"), u"L"_s, 0, 5000)
                .presetTo(u"0"_s)
                .filled(FillFrom::Layout, u"bed"_s),
            Input::number(u"porosity"_s, words("Pores of the bed"), u"%"_s, 0, 90).presetTo(u"40"_s).usually(10),
            Input::number(u"rock"_s, words("Rock"), u"kg"_s, 0, 5000)
                .presetTo(u"0"_s)
                .filled(FillFrom::Layout, u"rock"_s),
            Input::number(u"density"_s, words("Density of the rock"), u"kg/L"_s, 1, 5).presetTo(u"2.65"_s).usually(0.1),
            Input::number(u"wood"_s, words("Sunk wood"), u"kg"_s, 0, 1000).presetTo(u"0"_s),
            Input::number(u"stand"_s, words("Stand and furniture"), u"kg"_s, 0, 2000).presetTo(u"0"_s),
            Input::choice(u"shape"_s, words("Shape"),
                          {{u"box"_s, words("rectangle")},
                           {u"bow"_s, words("bow front")},
                           {u"cylinder"_s, words("cylinder, length is its width")},
                           {u"hexagon"_s, words("hexagon, length is one side")}}),
            Input::number(u"bow"_s, words("Bow, from the corners' line"), cm, 0, 200).presetTo(u"0"_s),
        },
        words("Plane geometry. Pores of gravel 25–40 %, of sand 25–50 % (Freeze and Cherry 1979, from memory); "
              "density of quartz and granite 2.65 kg/L (from memory)."),
        netVolume,
        u"60 30 36"_s};
    return {sheet};
}

} // namespace littoral::sheets
