// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/main_window.h"

#include "ui/frame/panels.h"
#include "ui/frame/rail.h"
#include "ui/frame/regions.h"
#include "ui/frame/status_line.h"
#include "ui/frame/store_desk.h"
#include "ui/frame/top_bar.h"
#include "ui/models/bench_offers.h"
#include "ui/models/guide_sheets.h"
#include "ui/pages/bench/bench_page.h"
#include "ui/pages/cycle/cycle_page.h"
#include "ui/pages/first_run/first_run_page.h"
#include "ui/pages/guide/guide_page.h"
#include "ui/pages/history/history_page.h"
#include "ui/pages/lanes/lanes_page.h"
#include "ui/pages/rounds/rounds_page.h"
#include "ui/pages/rounds/seen_row.h"
#include "ui/pages/stock/stock_page.h"
#include "ui/pages/trends/trends_page.h"
#include "ui/widgets/find_field.h"
#include "ui/widgets/lanes/lane_view.h"
#include "ui/widgets/notice_strip.h"
#include "ui/widgets/quiet_fields.h"

#include <QApplication>
#include <QCloseEvent>
#include <QFileInfo>
#include <QListView>
#include <QMenu>
#include <QPainter>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace littoral::ui {

namespace {
constexpr int kForecastDelayMs = 400; // typing a round asks for one run, not for one a cell
constexpr int kMinuteMs = 60'000;
} // namespace

MainWindow::MainWindow(facade::Keeper& keeper, facade::Forecasts& forecasts, Theme& theme, Ask& ask, QWidget* parent)
    : QWidget(parent)
    , m_keeper(keeper)
    , m_forecasts(forecasts)
    , m_theme(theme)
    , m_ask(ask)
    , m_tray(this)
    , m_reminder(keeper, m_session, m_tray)
    , m_actions(new ActionRegistry(this))
    , m_find(new FindModel(keeper, this))
    , m_desk(new StoreDesk(keeper, ask, m_session, this))
    , m_top(new TopBar(theme, *m_find))
    , m_rail(new Rail(theme, keeper, forecasts))
    , m_banner(new NoticeStrip(theme))
    , m_error(new NoticeStrip(theme))
    , m_stack(new QStackedWidget)
    , m_firstRun(new FirstRunPage(keeper, theme))
    , m_lanes(new LanesPage(keeper, forecasts, theme))
    , m_trends(new TrendsPage(keeper, forecasts, theme, ask, m_lanes->axis()))
    , m_cycle(new CyclePage(keeper, forecasts, theme, m_lanes->axis()))
    , m_history(new HistoryPage(keeper, theme, ask, m_lanes->axis()))
    , m_rounds(new RoundsPage(keeper, forecasts, theme, ask))
    , m_stock(new StockPage(keeper, forecasts, theme))
    , m_bench(new BenchPage(keeper, theme, ask))
    , m_guide(new GuidePage(keeper, theme))
    , m_panels(new Panels(keeper, theme, *m_guide, *m_actions, ask, this))
    , m_status(new StatusLine(theme, keeper))
    , m_menu(new QMenu(this))
    , m_unitsMenu(new QMenu(this))
{
    setWindowTitle(tr("Littoral"));
    setMinimumSize(1024, 680);
    qApp->installEventFilter(new QuietFields(this));
    assemble();
    makePageActions();
    makeTrendsActions();
    makeCycleActions();
    makeRowActions();
    makeEditActions();
    makeStoreActions();
    makePaperActions();
    makeLookActions();
    makeLanguageActions();
    makeUnitActions();
    makeUnitsMenu();
    makeReminderActions();
    makeMenu();
    connectStore();
    connectPages();
    if (!restoreGeometry(m_session.geometry())) {
        resize(1600, 1000);
    }
    storeChanged();
}

MainWindow::~MainWindow() = default;

