// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wording/measures.h"
#include "core/wording/numbers.h"
#include "core/wording/sentences.h"

#include <QCoreApplication>
#include <algorithm>

namespace littoral::wording {

using namespace Qt::StringLiterals;
using care::GateCondition;
using care::Known;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("GateSentences", text);
}

QString concentration(const GateCondition& condition, const QDate& today)
{
    const QString name = parameterName(condition.key);
    const QString limit = condition.firstStep ? words("the kit's first step")
                                              : valueWithUnit(condition.key, condition.limit.value_or(0.0));
    if (!condition.value) {
        return condition.key == u"nh3"_s
                   ? words("%1 at most %2: unknown, a reading of ammonia with pH would tell.").arg(name, limit)
                   : words("%1 at most %2: unknown, a test would tell.").arg(name, limit);
    }
    const QString value = valueWithUnit(condition.key, *condition.value);
    const QString day = dateText(condition.at.localDate(), today);
    if (condition.firstStep) {
        return words("%1 below %2: %3 on %4.").arg(name, limit, value, day);
    }
    return words("%1 at most %2: %3 on %4.").arg(name, limit, value, day);
}

QString clearRun(const GateCondition& condition)
{
    const QString have = numberText(condition.have, 0);
    const QString need = numberText(condition.need, 0);
    if (condition.needDays > 0.0) {
        return words("Clear readings in a row, well after changes: %1 of %2, over %3 of %4 days.")
            .arg(have, need, numberText(condition.haveDays, 0), numberText(condition.needDays, 0));
    }
    return words("Clear readings in a row, well after changes: %1 of %2.").arg(have, need);
}

struct Plain
{
    const char* key;
    const char* met;
    const char* unmet;
    const char* unknown;
};

constexpr Plain kPlain[]{
    {"co2-steady", QT_TRANSLATE_NOOP("GateSentences", "CO₂ is steady."),
     QT_TRANSLATE_NOOP("GateSentences", "CO₂ was changed less than three days ago."),
     QT_TRANSLATE_NOOP("GateSentences", "Whether CO₂ is steady is unknown: a pH curve over one day would tell.")},
    {"copper-free", QT_TRANSLATE_NOOP("GateSentences", "No copper was found."),
     QT_TRANSLATE_NOOP("GateSentences", "Copper was found."),
     QT_TRANSLATE_NOOP("GateSentences", "Copper is unknown: a test would tell.")},
    {"melt-not-rising", QT_TRANSLATE_NOOP("GateSentences", "Melt is not rising."),
     QT_TRANSLATE_NOOP("GateSentences", "Melt is rising."),
     QT_TRANSLATE_NOOP("GateSentences", "Whether melt is rising is unknown: two looks some days apart would tell.")},
    {"algae-to-eat", QT_TRANSLATE_NOOP("GateSentences", "There is some algae to eat."),
     QT_TRANSLATE_NOOP("GateSentences", "No algae was seen for grazers to eat."),
     QT_TRANSLATE_NOOP("GateSentences", "Whether there is algae to eat is unknown: an observation would tell.")},
    {"first-grazers-well", QT_TRANSLATE_NOOP("GateSentences", "The first animals have done well for a week."),
     QT_TRANSLATE_NOOP("GateSentences", "The first animals have not been in for a week, or one in ten was lost."),
     QT_TRANSLATE_NOOP("GateSentences", "No first animals are on record to judge by.")},
    {"week-since-addition",
     QT_TRANSLATE_NOOP("GateSentences", "A week has passed since the last addition without ammonia or nitrite."),
     QT_TRANSLATE_NOOP("GateSentences",
                       "Less than a week since the last addition, or ammonia or nitrite rose after it."),
     ""},
    {"weekly-cadence", QT_TRANSLATE_NOOP("GateSentences", "Water changes are weekly or rarer."),
     QT_TRANSLATE_NOOP("GateSentences", "Water changes are still more often than weekly."),
     QT_TRANSLATE_NOOP("GateSentences", "There is no cadence of water changes to judge by.")},
    {"biofilm", QT_TRANSLATE_NOOP("GateSentences", "There is a film on glass or rock to graze."),
     QT_TRANSLATE_NOOP("GateSentences", "No film was seen on glass or rock."),
     QT_TRANSLATE_NOOP("GateSentences", "Whether there is a film to graze is unknown: an observation would tell.")},
    {"ph-swing", QT_TRANSLATE_NOOP("GateSentences", "pH moves by 0.9 or less within a day."),
     QT_TRANSLATE_NOOP("GateSentences", "pH moves by more than 0.9 within a day."),
     QT_TRANSLATE_NOOP("GateSentences", "How far pH moves in a day is unknown: two readings on one day would tell.")},
    {"temperature-steady", QT_TRANSLATE_NOOP("GateSentences", "Temperature stayed within a degree for a week."),
     QT_TRANSLATE_NOOP("GateSentences", "Temperature moved by more than a degree this week."),
     QT_TRANSLATE_NOOP("GateSentences", "Whether temperature is steady is unknown: readings over a week would tell.")},
    {"temperature", QT_TRANSLATE_NOOP("GateSentences", "Temperature is between %1 and %2."),
     QT_TRANSLATE_NOOP("GateSentences", "Temperature is outside %1 to %2."),
     QT_TRANSLATE_NOOP("GateSentences", "Temperature is unknown: a reading would tell.")},
    {"no-recent-loss", QT_TRANSLATE_NOOP("GateSentences", "No animal was lost in two weeks."),
     QT_TRANSLATE_NOOP("GateSentences", "An animal was lost in the last two weeks."), ""},
    {"quarantine", QT_TRANSLATE_NOOP("GateSentences", "Quarantine was done."), "",
     QT_TRANSLATE_NOOP("GateSentences", "Quarantine is not on record.")},
    {"no-reaction", QT_TRANSLATE_NOOP("GateSentences", "Ammonia and nitrite stayed down after the last addition."),
     QT_TRANSLATE_NOOP("GateSentences", "Ammonia or nitrite rose within a week of an addition."), ""},
    {"hardness-in-range",
     QT_TRANSLATE_NOOP("GateSentences", "GH and KH were in range a week apart, or no rock hardens the water."),
     QT_TRANSLATE_NOOP("GateSentences", "GH or KH is out of range, and rock hardens the water."),
     QT_TRANSLATE_NOOP("GateSentences",
                       "Whether GH and KH stay in range is unknown: a range, and readings a week apart, would tell.")},
    {"keeper-there", QT_TRANSLATE_NOOP("GateSentences", "No journey stands before or around this day."),
     QT_TRANSLATE_NOOP("GateSentences", "A journey is near: no animals from three days before it until its end."), ""},
};

