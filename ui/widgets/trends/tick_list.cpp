// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/trends/tick_list.h"

#include "ui/paint/marks.h"
#include "ui/paint/trend_painter.h"
#include "ui/theme/figures.h"

#include <QAbstractListModel>
#include <QApplication>
#include <QKeyEvent>
#include <QPainter>
#include <QStyle>
#include <QStyleOptionButton>
#include <QStyledItemDelegate>
#include <QWheelEvent>
#include <algorithm>
#include <functional>
#include <utility>

namespace littoral::ui {

class TickModel final : public QAbstractListModel
{
public:
    using QAbstractListModel::QAbstractListModel;

    std::vector<TickLine> lines;
    std::function<void()> tickedByHand;

    void reset(std::vector<TickLine> made)
    {
        const bool sameShape = std::ranges::equal(
            made, lines, [](const TickLine& a, const TickLine& b) { return a.key == b.key && a.text == b.text; });
        if (sameShape) {
            lines = std::move(made);
            if (!lines.empty()) {
                emit dataChanged(index(0), index(rowCount() - 1));
            }
            return;
        }
        beginResetModel();
        lines = std::move(made);
        endResetModel();
    }
    void swapLines(int a, int b)
    {
        beginMoveRows({}, a, a, {}, b > a ? b + 1 : b);
        std::swap(lines[static_cast<std::size_t>(a)], lines[static_cast<std::size_t>(b)]);
        endMoveRows();
    }
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override
    {
        return parent.isValid() ? 0 : static_cast<int>(lines.size());
    }
    [[nodiscard]] const TickLine& line(const QModelIndex& index) const
    {
        return lines[static_cast<std::size_t>(index.row())];
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override
    {
        if (!index.isValid()) {
            return {};
        }
        const TickLine& one = line(index);
        switch (role) {
        case Qt::DisplayRole:
            return one.text;
        case Qt::AccessibleTextRole:
            return one.side.isEmpty() ? one.text : TickList::tr("%1, %2", "name, remark").arg(one.text, one.side);
        case Qt::CheckStateRole:
            return one.heading() ? QVariant() : QVariant(one.ticked ? Qt::Checked : Qt::Unchecked);
        default:
            return {};
        }
    }
    bool setData(const QModelIndex& index, const QVariant& value, int role) override
    {
        if (role != Qt::CheckStateRole || !index.isValid() || line(index).heading()) {
            return false;
        }
        lines[static_cast<std::size_t>(index.row())].ticked = value.toInt() == Qt::Checked;
        emit dataChanged(index, index, {Qt::CheckStateRole});
        tickedByHand();
        return true;
    }
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override
    {
        if (!index.isValid() || line(index).heading()) {
            return Qt::NoItemFlags;
        }
        return Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable;
    }
};

namespace {

class TickDelegate final : public QStyledItemDelegate
{
public:
    TickDelegate(const Theme& theme, const TickModel& model, QListView* view)
        : QStyledItemDelegate(view)
        , m_theme(theme)
        , m_model(model)
        , m_view(*view)
    {
    }

    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const override
    {
        const TickLine& line = m_model.line(index);
        const int text = QFontMetrics(m_theme.font(12.5)).height();
        const int height = line.heading() ? text + m_theme.px(12) : std::max(24, text + m_theme.px(9));
        return {m_theme.px(170), height};
    }

