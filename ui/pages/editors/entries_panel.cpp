// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/editors/entries_panel.h"

#include "ui/pages/editors/bulk_bar.h"
#include "ui/widgets/flow_layout.h"

#include <QApplication>
#include <QComboBox>
#include <QFontMetrics>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QShortcut>
#include <QSignalBlocker>
#include <QStyledItemDelegate>
#include <QTableView>
#include <QVBoxLayout>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

constexpr int kMostKept = 20'000; ///< selections beyond it are not put back after a change

/// Tanks and kits are chosen from those there are; everything else is typed.
class CellDelegate final : public QStyledItemDelegate
{
public:
    CellDelegate(facade::Keeper& keeper, const EntriesModel& model, QObject* parent)
        : QStyledItemDelegate(parent)
        , m_keeper(keeper)
        , m_model(model)
    {
    }

    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        QStringList choices;
        if (index.column() == EntriesModel::TankColumn) {
            for (const record::Tank& tank : m_keeper.row().tanks) {
                choices << tank.name;
            }
        } else if (index.column() == EntriesModel::KitColumn) {
            choices = kitsFor(m_model.readingAt(index.row()));
        } else {
            QWidget* field = QStyledItemDelegate::createEditor(parent, option, index);
            field->setAccessibleName(m_model.headerData(index.column(), Qt::Horizontal).toString());
            return field;
        }
        auto* combo = new QComboBox(parent);
        combo->addItems(choices);
        combo->setAccessibleName(m_model.headerData(index.column(), Qt::Horizontal).toString());
        return combo;
    }

private:
    [[nodiscard]] QStringList kitsFor(record::ReadingId id) const
    {
        QStringList names{QString()};
        for (const auto& [layoutId, layout] : m_keeper.row().layouts) {
            const auto reading = std::ranges::find(layout.readings, id, &record::Reading::id);
            if (reading == layout.readings.end()) {
                continue;
            }
            for (const record::TestKit& kit : m_keeper.row().kits) {
                if (kit.parameter == reading->parameter) {
                    names << kit.name;
                }
            }
        }
        return names;
    }

    facade::Keeper& m_keeper;
    const EntriesModel& m_model;
};

} // namespace

EntriesPanel::EntriesPanel(facade::Keeper& keeper, Theme& theme, QWidget* parent)
    : SidePanel(theme, tr("Entries"), parent)
    , m_keeper(keeper)
    , m_model(new EntriesModel(keeper, this))
    , m_tank(new QComboBox)
    , m_show(new QComboBox)
    , m_filter(new QLineEdit)
    , m_count(new Text(theme, TextStyle::Secondary))
    , m_table(new QTableView)
    , m_bulk(new BulkBar(keeper, theme))
    , m_empty(new Text(theme, TextStyle::Body))
{
    m_model->setActive(false);
    makeFilters();
    makeTable();
    m_empty->setWordWrap(true);
    body()->addWidget(m_empty);
    body()->addWidget(m_table, 1);
    body()->addWidget(m_bulk);
    setFirstField(m_table);
    connectAll();
    arrange();
    fillChoices();
    refresh();
}

void EntriesPanel::makeFilters()
{
    m_tank->setAccessibleName(tr("Tank whose entries are on show"));
    m_show->setAccessibleName(tr("Kind of record on show"));
    m_filter->setPlaceholderText(tr("Narrow by text"));
    m_filter->setAccessibleName(tr("Narrow the entries by text"));
    m_filter->setToolTip(tr("Any words of the line: parameter, value, subject, tank, kit, note, 25 Nov or 2026-11-25"));
    m_filter->setClearButtonEnabled(true);
    m_filter->setMinimumWidth(theme().px(220));
    m_count->setToken(Token::Ink2);
    auto* bar = new QWidget;
    auto* flow = new FlowLayout(bar, 10);
    flow->setContentsMargins(0, 0, 0, 0);
    for (QWidget* part : std::initializer_list<QWidget*>{m_tank, m_show, m_filter, m_count}) {
        flow->addWidget(part);
    }
    body()->addWidget(bar);
    auto* find = new QShortcut(QKeySequence::Find, this);
    find->setContext(Qt::WidgetWithChildrenShortcut);
    connect(find, &QShortcut::activated, this, [this] {
        m_filter->setFocus();
        m_filter->selectAll();
    });
}

