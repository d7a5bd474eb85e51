// SPDX-License-Identifier: GPL-3.0-or-later
// littoral_skill [--tanks N] [--training | --seed S] [--threads N]
// littoral_skill --loads | --mistakes
// littoral_skill --sbc [N]
// Scores forecasts against simulated tanks whose generator shares no equation with the forecaster (see
// independent_tank.h) and prints each floor beside its number. --loads and --mistakes print only the
// tables of loads put in and of keepers' mistakes, --sbc checks the sampler against itself instead.
#include "tests/skill/load_report.h"
#include "tests/skill/milestone_report.h"
#include "tests/skill/mistake_report.h"
#include "tests/skill/rank_report.h"
#include "tests/skill/runs.h"
#include "tests/skill/tables.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <string_view>

namespace {

using namespace littoral;

struct Options
{
    skill::Batch batch;
    enum class Part { All, Loads, Mistakes } part = Part::All;
    int rankTanks = 0; ///< more than 0: the simulation-based calibration is wanted
    bool understood = true;
};

Options parse(int argc, char** argv)
{
    Options options;
    for (int i = 1; i < argc; ++i) {
        const std::string_view word = argv[i];
        const long long number = i + 1 < argc ? std::atoll(argv[i + 1]) : 0;
        if (word == "--training") {
            options.batch.seed = skill::kTrainingSeed;
        } else if (word == "--sbc") {
            options.rankTanks = number > 0 ? static_cast<int>(number) : 500;
            i += number > 0 ? 1 : 0;
        } else if (word == "--tanks" && number > 0) {
            options.batch.tanksPerMethod = static_cast<int>(number);
            ++i;
        } else if (word == "--loads") {
            options.part = Options::Part::Loads;
        } else if (word == "--mistakes") {
            options.part = Options::Part::Mistakes;
        } else if (word == "--threads" && number > 0) {
            options.batch.threads = static_cast<unsigned>(std::min(number, 64LL));
            ++i;
        } else if (word == "--seed" && number > 0) {
            options.batch.seed = static_cast<std::uint64_t>(number);
            ++i;
        } else {
            options.understood = false;
        }
    }
    return options;
}

/// Loads are put in at nine times and five sizes: a third of the tanks gives scores enough.
skill::Batch fewer(skill::Batch batch)
{
    batch.tanksPerMethod = std::max(batch.tanksPerMethod / 3, 1);
    return batch;
}

int scoreTanks(const skill::Batch& batch)
{
    const auto scores = skill::scoreBatch(batch);
    for (const auto& tank : scores) {
        if (!tank.failure.empty()) {
            std::printf("A forecast failed: %s\n", tank.failure.c_str());
            return 1;
        }
    }
    skill::printReport(batch, scores);
    skill::printMilestones();
    skill::printLoads(fewer(batch));
    skill::printMistakes(batch);
    return 0;
}

} // namespace

int main(int argc, char** argv)
{
    const Options options = parse(argc, argv);
    if (!options.understood) {
        std::puts(
            "littoral_skill [--tanks N] [--training | --seed S] [--threads N]\nlittoral_skill --loads | --mistakes\n"
            "littoral_skill --sbc [N]");
        return 2;
    }
    if (options.rankTanks > 0) {
        skill::printRanks(options.rankTanks, options.batch.threads);
        return 0;
    }
    if (options.part == Options::Part::Loads) {
        skill::printLoads(fewer(options.batch));
        return 0;
    }
    if (options.part == Options::Part::Mistakes) {
        skill::printMistakes(options.batch);
        return 0;
    }
    return scoreTanks(options.batch);
}
