// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"

#include <QAbstractTableModel>
#include <variant>

namespace littoral::ui {

/// Entries and readings of one tank, all its layouts, newest first.
class EntriesModel final : public QAbstractTableModel
{
    Q_OBJECT

public:
    enum Column { WhenColumn, WhatColumn, ColumnCount };
    enum Role {
        SortRole = Qt::UserRole + 1, ///< the instant, UTC milliseconds
        PlannedRole,
    };
    Q_ENUM(Role)

    explicit EntriesModel(facade::Keeper& keeper, QObject* parent = nullptr);

    void setTank(record::TankId tank);
    [[nodiscard]] record::TankId tank() const { return m_tank; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role = Qt::DisplayRole) const override;

    [[nodiscard]] record::EntryId entryAt(int row) const;     ///< none for a reading
    [[nodiscard]] record::ReadingId readingAt(int row) const; ///< none for an entry
    [[nodiscard]] QString textAt(int row) const;
    void refresh();

private:
    struct Line
    {
        record::Moment at;
        QString text;
        bool planned = false;
        std::variant<record::EntryId, record::ReadingId> id;
    };

    facade::Keeper& m_keeper;
    record::TankId m_tank;
    std::vector<Line> m_lines;
};

/// A parameter's name inside a sentence: "nitrite", but "pH" and "CO₂ cylinder weight".
[[nodiscard]] QString nameInText(const record::Parameter& parameter);
/// "Nitrite 0.8 mg/L NO₂".
[[nodiscard]] QString readingText(const record::Reading& reading);

} // namespace littoral::ui
