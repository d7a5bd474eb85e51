// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/paper.h"

#include "ui/paint/formula.h"
#include "ui/theme/figures.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

constexpr double kHeadRoom = 30.0;
constexpr double kFootRoom = 24.0;
constexpr double kCellGap = 10.0;
constexpr double kTall = 1e6;
constexpr double kRuledLine = 30.0; // a line of handwriting, about 7 mm

QString words(const char* text)
{
    return QCoreApplication::translate("Paper", text);
}

QRectF extentOf(const QFont& font, double width, int flags, const QString& text)
{
    return QFontMetricsF(font).boundingRect(QRectF(0, 0, width, kTall), flags, text);
}

} // namespace

Paper::Paper(QPainter& painter, Sheet sheet, const Theme& theme, PaperHead head, int pages)
    : m_painter(painter)
    , m_sheet(std::move(sheet))
    , m_theme(theme)
    , m_head(std::move(head))
    , m_pages(pages)
    , m_top(kHeadRoom)
    , m_bottom(m_sheet.height - kFootRoom)
    , m_y(kHeadRoom)
{
    drawHead();
}

double Paper::pageRoom() const
{
    return m_bottom - m_top;
}

/// Whose sheet it is, what and of when, above a rule; the page's number below. A page that got lost is found again.
void Paper::drawHead()
{
    const QFont strong = m_theme.font(12, 650);
    const QFont small = m_theme.font(11);
    const double line = QFontMetricsF(strong).height();
    const double whenWidth = figuresWidth(small, m_head.when) + 8;
    const QString subject = elidedFigures(strong, m_head.subject, width() * 0.45);
    const double subjectWidth = figuresWidth(strong, subject) + 12;
    m_painter.setPen(m_theme[Token::Ink]);
    m_painter.setFont(strong);
    drawFigures(m_painter, QRectF(0, 0, subjectWidth, line), Qt::AlignLeft | Qt::AlignVCenter, subject);
    m_painter.setFont(small);
    m_painter.setPen(m_theme[Token::Ink2]);
    const QRectF title(subjectWidth, 0, width() - subjectWidth - whenWidth, line);
    drawFigures(m_painter, title, Qt::AlignLeft | Qt::AlignVCenter, elidedFigures(small, m_head.title, title.width()));
    drawFigures(m_painter, QRectF(width() - whenWidth, 0, whenWidth, line), Qt::AlignRight | Qt::AlignVCenter,
                m_head.when);
    m_painter.fillRect(QRectF(0, line + 3, width(), 1), m_theme[Token::Rule2]);
    const QString number = m_pages > 0 ? words("Page %1 of %2").arg(m_page).arg(m_pages) : QString();
    const QRectF foot(0, m_sheet.height - line, width(), line);
    m_painter.setPen(m_theme[Token::Ink3]);
    drawFigures(m_painter, foot, Qt::AlignRight | Qt::AlignVCenter, number);
}

QRectF Paper::place(double height)
{
    if (m_y > m_top && m_y + height > m_bottom) {
        newPage();
    }
    const QRectF box(0, m_y, width(), height);
    m_pieces.push_back({m_page, box, box, {}});
    m_y += height;
    return box;
}

void Paper::keep(double height)
{
    if (m_y > m_top && m_y + std::min(height, pageRoom()) > m_bottom) {
        newPage();
    }
}

void Paper::newPage()
{
    if (m_y <= m_top) {
        return;
    }
    m_sheet.turn();
    ++m_page;
    m_y = m_top;
    drawHead();
}

void Paper::drawText(const QRectF& box, const QFont& font, Token token, int flags, const QString& text)
{
    m_painter.setFont(font);
    m_painter.setPen(m_theme[token]);
    m_painter.drawText(box.adjusted(0, 0, 0, 2), flags, text);
    const QRectF ink = extentOf(font, box.width(), flags, text);
    m_pieces.push_back({m_page, box, QRectF(box.topLeft(), ink.size()), text});
}

double Paper::heightOf(const QString& text, const QFont& font, double left) const
{
    return text.isEmpty() ? 0.0 : std::ceil(extentOf(font, width() - left, Qt::TextWordWrap, text).height()) + 3;
}

void Paper::text(const QString& text, const QFont& font, Token token, double left)
{
    // A paragraph longer than a page is broken at its own line ends.
    for (const QString& part : text.split(u'\n', Qt::SkipEmptyParts)) {
        const double height = heightOf(part, font, left);
        const QRectF box = place(height);
        drawText(box.adjusted(left, 0, 0, 0), font, token, Qt::AlignLeft | Qt::TextWordWrap, part);
    }
}

void Paper::heading(const QString& text)
{
    gap(m_y > m_top ? 10 : 0);
    keep(60); // never the last line of a page
    this->text(text, m_theme.font(15, 650), Token::Ink);
    gap(2);
}

void Paper::bullets(const QString& title, const QStringList& lines)
{
    if (lines.isEmpty()) {
        return;
    }
    if (!title.isEmpty()) {
        text(title, m_theme.font(13, 600), Token::Ink, 14);
    }
    for (const QString& line : lines) {
        text(words("• %1").arg(line), m_theme.font(13), Token::Ink, 22);
    }
}

