// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/stock/stock_page.h"

#include "core/wording/numbers.h"
#include "ui/models/stock_words.h"
#include "ui/pages/stock/co2_trials_card.h"
#include "ui/pages/stock/lineage_view.h"
#include "ui/pages/stock/stock_cards.h"
#include "ui/pages/stock/stock_tables.h"
#include "ui/widgets/flow_layout.h"

#include <QAction>
#include <QComboBox>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

QMap<QString, QString> ownSpecies(const record::Row& row)
{
    QMap<QString, QString> own;
    for (auto it = row.settings.begin(); it != row.settings.end(); ++it) {
        if (it.key().startsWith(u"fact.species."_s)) {
            own.insert(it.key(), it.value());
        }
    }
    return own;
}

QFrame* tableCard(Theme& theme, const QString& title, Text* aside, const QList<QWidget*>& rest)
{
    auto* frame = new QFrame;
    frame->setProperty("card", true);
    frame->setFrameShape(QFrame::StyledPanel);
    frame->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    auto* column = new QVBoxLayout(frame);
    column->setContentsMargins(1, 1, 1, 8);
    column->setSpacing(0);
    auto* head = new QWidget;
    auto* line = new QVBoxLayout(head);
    line->setContentsMargins(14, 9, 14, 7);
    line->setSpacing(2);
    line->addWidget((new Text(theme, TextStyle::Strong, title))->wrapped());
    if (aside != nullptr) {
        line->addWidget(aside->wrapped());
    }
    column->addWidget(head);
    for (QWidget* widget : rest) {
        column->addWidget(widget);
    }
    return frame;
}

} // namespace

StockPage::StockPage(facade::Keeper& keeper, facade::Forecasts& forecasts, Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_keeper(keeper)
    , m_forecasts(forecasts)
    , m_theme(theme)
    , m_book(facts::factsFor(keeper.row()).book)
    , m_desk(new facade::StockDesk(keeper, forecasts, this))
    , m_animalsModel(new AnimalsModel(this))
    , m_plantsModel(new PlantsModel(this))
    , m_animals(new AnimalsTable(theme, *m_animalsModel))
    , m_plants(new PlantsTable(theme, *m_plantsModel))
    , m_addition(new AdditionCard(keeper, *m_desk, theme))
    , m_gates(new StockGatesCard(theme))
    , m_co2(new Co2TrialsCard(keeper, theme))
    , m_acclimation(new AcclimationCard(theme))
    , m_lineage(new LineageView(theme))
    , m_title(new Text(theme, TextStyle::Name))
    , m_litres(new Text(theme, TextStyle::Body))
    , m_why(new Text(theme, TextStyle::Secondary))
    , m_plantNote(new Text(theme, TextStyle::Secondary))
    , m_noAnimals(new Text(theme, TextStyle::Body,
                           tr("No animals are recorded here. \"Animals in\" records some; a trial on the right shows "
                              "what the filter would make of them.")))
    , m_noPlants(new Text(theme, TextStyle::Body,
                          tr("No plants are recorded here. \"Plants in\" records some by species, so that their need "
                             "can be held against light and CO₂.")))
    , m_filter(new QLineEdit)
    , m_order(new QComboBox)
    , m_quarantine(new QPushButton(tr("Quarantine is done")))
    , m_columns(new QBoxLayout(QBoxLayout::LeftToRight))
{
    setAccessibleName(tr("Stock"));
    m_quarantine->setObjectName(u"quarantine"_s);
    m_addition->setSpecies(m_book);
    m_bar = makeBar();
    m_left = new QWidget;
    auto* left = new QVBoxLayout(m_left);
    left->setContentsMargins(0, 0, 0, 0);
    left->setSpacing(12);
    left->addWidget(makeAnimals());
    left->addWidget(makePlants());
    left->addWidget(m_co2);
    m_lineageCard = makeLineage();
    left->addWidget(m_lineageCard);
    left->addStretch(1);
    m_side = new QWidget;
    auto* side = new QVBoxLayout(m_side);
    side->setContentsMargins(0, 0, 0, 0);
    side->setSpacing(12);
    side->addWidget(m_addition);
    side->addWidget(m_gates);
    side->addWidget(m_acclimation);
    side->addStretch(1);
    m_columns->setContentsMargins(14, 12, 14, 12);
    m_columns->setSpacing(12);
    m_columns->addWidget(m_left, 1);
    m_columns->addWidget(m_side);
    auto* inside = new QWidget;
    inside->setLayout(m_columns);
    auto* scroll = new QScrollArea;
    scroll->setWidget(inside);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_bar);
    column->addWidget(scroll, 1);
    connectAll();
    refreshNow();
}

