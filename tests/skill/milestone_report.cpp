// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/skill/milestone_report.h"

#include "tests/forecast/milestone_rows.h"

#include <cstdio>

namespace littoral::skill {

namespace {

std::string figures(const forecast::published::Row& row)
{
    const auto one = [](double value) {
        char text[32];
        std::snprintf(text, sizeof text, "%g", value);
        return std::isnan(value) ? std::string("-") : std::string(text);
    };
    return one(row.low) + "/" + one(row.central) + "/" + one(row.high);
}

} // namespace

void printMilestones()
{
    namespace published = forecast::published;
    const auto rows = published::readRows(LITTORAL_SOURCE_DIR "/tests/data/forecast/startup_milestones.csv");
    std::puts(
        "\nPublished start-up figures (low/central/high) against the prior (10/50/90 %) under the row's condition. "
        "A range is met when\nthe prior's median lies in it, a single number when it lies between the prior's 10 "
        "and 90 % points. Sources and\nassumptions: tests/data/forecast/startup_milestones.csv");
    published::Judge judge(1200);
    for (const published::Row& row : rows) {
        if (!row.usable()) {
            std::printf("  %s %-50s %-16s not usable: %s\n", row.id.c_str(), row.quantity.c_str(), figures(row).c_str(),
                        row.note.c_str());
            continue;
        }
        const published::Verdict v = judge.of(row);
        std::printf("  %s %-50s %-16s %6.2f/%.2f/%.2f %s  %s\n", row.id.c_str(), row.quantity.c_str(),
                    figures(row).c_str(), v.q10, v.q50, v.q90, row.unit.c_str(), v.hit ? "met" : "missed");
    }
}

} // namespace littoral::skill
