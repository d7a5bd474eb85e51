// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/trends/figure_table.h"

#include "ui/paint/lane_metrics.h"
#include "ui/paint/marks.h"
#include "ui/theme/figures.h"

#include <QFontMetricsF>
#include <QKeyEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

namespace {

constexpr int kLeft = Qt::AlignVCenter | Qt::AlignLeft;
constexpr int kRight = Qt::AlignVCenter | Qt::AlignRight;
constexpr double kAbove = 5.0; // px over and under a row's words
constexpr double kMarkRoom = 16.0;
constexpr double kMostTitle = 96.0; // px at text scale 1; longer titles wrap

QFont valueFont(const Theme& theme, bool strong)
{
    return theme.font(12.5, strong ? 650 : 400);
}

double lineOf(const QFont& font)
{
    return std::ceil(QFontMetricsF(font).height());
}

} // namespace

FigureTable::FigureTable(const Theme& theme, QWidget* parent)
    : ChartWidget(parent)
    , m_theme(theme)
{
    setFocusPolicy(Qt::TabFocus);
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(&theme, &Theme::changed, this, &FigureTable::settleHeight);
}

void FigureTable::setTable(QStringList columns, std::vector<FigureRow> rows)
{
    m_columns = std::move(columns);
    m_rows = std::move(rows);
    m_current = std::clamp(m_current, 0, std::max(0, partCount() - 1));
    QStringList sentences;
    for (const FigureRow& row : m_rows) {
        sentences << row.sentence;
    }
    setAccessibleDescription(sentences.join(QStringLiteral(". ")));
    partsChanged();
    settleHeight();
}

void FigureTable::settleHeight()
{
    const int height = heightForWidth(width());
    if (height != minimumHeight() || height != maximumHeight()) {
        setFixedHeight(height);
    }
    updateGeometry();
    update();
}

void FigureTable::resizeEvent(QResizeEvent* event)
{
    if (event->size().width() != event->oldSize().width()) {
        settleHeight();
    }
}

double FigureTable::titleWidth() const
{
    double widest = 0.0;
    for (const FigureRow& row : m_rows) {
        if (row.heading) {
            continue;
        }
        const double mark = row.mark.isEmpty() ? 0.0 : m_theme.px(kMarkRoom);
        for (const QString& line : titleLines(row)) {
            widest = std::max(widest, mark + figuresWidth(m_theme.font(12), line));
        }
    }
    return std::ceil(widest) + m_theme.px(6);
}

QStringList FigureTable::titleLines(const FigureRow& row) const
{
    return wrapped(m_theme.font(12), row.title, m_theme.px(kMostTitle));
}

double FigureTable::columnWidth(double width) const
{
    return std::max(1.0, (width - titleWidth()) / static_cast<double>(std::max<qsizetype>(1, m_columns.size())));
}

QStringList FigureTable::headerLines(qsizetype column, double width) const
{
    return wrapped(m_theme.font(11, 600), m_columns[column], columnWidth(width) - m_theme.px(4));
}

double FigureTable::headerHeight(double width) const
{
    qsizetype lines = 0;
    for (qsizetype i = 0; i < m_columns.size(); ++i) {
        lines = std::max(lines, m_columns[i].isEmpty() ? 0 : headerLines(i, width).size());
    }
    return lines == 0 ? 0.0 : static_cast<double>(lines) * lineOf(m_theme.font(11, 600)) + m_theme.px(6);
}

QStringList FigureTable::noteLines(const FigureCell& cell, double width) const
{
    QStringList lines;
    for (const QString& note : cell.notes) {
        const qsizetype dash = note.indexOf(QChar(0x2013));
        // A range that is too wide for its column goes on under itself.
        if (dash > 0 && figuresWidth(m_theme.font(10.5), note) > columnWidth(width) - m_theme.px(6)) {
            lines << note.left(dash + 1) << note.mid(dash + 1);
        } else {
            lines << note;
        }
    }
    return lines;
}

double FigureTable::rowHeight(const FigureRow& row, double width) const
{
    const double value = lineOf(valueFont(m_theme, true));
    double height = row.heading ? value : static_cast<double>(titleLines(row).size()) * lineOf(m_theme.font(12));
    for (const FigureCell& cell : row.cells) {
        height =
            std::max(height, value + static_cast<double>(noteLines(cell, width).size()) * lineOf(m_theme.font(10.5)));
    }
    return std::max(24.0, height + 2 * m_theme.px(kAbove));
}

int FigureTable::heightForWidth(int width) const
{
    double height = headerHeight(width);
    for (const FigureRow& row : m_rows) {
        height += rowHeight(row, width);
    }
    return static_cast<int>(std::ceil(std::max(height, 24.0)));
}

