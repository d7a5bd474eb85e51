// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/panel_host.h"

#include <QApplication>

namespace littoral::ui {

PanelHost::PanelHost(Theme& theme, QWidget* parent)
    : QStackedWidget(parent)
    , m_theme(theme)
{
    setAccessibleName(tr("Panel beside the page"));
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Expanding);
    const auto size = [this] { setMinimumWidth(m_theme.px(300)); };
    connect(&theme, &Theme::changed, this, size);
    size();
    hide();
}

void PanelHost::add(SidePanel* panel)
{
    addWidget(panel);
    connect(panel, &SidePanel::closeRequested, this, [this, panel] {
        // A panel half filled in stays as it is; it is only put away.
        if (panel->hasDraft()) {
            emit told(tr("%1: what you typed is kept and is there when the panel is opened again").arg(panel->title()));
        }
        close();
    });
    connect(panel, &SidePanel::saved, this, &PanelHost::told);
}

void PanelHost::open(SidePanel* panel, SidePanel* back)
{
    m_back = back;
    QWidget* focus = QApplication::focusWidget();
    if (focus != nullptr && !isAncestorOf(focus)) {
        m_before = focus;
    }
    setCurrentWidget(panel);
    show();
    emit openChanged(true);
    if (QWidget* first = panel->firstField()) {
        first->setFocus(Qt::OtherFocusReason);
    } else if (QWidget* next = panel->nextInFocusChain()) {
        next->setFocus(Qt::OtherFocusReason);
    }
}

void PanelHost::close()
{
    if (isHidden()) {
        return;
    }
    if (m_back != nullptr) {
        open(m_back);
        return;
    }
    QWidget* focus = QApplication::focusWidget();
    const bool hadFocus = focus == nullptr || isAncestorOf(focus);
    hide();
    emit openChanged(false);
    if (hadFocus && m_before != nullptr && m_before->isVisible()) {
        m_before->setFocus(Qt::OtherFocusReason);
    }
}

SidePanel* PanelHost::current() const
{
    return isHidden() ? nullptr : qobject_cast<SidePanel*>(currentWidget());
}

} // namespace littoral::ui
