// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <QStringList>
#include <vector>

namespace littoral::ui {

/// A table of words: what a chart shows, for reading aloud, copying and checking.
struct PlainTable
{
    QString caption;
    QStringList header;
    std::vector<QStringList> rows;
    int currentRow = -1; ///< today's row; -1: none
};

/// The table twin of a chart. Numbers stand right, the first column left.
class PlainTableModel final : public QAbstractTableModel
{
    Q_OBJECT

public:
    using QAbstractTableModel::QAbstractTableModel;

    void setTable(PlainTable table);
    [[nodiscard]] const PlainTable& table() const { return m_table; }
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    PlainTable m_table;
};

} // namespace littoral::ui