void Paper::line(const QString& name, const QString& value, const QString& note)
{
    const QFont body = m_theme.font(13);
    const QFont strong = m_theme.font(13, 600);
    const QFont small = m_theme.font(11);
    const double first = width() * 0.42;
    const double second = std::max(150.0, std::min(width() * 0.3, figuresWidth(strong, value) + 10));
    const double third = width() - first - second - 10;
    const double nameHeight = extentOf(body, first - 8, Qt::TextWordWrap, name).height();
    const double valueHeight = extentOf(strong, second, Qt::TextWordWrap, value).height();
    const double noteHeight = extentOf(small, third, Qt::TextWordWrap, note).height();
    const QRectF box = place(std::ceil(std::max({nameHeight, valueHeight, noteHeight})) + 2);
    drawText(QRectF(0, box.top(), first - 8, nameHeight), body, Token::Ink2, Qt::TextWordWrap, name);
    drawText(QRectF(first, box.top(), second, valueHeight), strong, Token::Ink, Qt::TextWordWrap, value);
    if (!note.isEmpty()) {
        drawText(QRectF(first + second + 10, box.top() + 1, third, noteHeight), small, Token::Ink3, Qt::TextWordWrap,
                 note);
    }
    gap(3);
}

void Paper::tableHead(const std::vector<PaperColumn>& columns, const std::vector<double>& lefts)
{
    const QFont font = m_theme.font(11, 600);
    double height = 0.0;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const double room = lefts[i + 1] - lefts[i] - kCellGap;
        height = std::max(height, extentOf(font, room, Qt::TextWordWrap, columns[i].title).height());
    }
    const QRectF box = place(std::ceil(height) + 4);
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const int align = columns[i].right ? Qt::AlignRight : Qt::AlignLeft;
        drawText(QRectF(lefts[i], box.top(), lefts[i + 1] - lefts[i] - kCellGap, height), font, Token::Ink2,
                 align | Qt::TextWordWrap, columns[i].title);
    }
    m_painter.fillRect(QRectF(0, box.bottom() - 1, width(), 1), m_theme[Token::Rule2]);
}

void Paper::table(const std::vector<PaperColumn>& columns, const std::vector<QStringList>& rows)
{
    double shares = 0.0;
    for (const PaperColumn& column : columns) {
        shares += column.share;
    }
    std::vector<double> lefts{0.0};
    for (const PaperColumn& column : columns) {
        lefts.push_back(lefts.back() + column.share / shares * (width() + kCellGap));
    }
    const QFont font = m_theme.font(12);
    keep(60);
    tableHead(columns, lefts);
    for (const QStringList& row : rows) {
        std::vector<double> heights;
        for (std::size_t i = 0; i < columns.size(); ++i) {
            const QString cell = row.value(static_cast<qsizetype>(i));
            heights.push_back(extentOf(font, lefts[i + 1] - lefts[i] - kCellGap, Qt::TextWordWrap, cell).height());
        }
        const double height = std::ceil(*std::ranges::max_element(heights)) + 6;
        if (m_y + height > m_bottom) {
            newPage();
            tableHead(columns, lefts);
        }
        const QRectF box = place(height);
        for (std::size_t i = 0; i < columns.size(); ++i) {
            const int align = columns[i].right ? Qt::AlignRight : Qt::AlignLeft;
            const QString cell = row.value(static_cast<qsizetype>(i));
            if (!cell.isEmpty()) {
                drawText(QRectF(lefts[i], box.top() + 2, lefts[i + 1] - lefts[i] - kCellGap, heights[i]), font,
                         i == 0 ? Token::Ink2 : Token::Ink, align | Qt::TextWordWrap, cell);
            }
        }
        m_painter.fillRect(QRectF(0, box.bottom() - 1, width(), 1), m_theme[Token::Rule]);
    }
    gap(6);
}

void Paper::caution(const QString& title, const QStringList& lines)
{
    const QFont strong = m_theme.font(12, 650);
    const QFont body = m_theme.font(12);
    const double inset = 10.0;
    const double room = width() - 2 * inset;
    const QString all = lines.join(u'\n');
    const double head = extentOf(strong, room, Qt::TextWordWrap, title).height();
    const double rest = extentOf(body, room, Qt::TextWordWrap, all).height();
    const QRectF box = place(std::ceil(head + rest) + 14);
    m_painter.save();
    m_painter.setPen(QPen(m_theme[Token::Act], 1));
    m_painter.setBrush(m_theme[Token::ActTint]);
    m_painter.drawRect(box.adjusted(0.5, 0.5, -0.5, -0.5));
    m_painter.restore();
    drawText(QRectF(inset, box.top() + 5, room, head), strong, Token::Act, Qt::TextWordWrap, title);
    drawText(QRectF(inset, box.top() + 7 + head, room, rest), body, Token::Ink, Qt::TextWordWrap, all);
    gap(6);
}

void Paper::formula(const QString& text)
{
    if (text.isEmpty()) {
        return;
    }
    const QRectF box = place(formulaHeight(m_theme, text, width()));
    paintFormula(m_painter, box, m_theme, text, m_theme[Token::Ink]);
    gap(6);
}

void Paper::ruled(int lines)
{
    for (int i = 0; i < lines; ++i) {
        const QRectF box = place(kRuledLine);
        m_painter.fillRect(QRectF(0, box.bottom() - 1, width(), 1), m_theme[Token::Rule2]);
    }
}

} // namespace littoral::ui
