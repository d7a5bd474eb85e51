// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/look_of_all.h"

#include "ui/style/littoral_style.h"

#include <QApplication>

namespace littoral::ui::test {

Theme& lookOfAll(Scheme scheme, double textScale)
{
    static Theme theme(Scheme::Light);
    static const bool applied = [] {
        applyTheme(*qApp, theme);
        reduceMotion(true);
        return true;
    }();
    if (applied) {
        theme.setScheme(scheme);
        theme.setTextScale(textScale);
    }
    return theme;
}

} // namespace littoral::ui::test
