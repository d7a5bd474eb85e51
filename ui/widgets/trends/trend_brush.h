// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/still_picture.h"
#include "ui/paint/trend_layout.h"

#include <QWidget>
#include <memory>
#include <optional>

namespace littoral::ui {

/// All there is of one parameter, small, with a window on the part that the charts show. Drag the window or its ends;
/// Left and Right move it by a tenth, with Shift its right end, with Ctrl its left end; Home and End go to the ends of
/// the record.
class TrendBrush final : public QWidget
{
    Q_OBJECT

public:
    /// Both outlive the brush.
    TrendBrush(const Theme& theme, TimeAxis& axis, QWidget* parent = nullptr);

    void setDrawing(std::shared_ptr<const TrendDrawing> drawing, std::size_t parameter);
    /// Everything there is a reading or a forecast at, and now; own places of the axis.
    [[nodiscard]] AxisView whole() const;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    enum class Grip { Left, Window, Right };
    struct Drag
    {
        Grip grip = Grip::Window;
        double x = 0.0;
        qint64 from = 0, to = 0;
    };
    [[nodiscard]] QRectF track() const;
    [[nodiscard]] QRectF window() const;
    void forget();
    void describe();
    void paintLines(QPainter& painter) const;

    const Theme& m_theme;
    TimeAxis& m_axis;
    std::shared_ptr<const TrendDrawing> m_drawing;
    std::size_t m_parameter = 0;
    StillPicture m_still;
    std::optional<Drag> m_drag;
};

} // namespace littoral::ui
