// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/rounds_model.h"
#include "ui/pages/rounds/cell_edit.h"
#include "ui/theme/theme.h"

#include <QTableView>

namespace littoral::ui {

class RoundsDelegate;
class TankHeader;

/// The grid of a round, for hands that may be wet: Enter goes to the next due cell and opens it, typing opens the cell
/// the keyboard is on, every way of leaving a cell saves it, Esc leaves the cell and keeps what was typed.
class RoundsGrid final : public QTableView
{
    Q_OBJECT

public:
    RoundsGrid(Theme& theme, facade::Keeper& keeper, RoundsModel& model, QWidget* parent = nullptr);

    void setOrder(RoundsModel::Order order) { m_order = order; }
    [[nodiscard]] RoundsModel::Order order() const { return m_order; }
    /// The open cell's field; nullptr when none is open.
    [[nodiscard]] CellEdit* openCell() const;
    void goToFirstDue();
    /// Saves the open cell, if any, and goes on to the next due one.
    void keepAndGoOn();
    /// Saves the open cell and stays.
    void leaveCell();
    /// Puts a kit step into the current cell, opening it if need be.
    void takeStep(double step);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    void cellChanged(const QModelIndex& cell);
    void typing(const QModelIndex& cell, const QString& text);
    /// Enter, and no cell is due any more.
    void nothingLeft();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void focusInEvent(QFocusEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool focusNextPrevChild(bool next) override;

private:
    void applyTheme();
    void coverCorner();
    void fitHeight();
    void leave(QWidget* editor, CellEdit::Leave where);
    void step(int columns);
    void openIfEditable(const QModelIndex& cell);

    Theme& m_theme;
    RoundsModel& m_model;
    RoundsDelegate* m_delegate;
    TankHeader* m_tanks;
    RoundsModel::Order m_order = RoundsModel::Order::AlongRow;
};

} // namespace littoral::ui
