// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/events.h"

#include "core/care/stock.h"

#include <algorithm>
#include <array>

namespace littoral::care {

using namespace Qt::StringLiterals;
using record::Entry;
using record::EntryKind;

namespace {

struct Name
{
    Event event;
    QLatin1String code;
};

constexpr std::array kNames{
    Name{Event::Addition, QLatin1String("addition")},
    Name{Event::Loss, QLatin1String("loss")},
    Name{Event::FilterService, QLatin1String("filter-service")},
    Name{Event::MediaReplaced, QLatin1String("media-replaced")},
    Name{Event::MediaGiven, QLatin1String("media-given")},
    Name{Event::PowerCut, QLatin1String("power-cut")},
    Name{Event::BedDisturbed, QLatin1String("bed-disturbed")},
    Name{Event::Replant, QLatin1String("replant")},
    Name{Event::Trim, QLatin1String("trim")},
    Name{Event::CylinderChange, QLatin1String("cylinder-change")},
    Name{Event::Overfeed, QLatin1String("overfeed")},
    Name{Event::Medication, QLatin1String("medication")},
    Name{Event::SourceChange, QLatin1String("source-change")},
    Name{Event::Co2Change, QLatin1String("co2-change")},
    Name{Event::LightChange, QLatin1String("light-change")},
    Name{Event::Dose, QLatin1String("dose")},
    Name{Event::MedicationEnd, QLatin1String("medication-end")},
    Name{Event::RepeatedLoss, QLatin1String("repeated-loss")},
    Name{Event::GateOverridden, kGateOverridden},
};

constexpr double kLossesBelongTogetherDays = 7.0;

/// Losses that are not the first of their week, or of several animals.
void keepRepeated(std::vector<const Entry*>& losses)
{
    const std::vector<const Entry*> all = losses;
    std::erase_if(losses, [&](const Entry* loss) {
        const bool before = std::ranges::any_of(all, [&](const Entry* other) {
            return other != loss && other->at <= loss->at &&
                   record::daysBetween(other->at, loss->at) <= kLossesBelongTogetherDays;
        });
        return !before && loss->count.value_or(1) < 2;
    });
}

/// Additions that were not to wait: a note about these animals stands at or before them.
void keepOverridden(std::vector<const Entry*>& additions, const record::LayoutRecord& layout)
{
    std::erase_if(additions, [&](const Entry* addition) {
        return std::ranges::none_of(layout.entries, [&](const Entry& note) {
            return note.kind == EntryKind::Note && note.subject == kGateOverridden && note.where == addition->subject &&
                   note.at <= addition->at;
        });
    });
}

} // namespace

QString eventCode(Event event)
{
    return kNames[static_cast<std::size_t>(event)].code;
}

std::optional<Event> eventFromCode(const QString& code)
{
    const auto found = std::ranges::find_if(kNames, [&](const Name& name) { return code == name.code; });
    return found == kNames.end() ? std::nullopt : std::optional(found->event);
}

bool isEvent(const Entry& entry, Event event)
{
    switch (event) {
    case Event::Addition:
    case Event::GateOverridden:
        return entry.kind == EntryKind::Addition && !isAboutPlants(entry);
    case Event::Loss:
    case Event::RepeatedLoss:
        return entry.kind == EntryKind::Loss && !isAboutPlants(entry);
    case Event::Co2Change:
        return entry.kind == EntryKind::Co2Change;
    case Event::LightChange:
        return entry.kind == EntryKind::LightChange;
    case Event::Dose:
        return entry.kind == EntryKind::Dose;
    case Event::Medication:
        return entry.kind == EntryKind::Dose && entry.subject == eventCode(event);
    case Event::MediaGiven:
        return entry.kind == EntryKind::MediaTransfer && entry.subject == u"given"_s;
    case Event::Trim:
        return entry.kind == EntryKind::Upkeep && entry.subject.startsWith(eventCode(event));
    default:
        return entry.subject == eventCode(event);
    }
}

std::vector<const Entry*> occurrences(const record::Row& row, const record::LayoutRecord& layout, Event event,
                                      const record::Moment& now)
{
    std::vector<const Entry*> found;
    const auto take = [&](const Entry& entry, bool tells) {
        if (tells && !entry.planned && entry.at <= now) {
            found.push_back(&entry);
        }
    };
    for (const Entry& entry : layout.entries) {
        take(entry, isEvent(entry, event));
    }
    if (event == Event::RepeatedLoss) {
        keepRepeated(found);
    } else if (event == Event::GateOverridden) {
        keepOverridden(found, layout);
    }
    if (event != Event::MediaGiven) {
        return found;
    }
    for (const auto& [id, other] : row.layouts) {
        for (const Entry& entry : other.entries) {
            const bool ours = entry.kind == EntryKind::MediaTransfer && entry.subject != u"given"_s &&
                              entry.otherTank == layout.layout.tank && other.layout.tank != layout.layout.tank;
            take(entry, ours && entry.at >= layout.layout.flooded);
        }
    }
    std::ranges::sort(found, [](const Entry* a, const Entry* b) { return a->at < b->at; });
    return found;
}

std::vector<ChangeDay> changeDays(const record::LayoutRecord& layout, const record::Moment& now)
{
    std::vector<ChangeDay> days;
    for (const Entry& entry : layout.entries) {
        if (entry.kind != EntryKind::WaterChange || entry.planned || entry.at > now) {
            continue;
        }
        const QDate day = entry.at.localDate();
        if (days.empty() || days.back().day != day) {
            days.push_back({day, entry.fraction, entry.at});
            continue;
        }
        ChangeDay& same = days.back();
        same.last = entry.at;
        same.fraction = same.fraction && entry.fraction
                            ? std::optional(1.0 - (1.0 - *same.fraction) * (1.0 - *entry.fraction))
                            : std::nullopt;
    }
    return days;
}

std::optional<record::Moment> lastChangeBefore(const record::LayoutRecord& layout, const record::Moment& at)
{
    const Entry* last = layout.lastDone(EntryKind::WaterChange, at);
    return last == nullptr ? std::nullopt : std::optional(last->at);
}

} // namespace littoral::care
