// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/theme/theme.h"
#include "ui/widgets/chart_widget.h"

#include <QStringList>
#include <vector>

namespace littoral::ui {

struct FigureCell
{
    QString value;
    QStringList notes; ///< smaller lines under the value
    bool strong = false;
};

struct FigureRow
{
    QString title;
    QString mark; ///< parameter whose mark stands before the title; empty: none
    std::vector<FigureCell> cells;
    bool heading = false; ///< a title over the rows that follow
    QString sentence;     ///< the row read aloud
};

/// Figures in narrow columns: names over them, values right aligned with small notes under them. Up and Down go through
/// the rows for assistive technology; as high as its rows are.
class FigureTable final : public ChartWidget
{
    Q_OBJECT

public:
    explicit FigureTable(const Theme& theme, QWidget* parent = nullptr);

    void setTable(QStringList columns, std::vector<FigureRow> rows);
    [[nodiscard]] const std::vector<FigureRow>& rows() const { return m_rows; }
    [[nodiscard]] const QStringList& columns() const { return m_columns; }

    [[nodiscard]] int partCount() const override { return static_cast<int>(m_rows.size()); }
    [[nodiscard]] QString partSentence(int part) const override;
    [[nodiscard]] QRect partRect(int part) const override;
    [[nodiscard]] int currentPart() const override { return m_current; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    [[nodiscard]] double titleWidth() const;
    [[nodiscard]] QStringList titleLines(const FigureRow& row) const;
    [[nodiscard]] double columnWidth(double width) const;
    [[nodiscard]] QStringList headerLines(qsizetype column, double width) const;
    [[nodiscard]] double headerHeight(double width) const;
    [[nodiscard]] QStringList noteLines(const FigureCell& cell, double width) const;
    [[nodiscard]] double rowHeight(const FigureRow& row, double width) const;
    void settleHeight();

    const Theme& m_theme;
    QStringList m_columns;
    std::vector<FigureRow> m_rows;
    int m_current = 0;
};

} // namespace littoral::ui
