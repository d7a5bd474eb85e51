// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/lanes/why_strip.h"

#include "core/facts/entry_cautions.h"
#include "core/wording/caution_words.h"
#include "ui/paint/glyphs.h"
#include "ui/widgets/flow_layout.h"

#include <QBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPainter>
#include <QPushButton>
#include <QStackedWidget>
#include <algorithm>

namespace littoral::ui {

namespace {

QPushButton* keyed(const QString& text, const QString& key)
{
    auto* button = new QPushButton(text);
    button->setProperty("keyHint", key);
    button->setAccessibleDescription(WhyStrip::tr("Key in the lanes: %1").arg(key));
    return button;
}

} // namespace

WhyStrip::WhyStrip(Theme& theme, const record::Clock& clock, DayReader readDay, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_clock(clock)
    , m_readDay(std::move(readDay))
    , m_stack(new QStackedWidget)
{
    setAccessibleName(tr("Why it is due"));
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(m_stack);
    m_stack->addWidget(makeShown());
    m_stack->addWidget(makeAsked());
    // Its two pages must not dictate the width of the window: it rearranges itself instead.
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    connect(&m_theme, &Theme::changed, this, &WhyStrip::applyTheme);
    applyTheme();
    showSentence(facade::Status::Unknown, tr("Nothing has the focus"),
                 tr("The arrow keys go to a lane and along its work."), false);
}

QWidget* WhyStrip::makeShown()
{
    auto* shown = new QWidget;
    m_line = new QHBoxLayout(shown);
    m_label = new QLabel;
    m_label->setTextFormat(Qt::RichText);
    m_label->setWordWrap(true);
    m_line->addWidget(m_label, 1);
    m_buttons = new QWidget;
    auto* row = new FlowLayout(m_buttons, 8); // at 200 % in a small window they take two lines
    row->setContentsMargins(0, 0, 0, 0);
    m_done = keyed(tr("Done today"), tr("Space"));
    m_snooze = keyed(tr("Snooze"), QStringLiteral("S"));
    m_skip = keyed(tr("Skip, with reason"), QStringLiteral("K"));
    m_open = keyed(tr("Open"), tr("Enter"));
    m_rule = new QPushButton(tr("Rule"));
    m_rule->setAccessibleName(tr("See and change the rule this work follows"));
    for (QPushButton* button : {m_done, m_snooze, m_skip, m_open, m_rule}) {
        row->addWidget(button);
    }
    m_line->addWidget(m_buttons, 0, Qt::AlignRight);
    connect(m_done, &QPushButton::clicked, this, &WhyStrip::doneWanted);
    connect(m_snooze, &QPushButton::clicked, this, &WhyStrip::snoozeWanted);
    connect(m_skip, &QPushButton::clicked, this, &WhyStrip::skipWanted);
    connect(m_open, &QPushButton::clicked, this, &WhyStrip::openWanted);
    connect(m_rule, &QPushButton::clicked, this, [this] { emit ruleWanted(m_templateKey); });
    return shown;
}

QWidget* WhyStrip::makeAsked()
{
    auto* asked = new QWidget;
    m_askLine = new QHBoxLayout(asked);
    m_question = new QLabel;
    m_question->setWordWrap(true);
    m_field = new QLineEdit;
    m_field->installEventFilter(this);
    m_question->setBuddy(m_field);
    m_hint = new QLabel;
    m_hint->setWordWrap(true);
    m_take = keyed(QString(), tr("Enter"));
    m_take->setProperty("primary", true);
    auto* back = keyed(tr("Not now"), tr("Esc"));
    m_askLine->addWidget(m_question);
    m_askLine->addWidget(m_field);
    m_askLine->addWidget(m_take);
    m_askLine->addWidget(back);
    m_askLine->addWidget(m_hint, 1);
    connect(m_take, &QPushButton::clicked, this, &WhyStrip::answer);
    connect(back, &QPushButton::clicked, this, &WhyStrip::stepBack);
    return asked;
}

void WhyStrip::showWork(const QString& tank, const facade::LaneChip& chip)
{
    m_status = chip.overdue ? facade::Status::Overdue : facade::Status::Waiting;
    m_title = tr("%1, %2.", "tank, work: the bold beginning of the strip").arg(tank, chip.title);
    m_rest = chip.why;
    m_before = wording::cautionLine(facts::builtInFacts(), facts::cautionsFor(facts::builtInFacts(), chip.item));
    m_work = true;
    const bool question = chip.item.reason.loosening.has_value();
    m_done->setText(question ? tr("Ease them") : tr("Done today"));
    m_skip->setText(question ? tr("Leave as it is, with reason") : tr("Skip, with reason"));
    m_templateKey = chip.item.templateKey;
    setButtons(true, true);
    applyTheme();
}

void WhyStrip::showSentence(facade::Status status, const QString& title, const QString& sentence, bool canOpen)
{
    m_status = status;
    m_title = tr("%1.", "bold beginning of the foot strip").arg(title);
    m_rest = sentence;
    m_before.clear();
    m_work = false;
    m_templateKey.clear();
    setButtons(false, canOpen);
    applyTheme();
}

void WhyStrip::setReadOnly(bool readOnly)
{
    m_readOnly = readOnly;
    setButtons(m_work, m_open->isEnabled());
}

void WhyStrip::setButtons(bool work, bool open)
{
    for (QPushButton* button : {m_done, m_snooze, m_skip}) {
        button->setEnabled(work && !m_readOnly);
    }
    m_open->setEnabled(open);
    m_rule->setVisible(!m_templateKey.isEmpty());
}

QString WhyStrip::text() const
{
    const QString said = m_title + QLatin1Char(' ') + m_rest;
    return m_before.isEmpty() ? said : said + QLatin1Char(' ') + m_before;
}

void WhyStrip::askSnooze(const facade::LaneChip& chip)
{
    ask(Question::Snooze, chip);
}

void WhyStrip::askSkip(const facade::LaneChip& chip)
{
    ask(Question::Skip, chip);
}

QString WhyStrip::keptKey() const
{
    const auto& item = m_asked->item;
    return QStringLiteral("%1/%2/%3/%4")
        .arg(static_cast<int>(m_kind))
        .arg(item.layout.value)
        .arg(item.templateKey, item.cadenceDue.toString(Qt::ISODate));
}

void WhyStrip::ask(Question question, const facade::LaneChip& chip)
{
    if (m_readOnly) {
        return;
    }
    if (m_asked) {
        m_kept.insert(keptKey(), m_field->text());
    }
    m_kind = question;
    m_asked = chip;
    const bool snooze = question == Question::Snooze;
    m_question->setText(snooze ? tr("Snooze \"%1\" until").arg(chip.title) : tr("Skip \"%1\" because").arg(chip.title));
    m_field->setAccessibleName(m_question->text());
    m_field->setPlaceholderText(snooze ? QString() : tr("reason, kept in the record"));
    m_take->setText(snooze ? tr("Snooze") : tr("Skip"));
    const QString tomorrow = QLocale().toString(m_clock.today().addDays(1), QStringLiteral("d MMM yyyy"));
    m_field->setText(m_kept.value(keptKey(), snooze ? tomorrow : QString()));
    m_hint->clear();
    m_stack->setCurrentIndex(1);
    m_field->setFocus(Qt::OtherFocusReason);
    m_field->selectAll();
    arrange();
    update();
}

void WhyStrip::answer()
{
    if (!m_asked) {
        return;
    }
    const facade::LaneChip chip = *m_asked;
    if (m_kind == Question::Snooze) {
        const QDate day = m_readDay(m_field->text());
        if (!day.isValid()) {
            m_hint->setText(tr("That is not a day. Type it as 27 Nov or 2026-11-27."));
            return;
        }
        if (day <= m_clock.today()) {
            m_hint->setText(tr("Snoozing needs a day after today."));
            return;
        }
        m_kept.remove(keptKey());
        m_asked.reset();
        m_stack->setCurrentIndex(0);
        emit snoozed(chip, day);
    } else {
        const QString reason = m_field->text().trimmed();
        if (reason.isEmpty()) {
            m_hint->setText(tr("A word is enough, so that the record says why."));
            return;
        }
        m_kept.remove(keptKey());
        m_asked.reset();
        m_stack->setCurrentIndex(0);
        emit skipped(chip, reason);
    }
    emit asked();
    update();
}

void WhyStrip::stepBack()
{
    if (m_asked) {
        m_kept.insert(keptKey(), m_field->text());
        m_asked.reset();
    }
    m_stack->setCurrentIndex(0);
    emit asked();
    update();
}

bool WhyStrip::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_field && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Return || key == Qt::Key_Enter) {
            answer();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

void WhyStrip::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape && m_asked) {
        stepBack();
        return;
    }
    QWidget::keyPressEvent(event);
}

