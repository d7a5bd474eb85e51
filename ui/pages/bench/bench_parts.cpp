// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of the bench: bar, list, columns, keys, and where the cards stand.
#include "ui/models/bench_list.h"
#include "ui/pages/bench/bench_page.h"
#include "ui/pages/bench/sheet_list.h"
#include "ui/widgets/flow_layout.h"

#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>
#include <algorithm>

namespace littoral::ui {

namespace {

constexpr int kMostColumns = 3;
constexpr int kGap = 12;

} // namespace

QWidget* BenchPage::makeBar()
{
    auto* bar = new QWidget;
    bar->setAccessibleName(tr("Bar of the Bench page"));
    auto* flow = new FlowLayout(bar, 12);
    flow->setContentsMargins(14, 7, 14, 7);
    flow->addWidget(new Text(m_theme, TextStyle::Name, tr("Bench")));
    const auto choice = [&](const QString& label, QComboBox* combo) {
        auto* box = new QWidget;
        auto* line = new QHBoxLayout(box);
        line->setContentsMargins(0, 0, 0, 0);
        line->setSpacing(8);
        auto* text = new Text(m_theme, TextStyle::Body, label);
        text->setToken(Token::Ink2);
        text->setBuddy(combo);
        combo->setAccessibleName(label);
        combo->setSizeAdjustPolicy(QComboBox::AdjustToContents);
        line->addWidget(text);
        line->addWidget(combo);
        flow->addWidget(box);
    };
    choice(tr("Values from"), m_tankChoice);
    choice(tr("Source water"), m_sourceChoice);
    m_working->setChecked(true);
    m_print->setProperty("keyHint", tr("Ctrl P"));
    m_print->setAccessibleName(tr("Print the sheets shown to a PDF file"));
    flow->addWidget(m_working);
    flow->addWidget(m_print);
    connect(m_tankChoice, &QComboBox::activated, this,
            [this](int index) { emit selected(record::TankId{m_tankChoice->itemData(index).toLongLong()}); });
    connect(m_sourceChoice, &QComboBox::activated, this, [this](int index) {
        m_source = record::SourceWaterId{m_sourceChoice->itemData(index).toLongLong()};
        refreshFront();
    });
    connect(m_working, &QCheckBox::toggled, this, [this](bool on) {
        m_memory.showsWorking = on;
        m_saveSoon.start();
        refresh();
    });
    connect(m_print, &QPushButton::clicked, this, [this] { print(); });
    return bar;
}

QWidget* BenchPage::makeList()
{
    auto* panel = new QWidget;
    panel->setAccessibleName(tr("Worksheets"));
    auto* column = new QVBoxLayout(panel);
    column->setContentsMargins(0, 10, 0, 10);
    column->setSpacing(6);
    auto* top = new QVBoxLayout;
    top->setContentsMargins(12, 0, 12, 0);
    m_filter->setPlaceholderText(tr("Filter"));
    m_filter->setAccessibleName(tr("Filter the worksheets: beginnings of words"));
    m_filter->setClearButtonEnabled(true);
    m_filter->installEventFilter(this);
    top->addWidget(m_filter);
    top->addWidget(m_found->wrapped());
    column->addLayout(top);
    column->addWidget(m_list, 1);
    auto* hint = (new Text(m_theme, TextStyle::Secondary,
                           tr("Type a sheet with its values in the field above (Ctrl K), such as co2 6.6 4")))
                     ->wrapped();
    hint->setContentsMargins(12, 0, 12, 0);
    column->addWidget(hint);
    m_found->hide();
    connect(m_filter, &QLineEdit::textChanged, this, [this](const QString& text) {
        m_model->filter(text);
        m_list->showSheet(m_memory.inFront);
        m_found->setText(tr("No sheet has these words. Try the beginning of one of them."));
        m_found->setVisible(m_model->sheetCount() == 0);
    });
    connect(m_filter, &QLineEdit::returnPressed, this, [this] {
        if (const int first = m_model->firstSheet(); first >= 0) {
            open(m_model->index(first).data(BenchListModel::KeyRole).toString());
        }
    });
    connect(m_list, &SheetList::chosen, this, [this](const QString& key) {
        m_memory.inFront = key;
        m_saveSoon.start();
        m_scroll->verticalScrollBar()->setValue(0);
        refreshFront();
    });
    connect(m_list, &SheetList::entered, this, [this](const QString& key) { open(key); });
    return panel;
}

void BenchPage::makeColumns()
{
    auto* host = new QWidget;
    m_columns = new QHBoxLayout(host);
    m_columns->setContentsMargins(kGap, kGap, kGap, kGap);
    m_columns->setSpacing(kGap);
    for (int i = 0; i < kMostColumns; ++i) {
        auto* box = new QWidget;
        auto* column = new QVBoxLayout(box);
        column->setContentsMargins(0, 0, 0, 0);
        column->setSpacing(kGap);
        m_columns->addWidget(box, i == 0 ? 4 : 3);
        m_columnBoxes.push_back(box);
    }
    host->setAutoFillBackground(false);
    m_scroll->setWidget(host);
    m_scroll->setWidgetResizable(true);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setAccessibleName(tr("Sheets"));
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->viewport()->setAutoFillBackground(false);
}

void BenchPage::makeKeys()
{
    const auto key = [this](const QString& text, const QKeySequence& keys, auto run) {
        auto* action = new QAction(text, this);
        action->setShortcut(keys);
        action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
        connect(action, &QAction::triggered, this, run);
        addAction(action);
    };
    key(tr("Pin this sheet"), QKeySequence(Qt::Key_P), [this] { pinFront(); });
    key(tr("Print"), QKeySequence(Qt::CTRL | Qt::Key_P), [this] { print(); });
    key(tr("Charts as tables"), QKeySequence(Qt::Key_T), [this] { toggleTable(); });
    key(tr("Filter"), QKeySequence(Qt::CTRL | Qt::Key_F), [this] {
        m_filter->setFocus(Qt::ShortcutFocusReason);
        m_filter->selectAll();
    });
    key(tr("Write to the record"), QKeySequence(Qt::Key_W), [this] {
        int pin = 0;
        SheetCard* card = cardAtHand(pin);
        if (card != nullptr && !card->actionButtons().empty()) {
            card->actionButtons().front()->click();
        }
    });
    key(tr("Make it a task"), QKeySequence(Qt::Key_M), [this] {
        int pin = 0;
        SheetCard* card = cardAtHand(pin);
        if (card != nullptr && card->taskButton()->isVisible()) {
            card->taskButton()->click();
        }
    });
}

void BenchPage::arrange()
{
    m_listPanel->setFixedWidth(std::min(m_theme.px(228), width() * 35 / 100));
    const int room = width() - m_listPanel->width();
    const int columns = room >= m_theme.px(1440) ? 3 : room >= m_theme.px(860) ? 2 : 1;
    if (columns != m_columnCount) {
        m_columnCount = columns;
        place();
    }
}

void BenchPage::place()
{
    const int columns = std::max(1, m_columnCount);
    std::vector<QVBoxLayout*> layouts;
    for (QWidget* box : m_columnBoxes) {
        auto* layout = static_cast<QVBoxLayout*>(box->layout());
        while (QLayoutItem* item = layout->takeAt(0)) {
            delete item;
        }
        layouts.push_back(layout);
    }
    layouts[0]->addWidget(m_front);
    layouts[0]->addWidget(m_plan);
    // The newest pin stands highest; the emptiest column takes the next.
    std::vector<int> taken(static_cast<std::size_t>(columns), 0);
    taken[0] = columns == 1 ? 0 : static_cast<int>(m_pinned.size()) + 1;
    for (auto it = m_pinned.rbegin(); it != m_pinned.rend(); ++it) {
        const auto emptiest = static_cast<std::size_t>(std::ranges::min_element(taken) - taken.begin());
        layouts[emptiest]->addWidget(it->card);
        it->card->show();
        ++taken[emptiest];
    }
    for (std::size_t i = 0; i < layouts.size(); ++i) {
        const bool used = i == 0 || layouts[i]->count() > 0;
        layouts[i]->addStretch(1);
        m_columnBoxes[i]->setVisible(used);
    }
}

} // namespace littoral::ui
