// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/editors/entries_panel.h"

#include <QFontMetrics>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QSortFilterProxyModel>
#include <QTableView>
#include <QVBoxLayout>

namespace littoral::ui {

EntriesPanel::EntriesPanel(facade::Keeper& keeper, Theme& theme, QWidget* parent)
    : SidePanel(theme, tr("Entries"), parent)
    , m_keeper(keeper)
    , m_model(new EntriesModel(keeper, this))
    , m_filtered(new QSortFilterProxyModel(this))
    , m_filter(new QLineEdit)
    , m_table(new QTableView)
    , m_empty(new Text(theme, TextStyle::Body))
{
    m_filtered->setSourceModel(m_model);
    m_filtered->setFilterCaseSensitivity(Qt::CaseInsensitive);
    m_filtered->setFilterKeyColumn(-1);
    m_filter->setPlaceholderText(tr("Narrow by text"));
    m_filter->setAccessibleName(tr("Narrow the entries by text"));
    m_filter->setClearButtonEnabled(true);
    m_table->setModel(m_filtered);
    m_table->setAccessibleName(tr("Entries, newest first; Enter edits, Delete removes"));
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setTabKeyNavigation(false);
    m_table->setShowGrid(false);
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setStretchLastSection(true);
    m_table->horizontalHeader()->setHighlightSections(false);
    m_table->installEventFilter(this);
    m_empty->setWordWrap(true);
    body()->addWidget(m_filter);
    body()->addWidget(m_empty);
    body()->addWidget(m_table, 1);
    setFirstField(m_filter);
    auto* edit = addFootButton(tr("Edit"), tr("Enter"), true);
    auto* remove = addFootButton(tr("Remove"), tr("Del"), false);
    connect(edit, &QPushButton::clicked, this, &EntriesPanel::editCurrent);
    connect(remove, &QPushButton::clicked, this, &EntriesPanel::removeCurrent);
    connect(m_table, &QTableView::doubleClicked, this, &EntriesPanel::editCurrent);
    const auto refresh = [this] {
        const int rows = m_filtered->rowCount();
        m_empty->setVisible(rows == 0);
        m_table->setVisible(rows > 0);
        m_empty->setText(m_model->rowCount() == 0
                             ? tr("Nothing is recorded about this tank yet. New entry (Ctrl+E) writes the first.")
                             : tr("Nothing matches that text."));
        if (rows > 0 && !m_table->currentIndex().isValid()) {
            m_table->selectRow(0);
        }
    };
    connect(m_filter, &QLineEdit::textChanged, this, [this, refresh](const QString& text) {
        m_filtered->setFilterFixedString(text.trimmed());
        refresh();
    });
    connect(m_model, &QAbstractItemModel::modelReset, this, refresh);
    const auto size = [this] {
        m_table->verticalHeader()->setDefaultSectionSize(
            std::max(28, QFontMetrics(fontOf(this->theme(), TextStyle::Body)).height() + this->theme().px(10)));
        m_table->setColumnWidth(EntriesModel::WhenColumn, QFontMetrics(fontOf(this->theme(), TextStyle::Body))
                                                              .horizontalAdvance(QStringLiteral("00 Mmm 0000 00:00")));
    };
    connect(&theme, &Theme::changed, this, size);
    size();
    refresh();
}

void EntriesPanel::setTank(record::TankId tank)
{
    const record::Tank* found = m_keeper.row().tank(tank);
    setTitle(found == nullptr ? tr("Entries") : tr("Entries of %1").arg(found->name));
    m_model->setTank(tank);
}

int EntriesPanel::sourceRow() const
{
    return m_filtered->mapToSource(m_table->currentIndex()).row();
}

void EntriesPanel::editCurrent()
{
    const int row = sourceRow();
    if (const record::EntryId entry = m_model->entryAt(row)) {
        emit entryWanted(entry);
    } else if (const record::ReadingId reading = m_model->readingAt(row)) {
        emit readingWanted(reading);
    }
}

void EntriesPanel::removeCurrent()
{
    const int row = sourceRow();
    const int shown = m_table->currentIndex().row();
    const QString text = m_model->textAt(row);
    if (row < 0 || m_keeper.isReadOnly()) {
        return;
    }
    store::Edit edit(tr("remove: %1").arg(text));
    if (const record::EntryId entry = m_model->entryAt(row)) {
        edit.remove(entry);
    } else {
        edit.remove(m_model->readingAt(row));
    }
    if (const auto done = m_keeper.commit(edit); !done) {
        showProblem(QString::fromStdString(done.error().sentence()));
        return;
    }
    clearProblem();
    // The keyboard stays where it was: on the next line down.
    m_table->selectRow(std::min(shown, m_filtered->rowCount() - 1));
    m_table->setFocus();
    emit saved(tr("Removed: %1").arg(text));
}

bool EntriesPanel::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_table && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Delete || key == Qt::Key_Backspace) {
            removeCurrent();
            return true;
        }
        if (key == Qt::Key_Return || key == Qt::Key_Enter) {
            editCurrent();
            return true;
        }
    }
    return SidePanel::eventFilter(watched, event);
}

} // namespace littoral::ui