void EntriesPanel::makeTable()
{
    m_table->setModel(m_model);
    m_table->setItemDelegate(new CellDelegate(m_keeper, *m_model, m_table));
    m_table->setAccessibleName(tr("Entries; Enter opens, F2 edits the cell, Delete removes"));
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::ExtendedSelection);
    m_table->setEditTriggers(QAbstractItemView::EditKeyPressed | QAbstractItemView::DoubleClicked);
    m_table->setTabKeyNavigation(false);
    m_table->setShowGrid(false);
    m_table->setWordWrap(false);
    m_table->setMinimumHeight(theme().px(180));
    m_table->verticalHeader()->hide();
    m_table->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    m_table->horizontalHeader()->setStretchLastSection(true);
    m_table->horizontalHeader()->setHighlightSections(false);
    m_table->horizontalHeader()->setSortIndicator(EntriesModel::WhenColumn, Qt::DescendingOrder);
    m_table->setSortingEnabled(true);
    m_table->installEventFilter(this);
    auto* edit = addFootButton(tr("Open"), tr("Enter"), true);
    auto* remove = addFootButton(tr("Remove"), tr("Del"), false);
    connect(edit, &QPushButton::clicked, this, &EntriesPanel::editCurrent);
    connect(remove, &QPushButton::clicked, this, &EntriesPanel::removeSelected);
}

void EntriesPanel::connectAll()
{
    connect(m_filter, &QLineEdit::textChanged, this, &EntriesPanel::applyFilter);
    connect(m_tank, &QComboBox::currentIndexChanged, this, &EntriesPanel::applyFilter);
    connect(m_show, &QComboBox::currentIndexChanged, this, &EntriesPanel::applyFilter);
    connect(m_model, &QAbstractItemModel::modelAboutToBeReset, this,
            [this] { m_hadKeyboard = m_table->isAncestorOf(QApplication::focusWidget()) || m_table->hasFocus(); });
    connect(m_model, &QAbstractItemModel::modelReset, this, [this] {
        restoreSelection();
        refresh();
        // The field of a cell edited in place goes with the old lines; the keyboard stays in the table.
        if (m_hadKeyboard && m_table->isVisible()) {
            m_table->setFocus();
        }
    });
    connect(m_model, &EntriesModel::refused, this, &EntriesPanel::showProblem);
    connect(m_table->selectionModel(), &QItemSelectionModel::selectionChanged, this, [this] {
        if (!m_restoring) {
            m_selected = selected();
        }
        m_bulk->setSelected(static_cast<int>(m_selected.size()));
    });
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex& now) {
        m_currentRow = now.isValid() ? now.row() : m_currentRow;
        m_currentColumn = now.isValid() ? now.column() : m_currentColumn;
    });
    connect(m_bulk, &BulkBar::wanted, this, &EntriesPanel::change);
    connect(m_bulk, &BulkBar::notUnderstood, this, &EntriesPanel::showProblem);
    connect(&m_keeper, &facade::Keeper::storeOpened, this, [this] {
        m_selected.clear();
        fillChoices();
    });
    connect(&theme(), &Theme::changed, this, &EntriesPanel::arrange);
}

void EntriesPanel::arrange()
{
    const QFontMetrics text(fontOf(theme(), TextStyle::Body));
    m_table->verticalHeader()->setDefaultSectionSize(std::max(28, text.height() + theme().px(10)));
    m_table->setMinimumHeight(theme().px(180));
    const auto width = [&](int column, const QString& sample) {
        m_table->setColumnWidth(column, text.horizontalAdvance(sample) + theme().px(20));
    };
    width(EntriesModel::WhenColumn, u"00 Mmm 0000 00:00"_s);
    width(EntriesModel::TankColumn, u"A tank's long name"_s);
    width(EntriesModel::KindColumn, u"Media transferred"_s);
    width(EntriesModel::WhatColumn, u"Carbonate hardness (alk"_s);
    width(EntriesModel::AmountColumn, u"Value or amount 00"_s);
    width(EntriesModel::KitColumn, u"Phosphate drops"_s);
}

