// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/style/littoral_style.h"

#include "ui/style/style_paint.h"
#include "ui/theme/figures.h"
#include "ui/theme/palette.h"

#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QFocusFrame>
#include <QFrame>
#include <QLineEdit>
#include <QMenu>
#include <QPainter>
#include <QPointer>
#include <QScrollBar>
#include <QSlider>
#include <QStyleOption>
#include <algorithm>

namespace littoral::ui {

namespace {

constexpr int kMotionMs = 140; // how long anything that moves takes

bool isCard(const QWidget* widget)
{
    return widget != nullptr && widget->property("card").toBool();
}

/// Puts the ring round whichever stock control has the keyboard.
class FocusRing final : public QObject
{
public:
    explicit FocusRing(QApplication& app)
        : QObject(&app)
    {
        connect(&app, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) { follow(now); });
    }

private:
    static bool wantsRing(QWidget* widget)
    {
        if (auto* combo = qobject_cast<QComboBox*>(widget)) {
            return !combo->isEditable();
        }
        return qobject_cast<QAbstractButton*>(widget) != nullptr || qobject_cast<QSlider*>(widget) != nullptr;
    }

    void follow(QWidget* widget)
    {
        if (widget == nullptr || !wantsRing(widget)) {
            if (m_frame != nullptr) {
                m_frame->setWidget(nullptr);
            }
            return;
        }
        if (m_frame == nullptr) {
            m_frame = new QFocusFrame;
            m_frame->setAttribute(Qt::WA_TransparentForMouseEvents);
        }
        m_frame->setWidget(widget);
    }

    QPointer<QFocusFrame> m_frame; ///< belongs to the window it was last shown in
};

} // namespace

QString keyHintOf(const QWidget* widget)
{
    return widget == nullptr ? QString() : widget->property("keyHint").toString();
}

void applyTheme(QApplication& app, Theme& theme)
{
    QApplication::setStyle(new LittoralStyle(theme));
    const auto apply = [&theme] {
        QApplication::setFont(theme.font(13));
        QApplication::setPalette(paletteOf(theme.tokens()));
        const auto widgets = QApplication::allWidgets();
        for (QWidget* widget : widgets) {
            widget->updateGeometry();
            widget->update();
        }
    };
    apply();
    QObject::connect(&theme, &Theme::changed, &app, apply);
    new FocusRing(app);
}

void reduceMotion(bool reduced)
{
    if (auto* style = qobject_cast<LittoralStyle*>(QApplication::style())) {
        style->setReducedMotion(reduced);
    }
}

LittoralStyle::LittoralStyle(const Theme& theme)
    : QProxyStyle(QStringLiteral("Fusion"))
    , m_theme(theme)
{
}

QPalette LittoralStyle::standardPalette() const
{
    return paletteOf(m_theme.tokens());
}

void LittoralStyle::polish(QWidget* widget)
{
    QProxyStyle::polish(widget);
    if (qobject_cast<QAbstractButton*>(widget) != nullptr || qobject_cast<QComboBox*>(widget) != nullptr ||
        qobject_cast<QScrollBar*>(widget) != nullptr) {
        widget->setAttribute(Qt::WA_Hover);
    }
}

void LittoralStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                                  const QWidget* widget) const
{
    const stylepaint::Pen pen{*painter, m_theme};
    switch (element) {
    case PE_FrameFocusRect:
    case PE_FrameStatusBarItem:
        return; // the ring is drawn by the focus frame
    case PE_IndicatorCheckBox:
    case PE_IndicatorItemViewItemCheck:
        stylepaint::checkMark(pen, *option);
        return;
    case PE_IndicatorRadioButton:
        stylepaint::radioMark(pen, *option);
        return;
    case PE_PanelLineEdit:
        if (const auto* frame = qstyleoption_cast<const QStyleOptionFrame*>(option);
            frame != nullptr && frame->lineWidth > 0) {
            stylepaint::fieldFrame(pen, *option, widget != nullptr && widget->property("fault").toBool());
        }
        return;
    case PE_FrameLineEdit:
        return;
    case PE_PanelTipLabel:
        stylepaint::box(pen, option->rect, m_theme[Token::Ink], Qt::transparent, m_theme.px(3));
        return;
    case PE_FrameMenu:
        stylepaint::box(pen, option->rect, Qt::transparent, m_theme[Token::Rule2], 0);
        return;
    case PE_PanelMenu:
        painter->fillRect(option->rect, m_theme[Token::Panel]);
        return;
    case PE_IndicatorArrowDown:
        stylepaint::chevron(pen, option->rect, Qt::DownArrow, m_theme[Token::Ink2]);
        return;
    case PE_IndicatorArrowUp:
        stylepaint::chevron(pen, option->rect, Qt::UpArrow, m_theme[Token::Ink2]);
        return;
    case PE_IndicatorArrowRight:
        stylepaint::chevron(pen, option->rect, Qt::RightArrow, m_theme[Token::Ink2]);
        return;
    case PE_IndicatorArrowLeft:
        stylepaint::chevron(pen, option->rect, Qt::LeftArrow, m_theme[Token::Ink2]);
        return;
    default:
        QProxyStyle::drawPrimitive(element, option, painter, widget);
    }
}

void LittoralStyle::drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                                const QWidget* widget) const
{
    const stylepaint::Pen pen{*painter, m_theme};
    switch (element) {
    case CE_PushButtonBevel:
        if (const auto* button = qstyleoption_cast<const QStyleOptionButton*>(option)) {
            stylepaint::buttonBevel(pen, *button, widget);
        }
        return;
    case CE_PushButtonLabel:
        if (const auto* button = qstyleoption_cast<const QStyleOptionButton*>(option)) {
            stylepaint::buttonLabel(pen, *button, widget);
        }
        return;
    case CE_MenuItem:
        if (const auto* item = qstyleoption_cast<const QStyleOptionMenuItem*>(option);
            item != nullptr && qobject_cast<const QComboBox*>(widget) == nullptr) {
            stylepaint::menuItem(pen, *item);
            return;
        }
        break;
    case CE_ProgressBarGroove:
        stylepaint::progressGroove(pen, *option);
        return;
    case CE_ProgressBarContents:
        if (const auto* bar = qstyleoption_cast<const QStyleOptionProgressBar*>(option)) {
            stylepaint::progressContents(pen, *bar);
        }
        return;
    case CE_FocusFrame: {
        const double width = m_theme.tokens().scheme() == Scheme::HighContrast ? 3.0 : 2.0;
        stylepaint::box(pen, option->rect, Qt::transparent, m_theme[Token::Accent], m_theme.px(4) + 4, width);
        return;
    }
    case CE_ShapedFrame:
        if (isCard(widget)) {
            stylepaint::box(pen, option->rect, m_theme[Token::Panel], m_theme[Token::Rule], m_theme.px(6));
            return;
        }
        break;
    default:
        break;
    }
    QProxyStyle::drawControl(element, option, painter, widget);
}

void LittoralStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                                       const QWidget* widget) const
{
    const stylepaint::Pen pen{*painter, m_theme};
    if (control == CC_Slider) {
        const auto* slider = qstyleoption_cast<const QStyleOptionSlider*>(option);
        if (slider != nullptr && slider->orientation == Qt::Horizontal) {
            stylepaint::slider(pen, *slider, subControlRect(control, option, SC_SliderGroove, widget),
                               subControlRect(control, option, SC_SliderHandle, widget));
            return;
        }
    }
    if (control == CC_ComboBox) {
        if (const auto* combo = qstyleoption_cast<const QStyleOptionComboBox*>(option)) {
            stylepaint::comboBox(pen, *combo, subControlRect(control, option, SC_ComboBoxArrow, widget));
            return;
        }
    }
    if (control == CC_ScrollBar) {
        if (const auto* bar = qstyleoption_cast<const QStyleOptionSlider*>(option)) {
            stylepaint::scrollBar(pen, *bar, subControlRect(control, option, SC_ScrollBarSlider, widget));
            return;
        }
    }
    if (control == CC_SpinBox) {
        if (const auto* spin = qstyleoption_cast<const QStyleOptionSpinBox*>(option)) {
            stylepaint::spinBox(pen, *spin, subControlRect(control, option, SC_SpinBoxUp, widget),
                                subControlRect(control, option, SC_SpinBoxDown, widget));
            return;
        }
    }
    QProxyStyle::drawComplexControl(control, option, painter, widget);
}

