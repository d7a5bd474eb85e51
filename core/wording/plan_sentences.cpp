// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wording/plan_sentences.h"

#include "core/wording/forecast_sentences.h"
#include "core/wording/numbers.h"

#include <QCoreApplication>
#include <QLocale>
#include <array>
#include <cmath>

namespace littoral::wording {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Plans", text);
}

QString plural(const char* text, int n)
{
    return QCoreApplication::translate("Plans", text, nullptr, n);
}

QDate dayAt(const record::Moment& flooded, double day)
{
    return flooded.plusDays(day).localDate();
}

QString loadText(double load_mgN_per_L_d)
{
    return words("%1 a day").arg(valueWithUnit(u"nh3"_s, load_mgN_per_L_d));
}

QString wholeDays(double days)
{
    const int whole = static_cast<int>(std::lround(days));
    return plural("%n day(s)", whole);
}

QString factorText(double factor)
{
    return numberText(factor, factor < 1.2 ? 2 : 1);
}

/// "0.25", "0–0.25", "over 4": what a test may answer, as its card has it.
QString answerText(const forecast::TestOutcome& outcome, const QString& unit)
{
    const auto number = [](double value) {
        QLocale locale;
        locale.setNumberOptions(QLocale::OmitGroupSeparator);
        return locale.toString(value, 'g', 3);
    };
    if (outcome.low == outcome.high) {
        return words("%1 %2").arg(number(outcome.low), unit);
    }
    if (std::isinf(outcome.high)) {
        return words("over %1 %2").arg(number(outcome.low), unit);
    }
    return words("%1–%2 %3").arg(number(outcome.low), number(outcome.high), unit);
}

const char* learnedSentence(LearnedKind kind)
{
    switch (kind) {
    case LearnedKind::SoilRelease:
        return QT_TRANSLATE_NOOP("Plans", "Soil of this kind releases %1 times the usual nitrogen, as seen in %2; 8 in "
                                          "10 within a factor of %3, without them %4.");
    case LearnedKind::SoilRate:
        return QT_TRANSLATE_NOOP("Plans", "Soil of this kind releases its nitrogen %1 times as fast as usual, as seen "
                                          "in %2; 8 in 10 within a factor of %3, without them %4.");
    case LearnedKind::SoilBuffering:
        return QT_TRANSLATE_NOOP("Plans", "Soil of this kind takes up alkalinity %1 times as fast as usual, as seen in "
                                          "%2; 8 in 10 within a factor of %3, without them %4.");
    case LearnedKind::SourceNitrate:
        return QT_TRANSLATE_NOOP("Plans", "The source water holds %1 times the nitrate that was taken, as seen in %2; "
                                          "8 in 10 within a factor of %3, without them %4.");
    case LearnedKind::SourceAmmonia:
        return QT_TRANSLATE_NOOP("Plans", "The source water holds %1 times the ammonia that was taken, as seen in %2; "
                                          "8 in 10 within a factor of %3, without them %4.");
    case LearnedKind::MatureMedia:
        return QT_TRANSLATE_NOOP("Plans", "Moved media brings %1 times the usual bacteria, as seen in %2; 8 in 10 "
                                          "within a factor of %3, without them %4.");
    case LearnedKind::ChangeGain:
        return QT_TRANSLATE_NOOP("Plans", "Water changes come out at %1 times their usual share of what is written "
                                          "down, as seen in %2; 8 in 10 within a factor of %3, without them %4.");
    }
    return "";
}

QString substanceTest(forecast::Substance substance)
{
    switch (substance) {
    case forecast::Substance::TotalAmmonia:
    case forecast::Substance::FreeAmmonia:
        return words("An ammonia test on %1 would narrow the range from %2 to about %3.");
    case forecast::Substance::Nitrite:
        return words("A nitrite test on %1 would narrow the range from %2 to about %3.");
    case forecast::Substance::Nitrate:
        break;
    }
    return words("A nitrate test on %1 would narrow the range from %2 to about %3.");
}

} // namespace

