// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/history/history_card.h"

#include "ui/widgets/flow_layout.h"

#include <QVBoxLayout>

namespace littoral::ui {

namespace {
constexpr int kMargin = 12;
}

HistoryCard::HistoryCard(Theme& theme, const QString& heading, QWidget* parent)
    : QFrame(parent)
    , m_theme(theme)
    , m_heading(new Text(theme, TextStyle::Strong, heading))
    , m_note(new Text(theme, TextStyle::Secondary))
    , m_column(new QVBoxLayout(this))
{
    setProperty("card", true);
    setFrameShape(QFrame::StyledPanel);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    setAccessibleName(heading);
    m_column->setContentsMargins(1, 8, 1, 10);
    m_column->setSpacing(4);
    m_heading->setContentsMargins(kMargin, 0, kMargin, 0);
    m_note->setContentsMargins(kMargin, 0, kMargin, 2);
    m_column->addWidget(m_heading->wrapped());
    m_column->addWidget(m_note->wrapped());
    m_note->hide();
}

void HistoryCard::setHeading(const QString& heading)
{
    m_heading->setText(heading);
    setAccessibleName(heading);
}

void HistoryCard::setNote(const QString& note)
{
    say(m_note, note);
}

Text* HistoryCard::addText(TextStyle style, Token token)
{
    auto* text = (new Text(m_theme, style))->wrapped();
    text->setToken(token);
    text->setContentsMargins(kMargin, 0, kMargin, 0);
    m_column->addWidget(text);
    text->hide();
    return text;
}

void HistoryCard::say(Text* text, const QString& words)
{
    text->setText(words);
    text->setVisible(!words.isEmpty());
}

} // namespace littoral::ui
