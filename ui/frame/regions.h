// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>

class QWidget;

namespace littoral::ui {

/// Moves the keyboard to the next (or previous) of the regions that are shown and hold something that takes it.
void goToRegion(const QList<QWidget*>& regions, bool next);
/// The first widget in `region`, itself included, that the keyboard can reach; nullptr when there is none.
[[nodiscard]] QWidget* firstFocusable(QWidget* region);

} // namespace littoral::ui
