// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/bench/bench_page.h"

#include "ui/models/bench_list.h"
#include "ui/pages/bench/sheet_list.h"
#include "ui/widgets/table_twin.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

constexpr int kSaveDelayMs = 800;

QString defaultSheet()
{
    return u"target"_s;
}

} // namespace

BenchPage::BenchPage(facade::Keeper& keeper, Theme& theme, Ask& ask, QWidget* parent)
    : QWidget(parent)
    , m_keeper(keeper)
    , m_theme(theme)
    , m_ask(ask)
    , m_model(new BenchListModel(this))
    , m_list(new SheetList(theme, *m_model))
    , m_filter(new QLineEdit)
    , m_found(new Text(theme, TextStyle::Secondary))
    , m_tankChoice(new QComboBox)
    , m_sourceChoice(new QComboBox)
    , m_working(new QCheckBox(tr("Show working")))
    , m_print(new QPushButton(tr("Print")))
    , m_scroll(new QScrollArea)
    , m_front(new SheetCard(theme))
    , m_plan(new RowPlanCard(theme))
{
    setAccessibleName(tr("Bench"));
    m_bar = makeBar();
    m_listPanel = makeList();
    makeColumns();
    auto* middle = new QHBoxLayout;
    middle->setContentsMargins(0, 0, 0, 0);
    middle->setSpacing(0);
    middle->addWidget(m_listPanel);
    middle->addWidget(m_scroll, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_bar);
    column->addLayout(middle, 1);
    makeKeys();
    connectSheet(m_front, 0);
    connectPlan(m_plan);
    connect(m_plan, &BenchCard::pinWanted, this, &BenchPage::pinFront);
    m_saveSoon.setSingleShot(true);
    m_saveSoon.setInterval(kSaveDelayMs);
    connect(&m_saveSoon, &QTimer::timeout, this, [this] { m_memory.save(); });
    connect(&keeper, &facade::Keeper::changed, this, &BenchPage::refreshWhenSeen);
    connect(&keeper, &facade::Keeper::storeOpened, this, &BenchPage::storeChanged);
    connect(&keeper, &facade::Keeper::storeClosed, this, &BenchPage::storeChanged);
    connect(&theme, &Theme::changed, this, [this] {
        m_columnCount = 0;
        arrange();
    });
    storeChanged();
}

BenchPage::~BenchPage()
{
    m_memory.save();
}

void BenchPage::toggleTable()
{
    m_table = !m_table;
    refresh();
    int pin = 0;
    SheetCard* card = cardAtHand(pin);
    if (m_table && card != nullptr && card->twin()->isVisible()) {
        card->twin()->setFocus(Qt::OtherFocusReason);
        card->twin()->showCurrent();
        emit told(card->twin()->table().caption);
    } else {
        emit told(m_table ? tr("This sheet has no chart to show as a table") : tr("Charts again"));
    }
}

void BenchPage::connectSheet(SheetCard* card, int pin)
{
    connect(card, &SheetCard::typed, this, [this, card, pin](const QString& key, const QString& text) {
        if (BenchSheet* sheet = sheetOf(pin)) {
            sheet->typeShown(key, text);
            showSheet(*card, *sheet);
            m_saveSoon.start();
        }
    });
    connect(card, &SheetCard::clearWanted, this, [this, card, pin] {
        if (BenchSheet* sheet = sheetOf(pin)) {
            sheet->clear();
            card->firstField()->setFocus(Qt::OtherFocusReason);
            showSheet(*card, *sheet);
            m_saveSoon.start();
        }
    });
    connect(card, &SheetCard::writeWanted, this, [this, pin](int index) { write(pin, index); });
    connect(card, &SheetCard::taskWanted, this, [this, pin](int days) { plan(pin, days); });
    connect(card, &SheetCard::copied, this, &BenchPage::told);
    connect(card, &BenchCard::pinWanted, this, [this, pin] {
        if (pin == 0) {
            pinFront();
        } else {
            unpin(pin);
        }
    });
}

void BenchPage::connectPlan(RowPlanCard* card)
{
    connect(card, &RowPlanCard::conditionerTyped, this, [this](std::optional<double> mL) {
        m_memory.conditioner_mL_per_100L = mL;
        m_saveSoon.start();
        refresh();
    });
}

void BenchPage::storeChanged()
{
    m_memory.save();
    m_memory.load(m_keeper.hasStore() ? m_keeper.path() : QString());
    if (m_model->rowOf(m_memory.inFront) < 0) {
        m_memory.inFront = defaultSheet();
    }
    m_source = {};
    const QSignalBlocker quiet(m_working);
    m_working->setChecked(m_memory.showsWorking);
    refreshPins();
    refresh();
}

