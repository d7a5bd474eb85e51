// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/outline_view.h"

#include "core/wording/measures.h"
#include "core/wording/numbers.h"

#include <QFontMetrics>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>

namespace littoral::ui {

OutlineView::OutlineView(Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    setAccessibleName(tr("Outline of the tank"));
    connect(&theme, &Theme::changed, this, [this] {
        updateGeometry();
        update();
    });
}

void OutlineView::setBox(double length_cm, double height_cm, double gap_cm, double bedShare)
{
    m_length = length_cm;
    m_height = height_cm;
    m_gap = gap_cm;
    m_bedShare = std::clamp(bedShare, 0.0, 0.6);
    setAccessibleDescription(
        length_cm > 0 && height_cm > 0
            ? tr("%1 long, %2 high").arg(wording::lengthText(length_cm), wording::lengthText(height_cm))
            : tr("No dimensions yet"));
    update();
}

QSize OutlineView::sizeHint() const
{
    return {m_theme.px(270), m_theme.px(150)};
}

QSize OutlineView::minimumSizeHint() const
{
    return {m_theme.px(160), m_theme.px(110)};
}

void OutlineView::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool known = m_length > 0.0 && m_height > 0.0;
    const double length = known ? m_length : 60.0;
    const double tall = known ? m_height : 35.0;
    const double left = m_theme.px(34);
    const double bottom = m_theme.px(30);
    const QRectF area(left, 6.0, std::max(10.0, width() - left - 12.0), std::max(10.0, height() - bottom - 6.0));
    const double scale = std::min(area.width() / length, area.height() / tall);
    const QSizeF size(length * scale, tall * scale);
    const QRectF box(area.left() + (area.width() - size.width()) / 2.0, area.bottom() - size.height(), size.width(),
                     size.height());
    if (known) {
        drawTank(painter, box);
        drawMeasures(painter, box);
        return;
    }
    painter.setPen(QPen(m_theme[Token::Rule2], 1.2, Qt::DashLine));
    painter.drawRect(box);
    painter.setPen(m_theme[Token::Ink3]);
    painter.setFont(m_theme.font(11));
    painter.drawText(box, Qt::AlignCenter | Qt::TextWordWrap, tr("The outline follows the glass you type"));
}

void OutlineView::drawTank(QPainter& painter, const QRectF& box) const
{
    const double surface = box.top() + box.height() * std::clamp(m_gap / m_height, 0.0, 0.5);
    painter.fillRect(QRectF(box.left(), surface, box.width(), box.bottom() - surface), m_theme[Token::Water]);
    const double bed = box.height() * m_bedShare;
    if (bed > 0.0) {
        QPainterPath soil(QPointF(box.left(), box.bottom()));
        soil.lineTo(box.left(), box.bottom() - bed * 0.55);
        soil.cubicTo(box.left() + box.width() * 0.45, box.bottom() - bed * 0.6, box.left() + box.width() * 0.6,
                     box.bottom() - bed * 1.25, box.right(), box.bottom() - bed * 1.2);
        soil.lineTo(box.right(), box.bottom());
        soil.closeSubpath();
        painter.fillPath(soil, m_theme[Token::Soil]);
    }
    painter.setPen(QPen(m_theme[Token::WaterSurface], 2.0));
    painter.drawLine(QPointF(box.left(), surface), QPointF(box.right(), surface));
    painter.setPen(QPen(m_theme[Token::Ink2], 1.5));
    painter.drawPolyline(QPolygonF{box.topLeft(), box.bottomLeft(), box.bottomRight(), box.topRight()});
}

void OutlineView::drawMeasures(QPainter& painter, const QRectF& box) const
{
    painter.setFont(m_theme.font(11));
    const QFontMetrics metrics(painter.font());
    painter.setPen(QPen(m_theme[Token::Ink2], 1.0));
    const double y = box.bottom() + m_theme.px(14);
    const QString across = wording::lengthText(m_length);
    const double half = metrics.horizontalAdvance(across) / 2.0 + 6.0;
    painter.drawLine(QPointF(box.left(), y - 4), QPointF(box.left(), y + 4));
    painter.drawLine(QPointF(box.right(), y - 4), QPointF(box.right(), y + 4));
    if (box.width() > 2 * half + 8) {
        painter.drawLine(QPointF(box.left(), y), QPointF(box.center().x() - half, y));
        painter.drawLine(QPointF(box.center().x() + half, y), QPointF(box.right(), y));
    }
    painter.drawText(QRectF(box.center().x() - half, y - metrics.height() / 2.0, 2 * half, metrics.height()),
                     Qt::AlignCenter, across);

    const double x = box.left() - m_theme.px(13);
    const QString up = wording::lengthText(m_height);
    const double halfUp = metrics.horizontalAdvance(up) / 2.0 + 6.0;
    painter.drawLine(QPointF(x - 4, box.top()), QPointF(x + 4, box.top()));
    painter.drawLine(QPointF(x - 4, box.bottom()), QPointF(x + 4, box.bottom()));
    if (box.height() > 2 * halfUp + 8) {
        painter.drawLine(QPointF(x, box.top()), QPointF(x, box.center().y() - halfUp));
        painter.drawLine(QPointF(x, box.center().y() + halfUp), QPointF(x, box.bottom()));
    }
    painter.save();
    painter.translate(x, box.center().y());
    painter.rotate(-90);
    painter.drawText(QRectF(-halfUp, -metrics.height() / 2.0, 2 * halfUp, metrics.height()), Qt::AlignCenter, up);
    painter.restore();
}

} // namespace littoral::ui