void MainWindow::assemble()
{
    addPage(Page::Lanes, tr("Lanes"));
    addPage(Page::Trends, tr("Trends"));
    addPage(Page::Cycle, tr("Cycle"));
    addPage(Page::History, tr("History"));
    addPage(Page::Rounds, tr("Rounds"));
    addPage(Page::Stock, tr("Stock"));
    addPage(Page::Bench, tr("Bench"));
    addPage(Page::Guide, tr("Guide"));
    m_stack->addWidget(m_firstRun);
    m_stack->addWidget(m_lanes);
    m_stack->addWidget(m_trends);
    m_stack->addWidget(m_cycle);
    m_stack->addWidget(m_history);
    m_stack->addWidget(m_rounds);
    m_stack->addWidget(m_stock);
    m_stack->addWidget(m_bench);
    m_stack->addWidget(m_guide);
    m_stack->setAccessibleName(tr("Page"));
    auto* middle = new QHBoxLayout;
    middle->setSpacing(0);
    middle->addWidget(m_stack, 1);
    middle->addWidget(m_panels->host());
    auto* right = new QVBoxLayout;
    right->setSpacing(0);
    right->addWidget(m_banner);
    right->addWidget(m_error);
    right->addLayout(middle, 1);
    auto* lower = new QHBoxLayout;
    lower->setSpacing(0);
    lower->addWidget(m_rail);
    lower->addLayout(right, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_top);
    column->addLayout(lower, 1);
    column->addWidget(m_status);
    m_banner->setStanding(true);
}

/// The key follows from the place in the bar.
void MainWindow::addPage(Page page, const QString& name)
{
    m_top->addPage(name, QString::number(static_cast<int>(page) + 1));
}

void MainWindow::connectStore()
{
    connect(&m_keeper, &facade::Keeper::storeOpened, this, &MainWindow::storeChanged);
    connect(&m_keeper, &facade::Keeper::storeClosed, this, &MainWindow::storeChanged);
    connect(&m_keeper, &facade::Keeper::changed, this, [this] {
        refreshActions();
        refreshPages();
        m_forecastSoon.start(kForecastDelayMs);
    });
    connect(m_desk, &StoreDesk::told, this, &MainWindow::tell);
    connect(m_desk, &StoreDesk::failed, this, &MainWindow::fail);
    connect(m_desk, &StoreDesk::problems, m_error, &NoticeStrip::showProblems);
    connect(m_desk, &StoreDesk::backedUp, m_status, &StatusLine::setLastBackup);
    connect(m_desk, &StoreDesk::tankAdded, this, [this](record::TankId tank) {
        m_firstRun->clearFields();
        select(tank);
        showPage(Page::Lanes);
    });
    m_forecastSoon.setSingleShot(true);
    connect(&m_forecastSoon, &QTimer::timeout, &m_forecasts, &facade::Forecasts::refresh);
    // A window left open over midnight, and a store another program writes to, come up to date by themselves.
    connect(&m_reminder, &Reminder::told, this, &MainWindow::tell);
    connect(&m_minute, &QTimer::timeout, this, [this] {
        m_keeper.refreshIfChangedOutside();
        m_reminder.check();
        if (!m_rounds->model().isSheet() && m_rounds->model().day() != m_keeper.clock().today()) {
            m_rail->model().refresh();
            m_rounds->model().refresh();
            m_status->refresh();
        }
    });
    m_minute.start(kMinuteMs);
}

