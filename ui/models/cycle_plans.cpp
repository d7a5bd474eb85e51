// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/parameter.h"
#include "core/record/shown.h"
#include "core/wording/numbers.h"
#include "core/wording/plan_sentences.h"
#include "ui/models/cycle_parts.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <limits>

namespace littoral::ui::cycle {

using namespace Qt::StringLiterals;
using forecast::PlanOutcome;

namespace {

constexpr std::size_t k10 = 1;
constexpr std::size_t k90 = 5;
// A plan is marked late when its gate has this chance of opening after the present plan's late date.
constexpr double kLate = 0.2;
constexpr std::size_t kListed = 6; // dates named before the rest is counted

QString words(const char* text)
{
    return QCoreApplication::translate("Cycle", text);
}

QString letterOf(std::size_t row)
{
    return QString(QChar(static_cast<char16_t>(u'A' + std::min<std::size_t>(row, 25))));
}

struct PlanBuilder
{
    CycleModel& model;
    const Frame& frame;
    const facade::PlanSet& set;
    double lateDay = 0.0;

    [[nodiscard]] const std::vector<PlanOutcome>& outcomes() const { return set.table.outcomes; }
    [[nodiscard]] const PlanOutcome& present() const { return outcomes().front(); }

    [[nodiscard]] double afterLate(const PlanOutcome& outcome) const { return 1.0 - oddsBy(outcome.gate, lateDay); }

    [[nodiscard]] QString sourceName(int source) const
    {
        const auto& sources = frame.result()->inputs.sources;
        const auto at = static_cast<std::size_t>(source);
        const record::SourceWater* water = at < sources.size() ? frame.asked.row.source(sources[at]) : nullptr;
        return water == nullptr ? words("the layout's own water") : water->name;
    }

    [[nodiscard]] QString nameOf(const PlanOutcome& outcome) const
    {
        if (outcome.present) {
            return wording::presentPlanName();
        }
        return wording::planName(outcome.plan, frame.result()->inputs.asOf.localDate(), frame.today,
                                 outcome.plan.source == 0 ? QString() : sourceName(outcome.plan.source));
    }

    [[nodiscard]] QString gateText(const PlanOutcome& outcome) const
    {
        const forecast::DateOdds& odds = outcome.gate;
        const auto day = [&](double d) { return std::max(frame.flooded().plusDays(d).localDate(), frame.today); };
        if (std::isfinite(odds.day[k90])) {
            return wording::dateRangeText(day(odds.day[k10]), day(odds.day[k90]), frame.today);
        }
        return std::isfinite(odds.day[k10]) ? words("from %1").arg(wording::dateText(day(odds.day[k10]), frame.today))
                                            : words("not by %1").arg(wording::dateText(day(odds.lastDay), frame.today));
    }

    void fill(CyclePlan& row, const PlanOutcome& outcome) const
    {
        row.name = nameOf(outcome);
        row.litres = set.net_L > 0.0
                         ? wording::numberText(
                               record::volumeMeasure(record::shownUnits()).shown(outcome.volumesToGate * set.net_L), 0)
                         : words("%1 ×").arg(wording::numberText(outcome.volumesToGate, 1));
        row.changes = wording::numberText(outcome.changesToGate, 0);
        row.hours = wording::numberText(outcome.hoursNitriteOver, 0);
        row.gate = gateText(outcome);
        row.late = wording::oddsText(afterLate(outcome));
        QStringList sentences;
        sentences << words("Plan %1: %2.").arg(row.letter, row.name)
                  << wording::planWaterText(outcome.changesToGate,
                                            set.net_L > 0.0 ? std::optional(outcome.volumesToGate * set.net_L)
                                                            : std::nullopt)
                  << wording::planExposureText(outcome, {}, set.table.windowDays)
                  << wording::readingsClearText(frame.focusTitle(), outcome.gate, frame.flooded(), frame.today);
        const double load = frame.result()->inputs.request.load_mgN_per_L_d;
        if (load > 0.0) {
            sentences << wording::carriesAtGateText(outcome.carriesAtGate, load);
        }
        row.sentence = sentences.join(u' ');
    }

    void addRow(std::size_t outcome)
    {
        CyclePlan row;
        row.outcome = outcome;
        row.letter = letterOf(model.plans.size());
        if (!outcomes()[outcome].present) {
            row.plan = outcomes()[outcome].plan;
        }
        fill(row, outcomes()[outcome]);
        model.plans.push_back(std::move(row));
    }

