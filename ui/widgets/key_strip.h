// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/theme/theme.h"

#include <QWidget>
#include <vector>

namespace littoral::ui {

/// Keys with a word each, drawn as caps: "[Enter] next due cell". Wraps to a second line when the width runs out; what
/// does not fit there is left to the panel of keys. For
/// reading only; every key also exists as a menu item or button.
class KeyStrip final : public QWidget
{
    Q_OBJECT

public:
    struct Key
    {
        QString cap;
        QString word;
    };
    KeyStrip(Theme& theme, std::vector<Key> keys, QWidget* parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    struct Place
    {
        QRect cap, word;
    };
    [[nodiscard]] std::vector<Place> places(int width) const;

    Theme& m_theme;
    std::vector<Key> m_keys;
};

} // namespace littoral::ui
