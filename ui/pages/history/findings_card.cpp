// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/history/findings_card.h"

#include "ui/pages/history/ask_line.h"
#include "ui/theme/figures.h"
#include "ui/widgets/disclosure.h"
#include "ui/widgets/flow_layout.h"

#include <QApplication>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

constexpr int kMargin = 12;

/// A box tinted to say what kind of words stand in it.
class Tinted final : public QWidget
{
public:
    Tinted(Theme& theme, Token ground, Token edge)
        : m_theme(theme)
        , m_ground(ground)
        , m_edge(edge)
    {
        auto* column = new QVBoxLayout(this);
        column->setContentsMargins(12, 8, 10, 8);
        column->setSpacing(4);
    }
    void add(TextStyle style, Token token, const QString& words)
    {
        auto* text = (new Text(m_theme, style, words))->wrapped();
        text->setToken(token);
        layout()->addWidget(text);
    }

protected:
    void paintEvent(QPaintEvent*) override
    {
        QPainter painter(this);
        painter.fillRect(rect(), m_theme[m_ground]);
        painter.fillRect(QRect(0, 0, 3, height()), m_theme[m_edge]);
    }

private:
    Theme& m_theme;
    Token m_ground, m_edge;
};

QWidget* inset(QWidget* inside)
{
    auto* box = new QWidget;
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(kMargin, 2, kMargin, 4);
    column->addWidget(inside);
    return box;
}

} // namespace

SupportBar::SupportBar(Theme& theme, double share, const QString& word, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_share(share)
    , m_word(word)
{
    setAccessibleName(word);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    connect(&theme, &Theme::changed, this, &QWidget::updateGeometry);
}

QSize SupportBar::sizeHint() const
{
    const double word = figuresWidth(m_theme.font(11, 600), m_word);
    return {m_theme.px(108) + static_cast<int>(std::ceil(word)) + 2,
            std::max(m_theme.px(16), QFontMetrics(m_theme.font(11, 600)).height())};
}

void SupportBar::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const double high = m_theme.px(7);
    const QRectF whole(0.5, std::round((height() - high) / 2) + 0.5, m_theme.px(98), high);
    painter.setPen(QPen(m_theme[Token::Rule2], 1));
    painter.setBrush(m_theme[Token::Panel]);
    painter.drawRect(whole);
    painter.fillRect(QRectF(whole.left() + 1, whole.top() + 1, (whole.width() - 2) * std::clamp(m_share, 0.0, 1.0),
                            whole.height() - 1),
                     m_theme[Token::Accent]);
    painter.setFont(m_theme.font(11, 600));
    painter.setPen(m_theme[Token::Ink2]);
    drawFigures(painter, QRectF(m_theme.px(106), 0, width() - m_theme.px(106), height()),
                Qt::AlignVCenter | Qt::AlignLeft, m_word);
}

FindingsCard::FindingsCard(Theme& theme, QWidget* parent)
    : HistoryCard(theme, tr("Findings, most supported first"), parent)
{
}

FindingsCard::~FindingsCard()
{
    delete m_inside;
}

void FindingsCard::setCase(const facade::CaseFile& file, bool writable)
{
    m_writable = writable;
    // The keyboard comes back to the line it was on, or to the first one when that line is gone.
    QWidget* focus = QApplication::focusWidget();
    const bool had = focus != nullptr && isAncestorOf(focus);
    QString spot;
    for (QWidget* at = focus; had && at != this && spot.isEmpty(); at = at->parentWidget()) {
        spot = at->property("spot").toString();
    }
    delete m_inside;
    m_inside = new QWidget;
    auto* column = new QVBoxLayout(m_inside);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    setNote(file.silent ? QString() : tr("%1. The whole record is weighed.").arg(file.rests));
    if (file.findings.empty()) {
        auto* none =
            (new Text(theme(), TextStyle::Body,
                      file.silent ? tr("Nothing is recorded about this layout yet. What is seen is written down as an "
                                       "observation, and weighed here.")
                                  : tr("Nothing that was seen points to a condition. Write down what you see as an "
                                       "observation; the questions below sharpen it.")))
                ->wrapped();
        none->setContentsMargins(kMargin, 4, kMargin, 4);
        column->addWidget(none);
    }
    int place = 0;
    for (const facade::CaseFinding& finding : file.findings) {
        const bool open = (place == 0 && !m_shut.contains(finding.id)) || m_open.contains(finding.id);
        ++place;
        column->addWidget(makeFinding(finding, place, open, place == 1 ? file.check : std::nullopt));
    }
    if (file.findings.empty() && file.check && !file.silent) {
        column->addWidget(inset(makeCheck(*file.check)));
    }
    if (!file.weak.empty()) {
        column->addWidget(inset(makeWeak(file.weak)));
    }
    if (!file.aboveAll.isEmpty() && !file.findings.empty()) {
        auto* above = (new Text(theme(), TextStyle::Secondary, file.aboveAll))->wrapped();
        above->setContentsMargins(kMargin, 0, kMargin, 0);
        column->addWidget(above);
    }
    this->column()->addWidget(m_inside);
    if (had) {
        const QList<AskLine*> all = lines();
        const auto same = std::ranges::find_if(
            all, [&](AskLine* line) { return !spot.isEmpty() && line->property("spot").toString() == spot; });
        if (same != all.end()) {
            (*same)->setFocus();
        } else if (!all.isEmpty()) {
            all.front()->setFocus();
        }
    }
}