void EntriesPanel::fillChoices()
{
    const QSignalBlocker quietTank(m_tank);
    const QSignalBlocker quietShow(m_show);
    const QVariant tank = m_tank->currentData();
    const QVariant show = m_show->currentData();
    m_tank->clear();
    m_tank->addItem(tr("All tanks"), 0);
    for (const record::Tank& it : m_keeper.row().tanks) {
        m_tank->addItem(it.name, it.id.value);
    }
    m_tank->setCurrentIndex(std::max(0, m_tank->findData(tank)));
    m_show->clear();
    m_show->addItem(tr("Everything"), u"all"_s);
    m_show->addItem(tr("All readings"), u"readings"_s);
    for (const record::Parameter& parameter : record::parameters()) {
        m_show->addItem(parameter.name, QVariant(u"reading:"_s + parameter.key));
    }
    m_show->addItem(tr("All entries"), u"entries"_s);
    for (int kind = 0; kind <= static_cast<int>(record::EntryKind::Note); ++kind) {
        const auto it = static_cast<record::EntryKind>(kind);
        m_show->addItem(record::entryKindName(it), u"entry:"_s + record::entryKindCode(it));
    }
    m_show->addItem(tr("Photographs"), u"photos"_s);
    m_show->setCurrentIndex(std::max(0, m_show->findData(show)));
    m_bulk->fillChoices();
}

void EntriesPanel::applyFilter()
{
    EntriesFilter filter;
    filter.tank.value = m_tank->currentData().toLongLong();
    filter.text = m_filter->text();
    const QString show = m_show->currentData().toString();
    filter.show = show.startsWith(u"reading"_s)  ? EntriesFilter::Show::Readings
                  : show.startsWith(u"entr"_s)   ? EntriesFilter::Show::Entries
                  : show.startsWith(u"photos"_s) ? EntriesFilter::Show::Photos
                                                 : EntriesFilter::Show::Everything;
    filter.parameter = show.startsWith(u"reading:"_s) ? show.section(u':', 1) : QString();
    filter.entryKind = record::entryKindFromCode(show.startsWith(u"entry:"_s) ? show.section(u':', 1) : QString());
    m_table->setColumnHidden(EntriesModel::TankColumn, static_cast<bool>(filter.tank));
    const record::Tank* tank = m_keeper.row().tank(filter.tank);
    setTitle(tank == nullptr ? tr("Entries of the whole row") : tr("Entries of %1").arg(tank->name));
    m_model->setFilter(filter);
}

void EntriesPanel::setTank(record::TankId tank)
{
    fillChoices();
    m_tank->setCurrentIndex(std::max(0, m_tank->findData(tank.value)));
    applyFilter();
}

void EntriesPanel::refresh()
{
    const int rows = m_model->rowCount();
    m_empty->setVisible(rows == 0);
    m_table->setVisible(rows > 0);
    m_bulk->setVisible(rows > 0);
    m_empty->setText(m_model->allCount() == 0
                         ? tr("Nothing of this is recorded yet. New entry (Ctrl+E) writes the first.")
                         : tr("Nothing matches that text."));
    const QString shown = QLocale().toString(rows);
    m_count->setText(rows == m_model->allCount()
                         ? tr("%1 lines").arg(shown)
                         : tr("%1 of %2 lines").arg(shown, QLocale().toString(m_model->allCount())));
}

