// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/forecasts.h"
#include "core/facade/keeper.h"
#include "ui/models/round_advice.h"

#include <QAbstractTableModel>
#include <map>
#include <set>

namespace littoral::ui {

/// What a cell of the round is, in the order in which it is looked at.
enum class CellState {
    Quiet,         ///< nothing asked for: the last value, grey
    Due,           ///< to be read on this round
    Entered,       ///< read today
    LookAgain,     ///< read today, and unlike what was expected
    NotUnderstood, ///< typed, kept, but not a reading yet
};

/// The round of one day: a row for every running tank, a column for every parameter. A cell shows today's reading if
/// there is one, so a half-done round comes back from the store as it was left. Setting a cell's text writes the
/// reading at once; what cannot be a reading stays in its cell as typed.
class RoundsModel final : public QAbstractTableModel
{
    Q_OBJECT

public:
    enum Role {
        StateRole = Qt::UserRole + 1, ///< CellState as int
        TypedRole,                    ///< what is shown as typed: today's reading or a draft
        LastTextRole,                 ///< the value before this round
        LastAgoRole,                  ///< how old that is: "1 d"
        UnitLabelRole,                ///< the unit a value is typed in
        ForeignUnitRole,              ///< the same, empty when it is the column's unit
        AdviceRole,                   ///< headline of the advice on what was entered; may be empty
        ParameterRole,                ///< key (cells and horizontal header)
        TankNameRole,                 ///< (cells and vertical header)
        TankLineRole,                 ///< "180 L · day 16" (vertical header)
        DueRole,                      ///< bool: asked for on this round, read or not
    };
    Q_ENUM(Role)

    /// Along the row: one tank after another. By kit: one parameter through all tanks, so that a bottle is opened once.
    enum class Order { AlongRow, ByKit };

    struct Progress
    {
        int done = 0;
        int all = 0;
    };

    /// `forecasts` may be null.
    RoundsModel(facade::Keeper& keeper, const facade::Forecasts* forecasts, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role = Qt::DisplayRole) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;

    void setAllParameters(bool all);
    [[nodiscard]] bool allParameters() const { return m_all; }
    /// When the round's readings were taken; nothing: the moment each is entered.
    void setReadAt(std::optional<record::Moment> at) { m_readAt = at; }
    /// A round typed in afterwards from a sheet: the day it was walked on; nothing: today's round. Each tank has a time
    /// of its own; one without has that of the tank before it, the first noon.
    void setSheetDay(const std::optional<QDate>& day);
    [[nodiscard]] bool isSheet() const { return m_sheetDay.has_value(); }
    void setSheetTime(record::TankId tank, const QTime& time);
    [[nodiscard]] QTime sheetTime(record::TankId tank) const;
    /// When this tank's readings count as taken.
    [[nodiscard]] record::Moment readAt(record::TankId tank) const;
    [[nodiscard]] QDate day() const { return m_day; }

    [[nodiscard]] record::LayoutId layout(int row) const;
    [[nodiscard]] record::TankId tank(int row) const;
    [[nodiscard]] const record::Parameter* parameter(int column) const;
    [[nodiscard]] int columnOf(const QString& parameterKey) const; ///< -1 when not shown
    [[nodiscard]] int rowOf(record::TankId tank) const;            ///< -1 when not on this round
    [[nodiscard]] const record::TestKit* kit(const QModelIndex& index) const;
    /// The kit's steps in the unit the cell is typed in; empty when the kit has none.
    [[nodiscard]] std::vector<double> steps(const QModelIndex& index) const;
    [[nodiscard]] record::Reading const* lastReading(const QModelIndex& index) const;

    [[nodiscard]] Advice advise(const QModelIndex& index, const QString& typed) const;
    /// The next cell that is due and not read, after `from`, round the end if need be; invalid when none is left.
    [[nodiscard]] QModelIndex nextDue(const QModelIndex& from, Order order) const;
    /// The same among all cells that were not read on this round, due or not.
    [[nodiscard]] QModelIndex nextUnread(const QModelIndex& from, Order order) const;
    [[nodiscard]] Progress progress() const;
    /// Place of a due cell among the due ones in `order`, from 1; zero for a cell that is not due.
    [[nodiscard]] int placeOf(const QModelIndex& index, Order order) const;
    /// Takes this round's reading or draft out of a cell (undoable).
    void clearCell(const QModelIndex& index);

    void refresh();

signals:
    /// Writing failed for a reason that typing cannot mend (the store, not the value).
    void writeFailed(const littoral::Error& error);
    void progressChanged();
    /// Rows or columns are about to change: the last moment at which an open cell can be saved into its place.
    void shapeAboutToChange();

private:
    struct Cell
    {
        record::ReadingId entered;
        QString typed;
        QString unit; ///< code
        QString last, ago;
        bool due = false;
        Advice advice;
    };
    struct RowInfo
    {
        record::TankId tank;
        record::LayoutId layout;
        QString name, line;
        std::vector<Cell> cells;
    };
    using Key = std::pair<record::LayoutId, QString>;
    struct Draft
    {
        QString typed;
        Advice advice;
    };

    [[nodiscard]] std::vector<RowInfo> readRows(const std::vector<const record::Parameter*>& columns);
    [[nodiscard]] std::vector<const record::Parameter*> readColumns() const;
    [[nodiscard]] std::vector<Cell> readCells(const record::LayoutRecord& layout,
                                              const std::vector<const record::Parameter*>& columns) const;
    void noteDue(const record::LayoutRecord& layout);
    [[nodiscard]] record::Moment roundEnd() const;
    [[nodiscard]] const Cell* cell(const QModelIndex& index) const;
    [[nodiscard]] const Draft* draft(const QModelIndex& index) const;
    [[nodiscard]] CellState state(const QModelIndex& index) const;
    [[nodiscard]] Key key(const QModelIndex& index) const;
    [[nodiscard]] bool isOpen(const QModelIndex& index) const;
    [[nodiscard]] std::vector<QModelIndex> cellsIn(Order order) const;
    [[nodiscard]] std::vector<QModelIndex> dueCells(Order order) const;
    bool enter(const QModelIndex& index, const QString& typed);
    [[nodiscard]] QString sentence(const QModelIndex& index) const;

    facade::Keeper& m_keeper;
    const facade::Forecasts* m_forecasts;
    bool m_all = false;
    bool m_reshaping = false;
    std::optional<record::Moment> m_readAt;
    std::optional<QDate> m_sheetDay;
    std::map<record::TankId, QTime> m_sheetTimes;
    QDate m_day;
    std::vector<const record::Parameter*> m_columns;
    std::vector<RowInfo> m_rows;
    std::set<record::LayoutId> m_dueKnown;
    std::set<Key> m_due;
    std::map<Key, Draft> m_drafts;
    std::map<Key, Advice>
        m_advice; ///< as it was when the cell was left: a forecast fitted to the odd value agrees with it
};

} // namespace littoral::ui
