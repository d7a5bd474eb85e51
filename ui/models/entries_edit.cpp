// SPDX-License-Identifier: GPL-3.0-or-later
// Editing the lines of the record in place: what a cell offers to be edited, and what is written.
#include "core/wording/entry_words.h"
#include "ui/models/day_words.h"
#include "ui/models/entries_model.h"
#include "ui/models/entry_words.h"
#include "ui/models/number_text.h"

#include <QRegularExpression>
#include <cmath>

namespace littoral::ui {

using namespace Qt::StringLiterals;
using record::Entry;
using record::EntryKind;

namespace {

/// The one number a kind of entry is about.
enum class AmountKind { None, Percent, Amount, Count, Severity };

AmountKind amountKind(EntryKind kind)
{
    switch (kind) {
    case EntryKind::WaterChange:
    case EntryKind::MediaTransfer:
        return AmountKind::Percent;
    case EntryKind::TopUp:
    case EntryKind::Dose:
    case EntryKind::Feeding:
    case EntryKind::LightChange:
    case EntryKind::Co2Change:
        return AmountKind::Amount;
    case EntryKind::Addition:
    case EntryKind::Loss:
        return AmountKind::Count;
    case EntryKind::Observation:
        return AmountKind::Severity;
    case EntryKind::Upkeep:
    case EntryKind::Note:
        break;
    }
    return AmountKind::None;
}

QString amountUnit(const Entry& entry)
{
    switch (entry.kind) {
    case EntryKind::TopUp:
        return u"L"_s;
    case EntryKind::LightChange:
        return u"h"_s;
    case EntryKind::Co2Change:
        return u"mg/L"_s;
    default:
        return entry.unit;
    }
}

bool hasSubject(EntryKind kind)
{
    return kind != EntryKind::WaterChange && kind != EntryKind::TopUp;
}

Error notUnderstood(const QString& typed, const QString& mend)
{
    return {Fault::BadInput,
            EntriesModel::tr("\"%1\" is not understood here; nothing was changed.").arg(typed).toStdString(),
            {},
            mend.toStdString()};
}

Result<record::Moment> momentTyped(const QString& typed, const record::Moment& now, bool planned)
{
    const record::Moment at = momentFrom(typed, now);
    if (!at.isValid()) {
        return notUnderstood(typed, EntriesModel::tr("Type a time as 2026-11-25 07:30."));
    }
    if (!planned && at > now) {
        return Error{Fault::BadInput,
                     EntriesModel::tr("That is after now, and it was done.").toStdString(),
                     {},
                     EntriesModel::tr("Type the time at which it was done.").toStdString()};
    }
    return at;
}

/// Empty takes the number out.
Result<void> setAmount(Entry& entry, const QString& typed)
{
    QString plain = typed.trimmed();
    const QString unit = amountKind(entry.kind) == AmountKind::Percent ? u"%"_s : amountUnit(entry);
    if (!unit.isEmpty() && plain.endsWith(unit, Qt::CaseInsensitive)) {
        plain.chop(unit.size());
    }
    const auto value = numberFrom(plain);
    if (!plain.trimmed().isEmpty() && (!value || *value < 0.0)) {
        return notUnderstood(typed, EntriesModel::tr("Type a number of 0 or more."));
    }
    const bool whole = !value || *value == std::floor(*value);
    switch (amountKind(entry.kind)) {
    case AmountKind::Percent:
        if (value && *value > 100.0) {
            return notUnderstood(typed, EntriesModel::tr("Type a share of 100 % at most."));
        }
        entry.fraction = value ? std::optional(*value / 100.0) : std::nullopt;
        return {};
    case AmountKind::Amount:
        entry.amount = value;
        return {};
    case AmountKind::Count:
    case AmountKind::Severity:
        if (!whole || (amountKind(entry.kind) == AmountKind::Severity && value.value_or(0.0) > 4.0)) {
            return notUnderstood(typed, amountKind(entry.kind) == AmountKind::Count
                                            ? EntriesModel::tr("Type a whole number.")
                                            : EntriesModel::tr("Type a severity from 0 to 4."));
        }
        (amountKind(entry.kind) == AmountKind::Count ? entry.count : entry.severity) =
            value ? std::optional(static_cast<int>(*value)) : std::nullopt;
        return {};
    case AmountKind::None:
        break;
    }
    return {};
}

std::optional<double> amountOf(const Entry& entry)
{
    const auto number = [](const std::optional<int>& whole) {
        return whole ? std::optional<double>(*whole) : std::nullopt;
    };
    switch (amountKind(entry.kind)) {
    case AmountKind::Percent:
        return entry.fraction ? std::optional(std::round(*entry.fraction * 1000.0) / 10.0) : std::nullopt;
    case AmountKind::Amount:
        return entry.amount;
    case AmountKind::Count:
        return number(entry.count);
    case AmountKind::Severity:
        return number(entry.severity);
    case AmountKind::None:
        break;
    }
    return std::nullopt;
}

} // namespace

QString entryAmountText(const Entry& entry)
{
    const std::optional<double> amount = amountOf(entry);
    if (!amount) {
        return {};
    }
    if (amountKind(entry.kind) == AmountKind::Severity) {
        return EntriesModel::tr("%1, %2", "severity and its word")
            .arg(numberText(*amount), wording::severityWord(static_cast<int>(*amount)));
    }
    const QString unit = amountKind(entry.kind) == AmountKind::Percent ? u"%"_s
                         : amountKind(entry.kind) == AmountKind::Count ? QString()
                                                                       : amountUnit(entry);
    return unit.isEmpty() ? numberText(*amount)
                          : EntriesModel::tr("%1 %2", "amount, unit").arg(numberText(*amount), unit);
}

std::optional<qint64> shiftFrom(const QString& text)
{
    static const QRegularExpression form(u"^\\s*([-+−–]?)\\s*(\\d+(?:[.,]\\d+)?)\\s*([a-z]*)\\s*$"_s,
                                         QRegularExpression::CaseInsensitiveOption);
    const QRegularExpressionMatch match = form.match(text);
    const auto number = numberFrom(match.captured(2));
    if (!match.hasMatch() || !number) {
        return std::nullopt;
    }
    struct Unit
    {
        const char* names;
        double ms;
    };
    static constexpr Unit kUnits[]{{"|m|min|minute|minutes|", 60e3},
                                   {"|h|hour|hours|", 3600e3},
                                   {"|d|day|days|", 86400e3},
                                   {"|w|week|weeks|", 7 * 86400e3}};
    const QString wanted = u"|%1|"_s.arg(match.captured(3).toLower());
    for (const Unit& unit : kUnits) {
        if (QLatin1String(unit.names).contains(wanted)) {
            const bool back = !match.captured(1).isEmpty() && match.captured(1) != u"+"_s;
            return static_cast<qint64>(std::llround(*number * unit.ms)) * (back ? -1 : 1);
        }
    }
    return std::nullopt;
}

bool EntriesModel::isEditable(const Line& line, int column) const
{
    switch (column) {
    case WhenColumn:
    case TankColumn:
    case NoteColumn:
        return true;
    case WhatColumn:
        return line.entry != nullptr && hasSubject(line.entry->kind);
    case AmountColumn:
        return line.reading != nullptr || (line.entry != nullptr && amountKind(line.entry->kind) != AmountKind::None);
    case KitColumn:
        return line.reading != nullptr;
    default:
        return false;
    }
}

Qt::ItemFlags EntriesModel::flags(const QModelIndex& index) const
{
    const Line* line = index.isValid() ? lineAt(index.row()) : nullptr;
    if (line == nullptr) {
        return Qt::NoItemFlags;
    }
    const Qt::ItemFlags plain = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    return m_keeper.isReadOnly() || !isEditable(*line, index.column()) ? plain : plain | Qt::ItemIsEditable;
}

QString EntriesModel::editText(const Line& line, int column) const
{
    switch (column) {
    case WhenColumn:
        return momentEditText(line.at());
    case WhatColumn:
        return line.entry == nullptr ? whatText(line) : subjectShown(line.entry->subject);
    case AmountColumn:
        return line.reading != nullptr ? line.reading->typed
               : line.entry != nullptr ? numberText(amountOf(*line.entry))
                                       : QString();
    default:
        return cellText(line, column);
    }
}

bool EntriesModel::setData(const QModelIndex& index, const QVariant& value, int role)
{
    const Line* line = index.isValid() ? lineAt(index.row()) : nullptr;
    const QString typed = value.toString().trimmed();
    if (line == nullptr || role != Qt::EditRole || !flags(index).testFlag(Qt::ItemIsEditable) ||
        typed == editText(*line, index.column())) {
        return false;
    }
    const Line copy = *line;
    const Result<void> done = copy.reading != nullptr ? editReading(*copy.reading, index.column(), typed)
                              : copy.entry != nullptr ? editEntry(*copy.entry, index.column(), typed)
                                                      : editPhoto(*copy.photo, index.column(), typed);
    if (!done) {
        emit refused(QString::fromStdString(done.error().sentence()));
    }
    return static_cast<bool>(done);
}

Result<void> EntriesModel::changeOne(const facade::DatedRef& record, const facade::BulkChange& change)
{
    const auto outcome = facade::changeAll(m_keeper, {record}, change);
    return outcome ? Result<void>() : Result<void>(outcome.error());
}

/// Tanks and kits are chosen by name; the editor of the cell offers those there are.
Result<void> EntriesModel::putIntoTank(const facade::DatedRef& record, const QString& name)
{
    const record::Tank* tank = m_keeper.row().tankNamed(name);
    return tank == nullptr ? Result<void>(notUnderstood(name, tr("Choose a tank of the row.")))
                           : changeOne(record, {.tank = tank->id});
}

Result<void> EntriesModel::editReading(record::Reading reading, int column, const QString& typed)
{
    if (column == TankColumn) {
        return putIntoTank(reading.id, typed);
    }
    if (column == KitColumn) {
        const auto& kits = m_keeper.row().kits;
        const auto kit = std::ranges::find_if(kits, [&](const record::TestKit& it) {
            return it.parameter == reading.parameter && it.name.compare(typed, Qt::CaseInsensitive) == 0;
        });
        if (kit == kits.end() && !typed.isEmpty()) {
            return notUnderstood(typed, tr("Choose a kit that reads this parameter."));
        }
        return changeOne(reading.id, {.kit = kit == kits.end() ? record::KitId{} : kit->id});
    }
    facade::Keeper::TypedReading again;
    again.replaces = reading.id;
    again.layout = reading.layout;
    again.parameter = reading.parameter;
    again.typed = column == AmountColumn ? typed : reading.typed;
    again.unit = reading.unit;
    again.at = reading.at;
    again.kit = reading.kit;
    again.note = column == NoteColumn ? typed : reading.note;
    if (column == WhenColumn) {
        const auto at = momentTyped(typed, m_keeper.clock().now(), false);
        if (!at) {
            return at.error();
        }
        again.at = *at;
    }
    const auto done = m_keeper.enterReading(again);
    return done ? Result<void>() : Result<void>(done.error());
}

Result<void> EntriesModel::editEntry(Entry entry, int column, const QString& typed)
{
    if (column == TankColumn) {
        return putIntoTank(entry.id, typed);
    }
    if (column == WhenColumn) {
        const auto at = momentTyped(typed, m_keeper.clock().now(), entry.planned);
        if (!at) {
            return at.error();
        }
        entry.at = *at;
    } else if (column == WhatColumn) {
        entry.subject = subjectFrom(entry.kind, typed);
    } else if (column == AmountColumn) {
        if (const auto set = setAmount(entry, typed); !set) {
            return set;
        }
    } else {
        entry.note = typed;
    }
    const auto done = m_keeper.enter(std::move(entry));
    return done ? Result<void>() : Result<void>(done.error());
}

Result<void> EntriesModel::editPhoto(record::Photo photo, int column, const QString& typed)
{
    if (column == TankColumn) {
        return putIntoTank(photo.id, typed);
    }
    if (column == WhenColumn) {
        const auto at = momentTyped(typed, m_keeper.clock().now(), false);
        return at ? changeOne(photo.id, {.shift_ms = at->utcMs() - photo.at.utcMs()}) : Result<void>(at.error());
    }
    photo.note = typed;
    store::Edit edit(tr("note of a photograph, %1").arg(tankName(photo.tank)));
    edit.put(std::move(photo));
    return m_keeper.commit(edit);
}

} // namespace littoral::ui
