// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/table_twin.h"

#include <QClipboard>
#include <QFontMetrics>
#include <QGuiApplication>
#include <QHeaderView>
#include <QKeyEvent>

namespace littoral::ui {

TableTwin::TableTwin(Theme& theme, QWidget* parent)
    : QTableView(parent)
    , m_theme(theme)
    , m_model(new PlainTableModel(this))
{
    setModel(m_model);
    setAccessibleName(tr("The charts' values as a table"));
    setFrameShape(QFrame::NoFrame);
    setShowGrid(false);
    setTabKeyNavigation(false);
    setSelectionMode(QAbstractItemView::ContiguousSelection);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    verticalHeader()->hide();
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    connect(&theme, &Theme::changed, this, &TableTwin::apply);
    apply();
}

void TableTwin::apply()
{
    setFont(m_theme.font(12));
    horizontalHeader()->setFont(m_theme.font(11, 600));
    verticalHeader()->setDefaultSectionSize(std::max(24, QFontMetrics(font()).height() + m_theme.px(8)));
}

void TableTwin::setTable(PlainTable table)
{
    const QModelIndex was = currentIndex();
    m_model->setTable(std::move(table));
    setAccessibleName(m_model->table().caption);
    if (was.isValid() && was.row() < m_model->rowCount() && was.column() < m_model->columnCount()) {
        setCurrentIndex(m_model->index(was.row(), was.column()));
    }
}

void TableTwin::showCurrent()
{
    const int row = m_model->table().currentRow;
    if (row >= 0 && row < m_model->rowCount()) {
        setCurrentIndex(m_model->index(row, 0));
        scrollTo(m_model->index(row, 0), QAbstractItemView::PositionAtCenter);
    }
}

void TableTwin::keyPressEvent(QKeyEvent* event)
{
    if (event->matches(QKeySequence::Copy)) {
        copy();
        return;
    }
    // Letters are the page's keys here: nothing is searched for by typing.
    const bool letter = !event->text().isEmpty() && event->text().front().isPrint();
    if (letter && (event->modifiers() & (Qt::ControlModifier | Qt::AltModifier)) == 0) {
        event->ignore();
        return;
    }
    QTableView::keyPressEvent(event);
}

void TableTwin::copy() const
{
    QModelIndexList cells = selectionModel()->selectedIndexes();
    std::sort(cells.begin(), cells.end());
    QString text;
    for (qsizetype i = 0; i < cells.size(); ++i) {
        if (i > 0) {
            text += cells[i].row() == cells[i - 1].row() ? u'\t' : u'\n';
        }
        text += cells[i].data().toString();
    }
    QGuiApplication::clipboard()->setText(text);
}

} // namespace littoral::ui