void WhyStrip::applyTheme()
{
    const QFont font = m_theme.font(12.5);
    for (QLabel* label : {m_label, m_question, m_hint}) {
        label->setFont(font);
    }
    QPalette hint = m_hint->palette();
    hint.setColor(QPalette::WindowText, m_theme[Token::Act]);
    m_hint->setPalette(hint);
    QString shown = QStringLiteral("<span style=\"font-weight:600\">%1</span> %2")
                        .arg(m_title.toHtmlEscaped(), m_rest.toHtmlEscaped());
    if (!m_before.isEmpty()) {
        shown += QStringLiteral("<br><span style=\"color:%1\">%2</span>")
                     .arg(m_theme[Token::Act].name(), m_before.toHtmlEscaped());
    }
    m_label->setText(shown);
    m_label->setAccessibleName(text());
    const int side = m_theme.px(14);
    m_line->setContentsMargins(side + m_theme.px(24), m_theme.px(5), side, m_theme.px(5));
    m_askLine->setContentsMargins(side, m_theme.px(5), side, m_theme.px(5));
    for (QBoxLayout* line : {m_line, m_askLine}) {
        line->setSpacing(m_theme.px(10));
    }
    m_buttons->layout()->setSpacing(m_theme.px(8));
    m_field->setMinimumWidth(m_theme.px(190));
    arrange();
    update();
}

