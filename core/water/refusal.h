// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <string>

/// How a reckoning of this module says that it has no answer. The sentences are plain English constants, so that a
/// caller that shows them can look up a translation under the context "Water".
namespace littoral::water {

[[nodiscard]] inline Error refuse(std::string what, std::string mend = {})
{
    return {Fault::BadInput, std::move(what), {}, std::move(mend)};
}

/// False for NaN.
[[nodiscard]] constexpr bool within(double value, double low, double high)
{
    return value >= low && value <= high;
}

} // namespace littoral::water
