// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/trends/side_column.h"

#include <QEvent>
#include <QLayout>
#include <QPainter>
#include <QResizeEvent>

namespace littoral::ui {

SideColumn::SideColumn(const Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
{
    connect(&theme, &Theme::changed, this, &SideColumn::settleHeight);
}

void SideColumn::settleHeight()
{
    if (layout() == nullptr || width() <= 0) {
        return;
    }
    const int height = layout()->totalHeightForWidth(width());
    if (height != minimumHeight()) {
        setMinimumHeight(height);
    }
    update();
}

bool SideColumn::event(QEvent* event)
{
    const bool done = QWidget::event(event);
    if (event->type() == QEvent::LayoutRequest) {
        settleHeight();
    }
    return done;
}

void SideColumn::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) {
        settleHeight();
    }
}

void SideColumn::paintEvent(QPaintEvent*)
{
    QPainter(this).fillRect(rect(), m_theme[Token::Panel]);
}

} // namespace littoral::ui
