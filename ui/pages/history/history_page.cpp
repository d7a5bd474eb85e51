// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/history/history_page.h"

#include "ui/pages/history/findings_card.h"
#include "ui/pages/history/record_card.h"
#include "ui/pages/history/reset_card.h"
#include "ui/pages/history/side_cards.h"
#include "ui/pages/history/strip_view.h"
#include "ui/pages/history/talk_card.h"
#include "ui/style/segmented.h"
#include "ui/widgets/card_table.h"
#include "ui/widgets/flow_layout.h"

#include <QAction>
#include <QComboBox>
#include <QKeyEvent>
#include <QListView>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

// Narrower than this at text scale 1, one column at a time.
constexpr int kAllColumns = 940;
// Lower than this at text scale 1, the strip shows one series.
constexpr int kLowPage = 640;
constexpr int kLookBackDays[]{7, 14, 21, 42, 84};
constexpr int kUsualLookBack = 2;

QScrollArea* scroller(QWidget* content, const QString& name)
{
    auto* area = new QScrollArea;
    area->setWidget(content);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setFocusPolicy(Qt::NoFocus);
    area->setAccessibleName(name);
    return area;
}

QWidget* stacked(const QList<QWidget*>& cards)
{
    auto* box = new QWidget;
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(10);
    for (QWidget* card : cards) {
        column->addWidget(card);
    }
    column->addStretch(1);
    return box;
}

} // namespace

HistoryPage::HistoryPage(facade::Keeper& keeper, Theme& theme, Ask& ask, TimeAxis& axis, QWidget* parent)
    : QWidget(parent)
    , m_keeper(keeper)
    , m_theme(theme)
    , m_ask(ask)
    , m_axis(axis)
    , m_desk(keeper)
    , m_glide(*this)
    , m_title(new Text(theme, TextStyle::Name))
    , m_heading(new Text(theme, TextStyle::Body))
    , m_message((new Text(theme, TextStyle::Body))->wrapped())
    , m_question(new QComboBox)
    , m_lookBack(new QComboBox)
    , m_export(new QPushButton(tr("Export PDF")))
    , m_side(new SegmentedControl(tr("Column shown"), {tr("Findings"), tr("Record"), tr("Changes")}))
    , m_body(new QWidget)
    , m_strip(new StripView(theme, axis))
    , m_record(new RecordCard(keeper, theme))
    , m_findings(new FindingsCard(theme))
    , m_talk(new TalkCard(theme))
    , m_reset(new ResetCard(theme))
    , m_changes(new ChangesCard(theme))
    , m_exposure(new ExposureCard(theme))
    , m_compare(new CompareCard(theme))
{
    setAccessibleName(tr("History"));
    m_bar = makeBar();
    m_middle = scroller(stacked({m_findings, m_talk, m_reset}), tr("Findings, scrolling"));
    m_right = scroller(stacked({m_changes, m_exposure, m_compare}), tr("Changes, scrolling"));
    auto* columns = new QHBoxLayout(m_body);
    columns->setContentsMargins(12, 10, 12, 10);
    columns->setSpacing(10);
    columns->addWidget(m_record, 30);
    columns->addWidget(m_middle, 47);
    columns->addWidget(m_right, 37);
    m_message->setContentsMargins(16, 24, 16, 24);
    m_message->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_message->hide();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_bar);
    column->addWidget(m_message, 1);
    column->addWidget(m_strip);
    column->addWidget(m_body, 1);
    connectAll();
    arrange();
}

HistoryPage::~HistoryPage()
{
    // Cards that lose the keyboard while they are taken down have nobody to tell.
    m_findings->disconnect(this);
    m_changes->disconnect(this);
    m_record->disconnect(this);
    m_strip->disconnect(this);
}