void MainWindow::connectPages()
{
    connect(m_top, &TopBar::pageChosen, this, [this](int page) { showPage(static_cast<Page>(page)); });
    connect(m_top, &TopBar::newEntry, m_actions->action(QStringLiteral("entry.new")), &QAction::trigger);
    connect(m_top, &TopBar::menuWanted, m_actions->action(QStringLiteral("menu")), &QAction::trigger);
    connect(m_rail, &Rail::selectedChanged, this, &MainWindow::select);
    connect(m_rail, &Rail::opened, m_panels, &Panels::editLayout);
    connect(m_rail, &Rail::addWanted, m_panels, &Panels::addTank);
    connect(&m_rail->model(), &TanksModel::shownChanged, this, [this] { m_lanes->setShown(m_rail->model().shown()); });
    connect(m_lanes, &LanesPage::selected, this, &MainWindow::select);
    connect(m_lanes, &LanesPage::told, this, &MainWindow::tell);
    connect(m_lanes, &LanesPage::failed, this, &MainWindow::fail);
    connect(m_lanes, &LanesPage::entryOpenWanted, m_panels, &Panels::editEntry);
    connect(m_lanes, &LanesPage::readingOpenWanted, m_panels, &Panels::editReading);
    connect(m_lanes, &LanesPage::layoutOpenWanted, m_panels, &Panels::editLayout);
    connect(m_lanes, &LanesPage::workOpenWanted, this, &MainWindow::openWork);
    connect(m_lanes, &LanesPage::waterChangeWanted, this, [this](record::TankId tank, record::LayoutId) {
        m_panels->newEntry(tank, record::EntryKind::WaterChange);
    });
    connect(m_firstRun, &FirstRunPage::sampleWanted, m_desk, &StoreDesk::openSample);
    connect(m_firstRun, &FirstRunPage::csvWanted, m_desk, &StoreDesk::askImport);
    connect(m_firstRun, &FirstRunPage::tankGiven, m_desk, &StoreDesk::addFirstTank);
    connect(m_trends, &TrendsPage::told, this, &MainWindow::tell);
    connect(m_trends, &TrendsPage::failed, this, &MainWindow::fail);
    connect(m_trends, &TrendsPage::readingOpenWanted, m_panels, &Panels::editReading);
    connect(m_trends, &TrendsPage::roundsWanted, this, [this] { showPage(Page::Rounds); });
    connect(m_cycle, &CyclePage::told, this, &MainWindow::tell);
    connect(m_cycle, &CyclePage::failed, this, &MainWindow::fail);
    connect(m_cycle, &CyclePage::readingOpenWanted, m_panels, &Panels::editReading);
    connect(m_cycle, &CyclePage::stateChanged, this, &MainWindow::refreshActions);
    connectHistory();
    connect(m_rounds, &RoundsPage::selected, this, &MainWindow::select);
    connect(m_rounds, &RoundsPage::told, this, &MainWindow::tell);
    connect(m_rounds, &RoundsPage::failed, this, &MainWindow::fail);
    connectRounds();
    connect(m_rounds, &RoundsPage::finished, this, [this](const QString& sentence) {
        showPage(Page::Lanes);
        tell(sentence);
    });
    connect(m_stock, &StockPage::told, this, &MainWindow::tell);
    connect(m_stock, &StockPage::failed, this, &MainWindow::fail);
    connect(m_stock, &StockPage::entryOpenWanted, m_panels, &Panels::editEntry);
    connect(m_stock, &StockPage::newEntryWanted, m_panels, qOverload<const record::Entry&>(&Panels::newEntry));
    connectBench();
    connectGuide();
    connect(m_panels, &Panels::tankAdded, this, &MainWindow::select);
    connect(m_panels->host(), &PanelHost::told, this, &MainWindow::tell);
    connect(m_panels->host(), &PanelHost::openChanged, this, &MainWindow::arrange);
    connect(m_status, &StatusLine::undoWanted, this, [this] { undo(false); });
    connect(m_find, &FindModel::tankChosen, this, [this](record::TankId tank) {
        select(tank);
        m_rail->list()->setFocus();
    });
    connect(m_find, &FindModel::entryChosen, m_panels, &Panels::editEntry);
    m_find->setOffers([this] { return m_actions->offers(); });
    connect(&m_theme, &Theme::changed, this, &MainWindow::arrange);
}

void MainWindow::connectBench()
{
    m_guide->addShelf(sheetShelf());
    connect(m_bench, &BenchPage::selected, this, &MainWindow::select);
    connect(m_bench, &BenchPage::told, this, &MainWindow::tell);
    connect(m_bench, &BenchPage::failed, this, &MainWindow::fail);
    const BenchOffers worksheets([this](const QString& sheet, const QMap<QString, QString>& typed) {
        showPage(Page::Bench);
        m_bench->open(sheet, typed);
    });
    m_find->setAnswers([this, worksheets](const QString& text) {
        return worksheets.offers(text, m_keeper.row(), m_rail->selected(), m_keeper.clock().now());
    });
}

