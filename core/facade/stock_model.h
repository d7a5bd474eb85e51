// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/gates.h"
#include "core/care/limits.h"
#include "core/facade/forecasts.h"
#include "core/facade/lane_model.h"
#include "core/facts/fact_book.h"

#include <optional>
#include <vector>

/// Which plants and animals live in a layout and how its water suits them, as plain values without words. Values are in
/// the parameter's shown unit.
namespace littoral::facade {

/// The stretch of readings that a range is held against.
inline constexpr double kStockWaterDays = 14.0;
/// Least quarantine, and the better one (21 days quoted as a generally accepted minimum in a reproduction of the
/// UF/IFAS white-spot circular; 28 to 42 are common practice).
inline constexpr int kQuarantineLeast_d = 21;
inline constexpr int kQuarantineBetter_d = 28;

struct StockRange
{
    double low = 0.0;
    double high = 0.0;
};

/// What animals' water is held against whatever the species, mg N/L: ammonia by the first gate's weekly limit (common
/// practice), nitrite more strictly where chloride is low.
struct AnimalLimits
{
    double ammonia = care::Limits{}.ammoniaClear;
    double nitrite = care::Limits{}.nitriteAnimals;
    double free = care::Limits{}.freeAmmoniaAnimals;
    double nitrate = care::Limits{}.nitrateAnimals;
};
/// As the keeper has set them.
[[nodiscard]] AnimalLimits animalLimits(const record::Row& row, const record::LayoutRecord& layout,
                                        const record::Moment& at);

enum class Suits {
    Yes,
    Partly, ///< the newest reading is inside, some of the last fortnight were not
    No,     ///< the newest reading is outside
    Unknown ///< no reading in the last fortnight, or no range known
};

/// One parameter that all animals are compared on, with the tank's own water.
struct StockColumn
{
    QString parameter;
    double from = 0.0, to = 1.0;     ///< of the scale all rows share
    std::optional<StockRange> water; ///< of the last fortnight
    std::optional<StockRange> ahead; ///< forecast of the coming fortnight, 8 in 10
    bool isForecast = false;         ///< the forecast carries it; pH, hardness and temperature it does not
    std::optional<double> newest;
    int readings = 0;
};

struct StockCell
{
    std::optional<StockRange> borne;
    Suits suits = Suits::Unknown;
    bool aheadLeaves = false; ///< the forecast goes outside
};

enum class StockPlace { Here, Planned, Considered };

enum class ConcernKind {
    SmallGroup, ///< value: animals, limit: least group
    SmallTank,  ///< value: litres net, limit: least litres
    EatsShrimp,
    EatsYoungShrimp,
    EatsSnails,
    EatsSmallFish,
    EatsPlants,
    NipsFins,
    Territorial,
    MalesFight,
    NoCommonWater, ///< no value of `parameter` suits both
    RecentLoss,    ///< value: animals lost in the last fortnight
    NeedsFilm,
    Jumps,
    Regulated,
};

struct StockConcern
{
    ConcernKind kind = ConcernKind::SmallGroup;
    QString other; ///< species it is about: the neighbour
    QString parameter;
    double value = 0.0;
    double limit = 0.0;
    bool serious = false; ///< speaks against the animal in this tank; else to know
};

struct AnimalRow
{
    StockPlace place = StockPlace::Here;
    QString subject; ///< as recorded
    std::optional<facts::Species> species;
    int count = 0;
    int lost = 0;
    record::Moment since;         ///< first arrival; the day planned for
    record::EntryId entry;        ///< newest addition
    std::vector<StockCell> cells; ///< as StockModel::columns
    care::Known gate = care::Known::Unknown;
    std::vector<StockConcern> concerns; ///< serious ones first
    Status status = Status::Unknown;

    [[nodiscard]] bool waterSuits() const; ///< no cell is No
};

struct CoverPoint
{
    qint64 at = 0;
    double share = 0.0; ///< 0..1
};

struct PlantRow
{
    QString subject;
    std::optional<facts::Species> species;
    QString where;
    std::optional<int> count;
    QString unit;
    record::Moment since;
    record::EntryId entry;
    std::vector<CoverPoint> cover; ///< oldest first
    int lightNeed = 0;             ///< 1..3; 0: not known
    int co2Need = 0;               ///< 1..4: none, optional, helpful, needed; 0: not known
    bool lightShort = false, lightMuch = false, co2Short = false;
    QString trouble; ///< subject of the newest observation about it that is not gone
    int severity = 0;
    record::Moment troubleAt;
    Status status = Status::Unknown;
};

struct MediaMove
{
    record::TankId from, to;
    record::Moment at;
    std::optional<double> share;
    bool squeezings = false;
    record::EntryId entry;
};

/// Days since the last arrival or sign: what quarantine counts from.
struct QuarantineClock
{
    enum class Cause { Arrival, Loss, Sign };
    Cause cause = Cause::Arrival;
    QString subject;
    record::Moment since;
    int days = 0;
    std::optional<record::Moment> done; ///< the keeper's word that quarantine was done
};

struct StockModel
{
    record::TankId tank;
    record::LayoutId layout;
    QString name;
    double glass_L = 0.0;
    double net_L = 0.0; ///< zero: not known
    int ageDays = 0;
    bool running = false; ///< flooded and not ended
    std::vector<StockColumn> columns;
    std::vector<AnimalRow> animals; ///< living here, then planned, then considered
    std::vector<PlantRow> plants;
    std::vector<care::GateState> gates;
    std::optional<double> par, lightHours, co2_mg_per_L;
    std::vector<MediaMove> moves; ///< of the whole row, oldest first
    std::optional<QuarantineClock> clock;

    [[nodiscard]] std::optional<double> lightSum() const; ///< mol/m²/d: PAR × hours × 0.0036
    [[nodiscard]] int animalCount() const;
};

/// An animal that is thought about.
struct StockWish
{
    QString species; ///< id
    int count = 1;
};

/// As the record tells at `now`. `forecast` may be null.
[[nodiscard]] StockModel stockOf(const record::Row& row, record::LayoutId layout, const record::Moment& now,
                                 const facts::FactBook& book, const ForecastResult* forecast,
                                 const std::optional<StockWish>& wish = {});

/// The species a recorded subject names: by id, scientific or common name, else the only species whose common name has
/// all its words; nullptr when none or several do.
[[nodiscard]] const facts::Species* speciesNamed(const facts::FactBook& book, const QString& subject);

/// Steps of light and carbon dioxide, 0..4, for the level drawn beside a plant's need. Light by the daily sum: to 2.5,
/// 4 and 6 mol/m² little, middling, much (common practice); CO₂ by mg/L: to 5, 15 and 30 (common practice).
[[nodiscard]] double lightLevel(double mol_per_m2_d);
[[nodiscard]] double co2Level(double mg_per_L);

} // namespace littoral::facade
