// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/facade/keeper.h"

#include <QStringList>
#include <QTextStream>
#include <memory>

namespace littoral::ctl {

/// What the shell gets back; resources/formats.md says the same.
enum ExitCode : int {
    kDone = 0,
    kFailed = 1,   ///< a file or the store refused
    kUsage = 2,    ///< the command line was not understood
    kRefused = 3,  ///< the input was read and found wrong: bad rows, no such tank
    kNotSound = 4, ///< verify found problems
};

/// What every verb works with: the clock, data to stdout, messages to stderr.
struct Context
{
    const record::Clock& clock;
    QTextStream out;
    QTextStream err;

    /// Writes the error's sentence and gives the exit code that goes with it.
    int fail(const Error& error);
    /// A sentence of our own; `code` is returned.
    int fail(const QString& sentence, ExitCode code);
};

/// The open store of a verb; on failure the sentence has been written and `code` says how to exit.
struct OpenStore
{
    std::unique_ptr<facade::Keeper> keeper;
    int code = kDone;

    explicit operator bool() const { return keeper != nullptr; }
    facade::Keeper* operator->() const { return keeper.get(); }
};
[[nodiscard]] OpenStore openStore(Context& context, const QString& path, store::Access access);

/// The tank of that name, or nullptr after having said that there is none (and which is nearest).
[[nodiscard]] const record::Tank* findTank(Context& context, const record::Row& row, const QString& name);

} // namespace littoral::ctl
