// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/due.h"
#include "core/facade/row_plan.h"

#include <QDate>
#include <vector>

/// What the whole row asks of its keeper, day by day.
namespace littoral::facade {

struct LoadDay
{
    QDate day;
    int tasks = 0;
    int minutes = 0; ///< as the task templates estimate them
    double litres = 0.0;
    bool collides = false;         ///< two or more large changes
    QStringList large;             ///< tanks with a large change, when it collides
    std::optional<QDate> freerDay; ///< nearest day without a large change, when it collides
};

struct RowLoad
{
    std::vector<LoadDay> days;                 ///< today first, every day
    [[nodiscard]] int minutes(int days) const; ///< of the first days
    [[nodiscard]] double litres(int days) const;
    [[nodiscard]] const LoadDay* firstCollision() const; ///< nullptr when there is none
};

/// Over all running layouts and the work for the whole row, taking it that what is open is done today and the rest on
/// its day. Work that is only offered, since it was never entered, counts for nothing.
[[nodiscard]] RowLoad rowLoad(const record::Row& row, const record::Moment& now, int days);

} // namespace littoral::facade
