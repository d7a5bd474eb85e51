// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPixmap>
#include <functional>

class QPainter;

namespace littoral::ui {

/// What stands still in a painted view, kept as pixels until it is forgotten: only what moves is painted anew. Devices
/// that have no pixels (SVG, PDF) get the drawing itself.
class StillPicture final
{
public:
    void forget() { m_pixels = {}; }
    [[nodiscard]] bool isKept() const { return !m_pixels.isNull(); }
    /// Puts the picture at the painter's origin, made by `draw` on `ground` when there is none of this size. `size` in
    /// px before the device's ratio.
    void paint(QPainter& painter, QSize size, const QColor& ground, const std::function<void(QPainter&)>& draw);

private:
    QPixmap m_pixels;
};

} // namespace littoral::ui
