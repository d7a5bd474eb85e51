// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/figures.h"

#include <QCache>
#include <QFontMetricsF>
#include <QHash>
#include <QImage>
#include <QPaintEngine>
#include <QPainter>
#include <algorithm>
#include <cmath>

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

struct LabelKey
{
    QFont font;
    QString text;
    QRgb ink = 0;
    qreal ratio = 1.0;

    bool operator==(const LabelKey&) const = default;
};

size_t qHash(const LabelKey& key, size_t seed = 0)
{
    return qHashMulti(seed, key.font, key.text, key.ink);
}

constexpr int kKeptLabels = 4000;
constexpr int kMargin = 2; // px around a label, for letters that reach over their box
constexpr qsizetype kLongestKept = 60;

void drawRuns(QPainter& painter, QPointF at, const QString& text)
{
    const QFontMetricsF metrics(painter.font());
    const double cell = figureAdvance(painter.font());
    double x = at.x();
    forRuns(text, [&](const QString& run, bool digit) {
        const double natural = metrics.horizontalAdvance(run);
        const double advance = digit ? cell : natural;
        painter.drawText(QPointF(x + (advance - natural) / 2.0, at.y()), run);
        x += advance;
    });
}

/// Charts draw the same few hundred labels with every frame, and shaping letters costs more than anything else in
/// them: labels are kept as pixels. `at` is the left end of the baseline; the label stands on whole pixels.
void drawKept(QPainter& painter, QPointF at, const QString& text)
{
    static QCache<LabelKey, QImage> kept(kKeptLabels); // painting happens on one thread
    const QFont font = painter.font();
    const LabelKey key{font, text, painter.pen().color().rgba(), painter.device()->devicePixelRatioF()};
    const QFontMetricsF metrics(font);
    const double ascent = std::ceil(metrics.ascent());
    QImage* label = kept.object(key);
    if (label == nullptr) {
        const QSizeF size(std::ceil(figuresWidth(font, text)) + 2 * kMargin,
                          ascent + std::ceil(metrics.descent()) + 2 * kMargin);
        label = new QImage((size * key.ratio).toSize(), QImage::Format_ARGB32_Premultiplied);
        label->setDevicePixelRatio(key.ratio);
        label->fill(Qt::transparent);
        QPainter inner(label);
        inner.setFont(font);
        inner.setPen(painter.pen());
        drawRuns(inner, {kMargin, kMargin + ascent}, text);
        inner.end();
        kept.insert(key, label);
    }
    const QTransform& placed = painter.transform();
    const QPointF origin(placed.dx(), placed.dy());
    const QPointF device = (at - QPointF(kMargin, kMargin + ascent) + origin) * key.ratio;
    painter.drawImage(QPointF(std::round(device.x()), std::round(device.y())) / key.ratio - origin, *label);
}

bool mayBeKept(const QPainter& painter, const QString& text)
{
    return painter.paintEngine()->type() == QPaintEngine::Raster && text.size() <= kLongestKept &&
           painter.transform().type() <= QTransform::TxTranslate && painter.pen().style() == Qt::SolidLine;
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
    if (mayBeKept(painter, text)) {
        drawKept(painter, {x, y}, text);
    } else {
        drawRuns(painter, {x, y}, text);
    }
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
