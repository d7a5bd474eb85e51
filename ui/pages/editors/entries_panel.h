// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/entries_model.h"
#include "ui/widgets/side_panel.h"

class QSortFilterProxyModel;
class QTableView;

namespace littoral::ui {

/// Everything recorded about one tank, newest first, narrowed by text. Enter edits, Del removes; undo brings back.
class EntriesPanel final : public SidePanel
{
    Q_OBJECT

public:
    EntriesPanel(facade::Keeper& keeper, Theme& theme, QWidget* parent = nullptr);

    void setTank(record::TankId tank);
    [[nodiscard]] QTableView* table() { return m_table; }
    void removeCurrent();

signals:
    void entryWanted(littoral::record::EntryId entry);
    void readingWanted(littoral::record::ReadingId reading);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    [[nodiscard]] int sourceRow() const;
    void editCurrent();

    facade::Keeper& m_keeper;
    EntriesModel* m_model;
    QSortFilterProxyModel* m_filtered;
    QLineEdit* m_filter;
    QTableView* m_table;
    Text* m_empty;
};

} // namespace littoral::ui
