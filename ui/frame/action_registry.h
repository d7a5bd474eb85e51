// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/find_model.h"

#include <QAction>
#include <QList>
#include <functional>
#include <vector>

class QMenu;
class QWidget;

namespace littoral::ui {

/// Every command of the workbench, once. Menus, shortcuts, the find-or-do field and the panel of keys all read it, so
/// none of them can forget one.
class ActionRegistry final : public QObject
{
    Q_OBJECT

public:
    enum class Group { Store, Row, Trends, Cycle, Paper, Edit, Pages, View, Units, Help };
    Q_ENUM(Group)

    /// Shortcuts work anywhere in `window`, letters only outside text fields (a text field claims them first).
    explicit ActionRegistry(QWidget* window);

    /// `text` carries its mnemonic ('&').
    QAction* add(const QString& id, const QString& text, Group group, const QList<QKeySequence>& keys,
                 std::function<void()> run);
    [[nodiscard]] QAction* action(const QString& id) const; ///< nullptr when there is none
    [[nodiscard]] QList<QAction*> actions() const;
    [[nodiscard]] QList<QAction*> actions(Group group) const;
    [[nodiscard]] static QString groupName(Group group);
    /// What the find-or-do field may run now: enabled commands, pages first.
    [[nodiscard]] std::vector<FindModel::Offer> offers() const;

private:
    struct Command
    {
        QAction* action;
        Group group;
    };
    QWidget* m_window;
    std::vector<Command> m_commands;
};

/// Text of an action without its mnemonic.
[[nodiscard]] QString plainText(const QAction& action);

} // namespace littoral::ui