QWidget* HistoryPage::makeBar()
{
    auto* bar = new QWidget;
    bar->setAccessibleName(tr("Bar of the History page"));
    auto* flow = new FlowLayout(bar, 10);
    flow->setContentsMargins(14, 7, 14, 7);
    m_heading->setToken(Token::Ink2);
    m_question->setAccessibleName(tr("Question"));
    m_question->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_question->setMinimumContentsLength(28);
    m_lookBack->setAccessibleName(tr("Look back"));
    m_lookBack->addItems({tr("1 week"), tr("2 weeks"), tr("3 weeks"), tr("6 weeks"), tr("12 weeks")});
    m_lookBack->setCurrentIndex(kUsualLookBack);
    m_export->setToolTip(tr("Ctrl+P"));
    flow->addWidget(m_title);
    flow->addWidget(m_heading);
    flow->addWidget(new Text(m_theme, TextStyle::Body, tr("Question")));
    flow->addWidget(m_question);
    flow->addWidget(new Text(m_theme, TextStyle::Body, tr("Look back")));
    flow->addWidget(m_lookBack);
    flow->addWidget(m_export);
    flow->addWidget(m_side);
    return bar;
}

void HistoryPage::connectAll()
{
    m_soon.setSingleShot(true);
    m_soon.setInterval(0);
    connect(&m_soon, &QTimer::timeout, this, &HistoryPage::refresh);
    connect(&m_desk, &facade::CaseDesk::ready, this, &HistoryPage::take);
    connect(&m_desk, &facade::CaseDesk::resetReady, this, [this] { m_reset->setForecast(m_desk.reset()); });
    connect(&m_desk, &facade::CaseDesk::resetFailed, m_reset, &ResetCard::setFailure);
    connect(m_reset, &ResetCard::startChosen, this, &HistoryPage::weigh);
    const auto soon = [this] { m_soon.start(); };
    connect(&m_keeper, &facade::Keeper::changed, this, soon);
    connect(&m_keeper, &facade::Keeper::storeOpened, this, soon);
    connect(&m_keeper, &facade::Keeper::storeClosed, this, soon);
    connect(&m_theme, &Theme::changed, this, &HistoryPage::arrange);
    connect(m_side, &SegmentedControl::chosen, this, &HistoryPage::arrange);
    connect(m_question, &QComboBox::currentIndexChanged, this, [this](int index) {
        if (index >= 0 && index < static_cast<int>(m_questions.size())) {
            m_chosen = m_questions[static_cast<std::size_t>(index)];
            m_newQuestion = true;
            ask();
        }
    });
    connect(m_lookBack, &QComboBox::currentIndexChanged, this, [this] {
        m_newQuestion = true;
        ask();
    });
    connect(m_export, &QPushButton::clicked, this, [this] { print(PaperTo::File); });
    connect(m_compare, &CompareCard::wanted, this, [this](const QString& key, record::LayoutId reference) {
        m_compared = key;
        m_reference = reference;
        ask();
    });
    const auto point = [this](const std::vector<facade::RecordRef>& refs) { this->point(refs); };
    const auto bring = [this](const std::vector<facade::RecordRef>& refs) {
        this->point(refs);
        m_record->bring(refs);
    };
    connect(m_findings, &FindingsCard::pointed, this, point);
    connect(m_findings, &FindingsCard::showWanted, this, bring);
    connect(m_findings, &FindingsCard::answered, this, &HistoryPage::answer);
    connect(m_findings, &FindingsCard::readingWanted, this, &HistoryPage::roundsWanted);
    connect(m_findings, &FindingsCard::misunderstood, this, &HistoryPage::told);
    connect(m_findings, &FindingsCard::tasksWanted, this, &HistoryPage::tasksOf);
    connect(m_findings, &FindingsCard::guideWanted, this, &HistoryPage::guideWanted);
    connect(m_talk, &TalkCard::answered, this, &HistoryPage::answer);
    connect(m_changes, &ChangesCard::pointed, this, bring);
    connect(m_record, &RecordCard::opened, this, &HistoryPage::open);
    connect(m_record, &RecordCard::told, this, &HistoryPage::told);
    connect(m_record, &RecordCard::failed, this, &HistoryPage::failed);
    connect(m_strip, &StripView::opened, this, &HistoryPage::open);
    connect(m_strip, &StripView::reached, this, [this](const facade::RecordRef& ref, const QString& sentence) {
        m_record->bring({ref});
        emit told(sentence);
    });
    const auto key = [this](const QString& name, const QKeySequence& keys, auto run) {
        auto* action = new QAction(name, this);
        action->setShortcut(keys);
        action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
        connect(action, &QAction::triggered, this, run);
        addAction(action);
    };
    key(tr("Find in the record"), QKeySequence(Qt::CTRL | Qt::Key_F), [this] { openFind(); });
    key(tr("Export PDF"), QKeySequence(Qt::CTRL | Qt::Key_P), [this] { print(PaperTo::File); });
    key(tr("Make tasks of the first finding"), QKeySequence(Qt::Key_M), [this] { makeTasks(); });
    key(tr("The comparison as a table"), QKeySequence(Qt::Key_T), [this] { m_compare->toggleTable(); });
    key(tr("Go to now"), QKeySequence(Qt::Key_N), [this] { m_glide.glideToNow(m_axis, m_file.strip.flooded); });
    key(tr("Dates or days since flooding"), QKeySequence(Qt::Key_A), [this] {
        m_axis.setMode(m_axis.mode() == AxisMode::Age ? AxisMode::Calendar : AxisMode::Age);
        m_strip->showWindow(false);
    });
}

