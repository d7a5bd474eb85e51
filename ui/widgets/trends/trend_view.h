// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/still_picture.h"
#include "ui/paint/trend_painter.h"
#include "ui/widgets/chart_widget.h"

#include <memory>
#include <optional>

namespace littoral::ui {

/// Readings of several tanks on the shared time axis, with a crosshair and a stretch for statistics. Left and Right
/// move the crosshair by a day, with Ctrl by a week; '.' and ',' go to the next and previous reading of the panel, Home
/// and End to its first and last; Up and Down choose the panel; '[' and ']' set the stretch's ends at the crosshair,
/// Backspace takes the stretch away; + and - zoom. A click sets the crosshair, a drag with Shift the stretch, a double
/// click opens the reading.
///
/// Places are the axis' own: UTC ms on the calendar, ms since flooding at equal age.
class TrendView final : public ChartWidget
{
    Q_OBJECT

public:
    struct Stretch
    {
        qint64 from = 0, to = 0;
        bool operator==(const Stretch&) const = default;
    };

    /// Both outlive the view.
    TrendView(const Theme& theme, TimeAxis& axis, QWidget* parent = nullptr);

    void setDrawing(std::shared_ptr<const TrendDrawing> drawing);
    [[nodiscard]] const facade::TrendModel& model() const { return m_drawing->model; }
    [[nodiscard]] const std::shared_ptr<const TrendDrawing>& drawing() const { return m_drawing; }
    void setOptions(const TrendOptions& options);
    [[nodiscard]] const TrendOptions& options() const { return m_options; }
    /// The tank that is drawn heaviest.
    void setSelected(record::TankId tank);
    /// Its place in the model; 0 when it is not on show.
    [[nodiscard]] std::size_t selected() const { return m_selected; }
    [[nodiscard]] const TrendLayout& layoutNow() const;

    /// Where the crosshair is; now (of the selected tank) until it was moved.
    [[nodiscard]] qint64 cursor() const;
    [[nodiscard]] bool hasCursor() const { return m_cursor.has_value(); }
    void setCursor(std::optional<qint64> own);
    /// What statistics are reckoned over: the stretch that was set, else what is on show up to now.
    [[nodiscard]] Stretch stretch() const;
    [[nodiscard]] bool hasStretch() const { return m_stretch.has_value(); }
    void setStretch(std::optional<Stretch> stretch);
    /// Parameter of the panel that has the keyboard.
    [[nodiscard]] std::size_t currentParameter() const;
    void stepReading(bool forward);

    /// Draws what is on show into any painter, light or dark, without crosshair.
    void render(QPainter& painter, QSizeF size, const Theme& theme) const;

    [[nodiscard]] int partCount() const override;
    [[nodiscard]] QString partSentence(int part) const override;
    [[nodiscard]] QRect partRect(int part) const override;
    [[nodiscard]] int currentPart() const override { return m_part; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    void cursorMoved();
    void stretchChanged();
    void panelChanged();
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
    struct Hit
    {
        std::size_t series = 0, point = 0;
    };
    void forget();
    void axisModeChanged();
    void describe();
    void stepCursor(int days);
    void stepPanel(int by);
    void toEnd(bool last);
    void setStretchEnd(bool last);
    void bringIntoView(qint64 own);
    bool handleCursorKey(QKeyEvent* event);
    bool handleAxisKey(QKeyEvent* event);
    [[nodiscard]] qint64 floodedOfSelected() const;
    [[nodiscard]] std::optional<std::size_t> panelAt(QPointF pos) const;
    [[nodiscard]] std::optional<qint64> placeAt(QPointF pos) const;
    [[nodiscard]] std::optional<Hit> readingAt(QPointF pos) const;
    [[nodiscard]] QString eventSentenceAt(QPointF pos) const;

    const Theme& m_theme;
    TimeAxis& m_axis;
    std::shared_ptr<const TrendDrawing> m_drawing;
    TrendOptions m_options;
    record::TankId m_tank;
    std::size_t m_selected = 0;
    mutable std::optional<LaneMetrics> m_metrics;
    mutable std::optional<TrendLayout> m_layout;
    StillPicture m_still; ///< everything but crosshair, stretch and ring
    AxisMode m_mode;
    std::optional<qint64> m_cursor;
    std::optional<Stretch> m_stretch;
    int m_part = 0;
    std::optional<qint64> m_dragFrom;
};

} // namespace littoral::ui
