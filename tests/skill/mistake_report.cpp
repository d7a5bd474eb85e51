// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/skill/mistake_report.h"

#include "core/forecast/contradiction.h"
#include "core/forecast/fit.h"
#include "tests/skill/independent_tank.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <cstdio>
#include <thread>

namespace littoral::skill {

namespace {

using forecast::Cause;

constexpr std::size_t kCopies = 24;
/// Tanks of their own, so that a batch's are not looked at twice.
constexpr std::uint64_t kFirstIndex = 500;
constexpr std::size_t kDecision = 2; // day 21
constexpr double kUnloggedShare = 0.5;

struct Mistake
{
    const char* name;
    Mishap mishap;
    Cause cause = Cause::UnloggedChange;
    int kit = -1;
    bool any = true; ///< false: nothing went wrong
};

std::vector<Mistake> mistakes()
{
    const auto kit = [](const char* name, Cause cause, std::size_t place) {
        Mistake mistake{name, {}, cause, static_cast<int>(place)};
        (cause == Cause::DeadKit ? mistake.mishap.dead : mistake.mishap.printsNitrogen)[place] = true;
        return mistake;
    };
    std::vector<Mistake> all{{"nothing wrong", {}, Cause::UnloggedChange, -1, false},
                             kit("nitrite kit prints N", Cause::OtherUnitBasis, 1),
                             kit("nitrate kit prints N", Cause::OtherUnitBasis, 2),
                             kit("ammonia kit dead", Cause::DeadKit, 0),
                             kit("nitrite kit dead", Cause::DeadKit, 1)};
    for (const double day : {10.3, 17.3}) {
        Mistake mistake{day < 14.0 ? "half changed on day 10" : "half changed on day 17", {}};
        mistake.mishap.unlogged = {{day, forecast::EventKind::WaterChange, kUnloggedShare, 0}};
        all.push_back(mistake);
    }
    return all;
}

struct Answer
{
    bool asked = false; ///< the program would have looked into it
    bool right = false, wrong = false;
};

Answer answerTo(const Mistake& mistake, std::size_t copy)
{
    const std::size_t method = copy % kStartMethods;
    const std::uint64_t index = kFirstIndex + copy / kStartMethods;
    const SimulatedTank tank = simulate(static_cast<StartMethod>(method), kTrainingSeed, index, mistake.mishap);
    const forecast::Request request = requestOf(tank, method, index, kDecision);
    const auto fitted = forecast::fit(request);
    Answer answer;
    answer.asked = fitted && forecast::worthExplaining(fitted->diagnostics);
    const auto causes = forecast::explainContradiction(request);
    if (!causes) {
        return answer;
    }
    for (const forecast::Explanation& cause : *causes) {
        const bool right = mistake.any && cause.cause == mistake.cause && cause.kit == mistake.kit;
        (right ? answer.right : answer.wrong) = true;
    }
    return answer;
}

} // namespace

void printMistakes(const Batch& batch)
{
    const std::vector<Mistake> all = mistakes();
    std::vector<Answer> answers(all.size() * kCopies);
    std::atomic<std::size_t> next{0};
    {
        std::vector<std::jthread> threads;
        for (unsigned i = 0; i < std::max(batch.threads, 1U); ++i) {
            threads.emplace_back([&] {
                for (std::size_t k = next++; k < answers.size(); k = next++) {
                    answers[k] = answerTo(all[k / kCopies], k % kCopies);
                }
            });
        }
    }
    std::printf("\nMistakes planted in copies of %zu simulated tanks, looked at on day 21: a reading at odds, so that "
                "causes are looked for; then\nthe right one among those named, and another named; in brackets the same "
                "were it always looked for\n",
                kCopies);
    for (std::size_t m = 0; m < all.size(); ++m) {
        std::array<int, 5> counts{};
        for (std::size_t c = 0; c < kCopies; ++c) {
            const Answer& answer = answers[m * kCopies + c];
            counts[0] += answer.asked ? 1 : 0;
            counts[1] += answer.asked && answer.right ? 1 : 0;
            counts[2] += answer.asked && answer.wrong ? 1 : 0;
            counts[3] += answer.right ? 1 : 0;
            counts[4] += answer.wrong ? 1 : 0;
        }
        std::printf("  %-24s %3d %3d %3d  (%d, %d)\n", all[m].name, counts[0], counts[1], counts[2], counts[3],
                    counts[4]);
    }
}

} // namespace littoral::skill