QRect LittoralStyle::subElementRect(SubElement element, const QStyleOption* option, const QWidget* widget) const
{
    if (element == SE_LineEditContents) {
        return option->rect.adjusted(m_theme.px(6), 1, -m_theme.px(6), -1);
    }
    return QProxyStyle::subElementRect(element, option, widget);
}

QRect LittoralStyle::subControlRect(ComplexControl control, const QStyleOptionComplex* option, SubControl part,
                                    const QWidget* widget) const
{
    const QRect rect = option->rect;
    if (control == CC_ComboBox) {
        const int arrow = m_theme.px(24);
        if (part == SC_ComboBoxArrow) {
            return visualRect(option->direction, rect, QRect(rect.right() - arrow, rect.top(), arrow, rect.height()));
        }
        if (part == SC_ComboBoxEditField) {
            return visualRect(option->direction, rect, rect.adjusted(m_theme.px(6), 1, -arrow, -1));
        }
    }
    if (control == CC_SpinBox) {
        const auto* spin = qstyleoption_cast<const QStyleOptionSpinBox*>(option);
        const bool bare = spin != nullptr && spin->buttonSymbols == QAbstractSpinBox::NoButtons;
        const int width = bare ? 0 : m_theme.px(24);
        const int half = rect.height() / 2;
        switch (part) {
        case SC_SpinBoxUp:
            return bare ? QRect() : QRect(rect.right() - width, rect.top() + 1, width, half);
        case SC_SpinBoxDown:
            return bare ? QRect() : QRect(rect.right() - width, rect.top() + half, width, rect.height() - half - 1);
        case SC_SpinBoxEditField:
            return rect.adjusted(2, 2, -width - 2, -2);
        default:
            return rect;
        }
    }
    if (control == CC_ScrollBar && (part == SC_ScrollBarAddLine || part == SC_ScrollBarSubLine)) {
        return {};
    }
    if (control == CC_ScrollBar) {
        const auto* bar = qstyleoption_cast<const QStyleOptionSlider*>(option);
        if (bar != nullptr && (part == SC_ScrollBarGroove || part == SC_ScrollBarSlider ||
                               part == SC_ScrollBarAddPage || part == SC_ScrollBarSubPage)) {
            const bool across = bar->orientation == Qt::Horizontal;
            const int length = across ? rect.width() : rect.height();
            const qint64 range = qint64(bar->maximum) - bar->minimum;
            const int handle = range <= 0
                                   ? length
                                   : static_cast<int>(std::max<qint64>(m_theme.px(28), qint64(bar->pageStep) * length /
                                                                                           (range + bar->pageStep)));
            const int start = sliderPositionFromValue(bar->minimum, bar->maximum, bar->sliderPosition,
                                                      std::max(0, length - handle), bar->upsideDown);
            const auto piece = [&](int from, int size) {
                return across ? QRect(rect.left() + from, rect.top(), size, rect.height())
                              : QRect(rect.left(), rect.top() + from, rect.width(), size);
            };
            switch (part) {
            case SC_ScrollBarSlider:
                return piece(start, handle);
            case SC_ScrollBarSubPage:
                return piece(0, start);
            case SC_ScrollBarAddPage:
                return piece(start + handle, length - start - handle);
            default:
                return rect;
            }
        }
    }
    return QProxyStyle::subControlRect(control, option, part, widget);
}

