// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/entries_model.h"
#include "ui/widgets/side_panel.h"

class QComboBox;
class QTableView;

namespace littoral::ui {

class BulkBar;

/// Everything recorded, of one tank or of the whole row: narrowed by tank, kind and text, sorted by any column, edited
/// in place (F2), opened in its form (Enter), removed (Del). What is selected is changed together by the bar below, as
/// one change; undo brings back.
class EntriesPanel final : public SidePanel
{
    Q_OBJECT

public:
    EntriesPanel(facade::Keeper& keeper, Theme& theme, QWidget* parent = nullptr);

    /// None: the whole row.
    void setTank(record::TankId tank);
    [[nodiscard]] QTableView* table() { return m_table; }
    [[nodiscard]] EntriesModel& model() { return *m_model; }
    void removeSelected();
    [[nodiscard]] bool takesPage() const override { return true; }

signals:
    void entryWanted(littoral::record::EntryId entry);
    void readingWanted(littoral::record::ReadingId reading);
    void photoWanted(littoral::record::TankId tank, littoral::record::PhotoId photo);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void makeFilters();
    void makeTable();
    void connectAll();
    void fillChoices();
    void applyFilter();
    void refresh();
    void restoreSelection();
    void arrange();
    void editCurrent();
    void change(const facade::BulkChange& change);
    [[nodiscard]] std::vector<facade::DatedRef> selected() const;

    facade::Keeper& m_keeper;
    EntriesModel* m_model;
    QComboBox *m_tank, *m_show;
    QLineEdit* m_filter;
    Text* m_count;
    QTableView* m_table;
    BulkBar* m_bulk;
    Text* m_empty;
    std::vector<facade::DatedRef> m_selected; ///< kept over a refresh of the model
    int m_currentRow = 0;
    int m_currentColumn = 0;
    bool m_hadKeyboard = false;
    bool m_restoring = false;
};

} // namespace littoral::ui
