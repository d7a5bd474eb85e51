// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/figures.h"

#include <QFontMetricsF>
#include <QHash>
#include <QPainter>
#include <algorithm>

namespace littoral::ui {

namespace {

bool isFigure(QChar ch)
{
    return ch >= QLatin1Char('0') && ch <= QLatin1Char('9');
}

double measureWidest(const QFontMetricsF& metrics)
{
    double widest = 0.0;
    for (char digit = '0'; digit <= '9'; ++digit) {
        widest = std::max(widest, metrics.horizontalAdvance(QLatin1Char(digit)));
    }
    return widest;
}

/// Calls `each(run, isDigit)` for digits one by one and for the text between them as a whole.
template <typename Each> void forRuns(const QString& text, Each each)
{
    qsizetype at = 0;
    while (at < text.size()) {
        if (isFigure(text[at])) {
            each(text.mid(at, 1), true);
            ++at;
            continue;
        }
        qsizetype end = at;
        while (end < text.size() && !isFigure(text[end])) {
            ++end;
        }
        each(text.mid(at, end - at), false);
        at = end;
    }
}

} // namespace

double figureAdvance(const QFont& font)
{
    // Asked for many times a frame: kept per face, size and weight. Painting happens on one thread.
    static QHash<QString, double> known;
    const QString key = font.key();
    if (const auto found = known.constFind(key); found != known.constEnd()) {
        return *found;
    }
    const double advance = measureWidest(QFontMetricsF(font));
    known.insert(key, advance);
    return advance;
}

double figuresWidth(const QFont& font, const QString& text)
{
    const QFontMetricsF metrics(font);
    const double cell = figureAdvance(font);
    double width = 0.0;
    forRuns(text, [&](const QString& run, bool digit) { width += digit ? cell : metrics.horizontalAdvance(run); });
    return width;
}

void drawFigures(QPainter& painter, const QRectF& box, int flags, const QString& text)
{
    const QFont font = painter.font();
    const QFontMetricsF metrics(font);
    const double cell = figureAdvance(font);
    double x = box.left();
    if ((flags & Qt::AlignRight) != 0) {
        x = box.right() - figuresWidth(font, text);
    } else if ((flags & Qt::AlignHCenter) != 0) {
        x = box.center().x() - figuresWidth(font, text) / 2.0;
    }
    double y = box.top() + metrics.ascent();
    if ((flags & Qt::AlignBottom) != 0) {
        y = box.bottom() - metrics.descent();
    } else if ((flags & Qt::AlignVCenter) != 0) {
        y = box.center().y() + (metrics.ascent() - metrics.descent()) / 2.0;
    }
    forRuns(text, [&](const QString& run, bool digit) {
        const double natural = metrics.horizontalAdvance(run);
        const double advance = digit ? cell : natural;
        painter.drawText(QPointF(x + (advance - natural) / 2.0, y), run);
        x += advance;
    });
}

QString elidedFigures(const QFont& font, const QString& text, double width)
{
    if (figuresWidth(font, text) <= width) {
        return text;
    }
    const QString dots(QChar(0x2026));
    qsizetype low = 0;
    qsizetype high = text.size();
    while (low < high) {
        const qsizetype middle = (low + high + 1) / 2;
        if (figuresWidth(font, text.left(middle).trimmed() + dots) <= width) {
            low = middle;
        } else {
            high = middle - 1;
        }
    }
    return text.left(low).trimmed() + dots;
}

} // namespace littoral::ui