void MainWindow::openAtStart(const std::optional<QString>& path, bool sample)
{
    m_desk->openAtStart(path, sample);
    refreshPages();
    if (m_stack->currentWidget() == m_firstRun) {
        m_firstRun->focusFirst();
    } else {
        m_rail->list()->setFocus();
    }
}

void MainWindow::storeChanged()
{
    m_error->hide();
    if (m_keeper.hasStore() && m_keeper.isReadOnly()) {
        m_banner->showNote(tr("This store is open for reading only: another program holds it, or the file may not be "
                              "written. Viewing works; nothing is changed."));
    } else {
        m_banner->hide();
    }
    m_status->setLastBackup(m_keeper.hasStore() ? m_session.lastBackup(m_keeper.path()) : QDateTime());
    m_firstRun->setStorePlace(m_desk->storePlace());
    setWindowTitle(m_keeper.hasStore() ? tr("%1 - Littoral").arg(QFileInfo(m_keeper.path()).completeBaseName())
                                       : tr("Littoral"));
    m_rail->select(m_rail->selected());
    m_trends->setSelected(m_rail->selected());
    m_cycle->setSelected(m_rail->selected());
    m_history->setSelected(m_rail->selected());
    m_stock->setSelected(m_rail->selected());
    m_bench->setSelected(m_rail->selected());
    m_lanes->setShown(m_rail->model().shown());
    refreshActions();
    refreshPages();
    if (m_keeper.hasStore()) {
        m_forecastSoon.start(kForecastDelayMs);
    }
}

void MainWindow::refreshPages()
{
    const bool empty = m_keeper.row().tanks.empty();
    m_rail->setVisible(!empty);
    // The guide can be read before there is a tank.
    QWidget* wanted = empty && m_page != Page::Guide ? m_firstRun : widgetOf(m_page);
    if (m_stack->currentWidget() != wanted) {
        m_stack->setCurrentWidget(wanted);
    }
    m_top->setPage(static_cast<int>(m_page));
}

QWidget* MainWindow::widgetOf(Page page) const
{
    switch (page) {
    case Page::Lanes:
        return m_lanes;
    case Page::Trends:
        return m_trends;
    case Page::Cycle:
        return m_cycle;
    case Page::History:
        return m_history;
    case Page::Rounds:
        return m_rounds;
    case Page::Stock:
        return m_stock;
    case Page::Bench:
        return m_bench;
    case Page::Guide:
        return m_guide;
    }
    return m_lanes;
}

void MainWindow::showPage(Page page)
{
    settle();
    if (page == Page::Guide && m_page != Page::Guide) {
        m_beforeGuide = m_page;
    }
    m_page = page;
    refreshPages();
    refreshActions();
    if (m_stack->currentWidget() == m_rounds) {
        m_rounds->begin();
    } else if (m_stack->currentWidget() == m_trends) {
        m_trends->begin();
    } else if (m_stack->currentWidget() == m_cycle) {
        m_cycle->begin();
    } else if (m_stack->currentWidget() == m_history) {
        m_history->begin();
    } else if (m_stack->currentWidget() == m_lanes) {
        m_lanes->view().setFocus(Qt::OtherFocusReason);
    } else if (m_stack->currentWidget() == m_stock) {
        m_stock->begin();
    } else if (m_stack->currentWidget() == m_bench) {
        m_bench->begin();
    } else if (m_stack->currentWidget() == m_guide) {
        m_guide->begin();
    } else if (QWidget* first = firstFocusable(m_stack->currentWidget())) {
        first->setFocus(Qt::OtherFocusReason);
    }
}

void MainWindow::select(record::TankId tank)
{
    m_rail->select(tank);
    m_lanes->setSelected(tank);
    m_trends->setSelected(tank);
    m_cycle->setSelected(tank);
    m_history->setSelected(tank);
    m_rounds->setSelected(tank);
    m_bench->setSelected(tank);
    m_stock->setSelected(tank);
    refreshActions();
}

