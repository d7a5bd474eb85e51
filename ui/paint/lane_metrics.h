// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/theme/theme.h"

#include <QFont>
#include <QStringList>

namespace littoral::ui {

/// Fonts and sizes of the lanes at one text scale. Everything in text is measured, so that nothing is cut at 200 %.
struct LaneMetrics
{
    explicit LaneMetrics(const Theme& theme);

    /// Width of the header column in a view `viewWidth` px wide: about 262 px, at most a third.
    [[nodiscard]] double headerWidth(double viewWidth) const;
    [[nodiscard]] static double lineHeight(const QFont& font);
    [[nodiscard]] double px(double atOne) const { return atOne * scale; }

    double scale;
    QFont name;       ///< 15/20 semibold
    QFont body;       ///< 12
    QFont strong;     ///< 12 semibold
    QFont chip;       ///< 12 medium
    QFont chipStrong; ///< 12 semibold
    QFont small;      ///< 11
    QFont smallStrong;
    QFont tick; ///< 10: bar digits, tick numbers
    double bodyLine, nameLine, smallLine, tickLine;
    double glyph;      ///< side of an event's box
    double chipHeight; ///< at least 24: a target
    double dueRow;
    double eventRow;
    double changeRow;
    double alertRow;
    double phaseRow;
    double tallStrip; ///< least height of the chart in a tall lane
    double shortStrip;
    double gap; ///< between chips
};

/// `text` broken at spaces into lines no wider than `width` px (a single longer word is elided).
[[nodiscard]] QStringList wrapped(const QFont& font, const QString& text, double width);

} // namespace littoral::ui