/// Typing a round changes the record at every cell: sheets nobody looks at are reckoned when they are shown.
void BenchPage::refreshWhenSeen()
{
    if (isVisible()) {
        refresh();
    } else {
        m_stale = true;
    }
}

void BenchPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (m_stale) {
        refresh();
    }
}

void BenchPage::refresh()
{
    m_stale = false;
    if (m_keeper.row().tank(m_tank) == nullptr) {
        m_tank = m_keeper.row().tanks.empty() ? record::TankId{} : m_keeper.row().tanks.front().id;
    }
    refreshChoices();
    refreshFront();
    for (const PinnedCard& pinned : m_pinned) {
        if (auto* card = qobject_cast<SheetCard*>(pinned.card)) {
            if (BenchSheet* sheet = sheetOf(pinned.number)) {
                showSheet(*card, *sheet);
            }
        } else if (auto* plan = qobject_cast<RowPlanCard*>(pinned.card)) {
            showPlan(*plan);
        }
    }
}

void BenchPage::refreshChoices()
{
    const QSignalBlocker quietTanks(m_tankChoice);
    const QSignalBlocker quietSources(m_sourceChoice);
    m_tankChoice->clear();
    for (const record::Tank& tank : m_keeper.row().tanks) {
        m_tankChoice->addItem(tr("%1, newest readings").arg(tank.name), tank.id.value);
    }
    m_tankChoice->setCurrentIndex(m_tankChoice->findData(m_tank.value));
    m_tankChoice->setEnabled(m_tankChoice->count() > 0);
    m_sourceChoice->clear();
    m_sourceChoice->addItem(tr("The layout's own"), qint64{0});
    for (const record::SourceWater& source : m_keeper.row().sources) {
        m_sourceChoice->addItem(source.name, source.id.value);
    }
    m_sourceChoice->setCurrentIndex(std::max(0, m_sourceChoice->findData(m_source.value)));
}

void BenchPage::refreshFront()
{
    m_list->showSheet(m_memory.inFront);
    const sheets::Sheet* sheet = sheets::findSheet(m_memory.inFront);
    m_front->setVisible(sheet != nullptr);
    m_plan->setVisible(sheet == nullptr);
    if (sheet == nullptr) {
        showPlan(*m_plan);
        return;
    }
    showSheet(*m_front, m_memory.open(*sheet, m_tank));
}

void BenchPage::refreshPins()
{
    for (const PinnedCard& pinned : m_pinned) {
        pinned.card->hide();
        pinned.card->deleteLater();
    }
    m_pinned.clear();
    for (const BenchMemory::Pin& pin : m_memory.pins()) {
        BenchCard* card = nullptr;
        if (pin.sheet) {
            auto* sheet = new SheetCard(m_theme);
            connectSheet(sheet, pin.number);
            card = sheet;
        } else {
            auto* plan = new RowPlanCard(m_theme);
            connectPlan(plan);
            connect(plan, &BenchCard::pinWanted, this, [this, number = pin.number] { unpin(number); });
            card = plan;
        }
        card->setPinned(true);
        card->setHead(card->title(), tr("Water for the whole row, as it is due or planned"));
        m_pinned.push_back({pin.number, card});
    }
    place();
}

void BenchPage::showPlan(RowPlanCard& card)
{
    facade::RowPlanOptions options;
    options.conditioner_mL_per_100L = m_memory.conditioner_mL_per_100L;
    card.show(facade::rowPlan(m_keeper.row(), m_keeper.clock().now(), options), m_memory.conditioner_mL_per_100L);
}

void BenchPage::showSheet(SheetCard& card, BenchSheet& sheet)
{
    sheet.refresh(m_keeper.row(), m_keeper.clock().now(), &card == m_front ? m_source : record::SourceWaterId{});
    const record::Tank* tank = m_keeper.row().tank(sheet.tank());
    SheetCard::Surroundings around;
    around.row = &m_keeper.row();
    around.now = m_keeper.clock().now();
    around.working = m_memory.showsWorking;
    around.table = m_table;
    around.writable = tank != nullptr && m_keeper.hasStore() && !m_keeper.isReadOnly();
    around.tankName = tank == nullptr ? QString() : tank->name;
    card.show(sheet, around);
}

BenchSheet* BenchPage::sheetOf(int pin)
{
    if (pin == 0) {
        const sheets::Sheet* sheet = sheets::findSheet(m_memory.inFront);
        return sheet == nullptr ? nullptr : &m_memory.open(*sheet, m_tank);
    }
    for (BenchMemory::Pin& one : m_memory.pins()) {
        if (one.number == pin && one.sheet) {
            return &*one.sheet;
        }
    }
    return nullptr;
}

