// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/entries_model.h"

#include "core/facade/photos.h"
#include "core/wording/entry_words.h"
#include "core/wording/numbers.h"
#include "ui/models/day_words.h"

#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;
using Show = EntriesFilter::Show;

QString nameInText(const record::Parameter& parameter)
{
    QString name = parameter.name;
    const bool acronym = name.size() > 1 && name[1].isUpper();
    return acronym ? name : name.replace(0, 1, name[0].toLower());
}

namespace {

/// "0.8 mg/L NO₂"; "7.2" for pH, whose unit is its name.
QString typedWithUnit(const record::Reading& reading)
{
    const record::Parameter* parameter = record::findParameter(reading.parameter);
    const record::Unit* unit = parameter == nullptr ? nullptr : parameter->unit(reading.unit);
    const QString label = unit == nullptr ? reading.unit : unit->label == parameter->name ? QString() : unit->label;
    return label.isEmpty() ? reading.typed : EntriesModel::tr("%1 %2", "value, unit").arg(reading.typed, label);
}

} // namespace

QString readingText(const record::Reading& reading)
{
    const record::Parameter* parameter = record::findParameter(reading.parameter);
    return parameter == nullptr
               ? reading.typed
               : EntriesModel::tr("%1 %2", "parameter, value with unit").arg(parameter->name, typedWithUnit(reading));
}

EntriesModel::EntriesModel(facade::Keeper& keeper, QObject* parent)
    : QAbstractTableModel(parent)
    , m_keeper(keeper)
{
    connect(&keeper, &facade::Keeper::changed, this, &EntriesModel::refresh);
    connect(&keeper, &facade::Keeper::storeOpened, this, &EntriesModel::refresh);
    connect(&keeper, &facade::Keeper::storeClosed, this, &EntriesModel::refresh);
    refresh();
}

void EntriesModel::setFilter(const EntriesFilter& filter)
{
    if (!(filter == m_filter)) {
        m_filter = filter;
        refresh();
    }
}

void EntriesModel::setActive(bool active)
{
    if (active == m_active) {
        return;
    }
    m_active = active;
    if (active && m_stale) {
        refresh();
    }
}

void EntriesModel::refresh()
{
    m_stale = !m_active;
    std::vector<Line> lines;
    beginResetModel();
    m_lines.clear();
    m_revision = m_keeper.revision();
    m_all = 0;
    if (m_active) {
        m_tankNames.clear();
        for (const record::Tank& tank : m_keeper.row().tanks) {
            m_tankNames.insert(tank.id.value, tank.name);
        }
        lines = gather();
        m_all = static_cast<int>(lines.size());
        narrow(lines);
        order(lines);
    }
    m_lines = std::move(lines);
    endResetModel();
}

std::vector<EntriesModel::Line> EntriesModel::gather()
{
    m_photos.clear();
    const bool photos = m_filter.show == Show::Photos || m_filter.show == Show::Everything;
    std::vector<const record::LayoutRecord*> layouts;
    for (const auto& [id, layout] : m_keeper.row().layouts) {
        if (!m_filter.tank || layout.layout.tank == m_filter.tank) {
            layouts.push_back(&layout);
            if (photos) {
                std::ranges::move(facade::photosOfLayout(m_keeper, id), std::back_inserter(m_photos));
            }
        }
    }
    std::vector<Line> lines;
    for (const record::LayoutRecord* layout : layouts) {
        addLayout(lines, *layout);
    }
    for (const record::Photo& photo : m_photos) {
        lines.push_back({nullptr, nullptr, &photo});
    }
    return lines;
}

void EntriesModel::addLayout(std::vector<Line>& lines, const record::LayoutRecord& layout)
{
    const bool everything = m_filter.show == Show::Everything;
    if (everything || m_filter.show == Show::Readings) {
        for (const record::Reading& reading : layout.readings) {
            if (m_filter.parameter.isEmpty() || reading.parameter == m_filter.parameter) {
                lines.push_back({&reading, nullptr, nullptr});
            }
        }
    }
    if (everything || m_filter.show == Show::Entries) {
        for (const record::Entry& entry : layout.entries) {
            if (!m_filter.entryKind || entry.kind == *m_filter.entryKind) {
                lines.push_back({nullptr, &entry, nullptr});
            }
        }
    }
}

