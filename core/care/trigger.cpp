// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/trigger.h"

#include "core/care/age.h"
#include "core/care/limits.h"
#include "core/care/observations.h"
#include "core/care/water_state.h"
#include "core/record/source_profile.h"
#include "core/water/dilution.h"
#include "core/water/hardness.h"

#include <QtGlobal>
#include <algorithm>
#include <array>
#include <cmath>

namespace littoral::care {

using namespace Qt::StringLiterals;
using record::Entry;
using record::EntryKind;
using record::Reading;

namespace {

constexpr double kFreshDays = 7.0; // an older reading does not set off a change by itself
constexpr double kHardnessFreshDays = 21.0;
constexpr int kStepDays = 7; // how long an observation keeps the cadence a step tighter
constexpr double kAlgaeRiseDays = 4.0;

const char* const kPractice = QT_TRANSLATE_NOOP("Templates", "common practice");
const char* const kFreeAmmoniaSource =
    QT_TRANSLATE_NOOP("Templates", "UF/IFAS FA16: harm above 0.05 mg/L; 0.02 is the trade's limit");
const char* const kNitriteSource =
    QT_TRANSLATE_NOOP("Templates", "SRAC 462, chloride to nitrite; MSD/Merck Veterinary Manual");
const char* const kPlantSource =
    QT_TRANSLATE_NOOP("Templates", "Cao et al. 2007: rosette plants fail above 0.56 mg/L N; 2 is common practice");
const char* const kOxidiserSource =
    QT_TRANSLATE_NOOP("Templates", "nitrite oxidisers are held back above 0.2 mg/L N of free ammonia");

class Finder
{
public:
    explicit Finder(const Circumstances& at)
        : m_at(at)
        , m_layout(*at.layout)
        , m_limits(limitsOf(*at.row))
    {
    }

    std::vector<Trigger> all()
    {
        ammonia();
        nitrite();
        nitrate();
        hardness(u"gh"_s, water::kMmolPerDegree);
        hardness(u"kh"_s, water::kMeqPerDegree);
        melt();
        algae();
        bed();
        mishaps();
        reaction();
        haze();
        return std::move(m_found);
    }

private:
    [[nodiscard]] const Reading* fresh(const QString& parameter, double days = kFreshDays) const
    {
        const Reading* newest = m_layout.newest(parameter, m_at.now);
        return newest != nullptr && record::daysBetween(newest->at, m_at.now) <= days ? newest : nullptr;
    }

    /// With the keeper's own limit its source takes the place of the program's.
    Trigger& byReading(TriggerKind kind, const Reading& reading, double value, double limit, const char* source,
                       double Limits::*rule = nullptr)
    {
        Trigger trigger;
        trigger.kind = kind;
        trigger.parameter = reading.parameter;
        trigger.value = value;
        trigger.limit = limit;
        trigger.at = reading.at;
        trigger.reading = reading.id;
        const QString builtIn = QString::fromUtf8(source);
        trigger.source = rule == nullptr ? builtIn : m_limits.sourceOf(rule, builtIn);
        m_found.push_back(trigger);
        return m_found.back();
    }

    Trigger& byEntry(TriggerKind kind, const Entry& entry)
    {
        Trigger trigger;
        trigger.kind = kind;
        trigger.subject = entry.subject;
        trigger.at = entry.at;
        trigger.entry = entry.id;
        trigger.source = QString::fromUtf8(kPractice);
        m_found.push_back(trigger);
        return m_found.back();
    }

    static void atOnce(Trigger& trigger, double fraction, double every)
    {
        trigger.fraction = fraction;
        trigger.everyDays = every;
        trigger.immediate = true;
    }

