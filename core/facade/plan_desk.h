// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/forecasts.h"
#include "core/forecast/plans.h"

#include <QObject>
#include <memory>

namespace littoral::facade {

/// Plans compared for one layout, with the inputs they belong to.
struct PlanSet
{
    std::shared_ptr<const ForecastResult> basis; ///< the forecast whose members were used
    forecast::PlanTable table;
    QString gate; ///< key of the gate water is counted to
    double net_L = 0.0;
};

/// A forecast under a plan that is being looked at but not adopted.
struct PlanPreview
{
    std::shared_ptr<const ForecastResult> basis; ///< the forecast whose members were used
    forecast::ChangePlan plan;
    forecast::Forecast forecast;
    forecast::PlanOutcome outcome; ///< the plan's own row, from the same members
    bool quick = false;            ///< few members: the full answer follows
};

/// The plan as dated water changes.
struct PlannedChange
{
    record::Moment at;
    double fraction = 0.0;
    record::SourceWaterId source;
};

/// Water-change plans of the row's layouts, worked out off the calling thread on the members the forecast was made
/// with; newest request wins, answers arrive by signal. When a new forecast of a layout arrives, its preview is dropped
/// (it belonged to the old one) and its plans, if they were asked for, are compared again.
class PlanDesk final : public QObject
{
    Q_OBJECT

public:
    /// `keeper` and `forecasts` outlive the desk.
    PlanDesk(Keeper& keeper, Forecasts& forecasts, QObject* parent = nullptr);
    ~PlanDesk() override;

    /// Compares the grid of plans until this gate ("G1".."G4") opens; the end of the cycle stands in for a key that is
    /// no gate's. Returns at once; nothing happens without a forecast, or when these plans are there or on their way.
    void compare(record::LayoutId layout, const QString& gate);
    [[nodiscard]] std::shared_ptr<const PlanSet> plans(record::LayoutId layout) const;
    [[nodiscard]] bool isComparing(record::LayoutId layout) const;

    /// Runs the forecast under this plan: a quick answer first, then the full one. A slider may call it at every move.
    void preview(record::LayoutId layout, const forecast::ChangePlan& plan, const QString& gate);
    [[nodiscard]] std::shared_ptr<const PlanPreview> previewOf(record::LayoutId layout) const;
    /// Forgets the preview: the page shows the plan that is followed.
    void dropPreview(record::LayoutId layout);

    /// Blocks until nothing is running (tests, pictures).
    void wait();

signals:
    void compared(littoral::record::LayoutId layout);
    void previewReady(littoral::record::LayoutId layout);
    void failed(littoral::record::LayoutId layout, const QString& sentence);

private:
    void takePlans(record::LayoutId layout, quint64 ticket, const std::shared_ptr<PlanSet>& made,
                   const QString& failure);
    void takePreview(record::LayoutId layout, quint64 ticket, const std::shared_ptr<PlanPreview>& made,
                     const QString& failure);
    void forgetAll();

    struct Private;
    std::unique_ptr<Private> d;
};

/// The gate rule of a case by its key; the limits of a finished cycle when there is no such gate.
[[nodiscard]] forecast::GateRule gateRuleOf(const ForecastCase& inputs, const QString& gate);

/// The question that compares the grid of plans for a case until a gate opens.
[[nodiscard]] forecast::PlanQuestion planQuestion(const ForecastCase& inputs, const QString& gate);

/// Litres of water in the layout's tank; zero when not known.
[[nodiscard]] double netLitres(const record::Row& row, record::LayoutId layout);

/// The plan's changes from the forecast's day to the end of its window, as moments of the layout: at the hour water is
/// usually changed, and never before the forecast's own instant.
[[nodiscard]] std::vector<PlannedChange> plannedChanges(const ForecastResult& basis, const forecast::ChangePlan& plan,
                                                        const record::LayoutRecord& layout, double windowDays);

/// What adopting would take out and put in, for the list shown before.
struct Adoption
{
    std::vector<record::Entry> replaced; ///< planned changes that go
    std::vector<PlannedChange> added;
};
/// Every planned change that is still open goes, also one that is past its day.
[[nodiscard]] Adoption adoptionOf(const record::LayoutRecord& layout, const std::vector<PlannedChange>& changes,
                                  const record::Moment& now);

/// Adopts: later planned changes of the layout are replaced by these in one change that undo takes back, and the plan
/// is kept under its name. Until its last change the cadence proposes nothing beside it.
[[nodiscard]] Result<void> adopt(Keeper& keeper, record::LayoutId layout, const QString& name,
                                 const forecast::ChangePlan& plan, const std::vector<PlannedChange>& changes);

} // namespace littoral::facade