void MainWindow::openWork(const care::DueItem& item)
{
    select(item.tank);
    if (item.kind == care::WorkKind::Test) {
        showPage(Page::Rounds);
        return;
    }
    // What is known of the work is filled in; saving the entry closes its round.
    record::Entry entry;
    entry.tank = item.tank;
    entry.kind = item.kind == care::WorkKind::WaterChange ? record::EntryKind::WaterChange
                 : item.kind == care::WorkKind::Look      ? record::EntryKind::Observation
                 : item.kind == care::WorkKind::Upkeep    ? record::EntryKind::Upkeep
                 : item.kind == care::WorkKind::Dose      ? record::EntryKind::Dose
                                                          : record::EntryKind::Note;
    entry.fraction = item.kind == care::WorkKind::WaterChange ? item.fraction : std::nullopt;
    entry.amount = item.amount;
    entry.unit = item.unit;
    entry.subject = item.kind == care::WorkKind::WaterChange ? QString() : item.subject;
    m_panels->newEntry(entry);
}

void MainWindow::tell(const QString& sentence)
{
    m_status->tell(sentence);
}

void MainWindow::fail(const Error& error, const QString& safe)
{
    m_error->showError(error, safe);
}

void MainWindow::undo(bool redo)
{
    m_rounds->settle();
    const record::Units units = record::shownUnits();
    const auto done = redo ? m_keeper.redo() : m_keeper.undo();
    if (!done) {
        if (done.error().fault != Fault::NotFound) {
            fail(done.error(), tr("The store is as it was."));
        }
        return;
    }
    if (record::shownUnits() != units && panelIsOpen()) {
        (void)(redo ? m_keeper.undo() : m_keeper.redo());
        return;
    }
    tell(redo ? tr("Done again: %1").arg(*done) : tr("Undone: %1").arg(*done));
}

void MainWindow::goToRegion(bool next)
{
    QList<QWidget*> regions{m_top, m_rail};
    if (m_stack->currentWidget() == m_rounds) {
        regions << m_rounds->regions();
    } else if (m_stack->currentWidget() == m_trends) {
        regions << m_trends->regions();
    } else if (m_stack->currentWidget() == m_cycle) {
        regions << m_cycle->regions();
    } else if (m_stack->currentWidget() == m_history) {
        regions << m_history->regions();
    } else if (m_stack->currentWidget() == m_stock) {
        regions << m_stock->regions();
    } else if (m_stack->currentWidget() == m_bench) {
        regions << m_bench->regions();
    } else if (m_stack->currentWidget() == m_guide) {
        regions << m_guide->regions();
    } else {
        regions << m_stack->currentWidget();
    }
    regions << m_panels->host() << m_status;
    ui::goToRegion(regions, next);
}

void MainWindow::arrange()
{
    const bool folded = width() < 1280 || width() < m_theme.px(208 * 3.5);
    m_rail->setFolded(folded);
    // Where both do not fit, the panel takes the page's place; the page is there again when the panel closes.
    const int room = width() - (m_rail->isHidden() ? 0 : m_rail->width());
    const SidePanel* open = m_panels->host()->current();
    const int panel = open == nullptr ? m_theme.px(380) : open->wantedWidth();
    const bool both = room >= panel + m_theme.px(420) && (open == nullptr || !open->takesPage());
    m_stack->setVisible(both || open == nullptr);
    m_panels->host()->setMaximumWidth(both ? panel : QWIDGETSIZE_MAX);
}

void MainWindow::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    arrange();
}

void MainWindow::closeEvent(QCloseEvent* event)
{
    settle();
    m_session.setGeometry(saveGeometry());
    event->accept();
}

void MainWindow::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::ActivationChange && isActiveWindow()) {
        m_keeper.refreshIfChangedOutside();
    }
    QWidget::changeEvent(event);
}

void MainWindow::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape) {
        if (m_panels->host()->current() != nullptr) {
            m_panels->host()->close();
        } else if (QWidget* first = firstFocusable(m_stack->currentWidget())) {
            first->setFocus(Qt::OtherFocusReason);
        }
        return;
    }
    QWidget::keyPressEvent(event);
}

void MainWindow::paintEvent(QPaintEvent*)
{
    QPainter(this).fillRect(rect(), m_theme[Token::Window]);
}

} // namespace littoral::ui
