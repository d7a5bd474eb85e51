// SPDX-License-Identifier: GPL-3.0-or-later
// littoral_skill [--tanks N] [--training | --seed S] [--threads N]
// littoral_skill --sbc [N]
// Scores forecasts against simulated tanks whose generator shares no equation with the forecaster (see
// independent_tank.h) and prints each floor beside its number. --sbc checks the sampler against itself instead.
#include "tests/skill/milestone_report.h"
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
    return 0;
}

} // namespace

int main(int argc, char** argv)
{
    const Options options = parse(argc, argv);
    if (!options.understood) {
        std::puts("littoral_skill [--tanks N] [--training | --seed S] [--threads N]\nlittoral_skill --sbc [N]");
        return 2;
    }
    if (options.rankTanks > 0) {
        skill::printRanks(options.rankTanks, options.batch.threads);
        return 0;
    }
    return scoreTanks(options.batch);
}