QSize LittoralStyle::sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& contents,
                                      const QWidget* widget) const
{
    const int text = option == nullptr ? m_theme.px(18) : option->fontMetrics.height();
    const int control = std::max(24, text + m_theme.px(12));
    switch (type) {
    case CT_PushButton: {
        const auto* button = qstyleoption_cast<const QStyleOptionButton*>(option);
        QFont font = widget == nullptr ? QApplication::font() : widget->font();
        font.setWeight(QFont::DemiBold);
        const QString plain = button == nullptr ? QString() : QString(button->text).remove(QLatin1Char('&'));
        int width = QFontMetrics(font).horizontalAdvance(plain) + m_theme.px(24);
        if (const QString hint = keyHintOf(widget); !hint.isEmpty()) {
            width += static_cast<int>(figuresWidth(m_theme.font(11), hint)) + m_theme.px(8) + 1;
        }
        if (button != nullptr && !button->icon.isNull()) {
            width += button->iconSize.width() + (plain.isEmpty() ? 0 : m_theme.px(8));
        }
        return {std::max(width, control), control};
    }
    case CT_ComboBox:
        return {contents.width() + m_theme.px(38), std::max(control, contents.height() + m_theme.px(8))};
    case CT_LineEdit:
        return {contents.width() + m_theme.px(14), std::max(control, contents.height() + m_theme.px(10))};
    case CT_SpinBox:
        return {contents.width() + m_theme.px(30), std::max(control, contents.height() + m_theme.px(10))};
    case CT_CheckBox:
    case CT_RadioButton: {
        QSize size = QProxyStyle::sizeFromContents(type, option, contents, widget);
        size.setHeight(std::max({24, size.height(), text + m_theme.px(6)}));
        return size;
    }
    case CT_MenuItem: {
        QSize size = QProxyStyle::sizeFromContents(type, option, contents, widget);
        const auto* item = qstyleoption_cast<const QStyleOptionMenuItem*>(option);
        if (item != nullptr && item->menuItemType == QStyleOptionMenuItem::Separator) {
            return {size.width(), m_theme.px(9)};
        }
        return {size.width() + m_theme.px(36), std::max(28, text + m_theme.px(10))};
    }
    default:
        return QProxyStyle::sizeFromContents(type, option, contents, widget);
    }
}

int LittoralStyle::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const
{
    switch (metric) {
    case PM_IndicatorWidth:
    case PM_IndicatorHeight:
    case PM_ExclusiveIndicatorWidth:
    case PM_ExclusiveIndicatorHeight:
        return m_theme.px(15);
    case PM_CheckBoxLabelSpacing:
    case PM_RadioButtonLabelSpacing:
        return m_theme.px(8);
    case PM_DefaultFrameWidth:
        return 1;
    case PM_FocusFrameHMargin:
    case PM_FocusFrameVMargin:
        return 4;
    case PM_ButtonShiftHorizontal:
    case PM_ButtonShiftVertical:
        return 0;
    case PM_ScrollBarExtent:
        return std::max(12, m_theme.px(12));
    case PM_SliderThickness:
    case PM_SliderControlThickness:
    case PM_SliderLength:
        return std::max(24, m_theme.px(18));
    case PM_ScrollBarSliderMin:
        return m_theme.px(28);
    case PM_ToolTipLabelFrameWidth:
        return m_theme.px(6);
    case PM_MenuPanelWidth:
        return 1;
    case PM_MenuVMargin:
        return m_theme.px(4);
    case PM_MenuHMargin:
        return 0;
    case PM_SmallIconSize:
    case PM_ButtonIconSize:
        return m_theme.px(16);
    case PM_LayoutHorizontalSpacing:
    case PM_LayoutVerticalSpacing:
        return m_theme.px(8);
    default:
        return QProxyStyle::pixelMetric(metric, option, widget);
    }
}

int LittoralStyle::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                             QStyleHintReturn* returnData) const
{
    switch (hint) {
    case SH_EtchDisabledText:
    case SH_DitherDisabledText:
    case SH_ComboBox_Popup:
        return 0;
    case SH_Widget_Animation_Duration:
        return m_reducedMotion ? 0 : kMotionMs;
    case SH_UnderlineShortcut:
    case SH_ItemView_ShowDecorationSelected:
    case SH_Menu_MouseTracking:
        return 1;
    case SH_ComboBox_AllowWheelScrolling:
        return 0; // a value never changes because the wheel passed over it
    case SH_ToolTip_WakeUpDelay:
        return 450;
    default:
        return QProxyStyle::styleHint(hint, option, widget, returnData);
    }
}

} // namespace littoral::ui
