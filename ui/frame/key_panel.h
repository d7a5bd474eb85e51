// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/frame/action_registry.h"
#include "ui/widgets/side_panel.h"

class QGridLayout;

namespace littoral::ui {

/// Every key there is, read from the registry, and the keys of the page shown.
class KeyPanel final : public SidePanel
{
    Q_OBJECT

public:
    KeyPanel(const ActionRegistry& registry, Theme& theme, QWidget* parent = nullptr);

    struct PageKey
    {
        QString keys;
        QString words;
    };
    void show(const QString& page, const std::vector<PageKey>& keys);

private:
    void addLine(QGridLayout& grid, const QString& keys, const QString& words);

    const ActionRegistry& m_registry;
    QWidget* m_content = nullptr;
};

} // namespace littoral::ui
