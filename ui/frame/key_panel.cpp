// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/key_panel.h"

#include <QGridLayout>
#include <QVBoxLayout>

namespace littoral::ui {

KeyPanel::KeyPanel(const ActionRegistry& registry, Theme& theme, QWidget* parent)
    : SidePanel(theme, tr("Keys"), parent)
    , m_registry(registry)
{
}

void KeyPanel::addLine(QGridLayout& grid, const QString& keys, const QString& words)
{
    const int row = grid.rowCount();
    auto* cap = new Text(theme(), TextStyle::SecondaryStrong, keys);
    cap->setWordWrap(true);
    auto* meaning = new Text(theme(), TextStyle::Body, words);
    meaning->setWordWrap(true);
    grid.addWidget(cap, row, 0, Qt::AlignTop);
    grid.addWidget(meaning, row, 1);
}

void KeyPanel::show(const QString& page, const std::vector<PageKey>& keys)
{
    delete m_content;
    m_content = new QWidget;
    auto* column = new QVBoxLayout(m_content);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    const auto section = [&](const QString& heading) {
        column->addWidget(new Text(theme(), TextStyle::Strong, heading));
        auto* grid = new QGridLayout;
        grid->setColumnStretch(1, 1);
        grid->setColumnMinimumWidth(0, theme().px(96));
        column->addLayout(grid);
        return grid;
    };
    if (!keys.empty()) {
        QGridLayout* grid = section(tr("On %1").arg(page));
        for (const PageKey& key : keys) {
            addLine(*grid, key.keys, key.words);
        }
    }
    using Group = ActionRegistry::Group;
    for (const Group group : {Group::Pages, Group::Edit, Group::Row, Group::Store, Group::View, Group::Help}) {
        QGridLayout* grid = nullptr;
        for (const QAction* action : m_registry.actions(group)) {
            QStringList shortcuts;
            for (const QKeySequence& sequence : action->shortcuts()) {
                shortcuts << sequence.toString(QKeySequence::NativeText);
            }
            if (!shortcuts.isEmpty()) {
                grid = grid == nullptr ? section(ActionRegistry::groupName(group)) : grid;
                addLine(*grid, shortcuts.join(QStringLiteral("\n")), plainText(*action));
            }
        }
    }
    column->addStretch(1);
    body()->addWidget(m_content);
}

} // namespace littoral::ui