void EntriesModel::narrow(std::vector<Line>& lines)
{
    for (const QString& word : m_filter.text.simplified().split(u' ', Qt::SkipEmptyParts)) {
        std::erase_if(lines, [&](const Line& line) { return !matches(line, word); });
    }
}

/// Looks where a word costs least first; only what is left is put into words.
bool EntriesModel::matches(const Line& line, const QString& word)
{
    const auto has = [&](const QString& text) { return text.contains(word, Qt::CaseInsensitive); };
    if (has(line.note()) || has(tankName(line.tank())) || has(kindText(line))) {
        return true;
    }
    const QDate day = line.at().localDate();
    QString& dayWords = m_dayWords[day.toJulianDay()];
    if (dayWords.isEmpty()) {
        dayWords = wording::dateText(day, {}) + u' ' + day.toString(Qt::ISODate);
    }
    if (has(dayWords)) {
        return true;
    }
    if (line.reading != nullptr) {
        const record::Parameter* parameter = record::findParameter(line.reading->parameter);
        return has(line.reading->typed) || (parameter != nullptr && (has(parameter->name) || has(parameter->symbol))) ||
               has(kitText(line)) || has(line.reading->unit);
    }
    return line.entry != nullptr && has(wording::entryText(*line.entry));
}

void EntriesModel::sort(int column, Qt::SortOrder sortOrder)
{
    m_sortColumn = column < 0 ? static_cast<int>(WhenColumn) : column;
    m_sortOrder = sortOrder;
    refresh();
}

void EntriesModel::order(std::vector<Line>& lines) const
{
    const bool down = m_sortOrder == Qt::DescendingOrder;
    std::ranges::stable_sort(lines, [&](const Line& a, const Line& b) {
        // Where the column says the same, the newest first.
        const bool newestFirst = m_sortColumn != WhenColumn || down;
        return newestFirst ? b.at() < a.at() : a.at() < b.at();
    });
    if (m_sortColumn == WhenColumn) {
        return;
    }
    struct Keyed
    {
        double number = 0.0;
        QString text;
        Line line;
    };
    std::vector<Keyed> keyed;
    keyed.reserve(lines.size());
    for (const Line& line : lines) {
        Keyed key{0.0, {}, line};
        if (m_sortColumn == AmountColumn) {
            key.number = line.reading != nullptr ? line.reading->value
                         : line.entry == nullptr ? 0.0
                                                 : line.entry->fraction.value_or(line.entry->amount.value_or(0.0));
            key.text = line.reading != nullptr ? line.reading->parameter : QString();
        } else {
            key.text = cellText(line, m_sortColumn).toCaseFolded();
        }
        keyed.push_back(std::move(key));
    }
    std::ranges::stable_sort(keyed, [down](const Keyed& a, const Keyed& b) {
        const int words = a.text.compare(b.text);
        const bool less = words != 0 ? words < 0 : a.number < b.number;
        const bool greater = words != 0 ? words > 0 : a.number > b.number;
        return down ? greater : less;
    });
    std::ranges::transform(keyed, lines.begin(), &Keyed::line);
}

int EntriesModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

int EntriesModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(ColumnCount);
}

/// nullptr also between a change of the row and the refresh that follows it: the pointers are then stale.
const EntriesModel::Line* EntriesModel::lineAt(int row) const
{
    return row < 0 || row >= rowCount() || m_revision != m_keeper.revision() ? nullptr
                                                                             : &m_lines[static_cast<std::size_t>(row)];
}

QString EntriesModel::tankName(record::TankId tank) const
{
    return m_tankNames.value(tank.value);
}

QString EntriesModel::kindText(const Line& line) const
{
    return line.reading != nullptr ? tr("Reading")
           : line.photo != nullptr ? tr("Photograph")
                                   : record::entryKindName(line.entry->kind);
}

QString EntriesModel::whatText(const Line& line) const
{
    if (line.reading != nullptr) {
        const record::Parameter* parameter = record::findParameter(line.reading->parameter);
        return parameter == nullptr ? line.reading->parameter : parameter->name;
    }
    if (line.entry == nullptr) {
        return {};
    }
    const QString subject = wording::subjectText(line.entry->subject);
    return line.entry->planned ? subject.isEmpty() ? tr("planned") : tr("planned: %1").arg(subject) : subject;
}