// The range of core/care/gate_extras.cpp.
constexpr double kCoolest_C = 20.0;
constexpr double kWarmest_C = 28.0;

QString plain(const GateCondition& condition)
{
    for (const Plain& sentence : kPlain) {
        if (condition.key == QLatin1String(sentence.key)) {
            const QString text = words(condition.state == Known::Met     ? sentence.met
                                       : condition.state == Known::Unmet ? sentence.unmet
                                                                         : sentence.unknown);
            return text.contains(u"%1"_s) ? text.arg(temperatureText(kCoolest_C), temperatureText(kWarmest_C)) : text;
        }
    }
    return condition.key;
}

} // namespace

QString gateTitle(const care::GateState& gate)
{
    return QCoreApplication::translate("Gates", gate.title.toUtf8().constData());
}

QString gateConditionText(const GateCondition& condition, const QDate& today)
{
    if (condition.key == u"age"_s) {
        const QString wanted = ageText(static_cast<int>(condition.limit.value_or(0.0)));
        return condition.state == Known::Met
                   ? words("At least %1: reached %2.").arg(wanted, dateText(condition.earliest, today))
                   : words("At least %1: on %2.").arg(wanted, dateText(condition.earliest, today));
    }
    if (condition.key == u"clear-run"_s) {
        return clearRun(condition);
    }
    if (condition.key == u"tan"_s || condition.key == u"no2"_s || condition.key == u"nh3"_s) {
        return concentration(condition, today);
    }
    return plain(condition);
}

QString gateVerdict(const care::GateState& gate)
{
    const auto count = [&](Known wanted) { return std::ranges::count(gate.conditions, wanted, &GateCondition::state); };
    const QString all = QString::number(gate.conditions.size());
    switch (gate.state()) {
    case Known::Met:
        return words("Open: all %1 conditions are met.").arg(all);
    case Known::Unmet:
        return words("Not yet: %1 of %2 conditions are not met.").arg(QString::number(count(Known::Unmet)), all);
    case Known::Unknown:
        break;
    }
    return words("Unknown: %1 of %2 conditions were not looked at.").arg(QString::number(count(Known::Unknown)), all);
}

} // namespace littoral::wording
