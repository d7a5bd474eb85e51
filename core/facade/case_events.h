// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/forecast_case.h"
#include "core/record/source_profile.h"

namespace littoral::facade {

/// A source water for the forecaster; what was not measured stays open. Alkalinity falls back on the tank's first KH
/// reading, then on a middling tap water.
[[nodiscard]] forecast::SourceWater caseWater(const record::SourceProfile& source, const record::LayoutRecord& known);

/// Turns the record's entries, and the plan, into the forecaster's events.
class CaseEvents
{
public:
    /// `full`: everything, for the plan; `then`: as known at asOf; `litres`: net, zero when unknown.
    CaseEvents(const record::Row& everything, const record::LayoutRecord& whole, const record::Row& known,
               double netLitres, ForecastCase& into)
        : row(everything)
        , full(whole)
        , then(known)
        , litres(netLitres)
        , out(into)
    {
    }

    /// What was done by asOf, and how the layout began.
    void collectPast();
    /// What is to come, to lastDay.
    void collectPlan(double lastDay);
    /// Sorts the events; those before a settled tank's run become its starting rates.
    void finish();

private:
    const record::Row& row;
    const record::LayoutRecord& full;
    const record::Row& then;
    const double litres;
    ForecastCase& out;

    void addEntry(const record::Entry& entry);
    void addDose(const record::Entry& entry, double day);
    void addFeeding(const record::Entry& entry, double day);
    void addMedia(const record::Entry& entry, double day);
    void addStart();
    /// The cadence's rounds after `after` (an invalid day: all of them).
    void addCadence(double lastDay, const QDate& after);
    void foldBeforeStart();
    void add(double day, forecast::EventKind kind, double amount, int source = 0);
    [[nodiscard]] int sourceIndex(record::SourceWaterId id);
    [[nodiscard]] double dayOf(const record::Moment& at) const;

    std::vector<record::SourceWaterId> m_waters; ///< [i] stands for setup.sources[i + 1]
};

} // namespace littoral::facade