    /// What stands out about the plans of the table, each said once.
    void addDetails()
    {
        const auto mark = [&](auto key, const QString& text) {
            std::size_t best = 0;
            double least = std::numeric_limits<double>::infinity();
            for (std::size_t i = 0; i < model.plans.size(); ++i) {
                const double value = model.plans[i].outcome ? key(outcomes()[*model.plans[i].outcome])
                                                            : std::numeric_limits<double>::infinity();
                if (value < least) {
                    least = value;
                    best = i;
                }
            }
            if (std::isfinite(least) && model.plans[best].detail.isEmpty()) {
                model.plans[best].detail = text;
            }
        };
        mark([](const PlanOutcome& o) { return o.gate.day[3]; }, words("earliest gate"));
        mark([](const PlanOutcome& o) { return o.hoursNitriteOver; }, words("least exposure"));
        mark([](const PlanOutcome& o) { return o.volumesToGate; }, words("least water"));
    }

    /// The plan on the slider, where the table does not have it.
    void addChosen()
    {
        model.selected = 0;
        if (!frame.asked.chosen) {
            return;
        }
        const auto known =
            std::ranges::find_if(model.plans, [&](const CyclePlan& row) { return row.plan == frame.asked.chosen; });
        if (known != model.plans.end()) {
            model.selected = static_cast<std::size_t>(known - model.plans.begin());
            return;
        }
        CyclePlan row;
        row.plan = frame.asked.chosen;
        row.letter = letterOf(model.plans.size());
        PlanOutcome asked;
        asked.plan = *frame.asked.chosen;
        row.name = nameOf(asked);
        const auto grid = std::ranges::find_if(
            outcomes(), [&](const PlanOutcome& o) { return !o.present && o.plan == *frame.asked.chosen; });
        if (grid != outcomes().end()) {
            row.outcome = static_cast<std::size_t>(grid - outcomes().begin());
            fill(row, *grid);
        } else if (const auto* preview = frame.asked.preview;
                   preview != nullptr && preview->plan == *frame.asked.chosen) {
            fill(row, preview->outcome);
        } else {
            row.sentence = words("Plan %1: %2.").arg(row.letter, row.name);
        }
        row.detail = words("looked at");
        model.selected = model.plans.size();
        model.plans.push_back(std::move(row));
    }

    void addScatter()
    {
        ScatterModel& scatter = model.scatter;
        const QDate late = frame.flooded().plusDays(lateDay).localDate();
        scatter.xTitle =
            set.net_L > 0.0
                ? words("new water until the gate, %1").arg(record::volumeMeasure(record::shownUnits()).label)
                : words("tank volumes of new water until the gate");
        const double limit = forecast::ExposureLimits{}.nitrite_mgN_per_L;
        scatter.yTitle = words("hours of nitrite above %1").arg(wording::valueWithUnit(u"no2"_s, limit));
        scatter.ringText = words("a plan");
        scatter.lateText = words("gate after %1: over 1 in 5").arg(wording::dateText(late, frame.today));
        const double scale = set.net_L > 0.0 ? record::volumeMeasure(record::shownUnits()).shown(set.net_L) : 1.0;
        const auto add = [&](const PlanOutcome& outcome, std::size_t row) {
            ScatterPoint point;
            point.litres = outcome.volumesToGate * scale;
            point.hours = outcome.hoursNitriteOver;
            point.late = !outcome.present && afterLate(outcome) > kLate;
            point.frontier = outcome.onFrontier;
            if (row < model.plans.size()) {
                point.letter = model.plans[row].letter;
                point.sentence = model.plans[row].sentence;
                if (row == model.selected) {
                    scatter.selected = scatter.points.size();
                }
            } else {
                CyclePlan unnamed;
                unnamed.letter = words("without a letter");
                fill(unnamed, outcome);
                point.sentence = unnamed.sentence;
            }
            scatter.points.push_back(std::move(point));
            model.pointPlans.push_back(outcome.present ? std::nullopt : std::optional(outcome.plan));
        };
        for (std::size_t i = 0; i < outcomes().size(); ++i) {
            std::size_t row = std::numeric_limits<std::size_t>::max();
            for (std::size_t r = 0; r < model.plans.size(); ++r) {
                row = model.plans[r].outcome == i ? r : row;
            }
            add(outcomes()[i], row);
        }
        if (model.selected < model.plans.size() && !model.plans[model.selected].outcome &&
            frame.asked.preview != nullptr && frame.asked.preview->plan == frame.asked.chosen) {
            add(frame.asked.preview->outcome, model.selected);
        }
    }

