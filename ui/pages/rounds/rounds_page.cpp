// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/rounds/rounds_page.h"

#include "core/wording/numbers.h"
#include "ui/models/day_words.h"
#include "ui/models/round_timers.h"
#include "ui/pages/rounds/cell_panel.h"
#include "ui/pages/rounds/round_paper.h"
#include "ui/pages/rounds/rounds_grid.h"
#include "ui/pages/rounds/seen_row.h"
#include "ui/pages/rounds/timer_strip.h"
#include "ui/pages/rounds/work_panel.h"
#include "ui/style/segmented.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/key_strip.h"
#include "ui/widgets/moment_edit.h"

#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QListView>
#include <QPainter>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <algorithm>

namespace littoral::ui {

RoundsPage::RoundsPage(facade::Keeper& keeper, facade::Forecasts& forecasts, Theme& theme, Ask& ask, QWidget* parent)
    : QWidget(parent)
    , m_keeper(keeper)
    , m_theme(theme)
    , m_ask(ask)
    , m_model(new RoundsModel(keeper, &forecasts, this))
    , m_grid(new RoundsGrid(theme, keeper, *m_model))
    , m_cell(new CellPanel(theme, keeper, forecasts, *m_model))
    , m_seen(new SeenRow(theme, keeper, ask))
    , m_work(new WorkPanel(theme, keeper))
    , m_timers(new RoundTimers(keeper, this))
    , m_strip(new TimerStrip(theme, *m_timers))
    , m_readAt(new MomentEdit(keeper.clock(), true))
    , m_title(new Text(theme, TextStyle::Name))
    , m_progress(new Text(theme, TextStyle::Body))
    , m_empty(new Text(theme, TextStyle::Body,
                       tr("No tank is running yet. Once one is flooded, its readings are typed here, one row a tank.")))
    , m_bar(new QProgressBar)
    , m_columns(new QBoxLayout(QBoxLayout::LeftToRight))
{
    setAccessibleName(tr("Rounds"));
    auto* gridCard = new QFrame;
    gridCard->setProperty("card", true);
    gridCard->setFrameShape(QFrame::StyledPanel);
    auto* gridBox = new QVBoxLayout(gridCard);
    gridBox->setContentsMargins(1, 1, 1, 1);
    gridBox->addWidget(m_grid);
    m_empty->setWordWrap(true);
    m_empty->setContentsMargins(14, 14, 14, 14);
    gridBox->addWidget(m_empty);

    auto* left = new QVBoxLayout;
    left->setSpacing(12);
    left->addWidget(gridCard);
    left->addWidget(m_strip);
    left->addWidget(m_cell, 1);
    left->addWidget(m_seen);
    m_columns->setContentsMargins(14, 12, 14, 12);
    m_columns->setSpacing(14);
    m_columns->addLayout(left, 1);
    m_columns->addWidget(m_work);
    auto* inside = new QWidget;
    inside->setLayout(m_columns);
    auto* scroll = new QScrollArea;
    scroll->setWidget(inside);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);

    m_pageBar = makeBar();
    m_foot = makeFoot();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_pageBar);
    column->addWidget(scroll, 1);
    column->addWidget(m_foot);
    connectAll();
    refreshTitle();
    refreshProgress();
    m_cell->showCell({}, m_grid->order());
    showSheetTime();
}

QWidget* RoundsPage::makeBar()
{
    auto* bar = new QWidget;
    bar->setAccessibleName(tr("Bar of the Rounds page"));
    auto* flow = new FlowLayout(bar, 12);
    flow->setContentsMargins(14, 7, 14, 7);
    auto* which = new SegmentedControl(tr("Parameters shown"), {tr("Usual and due"), tr("All parameters")});
    auto* order = new QComboBox;
    order->addItem(tr("Along the row"));
    order->addItem(tr("By kit"));
    order->setAccessibleName(tr("Order of the due cells"));
    order->setToolTip(tr(
        "Along the row: one tank after another. By kit: one parameter through all tanks, so a bottle is opened once."));
    m_readAt->setAccessibleName(tr("Read at: time of the whole round"));
    m_readAt->setMaximumWidth(m_theme.px(150));
    m_bar->setTextVisible(false);
    m_bar->setAccessibleName(tr("Progress of the round"));
    m_bar->setFixedWidth(m_theme.px(110));
    m_progress->setToken(Token::Ink2);
    flow->addWidget(m_title);
    flow->addWidget(which);
    flow->addWidget(new Text(m_theme, TextStyle::Body, tr("Order")));
    flow->addWidget(order);
    m_readAtBox = new QWidget;
    auto* readAt = new QHBoxLayout(m_readAtBox);
    readAt->setContentsMargins(0, 0, 0, 0);
    readAt->setSpacing(8);
    readAt->addWidget(new Text(m_theme, TextStyle::Body, tr("Read at")));
    readAt->addWidget(m_readAt);
    flow->addWidget(m_readAtBox);
    makeSheetFields(bar);
    flow->addWidget(m_sheet);
    flow->addWidget(m_sheetBox);
    auto* progress = new QWidget;
    auto* together = new QHBoxLayout(progress);
    together->setContentsMargins(0, 0, 0, 0);
    together->setSpacing(10);
    together->addWidget(m_progress);
    together->addWidget(m_bar);
    flow->addWidget(progress);
    connect(which, &SegmentedControl::chosen, this, [this](int index) { m_model->setAllParameters(index == 1); });
    connect(order, &QComboBox::currentIndexChanged, this, [this](int index) {
        m_grid->setOrder(index == 1 ? RoundsModel::Order::ByKit : RoundsModel::Order::AlongRow);
        m_cell->showCell(m_grid->currentIndex(), m_grid->order());
    });
    connect(m_readAt, &MomentEdit::momentChanged, this, &RoundsPage::readAtChanged);
    connect(&m_theme, &Theme::changed, this, [this] {
        m_bar->setFixedWidth(m_theme.px(110));
        m_readAt->setMaximumWidth(m_theme.px(150));
        arrange();
    });
    return bar;
}

