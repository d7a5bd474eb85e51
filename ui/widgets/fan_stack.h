// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/fan_painter.h"
#include "ui/paint/still_picture.h"
#include "ui/widgets/chart_widget.h"

#include <optional>

namespace littoral::ui {

/// Fan charts under one another on the shared time axis. Left and Right move a cursor by a day, with Ctrl by a week,
/// '.' and ',' to the next and previous reading, Home and End to the ends; + and - zoom about now, N goes to now, Esc
/// takes the cursor away. The wheel pans sideways, with Ctrl it zooms; the plain vertical wheel is left to what scrolls
/// behind.
class FanStack final : public ChartWidget
{
    Q_OBJECT

public:
    /// Both outlive the widget.
    FanStack(const Theme& theme, TimeAxis& axis, QWidget* parent = nullptr);

    void setModel(FanStackModel model);
    [[nodiscard]] const FanStackModel& model() const { return m_model; }
    [[nodiscard]] const FanStackLayout& layoutNow() const;
    [[nodiscard]] std::optional<qint64> cursor() const { return m_cursor; }
    void setCursorAt(std::optional<qint64> at);

    [[nodiscard]] int partCount() const override { return static_cast<int>(m_model.panels.size()); }
    [[nodiscard]] QString partSentence(int part) const override;
    [[nodiscard]] QRect partRect(int part) const override;
    [[nodiscard]] int currentPart() const override { return m_part; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    void readingOpenWanted(littoral::record::ReadingId reading);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    bool event(QEvent* event) override;

private:
    void forget();
    void stepCursor(int days);
    void stepReading(bool forward);
    void describe();
    [[nodiscard]] qint64 cursorOrNow() const;
    [[nodiscard]] const FanReading* readingAt(QPointF pos, int* panel) const;

    const Theme& m_theme;
    TimeAxis& m_axis;
    FanStackModel m_model;
    mutable std::optional<FanStackLayout> m_layout;
    mutable std::optional<LaneMetrics> m_metrics;
    StillPicture m_still; ///< everything but cursor and ring
    std::optional<qint64> m_cursor;
    int m_part = 0;
    std::optional<double> m_dragFrom;
};

} // namespace littoral::ui
