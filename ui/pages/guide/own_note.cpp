// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/guide/own_note.h"

#include <QEvent>
#include <QVBoxLayout>

namespace littoral::ui {

QString noteSetting(const QString& topic)
{
    return QStringLiteral("guide.note.") + topic;
}

OwnNote::OwnNote(facade::Keeper& keeper, Theme& theme, QWidget* parent)
    : QFrame(parent)
    , m_keeper(keeper)
    , m_theme(theme)
    , m_field(new QPlainTextEdit)
    , m_hint(new Text(theme, TextStyle::Secondary))
{
    setProperty("card", true);
    setFrameShape(QFrame::StyledPanel);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(14, 12, 14, 12);
    column->setSpacing(8);
    auto* title = new Text(theme, TextStyle::Strong, tr("Your own note"));
    column->addWidget(title);
    column->addWidget(m_field, 1);
    column->addWidget(m_hint->wrapped());
    m_field->setTabChangesFocus(true);
    m_field->installEventFilter(this);
    m_field->setPlaceholderText(tr("What you have seen of it in your own tanks"));
    connect(&keeper, &facade::Keeper::changed, this, &OwnNote::refresh);
    connect(&keeper, &facade::Keeper::storeOpened, this, &OwnNote::refresh);
    connect(&keeper, &facade::Keeper::storeClosed, this, &OwnNote::refresh);
    refresh();
}

QString OwnNote::kept() const
{
    return m_keeper.row().settings.value(noteSetting(m_topic));
}

void OwnNote::setTopic(const QString& topic, const QString& title)
{
    settle();
    m_topic = topic;
    m_title = title;
    m_field->setAccessibleName(tr("Your own note on %1").arg(title));
    m_field->setPlainText(kept());
    refresh();
}

void OwnNote::settle()
{
    const QString typed = m_field->toPlainText().trimmed();
    if (m_topic.isEmpty() || typed == kept() || !m_keeper.hasStore() || m_keeper.isReadOnly()) {
        return;
    }
    store::Edit edit(tr("note on %1").arg(m_title));
    edit.set(noteSetting(m_topic), typed);
    if (const auto done = m_keeper.commit(edit); !done) {
        emit failed(done.error(), tr("What you typed is still in the field."));
        return;
    }
    emit told(tr("Note on %1 saved").arg(m_title));
}

void OwnNote::refresh()
{
    const bool writable = m_keeper.hasStore() && !m_keeper.isReadOnly();
    m_field->setReadOnly(!writable);
    m_hint->setText(writable ? tr("Saved in this store as you leave the field.")
                             : tr("A note needs a store that is open for writing."));
    // Typing in progress is never replaced; it is written when the field is left.
    if (!m_field->hasFocus() && m_field->toPlainText() != kept()) {
        m_field->setPlainText(kept());
    }
}

bool OwnNote::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_field && event->type() == QEvent::FocusOut) {
        settle();
    }
    return QFrame::eventFilter(watched, event);
}

} // namespace littoral::ui
