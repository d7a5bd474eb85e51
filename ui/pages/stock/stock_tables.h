// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/stock_table_models.h"
#include "ui/theme/theme.h"

#include <QTableView>

namespace littoral::ui {

/// A table as high as its rows, in a page that scrolls; columns share the width and the lesser ones make room when it
/// is short. What a hidden column says is among the row's reasons.
class StockTable : public QTableView
{
    Q_OBJECT

public:
    StockTable(Theme& theme, QWidget* parent);

    /// Height of header and rows.
    [[nodiscard]] int fullHeight() const;

signals:
    /// Enter or a double click on a row.
    void opened(int row);
    void currentRowChanged(int row);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    [[nodiscard]] Theme& theme() const { return m_theme; }
    /// After a reset, a new look or a new width.
    void arrange();
    /// Widths by column; zero hides it. The rest goes to the columns marked -1 in equal parts.
    [[nodiscard]] virtual std::vector<int> widths(int room) const = 0;
    virtual void arrangeRows() = 0;

private:
    Theme& m_theme;
};

class AnimalsTable final : public StockTable
{
    Q_OBJECT

public:
    AnimalsTable(Theme& theme, AnimalsModel& model, QWidget* parent = nullptr);

protected:
    [[nodiscard]] std::vector<int> widths(int room) const override;
    void arrangeRows() override;

private:
    AnimalsModel& m_model;
};

class PlantsTable final : public StockTable
{
    Q_OBJECT

public:
    PlantsTable(Theme& theme, PlantsModel& model, QWidget* parent = nullptr);

protected:
    [[nodiscard]] std::vector<int> widths(int room) const override;
    void arrangeRows() override;

private:
    PlantsModel& m_model;
};

} // namespace littoral::ui