    void ammonia()
    {
        const Reading* tan = fresh(u"tan"_s);
        if (tan == nullptr) {
            return;
        }
        const auto free = freeAmmoniaOf(m_layout, *tan);
        if (m_at.stock.any()) {
            if (free && free->mgN_per_L >= m_limits.freeAmmoniaAnimals) {
                Trigger& t = byReading(TriggerKind::FreeAmmoniaWithAnimals, *tan, free->mgN_per_L,
                                       m_limits.freeAmmoniaAnimals, kFreeAmmoniaSource, &Limits::freeAmmoniaAnimals);
                t.parameter = u"nh3"_s;
                atOnce(t, 0.5, 1.0);
            }
            return;
        }
        if (m_layout.layout.start == record::StartMethod::DarkStart && !isPlanted(m_layout, m_at.now)) {
            if (tan->value > 5.0) {
                atOnce(byReading(TriggerKind::AmmoniaInDarkStart, *tan, tan->value, 5.0, kPractice), 0.5, 7.0);
            }
            return;
        }
        if (tan->value >= m_limits.ammoniaPlants) {
            atOnce(byReading(TriggerKind::AmmoniaWithoutAnimals, *tan, tan->value, m_limits.ammoniaPlants, kPlantSource,
                             &Limits::ammoniaPlants),
                   0.6, 1.0);
        }
        if (free && free->mgN_per_L >= m_limits.freeAmmoniaOxidisers) {
            Trigger& t = byReading(TriggerKind::FreeAmmoniaWithoutAnimals, *tan, free->mgN_per_L,
                                   m_limits.freeAmmoniaOxidisers, kOxidiserSource, &Limits::freeAmmoniaOxidisers);
            t.parameter = u"nh3"_s;
            atOnce(t, 0.5, 0.0);
        }
    }

    void nitrite()
    {
        const Reading* no2 = fresh(u"no2"_s);
        if (no2 == nullptr || !m_at.stock.any()) {
            return;
        }
        const bool poor = isPoorInChloride(*m_at.row, m_layout, m_at.now);
        const double limit = poor ? m_limits.nitriteAnimalsPoorChloride : m_limits.nitriteAnimals;
        // "<0.1" with a limit inside is not above it.
        if (no2->value >= limit && no2->censoring != record::Censoring::Below) {
            atOnce(byReading(TriggerKind::NitriteWithAnimals, *no2, no2->value, limit, kNitriteSource), 0.5, 1.0);
        }
    }

    void nitrate()
    {
        const Reading* no3 = fresh(u"no3"_s);
        const double limit = m_at.stock.any() ? m_limits.nitrateAnimals : m_limits.nitrateAny;
        if (no3 == nullptr || no3->value <= limit) {
            return;
        }
        const record::Target* target = m_at.row->target(m_layout.layout.tank, u"no3"_s);
        const double aim = target != nullptr && target->high ? *target->high : m_limits.nitrateAim;
        const double incoming =
            record::sourceProfile(*m_at.row, m_layout.layout.source).nitrate_mgN_per_L.value.value_or(0.0);
        const double wanted = water::singleChangeToTarget(no3->value, aim, incoming).value_or(0.5);
        // One change only, and none so large that it shocks: rounded up to a tenth between 30 and 60 %.
        const double fraction = std::clamp(std::ceil(wanted * 10.0 - 1e-9) / 10.0, 0.3, 0.6);
        Trigger& t = byReading(TriggerKind::NitrateHigh, *no3, no3->value, limit, kPractice,
                               m_at.stock.any() ? &Limits::nitrateAnimals : &Limits::nitrateAny);
        atOnce(t, fraction, 0.0);
        t.lastDay = no3->at.localDate();
    }

    void hardness(const QString& parameter, double perDegree)
    {
        const Reading* reading = fresh(parameter, kHardnessFreshDays);
        const record::Target* target = m_at.row->target(m_layout.layout.tank, parameter);
        if (reading == nullptr || target == nullptr || !target->high || !m_layout.layout.rockHardens) {
            return;
        }
        const double limit = *target->high + m_limits.hardnessOverTarget_deg * perDegree;
        if (reading->value > limit) {
            byReading(TriggerKind::HardnessAboveTarget, *reading, reading->value, limit, kPractice,
                      &Limits::hardnessOverTarget_deg)
                .steps = 1;
        }
    }

    [[nodiscard]] bool withinDays(const Entry& entry, int days) const
    {
        return entry.at.localDate().daysTo(m_at.now.localDate()) <= days;
    }

    void melt()
    {
        const Entry* seen = newestObservation(m_layout, u"melt"_s, m_at.now);
        if (seen != nullptr && seen->severity.value_or(0) >= 2 && seen->coverage.value_or(0.0) >= 0.20 - 1e-9 &&
            withinDays(*seen, kStepDays)) {
            Trigger& t = byEntry(TriggerKind::MeltHeavy, *seen);
            t.value = *seen->severity;
            t.coverage = seen->coverage;
            t.steps = 1;
            t.lastDay = seen->at.localDate().addDays(kStepDays);
        }
    }