QWidget* StockPage::makeBar()
{
    auto* bar = new QWidget;
    bar->setAccessibleName(tr("Bar of the Stock page"));
    auto* flow = new FlowLayout(bar, 10);
    flow->setContentsMargins(14, 7, 14, 7);
    m_litres->setToken(Token::Ink2);
    flow->addWidget(m_title);
    flow->addWidget(m_litres);
    m_filter->setPlaceholderText(tr("Filter"));
    m_filter->setAccessibleName(tr("Show only rows with these words"));
    m_filter->setClearButtonEnabled(true);
    m_filter->setFixedWidth(m_theme.px(150));
    m_order->addItems({tr("As they came"), tr("What asks for most"), tr("By name")});
    m_order->setAccessibleName(tr("Order of the rows"));
    flow->addWidget(m_filter);
    flow->addWidget(m_order);
    const auto button = [&](const QString& text, const QString& name, auto run) {
        auto* made = new QPushButton(text);
        made->setAccessibleName(name);
        connect(made, &QPushButton::clicked, this, run);
        flow->addWidget(made);
    };
    button(tr("Animals in..."), tr("Record animals put in"), [this] { propose(record::EntryKind::Addition, false); });
    button(tr("Plants in..."), tr("Record plants put in"), [this] { propose(record::EntryKind::Addition, true); });
    button(tr("Lost or out..."), tr("Record animals lost or taken out"),
           [this] { propose(record::EntryKind::Loss, false); });
    connect(&m_theme, &Theme::changed, this, [this] { m_filter->setFixedWidth(m_theme.px(150)); });
    return bar;
}

QWidget* StockPage::makeAnimals()
{
    auto* legend =
        new Text(m_theme, TextStyle::Secondary,
                 tr("Tinted: what it bears. Solid: this water, last 14 days. Hatched: forecast of the coming 14 "
                    "days, 8 in 10; pH, hardness and temperature are not forecast."));
    legend->wrapped();
    m_why->wrapped();
    m_why->setToken(Token::Ink2);
    m_why->setContentsMargins(14, 8, 14, 2);
    m_noAnimals->wrapped();
    m_noAnimals->setContentsMargins(14, 4, 14, 8);
    return tableCard(m_theme, tr("Animals: what each bears, and this water"), legend, {m_animals, m_noAnimals, m_why});
}

QWidget* StockPage::makePlants()
{
    m_noPlants->wrapped();
    m_noPlants->setContentsMargins(14, 4, 14, 8);
    auto* foot = new Text(m_theme, TextStyle::Secondary,
                          tr("Boxes: steps of need, little to very much. Line: what this tank gives. Cover is taken "
                             "from observations that name the plant. Steps are common practice."));
    foot->wrapped();
    foot->setContentsMargins(14, 8, 14, 2);
    return tableCard(m_theme, tr("Plants: need, cover and condition"), m_plantNote, {m_plants, m_noPlants, foot});
}

StockCard* StockPage::makeLineage()
{
    class Card final : public StockCard
    {
    public:
        using StockCard::StockCard;
        [[nodiscard]] QVBoxLayout* inside() const { return body(); }
    };
    auto* made = new Card(m_theme, tr("Quarantine clock, and where media went"));
    m_clock = new Text(m_theme, TextStyle::Body);
    m_noMoves = new Text(m_theme, TextStyle::Secondary,
                         tr("No filter media has been moved between tanks of this row. A media transfer that is "
                            "entered shows here, so that disease or snails can be traced."));
    made->inside()->addWidget(m_clock->wrapped());
    auto* foot = new QWidget;
    auto* line = new FlowLayout(foot, 8);
    line->setContentsMargins(0, 0, 0, 0);
    line->addWidget(m_quarantine);
    made->inside()->addWidget(foot);
    made->inside()->addWidget(m_lineage);
    made->inside()->addWidget(m_noMoves->wrapped());
    return made;
}

