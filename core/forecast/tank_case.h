// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <limits>
#include <optional>
#include <string>
#include <vector>

/// What a forecast is asked about: one layout as the model sees it. Days are days since flooding (fractions are times
/// of day); concentrations are mg N/L of tank water; alkalinity is meq/L. No dates, names or kit brands get this far.
namespace littoral::forecast {

enum class SoilKind { Inert, Mild, Rich };
enum class PlantDensity { None, Sparse, Medium, Dense };
enum class Chloramine { No, Unknown, Yes };

/// What readings measure. FreeAmmonia is derived: it is forecast but never read.
enum class Substance { TotalAmmonia, Nitrite, Nitrate, FreeAmmonia };

struct SourceWater
{
    std::optional<double> nitrate_mgN_per_L; ///< nothing when the keeper has not measured it
    Chloramine chloramine = Chloramine::Unknown;
    double alkalinity_meq_per_L = 1.5;
};

struct Co2Schedule
{
    bool injected = false;
    double level_mg_per_L = 25.0; ///< held while on
    double hoursPerDay = 8.0;
};

struct Setup
{
    SoilKind soil = SoilKind::Rich;
    double soil_L_per_L = 0.17; ///< litres of soil per litre of net water
    PlantDensity plants = PlantDensity::Medium;
    std::vector<SourceWater> sources{SourceWater{}}; ///< [0] filled the tank
    Co2Schedule co2;
    double temperature_C = 24.0;
    /// The run starts here. Zero for a layout followed from its flooding; later for a settled layout whose first weeks
    /// do not matter any more (see Established).
    double startDay = 0.0;
    /// At startDay the filter already carries its load and the soil is `startDay` old: priors of a settled tank.
    bool established = false;
};

enum class EventKind {
    WaterChange,   ///< amount: fraction of the net volume, 0..1; source: which SourceWater
    AmmoniaDose,   ///< amount: rise of total ammonia, mg N/L
    FeedRate,      ///< amount: organic nitrogen fed from now on, mg N/L/d (replaces the earlier rate)
    LivestockRate, ///< amount: change of the animals' own excretion from now on, mg N/L/d (may be negative)
    StarterDose,   ///< amount: label doses
    MatureMedia,   ///< amount: share of a whole mature filter moved in, 0..1
    Squeezings,    ///< amount: share of a whole mature filter's squeezings, 0..1
};

struct Event
{
    double day = 0.0;
    EventKind kind = EventKind::WaterChange;
    double amount = 0.0;
    int source = 0;
};

/// A kit as the likelihood needs it. Steps ascend in the kit's own unit and begin with 0; no steps means a digital
/// reading.
struct Kit
{
    Substance substance = Substance::TotalAmmonia;
    std::vector<double> steps;
    double unitsPerMgN = 1.0;     ///< kit unit per mg N/L, e.g. 3.2844 when it reads nitrite as the ion
    bool readsNitriteToo = false; ///< reduction-type nitrate chemistry
    double scatterFactor = 1.0;   ///< 1.6 for strips
};

/// One reading in the kit's unit. low == high: a plain value. low < high: between two steps. low == 0 with `below`:
/// "<high". high == infinity: ">low".
struct CaseReading
{
    double day = 0.0;
    int kit = 0;
    double low = 0.0;
    double high = 0.0;
    bool below = false;
    std::int64_t tag = 0; ///< the caller's own id, handed back with flags
};

/// What earlier layouts taught about one unknown: normal with this mean and deviation, in the prior's own deviations
/// (0 and 1 are the prior itself). See learning.h.
struct LearnedUnknown
{
    std::size_t unknown = 0; ///< place in the case's z
    double mean = 0.0;
    double sd = 1.0;
};

/// Everything the forecaster is told. Events after decisionDay are the plan. Readings after it are refused by check.
struct TankCase
{
    Setup setup;
    std::vector<Kit> kits;
    std::vector<Event> events; ///< any order; sorted by the runner
    std::vector<CaseReading> readings;
    double decisionDay = 0.0; ///< "now"
    std::vector<LearnedUnknown> learned;
};

/// A set of limits that must hold together; its date is when they have held for spanDays and the tank is minDay old.
struct GateRule
{
    std::string key; ///< "G1".."G4"
    double minDay = 0.0;
    double total_mgN_per_L = std::numeric_limits<double>::infinity();
    double free_mgN_per_L = std::numeric_limits<double>::infinity();
    double nitrite_mgN_per_L = std::numeric_limits<double>::infinity();
    double spanDays = 0.0;
};

inline constexpr std::array<double, 7> kQuantiles{0.025, 0.1, 0.25, 0.5, 0.75, 0.9, 0.975};
using Band = std::array<double, 7>; ///< values at kQuantiles

struct Request
{
    TankCase tank;
    double horizonDays = 28.0;     ///< rows from decisionDay to decisionDay + horizonDays
    double stepDays = 1.0;         ///< spacing of the rows; the first is decisionDay itself
    std::vector<double> extraDays; ///< further instants (days since flooding, >= decisionDay) to report
    std::vector<GateRule> gates;
    int focusGate = -1;            ///< whose date the next tests are to narrow; -1: completion
    double load_mgN_per_L_d = 0.0; ///< what the filter is to carry (planned stock); 0: none given
    double inflation = 1.0;        ///< widens what the future may add, learned from how earlier bands held
    std::uint64_t seed = 0;        ///< from the tank's identity and reading set: same data, same answer
    int particles = 512;
    int draws = 600;
};

/// Bands of one substance at the rows' days: the value just before any event at that instant.
struct SubstanceForecast
{
    Substance substance = Substance::TotalAmmonia;
    std::vector<Band> water; ///< mg N/L, one per row
    std::vector<Band> kit; ///< what the tank's (newest) kit for it would show, kit unit, kit gain included, not rounded
                           ///< to steps; empty for FreeAmmonia
    std::vector<Band> fitted;  ///< the fitted past, mg N/L, at Forecast::pastDays
    std::vector<double> steps; ///< of the tank's newest kit for it; empty when digital or without a kit
    /// Probability of reading each step at the rows up to kStepOddsDays ahead and at extraDays; empty at other rows.
    std::vector<std::vector<double>> stepOdds;
};

/// How far ahead a reading's steps are given odds.
inline constexpr double kStepOddsDays = 8.0;

/// When something will have happened: mass of 'not by lastDay' is its own outcome and never averaged with a day.
struct DateOdds
{
    Band day{};                   ///< days since flooding; +infinity where the quantile falls in 'not by lastDay'
    double notByLast = 1.0;       ///< probability
    double lastDay = 0.0;         ///< how far the members were run: at least day 60 and at least the horizon
    std::vector<double> gridDays; ///< days at which cumulative is given, one a day from decisionDay to lastDay
    std::vector<double> cumulative;
};

/// What one guild of the filter could oxidise with the water at its clear limit (0.25 ppm), mg N/L/d.
struct CapacityForecast
{
    std::vector<Band> future; ///< one per row
    std::vector<Band> fitted; ///< at Forecast::pastDays
};

/// One possible answer of a test and what would then be believed about the date.
struct TestOutcome
{
    double low = 0.0; ///< kit unit; low == high: a step of the card
    double high = 0.0;
    double probability = 0.0;
    double day10 = 0.0, day50 = 0.0, day90 = 0.0; ///< of the date; +infinity in 'not by lastDay'
};

/// A test that could be made, and how much it is expected to narrow the 8-in-10 range of the date it is asked about.
struct TestValue
{
    Substance substance = Substance::TotalAmmonia;
    double day = 0.0;
    double width_d = 0.0; ///< of the range today; a date past lastDay counts as lastDay
    double expectedWidth_d = 0.0;
    std::vector<TestOutcome> outcomes; ///< ascending
    [[nodiscard]] double narrowing_d() const { return width_d - expectedWidth_d; }
};

struct FlaggedReading
{
    std::int64_t tag = 0;
    double probability = 0.0; ///< posterior predictive probability of a reading at least this surprising
};

struct Diagnostics
{
    bool fitted = true; ///< false: the readings contradict the model; the bands are the prior's, wide
    int stages = 0;
    double finalAcceptance = 0.0;
    double finalEss = 0.0;
    double failedShare = 0.0; ///< runs stopped by the step cap
    int runs = 0;
    double shrinkage = 0.0; ///< 1 - posterior sd / prior sd of ln ammonia capacity at the decision day
    std::vector<FlaggedReading> flagged;
};

struct Forecast
{
    std::vector<double> days;     ///< rows, days since flooding
    std::vector<double> pastDays; ///< startDay .. decisionDay for the fitted past
    std::array<SubstanceForecast, 4> substances;
    DateOdds complete; ///< daily means of total ammonia and nitrite both stay below 0.25 ppm (as the common card reads)
    std::vector<DateOdds> gates;              ///< same order as Request::gates
    std::array<CapacityForecast, 2> capacity; ///< ammonia oxidisers, nitrite oxidisers
    /// First day from which both guilds carry Request::load to the end, the odds that readings alone do not give;
    /// empty grid without a load.
    DateOdds carriesLoad;
    std::vector<TestValue> nextTests; ///< candidates of the coming week, most telling first
    Diagnostics diagnostics;
};

} // namespace littoral::forecast
