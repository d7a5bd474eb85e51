// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/rounds/rounds_grid.h"

#include "ui/models/number_text.h"
#include "ui/pages/rounds/rounds_delegate.h"
#include "ui/pages/rounds/rounds_headers.h"
#include "ui/widgets/text.h"

#include <QAbstractButton>
#include <QCoreApplication>
#include <QKeyEvent>
#include <QScrollBar>
#include <QVBoxLayout>
#include <algorithm>

namespace littoral::ui {

RoundsGrid::RoundsGrid(Theme& theme, facade::Keeper& keeper, RoundsModel& model, QWidget* parent)
    : QTableView(parent)
    , m_theme(theme)
    , m_model(model)
    , m_delegate(new RoundsDelegate(theme, model, this))
    , m_tanks(new TankHeader(theme, keeper, model, this))
{
    setAccessibleName(tr("Readings of this round"));
    setHorizontalHeader(new ParameterHeader(theme, this));
    setVerticalHeader(m_tanks);
    setModel(&model);
    setItemDelegate(m_delegate);
    setSelectionMode(SingleSelection);
    setEditTriggers(QAbstractItemView::DoubleClicked);
    setShowGrid(false);
    coverCorner();
    setFrameShape(NoFrame);
    setHorizontalScrollMode(ScrollPerPixel);
    setVerticalScrollMode(ScrollPerPixel);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    connect(m_delegate, &RoundsDelegate::typing, this, &RoundsGrid::typing);
    connect(m_delegate, &RoundsDelegate::leaving, this, &RoundsGrid::leave);
    connect(&model, &RoundsModel::shapeAboutToChange, this, &RoundsGrid::leaveCell);
    connect(&model, &QAbstractItemModel::modelReset, this, [this] { applyTheme(); });
    connect(&theme, &Theme::changed, this, &RoundsGrid::applyTheme);
    applyTheme();
}

void RoundsGrid::coverCorner()
{
    // The stock corner is drawn as a button that does nothing here; a heading for the tanks stands in its place.
    auto* corner = findChild<QAbstractButton*>();
    if (corner == nullptr) {
        return;
    }
    auto* heading = new Text(m_theme, TextStyle::Strong, tr("Tank"), corner);
    heading->setAutoFillBackground(true);
    heading->setBackgroundRole(QPalette::Base);
    heading->setContentsMargins(m_theme.px(12), 0, 0, m_theme.px(6));
    heading->setAlignment(Qt::AlignLeft | Qt::AlignBottom);
    auto* fill = new QVBoxLayout(corner);
    fill->setContentsMargins(0, 0, 0, 1);
    fill->addWidget(heading);
}

void RoundsGrid::applyTheme()
{
    const int height = m_delegate->rowHeight();
    verticalHeader()->setMinimumSectionSize(height);
    verticalHeader()->setDefaultSectionSize(height);
    const int width = m_delegate->columnWidth();
    horizontalHeader()->setMinimumSectionSize(width);
    fitHeight();
    updateGeometries();
    updateGeometry();
    viewport()->update();
}

void RoundsGrid::fitHeight()
{
    // No taller than its rows: the room below serves the cell's own panel.
    const int across = m_tanks->sizeHint().width() + m_model.columnCount() * m_delegate->columnWidth();
    const int bar = across > width() ? horizontalScrollBar()->sizeHint().height() : 0;
    setMaximumHeight(horizontalHeader()->sizeHint().height() +
                     std::max(1, m_model.rowCount()) * m_delegate->rowHeight() + bar + 2);
}

void RoundsGrid::resizeEvent(QResizeEvent* event)
{
    QTableView::resizeEvent(event);
    fitHeight();
}

QSize RoundsGrid::sizeHint() const
{
    const int rows = std::clamp(m_model.rowCount(), 1, 24);
    return {m_tanks->sizeHint().width() + m_model.columnCount() * m_delegate->columnWidth(),
            horizontalHeader()->sizeHint().height() + rows * m_delegate->rowHeight() + 2};
}

QSize RoundsGrid::minimumSizeHint() const
{
    const int rows = std::clamp(m_model.rowCount(), 1, 8);
    return {m_tanks->sizeHint().width() + 2 * m_delegate->columnWidth(),
            horizontalHeader()->sizeHint().height() + rows * m_delegate->rowHeight() + 2};
}

CellEdit* RoundsGrid::openCell() const
{
    return state() == EditingState ? qobject_cast<CellEdit*>(indexWidget(currentIndex())) : nullptr;
}

void RoundsGrid::openIfEditable(const QModelIndex& cell)
{
    if (cell.isValid() && cell.flags().testFlag(Qt::ItemIsEditable)) {
        edit(cell);
    }
}

void RoundsGrid::goToFirstDue()
{
    const QModelIndex cell = m_model.nextDue({}, m_order);
    setCurrentIndex(cell.isValid() ? cell : m_model.index(0, 0));
    setFocus();
    if (cell.isValid()) {
        openIfEditable(cell);
    }
}

void RoundsGrid::leaveCell()
{
    if (CellEdit* editor = openCell()) {
        commitData(editor);
        closeEditor(editor, QAbstractItemDelegate::NoHint);
        setFocus();
    }
}

void RoundsGrid::keepAndGoOn()
{
    leaveCell();
    const QModelIndex next = m_model.nextDue(currentIndex(), m_order);
    if (!next.isValid()) {
        // Nothing is due any more. Still go on: what is typed next must not land on the reading just taken.
        if (const QModelIndex unread = m_model.nextUnread(currentIndex(), m_order); unread.isValid()) {
            setCurrentIndex(unread);
        }
        setFocus();
        emit nothingLeft();
        return;
    }
    setCurrentIndex(next);
    openIfEditable(next);
}

void RoundsGrid::step(int columns)
{
    const QModelIndex at = currentIndex();
    const int count = m_model.columnCount();
    if (count == 0) {
        return;
    }
    const int place = at.isValid() ? at.row() * count + at.column() + columns : 0;
    const int clamped = std::clamp(place, 0, m_model.rowCount() * count - 1);
    setCurrentIndex(m_model.index(clamped / count, clamped % count));
}

void RoundsGrid::leave(QWidget* editor, CellEdit::Leave where)
{
    commitData(editor);
    closeEditor(editor, QAbstractItemDelegate::NoHint);
    setFocus();
    switch (where) {
    case CellEdit::Leave::NextDue:
        keepAndGoOn();
        return;
    case CellEdit::Leave::NextColumn:
        step(1);
        break;
    case CellEdit::Leave::PreviousColumn:
        step(-1);
        break;
    case CellEdit::Leave::Left:
        setCurrentIndex(moveCursor(MoveLeft, Qt::NoModifier));
        return;
    case CellEdit::Leave::Right:
        setCurrentIndex(moveCursor(MoveRight, Qt::NoModifier));
        return;
    case CellEdit::Leave::Up:
        setCurrentIndex(moveCursor(MoveUp, Qt::NoModifier));
        break;
    case CellEdit::Leave::Down:
        setCurrentIndex(moveCursor(MoveDown, Qt::NoModifier));
        break;
    case CellEdit::Leave::Stay:
        return;
    }
    openIfEditable(currentIndex());
}

void RoundsGrid::takeStep(double step)
{
    if (!currentIndex().isValid()) {
        return;
    }
    if (openCell() == nullptr) {
        openIfEditable(currentIndex());
    }
    if (CellEdit* editor = openCell()) {
        editor->setText(numberText(step));
        editor->setFocus();
        editor->selectAll();
    }
}

void RoundsGrid::keyPressEvent(QKeyEvent* event)
{
    const bool plain = (event->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier)) == 0;
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (plain) {
            keepAndGoOn();
            return;
        }
        break;
    case Qt::Key_F2:
        openIfEditable(currentIndex());
        return;
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
        m_model.clearCell(currentIndex());
        return;
    default:
        break;
    }
    const QString text = event->text();
    if (plain && text.size() == 1 && (text[0].isDigit() || QStringLiteral("<>.,-/").contains(text[0]))) {
        openIfEditable(currentIndex());
        if (CellEdit* editor = openCell()) {
            QKeyEvent copy(QEvent::KeyPress, event->key(), event->modifiers(), text);
            QCoreApplication::sendEvent(editor, &copy);
        }
        return;
    }
    QTableView::keyPressEvent(event);
}

bool RoundsGrid::focusNextPrevChild(bool next)
{
    // Tab walks the cells and leaves the grid at its ends, so that the keyboard is never caught.
    const QModelIndex at = currentIndex();
    const bool last = at.row() == m_model.rowCount() - 1 && at.column() == m_model.columnCount() - 1;
    const bool first = at.row() == 0 && at.column() == 0;
    if (at.isValid() && state() != EditingState && !(next ? last : first)) {
        step(next ? 1 : -1);
        return true;
    }
    return QAbstractScrollArea::focusNextPrevChild(next);
}

void RoundsGrid::currentChanged(const QModelIndex& current, const QModelIndex& previous)
{
    QTableView::currentChanged(current, previous);
    m_tanks->setCurrentRow(current.row());
    emit cellChanged(current);
}

void RoundsGrid::focusInEvent(QFocusEvent* event)
{
    if (!currentIndex().isValid() && m_model.rowCount() > 0) {
        setCurrentIndex(m_model.index(0, 0));
    }
    QTableView::focusInEvent(event);
}

} // namespace littoral::ui
