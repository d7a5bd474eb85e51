// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/lane_painter.h"
#include "ui/paint/still_picture.h"
#include "ui/paint/time_header.h"
#include "ui/widgets/lanes/lane_cursor.h"
#include "ui/widgets/motion.h"

#include <QAbstractScrollArea>
#include <QDate>

namespace littoral::ui {

/// The lanes of a row under one time header: one painted widget. What a lane looks like at rest is kept in a pixmap;
/// only now-line, hover and focus are drawn with every frame. Keys: see keyPressEvent; every drag has one.
class LaneView final : public QAbstractScrollArea
{
    Q_OBJECT

public:
    /// Both outlive the view.
    LaneView(const Theme& theme, TimeAxis& axis, QWidget* parent = nullptr);
    ~LaneView() override;

    void setLanes(std::vector<LanePtr> lanes);
    void setOptions(const LaneOptions& options);
    /// More lanes than this are shown as overview lanes, the selected one in full. Default 10.
    void setOverviewAbove(std::size_t lanes);
    /// Largest tank of the whole row, so that outlines keep one scale whatever is shown; by default the lanes' own.
    void setRowShapes(std::vector<TankShape> shapes);

    [[nodiscard]] const std::vector<LanePtr>& lanes() const { return m_lanes; }
    [[nodiscard]] const LaneOptions& options() const { return m_options; }
    [[nodiscard]] const LaneCursor& cursor() const { return m_cursor; }
    [[nodiscard]] const facade::LaneModel* selectedLane() const;
    /// The due work that has the focus; nullptr when the focus is on something else.
    [[nodiscard]] const facade::LaneChip* selectedChip() const;
    void selectTank(record::TankId tank);
    void selectItem(std::size_t lane, const LaneItem& item);
    /// Eases the axis back so that now stands where it does by default.
    void showNow();
    /// Opens what has the focus, as Enter does.
    void activate();
    [[nodiscard]] bool isMoving() const { return m_move.has_value(); }

    /// Layout of a lane as drawn; viewport rectangles of a lane and an item (empty when out of sight).
    [[nodiscard]] const LaneBox& box(std::size_t lane) const;
    [[nodiscard]] QRect laneRect(std::size_t lane) const;
    [[nodiscard]] QRect itemViewRect(std::size_t lane, const LaneItem& item) const;
    [[nodiscard]] std::optional<std::size_t> laneAt(double viewportY) const;
    /// Rises when lanes or what is shown of them change: the accessible tree is made anew.
    [[nodiscard]] quint64 generation() const { return m_generation; }
    [[nodiscard]] const LaneMetrics& metrics() const { return m_metrics; }
    [[nodiscard]] double contentHeight() const { return m_tops.empty() ? 0.0 : m_tops.back(); }

signals:
    void laneSelected(littoral::record::TankId tank, littoral::record::LayoutId layout);
    /// Lane, row or item under the keyboard changed; the foot strip follows.
    void selectionChanged();
    void doneRequested(const littoral::facade::LaneChip& chip);
    void snoozeRequested(const littoral::facade::LaneChip& chip);
    void skipRequested(const littoral::facade::LaneChip& chip);
    void openRequested(const littoral::facade::LaneChip& chip);
    void moveRequested(const littoral::facade::LaneChip& chip, const QDate& day);
    void entryOpenRequested(littoral::record::EntryId entry);
    void readingOpenRequested(littoral::record::ReadingId reading);
    void laneOpenRequested(littoral::record::LayoutId layout);
    void waterChangeRequested(littoral::record::TankId tank, littoral::record::LayoutId layout);

protected:
    bool event(QEvent* event) override;
    bool viewportEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;
    void keyPressEvent(QKeyEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    bool focusNextPrevChild(bool next) override;

private:
    struct Cached
    {
        LaneBox box;
        StillPicture picture;
        bool boxValid = false;
        bool drawnSelected = false;
    };
    /// A chip on its way to another day, by pointer or by keys.
    struct Move
    {
        std::size_t lane = 0;
        LaneItem item;
        QDate day;
        bool byPointer = false;
    };
    struct Press
    {
        QPointF at;
        std::optional<std::size_t> lane;
        std::optional<LaneItem> item;
        qint64 from = 0, to = 0;
        bool dragging = false;
        bool inHeader = false;
    };

    /// Lanes on their way to other heights, and on a switch of the axis marks from dates to ages or back.
    struct Slide
    {
        std::vector<double> tops; ///< before
        std::optional<AxisView> axis;
        double done = 0.0;
    };

    void relayout();                  ///< heights and tops, after a change of models, size, look or mode
    void slide(bool axis, bool show); ///< the same, but eased; then shows the lane that has the keyboard
    void axisModeChanged();
    void invalidateBoxes(); ///< after a change of the range
    void updateScrollBar();
    void themeChanged();
    [[nodiscard]] LaneFrame frame() const;
    [[nodiscard]] LaneFrame frameOf(std::size_t lane) const; ///< while it slides, each lane has its own axis
    [[nodiscard]] LaneKind kindOf(std::size_t lane) const;
    [[nodiscard]] double laneTop(std::size_t lane) const; ///< viewport y
    [[nodiscard]] double headerHeight() const { return m_header.height(); }
    void paintLaneAt(QPainter& painter, std::size_t lane) const;
    void paintOverlays(QPainter& painter) const;
    void paintMove(QPainter& painter) const;
    void afterCursor(bool reveal);
    void reveal();
    [[nodiscard]] std::optional<std::pair<std::size_t, LaneItem>> hit(QPointF at) const;
    [[nodiscard]] QString tipAt(QPointF at) const;
    bool handleMoveKey(QKeyEvent* event);
    bool handleWorkKey(int key);
    bool handleAxisKey(QKeyEvent* event);
    bool handleStepKey(int key);
    void startMove(bool byPointer);
    void finishMove(bool take);
    void dragChip(QPointF at);

    const Theme& m_theme;
    TimeAxis& m_axis;
    LaneMetrics m_metrics;
    LanePainter m_painter;
    TimeHeader m_header;
    std::vector<LanePtr> m_lanes;
    std::vector<TankShape> m_shapes;
    LaneOptions m_options;
    LaneCursor m_cursor;
    std::vector<double> m_tops; ///< of each lane from the first one's top, and the foot of the last
    mutable std::vector<Cached> m_cache;
    mutable std::optional<std::vector<double>> m_grid; ///< px of the time header's ticks
    std::optional<std::pair<std::size_t, LaneItem>> m_hover;
    std::optional<Press> m_press;
    std::optional<Move> m_move;
    Motion m_glide; ///< of the axis
    Motion m_slide; ///< of lanes and what is on them
    std::optional<Slide> m_sliding;
    AxisView m_axisAtRest;
    std::size_t m_overviewAbove = 10;
    quint64 m_generation = 0;
};

} // namespace littoral::ui
