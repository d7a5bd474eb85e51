// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/entries_model.h"

#include "core/wording/entry_words.h"
#include "ui/models/day_words.h"

#include <algorithm>

namespace littoral::ui {

QString nameInText(const record::Parameter& parameter)
{
    QString name = parameter.name;
    const bool acronym = name.size() > 1 && name[1].isUpper();
    return acronym ? name : name.replace(0, 1, name[0].toLower());
}

QString readingText(const record::Reading& reading)
{
    const record::Parameter* parameter = record::findParameter(reading.parameter);
    if (parameter == nullptr) {
        return reading.typed;
    }
    const record::Unit* unit = parameter->unit(reading.unit);
    return EntriesModel::tr("%1 %2 %3", "parameter, value, unit")
        .arg(parameter->name, reading.typed,
             unit == nullptr                  ? reading.unit
             : unit->label == parameter->name ? QString()
                                              : unit->label)
        .trimmed();
}

EntriesModel::EntriesModel(facade::Keeper& keeper, QObject* parent)
    : QAbstractTableModel(parent)
    , m_keeper(keeper)
{
    connect(&keeper, &facade::Keeper::changed, this, &EntriesModel::refresh);
    connect(&keeper, &facade::Keeper::storeOpened, this, &EntriesModel::refresh);
}

void EntriesModel::setTank(record::TankId tank)
{
    m_tank = tank;
    refresh();
}

void EntriesModel::refresh()
{
    std::vector<Line> lines;
    for (const record::LayoutRecord* layout : m_keeper.row().layoutsOf(m_tank)) {
        for (const record::Entry& entry : layout->entries) {
            lines.push_back({entry.at, wording::entryText(entry), entry.planned, entry.id});
        }
        for (const record::Reading& reading : layout->readings) {
            lines.push_back({reading.at, readingText(reading), false, reading.id});
        }
    }
    std::ranges::stable_sort(lines, [](const Line& a, const Line& b) { return b.at < a.at; });
    beginResetModel();
    m_lines = std::move(lines);
    endResetModel();
}

int EntriesModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

int EntriesModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(ColumnCount);
}

QVariant EntriesModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid() || index.row() >= rowCount()) {
        return {};
    }
    const Line& line = m_lines[static_cast<std::size_t>(index.row())];
    const QString when = momentText(line.at, m_keeper.clock().today());
    switch (role) {
    case Qt::DisplayRole:
        return index.column() == WhenColumn ? when : line.text;
    case Qt::ToolTipRole:
        return line.text;
    case Qt::AccessibleTextRole:
        return tr("%1, %2").arg(when, line.text);
    case SortRole:
        return line.at.utcMs();
    case PlannedRole:
        return line.planned;
    default:
        return {};
    }
}

QVariant EntriesModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) {
        return {};
    }
    return section == WhenColumn ? tr("When") : tr("What");
}

record::EntryId EntriesModel::entryAt(int row) const
{
    const auto* id = row >= 0 && row < rowCount()
                         ? std::get_if<record::EntryId>(&m_lines[static_cast<std::size_t>(row)].id)
                         : nullptr;
    return id == nullptr ? record::EntryId{} : *id;
}

record::ReadingId EntriesModel::readingAt(int row) const
{
    const auto* id = row >= 0 && row < rowCount()
                         ? std::get_if<record::ReadingId>(&m_lines[static_cast<std::size_t>(row)].id)
                         : nullptr;
    return id == nullptr ? record::ReadingId{} : *id;
}

QString EntriesModel::textAt(int row) const
{
    return row >= 0 && row < rowCount() ? m_lines[static_cast<std::size_t>(row)].text : QString();
}

} // namespace littoral::ui
