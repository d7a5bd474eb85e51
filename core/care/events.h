// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"

#include <QDate>
#include <optional>
#include <vector>

namespace littoral::care {

/// Things that happen to a layout and that work follows from. Which entries they are:
///  addition, loss          an Addition or Loss of animals
///  filter-service, media-replaced, bed-disturbed, replant, cylinder-change, power-cut, overfeed, source-change
///                          any entry with that subject, whatever its kind
///  trim                    an Upkeep whose subject begins so (trim-stems, trim-carpet)
///  medication              a Dose with the subject "medication"; medication-end any entry with that subject
///  repeated-loss           a Loss of animals with another in the seven days before it, or of two and more at once
///  gate-overridden         an Addition that a note with the subject "gate-overridden" and its animals as `where`
///  stands before co2-change, light-change, dose   entries of that kind media-given             a MediaTransfer of its
///  own with the subject "given", or one in another tank's record that names this
///                          tank as its donor
enum class Event {
    Addition,
    Loss,
    FilterService,
    MediaReplaced,
    MediaGiven,
    PowerCut,
    BedDisturbed,
    Replant,
    Trim,
    CylinderChange,
    Overfeed,
    Medication,
    SourceChange,
    Co2Change,
    LightChange,
    Dose,
    MedicationEnd,
    RepeatedLoss,
    GateOverridden,
};

[[nodiscard]] QString eventCode(Event event);
[[nodiscard]] std::optional<Event> eventFromCode(const QString& code);

/// Subject of the note that keeps why something that spoke against an addition was not waited for.
inline constexpr QLatin1String kGateOverridden("gate-overridden");

/// Does this entry of the layout itself tell of the event? (MediaGiven may also stand in another layout's record;
/// RepeatedLoss and GateOverridden need more than one entry: any loss, any addition.)
[[nodiscard]] bool isEvent(const record::Entry& entry, Event event);

/// Done entries that tell of the event, not after `now`, oldest first.
[[nodiscard]] std::vector<const record::Entry*> occurrences(const record::Row& row, const record::LayoutRecord& layout,
                                                            Event event, const record::Moment& now);

/// The water changes of one day taken together.
struct ChangeDay
{
    QDate day;
    std::optional<double> fraction; ///< of all that day's changes as one; nothing when one of them has no fraction
    record::Moment last;            ///< of the day's last change
};

/// Days with done changes, not after `now`, oldest first.
[[nodiscard]] std::vector<ChangeDay> changeDays(const record::LayoutRecord& layout, const record::Moment& now);
/// The last done change before or at `at`.
[[nodiscard]] std::optional<record::Moment> lastChangeBefore(const record::LayoutRecord& layout,
                                                             const record::Moment& at);

} // namespace littoral::care