QWidget* RoundsPage::makeFoot()
{
    auto* foot = new QWidget;
    auto* line = new QHBoxLayout(foot);
    line->setContentsMargins(14, 7, 14, 7);
    line->setSpacing(12);
    line->addWidget(new KeyStrip(m_theme, {{tr("Enter"), tr("next due cell")},
                                           {tr("Tab"), tr("next column")},
                                           {tr("↑ ↓"), tr("kit step")},
                                           {tr("<"), tr("below the lowest step")},
                                           {tr("/"), tr("between two steps")},
                                           {tr("Space"), tr("tick a task")},
                                           {tr("Ctrl Z"), tr("undo")}}),
                    1);
    m_savedNote = new Text(m_theme, TextStyle::Secondary, tr("Every cell is saved as you leave it"));
    line->addWidget(m_savedNote);
    auto* done = new QPushButton(tr("Finish round"));
    done->setProperty("primary", true);
    done->setProperty("keyHint", tr("Ctrl Enter"));
    done->setAccessibleName(tr("Finish the round and go to Lanes"));
    line->addWidget(done);
    connect(done, &QPushButton::clicked, this, &RoundsPage::finish);
    auto* key = new QAction(tr("Finish round"), this);
    key->setShortcuts({QKeySequence(Qt::CTRL | Qt::Key_Return), QKeySequence(Qt::CTRL | Qt::Key_Enter)});
    key->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    addAction(key);
    connect(key, &QAction::triggered, this, &RoundsPage::finish);
    return foot;
}

void RoundsPage::connectAll()
{
    connect(m_grid, &RoundsGrid::cellChanged, this, [this](const QModelIndex& cell) {
        m_cell->showCell(cell, m_grid->order());
        m_seen->setTank(m_model->tank(cell.row()));
        showSheetTime();
        showTimerButton();
        if (cell.isValid()) {
            emit selected(m_model->tank(cell.row()));
        }
    });
    connect(m_grid, &RoundsGrid::typing, m_cell, &CellPanel::showTyping);
    connect(m_grid, &RoundsGrid::nothingLeft, this,
            [this] { emit told(tr("Every due cell of this round is filled")); });
    connect(m_cell, &CellPanel::stepChosen, m_grid, &RoundsGrid::takeStep);
    connect(m_cell, &CellPanel::keep, m_grid, &RoundsGrid::keepAndGoOn);
    connect(m_cell, &CellPanel::timerWanted, this, &RoundsPage::startTimer);
    connect(m_strip, &TimerStrip::cellWanted, this, &RoundsPage::goToCell);
    connect(m_timers, &RoundTimers::ready, this, &RoundsPage::told);
    connect(m_timers, &RoundTimers::changed, this, &RoundsPage::showTimerButton);
    connect(m_seen, &SeenRow::photosWanted, this, &RoundsPage::photosWanted);
    connect(m_model, &RoundsModel::progressChanged, this, [this] {
        refreshTitle();
        refreshProgress();
        if (m_grid->openCell() == nullptr) {
            m_cell->showCell(m_grid->currentIndex(), m_grid->order());
        }
        m_seen->setTank(m_model->tank(m_grid->currentIndex().row()));
    });
    connect(m_model, &RoundsModel::writeFailed, this, [this](const Error& error) {
        emit failed(error, tr("What you typed is still in its cell; earlier cells are saved."));
    });
    connect(m_work, &WorkPanel::progressChanged, this, &RoundsPage::refreshProgress);
    connect(m_work, &WorkPanel::writeFailed, this,
            [this](const Error& error) { emit failed(error, tr("The task stays open.")); });
    connect(m_seen, &SeenRow::written, this, &RoundsPage::told);
    connect(m_seen, &SeenRow::failed, this,
            [this](const Error& error) { emit failed(error, tr("What you typed is still in the fields.")); });
}

