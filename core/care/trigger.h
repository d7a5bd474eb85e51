// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/work_template.h"

#include <QDate>
#include <optional>
#include <vector>

namespace littoral::care {

/// What tightens the water changes at once.
enum class TriggerKind {
    FreeAmmoniaWithAnimals,
    NitriteWithAnimals,
    AmmoniaWithoutAnimals,
    FreeAmmoniaWithoutAnimals,
    MeltHeavy,
    AlgaeRising,
    BedDisturbed,
    AnimalLost,
    Overfed,
    HardnessAboveTarget,
    NitrateHigh,
    HazeAndGasping,
    AmmoniaInDarkStart,
    MedicationEnded,
    ReactionAfterAddition, ///< ammonia or nitrite over the first gate's limits within a week of an addition
};

[[nodiscard]] QString triggerKey(TriggerKind kind); ///< "nh3-animals", "melt" ...

/// One thing that tightens the cadence now, with the evidence for it.
struct Trigger
{
    TriggerKind kind = TriggerKind::AmmoniaWithoutAnimals;
    QString parameter;           ///< key, when a reading set it off
    QString subject;             ///< of the entry that set it off
    std::optional<double> value; ///< canonical; severity for an observation
    std::optional<double> limit; ///< canonical; severity before for rising algae
    std::optional<double> coverage;
    record::Moment at;
    record::ReadingId reading;
    record::EntryId entry;
    double fraction = 0.0;        ///< at least this much per change; 0: as the cadence
    double everyDays = 0.0;       ///< at least this often; 0: as the cadence
    int steps = 0;                ///< steps tighter than the cadence
    bool immediate = false;       ///< asks for a change on the day itself
    std::optional<QDate> lastDay; ///< of its effect; nothing: until a reading clears it
    QString caution;
    QString source; ///< translated in the context "Templates"
};

/// Everything that tightens the water changes of a layout at `at.now`. Empty before flooding.
[[nodiscard]] std::vector<Trigger> activeTriggers(const Circumstances& at);

} // namespace littoral::care
