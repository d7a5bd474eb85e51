// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/tanks_model.h"
#include "ui/widgets/text.h"

#include <QWidget>

class QBoxLayout;
class QListView;
class QPushButton;

namespace littoral::ui {

class TankDelegate;

/// The rail at the left: the row's tanks, earlier layouts, today's counts, and the way to a further tank.
class Rail final : public QWidget
{
    Q_OBJECT

public:
    Rail(Theme& theme, facade::Keeper& keeper, facade::Forecasts& forecasts, QWidget* parent = nullptr);

    [[nodiscard]] TanksModel& model() { return *m_model; }
    [[nodiscard]] QListView* list() { return m_list; }
    [[nodiscard]] record::TankId selected() const;
    void select(record::TankId tank);
    void setFolded(bool folded);
    [[nodiscard]] bool isFolded() const { return m_folded; }

signals:
    void selectedChanged(littoral::record::TankId tank);
    void opened(littoral::record::LayoutId layout);
    void addWanted();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void apply();
    void refreshCounts();

    Theme& m_theme;
    facade::Keeper& m_keeper;
    TanksModel* m_model;
    TankDelegate* m_delegate;
    QListView* m_list;
    Text *m_today, *m_due, *m_overdue, *m_snoozed;
    QPushButton* m_add;
    QBoxLayout* m_counts;
    record::TankId m_selected; ///< kept across refreshes
    bool m_folded = false;
};

} // namespace littoral::ui
