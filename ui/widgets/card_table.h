// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/standing.h"
#include "ui/theme/theme.h"

#include <QTableView>
#include <optional>
#include <vector>

namespace littoral::ui {

/// One cell of a table on a card: a strong line and smaller ones under it.
struct CardCell
{
    QString text;
    QStringList details;
    std::optional<care::Status> status; ///< drawn before the text: shape and colour
    bool strong = false;
    bool info = false; ///< in the colour of information
};

struct CardRow
{
    std::vector<CardCell> cells;
    QString sentence; ///< the whole row read aloud
};

struct CardColumn
{
    QString title; ///< may hold a line break
    bool right = false;
    /// Share of the width that the columns' least widths leave over; 0: only as wide as its content.
    double stretch = 0.0;
};

class CardTableModel;

/// A table on a card: whole rows, lines that wrap, as high as its rows are, so that the page scrolls and never a table
/// in it. Up and Down choose, Enter or Space activates.
class CardTable final : public QTableView
{
    Q_OBJECT

public:
    explicit CardTable(Theme& theme, QWidget* parent = nullptr);

    void setColumns(std::vector<CardColumn> columns);
    void setRows(std::vector<CardRow> rows);
    [[nodiscard]] const std::vector<CardRow>& rows() const;
    [[nodiscard]] int chosenRow() const { return currentIndex().row(); }
    /// Does not emit chosen().
    void setChosenRow(int row);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    /// Height of a row in a table this wide, px.
    [[nodiscard]] int heightOfRow(int row) const;

signals:
    void chosen(int row);
    void activatedRow(int row);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void arrange();
    [[nodiscard]] int leastWidth(int column) const;
    [[nodiscard]] int heightOfCell(const CardCell& cell, int width) const;

    Theme& m_theme;
    CardTableModel* m_model;
    std::vector<CardColumn> m_columns;
    bool m_quiet = false;
    int m_height = 0;
};

} // namespace littoral::ui