void StockPage::connectAll()
{
    connect(&m_keeper, &facade::Keeper::changed, this, &StockPage::refresh);
    connect(&m_keeper, &facade::Keeper::storeOpened, this, &StockPage::refresh);
    connect(&m_keeper, &facade::Keeper::storeClosed, this, &StockPage::refresh);
    connect(&m_forecasts, &facade::Forecasts::ready, this, [this](record::LayoutId layout) {
        if (layout == m_stock.layout) {
            refresh();
            m_addition->weigh();
        }
    });
    connect(m_filter, &QLineEdit::textChanged, this, [this](const QString& text) {
        m_animalsModel->setFilter(text);
        m_plantsModel->setFilter(text);
    });
    connect(m_order, &QComboBox::currentIndexChanged, this, [this](int index) {
        m_animalsModel->setOrder(static_cast<StockOrder>(index));
        m_plantsModel->setOrder(static_cast<StockOrder>(index));
    });
    connect(m_animals, &StockTable::currentRowChanged, this, &StockPage::refreshWhy);
    connect(m_animals, &StockTable::opened, this, [this](int row) {
        if (const facade::AnimalRow* animal = m_animalsModel->animal(row); animal != nullptr && animal->entry) {
            emit entryOpenWanted(animal->entry);
        }
    });
    connect(m_plants, &StockTable::opened, this, [this](int row) {
        if (const facade::PlantRow* plant = m_plantsModel->plant(row)) {
            emit entryOpenWanted(plant->entry);
        }
    });
    connect(m_addition, &AdditionCard::wishChanged, this, &StockPage::refreshNow);
    connect(m_addition, &AdditionCard::told, this, &StockPage::told);
    connect(m_addition, &AdditionCard::failed, this, &StockPage::failed);
    connect(m_co2, &Co2TrialsCard::told, this, &StockPage::told);
    connect(m_co2, &Co2TrialsCard::failed, this, &StockPage::failed);
    connect(m_co2, &Co2TrialsCard::entryOpenWanted, this, &StockPage::entryOpenWanted);
    connect(m_co2, &Co2TrialsCard::newEntryWanted, this, &StockPage::newEntryWanted);
    connect(m_lineage, &LineageView::entryOpenWanted, this, &StockPage::entryOpenWanted);
    connect(m_quarantine, &QPushButton::clicked, this, &StockPage::quarantineDone);
    auto* filter = new QAction(tr("Filter the stock"), this);
    filter->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_F));
    filter->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    connect(filter, &QAction::triggered, this, &StockPage::openFilter);
    addAction(filter);
}

void StockPage::setSelected(record::TankId tank)
{
    if (tank != m_tank) {
        m_tank = tank;
        m_desk->forget();
        refresh();
        if (isVisible()) {
            m_addition->weigh();
        }
    }
}

/// Cheap while another page is shown: the stock is made anew when this one is.
void StockPage::refresh()
{
    m_stale = true;
    if (isVisible()) {
        refreshNow();
    }
}

void StockPage::refreshNow()
{
    m_stale = false;
    const QMap<QString, QString> own = ownSpecies(m_keeper.row());
    if (own != m_ownFacts) {
        m_ownFacts = own;
        m_book = facts::factsFor(m_keeper.row()).book;
        m_addition->setSpecies(m_book);
    }
    const record::Moment now = m_keeper.clock().now();
    const record::LayoutRecord* layout = m_keeper.row().currentLayout(m_tank, now);
    const record::LayoutId id = layout == nullptr ? record::LayoutId{} : layout->layout.id;
    const auto result = m_forecasts.result(id);
    m_stock = facade::stockOf(m_keeper.row(), id, now, m_book, result.get(), m_addition->wish());
    const QDate today = now.localDate();
    const int row = m_animals->currentIndex().row();
    const int plant = m_plants->currentIndex().row();
    m_animalsModel->setModel(m_stock, today);
    m_plantsModel->setModel(m_stock, today);
    if (m_animalsModel->animal(row) != nullptr) {
        m_animals->setCurrentIndex(m_animalsModel->index(row, 0));
    }
    if (m_plantsModel->plant(plant) != nullptr) {
        m_plants->setCurrentIndex(m_plantsModel->index(plant, 0));
    }
    m_title->setText(m_stock.name.isEmpty() ? tr("No tank selected") : m_stock.name);
    m_litres->setText(m_stock.net_L > 0.0
                          ? tr("%1 of water · %2 · %n animals", nullptr, m_stock.animalCount())
                                .arg(wording::litresText(m_stock.net_L), wording::ageText(m_stock.ageDays))
                          : QString());
    m_plantNote->setText(plantWater(m_stock));
    m_animals->setVisible(!m_stock.animals.empty());
    m_noAnimals->setVisible(m_stock.animals.empty());
    m_plants->setVisible(!m_stock.plants.empty());
    m_noPlants->setVisible(m_stock.plants.empty());
    m_gates->setStock(m_stock, today);
    m_addition->setStock(m_stock);
    const auto wanted = m_addition->addition();
    m_acclimation->setAnimal(wanted ? std::optional(wanted->species) : std::nullopt, m_stock);
    m_clock->setText(m_stock.clock ? clockText(*m_stock.clock, today)
                                   : tr("No arrival, loss or sign of illness is recorded here: no clock runs."));
    m_quarantine->setVisible(m_stock.clock.has_value() && !m_stock.clock->done);
    m_quarantine->setEnabled(m_keeper.hasStore() && !m_keeper.isReadOnly());
    m_co2->setLayout(id, m_book);
    m_lineage->setMoves(m_stock, m_keeper.row(), today);
    m_lineage->setVisible(!m_stock.moves.empty());
    m_noMoves->setVisible(m_stock.moves.empty());
    refreshWhy(m_animals->currentIndex().row());
}