QList<AskLine*> FindingsCard::lines() const
{
    return m_inside == nullptr ? QList<AskLine*>() : m_inside->findChildren<AskLine*>();
}

void FindingsCard::begin()
{
    const QList<AskLine*> all = lines();
    if (!all.isEmpty()) {
        all.front()->setFocus(Qt::OtherFocusReason);
    }
}

void FindingsCard::addAnswers(AskLine* line, QWidget* into, const facade::CaseEvidence& evidence)
{
    line->setOpens(true);
    auto* answers = new AnswerRow(theme(), evidence);
    answers->setProperty("spot", line->property("spot"));
    answers->hide();
    into->layout()->addWidget(answers);
    connect(line, &QAbstractButton::toggled, answers, [answers](bool open) {
        answers->setVisible(open);
        if (open) {
            answers->begin();
        }
    });
    connect(answers, &AnswerRow::answered, this, &FindingsCard::answered);
    connect(answers, &AnswerRow::readingWanted, this, &FindingsCard::readingWanted);
    connect(answers, &AnswerRow::misunderstood, this, &FindingsCard::misunderstood);
}

void FindingsCard::addLine(QWidget* into, const facade::CaseEvidence& evidence, const QString& spot)
{
    const bool known = evidence.side != facade::EvidenceSide::Unknown;
    const bool holds = evidence.side == facade::EvidenceSide::For;
    auto* line = new AskLine(theme(), known ? (holds ? tr("+ for") : tr("− against")) : tr("unknown"),
                             known ? (holds ? Token::Ok : Token::Act) : Token::Ink2, evidence.text);
    line->setRests(evidence.rests);
    line->setProperty("spot", spot);
    into->layout()->addWidget(line);
    connect(line, &AskLine::pointed, this, &FindingsCard::pointed);
    connect(line, &AskLine::left, this, [this] { emit pointed({}); });
    connect(line, &AskLine::showWanted, this, &FindingsCard::showWanted);
    if (!known && m_writable && evidence.canBeAnswered()) {
        addAnswers(line, into, evidence);
    } else {
        connect(line, &QAbstractButton::clicked, this, [this, line] { emit showWanted(line->rests()); });
    }
}

QWidget* FindingsCard::makeFinding(const facade::CaseFinding& finding, int place, bool open,
                                   const std::optional<facade::CaseCheck>& check)
{
    auto* box = new QWidget;
    box->setProperty("topic", finding.id); // what F1 is about in here
    box->setAccessibleName(tr("%1. %2, %3").arg(place).arg(finding.name, finding.supportWord));
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(kMargin - 4, 4, kMargin - 4, 2);
    column->setSpacing(0);
    auto* head = new QWidget;
    auto* flow = new FlowLayout(head, 12);
    flow->setContentsMargins(4, 2, 4, 3);
    flow->addWidget(new Text(theme(), TextStyle::Strong, tr("%1 · %2").arg(place).arg(finding.name)));
    flow->addWidget(new SupportBar(theme(), finding.bar, finding.supportWord));
    column->addWidget(head);
    for (const facade::CaseEvidence& evidence : finding.evidence) {
        const QString side = QString::number(static_cast<int>(evidence.side));
        addLine(box, evidence, u"%1/%2/%3"_s.arg(finding.id, side, evidence.key));
    }
    if (check) {
        column->addWidget(inset(makeCheck(*check)));
    }
    auto* more = new DisclosureLine(theme());
    more->setWords(tr("First actions, with their cautions"), {});
    more->setAccessibleName(tr("First actions against %1, with their cautions").arg(finding.name));
    more->setProperty("spot", finding.id + u"/more"_s);
    QWidget* actions = makeActions(finding);
    column->addWidget(more);
    column->addWidget(actions);
    more->setChecked(open);
    actions->setVisible(open);
    connect(more, &QAbstractButton::toggled, this, [this, actions, id = finding.id](bool on) {
        actions->setVisible(on);
        m_open.removeAll(id);
        m_shut.removeAll(id);
        (on ? m_open : m_shut) << id;
    });
    return box;
}

