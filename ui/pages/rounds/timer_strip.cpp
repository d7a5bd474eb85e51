// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/rounds/timer_strip.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

namespace littoral::ui {

TimerStrip::TimerStrip(Theme& theme, RoundTimers& timers, QWidget* parent)
    : QFrame(parent)
    , m_theme(theme)
    , m_timers(timers)
    , m_column(new QVBoxLayout(this))
{
    setProperty("card", true);
    setFrameShape(QFrame::StyledPanel);
    setAccessibleName(tr("Timers"));
    m_column->setContentsMargins(12, 8, 12, 8);
    m_column->setSpacing(4);
    m_column->addWidget(new Text(theme, TextStyle::Strong, tr("Timers")));
    connect(&timers, &RoundTimers::changed, this, &TimerStrip::refresh);
    refresh();
}

/// Lines are made anew only when timers come or go: a button under the keyboard stays where it is.
void TimerStrip::refresh()
{
    const bool same = std::ranges::equal(
        m_lines, m_timers.timers(), [](const Line& line, const RoundTimers::Timer& it) { return line.id == it.id; });
    if (!same) {
        rebuild();
    }
    for (std::size_t i = 0; i < m_lines.size(); ++i) {
        const RoundTimers::Timer& it = m_timers.timers()[i];
        m_lines[i].text->setText(tr("%1: %2", "what is timed, how it stands").arg(it.name, m_timers.stateText(it)));
        m_lines[i].text->setToken(it.ready ? Token::Info : Token::Ink);
    }
    setVisible(!m_lines.empty());
}

void TimerStrip::rebuild()
{
    for (const Line& line : m_lines) {
        m_column->removeWidget(line.widget);
        line.widget->deleteLater();
    }
    m_lines.clear();
    for (const RoundTimers::Timer& it : m_timers.timers()) {
        auto* widget = new QWidget;
        auto* row = new QHBoxLayout(widget);
        row->setContentsMargins(0, 0, 0, 0);
        row->setSpacing(6);
        auto* text = new Text(m_theme, TextStyle::Body);
        text->setWordWrap(true);
        auto* go = new QPushButton(tr("Go to it"));
        go->setAccessibleName(tr("Go to the cell of %1").arg(it.name));
        auto* stop = new QPushButton(tr("Stop"));
        stop->setProperty("quiet", true);
        stop->setAccessibleName(tr("Stop the timer of %1").arg(it.name));
        row->addWidget(text, 1);
        row->addWidget(go);
        row->addWidget(stop);
        m_column->addWidget(widget);
        connect(go, &QPushButton::clicked, this,
                [this, tank = it.tank, parameter = it.parameter] { emit cellWanted(tank, parameter); });
        connect(stop, &QPushButton::clicked, this, [this, id = it.id] { m_timers.stop(id); });
        m_lines.push_back({it.id, widget, text});
    }
}

} // namespace littoral::ui
