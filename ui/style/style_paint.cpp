// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/style/style_paint.h"

#include "ui/style/littoral_style.h"
#include "ui/theme/figures.h"

#include <QPainter>
#include <QPainterPath>
#include <QStyleOption>
#include <QWidget>
#include <algorithm>

namespace littoral::ui::stylepaint {

namespace {

class Saved final
{
public:
    explicit Saved(QPainter& painter)
        : m_painter(painter)
    {
        m_painter.save();
    }
    ~Saved() { m_painter.restore(); }
    Saved(const Saved&) = delete;
    Saved& operator=(const Saved&) = delete;

private:
    QPainter& m_painter;
};

bool has(const QStyleOption& option, QStyle::StateFlag flag)
{
    return (option.state & flag) != 0;
}

bool flagged(const QWidget* widget, const char* property)
{
    return widget != nullptr && widget->property(property).toBool();
}

QString segmentOf(const QWidget* widget)
{
    return widget == nullptr ? QString() : widget->property("segment").toString();
}

/// A cell of a segmented control: square where it meets its neighbour.
QPainterPath segmentPath(const QRectF& rect, const QString& place, double radius)
{
    const bool roundLeft = place == QLatin1String("first") || place == QLatin1String("only");
    const bool roundRight = place == QLatin1String("last") || place == QLatin1String("only");
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    path.addRoundedRect(rect, radius, radius);
    if (!roundLeft) {
        path.addRect(rect.adjusted(0, 0, -rect.width() / 2, 0));
    }
    if (!roundRight) {
        path.addRect(rect.adjusted(rect.width() / 2, 0, 0, 0));
    }
    return path.simplified();
}

QColor buttonFill(const Pen& pen, const QStyleOptionButton& option, const QWidget* widget)
{
    const Theme& theme = pen.theme;
    const bool enabled = has(option, QStyle::State_Enabled);
    const bool on = has(option, QStyle::State_On) && !segmentOf(widget).isEmpty();
    if (enabled && (on || flagged(widget, "primary"))) {
        const QColor accent = theme[Token::Accent];
        if (has(option, QStyle::State_Sunken)) {
            return theme.tokens().scheme() == Scheme::Light ? accent.darker(118) : accent.darker(108);
        }
        return accent;
    }
    if (!enabled) {
        return theme[Token::Sunk];
    }
    if (has(option, QStyle::State_Sunken) || has(option, QStyle::State_On)) {
        return theme[Token::Selection];
    }
    return has(option, QStyle::State_MouseOver) ? theme[Token::Sunk] : theme[Token::Panel];
}

QColor buttonInk(const Pen& pen, const QStyleOptionButton& option, const QWidget* widget)
{
    if (!has(option, QStyle::State_Enabled)) {
        return pen.theme[Token::Ink3];
    }
    const bool on = has(option, QStyle::State_On) && !segmentOf(widget).isEmpty();
    return on || flagged(widget, "primary") ? pen.theme[Token::OnAccent] : pen.theme[Token::Ink];
}

} // namespace

void box(const Pen& pen, const QRectF& rect, const QColor& fill, const QColor& edge, double radius, double edgeWidth)
{
    const Saved saved(pen.painter);
    pen.painter.setRenderHint(QPainter::Antialiasing);
    const double half = edgeWidth / 2.0;
    pen.painter.setPen(edge.alpha() == 0 ? QPen(Qt::NoPen) : QPen(edge, edgeWidth));
    pen.painter.setBrush(fill);
    pen.painter.drawRoundedRect(rect.adjusted(half, half, -half, -half), radius, radius);
}

void buttonBevel(const Pen& pen, const QStyleOptionButton& option, const QWidget* widget)
{
    const Saved saved(pen.painter);
    const QColor fill = buttonFill(pen, option, widget);
    const bool filled = fill == pen.theme[Token::Accent];
    const QColor edge =
        has(option, QStyle::State_Enabled) ? (filled ? fill : pen.theme[Token::Rule2]) : pen.theme[Token::Rule];
    const QString segment = segmentOf(widget);
    if (flagged(widget, "quiet") && !has(option, QStyle::State_MouseOver) && !has(option, QStyle::State_Sunken)) {
        return;
    }
    if (segment.isEmpty()) {
        box(pen, option.rect, fill, edge, pen.theme.px(4));
        return;
    }
    pen.painter.setRenderHint(QPainter::Antialiasing);
    // Neighbours share one edge: each cell after the first reaches half a pixel over its left side.
    QRectF rect = QRectF(option.rect).adjusted(0.5, 0.5, -0.5, -0.5);
    const bool endsRow = segment == QLatin1String("last") || segment == QLatin1String("only");
    if (!endsRow) {
        rect.adjust(0, 0, 1.0, 0);
    }
    pen.painter.setPen(QPen(pen.theme[Token::Rule2], 1.0));
    pen.painter.setBrush(fill);
    pen.painter.drawPath(segmentPath(rect, segment, pen.theme.px(4)));
}

void buttonLabel(const Pen& pen, const QStyleOptionButton& option, const QWidget* widget)
{
    const Saved saved(pen.painter);
    QPainter& painter = pen.painter;
    const QColor ink = buttonInk(pen, option, widget);
    const QFont face = widget == nullptr ? painter.font() : widget->font();
    QFont font = face;
    font.setWeight(!segmentOf(widget).isEmpty() && has(option, QStyle::State_On) ? QFont::DemiBold : QFont::Medium);
    const QString hint = keyHintOf(widget);
    const QFont hintFont = pen.theme.font(11);
    const int gap = pen.theme.px(8);
    const double hintWidth = hint.isEmpty() ? 0.0 : figuresWidth(hintFont, hint) + gap;
    const bool icon = !option.icon.isNull();
    const QSize iconSize = icon ? option.iconSize : QSize();
    const double iconWidth = icon ? iconSize.width() + (option.text.isEmpty() ? 0 : gap) : 0.0;
    const QString plain = QString(option.text).remove(QLatin1Char('&'));
    const double textWidth = QFontMetricsF(font).horizontalAdvance(plain);
    double x = option.rect.x() + (option.rect.width() - textWidth - hintWidth - iconWidth) / 2.0;
    if (icon) {
        const QRect at(static_cast<int>(x), option.rect.center().y() - iconSize.height() / 2 + 1, iconSize.width(),
                       iconSize.height());
        option.icon.paint(&painter, at, Qt::AlignCenter,
                          has(option, QStyle::State_Enabled) ? QIcon::Normal : QIcon::Disabled);
        x += iconWidth;
    }
    painter.setFont(font);
    painter.setPen(ink);
    const QRectF textBox(x, option.rect.y(), textWidth + 2, option.rect.height());
    painter.drawText(textBox, Qt::AlignVCenter | Qt::AlignLeft | Qt::TextShowMnemonic, option.text);
    if (!hint.isEmpty()) {
        const bool onAccent = ink == pen.theme[Token::OnAccent];
        painter.setFont(hintFont);
        painter.setPen(onAccent ? ink : pen.theme[Token::Ink2]);
        drawFigures(painter, QRectF(x + textWidth + gap, option.rect.y(), hintWidth, option.rect.height()),
                    Qt::AlignVCenter | Qt::AlignLeft, hint);
    }
}

void checkMark(const Pen& pen, const QStyleOption& option)
{
    const Saved saved(pen.painter);
    const bool enabled = has(option, QStyle::State_Enabled);
    const bool on = has(option, QStyle::State_On);
    const bool some = has(option, QStyle::State_NoChange);
    const QRectF rect = QRectF(option.rect);
    const QColor accent = enabled ? pen.theme[Token::Accent] : pen.theme[Token::Ink3];
    const bool full = on || some;
    box(pen, rect, full ? accent : pen.theme[Token::Panel], full ? accent : pen.theme[Token::Rule2], pen.theme.px(3),
        std::max(1.0, 1.2 * pen.theme.textScale()));
    if (!full) {
        return;
    }
    pen.painter.setRenderHint(QPainter::Antialiasing);
    pen.painter.setPen(QPen(enabled ? pen.theme[Token::OnAccent] : pen.theme[Token::Panel], 1.9 * pen.theme.textScale(),
                            Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    const double w = rect.width();
    const auto at = [&](double x, double y) { return QPointF(rect.left() + x * w, rect.top() + y * w); };
    if (some) {
        pen.painter.drawLine(at(0.27, 0.5), at(0.73, 0.5));
    } else {
        const QPointF stroke[] = {at(0.25, 0.53), at(0.43, 0.70), at(0.76, 0.32)};
        pen.painter.drawPolyline(stroke, 3);
    }
}

void radioMark(const Pen& pen, const QStyleOption& option)
{
    const Saved saved(pen.painter);
    const bool on = has(option, QStyle::State_On);
    const QRectF rect = QRectF(option.rect).adjusted(0.75, 0.75, -0.75, -0.75);
    const QColor accent = has(option, QStyle::State_Enabled) ? pen.theme[Token::Accent] : pen.theme[Token::Ink3];
    pen.painter.setRenderHint(QPainter::Antialiasing);
    pen.painter.setPen(QPen(on ? accent : pen.theme[Token::Rule2], 1.5 * pen.theme.textScale()));
    pen.painter.setBrush(pen.theme[Token::Panel]);
    pen.painter.drawEllipse(rect);
    if (on) {
        pen.painter.setPen(Qt::NoPen);
        pen.painter.setBrush(accent);
        const double inset = rect.width() * 0.26;
        pen.painter.drawEllipse(rect.adjusted(inset, inset, -inset, -inset));
    }
}

void fieldFrame(const Pen& pen, const QStyleOption& option, bool fault)
{
    const bool enabled = has(option, QStyle::State_Enabled) && !has(option, QStyle::State_ReadOnly);
    const bool focus = has(option, QStyle::State_HasFocus);
    const QColor edge = fault                                ? pen.theme[Token::Act]
                        : focus                              ? pen.theme[Token::Accent]
                        : has(option, QStyle::State_Enabled) ? pen.theme[Token::Rule2]
                                                             : pen.theme[Token::Rule];
    box(pen, option.rect, enabled ? pen.theme[Token::Panel] : pen.theme[Token::Sunk], edge, pen.theme.px(4),
        focus || fault ? 2.0 : 1.0);
}

void chevron(const Pen& pen, const QRectF& box, Qt::ArrowType direction, const QColor& colour)
{
    const Saved saved(pen.painter);
    const double s = pen.theme.textScale();
    pen.painter.setRenderHint(QPainter::Antialiasing);
    pen.painter.setPen(QPen(colour, 1.5 * s, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    pen.painter.translate(box.center());
    pen.painter.rotate(direction == Qt::UpArrow      ? 180
                       : direction == Qt::RightArrow ? -90
                       : direction == Qt::LeftArrow  ? 90
                                                     : 0);
    const QPointF stroke[] = {QPointF(-3.2 * s, -1.6 * s), QPointF(0, 1.6 * s), QPointF(3.2 * s, -1.6 * s)};
    pen.painter.drawPolyline(stroke, 3);
}

void comboBox(const Pen& pen, const QStyleOptionComboBox& option, const QRect& arrow)
{
    const bool enabled = has(option, QStyle::State_Enabled);
    const bool hover = enabled && has(option, QStyle::State_MouseOver);
    const bool fieldFocus = option.editable && has(option, QStyle::State_HasFocus);
    box(pen, option.rect, hover || !enabled ? pen.theme[Token::Sunk] : pen.theme[Token::Panel],
        fieldFocus ? pen.theme[Token::Accent]
        : enabled  ? pen.theme[Token::Rule2]
                   : pen.theme[Token::Rule],
        pen.theme.px(4), fieldFocus ? 2.0 : 1.0);
    chevron(pen, arrow, Qt::DownArrow, enabled ? pen.theme[Token::Ink2] : pen.theme[Token::Ink3]);
}

void spinBox(const Pen& pen, const QStyleOptionSpinBox& option, const QRect& up, const QRect& down)
{
    fieldFrame(pen, option);
    const bool enabled = has(option, QStyle::State_Enabled);
    const auto ink = [&](QAbstractSpinBox::StepEnabledFlag step) {
        return enabled && (option.stepEnabled & step) != 0 ? pen.theme[Token::Ink2] : pen.theme[Token::Rule2];
    };
    if (option.buttonSymbols != QAbstractSpinBox::NoButtons) {
        chevron(pen, up, Qt::UpArrow, ink(QAbstractSpinBox::StepUpEnabled));
        chevron(pen, down, Qt::DownArrow, ink(QAbstractSpinBox::StepDownEnabled));
    }
}

void scrollBar(const Pen& pen, const QStyleOptionSlider& option, const QRect& handle)
{
    const Saved saved(pen.painter);
    pen.painter.fillRect(option.rect, pen.theme[Token::Sunk]);
    if (option.minimum == option.maximum) {
        return;
    }
    const bool active =
        (option.activeSubControls & QStyle::SC_ScrollBarSlider) != 0 && has(option, QStyle::State_MouseOver);
    const QRectF inner = QRectF(handle).adjusted(3, 3, -3, -3);
    const double radius = std::min(inner.width(), inner.height()) / 2.0;
    box(pen, inner, active || has(option, QStyle::State_Sunken) ? pen.theme[Token::Ink2] : pen.theme[Token::Rule2],
        Qt::transparent, radius);
}

void slider(const Pen& pen, const QStyleOptionSlider& option, const QRect& groove, const QRect& handle)
{
    const Saved saved(pen.painter);
    const bool enabled = has(option, QStyle::State_Enabled);
    const QColor lit = pen.theme[enabled ? Token::Accent : Token::Rule2];
    const double thick = std::max(3.0, pen.theme.px(3) * 1.0);
    const QRectF line(groove.left(), handle.center().y() + 0.5 - thick / 2, groove.width(), thick);
    pen.painter.setRenderHint(QPainter::Antialiasing);
    pen.painter.setPen(Qt::NoPen);
    pen.painter.setBrush(pen.theme[Token::Rule2]);
    pen.painter.drawRoundedRect(line, thick / 2, thick / 2);
    QRectF done = line;
    done.setRight(handle.center().x());
    pen.painter.setBrush(lit);
    pen.painter.drawRoundedRect(done, thick / 2, thick / 2);
    const double ring = pen.theme.px(7);
    pen.painter.setBrush(pen.theme[Token::Panel]);
    pen.painter.setPen(QPen(lit, std::max(2.0, pen.theme.px(2) * 1.0)));
    pen.painter.drawEllipse(QRectF(handle).center(), ring, ring);
}

void menuItem(const Pen& pen, const QStyleOptionMenuItem& option)
{
    const Saved saved(pen.painter);
    QPainter& painter = pen.painter;
    const Theme& theme = pen.theme;
    const QRect rect = option.rect;
    painter.fillRect(rect, theme[Token::Panel]);
    if (option.menuItemType == QStyleOptionMenuItem::Separator) {
        painter.fillRect(QRect(rect.left() + theme.px(8), rect.center().y(), rect.width() - theme.px(16), 1),
                         theme[Token::Rule]);
        return;
    }
    const bool enabled = has(option, QStyle::State_Enabled);
    const bool selected = enabled && has(option, QStyle::State_Selected);
    if (selected) {
        box(pen, QRectF(rect).adjusted(4, 1, -4, -1), theme[Token::Selection], Qt::transparent, theme.px(3));
    }
    const QColor ink = enabled ? theme[Token::Ink] : theme[Token::Ink3];
    const int mark = theme.px(16);
    if (option.checkType != QStyleOptionMenuItem::NotCheckable) {
        QStyleOption check;
        check.state = option.state & ~(QStyle::State_On | QStyle::State_NoChange);
        check.state |= option.checked ? QStyle::State_On : QStyle::State_Off;
        check.rect = QRect(rect.left() + theme.px(10), rect.center().y() - mark / 2 + 1, mark, mark);
        option.checkType == QStyleOptionMenuItem::Exclusive ? radioMark(pen, check) : checkMark(pen, check);
    }
    const int left = rect.left() + theme.px(10) + (option.menuHasCheckableItems ? mark + theme.px(8) : theme.px(2));
    painter.setFont(option.font);
    painter.setPen(ink);
    const qsizetype tab = option.text.indexOf(QLatin1Char('\t'));
    const QRect textRect(left, rect.top(), rect.right() - left - theme.px(14), rect.height());
    painter.drawText(textRect, Qt::AlignVCenter | Qt::AlignLeft | Qt::TextShowMnemonic | Qt::TextSingleLine,
                     tab < 0 ? option.text : option.text.left(tab));
    if (tab >= 0) {
        painter.setPen(enabled ? theme[Token::Ink2] : theme[Token::Ink3]);
        painter.drawText(textRect, Qt::AlignVCenter | Qt::AlignRight | Qt::TextSingleLine, option.text.mid(tab + 1));
    }
    if (option.menuItemType == QStyleOptionMenuItem::SubMenu) {
        chevron(pen, QRectF(rect.right() - theme.px(18), rect.top(), theme.px(14), rect.height()), Qt::RightArrow, ink);
    }
}

void progressGroove(const Pen& pen, const QStyleOption& option)
{
    const double radius = option.rect.height() / 2.0;
    box(pen, option.rect, pen.theme[Token::Rule], Qt::transparent, std::min(radius, 4.0 * pen.theme.textScale()));
}

void progressContents(const Pen& pen, const QStyleOptionProgressBar& option)
{
    const int span = option.maximum - option.minimum;
    if (span <= 0 || option.progress <= option.minimum) {
        return;
    }
    const double share = std::clamp(static_cast<double>(option.progress - option.minimum) / span, 0.0, 1.0);
    QRectF rect = option.rect;
    rect.setWidth(rect.width() * share);
    box(pen, rect, pen.theme[Token::Accent], Qt::transparent,
        std::min(rect.height() / 2.0, 4.0 * pen.theme.textScale()));
}

} // namespace littoral::ui::stylepaint
