// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"

#include <variant>

namespace littoral::facade {

/// Anything dated in the record.
using DatedRef = std::variant<record::ReadingId, record::EntryId, record::PhotoId>;

/// What is to happen to several records at once; what is not given stays as it is.
struct BulkChange
{
    std::optional<qint64> shift_ms = {};   ///< later; negative: earlier
    record::TankId tank = {};              ///< put into this tank, into the layout that stood in it then
    std::optional<record::KitId> kit = {}; ///< readings of the kit's parameter only; none inside: no kit
    std::optional<QString> subject = {};   ///< entries only; as kept, not as shown
    bool remove = false;
};

struct BulkOutcome
{
    int changed = 0;
    int left = 0;  ///< the change does not fit them: another parameter, no subject, or they are gone
    QString label; ///< as undo names it; empty when nothing was changed
};

/// Changes all of them as one change, undone as one, or none. BadInput when a record would be moved to where it cannot
/// be: after now, though it was done, or into a tank without a layout.
[[nodiscard]] Result<BulkOutcome> changeAll(Keeper& keeper, const std::vector<DatedRef>& records,
                                            const BulkChange& change);

} // namespace littoral::facade
