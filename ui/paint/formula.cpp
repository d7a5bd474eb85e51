// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/formula.h"

#include "ui/theme/figures.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <memory>
#include <vector>

namespace littoral::ui {

namespace {

constexpr double kSmaller = 0.78; // of a raised power

/// One piece set on the baseline: width, and how far it reaches above and below.
struct Box
{
    enum class Kind { Text, Quotient, Raised, Row };

    Kind kind = Kind::Text;
    QString text;
    QFont font;
    std::vector<Box> parts; ///< of a quotient: numerator and denominator
    double width = 0.0;
    double above = 0.0;
    double below = 0.0;
};

Box textBox(const QString& text, const QFont& font)
{
    const QFontMetricsF metrics(font);
    Box box;
    box.text = text;
    box.font = font;
    box.width = figuresWidth(font, text);
    box.above = metrics.ascent();
    box.below = metrics.descent();
    return box;
}

Box rowBox(std::vector<Box> parts)
{
    Box box;
    box.kind = Box::Kind::Row;
    for (const Box& part : parts) {
        box.width += part.width;
        box.above = std::max(box.above, part.above);
        box.below = std::max(box.below, part.below);
    }
    box.parts = std::move(parts);
    return box;
}

QFont smaller(QFont font)
{
    font.setPixelSize(std::max(8, static_cast<int>(font.pixelSize() * kSmaller)));
    return font;
}

/// Index after the bracket that closes the one at `open`; -1 when none does.
qsizetype closing(const QString& text, qsizetype open)
{
    int depth = 0;
    for (qsizetype i = open; i < text.size(); ++i) {
        depth += text[i] == u'(' ? 1 : text[i] == u')' ? -1 : 0;
        if (depth == 0) {
            return i + 1;
        }
    }
    return -1;
}

bool isBracketed(const QString& text)
{
    return text.startsWith(u'(') && closing(text, 0) == text.size();
}

/// Where the term that ends at `end` begins: a bracket with what stands before it, or a run without spaces.
qsizetype termStart(const QString& text, qsizetype end)
{
    int depth = 0;
    for (qsizetype i = end - 1; i >= 0; --i) {
        depth += text[i] == u')' ? 1 : text[i] == u'(' ? -1 : 0;
        if (depth < 0 || (depth == 0 && text[i].isSpace())) {
            return i + 1;
        }
    }
    return 0;
}

qsizetype termEnd(const QString& text, qsizetype start)
{
    int depth = 0;
    for (qsizetype i = start; i < text.size(); ++i) {
        depth += text[i] == u'(' ? 1 : text[i] == u')' ? -1 : 0;
        if (depth < 0 || (depth == 0 && (text[i].isSpace() || text[i] == u';' || text[i] == u','))) {
            return i;
        }
    }
    return text.size();
}

bool isNumber(const QString& text)
{
    return !text.isEmpty() &&
           std::ranges::all_of(text, [](QChar c) { return c.isDigit() || c == u'.' || c == u',' || c == u'−'; });
}

/// Where the product that ends at `end` begins: its factors, and the figure before a unit ("2 L").
qsizetype productStart(const QString& text, qsizetype end)
{
    qsizetype start = termStart(text, end);
    while (start > 1) {
        const bool factor = start >= 3 && QStringView(text).mid(start - 3, 3) == u" × ";
        const qsizetype before = termStart(text, factor ? start - 3 : start - 1);
        if (!factor && !(text[start - 1] == u' ' && isNumber(text.mid(before, start - 1 - before)))) {
            break;
        }
        start = before;
    }
    return start;
}

class Setter
{
public:
    explicit Setter(const QFont& font)
        : m_font(font)
    {
    }

    [[nodiscard]] Box set(const QString& text, const QFont& font) const
    {
        std::vector<Box> parts;
        qsizetype from = 0;
        for (qsizetype at = text.indexOf(u" / "); at >= 0; at = text.indexOf(u" / ", at + 1)) {
            const qsizetype start = productStart(text, at);
            const qsizetype end = termEnd(text, at + 3);
            const QString above = text.mid(start, at - start);
            const QString below = text.mid(at + 3, end - at - 3);
            // A plain "a / b" reads well as it is; brackets are what makes it hard.
            if (start < from || (!isBracketed(above) && !isBracketed(below))) {
                continue;
            }
            plain(parts, text.mid(from, start - from), font);
            parts.push_back(quotient(above, below, font));
            from = end;
            at = end - 1;
        }
        plain(parts, text.mid(from), font);
        return rowBox(std::move(parts));
    }

    [[nodiscard]] Box set(const QString& text) const { return set(text, m_font); }

private:
    /// Text with powers.
    void plain(std::vector<Box>& parts, const QString& text, const QFont& font) const
    {
        qsizetype from = 0;
        for (qsizetype at = text.indexOf(u'^'); at >= 0; at = text.indexOf(u'^', from)) {
            const bool bracket = at + 1 < text.size() && text[at + 1] == u'(';
            const qsizetype end = bracket ? closing(text, at + 1) : termEnd(text, at + 1);
            if (end < 0) {
                break;
            }
            parts.push_back(textBox(text.mid(from, at - from), font));
            const QString power = bracket ? text.mid(at + 2, end - at - 3) : text.mid(at + 1, end - at - 1);
            Box raised = set(power, smaller(font));
            raised.kind = Box::Kind::Row;
            Box lifted;
            lifted.kind = Box::Kind::Raised;
            lifted.width = raised.width + 1.0;
            lifted.above = raised.above + lift(font);
            lifted.below = std::max(0.0, raised.below - lift(font));
            lifted.font = font;
            lifted.parts = {std::move(raised)};
            parts.push_back(std::move(lifted));
            from = end;
        }
        if (from < text.size()) {
            parts.push_back(textBox(text.mid(from), font));
        }
    }

