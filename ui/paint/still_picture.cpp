// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/still_picture.h"

#include <QPaintEngine>
#include <QPainter>

namespace littoral::ui {

void StillPicture::paint(QPainter& painter, QSize size, const QColor& ground,
                         const std::function<void(QPainter&)>& draw)
{
    if (painter.paintEngine()->type() != QPaintEngine::Raster) {
        painter.save();
        painter.setClipRect(QRect(QPoint(0, 0), size), Qt::IntersectClip);
        painter.fillRect(QRect(QPoint(0, 0), size), ground);
        draw(painter);
        painter.restore();
        return;
    }
    const qreal ratio = painter.device()->devicePixelRatioF();
    const QSize pixels = size * ratio;
    if (m_pixels.size() != pixels) {
        m_pixels = QPixmap(pixels);
        m_pixels.setDevicePixelRatio(ratio);
        m_pixels.fill(ground);
        QPainter inner(&m_pixels);
        draw(inner);
    }
    painter.drawPixmap(0, 0, m_pixels);
}

} // namespace littoral::ui
