// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"
#include "ui/models/history_record.h"
#include "ui/pages/history/history_card.h"

class QComboBox;
class QLineEdit;
class QListView;

namespace littoral::ui {

/// The record of the layout: filtered, searched, opened in the editors, removed with undo.
class RecordCard final : public HistoryCard
{
    Q_OBJECT

public:
    RecordCard(facade::Keeper& keeper, Theme& theme, QWidget* parent = nullptr);

    void setCase(const facade::CaseFile& file);
    void setMarked(const std::vector<facade::RecordRef>& marked);
    /// Scrolls to the first of them that is shown.
    void bring(const std::vector<facade::RecordRef>& refs);
    void openFind();
    [[nodiscard]] QListView* list() { return m_list; }
    [[nodiscard]] HistoryRecord& model() { return *m_model; }
    void removeCurrent();

signals:
    void opened(const littoral::facade::RecordRef& ref);
    void told(const QString& sentence);
    void failed(const littoral::Error& error, const QString& safe);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void refreshFoot();

    facade::Keeper& m_keeper;
    HistoryRecord* m_model;
    QComboBox *m_kind, *m_order;
    QLineEdit* m_find;
    QListView* m_list;
    Text *m_empty, *m_foot;
};

} // namespace littoral::ui
