// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <QByteArray>
#include <QJsonObject>
#include <QString>
#include <vector>

/// A task template as the words of a form, and back. The form is only another way to write the definition: what it
/// makes goes through the same reader as the built-in file.
namespace littoral::care {

/// A condition in words, its terms apart by commas, all of which must hold: "animals", "no shrimp", "bed rich|mild",
/// "start starter", "co2 pressurised", "net-below 60" (litres), "recorded topup", "tan < 0.5" (newest reading,
/// canonical unit). Empty: always.
[[nodiscard]] QString conditionText(const QJsonObject& condition);
/// The other way; the error names the term. Values are proved by parseTemplate.
[[nodiscard]] Result<QJsonObject> conditionFrom(const QString& text);

/// One stretch of a cadence. Numbers as typed; empty: not given.
struct RoundText
{
    QString variant; ///< key of the case it belongs to; empty where there are no cases
    QString every, from, to, once;
    QString after;           ///< events, apart by spaces
    QString ifRaised;        ///< "yes": only where a reading is raised after the event
    QString leaves, returns; ///< days from leaving on a journey, or from coming back
    QString days;            ///< after the event, apart by spaces
    QString share;           ///< of a water change, %
    QString range;           ///< "30-50", %
    QString when;

    bool operator==(const RoundText&) const = default;
};

struct VariantText
{
    QString key;
    QString when;

    bool operator==(const VariantText&) const = default;
};

struct TemplateText
{
    QString key, title, kind;
    bool wholeRow = false;
    QString applies;
    std::vector<VariantText> variants; ///< the first whose condition holds is taken; empty: one case, always
    std::vector<RoundText> rounds;
    QString closesEntry, closesSubject;
    QString closesReadings; ///< keys apart by spaces, "cond|tds" for one of two
    QString minutes, grace, priority, lapse;
    bool rolls = false;
    QString consequence, caution, helper, source;

    bool operator==(const TemplateText&) const = default;
};

/// The built-in template of that key as JSON, to start an edit from; empty when there is none.
[[nodiscard]] QByteArray builtInDefinition(const QString& key);

/// What is not in the definition is left empty; a definition that is no object gives an empty form.
[[nodiscard]] TemplateText templateText(const QByteArray& definition);
/// Builds the definition and proves it. The error says what is wrong, where, and how to mend it.
[[nodiscard]] Result<QByteArray> definitionFrom(const TemplateText& text);

} // namespace littoral::care
