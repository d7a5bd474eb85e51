// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/ctl/arguments.h"
#include "app/ctl/forecast_run.h"

#include <optional>

namespace littoral::ctl {

/// The open store and the tank that a line names with FILE and --tank; on failure the sentence has been written and
/// `code` says how to exit.
struct NamedTank
{
    OpenStore store;
    const record::Tank* tank = nullptr; ///< nullptr as well when none was named and none had to be
    int code = kDone;

    explicit operator bool() const { return code == kDone; }
    facade::Keeper* operator->() const { return store.keeper.get(); }
    [[nodiscard]] const record::Row& row() const { return store.keeper->row(); }
};
enum class Naming {
    Needed,  ///< a line without --tank is misused
    Optional ///< without it the verb is about the whole row
};
[[nodiscard]] NamedTank openNamedTank(Context& context, const Arguments& arguments, store::Access access,
                                      Naming naming = Naming::Needed);
/// The tank's layout of that instant; nullptr, with the sentence written and `named.code` set, when it has none.
[[nodiscard]] const record::LayoutRecord* layoutOf(Context& context, NamedTank& named, const record::Moment& at);

/// Declares FILE and --tank as the verbs share them.
void declareTank(Arguments& arguments, Naming naming = Naming::Needed);
/// Declares FILE, --tank, --gate, --load and --no-learning, which the verbs about one tank's future share.
void declareOneTank(Arguments& arguments);

/// The forecast of the tank named on the line, as of the clock's now, or the exit code after a sentence has been
/// written.
struct OneTank
{
    std::optional<TankForecast> answer;
    int code = kDone;

    explicit operator bool() const { return answer.has_value(); }
};
[[nodiscard]] OneTank forecastOneTank(Context& context, const Arguments& arguments, const NamedTank& named);

/// A day since flooding as an ISO date; empty beyond the days reckoned.
[[nodiscard]] QString isoDay(const TankForecast& one, double day);

} // namespace littoral::ctl
