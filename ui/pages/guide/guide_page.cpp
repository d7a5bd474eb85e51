// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/guide/guide_page.h"

#include "ui/pages/guide/own_note.h"
#include "ui/pages/guide/reading_pane.h"
#include "ui/pages/guide/topic_list.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/notice_strip.h"

#include <QAction>
#include <QBoxLayout>
#include <QComboBox>
#include <QCoreApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <QSignalBlocker>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

QFrame* card(QWidget* inside)
{
    auto* frame = new QFrame;
    frame->setProperty("card", true);
    frame->setFrameShape(QFrame::StyledPanel);
    auto* box = new QVBoxLayout(frame);
    box->setContentsMargins(1, 1, 1, 1);
    box->setSpacing(0);
    box->addWidget(inside);
    return frame;
}

QMap<QString, QString> ownFacts(const record::Row& row)
{
    QMap<QString, QString> own;
    for (auto it = row.settings.begin(); it != row.settings.end(); ++it) {
        if (it.key().startsWith(u"fact."_s)) {
            own.insert(it.key(), it.value());
        }
    }
    for (const record::TaskTemplate& one : row.templates) {
        own.insert(one.key, QString::fromUtf8(one.definition));
    }
    return own;
}

} // namespace

GuidePage::GuidePage(facade::Keeper& keeper, Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_keeper(keeper)
    , m_theme(theme)
    , m_model(new GuideModel(this))
    , m_list(new TopicList(theme, *m_model))
    , m_pane(new ReadingPane(theme))
    , m_note(new OwnNote(keeper, theme))
    , m_field(new QLineEdit)
    , m_found(new Text(theme, TextStyle::Secondary))
    , m_kinds(new QComboBox)
    , m_back(new QPushButton(tr("Back")))
    , m_forward(new QPushButton(tr("Forward")))
    , m_edit(new QPushButton(tr("Edit")))
    , m_takeBack(new QPushButton(tr("Back to the built-in")))
    , m_add(new QPushButton(tr("Add")))
    , m_reading(new QBoxLayout(QBoxLayout::LeftToRight))
    , m_trail(QString())
{
    setAccessibleName(tr("Guide"));
    refreshFacts();
    m_bar = makeBar();
    m_listCard = makeList();
    m_reading->setSpacing(12);
    m_reading->addWidget(card(m_pane), 1);
    m_reading->addWidget(m_note);
    auto* middle = new QHBoxLayout;
    middle->setContentsMargins(14, 12, 14, 12);
    middle->setSpacing(12);
    middle->addWidget(m_listCard);
    middle->addLayout(m_reading, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_bar);
    column->addLayout(middle, 1);
    makeKeys();
    connect(m_list, &TopicList::chosen, this, &GuidePage::open);
    connect(m_pane, &ReadingPane::topicWanted, this, &GuidePage::open);
    connect(m_note, &OwnNote::told, this, &GuidePage::told);
    connect(m_note, &OwnNote::failed, this, &GuidePage::failed);
    connect(&keeper, &facade::Keeper::changed, this, &GuidePage::refreshFacts);
    connect(&keeper, &facade::Keeper::storeOpened, this, &GuidePage::refreshFacts);
    connect(&keeper, &facade::Keeper::storeClosed, this, &GuidePage::refreshFacts);
    connect(&theme, &Theme::changed, this, &GuidePage::arrange);
    display({});
    refreshFound();
}

QWidget* GuidePage::makeBar()
{
    auto* bar = new QWidget;
    bar->setAccessibleName(tr("Bar of the Guide page"));
    auto* flow = new FlowLayout(bar, 12);
    flow->setContentsMargins(14, 7, 14, 7);
    flow->addWidget(new Text(m_theme, TextStyle::Name, tr("Guide")));
    m_back->setProperty("keyHint", tr("Alt ←"));
    m_forward->setProperty("keyHint", tr("Alt →"));
    m_back->setAccessibleName(tr("Back to the topic read before"));
    m_forward->setAccessibleName(tr("Forward again"));
    auto* trail = new QWidget;
    auto* together = new QHBoxLayout(trail);
    together->setContentsMargins(0, 0, 0, 0);
    together->setSpacing(6);
    together->addWidget(m_back);
    together->addWidget(m_forward);
    flow->addWidget(trail);
    auto* own = new QWidget;
    auto* ownBox = new QHBoxLayout(own);
    ownBox->setContentsMargins(0, 0, 0, 0);
    ownBox->setSpacing(6);
    addOwnButtons(ownBox);
    m_kinds->setAccessibleName(tr("Kinds shown"));
    m_kinds->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    flow->addWidget(m_kinds);
    flow->addWidget(own);
    makeKinds();
    connect(m_kinds, &QComboBox::activated, this, &GuidePage::chooseShelf);
    connect(m_back, &QPushButton::clicked, this, &GuidePage::back);
    connect(m_forward, &QPushButton::clicked, this, &GuidePage::forward);
    return bar;
}

/// A list to drop down: more shelves than fit side by side at twice the text size.
void GuidePage::makeKinds()
{
    const QSignalBlocker quiet(m_kinds);
    m_kinds->clear();
    m_kinds->addItem(tr("All kinds"));
    for (const GuideShelf& shelf : m_model->shelves()) {
        m_kinds->addItem(tr("%1 (%2)").arg(shelf.name).arg(shelf.topics.size()));
    }
}

QWidget* GuidePage::makeList()
{
    m_field->setPlaceholderText(tr("Search the guide"));
    m_field->setAccessibleName(tr("Search the guide: beginnings of words, all of them"));
    m_field->setClearButtonEnabled(true);
    m_field->installEventFilter(this);
    auto* inside = new QWidget;
    auto* column = new QVBoxLayout(inside);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    auto* top = new QVBoxLayout;
    top->setContentsMargins(12, 12, 12, 8);
    top->setSpacing(6);
    top->addWidget(m_field);
    top->addWidget(m_found->wrapped());
    column->addLayout(top);
    column->addWidget(m_list, 1);
    connect(m_field, &QLineEdit::textChanged, this, [this](const QString& text) {
        m_model->search(text);
        m_list->showTopic(topic());
        refreshFound();
    });
    connect(m_field, &QLineEdit::returnPressed, this, [this] {
        if (const int first = m_model->firstTopic(); first >= 0 && m_list->current().isEmpty()) {
            m_list->setCurrentIndex(m_model->index(first));
        }
        m_list->setFocus(Qt::OtherFocusReason);
    });
    return card(inside);
}

void GuidePage::makeKeys()
{
    const auto key = [this](const QString& text, const QList<QKeySequence>& keys, void (GuidePage::*run)()) {
        auto* action = new QAction(text, this);
        action->setShortcuts(keys);
        action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
        connect(action, &QAction::triggered, this, run);
        addAction(action);
    };
    key(tr("Back"), {QKeySequence(Qt::ALT | Qt::Key_Left), QKeySequence(Qt::Key_Back)}, &GuidePage::back);
    key(tr("Forward"), {QKeySequence(Qt::ALT | Qt::Key_Right), QKeySequence(Qt::Key_Forward)}, &GuidePage::forward);
    key(tr("Edit your version of this topic"), {QKeySequence(Qt::ALT | Qt::Key_E)}, &GuidePage::edit);
    key(tr("Search the guide"), {QKeySequence(Qt::CTRL | Qt::Key_F)}, &GuidePage::begin);
}

void GuidePage::begin()
{
    m_field->setFocus(Qt::OtherFocusReason);
    m_field->selectAll();
}

void GuidePage::settle()
{
    m_note->settle();
}

QString GuidePage::topic() const
{
    return m_trail.value(m_place);
}

void GuidePage::open(const QString& wanted)
{
    const QString topic = m_model->has(wanted) ? wanted : QString();
    if (topic != this->topic()) {
        m_trail.resize(m_place + 1);
        m_trail << topic;
        m_place = m_trail.size() - 1;
    }
    display(topic);
}

void GuidePage::openAbout(const QString& subject)
{
    if (subject.isEmpty()) {
        return;
    }
    if (const QString found = topicAbout(subject); !found.isEmpty()) {
        open(found);
    } else {
        search(subject);
    }
}

void GuidePage::search(const QString& text)
{
    if (!m_model->shelf().isEmpty()) {
        m_kinds->setCurrentIndex(0);
        chooseShelf(0);
    }
    m_field->setText(text);
    if (const int first = m_model->firstTopic(); first >= 0) {
        m_list->setCurrentIndex(m_model->index(first));
    }
}

void GuidePage::back()
{
    if (m_place > 0) {
        --m_place;
        display(topic());
    }
}

void GuidePage::forward()
{
    if (m_place + 1 < m_trail.size()) {
        ++m_place;
        display(topic());
    }
}

void GuidePage::display(const QString& topic)
{
    const auto article = m_model->article(topic);
    m_pane->showArticle(article ? *article : startArticle());
    m_note->setVisible(article.has_value());
    m_note->setTopic(topic, article ? article->title : QString());
    m_list->showTopic(topic);
    m_back->setEnabled(m_place > 0);
    m_forward->setEnabled(m_place + 1 < m_trail.size());
    refreshOwn();
    if (article) {
        announce(m_pane, tr("%1, %2").arg(article->title, article->kind));
    }
}

GuideArticle GuidePage::startArticle() const
{
    GuideArticle start;
    start.kind = tr("Guide");
    start.title = tr("What is known, and from where");
    start.lead =
        tr("Conditions a tank can get into, plants and animals with what they bear, the work, and the cautions "
           "that go with it. Every article names its source; much of it is common practice, to be judged "
           "against your own tanks.");
    for (const GuideShelf& shelf : m_model->shelves()) {
        GuideBlock block{GuideBlock::Kind::Links, tr("%1 (%2)").arg(shelf.name).arg(shelf.topics.size()), {}, {}, {}};
        const bool all = shelf.key == u"caution"_s;
        for (const GuideTopic& topic : shelf.topics) {
            if (!all && block.lines.size() == 4) {
                break;
            }
            block.lines.push_back({topic.title, all ? QString() : topic.detail, topic.id, 0});
        }
        start.blocks.push_back(std::move(block));
    }
    if (!m_sources->problems.empty()) {
        GuideBlock unused{GuideBlock::Kind::Lines, tr("Records of yours that could not be used"), {}, {}, {}};
        for (const Error& problem : m_sources->problems) {
            unused.lines.push_back({QString::fromStdString(problem.sentence()), {}, {}, 0});
        }
        start.blocks.insert(start.blocks.begin(), std::move(unused));
    }
    start.source = m_sources->book.aboveAll.isEmpty()
                       ? QString()
                       : QCoreApplication::translate("Facts", m_sources->book.aboveAll.toUtf8().constData());
    return start;
}

void GuidePage::refreshFound()
{
    const int count = m_model->topicCount();
    const bool all = m_field->text().isEmpty();
    m_found->setText(count == 0 ? tr("Nothing has all of these words. Try the beginning of one of them.")
                     : all      ? tr("%n topic(s)", nullptr, count)
                                : tr("%n topic(s) with all of these words", nullptr, count));
}

void GuidePage::refreshFacts()
{
    const QMap<QString, QString> own = ownFacts(m_keeper.row());
    if (m_sources != nullptr && own == m_ownFacts) {
        refreshOwn();
        return;
    }
    m_ownFacts = own;
    m_sources = guideSources(m_keeper.row());
    std::vector<GuideShelf> shelves = factShelves(m_sources);
    shelves.insert(shelves.end(), m_further.begin(), m_further.end());
    m_model->setShelves(std::move(shelves));
    if (m_bar != nullptr) {
        const int kind = m_kinds->currentIndex();
        makeKinds();
        m_kinds->setCurrentIndex(kind);
        display(topic());
        refreshFound();
        emit factsChanged();
    }
}

void GuidePage::addShelf(GuideShelf shelf)
{
    m_further.push_back(shelf);
    std::vector<GuideShelf> shelves = m_model->shelves();
    shelves.push_back(std::move(shelf));
    m_model->setShelves(std::move(shelves));
    makeKinds();
    chooseShelf(0);
    display(topic());
}

void GuidePage::chooseShelf(int index)
{
    const auto& shelves = m_model->shelves();
    m_model->setShelf(index <= 0 ? QString() : shelves[static_cast<std::size_t>(index - 1)].key);
    m_list->showTopic(topic());
    refreshFound();
}

QList<QWidget*> GuidePage::regions() const
{
    return {m_bar, m_listCard, m_pane, m_note};
}

bool GuidePage::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_field && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Down || key == Qt::Key_PageDown) {
            if (m_list->current().isEmpty() && m_model->firstTopic() >= 0) {
                m_list->setCurrentIndex(m_model->index(m_model->firstTopic()));
            }
            m_list->setFocus(Qt::OtherFocusReason);
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

void GuidePage::keyPressEvent(QKeyEvent* event)
{
    if (event->key() != Qt::Key_Escape) {
        QWidget::keyPressEvent(event);
        return;
    }
    if (!m_field->text().isEmpty()) {
        m_field->clear();
        begin();
        return;
    }
    emit leaveWanted();
}

void GuidePage::arrange()
{
    const int list = std::min(m_theme.px(320), std::max(m_theme.px(190), width() * 2 / 5));
    m_listCard->setFixedWidth(list);
    // The note stands beside the article while its lines keep a useful length, else below it.
    const bool wide = width() - list >= m_theme.px(900);
    m_reading->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_note->setMinimumWidth(wide ? m_theme.px(240) : 0);
    m_note->setMaximumWidth(wide ? m_theme.px(280) : QWIDGETSIZE_MAX);
    m_note->setMaximumHeight(wide ? m_theme.px(320) : m_theme.px(104));
    m_reading->setAlignment(m_note, wide ? Qt::AlignTop : Qt::Alignment());
}

void GuidePage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    arrange();
}

void GuidePage::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme[Token::Window]);
    painter.fillRect(m_bar->geometry(), m_theme[Token::Sunk]);
    painter.fillRect(QRect(0, m_bar->geometry().bottom(), width(), 1), m_theme[Token::Rule]);
}

} // namespace littoral::ui