    [[nodiscard]] Box quotient(const QString& above, const QString& below, const QFont& font) const
    {
        const auto inner = [](const QString& term) { return isBracketed(term) ? term.mid(1, term.size() - 2) : term; };
        Box box;
        box.kind = Box::Kind::Quotient;
        box.font = font;
        box.parts = {set(inner(above), font), set(inner(below), font)};
        const double gap = gapOf(font);
        const double axis = axisOf(font);
        box.width = std::max(box.parts[0].width, box.parts[1].width) + 4 * gap;
        box.above = axis + gap + box.parts[0].above + box.parts[0].below;
        box.below = gap + box.parts[1].above + box.parts[1].below - axis;
        return box;
    }

public:
    [[nodiscard]] static double gapOf(const QFont& font) { return std::max(2.0, font.pixelSize() * 0.2); }
    /// Height of the quotient's rule above the baseline.
    [[nodiscard]] static double axisOf(const QFont& font) { return QFontMetricsF(font).xHeight() * 0.55; }
    [[nodiscard]] static double lift(const QFont& font) { return QFontMetricsF(font).ascent() * 0.42; }

private:
    QFont m_font;
};

void paintBox(QPainter& painter, const Box& box, QPointF at)
{
    switch (box.kind) {
    case Box::Kind::Text:
        painter.setFont(box.font);
        drawFigures(painter, QRectF(at.x(), at.y() - box.above, box.width + 2, box.above + box.below),
                    Qt::AlignLeft | Qt::AlignTop, box.text);
        return;
    case Box::Kind::Row: {
        double x = at.x();
        for (const Box& part : box.parts) {
            paintBox(painter, part, {x, at.y()});
            x += part.width;
        }
        return;
    }
    case Box::Kind::Raised:
        paintBox(painter, box.parts[0], {at.x() + 1.0, at.y() - Setter::lift(box.font)});
        return;
    case Box::Kind::Quotient: {
        const double gap = Setter::gapOf(box.font);
        const double rule = at.y() - Setter::axisOf(box.font);
        const Box& above = box.parts[0];
        const Box& below = box.parts[1];
        paintBox(painter, above, {at.x() + (box.width - above.width) / 2, rule - gap - above.below});
        paintBox(painter, below, {at.x() + (box.width - below.width) / 2, rule + gap + below.above});
        painter.drawLine(QPointF(at.x() + gap, rule), QPointF(at.x() + box.width - gap, rule));
        return;
    }
    }
}

/// Pieces between which the line may break: before an "=" that has a space about it, after ";".
QStringList pieces(const QString& text)
{
    QStringList all;
    qsizetype from = 0;
    int depth = 0;
    for (qsizetype i = 0; i < text.size(); ++i) {
        depth += text[i] == u'(' ? 1 : text[i] == u')' ? -1 : 0;
        const bool before = depth == 0 && i > from && text[i] == u'=' && text[i - 1] == u' ';
        const bool after = depth == 0 && i > 0 && (text[i - 1] == u';' || text[i - 1] == u',') && text[i] == u' ';
        if (before || after) {
            all << text.mid(from, i - from);
            from = i;
        }
    }
    all << text.mid(from);
    return all;
}

qsizetype leadingSpaces(const QString& text)
{
    qsizetype count = 0;
    while (count < text.size() && text[count].isSpace()) {
        ++count;
    }
    return count;
}

std::vector<Box> linesOf(const Theme& theme, const QString& text, double width)
{
    const QFont font = theme.font(13);
    const Setter setter(font);
    std::vector<Box> lines;
    std::vector<Box> line;
    double used = 0.0;
    const auto close = [&] {
        if (!line.empty()) {
            lines.push_back(rowBox(std::move(line)));
            line.clear();
            used = 0.0;
        }
    };
    const auto add = [&](const QString& piece) {
        // A line begins without the space that parted its piece from the one before.
        const QString first = piece.mid(leadingSpaces(piece));
        Box box = setter.set(line.empty() ? first : piece);
        if (used + box.width > width && !line.empty()) {
            close();
            box = setter.set(first);
        }
        used += box.width;
        line.push_back(std::move(box));
    };
    for (const QString& piece : pieces(text)) {
        if (setter.set(piece).width <= width) {
            add(piece);
            continue;
        }
        // Too long even alone: it breaks at its spaces, and quotients stay on the line.
        for (const QString& word : piece.split(u' ', Qt::SkipEmptyParts)) {
            add(line.empty() ? word : u' ' + word);
        }
    }
    close();
    return lines;
}

double leading(const Theme& theme)
{
    return theme.px(6);
}

} // namespace

double formulaHeight(const Theme& theme, const QString& text, double width)
{
    double height = 0.0;
    for (const Box& line : linesOf(theme, text, width)) {
        height += line.above + line.below + (height > 0.0 ? leading(theme) : 0.0);
    }
    return height;
}

void paintFormula(QPainter& painter, const QRectF& box, const Theme& theme, const QString& text, const QColor& ink)
{
    painter.save();
    painter.setPen(QPen(ink, 1.0));
    double top = box.top();
    for (const Box& line : linesOf(theme, text, box.width())) {
        paintBox(painter, line, {box.left(), top + line.above});
        top += line.above + line.below + leading(theme);
    }
    painter.restore();
}

} // namespace littoral::ui