    void addAdoption()
    {
        if (!frame.asked.chosen) {
            return;
        }
        const auto changes =
            facade::plannedChanges(*frame.result(), *frame.asked.chosen, frame.layout, set.table.windowDays);
        const facade::Adoption adoption = facade::adoptionOf(frame.layout, changes, frame.asked.now);
        const auto replaced = adoption.replaced.size();
        const auto added = adoption.added.size();
        if (replaced == 0) {
            model.adoption = words("Adopting puts %1 changes into the work that is due, in place of the cadence's. "
                                   "Undo restores it.")
                                 .arg(added);
        } else {
            model.adoption =
                words("Adopting replaces %1 planned changes with %2, which show as due work. Undo restores "
                      "them.")
                    .arg(replaced)
                    .arg(added);
        }
        const auto list = [&](const auto& items, auto text, const QString& more) {
            for (std::size_t i = 0; i < items.size() && i < kListed; ++i) {
                model.adoptionList << text(items[i]);
            }
            if (items.size() > kListed) {
                model.adoptionList << more.arg(items.size() - kListed);
            }
        };
        list(
            adoption.replaced,
            [&](const record::Entry& entry) {
                return words("goes: %1 on %2")
                    .arg(wording::percentText(entry.fraction.value_or(0.0)),
                         wording::weekdayText(entry.at.localDate(), frame.today));
            },
            words("goes: %1 more"));
        list(
            adoption.added,
            [&](const facade::PlannedChange& change) {
                return words("comes: %1 on %2")
                    .arg(wording::percentText(change.fraction),
                         wording::weekdayText(change.at.localDate(), frame.today));
            },
            words("comes: %1 more"));
    }
};

} // namespace

void addPlans(CycleModel& model, const Frame& frame)
{
    const CycleQuestion& asked = frame.asked;
    model.comparing = asked.comparing;
    if (frame.result() == nullptr) {
        return;
    }
    for (const record::SourceWaterId id : frame.result()->inputs.sources) {
        const record::SourceWater* water = asked.row.source(id);
        model.sources << (water == nullptr ? words("the layout's own water") : water->name);
    }
    if (asked.chosen) {
        const bool own = asked.preview != nullptr && asked.preview->plan == *asked.chosen;
        model.previewPending = !own || asked.preview->quick;
        if (asked.preview != nullptr) {
            model.fans.previewText =
                wording::planName(asked.preview->plan, frame.result()->inputs.asOf.localDate(), frame.today);
            model.fans.previewQuick = model.previewPending;
        }
    }
    // Plans until another gate are no answer to this one.
    if (asked.plans == nullptr || asked.plans->gate != model.gate || asked.plans->table.outcomes.empty()) {
        return;
    }
    PlanBuilder builder{model, frame, *asked.plans};
    const forecast::DateOdds& gate = builder.present().gate;
    builder.lateDay = std::isfinite(gate.day[k90]) ? gate.day[k90] : gate.lastDay;
    model.compared = builder.outcomes().size();
    const record::Parameter& nitrite = *record::findParameter(u"no2"_s);
    const double limit = nitrite.shown().fromCanonical(forecast::ExposureLimits{}.nitrite_mgN_per_L);
    const QString unit =
        nitrite.shown().label.endsWith(u'N') ? nitrite.shown().label : nitrite.shown().label.section(u' ', 0, 0);
    model.hoursHeader =
        words("Hours\n> %1 %2").arg(wording::numberText(limit, std::max(1, nitrite.decimals - 1)), unit);
    model.lateHeader =
        words("After\n%1").arg(wording::dateText(frame.flooded().plusDays(builder.lateDay).localDate(), frame.today));
    builder.addRow(0);
    std::vector<std::size_t> shown;
    for (std::size_t i = 1; i < builder.outcomes().size(); ++i) {
        if (builder.outcomes()[i].shown) {
            shown.push_back(i);
        }
    }
    std::ranges::stable_sort(shown, {}, [&](std::size_t i) { return builder.outcomes()[i].volumesToGate; });
    for (const std::size_t i : shown) {
        builder.addRow(i);
    }
    builder.addDetails();
    builder.addChosen();
    builder.addScatter();
    builder.addAdoption();
}

} // namespace littoral::ui::cycle
