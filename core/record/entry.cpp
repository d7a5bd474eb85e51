// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/entry.h"

#include <QCoreApplication>
#include <array>

namespace littoral::record {

namespace {

struct Kind
{
    EntryKind kind;
    const char* code;
    const char* name;
};

constexpr std::array kKinds{
    Kind{EntryKind::WaterChange, "water-change", QT_TRANSLATE_NOOP("Entry", "Water change")},
    Kind{EntryKind::TopUp, "top-up", QT_TRANSLATE_NOOP("Entry", "Top-up")},
    Kind{EntryKind::Dose, "dose", QT_TRANSLATE_NOOP("Entry", "Dose")},
    Kind{EntryKind::Feeding, "feeding", QT_TRANSLATE_NOOP("Entry", "Feeding")},
    Kind{EntryKind::Upkeep, "upkeep", QT_TRANSLATE_NOOP("Entry", "Upkeep")},
    Kind{EntryKind::Observation, "observation", QT_TRANSLATE_NOOP("Entry", "Observation")},
    Kind{EntryKind::Addition, "addition", QT_TRANSLATE_NOOP("Entry", "Addition")},
    Kind{EntryKind::Loss, "loss", QT_TRANSLATE_NOOP("Entry", "Loss")},
    Kind{EntryKind::MediaTransfer, "media-transfer", QT_TRANSLATE_NOOP("Entry", "Media transfer")},
    Kind{EntryKind::LightChange, "light-change", QT_TRANSLATE_NOOP("Entry", "Light change")},
    Kind{EntryKind::Co2Change, "co2-change", QT_TRANSLATE_NOOP("Entry", "CO₂ change")},
    Kind{EntryKind::Note, "note", QT_TRANSLATE_NOOP("Entry", "Note")},
};

} // namespace

QString entryKindCode(EntryKind kind)
{
    return QString::fromLatin1(kKinds[static_cast<std::size_t>(kind)].code);
}

std::optional<EntryKind> entryKindFromCode(const QString& code)
{
    for (const Kind& kind : kKinds) {
        if (code.trimmed().compare(QLatin1String(kind.code), Qt::CaseInsensitive) == 0) {
            return kind.kind;
        }
    }
    return std::nullopt;
}

QString entryKindName(EntryKind kind)
{
    return QCoreApplication::translate("Entry", kKinds[static_cast<std::size_t>(kind)].name);
}

} // namespace littoral::record
