// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <QByteArray>
#include <QString>

namespace littoral::ui {

class TimeAxis;
class TrendView;

/// What the charts show as a file. Pictures are drawn anew in light colours at `width` x `height` px, whatever the look
/// on screen, PNG at twice that; a drawing keeps its text as text.
[[nodiscard]] Result<void> writeTrendPng(const TrendView& view, const QString& path, int width, int height);
[[nodiscard]] Result<void> writeTrendSvg(const TrendView& view, const QString& path, int width, int height);
/// Every reading on show.
[[nodiscard]] Result<void> writeTrendCsv(const TrendView& view, const TimeAxis& axis, const QString& path);

} // namespace littoral::ui
