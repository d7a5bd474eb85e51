// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/guide/guide_panel.h"

#include "ui/pages/guide/guide_page.h"
#include "ui/pages/guide/reading_pane.h"

#include <QKeyEvent>
#include <QPushButton>

namespace littoral::ui {

namespace {
constexpr int kMostFound = 12;
}

GuidePanel::GuidePanel(GuidePage& guide, Theme& theme, QWidget* parent)
    : SidePanel(theme, tr("Guide"), parent)
    , m_guide(guide)
    , m_pane(new ReadingPane(theme))
    , m_back(addFootButton(tr("Back"), tr("Alt ←"), false))
{
    fillWith(m_pane);
    setFirstField(m_pane);
    QPushButton* whole = addFootButton(tr("On the Guide page"), tr("Ctrl 8"), false);
    whole->setAccessibleName(tr("Read this on the Guide page"));
    m_back->setAccessibleName(tr("Back to the topic read before"));
    connect(m_back, &QPushButton::clicked, this, &GuidePanel::back);
    connect(whole, &QPushButton::clicked, this, [this] { emit pageWanted(topic()); });
    connect(m_pane, &ReadingPane::topicWanted, this, &GuidePanel::open);
    connect(&guide, &GuidePage::factsChanged, this, &GuidePanel::refresh);
    openAbout({});
}

void GuidePanel::openAbout(const QStringList& subjects)
{
    m_trail.clear();
    m_words.clear();
    for (const QString& subject : subjects) {
        if (const QString found = m_guide.topicAbout(subject); !found.isEmpty()) {
            open(found);
            return;
        }
        m_words = m_words.isEmpty() ? subject : m_words;
    }
    refresh();
}

void GuidePanel::open(const QString& topic)
{
    if (topic != this->topic()) {
        m_trail << topic;
    }
    refresh();
}

void GuidePanel::back()
{
    if (m_trail.size() > 1) {
        m_trail.removeLast();
        refresh();
    }
}

void GuidePanel::refresh()
{
    const auto article = topic().isEmpty() ? std::nullopt : m_guide.model().article(topic());
    present(article ? *article : foundArticle(m_words));
    m_back->setEnabled(m_trail.size() > 1);
}

void GuidePanel::present(const GuideArticle& article)
{
    m_pane->showArticle(article);
    if (isVisible()) {
        announce(m_pane, tr("%1, %2").arg(article.title, article.kind));
    }
}

GuideArticle GuidePanel::foundArticle(const QString& words) const
{
    GuideArticle article;
    article.kind = tr("Guide");
    article.title = words.isEmpty() ? tr("What is focused") : words;
    GuideBlock links{GuideBlock::Kind::Links, {}, {}, {}, {}};
    if (words.isEmpty()) {
        article.lead = tr("F1 opens the article on what the keyboard is at: a reading, a task, a finding, a species, a "
                          "gate, a caution. Nothing of that kind is focused now.");
        links.heading = tr("Words of the trade and of the program");
    }
    for (const GuideTopic& topic : m_guide.hits(words, words.isEmpty() ? 10'000 : kMostFound)) {
        if (!words.isEmpty() || shelfOf(topic.id) == QStringLiteral("term")) {
            links.lines.push_back({topic.title, words.isEmpty() ? QString() : topic.detail, topic.id, 0});
        }
    }
    if (!words.isEmpty()) {
        article.lead = links.lines.empty() ? tr("The guide has nothing under this name.")
                                           : tr("The guide has no article of this name. These mention it:");
    }
    article.blocks.push_back(std::move(links));
    return article;
}

void GuidePanel::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Left && event->modifiers() == Qt::AltModifier) {
        back();
        event->accept();
        return;
    }
    SidePanel::keyPressEvent(event);
}

} // namespace littoral::ui
