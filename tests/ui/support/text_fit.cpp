// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/text_fit.h"

#include "tests/ui/support/text_recorder.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractScrollArea>
#include <QAbstractSpinBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QScrollBar>
#include <algorithm>

namespace littoral::ui::test {

namespace {

constexpr double kTolerance = 1.2; // px: the overhang of a letter is not a cut
constexpr QChar kDots(0x2026);

QString nameOf(const QWidget& widget)
{
    QString name = QString::fromLatin1(widget.metaObject()->className());
    for (const QWidget* up = &widget; up != nullptr; up = up->parentWidget()) {
        if (!up->accessibleName().isEmpty()) {
            return QStringLiteral("%1 of \"%2\"").arg(name, up->accessibleName());
        }
    }
    return name;
}

/// What is typed may be longer than its field; a number's field must hold it.
bool scrollsItself(const QWidget& widget)
{
    const auto* line = qobject_cast<const QLineEdit*>(&widget);
    return line != nullptr && !line->text().isEmpty() &&
           qobject_cast<const QAbstractSpinBox*>(line->parentWidget()) == nullptr;
}

bool scrolls(const QScrollBar* bar)
{
    return bar != nullptr && bar->maximum() > bar->minimum();
}

struct Cut
{
    double left = 0.0, right = 0.0, top = 0.0, bottom = 0.0; ///< px of the ink that are not shown
    bool any() const { return std::max({left, right, top, bottom}) > kTolerance; }
};

Cut cutOf(const PaintedText& text)
{
    return {text.shown.left() - text.ink.left(), text.ink.right() - text.shown.right(),
            text.shown.top() - text.ink.top(), text.ink.bottom() - text.shown.bottom()};
}

/// Takes from the cut what a scroll bar brings into view: what is cut at the very edge of a view that scrolls that way.
Cut withoutScrolling(Cut cut, const PaintedText& text, const QWidget& window)
{
    for (QWidget* up = text.widget; up != nullptr && up != &window; up = up->parentWidget()) {
        const auto* area = qobject_cast<const QAbstractScrollArea*>(up->parentWidget());
        if (area == nullptr || area->viewport() != up) {
            continue;
        }
        const QRectF view(up->mapTo(&window, QPoint(0, 0)), QSizeF(up->size()));
        if (scrolls(area->verticalScrollBar())) {
            cut.top = text.ink.top() < view.top() + kTolerance ? 0.0 : cut.top;
            cut.bottom = text.ink.bottom() > view.bottom() - kTolerance ? 0.0 : cut.bottom;
        }
        if (scrolls(area->horizontalScrollBar())) {
            cut.left = text.ink.left() < view.left() + kTolerance ? 0.0 : cut.left;
            cut.right = text.ink.right() > view.right() - kTolerance ? 0.0 : cut.right;
        }
    }
    return cut;
}

bool showsFixedWords(const QWidget& widget)
{
    return qobject_cast<const QLabel*>(&widget) != nullptr ||
           qobject_cast<const QAbstractButton*>(&widget) != nullptr ||
           qobject_cast<const QComboBox*>(&widget) != nullptr;
}

QString wordsOf(const QWidget& widget)
{
    if (const auto* label = qobject_cast<const QLabel*>(&widget)) {
        return label->text();
    }
    if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) {
        return button->text();
    }
    const auto* box = qobject_cast<const QComboBox*>(&widget);
    return box == nullptr ? QString() : box->currentText();
}

bool isElided(const PaintedText& text)
{
    return showsFixedWords(*text.widget) && text.text.contains(kDots) && !wordsOf(*text.widget).contains(kDots) &&
           text.widget->toolTip().isEmpty();
}

bool lieOver(const PaintedText& a, const PaintedText& b)
{
    const QRectF common = a.shown.intersected(b.shown);
    return common.width() > kTolerance && common.height() > kTolerance &&
           !(a.text == b.text && QRectF(a.ink).adjusted(-1, -1, 1, 1).contains(b.ink)); // a halo is the text itself
}

void findCuts(const std::vector<PaintedText>& texts, const QWidget& window, std::vector<TextFault>& faults)
{
    for (const PaintedText& text : texts) {
        if (text.shown.isEmpty()) {
            // Charts leave out what is beyond their range; a label or button has nowhere else to say its words.
            const QRectF whole(text.widget->mapTo(&window, QPoint(0, 0)), QSizeF(text.widget->size()));
            if (showsFixedWords(*text.widget) && !whole.contains(text.ink)) {
                faults.push_back({TextFlaw::Clipped, text.text, {}, nameOf(*text.widget), text.ink});
            }
            continue;
        }
        if (withoutScrolling(cutOf(text), text, window).any()) {
            faults.push_back({TextFlaw::Clipped, text.text, {}, nameOf(*text.widget), text.ink});
        } else if (isElided(text)) {
            faults.push_back({TextFlaw::Elided, text.text, {}, nameOf(*text.widget), text.ink});
        }
    }
}

} // namespace

std::vector<PaintedText> paintedTexts(QWidget& window)
{
    std::vector<PaintedText> all;
    QList<QWidget*> widgets = window.findChildren<QWidget*>();
    widgets.prepend(&window);
    for (QWidget* widget : widgets) {
        const QRegion visible = widget->visibleRegion();
        if (!widget->isVisible() || (widget != &window && widget->window() != &window) || visible.isEmpty() ||
            scrollsItself(*widget)) {
            continue;
        }
        TextRecorder recorder(widget->size());
        widget->render(&recorder, {}, {}, QWidget::RenderFlags());
        const QPointF origin = widget->mapTo(&window, QPoint(0, 0));
        for (const RecordedText& text : recorder.texts()) {
            PaintedText made{text.text, text.ink, {}, text.baseline + origin.y(), widget};
            QRectF shown;
            for (const QRect& part : visible) {
                shown = shown.united(text.shown.intersected(QRectF(part)));
            }
            made.ink.translate(origin);
            made.shown = shown.translated(origin);
            all.push_back(made);
        }
    }
    return all;
}

std::vector<TextFault> textFaults(QWidget& window)
{
    std::vector<TextFault> faults;
    const std::vector<PaintedText> texts = paintedTexts(window);
    findCuts(texts, window, faults);
    for (std::size_t i = 0; i < texts.size(); ++i) {
        for (std::size_t j = i + 1; j < texts.size(); ++j) {
            if (lieOver(texts[i], texts[j])) {
                faults.push_back({TextFlaw::Overlapping, texts[i].text, texts[j].text, nameOf(*texts[j].widget),
                                  texts[i].shown.intersected(texts[j].shown)});
            }
        }
    }
    return faults;
}

std::string listed(const std::vector<TextFault>& faults)
{
    static const QString words[] = {QStringLiteral("cut"), QStringLiteral("overlaps"), QStringLiteral("ends in dots")};
    QStringList lines;
    for (const TextFault& fault : faults) {
        QString line = QStringLiteral("\"%1\" %2").arg(fault.text, words[static_cast<int>(fault.flaw)]);
        if (!fault.other.isEmpty()) {
            line += QStringLiteral(" \"%1\"").arg(fault.other);
        }
        line += QStringLiteral(" in %1 at %2, %3 (%4 x %5)")
                    .arg(fault.where)
                    .arg(fault.place.left(), 0, 'f', 0)
                    .arg(fault.place.top(), 0, 'f', 0)
                    .arg(fault.place.width(), 0, 'f', 0)
                    .arg(fault.place.height(), 0, 'f', 0);
        lines << line;
    }
    return lines.join(QLatin1Char('\n')).toStdString();
}

} // namespace littoral::ui::test