void WhyStrip::arrange()
{
    // Beside the text while that leaves it some room, below it otherwise.
    const auto turn = [this](QBoxLayout* line, int needed) {
        line->setDirection(width() > 0 && needed > width() ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    };
    turn(m_line, m_buttons->sizeHint().width() + m_theme.px(320));
    turn(m_askLine, m_question->fontMetrics().horizontalAdvance(m_question->text()) + m_theme.px(520));
    m_question->setWordWrap(m_askLine->direction() == QBoxLayout::TopToBottom);
    // The label wraps: give the strip the height its text takes at this width.
    const QLayout* line = m_stack->currentWidget()->layout();
    const int needed =
        line->hasHeightForWidth() ? line->heightForWidth(std::max(1, width())) : line->sizeHint().height();
    setFixedHeight(std::max(needed, line->minimumSize().height()) + 2);
}

void WhyStrip::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    arrange();
}

void WhyStrip::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme[Token::Panel]);
    painter.fillRect(QRect(0, 0, width(), 2), m_theme[Token::Rule2]);
    if (m_asked) {
        return;
    }
    const double side = m_theme.px(14);
    const QRectF label(m_label->mapTo(this, QPoint(0, 0)), m_label->size());
    const double y = std::min(label.center().y() - side / 2, label.top() + m_theme.px(30));
    drawStatus(painter, m_status, QRectF(side, y, side, side), m_theme.tokens().status(m_status),
               m_theme[Token::Panel]);
}

} // namespace littoral::ui
