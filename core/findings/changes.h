// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"

#include <optional>
#include <vector>

namespace littoral::findings {

enum class ChangeKind {
    Event,         ///< key: code of the event in evidence.json; before and after are counts in 21 days
    LightHours,    ///< hours a day
    LightPar,      ///< µmol/m²/s
    Co2Target,     ///< mg/L
    Feeding,       ///< key: unit
    WaterChanged,  ///< share changed in 7 days
    LargestChange, ///< share of one change
    Dose,          ///< key: subject; amount in 7 days in `unit`, or number of doses where no amount was written down
    Reading        ///< key: parameter, canonical
};

/// One thing that was otherwise in the window than before it.
struct Change
{
    ChangeKind kind = ChangeKind::Event;
    QString key;
    QString unit;
    double before = 0.0;
    double after = 0.0;
    double z = 0.0;          ///< (after - before) over the layout's own earlier spread, with its sign
    bool ownSpread = false;  ///< false: fewer than three earlier values (two windows of events), z rests on the floor
    std::size_t earlier = 0; ///< earlier values it is measured against
    record::Moment first;    ///< when it first showed in the window

    [[nodiscard]] bool wasDone() const { return kind != ChangeKind::Reading; }
};

struct ChangeReview
{
    record::Moment from;
    record::Moment onset;
    std::vector<Change> changes;
};

/// What changed in the `days` before `onset`: first what was done, then what was read, each largest first.
///
/// Statistic: z = (now - m) / max(1.4826 MAD, floor), with m and MAD the median and the median absolute deviation of
/// the layout's own values in the 120 days before the window. What `now` is:
///   readings       the median of the last three in the window
///   settings       (light, CO2, feed) the one in force at the end; `before` the one in force when the window opened
///   water changed  the middle week of the window; one change: the largest
///   doses          the week of the window furthest from the earlier median
///   events         their number in the window against their number in earlier windows of the same length
/// Floors, so that a value that never moved does not make anything infinite: readings the last digit shown or 5 % of m;
/// hours of light 0.5; PAR and feed 10 %; CO2 2 mg/L; shares of water 0.05; doses 10 % of m, at least a quarter of the
/// dose; events a quarter of one, so the first ever stands at 4. Only |z| >= 1 is listed. A change of source counts as
/// an event also where only the source of the water changes tells of it.
[[nodiscard]] ChangeReview whatChanged(const record::Row& row, const record::LayoutRecord& layout,
                                       const record::Moment& onset, int days = 21);

/// When trouble began: the first observation of a severity of 2 or more, or the first loss, of the last run of such
/// entries (none 30 days before it) up to `at`. Nothing when there is none.
[[nodiscard]] std::optional<record::Moment> onsetOf(const record::LayoutRecord& layout, const record::Moment& at);

} // namespace littoral::findings
