// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/ctl/context.h"

namespace littoral::wording {
class Translation;
}

namespace littoral::ctl {

/// One verb each: the words after it, the exit code back.
int runInit(Context& context, const QStringList& words);
int runSample(Context& context, const QStringList& words);
int runTank(Context& context, const QStringList& words);
int runImport(Context& context, const QStringList& words);
int runDue(Context& context, const QStringList& words);
int runWaterPlan(Context& context, const QStringList& words);
int runGates(Context& context, const QStringList& words);
int runHandOver(Context& context, const QStringList& words);
int runForecast(Context& context, const QStringList& words);
int runFindings(Context& context, const QStringList& words);
int runReview(Context& context, const QStringList& words);
int runPlans(Context& context, const QStringList& words);
int runNextTest(Context& context, const QStringList& words);
int runRecord(Context& context, const QStringList& words);
int runReckon(Context& context, const QStringList& words);
int runSupplies(Context& context, const QStringList& words);
int runExport(Context& context, const QStringList& words);
int runVerify(Context& context, const QStringList& words);
int runBackup(Context& context, const QStringList& words);

/// Takes "--language TAG" out of the line and speaks that language; without it that of LITTORAL_LANGUAGE, else English.
/// False, and the sentence has been written, when there is no such language.
[[nodiscard]] bool takeLanguage(Context& context, QStringList& words, wording::Translation& translation);
/// Finds the verb and runs it; answers --help and --version itself.
int run(Context& context, const QStringList& words);

} // namespace littoral::ctl
