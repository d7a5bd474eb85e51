// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/flow_layout.h"

#include <algorithm>

namespace littoral::ui {

FlowLayout::FlowLayout(QWidget* parent, int gap)
    : QLayout(parent)
    , m_gap(gap)
{
    setContentsMargins(0, 0, 0, 0);
}

FlowLayout::~FlowLayout()
{
    for (QLayoutItem* item : m_items) {
        delete item;
    }
}

void FlowLayout::addItem(QLayoutItem* item)
{
    m_items.push_back(item);
}

QLayoutItem* FlowLayout::itemAt(int index) const
{
    return index >= 0 && index < count() ? m_items[static_cast<std::size_t>(index)] : nullptr;
}

QLayoutItem* FlowLayout::takeAt(int index)
{
    QLayoutItem* item = itemAt(index);
    if (item != nullptr) {
        m_items.erase(m_items.begin() + index);
    }
    return item;
}

int FlowLayout::heightForWidth(int width) const
{
    return arrange(QRect(0, 0, width, 0), false);
}

QSize FlowLayout::sizeHint() const
{
    int width = 0;
    int height = 0;
    for (const QLayoutItem* item : m_items) {
        if (!item->isEmpty()) {
            width += (width > 0 ? m_gap : 0) + item->sizeHint().width();
            height = std::max(height, item->sizeHint().height());
        }
    }
    const QMargins m = contentsMargins();
    return {width + m.left() + m.right(), height + m.top() + m.bottom()};
}

QSize FlowLayout::minimumSize() const
{
    QSize size;
    for (const QLayoutItem* item : m_items) {
        if (!item->isEmpty()) {
            size = size.expandedTo(item->minimumSize());
        }
    }
    const QMargins m = contentsMargins();
    return {size.width() + m.left() + m.right(), size.height() + m.top() + m.bottom()};
}

void FlowLayout::setGeometry(const QRect& rect)
{
    QLayout::setGeometry(rect);
    arrange(rect, true);
}

int FlowLayout::arrange(const QRect& rect, bool place) const
{
    const QMargins m = contentsMargins();
    const QRect area = rect.marginsRemoved(m);
    int x = area.left();
    int y = area.top();
    std::vector<std::pair<QLayoutItem*, QRect>> line;
    int lineHeight = 0;
    const auto closeLine = [&] {
        for (auto& [item, box] : line) {
            if (place) {
                box.moveTop(y + (lineHeight - box.height()) / 2);
                item->setGeometry(box);
            }
        }
        line.clear();
    };
    for (QLayoutItem* item : m_items) {
        if (item->isEmpty()) {
            continue;
        }
        QSize size = item->sizeHint().expandedTo(item->minimumSize());
        size.setWidth(std::min(size.width(), std::max(item->minimumSize().width(), area.width())));
        if (!line.empty() && x + size.width() > area.right() + 1) {
            closeLine();
            x = area.left();
            y += lineHeight + m_gap;
            lineHeight = 0;
        }
        line.emplace_back(item, QRect(QPoint(x, y), size));
        x += size.width() + m_gap;
        lineHeight = std::max(lineHeight, size.height());
    }
    closeLine();
    return y + lineHeight - rect.top() + m.bottom();
}

} // namespace littoral::ui