void StockPage::refreshWhy(int row)
{
    const facade::AnimalRow* animal = m_animalsModel->animal(row);
    m_why->setVisible(!m_stock.animals.empty());
    QString name = animal == nullptr ? QString() : animalName(*animal);
    if (!name.isEmpty()) {
        name[0] = name[0].toUpper();
    }
    m_why->setText(animal == nullptr
                       ? tr("Choose a row for all there is to say about it; Enter opens its entry, F1 its article.")
                       : tr("%1. %2").arg(name, animalReasons(m_stock, *animal, m_keeper.clock().today()).join(u' ')));
}

void StockPage::propose(record::EntryKind kind, bool plants)
{
    record::Entry entry;
    entry.tank = m_tank;
    entry.kind = kind;
    entry.at = m_keeper.clock().now();
    entry.unit = plants ? u"plants"_s : QString();
    if (kind == record::EntryKind::Loss) {
        if (const facade::AnimalRow* animal = m_animalsModel->animal(m_animals->currentIndex().row())) {
            entry.subject = animal->subject;
        }
    }
    emit newEntryWanted(entry);
}

void StockPage::quarantineDone()
{
    record::Entry entry;
    entry.tank = m_tank;
    entry.layout = m_stock.layout;
    entry.kind = record::EntryKind::Upkeep;
    entry.subject = u"quarantine"_s;
    entry.at = m_keeper.clock().now();
    if (const auto done = m_keeper.enter(entry); !done) {
        emit failed(done.error(), tr("Nothing was written."));
        return;
    }
    emit told(tr("Quarantine entered as done for %1").arg(m_stock.name));
}

void StockPage::begin()
{
    if (m_animals->isVisibleTo(this)) {
        m_animals->setFocus(Qt::OtherFocusReason);
        for (int row = 0; !m_animals->currentIndex().isValid() && row < m_animalsModel->rowCount(); ++row) {
            if (m_animalsModel->animal(row) != nullptr) {
                m_animals->setCurrentIndex(m_animalsModel->index(row, 0));
            }
        }
    } else {
        m_addition->focusFirst();
    }
}

void StockPage::openFilter()
{
    m_filter->setFocus(Qt::ShortcutFocusReason);
    m_filter->selectAll();
}

void StockPage::consider()
{
    m_addition->focusFirst();
}

QString StockPage::focusedSpecies() const
{
    if (m_plants->hasFocus()) {
        const facade::PlantRow* plant = m_plantsModel->plant(m_plants->currentIndex().row());
        return plant != nullptr && plant->species ? plant->species->id : QString();
    }
    if (const facade::AnimalRow* animal = m_animalsModel->animal(m_animals->currentIndex().row());
        animal != nullptr && m_animals->hasFocus()) {
        return animal->species ? animal->species->id : animal->subject;
    }
    const auto wanted = m_addition->addition();
    return wanted && m_addition->isAncestorOf(focusWidget()) ? wanted->species.id : QString();
}

QList<QWidget*> StockPage::regions() const
{
    return {m_bar, m_animals, m_plants, m_co2, m_lineageCard, m_addition, m_acclimation};
}

void StockPage::arrange()
{
    // Beside each other while the tables keep a useful width, else one under another.
    const bool wide = width() >= m_theme.px(980);
    m_columns->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_side->setMinimumWidth(wide ? m_theme.px(330) : 0);
    m_side->setMaximumWidth(wide ? m_theme.px(400) : QWIDGETSIZE_MAX);
}

void StockPage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    arrange();
}

void StockPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (m_stale) {
        refreshNow();
        m_addition->weigh();
    }
}

void StockPage::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme[Token::Window]);
    painter.fillRect(m_bar->geometry(), m_theme[Token::Sunk]);
    painter.fillRect(QRect(0, m_bar->geometry().bottom(), width(), 1), m_theme[Token::Rule]);
}

} // namespace littoral::ui
