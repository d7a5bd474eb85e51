// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <QString>
#include <QWidget>
#include <string>
#include <vector>

namespace littoral::ui::test {

/// A run of text as it was painted, in the window's pixels. Every visible widget is painted onto a device that keeps
/// text instead of pixels, so labels, buttons, cells and painted charts are all seen the same way.
struct PaintedText
{
    QString text;
    QRectF ink;   ///< tightly around the letters
    QRectF shown; ///< the part of it that no clip, edge, other widget or later fill takes away
    double baseline = 0.0;
    QWidget* widget = nullptr;
};

enum class TextFlaw {
    Clipped,     ///< letters cut by an edge, a clip or something painted over them
    Overlapping, ///< letters over other letters
    Elided,      ///< a label, button or choice that ends in dots and has no tool tip with the whole
};

struct TextFault
{
    TextFlaw flaw = TextFlaw::Clipped;
    QString text;
    QString other; ///< the text it lies over
    QString where; ///< class and name of the widget
    QRectF place;
};

/// All text on `window`, in the order it is painted.
[[nodiscard]] std::vector<PaintedText> paintedTexts(QWidget& window);
/// What cannot be read as it stands. What a scroll bar brings into view is not a fault, nor is what is typed into a
/// field longer than the field.
[[nodiscard]] std::vector<TextFault> textFaults(QWidget& window);
/// One line for each fault, for a test's message.
[[nodiscard]] std::string listed(const std::vector<TextFault>& faults);

} // namespace littoral::ui::test
