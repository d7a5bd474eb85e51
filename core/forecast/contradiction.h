// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/forecast/tank_case.h"

#include <stop_token>
#include <vector>

namespace littoral::forecast {

/// What would make readings that contradict each other agree.
enum class Cause {
    OtherUnitBasis, ///< the kit's values are as N where they were taken as the ion, or the other way round
    DeadKit,        ///< the kit reads low whatever the water holds
    UnloggedChange, ///< half the water was changed and not written down
};

struct Explanation
{
    Cause cause = Cause::OtherUnitBasis;
    int kit = -1;      ///< for the first two
    double day = 0.0;  ///< for an unlogged change: about when
    double odds = 0.0; ///< against 'nothing of the kind', to one, prior odds included
};

/// Whether the readings contradict each other so far that a cause should be looked for while somebody waits: not
/// fitted, or one of them at odds with the rest.
[[nodiscard]] bool worthExplaining(const Diagnostics& diagnostics);

/// Causes that the readings favour by at least three to one, best first. Each cause is tried by calibrating to the case
/// as it would then be and comparing how probable the readings are (Bayes factor times prior odds of 1 to 20 for a
/// unit or a change, 1 to 50 for a kit). Takes about half a second. Silence proves nothing: coarse
/// cards hide most such mistakes (littoral_skill --mistakes prints how many are named on simulated tanks).
[[nodiscard]] Result<std::vector<Explanation>> explainContradiction(const Request& request, std::stop_token stop = {});

} // namespace littoral::forecast