QString EntriesModel::kitText(const Line& line) const
{
    const record::TestKit* kit = line.reading == nullptr ? nullptr : m_keeper.row().kit(line.reading->kit);
    return kit == nullptr ? QString() : kit->name;
}

QString EntriesModel::cellText(const Line& line, int column) const
{
    switch (column) {
    case WhenColumn:
        return momentText(line.at(), m_keeper.clock().today());
    case TankColumn:
        return tankName(line.tank());
    case KindColumn:
        return kindText(line);
    case WhatColumn:
        return whatText(line);
    case AmountColumn:
        return line.reading != nullptr ? typedWithUnit(*line.reading)
               : line.entry != nullptr ? entryAmountText(*line.entry)
                                       : tr("%1 × %2", "pixels").arg(line.photo->width).arg(line.photo->height);
    case KitColumn:
        return kitText(line);
    case NoteColumn:
        return line.note();
    default:
        return {};
    }
}

QString EntriesModel::lineText(const Line& line) const
{
    return line.reading != nullptr ? readingText(*line.reading)
           : line.entry != nullptr ? wording::entryText(*line.entry)
           : line.note().isEmpty() ? tr("Photograph")
                                   : tr("Photograph: %1").arg(line.note());
}

QVariant EntriesModel::data(const QModelIndex& index, int role) const
{
    const Line* line = index.isValid() ? lineAt(index.row()) : nullptr;
    if (line == nullptr) {
        return {};
    }
    switch (role) {
    case Qt::DisplayRole:
        return cellText(*line, index.column());
    case Qt::EditRole:
        return editText(*line, index.column());
    case Qt::ToolTipRole:
        return lineText(*line);
    case Qt::AccessibleTextRole:
        return index.column() == WhenColumn
                   ? tr("%1, %2, %3", "time, tank, what")
                         .arg(cellText(*line, WhenColumn), tankName(line->tank()), lineText(*line))
                   : cellText(*line, index.column());
    case Qt::TextAlignmentRole:
        return QVariant::fromValue(
            Qt::Alignment((index.column() == AmountColumn ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter));
    case SortRole:
        return line->at().utcMs();
    case PlannedRole:
        return line->entry != nullptr && line->entry->planned;
    default:
        return {};
    }
}

QVariant EntriesModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) {
        return {};
    }
    switch (section) {
    case WhenColumn:
        return tr("When");
    case TankColumn:
        return tr("Tank");
    case KindColumn:
        return tr("Kind");
    case WhatColumn:
        return tr("What");
    case AmountColumn:
        return tr("Value or amount");
    case KitColumn:
        return tr("Kit");
    case NoteColumn:
        return tr("Note");
    default:
        return {};
    }
}

record::EntryId EntriesModel::entryAt(int row) const
{
    const Line* line = lineAt(row);
    return line == nullptr || line->entry == nullptr ? record::EntryId{} : line->entry->id;
}

record::ReadingId EntriesModel::readingAt(int row) const
{
    const Line* line = lineAt(row);
    return line == nullptr || line->reading == nullptr ? record::ReadingId{} : line->reading->id;
}

record::PhotoId EntriesModel::photoAt(int row) const
{
    const Line* line = lineAt(row);
    return line == nullptr || line->photo == nullptr ? record::PhotoId{} : line->photo->id;
}

record::TankId EntriesModel::tankAt(int row) const
{
    const Line* line = lineAt(row);
    return line == nullptr ? record::TankId{} : line->tank();
}

facade::DatedRef EntriesModel::refAt(int row) const
{
    const Line* line = lineAt(row);
    if (line == nullptr || line->reading != nullptr) {
        return readingAt(row);
    }
    return line->entry != nullptr ? facade::DatedRef(line->entry->id) : facade::DatedRef(line->photo->id);
}

std::vector<int> EntriesModel::rowsOf(const QSet<qint64>& ids) const
{
    std::vector<int> rows;
    for (int row = 0; row < rowCount(); ++row) {
        if (ids.contains(m_lines[static_cast<std::size_t>(row)].id())) {
            rows.push_back(row);
        }
    }
    return rows;
}

QString EntriesModel::textAt(int row) const
{
    const Line* line = lineAt(row);
    return line == nullptr ? QString() : lineText(*line);
}

} // namespace littoral::ui
