// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/tanks_model.h"
#include "ui/theme/theme.h"

#include <QStyledItemDelegate>

namespace littoral::ui {

/// Paints the rows of TanksModel: tick, name, litres and age, status shape with its word, outline to one scale. Folded,
/// only the outline and the status shape remain.
class TankDelegate final : public QStyledItemDelegate
{
    Q_OBJECT

public:
    TankDelegate(Theme& theme, const TanksModel& model, QObject* parent = nullptr);

    void setFolded(bool folded) { m_folded = folded; }
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    bool editorEvent(QEvent* event, QAbstractItemModel* model, const QStyleOptionViewItem& option,
                     const QModelIndex& index) override;

private:
    void paintHeading(QPainter* painter, const QRect& rect, const QModelIndex& index) const;
    void paintTank(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const;
    void paintFolded(QPainter* painter, const QRect& rect, const QModelIndex& index) const;
    void paintStatus(QPainter* painter, const QRect& line, const QModelIndex& index, bool withWord,
                     bool selected) const;
    void paintOutline(QPainter* painter, const QRect& room, const QModelIndex& index) const;
    [[nodiscard]] QRect tick(const QRect& row) const;

    Theme& m_theme;
    const TanksModel& m_model;
    bool m_folded = false;
};

} // namespace littoral::ui
