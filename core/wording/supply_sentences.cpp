// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wording/supply_sentences.h"

#include "core/wording/entry_words.h"
#include "core/wording/numbers.h"

#include <QCoreApplication>
#include <cmath>

namespace littoral::wording {

using namespace Qt::StringLiterals;
using care::SupplyBasis;
using care::SupplyStanding;

namespace {

constexpr double kYearDays = 365.0;

QString words(const char* text, int n = -1)
{
    return QCoreApplication::translate("Supplies", text, nullptr, n);
}

QString amountText(double amount, const QString& unit)
{
    // Two significant figures: the doses were measured no better; whole things are counted whole.
    const QString number = amount >= 100.0 ? numberText(std::round(amount), 0) : plainNumber(amount, 2);
    return unit.isEmpty() ? number : words("%1 %2").arg(number, unit);
}

QString leftSentence(const SupplyStanding& standing, const QDate& today)
{
    if (!standing.remaining) {
        return standing.basis == SupplyBasis::Date ? QString()
                                                   : words("How much is left is not known: no amount was stated.");
    }
    const QString left = amountText(*standing.remaining, standing.unit);
    const QString since = standing.since.isValid() ? dateText(standing.since, today) : QString();
    switch (standing.basis) {
    case SupplyBasis::Stated:
        return since.isEmpty() ? words("%1 as stated.").arg(left) : words("%1 as stated on %2.").arg(left, since);
    case SupplyBasis::Doses:
        if (standing.changes == 0) {
            return words("About %1 left after %n dose(s) since %2.", standing.doses).arg(left, since);
        }
        return standing.doses == 0
                   ? words("About %1 left after %n water change(s) since %2.", standing.changes).arg(left, since)
                   : words("About %1 left after doses and %n water change(s) since %2.", standing.changes)
                         .arg(left, since);
    case SupplyBasis::Weighings:
        return words("About %1 of gas left by %n weighing(s).", standing.weighings).arg(left);
    case SupplyBasis::Date:
        break;
    }
    return {};
}

} // namespace

QString supplyKindName(const QString& kind)
{
    struct Name
    {
        const char* code;
        const char* text;
    };
    static constexpr Name kNames[]{
        {"conditioner", QT_TRANSLATE_NOOP("Supplies", "Conditioner")},
        {"salt", QT_TRANSLATE_NOOP("Supplies", "Salt")},
        {"starter", QT_TRANSLATE_NOOP("Supplies", "Starter")},
        {"fertiliser", QT_TRANSLATE_NOOP("Supplies", "Fertiliser")},
        {"kit", QT_TRANSLATE_NOOP("Supplies", "Test kit")},
        {"co2", QT_TRANSLATE_NOOP("Supplies", "CO₂ cylinder")},
        {"other", QT_TRANSLATE_NOOP("Supplies", "Other")},
    };
    for (const Name& name : kNames) {
        if (kind == QLatin1String(name.code)) {
            return words(name.text);
        }
    }
    return kind;
}

QString supplyTitle(const SupplyStanding& standing)
{
    if (standing.kind == u"co2"_s) {
        return words("Order or change the cylinder %1").arg(standing.name);
    }
    return standing.wantedByDate() ? words("Renew %1, its date is near or past").arg(standing.name)
                                   : words("Get more %1").arg(standing.name);
}

QString remainingText(const SupplyStanding& standing)
{
    if (!standing.remaining) {
        return standing.basis == SupplyBasis::Date ? QString() : words("unknown");
    }
    const QString amount = amountText(*standing.remaining, standing.unit);
    return standing.basis == SupplyBasis::Stated ? amount : words("about %1").arg(amount);
}

QString daysLeftText(const SupplyStanding& standing)
{
    if (!standing.daysLeft) {
        return {};
    }
    if (*standing.daysLeft > kYearDays) {
        return words("more than a year");
    }
    const int days = static_cast<int>(std::floor(*standing.daysLeft));
    return days == 0 ? words("less than a day") : words("about %n day(s)", days);
}

QString expiryText(const SupplyStanding& standing, const QDate& today)
{
    if (!standing.expires.isValid()) {
        return {};
    }
    return standing.expired(today) ? words("%n day(s) past its date", static_cast<int>(standing.expires.daysTo(today)))
                                   : words("good until %1").arg(dateText(standing.expires, today));
}

QStringList supplyReasons(const SupplyStanding& standing, const QDate& today)
{
    QStringList sentences;
    if (const QString left = leftSentence(standing, today); !left.isEmpty()) {
        sentences << left;
    }
    if (standing.perDay) {
        const QString use = amountText(*standing.perDay, standing.unit);
        sentences << (standing.daysLeft
                          ? words("At the present use of %1 a day it lasts %2.").arg(use, daysLeftText(standing))
                          : words("The present use is %1 a day.").arg(use));
    }
    if (standing.uncounted > 0) {
        sentences << words("%n dose(s) could not be counted: their unit does not convert into %1.", standing.uncounted)
                         .arg(standing.unit);
    }
    if (standing.expires.isValid()) {
        sentences << (standing.expired(today) ? words("It is past its date, %1.").arg(dateText(standing.expires, today))
                                              : words("It is good until %1.").arg(dateText(standing.expires, today)));
    }
    return sentences;
}

} // namespace littoral::wording
