// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/photo_view.h"

#include "ui/theme/figures.h"

#include <QFontMetrics>
#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

namespace littoral::ui {

PhotoView::PhotoView(Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
{
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Photograph; left and right step"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    connect(&theme, &Theme::changed, this, [this] {
        updateGeometry();
        update();
    });
}

void PhotoView::show(std::vector<Shown> photos, const QString& whenEmpty)
{
    m_photos = std::move(photos);
    m_empty = whenEmpty;
    QStringList captions;
    for (const Shown& photo : m_photos) {
        captions << photo.caption;
    }
    setAccessibleDescription(captions.isEmpty() ? whenEmpty : captions.join(tr("; beside it ")));
    update();
}

QSize PhotoView::sizeHint() const
{
    return {m_theme.px(640), m_theme.px(480)};
}

QSize PhotoView::minimumSizeHint() const
{
    return {m_theme.px(220), m_theme.px(180)};
}

void PhotoView::paintPhoto(QPainter& painter, const Shown& photo, const QRect& box) const
{
    const int line = QFontMetrics(m_theme.font(13, 600)).height() + m_theme.px(8);
    const QRect room = box.adjusted(0, 0, 0, -line);
    painter.setFont(m_theme.font(13, 600));
    painter.setPen(m_theme[Token::Ink]);
    if (photo.image.isNull()) {
        painter.drawText(room, Qt::AlignCenter | Qt::TextWordWrap,
                         tr("This picture could not be read from the store."));
    } else {
        const QSize size = photo.image.size().scaled(room.size(), Qt::KeepAspectRatio);
        QRect place(QPoint(), size);
        place.moveCenter(room.center());
        painter.drawImage(place, photo.image);
        painter.setPen(m_theme[Token::Rule]);
        painter.drawRect(place.adjusted(0, 0, -1, -1));
        painter.setPen(m_theme[Token::Ink]);
    }
    drawFigures(painter, QRectF(box.left(), room.bottom() + 1, box.width(), line), Qt::AlignCenter,
                elidedFigures(painter.font(), photo.caption, box.width()));
}

void PhotoView::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.fillRect(rect(), m_theme[Token::Sunk]);
    const QRect inside = rect().adjusted(m_theme.px(8), m_theme.px(8), -m_theme.px(8), -m_theme.px(4));
    if (m_photos.empty()) {
        painter.setFont(m_theme.font(13));
        painter.setPen(m_theme[Token::Ink2]);
        painter.drawText(inside, Qt::AlignCenter | Qt::TextWordWrap, m_empty);
    } else {
        const int gap = m_theme.px(8);
        const int n = static_cast<int>(m_photos.size());
        const int width = (inside.width() - gap * (n - 1)) / n;
        for (int i = 0; i < n; ++i) {
            paintPhoto(painter, m_photos[static_cast<std::size_t>(i)],
                       QRect(inside.left() + i * (width + gap), inside.top(), width, inside.height()));
        }
    }
    if (hasFocus()) {
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(QPen(m_theme[Token::Accent], 2));
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
}

void PhotoView::keyPressEvent(QKeyEvent* event)
{
    if (event->key() != Qt::Key_Left && event->key() != Qt::Key_Right) {
        QWidget::keyPressEvent(event);
        return;
    }
    emit stepped(event->key() == Qt::Key_Left ? -1 : 1, event->modifiers().testFlag(Qt::ShiftModifier));
    event->accept();
}

void PhotoView::focusInEvent(QFocusEvent* event)
{
    QWidget::focusInEvent(event);
    update();
}

void PhotoView::focusOutEvent(QFocusEvent* event)
{
    QWidget::focusOutEvent(event);
    update();
}

} // namespace littoral::ui
