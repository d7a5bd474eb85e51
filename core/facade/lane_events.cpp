// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/lane_parts.h"
#include "core/wording/entry_words.h"
#include "core/wording/measures.h"
#include "core/wording/numbers.h"

#include <QCoreApplication>
#include <QLocale>

namespace littoral::facade {

using namespace Qt::StringLiterals;
using record::EntryKind;

namespace {

/// Routine looks: they tick their work off in the due row; a picture for each would bury what happened.
bool isRoutineLook(const record::Entry& entry)
{
    static const QStringList looks{u"look-daily"_s,   u"gate-review"_s, u"algae-score"_s, u"count"_s,
                                   u"after-adding"_s, u"photo"_s,       u"stand-look"_s,  u"dose-review"_s};
    return entry.kind == EntryKind::Upkeep && looks.contains(entry.subject);
}

} // namespace

Glyph glyphOf(const record::Entry& entry)
{
    switch (entry.kind) {
    case EntryKind::WaterChange:
        return Glyph::WaterChange;
    case EntryKind::TopUp:
        return Glyph::TopUp;
    case EntryKind::Dose:
        return Glyph::Dose;
    case EntryKind::Feeding:
        return Glyph::Feed;
    case EntryKind::Upkeep:
        return entry.subject.startsWith(u"trim"_s) ? Glyph::Trim : Glyph::Upkeep;
    case EntryKind::Observation:
        return Glyph::Observation;
    case EntryKind::Addition:
        return Glyph::In;
    case EntryKind::Loss:
        return Glyph::Loss;
    case EntryKind::MediaTransfer:
        return entry.subject == u"given"_s ? Glyph::Out : Glyph::Media;
    case EntryKind::LightChange:
        return Glyph::Light;
    case EntryKind::Co2Change:
        return Glyph::Co2;
    case EntryKind::Note:
        break;
    }
    return Glyph::Note;
}

Glyph glyphOf(const care::DueItem& item)
{
    switch (item.kind) {
    case care::WorkKind::WaterChange:
        return Glyph::WaterChange;
    case care::WorkKind::Test:
        return Glyph::Test;
    case care::WorkKind::Look:
        return Glyph::Observation;
    case care::WorkKind::Decide:
        return Glyph::Decide;
    case care::WorkKind::Upkeep:
        if (item.subject.startsWith(u"trim"_s)) {
            return Glyph::Trim;
        }
        if (item.templateKey == u"topup"_s) {
            return Glyph::TopUp;
        }
        return item.subject.startsWith(u"cylinder"_s) || item.subject.startsWith(u"co2"_s) ? Glyph::Cylinder
                                                                                           : Glyph::Upkeep;
    case care::WorkKind::Dose:
        return Glyph::Dose;
    case care::WorkKind::Own:
        break;
    }
    return Glyph::Note;
}

std::vector<LaneEvent> eventsOf(const record::LayoutRecord& layout)
{
    std::vector<LaneEvent> events;
    events.reserve(layout.entries.size());
    for (const record::Entry& entry : layout.entries) {
        if (isRoutineLook(entry)) {
            continue;
        }
        LaneEvent event;
        event.at = entry.at.utcMs();
        event.glyph = glyphOf(entry);
        event.word = wording::entryWord(entry);
        event.sentence = QCoreApplication::translate("Lane", "%1, %2")
                             .arg(wording::entryText(entry), wording::fullDateTimeText(entry.at.toDateTime()));
        event.planned = entry.planned;
        event.serious =
            entry.kind == EntryKind::Loss || (entry.kind == EntryKind::Observation && entry.severity.value_or(0) >= 2);
        event.fraction = entry.kind == EntryKind::WaterChange ? entry.fraction : std::nullopt;
        event.entry = entry.id;
        events.push_back(std::move(event));
    }
    return events;
}

} // namespace littoral::facade
