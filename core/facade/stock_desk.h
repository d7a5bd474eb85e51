// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/forecasts.h"
#include "core/facade/stock_model.h"
#include "core/facts/fact_book.h"

#include <QObject>
#include <memory>

/// An addition of animals, run through the forecast before they are bought.
namespace littoral::facade {

/// Feed a day as a share of the animals' mass (common practice for small adult fish; shrimp and snails graze and are
/// fed less).
inline constexpr double kFeedOfMass_fish = 0.02;
inline constexpr double kFeedOfMass_grazer = 0.005;
/// Days the water is watched for after the last lot.
inline constexpr double kTrialDays = 21.0;
/// Days between lots (common practice: no more than a quarter to a third of what is planned in a week).
inline constexpr double kLotDays = 7.0;

struct Addition
{
    facts::Species species;
    int count = 1;
    int lots = 1;
    record::Moment first; ///< of the first lot
    double feedOfMass = kFeedOfMass_fish;

    [[nodiscard]] double feed_g_per_d() const;
    [[nodiscard]] int inLot(int lot) const; ///< animals of lot 0 .. lots-1; the first ones take what does not divide
};

/// Ammonia a day that so many of the animals bring, mg N per litre of tank water: feed × protein × 0.092, the
/// conversion the forecast uses for feeding. Zero when the litres or the mass are not known.
[[nodiscard]] double additionLoad(const Addition& addition, int count, double net_L);

/// What an addition would do, over the calibrated members.
struct AdditionTrial
{
    std::shared_ptr<const ForecastResult> basis;
    Addition addition;
    double net_L = 0.0;
    double loadNow = 0.0;                                           ///< mg N/L/d, feeding and animals as recorded
    double loadAdded = 0.0;                                         ///< mg N/L/d
    forecast::Band capacity{};                                      ///< of the weaker guild today, mg N/L/d
    std::vector<double> days;                                       ///< since flooding
    std::vector<forecast::Band> ammonia, nitrite;                   ///< with the addition, mg N/L
    std::vector<forecast::Band> ammoniaBefore, nitriteBefore;       ///< without
    double ammoniaLimit = 0.0, nitriteLimit = 0.0, freeLimit = 0.0; ///< mg N/L
    /// Odds that the peak goes over the limit at some time, with the addition and without.
    double ammoniaOver = 0.0, nitriteOver = 0.0, freeOver = 0.0;
    double ammoniaOverBefore = 0.0, nitriteOverBefore = 0.0, freeOverBefore = 0.0;
    struct GateOdds
    {
        QString key;
        double before = 0.0; ///< odds that the water keeps to the gate's limits all the time
        double after = 0.0;
    };
    std::vector<GateOdds> gates;
};

/// Runs the trial on this thread. BadInput without litres or members, Cancelled when stopped.
[[nodiscard]] Result<AdditionTrial> tryAddition(const std::shared_ptr<const ForecastResult>& basis,
                                                const Addition& addition, double net_L, const AnimalLimits& limits,
                                                const std::stop_token& stop = {});

/// Writes the lots as planned entries, or all of it as added at `now`, in one change that undo takes back. `reason`
/// goes into the note (why a gate was not waited for).
[[nodiscard]] Result<void> planAddition(Keeper& keeper, record::LayoutId layout, const Addition& addition,
                                        const QString& reason = {});
[[nodiscard]] Result<void> recordAddition(Keeper& keeper, record::LayoutId layout, const Addition& addition,
                                          const QString& reason = {});

/// Trials off the calling thread; the newest wins, answers arrive by signal.
class StockDesk final : public QObject
{
    Q_OBJECT

public:
    /// Both outlive the desk.
    StockDesk(Keeper& keeper, Forecasts& forecasts, QObject* parent = nullptr);
    ~StockDesk() override;

    /// Returns at once; nothing happens without a forecast of the layout.
    void weigh(record::LayoutId layout, const Addition& addition);
    void forget();
    [[nodiscard]] std::shared_ptr<const AdditionTrial> trial() const;
    [[nodiscard]] bool isRunning() const;
    /// Blocks until nothing is running (tests, pictures).
    void wait();

signals:
    void weighed();
    void failed(const QString& sentence);

private:
    struct Private;
    std::unique_ptr<Private> d;
};

} // namespace littoral::facade
