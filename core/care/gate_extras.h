// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/gates.h"

namespace littoral::care {

/// The conditions of a gate that are not about ammonia and nitrite, each by its key. What nobody looked at is unknown.
class GateExtras
{
public:
    explicit GateExtras(Circumstances at)
        : m_at(std::move(at))
    {
    }

    [[nodiscard]] const Circumstances& circumstances() const { return m_at; }
    [[nodiscard]] GateCondition judge(const QString& key) const;
    /// Is there a condition of this key?
    [[nodiscard]] static bool knows(const QString& key);
    [[nodiscard]] static QStringList keys();

private:
    void co2Steady(GateCondition& condition) const;
    void copperFree(GateCondition& condition) const;
    void meltNotRising(GateCondition& condition) const;
    void algaeToEat(GateCondition& condition) const;
    void temperature(GateCondition& condition) const;
    void firstGrazersWell(GateCondition& condition) const;
    void weekSinceAddition(GateCondition& condition) const;
    void weeklyCadence(GateCondition& condition) const;
    void biofilm(GateCondition& condition) const;
    void phSwing(GateCondition& condition) const;
    void temperatureSteady(GateCondition& condition) const;
    void noRecentLoss(GateCondition& condition) const;
    void quarantine(GateCondition& condition) const;
    void noReaction(GateCondition& condition) const;
    void hardnessInRange(GateCondition& condition) const;
    void keeperThere(GateCondition& condition) const;

    using Rule = void (GateExtras::*)(GateCondition&) const;
    [[nodiscard]] static const std::map<QString, Rule>& rules();

    Circumstances m_at;
};

} // namespace littoral::care
