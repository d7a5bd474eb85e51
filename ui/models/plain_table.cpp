// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/plain_table.h"

namespace littoral::ui {

void PlainTableModel::setTable(PlainTable table)
{
    beginResetModel();
    m_table = std::move(table);
    endResetModel();
}

int PlainTableModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_table.rows.size());
}

int PlainTableModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_table.header.size());
}

QVariant PlainTableModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid()) {
        return {};
    }
    const QStringList& row = m_table.rows[static_cast<std::size_t>(index.row())];
    const QString text = row.value(index.column());
    switch (role) {
    case Qt::DisplayRole:
        return text;
    case Qt::AccessibleTextRole:
        return tr("%1: %2", "column, value")
            .arg(m_table.header.value(index.column()), text.isEmpty() ? tr("none") : text);
    case Qt::TextAlignmentRole:
        return QVariant::fromValue(
            Qt::Alignment(Qt::AlignVCenter | (index.column() == 0 ? Qt::AlignLeft : Qt::AlignRight)));
    default:
        return {};
    }
}

QVariant PlainTableModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal) {
        return {};
    }
    if (role == Qt::DisplayRole) {
        return m_table.header.value(section);
    }
    if (role == Qt::TextAlignmentRole) {
        return QVariant::fromValue(Qt::Alignment(Qt::AlignVCenter | (section == 0 ? Qt::AlignLeft : Qt::AlignRight)));
    }
    return {};
}

} // namespace littoral::ui
