// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wording/dose_sentences.h"

#include "core/wording/numbers.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

namespace littoral::wording {

using namespace Qt::StringLiterals;
using care::LeanDose;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("DoseSentences", text);
}

/// Three figures, no zeros at the end.
QString threeFigures(double value)
{
    return QLocale().toString(value, 'g', 3);
}

QString leanSentence(const care::DueItem& item, const QDate& today)
{
    const care::DoseReason& dose = *item.reason.dose;
    const QString full = doseAmount(dose.full, item.unit);
    switch (dose.lean) {
    case LeanDose::Quarter:
        return words("A quarter of the full %1 until %2: the soil feeds the plants in the first weeks.")
            .arg(full, dateText(dose.leanUntil, today));
    case LeanDose::Half:
        return words("Half of the full %1 until %2: the soil feeds the plants in the first weeks.")
            .arg(full, dateText(dose.leanUntil, today));
    case LeanDose::NitrateSpent:
        return words("The full dose before week 5: nitrate was read below 5 mg/L NO₃.");
    case LeanDose::Full:
        break;
    }
    return {};
}

} // namespace

QString doseAmount(double amount, const QString& unit)
{
    return words("%1 %2").arg(threeFigures(amount), unit);
}

QString doseTitle(const care::DueItem& item)
{
    return words("Dose %1 of %2").arg(doseAmount(item.amount.value_or(0.0), item.unit), item.subject);
}

QString doseDays(int everyDays, int weekdays)
{
    if (everyDays > 0) {
        return intervalText(everyDays);
    }
    QStringList days;
    for (int day = 0; day < 7; ++day) {
        if ((weekdays & (1 << day)) != 0) {
            days << QLocale().dayName(day + 1, QLocale::ShortFormat);
        }
    }
    return QLocale().createSeparatedList(days);
}

QStringList doseReasons(const care::DueItem& item, const QDate& today)
{
    QStringList sentences;
    if (!item.reason.dose) {
        return sentences;
    }
    const care::DoseReason& dose = *item.reason.dose;
    const QString days = doseDays(static_cast<int>(item.reason.intervalDays), dose.weekdays);
    sentences << (item.reason.last ? words("The regimen asks for it %1; the last one was %2.")
                                         .arg(days, dateText(*item.reason.last, today))
                                   : words("The regimen asks for it %1; none is entered yet.").arg(days));
    if (const QString lean = leanSentence(item, today); !lean.isEmpty()) {
        sentences << lean;
    }
    if (dose.missed > 0 && item.reason.last) {
        sentences << words("Rounds without a dose since then: %1. They are not made up for: doses are not doubled "
                           "(common practice).")
                         .arg(dose.missed);
    }
    return sentences;
}

QString regimenLine(const record::DoseRegimen& regimen, std::optional<double> net_L, const QDate& today)
{
    QStringList rises;
    for (const QString& key : record::dosedParameters()) {
        const double rise =
            net_L && *net_L > 0.0 ? record::milligramsPerUnit(regimen, key) * regimen.amount / *net_L : 0.0;
        const record::Parameter* parameter = record::findParameter(key);
        if (rise > 0.0 && parameter != nullptr) {
            rises << words("%1 mg/L %2").arg(QLocale().toString(rise, 'g', 2), parameter->symbol);
        }
    }
    const QString plain = words("%1: %2 %3 from %4")
                              .arg(regimen.name, doseAmount(regimen.amount, regimen.unit()),
                                   doseDays(regimen.everyDays, regimen.weekdays), dateText(regimen.from, today));
    const QString line =
        regimen.until.isValid() ? words("%1 until %2").arg(plain, dateText(regimen.until, today)) : plain;
    return rises.isEmpty() ? line : words("%1; each dose adds %2").arg(line, QLocale().createSeparatedList(rises));
}

} // namespace littoral::wording