const BenchSheet* BenchPage::sheet()
{
    return sheetOf(0);
}

QList<BenchCard*> BenchPage::pinned() const
{
    QList<BenchCard*> cards;
    for (const PinnedCard& pinned : m_pinned) {
        cards << pinned.card;
    }
    return cards;
}

void BenchPage::setSelected(record::TankId tank)
{
    if (m_tank != tank) {
        m_tank = tank;
        m_source = {};
        refreshWhenSeen();
    }
}

void BenchPage::open(const QString& key, const QMap<QString, QString>& typed)
{
    m_memory.inFront = key;
    if (BenchSheet* sheet = sheetOf(0)) {
        for (auto it = typed.cbegin(); it != typed.cend(); ++it) {
            sheet->type(it.key(), it.value());
        }
    }
    m_saveSoon.start();
    m_scroll->verticalScrollBar()->setValue(0);
    refreshFront();
    QWidget* first = m_front->isHidden() ? m_plan->firstField() : m_front->firstField();
    first->setFocus(Qt::OtherFocusReason);
    if (auto* line = qobject_cast<QLineEdit*>(first)) {
        line->selectAll();
    }
}

void BenchPage::begin()
{
    m_list->setFocus(Qt::OtherFocusReason);
}

void BenchPage::settle()
{
    m_memory.save();
}

void BenchPage::pinFront()
{
    const BenchSheet* sheet = sheetOf(0);
    if (sheet == nullptr && m_memory.hasRowPlanPinned()) {
        emit told(tr("The coming two weeks: pinned already"));
        return;
    }
    if (sheet != nullptr) {
        m_memory.pin(*sheet);
    } else {
        m_memory.pinRowPlan();
    }
    m_saveSoon.start();
    refreshPins();
    refresh();
    emit told(tr("%1 is pinned beside the others").arg(sheet == nullptr ? m_plan->title() : m_front->title()));
}

void BenchPage::unpin(int number)
{
    m_memory.unpin(number);
    m_saveSoon.start();
    refreshPins();
    refresh();
    begin();
}

SheetCard* BenchPage::cardAtHand(int& pin)
{
    for (const PinnedCard& pinned : m_pinned) {
        auto* card = qobject_cast<SheetCard*>(pinned.card);
        QWidget* focus = focusWidget();
        if (card != nullptr && focus != nullptr && card->isAncestorOf(focus)) {
            pin = pinned.number;
            return card;
        }
    }
    pin = 0;
    return m_front->isHidden() ? nullptr : m_front;
}

QString BenchPage::focusedSheet()
{
    int pin = 0;
    const SheetCard* card = cardAtHand(pin);
    const BenchSheet* sheet = card == nullptr ? nullptr : sheetOf(pin);
    return sheet == nullptr ? QString() : sheet->sheet().key;
}

QList<QWidget*> BenchPage::regions() const
{
    QList<QWidget*> all{m_bar, m_listPanel};
    all << (m_front->isHidden() ? static_cast<QWidget*>(m_plan) : m_front);
    for (const PinnedCard& pinned : m_pinned) {
        all << pinned.card;
    }
    return all;
}

bool BenchPage::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_filter && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Down || key == Qt::Key_PageDown) {
            if (m_list->current().isEmpty() && m_model->firstSheet() >= 0) {
                m_list->setCurrentIndex(m_model->index(m_model->firstSheet()));
            }
            begin();
            return true;
        }
        if (key == Qt::Key_Escape && !m_filter->text().isEmpty()) {
            m_filter->clear();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

void BenchPage::keyPressEvent(QKeyEvent* event)
{
    // One step back: from a sheet to the list; what was typed stays.
    if (event->key() == Qt::Key_Escape && focusWidget() != m_list) {
        begin();
        return;
    }
    QWidget::keyPressEvent(event);
}

void BenchPage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    arrange();
}

void BenchPage::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme[Token::Window]);
    painter.fillRect(m_bar->geometry(), m_theme[Token::Sunk]);
    painter.fillRect(QRect(0, m_bar->geometry().bottom(), width(), 1), m_theme[Token::Rule]);
    painter.fillRect(m_listPanel->geometry(), m_theme[Token::Panel]);
    painter.fillRect(QRect(m_listPanel->geometry().right(), m_listPanel->y(), 1, m_listPanel->height()),
                     m_theme[Token::Rule]);
}

} // namespace littoral::ui
