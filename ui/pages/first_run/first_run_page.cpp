// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/first_run/first_run_page.h"

#include "core/wording/measures.h"
#include "core/wording/numbers.h"
#include "ui/models/number_text.h"
#include "ui/pages/first_run/axis_preview.h"
#include "ui/pages/first_run/sample_preview.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/moment_edit.h"
#include "ui/widgets/notice_strip.h"
#include "ui/widgets/outline_view.h"

#include <QComboBox>
#include <QFrame>
#include <QKeyEvent>
#include <QLineEdit>
#include <QLocale>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QShortcut>
#include <QVBoxLayout>
#include <cmath>

namespace littoral::ui {

namespace {

QFrame* makeCard()
{
    auto* card = new QFrame;
    card->setProperty("card", true);
    card->setFrameShape(QFrame::StyledPanel);
    return card;
}

record::Measure lengthUnit()
{
    return record::lengthMeasure(record::shownUnits());
}

} // namespace

FirstRunPage::FirstRunPage(facade::Keeper& keeper, Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_keeper(keeper)
    , m_theme(theme)
    , m_name(new QLineEdit)
    , m_length(new QLineEdit)
    , m_depth(new QLineEdit)
    , m_height(new QLineEdit)
    , m_flooded(new MomentEdit(keeper.clock(), true))
    , m_start(new QComboBox)
    , m_outline(new OutlineView(theme))
    , m_litres(new Text(theme, TextStyle::Strong))
    , m_less(new Text(theme, TextStyle::Secondary))
    , m_proposal(new Text(theme, TextStyle::Secondary))
    , m_place(new Text(theme, TextStyle::Secondary))
    , m_problem(new Text(theme, TextStyle::Body))
    , m_head(new QBoxLayout(QBoxLayout::TopToBottom))
    , m_cards(new QBoxLayout(QBoxLayout::LeftToRight))
    , m_inCard(new QBoxLayout(QBoxLayout::LeftToRight))
{
    setAccessibleName(tr("An empty row"));
    m_head->setContentsMargins(40, 34, 40, 20);
    m_head->setSpacing(8);
    m_head->addWidget(new Text(theme, TextStyle::Result, tr("An empty row")));
    auto* lead = new Text(theme, TextStyle::Name,
                          tr("Every tank will be a lane on one time axis: what happened on the left, today in the "
                             "middle, forecast and due work on the right."));
    lead->setToken(Token::Ink2);
    lead->setFont(theme.font(15));
    lead->setWordWrap(true);
    m_head->addWidget(lead);
    connect(&theme, &Theme::changed, lead, [lead, &theme] { lead->setFont(theme.font(15)); });

    m_sampleCard = makeSampleCard();
    m_tankCard = makeTankCard();
    m_cards->setContentsMargins(40, 30, 40, 30);
    m_cards->setSpacing(20);
    m_cards->addWidget(m_sampleCard, 4);
    m_cards->addWidget(m_tankCard, 7);

    auto* inside = new QWidget;
    auto* column = new QVBoxLayout(inside);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(m_head);
    column->addWidget(new AxisPreview(theme, keeper.clock()));
    column->addLayout(m_cards);
    column->addStretch(1);
    auto* scroll = new QScrollArea;
    scroll->setWidget(inside);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scroll);
    connect(&theme, &Theme::changed, this, &FirstRunPage::arrange);
    refresh();
}

QWidget* FirstRunPage::makeSampleCard()
{
    QFrame* card = makeCard();
    card->setAccessibleName(tr("Look around first"));
    auto* column = new QVBoxLayout(card);
    column->setContentsMargins(24, 22, 24, 22);
    column->setSpacing(12);
    column->addWidget(new Text(m_theme, TextStyle::Heading, tr("Look around first")));
    column->addWidget((new Text(m_theme, TextStyle::Body,
                                tr("The sample row holds invented tanks and their entries: some just flooded, one with "
                                   "melt, some with work overdue.")))
                          ->wrapped());
    column->addWidget(new SamplePreview(m_theme));
    column->addWidget((new Text(m_theme, TextStyle::Secondary,
                                tr("It opens as a copy in its own file. Nothing in it touches yours.")))
                          ->wrapped());
    column->addStretch(1);
    auto* open = new QPushButton(tr("Open the sample row"));
    open->setProperty("keyHint", tr("Alt S"));
    open->setAccessibleName(tr("Open the sample row"));
    column->addWidget(open, 0, Qt::AlignLeft);
    connect(open, &QPushButton::clicked, this, &FirstRunPage::sampleWanted);
    auto* key = new QShortcut(QKeySequence(Qt::ALT | Qt::Key_S), this);
    key->setContext(Qt::WidgetWithChildrenShortcut);
    connect(key, &QShortcut::activated, this, &FirstRunPage::sampleWanted);
    return card;
}

QWidget* FirstRunPage::makeFields()
{
    auto* box = new QWidget;
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(5);
    const auto label = [&](const QString& text, QWidget* field) {
        auto* name = new Text(m_theme, TextStyle::Strong, text);
        name->setWordWrap(true);
        name->setBuddy(field);
        column->addWidget(name);
    };
    label(tr("Name"), m_name);
    m_name->setAccessibleName(tr("Name"));
    column->addWidget(m_name);
    column->addSpacing(8);
    label(tr("Glass, outside, %1: length × depth × height").arg(lengthUnit().label), m_length);
    auto* sizes = new QHBoxLayout;
    for (const auto& [field, name] : {std::pair{m_length, tr("Length, %1").arg(lengthUnit().label)},
                                      std::pair{m_depth, tr("Depth, %1").arg(lengthUnit().label)},
                                      std::pair{m_height, tr("Height, %1").arg(lengthUnit().label)}}) {
        if (field != m_length) {
            sizes->addWidget(new Text(m_theme, TextStyle::Body, QStringLiteral("×")));
        }
        field->setAlignment(Qt::AlignRight);
        field->setAccessibleName(name);
        sizes->addWidget(field);
        connect(field, &QLineEdit::textChanged, this, &FirstRunPage::refresh);
    }
    column->addLayout(sizes);
    column->addSpacing(8);
    label(tr("Flooded on (its day 0; a guess will do)"), m_flooded);
    m_flooded->setAccessibleName(tr("Flooded on"));
    m_flooded->setPlaceholderText(tr("today; or a date such as 2026-11-02"));
    column->addWidget(m_flooded);
    column->addSpacing(8);
    label(tr("Started with"), m_start);
    m_start->setAccessibleName(tr("Started with"));
    m_start->addItems(startChoices());
    m_start->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_start->setMinimumContentsLength(16);
    column->addWidget(m_start);
    column->addStretch(1);
    connect(m_name, &QLineEdit::textChanged, this, &FirstRunPage::refresh);
    connect(m_flooded, &MomentEdit::momentChanged, this, &FirstRunPage::refresh);
    connect(m_start, &QComboBox::currentIndexChanged, this, &FirstRunPage::refresh);
    return box;
}

QWidget* FirstRunPage::makeOutcome()
{
    auto* box = new QWidget;
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    column->addWidget(m_outline, 1);
    column->addWidget(m_litres->wrapped());
    column->addWidget(m_less->wrapped());
    column->addSpacing(6);
    column->addWidget(m_proposal->wrapped());
    return box;
}

QWidget* FirstRunPage::makeTankCard()
{
    QFrame* card = makeCard();
    card->setAccessibleName(tr("Add my first tank"));
    auto* column = new QVBoxLayout(card);
    column->setContentsMargins(24, 22, 24, 22);
    column->setSpacing(12);
    column->addWidget(new Text(m_theme, TextStyle::Heading, tr("Add my first tank")));
    column->addWidget(
        (new Text(m_theme, TextStyle::Body,
                  tr("Four fields are enough to begin. Everything else can wait, and all of it can be changed later.")))
            ->wrapped());
    m_inCard->setSpacing(28);
    m_inCard->addWidget(makeFields(), 5);
    m_inCard->addWidget(makeOutcome(), 4);
    column->addLayout(m_inCard, 1);
    m_problem->setToken(Token::Act);
    m_problem->setWordWrap(true);
    m_problem->hide();
    column->addWidget(m_problem);
    auto* actions = new QWidget;
    auto* flow = new FlowLayout(actions, 10);
    auto* add = new QPushButton(tr("Add this tank"));
    add->setProperty("primary", true);
    add->setProperty("keyHint", tr("Enter"));
    add->setAccessibleName(tr("Add this tank"));
    auto* csv = new QPushButton(tr("Bring in a CSV file..."));
    csv->setAccessibleName(tr("Bring in a CSV file"));
    flow->addWidget(add);
    flow->addWidget(csv);
    column->addWidget(actions);
    column->addWidget(m_place->wrapped());
    connect(add, &QPushButton::clicked, this, &FirstRunPage::add);
    connect(csv, &QPushButton::clicked, this, &FirstRunPage::csvWanted);
    return card;
}

FirstTank FirstRunPage::given() const
{
    FirstTank tank;
    tank.name = m_name->text();
    tank.length_cm = lengthUnit().canonical(numberFrom(m_length->text()).value_or(0.0));
    tank.depth_cm = lengthUnit().canonical(numberFrom(m_depth->text()).value_or(0.0));
    tank.height_cm = lengthUnit().canonical(numberFrom(m_height->text()).value_or(0.0));
    tank.flooded = m_flooded->moment();
    tank.start = m_start->currentIndex();
    return tank;
}

void FirstRunPage::refresh()
{
    const FirstTank typed = given();
    const record::Tank tank = tankOf(typed);
    const record::Layout layout = layoutOf(typed);
    const double bed = proposedBed_cm(typed.height_cm);
    m_outline->setBox(tank.length_cm, tank.height_cm, layout.gap_cm,
                      typed.height_cm > 0 ? bed / typed.height_cm : 0.15);
    const auto net = record::netVolume(tank, layout);
    const bool known = tank.length_cm > 0 && tank.depth_cm > 0 && tank.height_cm > 0 && net;
    if (known) {
        m_litres->setText(tr("%1 glass, about %2 of water")
                              .arg(wording::litresText(record::glassVolume_L(tank)), wording::litresText(net->litres)));
        m_less->setText(
            tr("less %1 of bed, %2 of air and %3 mm glass")
                .arg(wording::lengthText(bed), wording::lengthText(layout.gap_cm), numberText(tank.glass_mm)));
    } else {
        m_litres->setText(tr("The volume follows from the glass"));
        m_less->setText(tr("Leave it empty if you have no rule at hand; volumes are then unknown."));
    }
    m_proposal->setText(layout.flooded.isValid() ? proposedWork(tank, layout, m_keeper.clock().now())
                                                 : tr("The day it was flooded is not understood; try 2026-11-25."));
    m_problem->hide();
}

void FirstRunPage::add()
{
    const FirstTank typed = given();
    QString problem;
    QWidget* at = nullptr;
    if (typed.name.trimmed().isEmpty()) {
        problem = tr("The tank has no name yet. Give it one that you would say aloud.");
        at = m_name;
    } else if (!typed.flooded.isValid()) {
        problem = tr("The day it was flooded is not understood. Type it as 2026-11-25.");
        at = m_flooded;
    }
    for (QLineEdit* field : {m_length, m_depth, m_height}) {
        const auto number = numberFrom(field->text());
        if (problem.isEmpty() && !field->text().trimmed().isEmpty() && (!number || *number < 0.0 || *number > 1000.0)) {
            problem = tr("%1: \"%2\" is not a measure between 0 and 1000.").arg(field->accessibleName(), field->text());
            at = field;
        }
    }
    if (!problem.isEmpty()) {
        m_problem->setText(problem);
        m_problem->show();
        announce(m_problem, problem);
        at->setFocus();
        return;
    }
    emit tankGiven(tankOf(typed), layoutOf(typed));
}

void FirstRunPage::clearFields()
{
    for (QLineEdit* field : {m_name, m_length, m_depth, m_height}) {
        field->clear();
    }
    m_flooded->clear();
    m_start->setCurrentIndex(0);
}

void FirstRunPage::setStorePlace(const QString& path)
{
    m_place->setText(path.isEmpty() ? tr("Saved on this computer only, in the store that is open.")
                                    : tr("Saved on this computer only, in one file: %1").arg(path));
}

void FirstRunPage::focusFirst()
{
    m_name->setFocus();
}

void FirstRunPage::arrange()
{
    m_cards->setDirection(width() >= m_theme.px(900) ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_inCard->setDirection(width() >= m_theme.px(680) ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    const int side = std::max(24, (width() - m_theme.px(1240)) / 2);
    m_cards->setContentsMargins(side, 30, side, 30);
    m_head->setContentsMargins(side, 34, side, 20);
}

void FirstRunPage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    arrange();
}

void FirstRunPage::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        add();
        event->accept();
        return;
    }
    QWidget::keyPressEvent(event);
}

void FirstRunPage::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme[Token::Window]);
}

} // namespace littoral::ui
