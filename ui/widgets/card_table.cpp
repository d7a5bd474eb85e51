// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/card_table.h"

#include "ui/paint/glyphs.h"
#include "ui/paint/lane_metrics.h"
#include "ui/theme/figures.h"

#include <QAbstractTableModel>
#include <QFontMetrics>
#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QStyledItemDelegate>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

namespace {

constexpr double kSide = 8.0; // px either side of a cell's words at scale 1
constexpr double kAbove = 6.0;
constexpr double kGlyph = 13.0;

QFont cellFont(const Theme& theme, bool strong)
{
    return theme.font(12.5, strong ? 600 : 400);
}

QFont detailFont(const Theme& theme)
{
    return theme.font(11);
}

double glyphRoom(const Theme& theme, const CardCell& cell)
{
    return cell.status ? theme.px(kGlyph) + theme.px(5) : 0.0;
}

/// Words of a cell broken into the lines they are drawn as.
struct Lines
{
    Lines(const Theme& theme, const CardCell& cell, double width)
        : text(wrapped(cellFont(theme, cell.strong), cell.text, width - glyphRoom(theme, cell)))
    {
        for (const QString& detail : cell.details) {
            details << wrapped(detailFont(theme), detail, width);
        }
    }
    QStringList text, details;
};

/// Header cells of one or two lines, words where the cells below have theirs.
class CardHeader final : public QHeaderView
{
public:
    CardHeader(Theme& theme, const std::vector<CardColumn>& columns, QWidget* parent)
        : QHeaderView(Qt::Horizontal, parent)
        , m_theme(theme)
        , m_columns(columns)
    {
        setSectionsClickable(false);
        setHighlightSections(false);
        setFocusPolicy(Qt::NoFocus);
    }
    [[nodiscard]] QSize sizeHint() const override
    {
        qsizetype lines = 1;
        for (std::size_t i = 0; i < m_columns.size(); ++i) {
            lines = std::max(lines, linesOf(static_cast<int>(i)).size());
        }
        const QFontMetrics metrics(m_theme.font(11, 600));
        return {0, static_cast<int>(lines) * metrics.height() + m_theme.px(10)};
    }

protected:
    void paintSection(QPainter* painter, const QRect& rect, int section) const override
    {
        painter->fillRect(rect, m_theme[Token::Panel]);
        painter->fillRect(QRect(rect.left(), rect.bottom(), rect.width(), 1), m_theme[Token::Rule]);
        const CardColumn& column = m_columns[static_cast<std::size_t>(section)];
        const QFont font = m_theme.font(11, 600);
        painter->setFont(font);
        painter->setPen(m_theme[Token::Ink2]);
        const QStringList lines = linesOf(section);
        const double line = QFontMetrics(font).height();
        double y = rect.bottom() - m_theme.px(5) - line * static_cast<double>(lines.size());
        const QRectF words = QRectF(rect).adjusted(m_theme.px(kSide), 0, -m_theme.px(kSide), 0);
        for (const QString& text : lines) {
            drawFigures(*painter, QRectF(words.left(), y, words.width(), line),
                        Qt::AlignVCenter | (column.right ? Qt::AlignRight : Qt::AlignLeft), text);
            y += line;
        }
    }

private:
    [[nodiscard]] QStringList linesOf(int section) const
    {
        QStringList lines;
        const double width = std::max(1.0, sectionSize(section) - 2.0 * m_theme.px(kSide));
        for (const QString& part : m_columns[static_cast<std::size_t>(section)].title.split(u'\n')) {
            lines << wrapped(m_theme.font(11, 600), part, width);
        }
        return lines;
    }

    Theme& m_theme;
    const std::vector<CardColumn>& m_columns;
};

} // namespace

