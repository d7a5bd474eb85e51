// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"

#include <QAbstractListModel>
#include <functional>
#include <map>
#include <optional>

namespace littoral::ui {

/// Work that is due today or overdue, and what has been done of it today, tank by tank: a heading row for each tank and
/// a row with a tick for each task. Ticking writes at once; undo brings the task back.
class WorkModel final : public QAbstractListModel
{
    Q_OBJECT

public:
    enum Role {
        HeadingRole = Qt::UserRole + 1, ///< bool: the row names a tank
        GlyphRole,                      ///< facade::Glyph as int
        SideTextRole,                   ///< "3 d over", "now", "done"
        OverdueRole,                    ///< bool
        WhyRole,
        CautionRole, ///< one paragraph, to be read before the work; empty for none
        TankNameRole,
    };
    Q_ENUM(Role)

    struct Progress
    {
        int done = 0;
        int all = 0;
    };

    explicit WorkModel(facade::Keeper& keeper, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    /// Qt::CheckStateRole only: ticks an open task as done now.
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

    [[nodiscard]] Progress progress() const;
    [[nodiscard]] const care::DueItem* item(const QModelIndex& index) const; ///< nullptr for headings and done work
    /// Work of a round typed in afterwards: due on that day, ticked as done at the time `at` gives for its tank.
    void setSheet(const std::optional<QDate>& day, std::function<record::Moment(record::TankId)> at);
    void refresh();

signals:
    void writeFailed(const littoral::Error& error);

private:
    struct Line
    {
        bool heading = false;
        bool done = false;
        bool skipped = false;
        QString tank;
        care::DueItem item;
        QString why{}; ///< empty: as the item says
    };

    [[nodiscard]] record::Moment roundEnd() const;
    void appendTank(std::vector<Line>& lines, const record::Tank& tank);
    void appendRow(std::vector<Line>& lines);

    facade::Keeper& m_keeper;
    std::vector<Line> m_lines;
    QDate m_day;
    std::optional<QDate> m_sheetDay;
    std::function<record::Moment(record::TankId)> m_sheetTime;
    std::map<record::LayoutId, std::vector<care::DueItem>> m_atDayStart;
    std::vector<care::DueItem> m_rowSeen; ///< work for the whole row that was open at some time today
};

} // namespace littoral::ui
