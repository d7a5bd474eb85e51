// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"

#include <QObject>
#include <QTimer>
#include <vector>

namespace littoral::ui {

/// Timers of test kits: shake, then wait until the colour is read; several at once, over all pages. They make no sound:
/// what is ready is said once and stays named until it is looked at.
class RoundTimers final : public QObject
{
    Q_OBJECT

public:
    struct Timer
    {
        int id = 0;
        record::TankId tank;
        QString parameter; ///< key
        QString name;      ///< "Nitrite, Slate Ford"
        record::Moment shakenAt;
        record::Moment readyAt;
        bool ready = false;
    };

    explicit RoundTimers(facade::Keeper& keeper, QObject* parent = nullptr);

    /// Minutes to shake and then to wait. One timer for a cell: starting it again starts it anew. Returns its id; zero
    /// when there is nothing to wait for.
    int start(record::TankId tank, const QString& parameter, double shakeMinutes, double waitMinutes);
    void stop(int id);
    [[nodiscard]] const std::vector<Timer>& timers() const { return m_timers; }         ///< soonest ready first
    [[nodiscard]] const Timer* of(record::TankId tank, const QString& parameter) const; ///< nullptr: none
    /// "shake 0:40", "3:12", "read it now".
    [[nodiscard]] QString stateText(const Timer& timer) const;
    /// All of them in the few words of the status line; empty when none runs.
    [[nodiscard]] QString summary() const;
    /// Looks at the clock; called every second while a timer runs.
    void tick();

signals:
    void changed();
    void ready(const QString& sentence);

private:
    facade::Keeper& m_keeper;
    std::vector<Timer> m_timers;
    QTimer m_second;
    int m_last = 0;
};

/// How long a kit is shaken before its waiting time begins, minutes: kept as the setting "kit.shake.<id>".
[[nodiscard]] double shakeMinutes(const record::Row& row, record::KitId kit);
[[nodiscard]] QString shakeSettingKey(record::KitId kit);

} // namespace littoral::ui