    /// The view itself ticks, wherever the line is clicked: once.
    bool editorEvent(QEvent*, QAbstractItemModel*, const QStyleOptionViewItem&, const QModelIndex&) override
    {
        return false;
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        const TickLine& line = m_model.line(index);
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        const bool current = m_view.currentIndex() == index;
        const QColor ground = m_theme[current ? Token::Selection : Token::Panel];
        painter->fillRect(option.rect, ground);
        const QRectF row = QRectF(option.rect).adjusted(m_theme.px(8), 0, -m_theme.px(8), 0);
        if (line.heading()) {
            painter->setFont(m_theme.font(11, 500));
            painter->setPen(m_theme[Token::Ink3]);
            drawFigures(*painter, row.adjusted(0, m_theme.px(4), 0, 0), Qt::AlignVCenter | Qt::AlignLeft, line.text);
            painter->restore();
            return;
        }
        const double box = m_theme.px(15);
        QStyleOptionButton check;
        check.rect = QRectF(row.left(), row.center().y() - box / 2, box, box).toRect();
        check.state = QStyle::State_Enabled | (line.ticked ? QStyle::State_On : QStyle::State_Off);
        m_view.style()->drawPrimitive(QStyle::PE_IndicatorCheckBox, &check, painter, &m_view);
        double at = row.left() + box + m_theme.px(9);
        if (!line.mark.isEmpty()) {
            drawParameterMark(*painter, m_theme, line.mark, {at + m_theme.px(4), row.center().y()},
                              m_theme.px(kMarkSize), ground);
            at += m_theme.px(16);
        } else if (line.style) {
            const double sample = m_theme.px(26);
            drawTankSample(*painter, QRectF(at, row.top(), sample, row.height()), *line.style, m_theme[Token::Ink2],
                           ground);
            at += sample + m_theme.px(8);
        }
        const QFont side = m_theme.font(11);
        const double used = line.side.isEmpty() ? 0.0 : figuresWidth(side, line.side) + m_theme.px(6);
        const QFont font = m_theme.font(12.5, line.ticked ? 600 : 400);
        painter->setFont(font);
        painter->setPen(m_theme[Token::Ink]);
        drawFigures(*painter, QRectF(at, row.top(), row.right() - at, row.height()), Qt::AlignVCenter | Qt::AlignLeft,
                    elidedFigures(font, line.text, row.right() - at - used));
        painter->setFont(side);
        painter->setPen(m_theme[current ? Token::Ink2 : Token::Ink3]);
        drawFigures(*painter, row, Qt::AlignVCenter | Qt::AlignRight, line.side);
        if (current && m_view.hasFocus()) {
            painter->setBrush(Qt::NoBrush);
            painter->setPen(QPen(m_theme[Token::Accent], 2));
            painter->drawRoundedRect(QRectF(option.rect).adjusted(1.5, 1.5, -1.5, -1.5), 4, 4);
        }
        painter->restore();
    }

private:
    const Theme& m_theme;
    const TickModel& m_model;
    const QListView& m_view;
};

} // namespace

TickList::TickList(Theme& theme, QWidget* parent)
    : QListView(parent)
    , m_theme(theme)
    , m_model(new TickModel(this))
{
    setModel(m_model);
    setItemDelegate(new TickDelegate(theme, *m_model, this));
    setFrameShape(QFrame::NoFrame);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    m_model->tickedByHand = [this] { emit changed(); };
    // The whole line is the target.
    connect(this, &QListView::clicked, this, [this](const QModelIndex& index) {
        m_model->setData(index, m_model->line(index).ticked ? Qt::Unchecked : Qt::Checked, Qt::CheckStateRole);
    });
    connect(&theme, &Theme::changed, this, [this] {
        doItemsLayout();
        updateGeometry();
    });
}

void TickList::setLines(std::vector<TickLine> lines)
{
    const QString key = currentKey();
    m_model->reset(std::move(lines));
    for (int row = 0; row < m_model->rowCount(); ++row) {
        if (!key.isEmpty() && m_model->lines[static_cast<std::size_t>(row)].key == key) {
            setCurrentIndex(m_model->index(row));
        }
    }
    applyFilter();
}

void TickList::setFilter(const QString& text)
{
    if (text != m_filter) {
        m_filter = text;
        applyFilter();
    }
}

bool TickList::isEmpty() const
{
    for (int row = 0; row < m_model->rowCount(); ++row) {
        if (!isRowHidden(row)) {
            return false;
        }
    }
    return true;
}

void TickList::applyFilter()
{
    bool below = false; // a line of the heading's group is on show
    for (int row = m_model->rowCount() - 1; row >= 0; --row) {
        const TickLine& line = m_model->lines[static_cast<std::size_t>(row)];
        const bool shown = line.heading() ? std::exchange(below, false)
                                          : line.text.contains(m_filter, Qt::CaseInsensitive) ||
                                                line.key.compare(m_filter, Qt::CaseInsensitive) == 0;
        setRowHidden(row, !shown);
        below = below || (shown && !line.heading());
    }
    if (!currentIndex().isValid() || isRowHidden(currentIndex().row())) {
        setCurrentIndex({});
    }
    setFixedHeight(sizeHint().height());
    updateGeometry();
}

const std::vector<TickLine>& TickList::lines() const
{
    return m_model->lines;
}

QStringList TickList::ticked() const
{
    QStringList keys;
    for (const TickLine& line : m_model->lines) {
        if (line.ticked && !line.heading()) {
            keys << line.key;
        }
    }
    return keys;
}

QString TickList::currentKey() const
{
    return currentIndex().isValid() ? m_model->line(currentIndex()).key : QString();
}

QSize TickList::sizeHint() const
{
    int height = 2;
    for (int row = 0; row < m_model->rowCount(); ++row) {
        height += isRowHidden(row) ? 0 : sizeHintForIndex(m_model->index(row)).height();
    }
    return {m_theme.px(190), height};
}

QSize TickList::minimumSizeHint() const
{
    return {m_theme.px(120), sizeHint().height()};
}

void TickList::moveCurrent(int by)
{
    const int row = currentIndex().row();
    const int other = row + by;
    if (row < 0 || other < 0 || other >= m_model->rowCount() ||
        m_model->lines[static_cast<std::size_t>(other)].heading()) {
        return;
    }
    m_model->swapLines(row, other);
    setCurrentIndex(m_model->index(other));
    emit changed();
}

void TickList::keyPressEvent(QKeyEvent* event)
{
    const bool control = (event->modifiers() & Qt::ControlModifier) != 0;
    if (control && (event->key() == Qt::Key_Up || event->key() == Qt::Key_Down)) {
        moveCurrent(event->key() == Qt::Key_Up ? -1 : 1);
        return;
    }
    if (event->key() == Qt::Key_Space && currentIndex().isValid()) {
        const QModelIndex index = currentIndex();
        m_model->setData(index, m_model->line(index).ticked ? Qt::Unchecked : Qt::Checked, Qt::CheckStateRole);
        return;
    }
    // Letters are the page's keys here: nothing is searched for by typing.
    const bool letter = !event->text().isEmpty() && event->text().front().isPrint();
    if (letter && !control) {
        event->ignore();
        return;
    }
    QListView::keyPressEvent(event);
}

void TickList::wheelEvent(QWheelEvent* event)
{
    event->ignore();
}

void TickList::focusInEvent(QFocusEvent* event)
{
    QListView::focusInEvent(event);
    for (int row = 0; !currentIndex().isValid() && row < m_model->rowCount(); ++row) {
        if (!m_model->lines[static_cast<std::size_t>(row)].heading() && !isRowHidden(row)) {
            setCurrentIndex(m_model->index(row));
        }
    }
}

} // namespace littoral::ui
