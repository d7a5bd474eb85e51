// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/trend_layout.h"
#include "ui/theme/theme.h"

#include <QListView>
#include <optional>
#include <vector>

namespace littoral::ui {

/// One line of a TickList.
struct TickLine
{
    QString key; ///< empty: a heading
    QString text;
    QString side;                   ///< small, at the right: "12", "reckoned"
    QString mark;                   ///< parameter whose mark is drawn; empty: none
    std::optional<TankStyle> style; ///< a piece of a tank's line is drawn
    bool ticked = false;

    [[nodiscard]] bool heading() const { return key.isEmpty(); }
};

class TickModel;

/// What there is to choose from, with the mark or line it is drawn with: Space ticks, Ctrl+Up and Ctrl+Down move a
/// line, up to the next heading. As high as its lines: what is around it scrolls.
class TickList final : public QListView
{
    Q_OBJECT

public:
    explicit TickList(Theme& theme, QWidget* parent = nullptr);

    void setLines(std::vector<TickLine> lines);
    [[nodiscard]] const std::vector<TickLine>& lines() const;
    [[nodiscard]] QStringList ticked() const; ///< keys, in order
    [[nodiscard]] QString currentKey() const;
    /// Hides lines without these letters; what is ticked stays ticked, seen or not. Empty shows all.
    void setFilter(const QString& text);
    /// Whether the filter leaves no line.
    [[nodiscard]] bool isEmpty() const;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    /// A tick or the order was changed by hand.
    void changed();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;

private:
    void moveCurrent(int by);
    void applyFilter();

    Theme& m_theme;
    TickModel* m_model;
    QString m_filter;
};

} // namespace littoral::ui
