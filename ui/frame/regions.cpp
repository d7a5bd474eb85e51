// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/regions.h"

#include <QApplication>
#include <QWidget>

namespace littoral::ui {

namespace {

bool takesKeyboard(const QWidget* widget)
{
    return widget->isVisible() && widget->isEnabled() && (widget->focusPolicy() & Qt::TabFocus) != 0 &&
           widget->focusProxy() == nullptr;
}

} // namespace

QWidget* firstFocusable(QWidget* region)
{
    if (takesKeyboard(region)) {
        return region;
    }
    // Along the focus chain, so that it is the field that Tab would reach first.
    for (QWidget* widget = region->nextInFocusChain(); widget != nullptr && widget != region;
         widget = widget->nextInFocusChain()) {
        if (region->isAncestorOf(widget) && takesKeyboard(widget)) {
            return widget;
        }
    }
    return nullptr;
}

void goToRegion(const QList<QWidget*>& regions, bool next)
{
    const QWidget* focus = QApplication::focusWidget();
    qsizetype at = -1;
    for (qsizetype i = 0; i < regions.size(); ++i) {
        if (focus != nullptr && (regions[i] == focus || regions[i]->isAncestorOf(focus))) {
            at = i;
        }
    }
    const qsizetype count = regions.size();
    for (qsizetype step = 1; step <= count; ++step) {
        const qsizetype start = at < 0 && !next ? count : at;
        const qsizetype i = ((next ? start + step : start - step) % count + count) % count;
        QWidget* target = regions[i]->isVisible() ? firstFocusable(regions[i]) : nullptr;
        if (target != nullptr) {
            target->setFocus(Qt::TabFocusReason);
            return;
        }
    }
}

} // namespace littoral::ui
