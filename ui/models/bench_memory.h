// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/bench_sheet.h"

#include <QString>
#include <QStringList>
#include <map>
#include <optional>
#include <vector>

namespace littoral::ui {

/// What lies on the bench: the sheet in front, what was typed into each sheet for each tank, what is pinned. Kept
/// between runs in the program's settings, apart for each store, because typing here is nobody's change of the record
/// and must not stand in its undo list.
class BenchMemory
{
public:
    /// One pinned thing: a sheet, or the row's water plan (no sheet).
    struct Pin
    {
        int number = 0; ///< tells pins apart while the program runs
        std::optional<BenchSheet> sheet;
    };

    /// Reads what was kept for the store at `path`; with none open nothing is kept.
    void load(const QString& path);
    /// Does nothing when nothing changed since.
    void save();

    /// The sheet of that key for that tank, as it was left.
    [[nodiscard]] BenchSheet& open(const sheets::Sheet& sheet, record::TankId tank);
    [[nodiscard]] std::vector<Pin>& pins() { return m_pins; }
    void pin(const BenchSheet& sheet);
    void pinRowPlan();
    void unpin(int number);
    [[nodiscard]] bool hasRowPlanPinned() const;

    QString inFront;                               ///< key; may be kRowPlanKey
    std::optional<double> conditioner_mL_per_100L; ///< from the label, for the row's plan
    bool showsWorking = true;

private:
    using Place = std::pair<QString, record::TankId>;

    QString m_store;
    QByteArray m_saved;
    std::map<Place, BenchSheet> m_open;
    std::vector<Pin> m_pins;
    int m_nextPin = 1;
};

} // namespace littoral::ui