bool HistoryPage::isWritable() const
{
    return m_keeper.hasStore() && !m_keeper.isReadOnly();
}

void HistoryPage::arrange()
{
    const bool all = width() >= kAllColumns * m_theme.textScale();
    m_strip->setCompact(height() < kLowPage * m_theme.textScale());
    m_side->setVisible(!all);
    m_middle->setVisible(all || m_side->current() == 0);
    m_record->setVisible(all || m_side->current() == 1);
    m_right->setVisible(all || m_side->current() == 2);
}

QSize HistoryPage::minimumSizeHint() const
{
    return {m_theme.px(300), m_theme.px(300)};
}

void HistoryPage::setSelected(record::TankId tank)
{
    if (tank != m_tank) {
        m_tank = tank;
        m_chosen = {};
        m_reference = {};
        m_compared.clear();
        m_newQuestion = true;
        refresh();
    }
}

/// Cheap while another page is shown: the case is made when this one is.
void HistoryPage::refresh()
{
    m_stale = true;
    if (!isVisible()) {
        return;
    }
    m_stale = false;
    fillQuestions();
    const bool any = !m_questions.empty();
    m_strip->setVisible(any);
    m_body->setVisible(any);
    m_message->setVisible(!any);
    for (QWidget* widget :
         {static_cast<QWidget*>(m_question), static_cast<QWidget*>(m_lookBack), static_cast<QWidget*>(m_export)}) {
        widget->setEnabled(any);
    }
    if (!any) {
        const record::Tank* tank = m_keeper.row().tank(m_tank);
        m_title->setText(tank == nullptr ? QString() : tank->name);
        m_heading->clear();
        m_file = {};
        m_message->setText(tank == nullptr
                               ? tr("Choose a tank at the left. What happened to it, and what points to what, stands "
                                    "here.")
                               : tr("This tank has no layout yet. Once it has one, what happened to it stands here; "
                                    "Edit the tank (Ctrl+T) adds a layout."));
        return;
    }
    ask();
}

void HistoryPage::fillQuestions()
{
    m_questions = facade::caseQuestions(m_keeper.row(), m_tank, m_keeper.clock().now());
    const auto same = std::ranges::find_if(m_questions, [this](const facade::CaseQuestion& question) {
        const bool open = m_chosen.subject.isEmpty() && question.subject.isEmpty();
        return question.layout == m_chosen.layout && question.subject == m_chosen.subject &&
               question.losses == m_chosen.losses && (open || question.onset == m_chosen.onset);
    });
    const std::size_t place = same == m_questions.end() ? 0 : static_cast<std::size_t>(same - m_questions.begin());
    const QSignalBlocker quiet(m_question);
    m_question->clear();
    for (const facade::CaseQuestion& question : m_questions) {
        m_question->addItem(question.text);
    }
    if (!m_questions.empty()) {
        m_chosen = m_questions[place];
        m_question->setCurrentIndex(static_cast<int>(place));
    }
}