QWidget* FindingsCard::makeActions(const facade::CaseFinding& finding)
{
    auto* box = new QWidget;
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(4, 4, 4, 6);
    column->setSpacing(6);
    const auto words = [&](TextStyle style, Token token, const QString& text) {
        auto* made = (new Text(theme(), style, text))->wrapped();
        made->setToken(token);
        column->addWidget(made);
    };
    words(TextStyle::Body, Token::Ink2, finding.look);
    if (!finding.deferral.isEmpty() || !finding.cautions.empty()) {
        auto* care = new Tinted(theme(), Token::WatchTint, Token::Watch);
        care->add(TextStyle::Strong, Token::Watch, tr("Before anything is done"));
        if (!finding.deferral.isEmpty()) {
            care->add(TextStyle::Strong, Token::Ink, finding.deferral);
        }
        for (const wording::CautionText& caution : finding.cautions) {
            care->add(TextStyle::Body, Token::Ink, wording::cautionText(caution));
        }
        column->addWidget(care);
    }
    if (!finding.actions.isEmpty()) {
        words(TextStyle::Strong, Token::Ink, tr("First"));
        words(TextStyle::Body, Token::Ink, u"• "_s + finding.actions.join(u"\n• "_s));
    }
    if (!finding.avoid.isEmpty()) {
        words(TextStyle::Strong, Token::Ink, tr("Avoid"));
        words(TextStyle::Body, Token::Ink, u"• "_s + finding.avoid.join(u"\n• "_s));
    }
    if (!finding.nextLook.isEmpty()) {
        words(TextStyle::Body, Token::Ink2, tr("Next look: %1").arg(finding.nextLook));
    }
    words(TextStyle::Secondary, Token::Ink3, tr("Source: %1").arg(finding.source));
    auto* foot = new QWidget;
    auto* flow = new FlowLayout(foot, 8);
    flow->setContentsMargins(0, 2, 0, 0);
    if (m_writable && !finding.actions.isEmpty()) {
        auto* tasks = new QPushButton(tr("Make these %1 tasks").arg(finding.actions.size()));
        tasks->setObjectName(u"tasks"_s);
        connect(tasks, &QPushButton::clicked, this, [this, actions = finding.actions] { emit tasksWanted(actions); });
        flow->addWidget(tasks);
    }
    auto* guide = new QPushButton(tr("Read it in the guide"));
    guide->setAccessibleName(tr("Read about %1 in the guide").arg(finding.name));
    connect(guide, &QPushButton::clicked, this, [this, id = finding.id] { emit guideWanted(id); });
    flow->addWidget(guide);
    column->addWidget(foot);
    return box;
}

QWidget* FindingsCard::makeCheck(const facade::CaseCheck& check)
{
    auto* box = new Tinted(theme(), Token::InfoTint, Token::Info);
    box->setAccessibleName(check.text);
    auto* line = new AskLine(theme(), tr("decides"), Token::Info, check.text);
    line->setProperty("spot", u"check"_s);
    box->layout()->addWidget(line);
    connect(line, &AskLine::pointed, this, &FindingsCard::pointed);
    if (m_writable && check.ask.canBeAnswered()) {
        addAnswers(line, box, check.ask);
    }
    if (!check.outcomes.isEmpty()) {
        box->add(TextStyle::Body, Token::Ink2, check.outcomes.join(u'\n'));
    }
    return box;
}

QWidget* FindingsCard::makeWeak(const std::vector<facade::CaseFinding>& weak)
{
    auto* made = new Disclosure(theme());
    QStringList told;
    for (const facade::CaseFinding& finding : weak) {
        told << tr("%1: %2").arg(finding.name, finding.supportWord.toLower());
    }
    made->setWords(tr("Weighed, and resting on no sign or spoken against"), QString::number(weak.size()),
                   tr("Weighed, and resting on no sign or spoken against: %1").arg(weak.size()), told);
    return made;
}

} // namespace littoral::ui
