// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/theme/theme.h"

#include <QProxyStyle>

class QApplication;

namespace littoral::ui {

/// The one style of the workbench, over Fusion: flat controls with a 4 px radius and a 1 px edge, sizes from the
/// theme's text scale, colours from its tokens. Dynamic properties it understands: "primary" (bool, push button):
/// filled with the accent; "keyHint" (QString, push button): the key, drawn after the text; "segment" (QString
/// first/middle/last/only, push button): one cell of a segmented control; "quiet" (bool, push button): no edge until
/// hovered; "card" (bool, QFrame): a panel with a 6 px radius.
class LittoralStyle final : public QProxyStyle
{
    Q_OBJECT

public:
    /// `theme` outlives the style.
    explicit LittoralStyle(const Theme& theme);

    /// Then nothing that asks the style how long to move moves at all.
    void setReducedMotion(bool reduced) { m_reducedMotion = reduced; }

    [[nodiscard]] QPalette standardPalette() const override;
    void polish(QWidget* widget) override;
    using QProxyStyle::polish;
    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
    void drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                            const QWidget* widget) const override;
    [[nodiscard]] QRect subElementRect(SubElement element, const QStyleOption* option,
                                       const QWidget* widget) const override;
    [[nodiscard]] QRect subControlRect(ComplexControl control, const QStyleOptionComplex* option, SubControl part,
                                       const QWidget* widget) const override;
    [[nodiscard]] QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& contents,
                                         const QWidget* widget) const override;
    [[nodiscard]] int pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const override;
    [[nodiscard]] int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                                QStyleHintReturn* returnData) const override;

private:
    const Theme& m_theme;
    bool m_reducedMotion = false;
};

/// Gives `app` the style, palette and font of `theme`, and again whenever the theme changes. Also keeps the focus ring:
/// a 2 px accent ring, 2 px off the control that has the keyboard (fields thicken their own edge, painted views draw
/// their own).
void applyTheme(QApplication& app, Theme& theme);

/// Reduced motion for the whole application, once it has its style.
void reduceMotion(bool reduced);

/// The key drawn after a push button's text; empty when it has none.
[[nodiscard]] QString keyHintOf(const QWidget* widget);

} // namespace littoral::ui
