// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/history_strip.h"
#include "ui/widgets/chart_widget.h"

namespace littoral::ui {

/// The strip over the columns. Left and Right walk through what is on show, Enter opens it; drag and wheel pan, Ctrl
/// and the wheel zoom about the pointer.
class StripView final : public ChartWidget
{
    Q_OBJECT

public:
    StripView(Theme& theme, TimeAxis& axis, QWidget* parent = nullptr);

    void setStrip(const facade::CaseStrip& strip);
    /// One series instead of two where the page is low.
    void setCompact(bool compact);
    void setMarked(const std::vector<facade::RecordRef>& marked);
    [[nodiscard]] const std::vector<facade::RecordRef>& marked() const { return m_marked; }
    /// Brings the window into view when it is not.
    void showWindow(bool always);
    [[nodiscard]] const StripLayout& layoutNow() const;

    [[nodiscard]] int partCount() const override { return static_cast<int>(layoutNow().parts.size()); }
    [[nodiscard]] QString partSentence(int part) const override;
    [[nodiscard]] QRect partRect(int part) const override;
    [[nodiscard]] int currentPart() const override { return m_current; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    void opened(const littoral::facade::RecordRef& ref);
    void reached(const littoral::facade::RecordRef& ref, const QString& sentence);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void forget();
    void cut();
    void go(int part);
    [[nodiscard]] int partAt(const QPointF& at) const;

    Theme& m_theme;
    TimeAxis& m_axis;
    facade::CaseStrip m_whole, m_strip;
    bool m_compact = false;
    std::vector<facade::RecordRef> m_marked;
    mutable StripLayout m_layout;
    mutable bool m_laidOut = false;
    int m_current = -1;
    std::optional<double> m_drag;
    bool m_dragged = false;
};

} // namespace littoral::ui