QSize FigureTable::sizeHint() const
{
    return {m_theme.px(240), heightForWidth(width() > 0 ? width() : m_theme.px(240))};
}

QSize FigureTable::minimumSizeHint() const
{
    return {m_theme.px(160), heightForWidth(width() > 0 ? width() : m_theme.px(240))};
}

QString FigureTable::partSentence(int part) const
{
    return part >= 0 && part < partCount() ? m_rows[static_cast<std::size_t>(part)].sentence : QString();
}

QRect FigureTable::partRect(int part) const
{
    double y = headerHeight(width());
    for (int i = 0; i < part && i < partCount(); ++i) {
        y += rowHeight(m_rows[static_cast<std::size_t>(i)], width());
    }
    const double height =
        part >= 0 && part < partCount() ? rowHeight(m_rows[static_cast<std::size_t>(part)], width()) : 0.0;
    return QRectF(0, y, width(), height).toAlignedRect();
}

void FigureTable::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme[Token::Panel]);
    const double title = titleWidth();
    const double column = columnWidth(width());
    const double top = headerHeight(width());
    const double headerLine = lineOf(m_theme.font(11, 600));
    painter.setFont(m_theme.font(11, 600));
    painter.setPen(m_theme[Token::Ink2]);
    for (qsizetype i = 0; i < m_columns.size() && top > 0.0; ++i) {
        const QStringList lines = headerLines(i, width());
        double y = top - m_theme.px(4) - headerLine * static_cast<double>(lines.size());
        for (const QString& line : lines) {
            drawFigures(painter, QRectF(title + static_cast<double>(i) * column, y, column, headerLine), kRight, line);
            y += headerLine;
        }
    }
    double y = top;
    for (const FigureRow& row : m_rows) {
        const double height = rowHeight(row, width());
        painter.fillRect(QRectF(0, std::round(y), width(), 1), m_theme[Token::Rule]);
        double at = 0.0;
        double words = y + m_theme.px(kAbove);
        const double value = lineOf(valueFont(m_theme, true));
        if (!row.mark.isEmpty()) {
            drawParameterMark(painter, m_theme, row.mark, QPointF(m_theme.px(5), words + value / 2),
                              m_theme.px(kMarkSize), m_theme[Token::Panel]);
            at = m_theme.px(kMarkRoom);
        }
        const QFont titleFont = row.heading ? valueFont(m_theme, true) : m_theme.font(12);
        painter.setFont(titleFont);
        painter.setPen(m_theme[Token::Ink]);
        double line = words;
        for (const QString& text : row.heading ? QStringList{row.title} : titleLines(row)) {
            drawFigures(painter, QRectF(at, line, width() - at, row.heading ? value : lineOf(titleFont)), kLeft, text);
            line += lineOf(titleFont);
        }
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            const FigureCell& cell = row.cells[i];
            const double left = title + static_cast<double>(i) * column;
            const QFont font = valueFont(m_theme, cell.strong);
            painter.setFont(font);
            painter.setPen(m_theme[Token::Ink]);
            drawFigures(painter, QRectF(left, words, column, value), kRight, elidedFigures(font, cell.value, column));
            double note = words + value;
            const QFont small = m_theme.font(10.5);
            painter.setFont(small);
            painter.setPen(m_theme[Token::Ink3]);
            for (const QString& text : noteLines(cell, width())) {
                drawFigures(painter, QRectF(left, note, column, lineOf(small)), kRight,
                            elidedFigures(small, text, column));
                note += lineOf(small);
            }
        }
        y += height;
    }
    if (hasFocus() && partCount() > 0) {
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(QPen(m_theme[Token::Accent], 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(QRectF(partRect(m_current)).adjusted(1, 1, -1, -1), 3, 3);
    }
}

void FigureTable::keyPressEvent(QKeyEvent* event)
{
    if (event->key() != Qt::Key_Up && event->key() != Qt::Key_Down) {
        event->ignore();
        return;
    }
    const int next = std::clamp(m_current + (event->key() == Qt::Key_Up ? -1 : 1), 0, std::max(0, partCount() - 1));
    if (next != m_current) {
        m_current = next;
        announcePart();
        update();
    }
}

void FigureTable::focusInEvent(QFocusEvent* event)
{
    ChartWidget::focusInEvent(event);
    announcePart();
    update();
}

void FigureTable::focusOutEvent(QFocusEvent* event)
{
    ChartWidget::focusOutEvent(event);
    update();
}

} // namespace littoral::ui