QString planName(const forecast::ChangePlan& plan, const QDate& from, const QDate& today, const QString& source)
{
    if (plan.fraction <= 0.0) {
        return words("no change");
    }
    const QString fraction = percentText(plan.fraction);
    QString name;
    if (plan.everyDays == 1.0) {
        name = words("%1 daily").arg(fraction);
    } else if (plan.everyDays < 1.0) {
        name = words("%1 every %2 hours").arg(fraction, numberText(plan.everyDays * 24.0, 0));
    } else {
        name = words("%1 %2").arg(fraction, intervalText(plan.everyDays));
    }
    if (!source.isEmpty()) {
        name = words("%1 from %2").arg(name, source);
    }
    if (!std::isfinite(plan.easeAfterDays)) {
        return name;
    }
    const QDate eased = from.addDays(static_cast<qint64>(std::ceil(plan.easeAfterDays)));
    return words("%1, half from %2").arg(name, dateText(eased, today));
}

QString presentPlanName()
{
    return words("as planned now");
}

QString planAdoptedLabel(const QString& name, const QString& tank)
{
    return words("Plan adopted: %1, %2").arg(name, tank);
}

QString planWaterText(double changes, const std::optional<double>& litres)
{
    const auto count = static_cast<int>(std::lround(changes));
    if (count == 0) {
        return words("No water is changed until the gate opens.");
    }
    if (!litres) {
        return plural("%n change(s) until the gate opens.", count);
    }
    return plural("%n change(s), %1 of new water until the gate opens.", count).arg(litresText(*litres));
}

QString planExposureText(const forecast::PlanOutcome& outcome, const forecast::ExposureLimits& limits,
                         double windowDays)
{
    return words("Nitrite above %1 for about %2 hours of %3, free ammonia above %4 for about %5.")
        .arg(valueWithUnit(u"no2"_s, limits.nitrite_mgN_per_L), numberText(outcome.hoursNitriteOver, 0),
             wholeDays(windowDays), valueWithUnit(u"nh3"_s, limits.free_mgN_per_L),
             numberText(outcome.hoursFreeOver, 0));
}

QString nitriteAboveText(double nitrite_mgN_per_L, double odds, double windowDays)
{
    return words("Nitrite above %1 at some time in %2: %3.")
        .arg(valueWithUnit(u"no2"_s, nitrite_mgN_per_L), wholeDays(windowDays), oddsText(odds));
}

QString cheapestPlanText(const std::optional<QString>& name, double nitrite_mgN_per_L, double most)
{
    const QString level = valueWithUnit(u"no2"_s, nitrite_mgN_per_L);
    if (!name) {
        return words("None of these plans keeps the odds of nitrite above %1 under %2.").arg(level, oddsText(most));
    }
    return words("The least water that keeps the odds of nitrite above %1 under %2: %3.")
        .arg(level, oddsText(most), *name);
}

QString dilutionCaution()
{
    return words("Heavy changes clear readings by dilution; whether the filter has grown is told apart.");
}

QString readingsClearText(const QString& gate, const forecast::DateOdds& odds, const record::Moment& flooded,
                          const QDate& today)
{
    return openingText(words("Readings clear for %1").arg(gate), odds, flooded, today);
}

QString carriesLoadText(const forecast::DateOdds& odds, double load_mgN_per_L_d, const record::Moment& flooded,
                        const QDate& today)
{
    if (odds.gridDays.empty() || load_mgN_per_L_d <= 0.0) {
        return {};
    }
    return openingText(words("Filter carries %1").arg(loadText(load_mgN_per_L_d)), odds, flooded, today);
}

QString carriesAtGateText(const std::optional<double>& odds, double load_mgN_per_L_d)
{
    if (!odds) {
        return words("No load is given or planned, so whether the filter would carry it cannot be told.");
    }
    return words("On the day the readings are clear, the filter carries %1: %2.")
        .arg(loadText(load_mgN_per_L_d), oddsText(*odds));
}

QString capacityText(double low_mgN_per_L_d, double high_mgN_per_L_d)
{
    return words("The filter could take %1 to %2 a day now, 8 in 10.")
        .arg(valueWithUnit(u"nh3"_s, low_mgN_per_L_d), valueWithUnit(u"nh3"_s, high_mgN_per_L_d));
}