class CardTableModel final : public QAbstractTableModel
{
public:
    CardTableModel(const std::vector<CardColumn>& columns, QObject* parent)
        : QAbstractTableModel(parent)
        , m_columns(columns)
    {
    }
    void reset(std::vector<CardRow> rows)
    {
        beginResetModel();
        this->rows = std::move(rows);
        endResetModel();
    }
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override
    {
        return parent.isValid() ? 0 : static_cast<int>(rows.size());
    }
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override
    {
        return parent.isValid() ? 0 : static_cast<int>(m_columns.size());
    }
    [[nodiscard]] const CardCell& cell(const QModelIndex& index) const
    {
        static const CardCell none;
        const CardRow& row = rows[static_cast<std::size_t>(index.row())];
        const auto column = static_cast<std::size_t>(index.column());
        return column < row.cells.size() ? row.cells[column] : none;
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override
    {
        if (role == Qt::DisplayRole) {
            return cell(index).text;
        }
        if (role == Qt::AccessibleTextRole || (role == Qt::ToolTipRole && index.column() == 0)) {
            const QString& whole = rows[static_cast<std::size_t>(index.row())].sentence;
            return index.column() == 0 ? whole : cell(index).text;
        }
        return {};
    }
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override
    {
        return orientation == Qt::Horizontal && role == Qt::DisplayRole
                   ? m_columns[static_cast<std::size_t>(section)].title
                   : QVariant();
    }

    std::vector<CardRow> rows;

private:
    const std::vector<CardColumn>& m_columns;
};

namespace {

class CardDelegate final : public QStyledItemDelegate
{
public:
    CardDelegate(Theme& theme, const CardTableModel& model, const std::vector<CardColumn>& columns, QTableView* view)
        : QStyledItemDelegate(view)
        , m_theme(theme)
        , m_model(model)
        , m_columns(columns)
        , m_view(*view)
    {
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        const CardCell& cell = m_model.cell(index);
        const CardColumn& column = m_columns[static_cast<std::size_t>(index.column())];
        const bool chosen = m_view.currentIndex().row() == index.row();
        painter->save();
        painter->fillRect(option.rect, m_theme[chosen ? Token::Selection : Token::Panel]);
        painter->fillRect(QRect(option.rect.left(), option.rect.bottom(), option.rect.width(), 1),
                          m_theme[Token::Rule]);
        if (chosen && index.column() == 0) {
            painter->fillRect(QRect(option.rect.left(), option.rect.top(), 3, option.rect.height()),
                              m_theme[Token::Accent]);
        }
        const int flags = Qt::AlignVCenter | (column.right ? Qt::AlignRight : Qt::AlignLeft);
        const QRectF words = QRectF(option.rect).adjusted(m_theme.px(kSide), m_theme.px(kAbove), -m_theme.px(kSide), 0);
        const Lines lines(m_theme, cell, words.width());
        const QFont font = cellFont(m_theme, cell.strong);
        const double line = QFontMetrics(font).height();
        double y = words.top();
        const double indent = glyphRoom(m_theme, cell);
        if (cell.status) {
            const double side = m_theme.px(kGlyph);
            painter->setRenderHint(QPainter::Antialiasing);
            drawStatus(*painter, *cell.status, QRectF(words.left(), y + (line - side) / 2, side, side),
                       m_theme.tokens().status(*cell.status), m_theme[chosen ? Token::Selection : Token::Panel]);
        }
        painter->setFont(font);
        painter->setPen(m_theme[cell.info ? Token::Info : Token::Ink]);
        for (const QString& text : lines.text) {
            drawFigures(*painter, QRectF(words.left() + indent, y, words.width() - indent, line), flags, text);
            y += line;
        }
        painter->setFont(detailFont(m_theme));
        painter->setPen(m_theme[chosen ? Token::Ink2 : Token::Ink3]);
        const double small = QFontMetrics(detailFont(m_theme)).height();
        for (const QString& text : lines.details) {
            drawFigures(*painter, QRectF(words.left(), y, words.width(), small), flags, text);
            y += small;
        }
        painter->restore();
    }

private:
    Theme& m_theme;
    const CardTableModel& m_model;
    const std::vector<CardColumn>& m_columns;
    const QTableView& m_view;
};

} // namespace

CardTable::CardTable(Theme& theme, QWidget* parent)
    : QTableView(parent)
    , m_theme(theme)
    , m_model(new CardTableModel(m_columns, this))
{
    setModel(m_model);
    setHorizontalHeader(new CardHeader(theme, m_columns, this));
    setItemDelegate(new CardDelegate(theme, *m_model, m_columns, this));
    setFrameShape(QFrame::NoFrame);
    setShowGrid(false);
    setTabKeyNavigation(false);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    verticalHeader()->hide();
    verticalHeader()->setMinimumSectionSize(1);
    horizontalHeader()->setMinimumSectionSize(1);
    connect(&theme, &Theme::changed, this, &CardTable::arrange);
    connect(this, &QAbstractItemView::clicked, this,
            [this](const QModelIndex& index) { emit activatedRow(index.row()); });
}

void CardTable::setColumns(std::vector<CardColumn> columns)
{
    std::vector<CardRow> rows = std::move(m_model->rows);
    m_columns = std::move(columns);
    setRows(std::move(rows));
}

void CardTable::setRows(std::vector<CardRow> rows)
{
    const int row = chosenRow();
    m_quiet = true;
    m_model->reset(std::move(rows));
    m_quiet = false;
    setChosenRow(std::min(row, m_model->rowCount() - 1));
    arrange();
}

const std::vector<CardRow>& CardTable::rows() const
{
    return m_model->rows;
}

void CardTable::setChosenRow(int row)
{
    m_quiet = true;
    setCurrentIndex(row < 0 ? QModelIndex() : m_model->index(row, 0));
    m_quiet = false;
    viewport()->update();
}

int CardTable::leastWidth(int column) const
{
    const auto at = static_cast<std::size_t>(column);
    double least = 0.0;
    for (const QString& part : m_columns[at].title.split(u'\n')) {
        // Titles of several words break where they must.
        for (const QString& word : part.split(u' ')) {
            least = std::max(least, figuresWidth(m_theme.font(11, 600), word));
        }
    }
    for (const CardRow& row : m_model->rows) {
        if (at >= row.cells.size()) {
            continue;
        }
        const CardCell& cell = row.cells[at];
        const QFont font = cellFont(m_theme, cell.strong);
        if (m_columns[at].stretch > 0.0) {
            for (const QString& word : cell.text.split(u' ')) {
                least = std::max(least, figuresWidth(font, word) + glyphRoom(m_theme, cell));
            }
        } else {
            least = std::max(least, figuresWidth(font, cell.text) + glyphRoom(m_theme, cell));
            for (const QString& detail : cell.details) {
                least = std::max(least, std::min(figuresWidth(detailFont(m_theme), detail), double(m_theme.px(84))));
            }
        }
    }
    return static_cast<int>(std::ceil(least)) + 2 * m_theme.px(kSide) + 1;
}

int CardTable::heightOfCell(const CardCell& cell, int width) const
{
    const Lines lines(m_theme, cell, width - 2.0 * m_theme.px(kSide));
    return static_cast<int>(lines.text.size()) * QFontMetrics(cellFont(m_theme, cell.strong)).height() +
           static_cast<int>(lines.details.size()) * QFontMetrics(detailFont(m_theme)).height() + 2 * m_theme.px(kAbove);
}

int CardTable::heightOfRow(int row) const
{
    int height = std::max(24, m_theme.px(28));
    const std::vector<CardCell>& cells = m_model->rows[static_cast<std::size_t>(row)].cells;
    for (std::size_t i = 0; i < cells.size() && i < m_columns.size(); ++i) {
        height = std::max(height, heightOfCell(cells[i], columnWidth(static_cast<int>(i))));
    }
    return height;
}

void CardTable::arrange()
{
    if (m_columns.empty()) {
        return;
    }
    const int whole = std::max(1, width());
    int used = 0;
    double stretch = 0.0;
    std::vector<int> widths;
    for (std::size_t i = 0; i < m_columns.size(); ++i) {
        widths.push_back(leastWidth(static_cast<int>(i)));
        used += widths.back();
        stretch += m_columns[i].stretch;
    }
    int left = whole - used;
    for (std::size_t i = 0; i < widths.size(); ++i) {
        if (left > 0 && stretch > 0.0) {
            widths[i] += static_cast<int>(left * m_columns[i].stretch / stretch);
        }
        // Too narrow for every word: columns give way in proportion and words are broken or elided, not overlapped.
        const int given = left < 0 ? static_cast<int>(double(widths[i]) * whole / used) : widths[i];
        setColumnWidth(static_cast<int>(i), given);
    }
    m_height = horizontalHeader()->sizeHint().height();
    for (int row = 0; row < m_model->rowCount(); ++row) {
        const int height = heightOfRow(row);
        setRowHeight(row, height);
        m_height += height;
    }
    horizontalHeader()->setFixedHeight(horizontalHeader()->sizeHint().height());
    updateGeometries();
    if (minimumHeight() != m_height) {
        setFixedHeight(m_height);
        updateGeometry();
    }
}

QSize CardTable::sizeHint() const
{
    return {m_theme.px(360), std::max(m_height, m_theme.px(28))};
}

QSize CardTable::minimumSizeHint() const
{
    return {m_theme.px(200), std::max(m_height, m_theme.px(28))};
}

void CardTable::resizeEvent(QResizeEvent* event)
{
    QTableView::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) {
        arrange();
    }
}

