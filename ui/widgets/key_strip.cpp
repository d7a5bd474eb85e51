// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/key_strip.h"

#include <QFontMetrics>
#include <QPainter>
#include <algorithm>

namespace littoral::ui {

namespace {
constexpr int kMostLines = 2;
}

KeyStrip::KeyStrip(Theme& theme, std::vector<Key> keys, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_keys(std::move(keys))
{
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    QStringList spoken;
    for (const Key& key : m_keys) {
        spoken << tr("%1: %2").arg(key.cap, key.word);
    }
    setAccessibleName(tr("Keys of this page"));
    setAccessibleDescription(spoken.join(u"; "));
    connect(&theme, &Theme::changed, this, [this] {
        updateGeometry();
        update();
    });
}

std::vector<KeyStrip::Place> KeyStrip::places(int width) const
{
    const QFontMetrics caps(m_theme.font(10.5, 550));
    const QFontMetrics words(m_theme.font(11));
    const int rowHeight = std::max(caps.height(), words.height()) + m_theme.px(4);
    const int gap = m_theme.px(5);
    std::vector<Place> all;
    int x = 0;
    int y = 0;
    int lines = 1;
    for (const Key& key : m_keys) {
        const int capWidth = caps.horizontalAdvance(key.cap) + m_theme.px(10);
        const int wordWidth = words.horizontalAdvance(key.word);
        const int total = capWidth + gap + wordWidth;
        if (x > 0 && x + total > width) {
            x = 0;
            y += rowHeight + m_theme.px(4);
            if (++lines > kMostLines) {
                break; // the panel of keys ('?') has them all
            }
        }
        all.push_back({QRect(x, y, capWidth, rowHeight), QRect(x + capWidth + gap, y, wordWidth + 1, rowHeight)});
        x += total + m_theme.px(16);
    }
    return all;
}

QSize KeyStrip::sizeHint() const
{
    const auto all = places(QWIDGETSIZE_MAX);
    return all.empty() ? QSize() : QSize(all.back().word.right() + 1, all.back().word.height());
}

QSize KeyStrip::minimumSizeHint() const
{
    int widest = 0;
    const auto all = places(QWIDGETSIZE_MAX);
    for (const Place& place : all) {
        widest = std::max(widest, place.word.right() - place.cap.left() + 1);
    }
    return {widest, all.empty() ? 0 : all.front().cap.height()};
}

int KeyStrip::heightForWidth(int width) const
{
    const auto all = places(width);
    return all.empty() ? 0 : all.back().cap.bottom() + 1;
}

void KeyStrip::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const auto all = places(width());
    const int top = std::max(0, (height() - heightForWidth(width())) / 2);
    for (std::size_t i = 0; i < all.size(); ++i) {
        const QRect cap = all[i].cap.translated(0, top);
        painter.setPen(m_theme[Token::Rule2]);
        painter.setBrush(m_theme[Token::Panel]);
        painter.drawRoundedRect(QRectF(cap).adjusted(0.5, 0.5, -0.5, -0.5), 3, 3);
        painter.setPen(m_theme[Token::Ink2]);
        painter.setFont(m_theme.font(10.5, 550));
        painter.drawText(cap, Qt::AlignCenter, m_keys[i].cap);
        painter.setFont(m_theme.font(11));
        painter.drawText(all[i].word.translated(0, top), Qt::AlignLeft | Qt::AlignVCenter, m_keys[i].word);
    }
}

} // namespace littoral::ui