QString loadRemark(double feeding_mgN_per_L_d, double animals_mgN_per_L_d, double planned_mgN_per_L_d, bool stated)
{
    const double total = feeding_mgN_per_L_d + animals_mgN_per_L_d + planned_mgN_per_L_d;
    if (total <= 0.0) {
        return {};
    }
    if (stated) {
        return words("The filter is held against the load that was given, %1.").arg(loadText(total));
    }
    return words("The filter is held against %1: from feeding %2, from the animals %3, from those planned %4.")
        .arg(loadText(total), loadText(feeding_mgN_per_L_d), loadText(animals_mgN_per_L_d),
             loadText(planned_mgN_per_L_d));
}

QString nextTestText(const forecast::TestValue& test, const record::Moment& flooded, const QDate& today)
{
    return substanceTest(test.substance)
        .arg(dateText(dayAt(flooded, test.day), today), wholeDays(test.width_d),
             numberText(std::round(test.expectedWidth_d), 0));
}

QString testOutcomeText(const forecast::TestOutcome& outcome, const QString& unit, const record::Moment& flooded,
                        const QDate& today)
{
    const QString answer = answerText(outcome, unit);
    const QString odds = oddsText(outcome.probability);
    if (std::isinf(outcome.day10)) {
        return words("If it reads %1 (%2), the date lies beyond the days reckoned.").arg(answer, odds);
    }
    const QDate first = std::max(dayAt(flooded, outcome.day10), today);
    if (std::isinf(outcome.day90)) {
        return words("If it reads %1 (%2), from %3 at the earliest.").arg(answer, odds, dateText(first, today));
    }
    const QDate last = std::max(dayAt(flooded, outcome.day90), first);
    return words("If it reads %1 (%2): %3.").arg(answer, odds, dateRangeText(first, last, today));
}

QString noTestNarrowsText()
{
    return words("No test of the coming week is expected to narrow the range by half a day or more.");
}

QString learnedText(LearnedKind kind, double typical, double prior80, double learned80, const QStringList& layouts)
{
    return words(learnedSentence(kind))
        .arg(factorText(typical), QLocale().createSeparatedList(layouts), factorText(learned80), factorText(prior80));
}

QString heldBandsText(int readings, int inside, int inTen)
{
    if (readings <= 0) {
        return words("No reading has come in yet against a kept forecast.");
    }
    const auto share = static_cast<int>(std::lround(100.0 * inside / readings));
    if (readings == 1) {
        return inside > 0 ? words("Of 1 reading, the %1-in-10 band held it.").arg(inTen)
                          : words("Of 1 reading, the %1-in-10 band did not hold it.").arg(inTen);
    }
    return words("Of %1 readings, the %2-in-10 bands held %3 (%4 in 100).")
        .arg(QString::number(readings), QString::number(inTen), QString::number(inside), QString::number(share));
}

QString sharpnessText(double error, double persistence)
{
    if (persistence <= 0.0) {
        return {};
    }
    return words("The middles of the bands were %1 times as far off as the last reading before each forecast.")
        .arg(numberText(error / persistence, 2));
}

QString heldDatesText(int closed, int inside)
{
    if (closed <= 0) {
        return words("No forecast date has come about yet.");
    }
    return closed == 1 ? (inside > 0 ? words("Of 1 date that has come about, the 8-in-10 range held it.")
                                     : words("Of 1 date that has come about, the 8-in-10 range did not hold it."))
                       : words("Of %1 dates that have come about, the 8-in-10 ranges held %2.")
                             .arg(QString::number(closed), QString::number(inside));
}

QString heldGateText(const QString& gate, int closed, int inside)
{
    if (closed <= 0) {
        return {};
    }
    return closed == 1
               ? (inside > 0
                      ? words("Of 1 date of %1 that has come about, the 8-in-10 range held it.").arg(gate)
                      : words("Of 1 date of %1 that has come about, the 8-in-10 range did not hold it.").arg(gate))
               : words("Of %1 dates of %2 that have come about, the 8-in-10 ranges held %3.")
                     .arg(QString::number(closed), gate, QString::number(inside));
}

QString wideningText(double inflation)
{
    if (inflation <= 1.0) {
        return {};
    }
    return words("Earlier bands were too narrow; to have held what they said they would have had to be %1 times as "
                 "wide.")
        .arg(numberText(inflation, 1));
}

} // namespace littoral::wording
