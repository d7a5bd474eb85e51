// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/plain_table.h"
#include "ui/theme/theme.h"

#include <QTableView>

namespace littoral::ui {

/// A chart's values as a table that the keyboard and a screen reader walk through; Ctrl+C copies the selected cells as
/// tab-separated text.
class TableTwin final : public QTableView
{
    Q_OBJECT

public:
    explicit TableTwin(Theme& theme, QWidget* parent = nullptr);

    void setTable(PlainTable table);
    [[nodiscard]] const PlainTable& table() const { return m_model->table(); }
    /// Puts the cursor on the table's own current row.
    void showCurrent();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void apply();
    void copy() const;

    Theme& m_theme;
    PlainTableModel* m_model;
};

} // namespace littoral::ui
