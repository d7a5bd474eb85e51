// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/history/talk_card.h"

#include "ui/pages/history/ask_line.h"
#include "ui/widgets/disclosure.h"

#include <QApplication>
#include <QVBoxLayout>

namespace littoral::ui {

using namespace Qt::StringLiterals;

TalkCard::TalkCard(Theme& theme, QWidget* parent)
    : HistoryCard(theme, tr("Keep it, or start afresh: to talk over"), parent)
    , m_headline(addText(TextStyle::Strong, Token::Ink))
    , m_leaning(addText(TextStyle::Body, Token::Ink2))
{
    setProperty("topic", u"recover-or-reset"_s);
    setNote(tr("Nine questions of 0 to 2 points. The points are judgement, common practice; they decide nothing."));
}

void TalkCard::setTalk(const facade::Talk& talk, bool writable)
{
    QWidget* focus = QApplication::focusWidget();
    const bool had = focus != nullptr && isAncestorOf(focus);
    QString spot;
    for (QWidget* at = focus; had && at != this && spot.isEmpty(); at = at->parentWidget()) {
        spot = at->property("spot").toString();
    }
    say(m_headline, talk.headline);
    say(m_leaning, talk.leaning);
    delete m_inside;
    m_inside = new QWidget;
    auto* rows = new QVBoxLayout(m_inside);
    rows->setContentsMargins(8, 2, 8, 0);
    rows->setSpacing(0);
    for (const facade::TalkPoint& point : talk.points) {
        const QStringList tags{tr("0 good"), tr("1 doubtful"), tr("2 bad")};
        const QString tag = point.points ? tags[*point.points] : tr("open");
        const Token token = !point.points        ? Token::Ink2
                            : *point.points == 0 ? Token::Ok
                            : *point.points == 1 ? Token::Watch
                                                 : Token::Act;
        auto* line = new AskLine(theme(), tag, token,
                                 point.why.isEmpty() ? point.title : tr("%1. %2").arg(point.title, point.why));
        line->setProperty("spot", point.key);
        rows->addWidget(line);
        if (writable) {
            facade::CaseEvidence ask;
            ask.text = point.title;
            ask.answers = point.answers;
            auto* answers = new AnswerRow(theme(), ask);
            answers->setProperty("spot", point.key);
            answers->hide();
            rows->addWidget(answers);
            line->setOpens(true);
            connect(line, &QAbstractButton::toggled, answers, [answers](bool open) {
                answers->setVisible(open);
                if (open) {
                    answers->begin();
                }
            });
            connect(answers, &AnswerRow::answered, this, &TalkCard::answered);
        }
        if (had && spot == point.key) {
            line->setFocus();
        }
    }
    const auto words = [&](TextStyle style, Token token, const QString& text) {
        auto* made = (new Text(theme(), style, text))->wrapped();
        made->setToken(token);
        made->setContentsMargins(4, 4, 4, 2);
        rows->addWidget(made);
    };
    words(TextStyle::Body, Token::Ink, talk.overriding.join(u'\n'));
    for (const facade::TalkWay& way : talk.ways) {
        auto* made = new Disclosure(theme());
        QStringList first = way.first;
        for (QString& one : first) {
            one.prepend(u"• "_s);
        }
        made->setWords(way.name, way.when, tr("%1, %2: what comes first").arg(way.name, way.when), first);
        rows->addWidget(made);
    }
    words(TextStyle::Secondary, Token::Ink3, talk.judgeOn);
    words(TextStyle::Secondary, Token::Ink3,
          tr("Starting afresh costs three to six weeks of cycling again (common practice); the forecast of both ways "
             "stands below."));
    column()->addWidget(m_inside);
}

QList<AskLine*> TalkCard::lines() const
{
    return m_inside == nullptr ? QList<AskLine*>() : m_inside->findChildren<AskLine*>();
}

} // namespace littoral::ui
