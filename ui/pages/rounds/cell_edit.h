// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/theme/theme.h"

#include <QLineEdit>
#include <optional>
#include <vector>

namespace littoral::ui {

/// The field in which one reading is typed. Up and down take the kit's steps, '<' below the lowest one, '/' between
/// two. Keys that leave the cell are handed to the grid as signals.
class CellEdit final : public QLineEdit
{
    Q_OBJECT

public:
    /// Where the keyboard goes next.
    enum class Leave { NextDue, NextColumn, PreviousColumn, Stay, Up, Down, Left, Right };
    Q_ENUM(Leave)

    explicit CellEdit(Theme& theme, QWidget* parent = nullptr);

    /// `from`: the last value in the kit's unit, where stepping starts while nothing is typed.
    void setSteps(std::vector<double> steps, std::optional<double> from);
    void fill(const QString& text);
    [[nodiscard]] bool isFilled() const { return m_filled; }
    void takeStep(int by);
    void takeBelowLowest();
    void takeBetween();

signals:
    void leaving(Leave where);

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    /// Index of the step that the text, or the last value, is nearest to; nothing without either.
    [[nodiscard]] std::optional<std::size_t> nearestStep() const;
    bool leaveBy(const QKeyEvent& event);

    Theme& m_theme;
    std::vector<double> m_steps;
    std::optional<double> m_from;
    bool m_filled = false;
};

} // namespace littoral::ui
