// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/entry.h"
#include "core/record/journey.h"
#include "core/record/reading.h"
#include "core/record/regimen.h"
#include "core/record/tank.h"
#include "core/record/task.h"

#include <QMap>
#include <map>
#include <vector>

namespace littoral::record {

/// Everything recorded about one layout, readings and entries oldest first.
struct LayoutRecord
{
    Layout layout;
    std::vector<Reading> readings;
    std::vector<Entry> entries;
    std::vector<Task> tasks;
    std::vector<DoseRegimen> regimens;

    /// Newest reading of a parameter not after `at`; nullptr when there is none.
    [[nodiscard]] const Reading* newest(const QString& parameter, const Moment& at) const;
    /// All readings of a parameter, oldest first.
    [[nodiscard]] std::vector<const Reading*> readingsOf(const QString& parameter) const;
    /// Newest done entry of a kind (and subject, if given) not after `at`; nullptr when there is none.
    [[nodiscard]] const Entry* lastDone(EntryKind kind, const Moment& at, const QString& subject = {}) const;
};

/// The whole row as it stands in the store: a plain value that pages and workers may copy and keep.
struct Row
{
    std::vector<Tank> tanks; ///< in row order
    std::map<LayoutId, LayoutRecord> layouts;
    std::vector<SourceWater> sources;
    std::vector<TestKit> kits;
    std::vector<Supply> supplies;
    std::vector<TaskTemplate> templates;
    std::vector<Target> targets;
    std::vector<Plan> plans;
    std::vector<Journey> journeys; ///< in the order in which they were entered
    QMap<QString, QString> settings;

    [[nodiscard]] const Tank* tank(TankId id) const;
    [[nodiscard]] const Tank* tankNamed(const QString& name) const; ///< case-insensitive
    [[nodiscard]] const SourceWater* source(SourceWaterId id) const;
    [[nodiscard]] const TestKit* kit(KitId id) const;
    [[nodiscard]] const LayoutRecord* layout(LayoutId id) const;
    /// The layout that is running at `at` (the newest flooded and not ended; else one flooded later; else the newest
    /// ended).
    [[nodiscard]] const LayoutRecord* currentLayout(TankId tank, const Moment& at) const;
    /// Which layout of the tank an instant belongs to; the nearest when it falls between layouts.
    [[nodiscard]] const LayoutRecord* layoutAt(TankId tank, const Moment& at) const;
    /// Oldest first.
    [[nodiscard]] std::vector<const LayoutRecord*> layoutsOf(TankId tank) const;
    /// Kit a tank's parameter is read with: the newest reading's kit, else the first of that parameter not retired.
    [[nodiscard]] const TestKit* kitFor(const LayoutRecord& layout, const QString& parameter) const;
    [[nodiscard]] const Target* target(TankId tank, const QString& parameter) const;
    [[nodiscard]] std::size_t recordCount() const; ///< readings and entries
};

/// Sorts readings and entries by time (then id), tanks by position.
void sortRow(Row& row);

} // namespace littoral::record
