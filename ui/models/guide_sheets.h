// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/guide_article.h"

namespace littoral::ui {

/// The worksheets explained: what each is for, its formula, what goes in and within which bounds, what to watch, its
/// source. Made from the sheets themselves, so that nothing is said twice.
[[nodiscard]] GuideShelf sheetShelf();

/// "sheet:co2".
[[nodiscard]] QString sheetTopic(const QString& sheet);

} // namespace littoral::ui