void RoundsPage::refreshTitle()
{
    m_title->setText(tr("Round of %1").arg(wording::weekdayText(m_model->day(), m_model->day())));
    const bool any = m_model->rowCount() > 0;
    m_grid->setVisible(any);
    m_empty->setVisible(!any);
    m_grid->updateGeometry();
}

QString RoundsPage::progressText() const
{
    const RoundsModel::Progress readings = m_model->progress();
    const WorkModel::Progress tasks = m_work->model().progress();
    return tr("%1 of %2 readings, %3 of %4 tasks").arg(readings.done).arg(readings.all).arg(tasks.done).arg(tasks.all);
}

void RoundsPage::refreshProgress()
{
    const RoundsModel::Progress readings = m_model->progress();
    const WorkModel::Progress tasks = m_work->model().progress();
    m_progress->setText(progressText());
    m_bar->setRange(0, std::max(1, readings.all + tasks.all));
    m_bar->setValue(readings.done + tasks.done);
    m_bar->setAccessibleDescription(m_progress->text());
}

void RoundsPage::readAtChanged()
{
    const record::Moment at = m_readAt->moment();
    const bool understood = at.isValid();
    m_readAt->setAccessibleDescription(understood ? QString() : tr("Not understood; now is taken"));
    QPalette colours = palette();
    if (!understood) {
        colours.setColor(QPalette::Text, m_theme[Token::Act]);
    }
    m_readAt->setPalette(colours);
    const std::optional<record::Moment> fixed = m_readAt->isNow() || !understood ? std::nullopt : std::optional(at);
    m_model->setReadAt(fixed);
    showSheetTime();
}

void RoundsPage::setSelected(record::TankId tank)
{
    const int row = m_model->rowOf(tank);
    const QModelIndex now = m_grid->currentIndex();
    if (row >= 0 && row != now.row()) {
        m_grid->setCurrentIndex(m_model->index(row, std::max(0, now.column())));
    }
}

void RoundsPage::begin()
{
    m_model->refresh();
    m_work->model().refresh();
    m_grid->goToFirstDue();
}

void RoundsPage::settle()
{
    m_grid->leaveCell();
}

void RoundsPage::print(PaperTo to)
{
    settle();
    const PaperJob job = roundPaper(*m_model, m_work->model(), m_grid->order());
    const QString proposed = tr("round sheet %1", "file name").arg(m_model->day().toString(Qt::ISODate));
    const auto done = putOnPaper(m_ask, this, job, proposed, to);
    if (done && *done) {
        emit told(**done);
    } else if (done) {
        emit failed(done->error(), tr("The round is as it was."));
    }
}

void RoundsPage::finish()
{
    settle();
    emit finished(tr("Round finished: %1").arg(progressText()));
}

QString RoundsPage::focusedTopic() const
{
    const QWidget* focus = focusWidget();
    if (focus != nullptr && focus == m_work->list()) {
        const care::DueItem* item = m_work->model().item(m_work->list()->currentIndex());
        return item == nullptr ? QString() : item->templateKey;
    }
    if (focus != nullptr && m_seen->isAncestorOf(focus)) {
        return m_seen->subject();
    }
    const QModelIndex cell = m_grid->currentIndex();
    const record::Parameter* parameter = cell.isValid() ? m_model->parameter(cell.column()) : nullptr;
    return parameter == nullptr ? QString() : parameter->key;
}

QList<QWidget*> RoundsPage::regions() const
{
    return {m_pageBar, m_grid, m_seen, m_work->list(), m_foot};
}

void RoundsPage::arrange()
{
    // Beside each other while the grid keeps a useful width, else the work goes below.
    m_savedNote->setVisible(width() >= m_theme.px(760));
    const bool wide = width() >= m_theme.px(1040);
    m_columns->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_work->setMinimumWidth(wide ? m_theme.px(300) : 0);
    m_work->setMaximumWidth(wide ? m_theme.px(340) : QWIDGETSIZE_MAX);
}

void RoundsPage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    arrange();
}

void RoundsPage::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme[Token::Window]);
    for (const QWidget* strip : {m_pageBar, m_foot}) {
        painter.fillRect(strip->geometry(), m_theme[Token::Sunk]);
    }
    painter.fillRect(QRect(0, m_pageBar->geometry().bottom(), width(), 1), m_theme[Token::Rule]);
    painter.fillRect(QRect(0, m_foot->geometry().top(), width(), 1), m_theme[Token::Rule2]);
}

} // namespace littoral::ui
