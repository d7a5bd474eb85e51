// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/rounds_model.h"
#include "ui/pages/rounds/cell_edit.h"
#include "ui/theme/theme.h"

#include <QStyledItemDelegate>

namespace littoral::ui {

/// Cells of the round: white with a bar on the left when due, grey with the last value otherwise, a tint with a tick
/// when entered, a diamond when the value should be looked at again. The editor is a CellEdit.
class RoundsDelegate final : public QStyledItemDelegate
{
    Q_OBJECT

public:
    RoundsDelegate(Theme& theme, RoundsModel& model, QObject* parent = nullptr);

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;
    void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const override;

    [[nodiscard]] int rowHeight() const;
    [[nodiscard]] int columnWidth() const;

signals:
    /// What is being typed, at every key.
    void typing(const QModelIndex& index, const QString& text) const;
    void leaving(QWidget* editor, CellEdit::Leave where) const;

protected:
    bool eventFilter(QObject* editor, QEvent* event) override;

private:
    void paintGround(QPainter* painter, const QRect& rect, CellState state) const;
    void paintShape(QPainter* painter, const QRect& rect, CellState state) const;
    void paintTexts(QPainter* painter, const QRect& rect, const QModelIndex& index, CellState state) const;

    Theme& m_theme;
    RoundsModel& m_model;
};

} // namespace littoral::ui
