// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/findings/change_points.h"
#include "core/findings/changes.h"
#include "core/findings/exposure.h"
#include "core/findings/findings.h"

#include <QDate>
#include <QString>
#include <QStringList>

/// Findings and the review of a case in whole sentences. No percentages of certainty: support is said in words.
namespace littoral::wording {

/// A text of the files of facts, translated.
[[nodiscard]] QString factText(const QString& source);

/// "Strong support", "Fair support", "Weak support", "More speaks against it".
[[nodiscard]] QString supportText(findings::Support support);
/// Who decides where animals' health or a medicine is concerned; empty for any other condition. Shown above what is to
/// be done.
[[nodiscard]] QString healthDeferral(const facts::Condition& condition);
/// "Phosphate 0.1 mg/L PO₄ on 12 Nov: below 0.3 is asked for." One item with what was known of it.
[[nodiscard]] QString evidenceText(const findings::Judged& judged, const facts::FactBook& book, const QDate& today);
/// What is not known, as the question that would settle it: "How does it come off?", "Phosphate was not read."
[[nodiscard]] QString unknownText(const findings::Judged& judged, const facts::FactBook& book);
/// "What decides best: How does it come off?"
[[nodiscard]] QString checkText(const findings::Check& check);
/// One line for each answer: 'Answer "with one finger": Diatom film would come first.'
[[nodiscard]] QStringList checkAnswers(const findings::Check& check);

/// "Hours of light", "Nitrate", "Trim".
[[nodiscard]] QString changeName(const findings::Change& change);
/// `before` or `after` of the change with its unit: "9 h", "50 %", "4.6 dGH".
[[nodiscard]] QString changeFigure(const findings::Change& change, double value);
/// "Light 6 h before, 9 h after, since 12 Nov."
[[nodiscard]] QString changeText(const findings::Change& change, const QDate& today);
/// "6.0 times its own earlier spread"; without enough earlier values it says so.
[[nodiscard]] QString changeSize(const findings::Change& change);
/// "GH 5 dGH until 8 Nov, 7.5 dGH from 12 Nov."
[[nodiscard]] QString changePointText(const QString& parameter, const findings::ChangePoint& point, const QDate& today);
/// "Nitrite above 0.5 mg/L NO₂ for about 30 h, between 20 and 44 h by the kit's error; worst 1 mg/L NO₂ on 3 Nov; 12
/// days not read."
[[nodiscard]] QString exposureText(const findings::Exposure& exposure, const QDate& today);

} // namespace littoral::wording
