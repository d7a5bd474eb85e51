// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/widgets/side_panel.h"

#include <QPointer>
#include <QStackedWidget>

namespace littoral::ui {

/// The place beside the page where panels open, one at a time. Closing gives the keyboard back to where it was.
class PanelHost final : public QStackedWidget
{
    Q_OBJECT

public:
    explicit PanelHost(Theme& theme, QWidget* parent = nullptr);

    void add(SidePanel* panel);
    /// `back`: the panel to come back to when this one closes.
    void open(SidePanel* panel, SidePanel* back = nullptr);
    void close();
    [[nodiscard]] SidePanel* current() const; ///< nullptr when closed

signals:
    void told(const QString& sentence);
    void openChanged(bool open);

private:
    Theme& m_theme;
    QPointer<QWidget> m_before;
    QPointer<SidePanel> m_back;
};

} // namespace littoral::ui
