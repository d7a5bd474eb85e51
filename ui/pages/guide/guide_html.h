// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/guide_article.h"
#include "ui/theme/theme.h"

#include <QImage>

namespace littoral::ui {

/// An article as rich text in the theme's colours and sizes. Links are "guide:" and a topic's id; pictures of ranges
/// are named by rangeUrl.
[[nodiscard]] QString articleHtml(const GuideArticle& article, const Theme& theme);

[[nodiscard]] QString rangeUrl(std::size_t block, std::size_t range);
/// A range on the scale that all species share, as a bar with the parameter's mark; the words stand beside it.
[[nodiscard]] QImage rangeImage(const GuideRange& range, const Theme& theme, double pixelRatio);

/// The topic of a link; empty for any other address.
[[nodiscard]] QString topicOfLink(const QString& address);

} // namespace littoral::ui
