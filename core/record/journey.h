// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/ids.h"
#include "core/record/moment.h"

#include <QDate>
#include <QString>

namespace littoral::record {

/// Days on which the keeper is away and the row is in other hands. Work of the day of leaving is still the keeper's,
/// and so is that of the day of return.
struct Journey
{
    JourneyId id;
    QDate leaves;
    QDate returns; ///< after `leaves`
    QString helper;
    QString phone; ///< as typed
    QString note;
    Moment enteredAt;

    /// Is `day` one of those that the helper looks after?
    [[nodiscard]] bool covers(const QDate& day) const { return day > leaves && day < returns; }

    bool operator==(const Journey&) const = default;
};

} // namespace littoral::record
