// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/action_registry.h"

#include <QWidget>

namespace littoral::ui {

QString plainText(const QAction& action)
{
    QString text = action.text();
    return text.remove(u'&');
}

ActionRegistry::ActionRegistry(QWidget* window)
    : QObject(window)
    , m_window(window)
{
}

QAction* ActionRegistry::add(const QString& id, const QString& text, Group group, const QList<QKeySequence>& keys,
                             std::function<void()> run)
{
    auto* action = new QAction(text, this);
    action->setObjectName(id);
    action->setShortcuts(keys);
    action->setShortcutContext(Qt::WindowShortcut);
    action->setMenuRole(QAction::NoRole);
    action->setToolTip(plainText(*action));
    connect(action, &QAction::triggered, this, [run = std::move(run)] { run(); });
    m_window->addAction(action);
    m_commands.push_back({action, group});
    return action;
}

QAction* ActionRegistry::action(const QString& id) const
{
    for (const Command& command : m_commands) {
        if (command.action->objectName() == id) {
            return command.action;
        }
    }
    return nullptr;
}

QList<QAction*> ActionRegistry::actions() const
{
    QList<QAction*> all;
    for (const Command& command : m_commands) {
        all << command.action;
    }
    return all;
}

QList<QAction*> ActionRegistry::actions(Group group) const
{
    QList<QAction*> all;
    for (const Command& command : m_commands) {
        if (command.group == group) {
            all << command.action;
        }
    }
    return all;
}

QString ActionRegistry::groupName(Group group)
{
    switch (group) {
    case Group::Store:
        return tr("Store");
    case Group::Row:
        return tr("Row");
    case Group::Trends:
        return tr("Trends");
    case Group::Cycle:
        return tr("Cycle");
    case Group::Paper:
        return tr("On paper");
    case Group::Edit:
        return tr("Edit");
    case Group::Pages:
        return tr("Pages");
    case Group::View:
        return tr("Look");
    case Group::Units:
        return tr("Units");
    case Group::Help:
        return tr("Help");
    }
    return {};
}

std::vector<FindModel::Offer> ActionRegistry::offers() const
{
    std::vector<FindModel::Offer> offers;
    for (const bool pages : {true, false}) {
        for (const Command& command : m_commands) {
            if ((command.group == Group::Pages) != pages || !command.action->isEnabled()) {
                continue;
            }
            const QString hint = command.action->shortcut().toString(QKeySequence::NativeText);
            offers.push_back({pages ? tr("Page") : tr("Command"), plainText(*command.action), hint,
                              [action = command.action] { action->trigger(); }});
        }
    }
    return offers;
}

} // namespace littoral::ui