/// What was selected is selected again wherever it went; the keyboard stays on its line, or where that line was.
void EntriesPanel::restoreSelection()
{
    m_restoring = true;
    QItemSelection again;
    std::vector<facade::DatedRef> kept;
    if (!m_selected.empty() && m_selected.size() <= kMostKept) {
        QSet<qint64> wanted;
        for (const facade::DatedRef& record : m_selected) {
            wanted.insert(std::visit([](auto id) { return id.value; }, record));
        }
        for (const int row : m_model->rowsOf(wanted)) {
            again.select(m_model->index(row, 0), m_model->index(row, EntriesModel::ColumnCount - 1));
            kept.push_back(m_model->refAt(row));
        }
    }
    const int rows = m_model->rowCount();
    const int current = again.isEmpty() ? std::min(m_currentRow, rows - 1) : again.front().top();
    if (rows > 0) {
        const QModelIndex index = m_model->index(std::max(0, current), m_currentColumn);
        if (again.isEmpty()) {
            again.select(index.siblingAtColumn(0), index.siblingAtColumn(EntriesModel::ColumnCount - 1));
            kept = {m_model->refAt(index.row())};
        }
        m_table->selectionModel()->setCurrentIndex(index, QItemSelectionModel::NoUpdate);
        m_table->selectionModel()->select(again, QItemSelectionModel::ClearAndSelect);
    }
    m_selected = std::move(kept);
    m_bulk->setSelected(static_cast<int>(m_selected.size()));
    m_restoring = false;
}

std::vector<facade::DatedRef> EntriesPanel::selected() const
{
    std::vector<facade::DatedRef> records;
    for (const QItemSelectionRange& range : m_table->selectionModel()->selection()) {
        for (int row = range.top(); row <= range.bottom(); ++row) {
            records.push_back(m_model->refAt(row));
        }
    }
    return records;
}

void EntriesPanel::editCurrent()
{
    const int row = m_table->currentIndex().row();
    if (const record::EntryId entry = m_model->entryAt(row)) {
        emit entryWanted(entry);
    } else if (const record::ReadingId reading = m_model->readingAt(row)) {
        emit readingWanted(reading);
    } else if (const record::PhotoId photo = m_model->photoAt(row)) {
        emit photoWanted(m_model->tankAt(row), photo);
    }
}

void EntriesPanel::change(const facade::BulkChange& change)
{
    if (m_selected.empty() || m_keeper.isReadOnly()) {
        return;
    }
    const std::vector<facade::DatedRef> records = m_selected;
    const auto outcome = facade::changeAll(m_keeper, records, change);
    if (!outcome) {
        showProblem(QString::fromStdString(outcome.error().sentence()));
        return;
    }
    clearProblem();
    if (outcome->changed == 0) {
        showProblem(tr("None of the selected records can be changed that way."));
        return;
    }
    emit saved(outcome->left == 0 ? tr("Done: %1").arg(outcome->label)
                                  : tr("Done: %1; %n left as they were", nullptr, outcome->left).arg(outcome->label));
}

void EntriesPanel::removeSelected()
{
    const int row = m_table->currentIndex().row();
    if (m_selected.empty() || m_keeper.isReadOnly()) {
        return;
    }
    const QString one = m_selected.size() == 1 ? m_model->textAt(row) : QString();
    const std::vector<facade::DatedRef> records = m_selected;
    if (one.isEmpty()) {
        facade::BulkChange removal;
        removal.remove = true;
        change(removal);
    } else {
        store::Edit edit(tr("remove: %1").arg(one));
        std::visit([&](auto id) { edit.remove(id); }, records.front());
        if (const auto done = m_keeper.commit(edit); !done) {
            showProblem(QString::fromStdString(done.error().sentence()));
            return;
        }
        clearProblem();
        emit saved(tr("Removed: %1").arg(one));
    }
    m_table->setFocus();
}

bool EntriesPanel::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_table && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Delete || key == Qt::Key_Backspace) {
            removeSelected();
            return true;
        }
        if (key == Qt::Key_Return || key == Qt::Key_Enter) {
            editCurrent();
            return true;
        }
    }
    return SidePanel::eventFilter(watched, event);
}

void EntriesPanel::showEvent(QShowEvent* event)
{
    m_model->setActive(true);
    SidePanel::showEvent(event);
}

void EntriesPanel::hideEvent(QHideEvent* event)
{
    m_model->setActive(false);
    SidePanel::hideEvent(event);
}

} // namespace littoral::ui
