// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/limits.h"
#include "core/record/journey.h"

#include <QDate>
#include <QString>
#include <QStringList>
#include <vector>

/// The sentences of a hand-over: why a round is whose, what a helper is told. What is told is common practice of the
/// trade.
namespace littoral::wording {

/// "23 Dec – 3 Jan, Ida": for lists and headings.
[[nodiscard]] QString journeyTitle(const record::Journey& journey, const QDate& today);

// Why a round stands in a list.
[[nodiscard]] QString handOpenNowText();
[[nodiscard]] QString handOnLeavingText();
/// Not work for a helper, and it cannot wait.
[[nodiscard]] QString handBroughtForwardText(const QDate& due, const QDate& today);
[[nodiscard]] QString handServiceText(const QDate& due, const QDate& today);
/// A change on the day of leaving carries the tank so far.
[[nodiscard]] QString handChangeFirstText(const QDate& due, const QDate& today);
[[nodiscard]] QString handHelperText(const QDate& overdueFrom, const QDate& today);
[[nodiscard]] QString handWaitsText(const QDate& mayWaitUntil, const QDate& today);
[[nodiscard]] QString handNotEnteredText();
[[nodiscard]] QString handGivesWayText();
[[nodiscard]] QString handLateText(int daysOver);

/// "18 L out, 18 L of \"Tap\" in." `source` may be empty.
[[nodiscard]] QString changeAmountText(double litres, const QString& source);
[[nodiscard]] QString changeShareText(double fraction);
/// What is written down: "NH₃/₄, NO₂".
[[nodiscard]] QString readingsAmountText(const QStringList& parameters);

/// What a preparation asks for, by its key (facade::Preparation).
[[nodiscard]] QString preparationText(const QString& key);
[[nodiscard]] QString additionNearText(const QString& subject, const QDate& day, const QDate& today);
[[nodiscard]] QString serviceNearText(const QDate& day, const QDate& today);
[[nodiscard]] QString settingNearText(const QDate& day, const QDate& today);

// The helper's sheet.
[[nodiscard]] QString animalsKnownText(const QStringList& animals); ///< each "12 ember tetra"
[[nodiscard]] QString noAnimalsText();
[[nodiscard]] QString temperatureKnownText(double low_C, double high_C);
[[nodiscard]] QString lightKnownText(double hours);
[[nodiscard]] QString gasKnownText(double hours);
[[nodiscard]] QStringList dailyTexts(bool animals, const QString& feed);
[[nodiscard]] QStringList doNotTexts(bool animals, bool gas);
[[nodiscard]] QStringList onReturnTexts();

struct CallSignWords
{
    QString sign;
    QStringList steps;
    QString caution;
};
[[nodiscard]] std::vector<CallSignWords> callSigns(bool animals, bool gas, const care::Limits& limits);
[[nodiscard]] QString callLine(const QString& phone);
[[nodiscard]] QString noPhoneLine();
[[nodiscard]] QString professionalLine();
[[nodiscard]] QString handOverSource();
[[nodiscard]] QString handOverDeferral();

} // namespace littoral::wording
