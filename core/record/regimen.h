// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/ids.h"

#include <QDate>
#include <QString>
#include <QStringList>

namespace littoral::record {

enum class DoseForm {
    Salt,       ///< weighed dry, in grams
    Stock,      ///< a salt dissolved by the keeper, in mL
    Fertiliser, ///< a bought mixture whose label states mg per mL, in mL
};

/// What a layout is dosed with, how much and on which days.
struct DoseRegimen
{
    RegimenId id;
    TankId tank;
    LayoutId layout;
    QString name; ///< the subject of its doses in the record
    DoseForm form = DoseForm::Fertiliser;
    QString salt;          ///< of Salt and Stock: key in core/water/salts
    double stock_g = 0.0;  ///< of Stock: so many grams of the salt ...
    double stock_mL = 0.0; ///< ... in so many mL
    // Of Fertiliser: what a mL holds, mg, nitrate and phosphate as the ions.
    double nitrate_mg_per_mL = 0.0;
    double phosphate_mg_per_mL = 0.0;
    double potassium_mg_per_mL = 0.0;
    double magnesium_mg_per_mL = 0.0;
    double iron_mg_per_mL = 0.0;
    double amount = 0.0; ///< full dose, in unit()
    int everyDays = 1;   ///< 0: on `weekdays`
    int weekdays = 0;    ///< bit 0 is Monday
    QDate from;
    QDate until;           ///< its last day; invalid: open
    bool leanStart = true; ///< less or nothing in the first weeks on ammonia-rich soil
    QString note;

    /// "g" for a salt, "mL" otherwise.
    [[nodiscard]] QString unit() const;
    [[nodiscard]] bool isOn(const QDate& day) const; ///< within from .. until

    bool operator==(const DoseRegimen&) const = default;
};

/// The parameters whose course doses tell: no3, po4, k, mg, fe.
[[nodiscard]] const QStringList& dosedParameters();

/// mg of a dosed parameter (nitrate and phosphate as ions) in one unit() of what is dosed; 0 when it has none. Urea and
/// ammonium salts count as no nitrate: they become some later.
[[nodiscard]] double milligramsPerUnit(const DoseRegimen& regimen, const QString& parameter);
/// Does it bring nitrogen in any form, or phosphorus?
[[nodiscard]] bool bringsNitrogenOrPhosphorus(const DoseRegimen& regimen);

/// What is wrong with it in a sentence, or nothing: without a name, an amount, days or contents it says nothing.
[[nodiscard]] QString regimenProblem(const DoseRegimen& regimen);

} // namespace littoral::record
