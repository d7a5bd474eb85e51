// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/forecasts.h"
#include "core/facade/keeper.h"
#include "core/facade/lane_model.h"

#include <QAbstractListModel>
#include <QTimer>
#include <set>

namespace littoral::ui {

/// The row as the rail shows it: a heading, the tanks in row order, then a heading and the earlier layouts. A tick
/// means "shown in Lanes".
class TanksModel final : public QAbstractListModel
{
    Q_OBJECT

public:
    enum Role {
        HeadingRole = Qt::UserRole + 1, ///< bool
        SideTextRole,                   ///< of a heading: "3 overdue", "1"
        LineRole,                       ///< "180 L · day 16"
        StatusRole,                     ///< facade::Status as int
        StatusWordRole,
        LengthRole,
        DepthRole,
        HeightRole, ///< cm
        BedShareRole,
        TankRole,   ///< qint64
        LayoutRole, ///< qint64
    };
    Q_ENUM(Role)

    struct Counts
    {
        int due = 0, overdue = 0, snoozed = 0;
    };

    TanksModel(facade::Keeper& keeper, facade::Forecasts& forecasts, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

    [[nodiscard]] std::vector<record::LayoutId> shown() const;
    [[nodiscard]] Counts counts() const;
    [[nodiscard]] int rowOf(record::TankId tank) const; ///< of its running layout; -1 when there is none
    [[nodiscard]] record::TankId tankAt(int row) const;
    [[nodiscard]] double longest_cm() const { return m_longest; } ///< outlines share one scale
    void refresh();

signals:
    void shownChanged();
    void refreshed();

private:
    struct Line
    {
        bool heading = false;
        QString text, side;
        facade::LaneModel lane;
    };

    facade::Keeper& m_keeper;
    facade::Forecasts& m_forecasts;
    std::vector<Line> m_lines;
    std::set<record::LayoutId> m_hidden;       ///< running layouts whose tick was taken out
    std::set<record::LayoutId> m_shownEarlier; ///< earlier layouts that were ticked
    double m_longest = 0.0;
    std::size_t m_tankCount = 0, m_layoutCount = 0;
    QTimer m_soon;
};

/// What there is to show of a layout's forecast.
[[nodiscard]] facade::ForecastState forecastStateOf(const facade::Forecasts& forecasts, record::LayoutId layout);

} // namespace littoral::ui
