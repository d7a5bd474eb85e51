// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/bench_list.h"
#include "ui/theme/theme.h"

#include <QListView>

namespace littoral::ui {

/// The worksheets one under another, a heading for each group; Enter goes into the sheet.
class SheetList final : public QListView
{
    Q_OBJECT

public:
    SheetList(Theme& theme, BenchListModel& model, QWidget* parent = nullptr);

    [[nodiscard]] QString current() const;
    /// Puts the cursor on a sheet if it is listed; emits nothing.
    void showSheet(const QString& key);

signals:
    void chosen(const QString& key);
    void entered(const QString& key);

protected:
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    BenchListModel& m_model;
    bool m_quiet = false;
};

} // namespace littoral::ui
