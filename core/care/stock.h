// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"

#include <QDate>
#include <optional>
#include <vector>

namespace littoral::care {

/// An Addition or Loss is about plants when its unit is one of "plants", "pots", "cups", "stems", "portions" or its
/// subject is "plants"; any other is about animals.
[[nodiscard]] bool isAboutPlants(const record::Entry& entry);

struct Animals
{
    QString subject;
    int count = 0; ///< additions less losses; an entry without a count stands for one
};

/// The animals in a layout as its additions and losses tell.
struct Stock
{
    std::vector<Animals> animals; ///< those still there, in the order of arrival
    int added = 0;
    int lost = 0;
    std::optional<record::Moment> firstAddition;
    std::optional<record::Moment> lastAddition;
    std::optional<record::Moment> lastLoss;

    [[nodiscard]] bool any() const { return !animals.empty(); }
    /// By the word in the name: there is no class of animal in the record.
    [[nodiscard]] bool anyShrimp() const;
    [[nodiscard]] int count() const;
};

[[nodiscard]] Stock stockAt(const record::LayoutRecord& layout, const record::Moment& at);

} // namespace littoral::care