void HistoryPage::ask()
{
    if (m_questions.empty() || !isVisible()) {
        m_stale = true;
        return;
    }
    facade::CaseRequest request;
    request.question = m_chosen;
    request.lookBackDays = kLookBackDays[std::clamp(m_lookBack->currentIndex(), 0, 4)];
    request.reference = m_reference;
    request.compared = m_compared;
    m_desk.ask(request);
    weigh();
}

/// Carrying on against starting afresh, while the layout runs and the choice is on show.
void HistoryPage::weigh()
{
    const record::LayoutRecord* layout = m_keeper.row().layout(m_chosen.layout);
    const bool running = layout != nullptr && !layout->layout.ended && layout->layout.flooded <= m_keeper.clock().now();
    m_reset->setVisible(running);
    if (running) {
        m_desk.weighReset(m_chosen.layout, m_reset->start());
        if (m_desk.isWeighing()) {
            m_reset->setWaiting();
        }
    }
}

void HistoryPage::take(const facade::CaseFile& file)
{
    m_file = file;
    m_title->setText(m_file.tankName);
    m_heading->setText(m_file.heading);
    m_strip->setStrip(m_file.strip);
    m_strip->setMarked({});
    m_record->setMarked({});
    m_record->setCase(m_file);
    m_findings->setCase(m_file, isWritable());
    m_talk->setTalk(m_file.talk, isWritable());
    m_changes->setCase(m_file);
    m_exposure->setCase(m_file);
    m_compare->setComparison(m_file.comparison);
    orderTabs();
    if (m_newQuestion) {
        m_newQuestion = false;
        m_strip->showWindow(false);
    }
}

/// Left to right, top to bottom: cards made anew would otherwise come last.
void HistoryPage::orderTabs()
{
    QWidget* before = nullptr;
    for (QWidget* part : regions()) {
        for (QWidget* child : QList<QWidget*>{part} + part->findChildren<QWidget*>()) {
            // Lists of combo boxes live in windows of their own.
            if ((child->focusPolicy() & Qt::TabFocus) == 0 || child->window() != window()) {
                continue;
            }
            if (before != nullptr) {
                setTabOrder(before, child);
            }
            before = child;
        }
    }
}

void HistoryPage::wait()
{
    if (m_soon.isActive() || m_stale) {
        m_soon.stop();
        refresh();
    }
    m_desk.wait(false);
}

void HistoryPage::waitForReset()
{
    wait();
    m_desk.wait(true);
}

void HistoryPage::point(const std::vector<facade::RecordRef>& refs)
{
    m_strip->setMarked(refs);
    m_record->setMarked(refs);
}

void HistoryPage::open(const facade::RecordRef& ref)
{
    if (ref.entry) {
        emit entryOpenWanted(ref.entry);
    } else if (ref.reading) {
        emit readingOpenWanted(ref.reading);
    }
}

QString HistoryPage::focusedTopic() const
{
    return m_file.findings.empty() ? QString() : m_file.findings.front().id;
}

void HistoryPage::begin()
{
    if (!m_findings->lines().isEmpty()) {
        m_findings->begin();
    } else if (!m_questions.empty()) {
        m_question->setFocus(Qt::OtherFocusReason);
    }
}

void HistoryPage::openFind()
{
    if (!m_record->isVisible()) {
        m_side->setCurrent(1);
        arrange();
    }
    m_record->openFind();
}

QList<QWidget*> HistoryPage::regions() const
{
    return {m_bar, m_strip, m_record, m_findings, m_talk, m_reset, m_right};
}

void HistoryPage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    arrange();
}

void HistoryPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (m_stale) {
        refresh();
    }
}

void HistoryPage::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape && !m_strip->marked().empty()) {
        point({});
        return;
    }
    QWidget::keyPressEvent(event);
}

void HistoryPage::paintEvent(QPaintEvent*)
{
    QPainter(this).fillRect(rect(), m_theme[Token::Window]);
}

} // namespace littoral::ui