    void algae()
    {
        for (const Rise& rise : risesOfAlgae(m_layout, m_at.now, kAlgaeRiseDays)) {
            if (!withinDays(*rise.now, kStepDays)) {
                continue;
            }
            Trigger& t = byEntry(TriggerKind::AlgaeRising, *rise.now);
            t.value = rise.now->severity.value_or(0);
            t.limit = rise.before->severity.value_or(0);
            t.steps = 1;
            t.lastDay = rise.now->at.localDate().addDays(kStepDays);
        }
    }

    void bed()
    {
        for (const Event event : {Event::BedDisturbed, Event::Replant}) {
            const auto all = occurrences(*m_at.row, m_layout, event, m_at.now);
            if (!all.empty() && withinDays(*all.back(), 7)) {
                Trigger& t = byEntry(TriggerKind::BedDisturbed, *all.back());
                atOnce(t, 0.5, 1.0);
                t.lastDay = all.back()->at.localDate().addDays(1);
            }
        }
    }

    void mishaps()
    {
        const std::array all{std::pair(Event::Loss, TriggerKind::AnimalLost),
                             std::pair(Event::Overfeed, TriggerKind::Overfed),
                             std::pair(Event::MedicationEnd, TriggerKind::MedicationEnded)};
        for (const auto& [event, kind] : all) {
            const auto found = occurrences(*m_at.row, m_layout, event, m_at.now);
            if (!found.empty() && withinDays(*found.back(), 7)) {
                Trigger& t = byEntry(kind, *found.back());
                atOnce(t, 0.4, 0.0);
                t.lastDay = found.back()->at.localDate();
                if (kind == TriggerKind::MedicationEnded) {
                    t.caution = u"C-MED"_s;
                }
            }
        }
    }

    /// A gate that did not hold what it promised: a step tighter for a week, and no more additions (see the gates).
    void reaction()
    {
        if (const Reading* reading = reactionToAddition(*m_at.row, m_layout, m_at.now)) {
            const double limit = reading->parameter == u"tan"_s ? m_limits.ammoniaClear : m_limits.nitriteClear;
            Trigger& t = byReading(TriggerKind::ReactionAfterAddition, *reading, reading->value, limit, kPractice);
            t.steps = 1;
            t.lastDay = reading->at.localDate().addDays(kStepDays);
        }
    }

    void haze()
    {
        const Entry* haze = newestObservation(m_layout, u"bac_haze"_s, m_at.now);
        const Entry* gasp = newestObservation(m_layout, u"an_gasp"_s, m_at.now);
        if (haze == nullptr || gasp == nullptr || haze->severity.value_or(0) < 1 || gasp->severity.value_or(0) < 1 ||
            !withinDays(*gasp, 2) || !withinDays(*haze, 3)) {
            return;
        }
        Trigger& t = byEntry(TriggerKind::HazeAndGasping, *gasp);
        atOnce(t, 0.4, 0.0);
        t.lastDay = gasp->at.localDate();
        t.caution = u"C-O2"_s;
    }

    const Circumstances& m_at;
    const record::LayoutRecord& m_layout;
    const Limits m_limits;
    std::vector<Trigger> m_found;
};

} // namespace

QString triggerKey(TriggerKind kind)
{
    static const std::array keys{u"nh3-animals"_s, u"no2-animals"_s,    u"tan"_s,           u"nh3"_s,
                                 u"melt"_s,        u"algae"_s,          u"bed-disturbed"_s, u"loss"_s,
                                 u"overfeed"_s,    u"hardness"_s,       u"nitrate"_s,       u"haze"_s,
                                 u"dark-start"_s,  u"medication-end"_s, u"reaction"_s};
    return keys[static_cast<std::size_t>(kind)];
}

std::vector<Trigger> activeTriggers(const Circumstances& at)
{
    const record::Layout& layout = at.layout->layout;
    if (!layout.flooded.isValid() || layout.flooded > at.now) {
        return {};
    }
    return Finder(at).all();
}

} // namespace littoral::care
