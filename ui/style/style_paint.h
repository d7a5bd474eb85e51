// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/theme/theme.h"

class QPainter;
class QStyleOption;
class QStyleOptionButton;
class QStyleOptionComboBox;
class QStyleOptionMenuItem;
class QStyleOptionProgressBar;
class QStyleOptionSlider;
class QStyleOptionSpinBox;
class QWidget;

/// How each control of the style is drawn; LittoralStyle only picks which.
namespace littoral::ui::stylepaint {

struct Pen
{
    QPainter& painter;
    const Theme& theme;
};

void box(const Pen& pen, const QRectF& rect, const QColor& fill, const QColor& edge, double radius,
         double edgeWidth = 1.0);
void buttonBevel(const Pen& pen, const QStyleOptionButton& option, const QWidget* widget);
void buttonLabel(const Pen& pen, const QStyleOptionButton& option, const QWidget* widget);
void checkMark(const Pen& pen, const QStyleOption& option);
void radioMark(const Pen& pen, const QStyleOption& option);
/// `fault`: what stands in the field cannot be used.
void fieldFrame(const Pen& pen, const QStyleOption& option, bool fault = false);
void chevron(const Pen& pen, const QRectF& box, Qt::ArrowType direction, const QColor& colour);
void comboBox(const Pen& pen, const QStyleOptionComboBox& option, const QRect& arrow);
void scrollBar(const Pen& pen, const QStyleOptionSlider& option, const QRect& handle);
/// A thin groove, filled to the handle; the handle is a ring with the accent's edge.
void slider(const Pen& pen, const QStyleOptionSlider& option, const QRect& groove, const QRect& handle);
void menuItem(const Pen& pen, const QStyleOptionMenuItem& option);
void progressGroove(const Pen& pen, const QStyleOption& option);
void progressContents(const Pen& pen, const QStyleOptionProgressBar& option);
void spinBox(const Pen& pen, const QStyleOptionSpinBox& option, const QRect& up, const QRect& down);

} // namespace littoral::ui::stylepaint