void CardTable::keyPressEvent(QKeyEvent* event)
{
    const bool activates =
        event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter || event->key() == Qt::Key_Space;
    if (activates && chosenRow() >= 0) {
        emit activatedRow(chosenRow());
        return;
    }
    const bool letter = !event->text().isEmpty() && event->text().front().isPrint();
    if (letter && (event->modifiers() & (Qt::ControlModifier | Qt::AltModifier)) == 0) {
        event->ignore();
        return;
    }
    QTableView::keyPressEvent(event);
}

void CardTable::currentChanged(const QModelIndex& current, const QModelIndex& previous)
{
    QTableView::currentChanged(current, previous);
    viewport()->update();
    if (!m_quiet && current.isValid() && current.row() != previous.row()) {
        emit chosen(current.row());
    }
}

void CardTable::focusInEvent(QFocusEvent* event)
{
    // The keyboard arriving is no choice.
    m_quiet = true;
    QTableView::focusInEvent(event);
    m_quiet = false;
    viewport()->update();
}

void CardTable::focusOutEvent(QFocusEvent* event)
{
    QTableView::focusOutEvent(event);
    viewport()->update();
}

void CardTable::wheelEvent(QWheelEvent* event)
{
    event->ignore(); // the page scrolls
}

void CardTable::paintEvent(QPaintEvent* event)
{
    QTableView::paintEvent(event);
    if (!hasFocus()) {
        return;
    }
    QPainter painter(viewport());
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(m_theme[Token::Accent], 2));
    QRectF ring = QRectF(viewport()->rect());
    if (currentIndex().isValid()) {
        ring.setTop(visualRect(m_model->index(chosenRow(), 0)).top());
        ring.setHeight(rowHeight(chosenRow()));
    }
    painter.drawRoundedRect(ring.adjusted(2, 2, -2, -2), 3, 3);
}

} // namespace littoral::ui
