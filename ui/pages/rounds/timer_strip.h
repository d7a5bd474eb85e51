// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/round_timers.h"
#include "ui/widgets/text.h"

#include <QFrame>

class QVBoxLayout;
class QPushButton;

namespace littoral::ui {

/// The timers that run, one line each: what is timed, how long still, the way to its cell and the way to stop it. Not
/// there while none runs.
class TimerStrip final : public QFrame
{
    Q_OBJECT

public:
    TimerStrip(Theme& theme, RoundTimers& timers, QWidget* parent = nullptr);

signals:
    void cellWanted(littoral::record::TankId tank, const QString& parameter);

private:
    struct Line
    {
        int id = 0;
        QWidget* widget = nullptr;
        Text* text = nullptr;
    };
    void refresh();
    void rebuild();

    Theme& m_theme;
    RoundTimers& m_timers;
    QVBoxLayout* m_column;
    std::vector<Line> m_lines;
};

} // namespace littoral::ui
