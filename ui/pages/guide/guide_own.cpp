// SPDX-License-Identifier: GPL-3.0-or-later
// What the Guide page does with the keeper's own records, and what it finds for others.
#include "ui/pages/guide/guide_page.h"
#include "ui/pages/guide/reading_pane.h"

#include <QBoxLayout>
#include <QMenu>
#include <QPushButton>

namespace littoral::ui {

/// What the keeper makes of the topic read: a version of one's own, and back.
void GuidePage::addOwnButtons(QBoxLayout* box)
{
    m_edit->setAccessibleName(tr("Edit your version of this topic"));
    m_edit->setProperty("keyHint", tr("Alt E"));
    m_takeBack->setAccessibleName(tr("Back to this topic as the program ships it"));
    m_add->setAccessibleName(tr("Add a condition, a species or a caution"));
    auto* kinds = new QMenu(m_add);
    const auto offer = [&](const QString& text, facts::FactKind kind) {
        connect(kinds->addAction(text), &QAction::triggered, this, [this, kind] { emit addWanted(kind); });
    };
    offer(tr("A &condition"), facts::FactKind::Condition);
    offer(tr("A &species"), facts::FactKind::Species);
    offer(tr("A c&aution"), facts::FactKind::Caution);
    kinds->setAccessibleName(tr("Add"));
    m_add->setMenu(kinds);
    for (QPushButton* button : {m_edit, m_takeBack, m_add}) {
        box->addWidget(button);
    }
    connect(m_edit, &QPushButton::clicked, this, &GuidePage::edit);
    connect(m_takeBack, &QPushButton::clicked, this, &GuidePage::takeBack);
}

void GuidePage::refreshOwn()
{
    const bool writable = m_keeper.hasStore() && !m_keeper.isReadOnly();
    const auto fact = factOf(topic());
    const bool own = fact && facts::isOwn(m_keeper.row(), fact->first, fact->second);
    const bool builtIn = fact && facts::builtInObject(fact->first, fact->second).has_value();
    m_edit->setEnabled(writable && fact.has_value());
    m_takeBack->setVisible(own);
    m_takeBack->setEnabled(writable);
    m_takeBack->setText(builtIn ? tr("Back to the built-in") : tr("Remove"));
    m_add->setEnabled(writable);
}

void GuidePage::edit()
{
    if (const auto fact = factOf(topic()); fact && m_edit->isEnabled()) {
        emit editWanted(fact->first, fact->second);
    }
}

void GuidePage::takeBack()
{
    const auto fact = factOf(topic());
    if (!fact) {
        return;
    }
    const QString title = m_pane->article().title;
    store::Edit edit(tr("your version of %1 taken back").arg(title));
    edit.set(facts::factSetting(fact->first, fact->second), {});
    if (const auto done = m_keeper.commit(edit); !done) {
        emit failed(done.error(), tr("Your version still counts."));
        return;
    }
    emit told(tr("%1 is as the program ships it; Ctrl+Z brings your version back").arg(title));
    open(currentTopic(topic()));
}

QString GuidePage::topicAbout(const QString& subject) const
{
    return subject.isEmpty() ? QString() : m_model->has(subject) ? subject : topicFor(*m_sources, subject);
}

std::vector<GuideTopic> GuidePage::hits(const QString& words, int most) const
{
    std::vector<GuideTopic> found;
    for (const GuideShelf& shelf : m_model->shelves()) {
        for (const GuideTopic& topic : shelf.topics) {
            if (static_cast<int>(found.size()) < most &&
                hasAllWords(topic.title + u' ' + topic.detail + u' ' + topic.words, words)) {
                found.push_back(topic);
            }
        }
    }
    return found;
}

} // namespace littoral::ui
