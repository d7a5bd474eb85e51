// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/regimen.h"

#include "core/water/salts.h"

#include <QCoreApplication>
#include <algorithm>

namespace littoral::record {

using namespace Qt::StringLiterals;
using water::Nutrient;

namespace {

constexpr int kEveryDayOfTheWeek = 0x7f;

QString words(const char* text)
{
    return QCoreApplication::translate("Regimen", text);
}

const water::Salt* saltOf(const DoseRegimen& regimen)
{
    return regimen.form == DoseForm::Fertiliser ? nullptr : water::findSalt(regimen.salt.toStdString());
}

std::optional<Nutrient> nutrientOf(const QString& parameter)
{
    if (parameter == u"no3"_s) {
        return Nutrient::Nitrate;
    }
    if (parameter == u"po4"_s) {
        return Nutrient::Phosphate;
    }
    if (parameter == u"k"_s) {
        return Nutrient::Potassium;
    }
    if (parameter == u"mg"_s) {
        return Nutrient::Magnesium;
    }
    return parameter == u"fe"_s ? std::optional(Nutrient::Iron) : std::nullopt;
}

double labelled(const DoseRegimen& regimen, Nutrient nutrient)
{
    switch (nutrient) {
    case Nutrient::Nitrate:
        return regimen.nitrate_mg_per_mL;
    case Nutrient::Phosphate:
        return regimen.phosphate_mg_per_mL;
    case Nutrient::Potassium:
        return regimen.potassium_mg_per_mL;
    case Nutrient::Magnesium:
        return regimen.magnesium_mg_per_mL;
    case Nutrient::Iron:
        return regimen.iron_mg_per_mL;
    default:
        return 0.0;
    }
}

/// Grams of the salt in one unit of what is dosed.
double gramsPerUnit(const DoseRegimen& regimen)
{
    if (regimen.form == DoseForm::Salt) {
        return 1.0;
    }
    return regimen.stock_mL > 0.0 ? regimen.stock_g / regimen.stock_mL : 0.0;
}

bool holdsAnything(const DoseRegimen& regimen)
{
    if (saltOf(regimen) != nullptr) {
        return gramsPerUnit(regimen) > 0.0;
    }
    return regimen.form == DoseForm::Fertiliser && std::ranges::any_of(dosedParameters(), [&](const QString& p) {
               return milligramsPerUnit(regimen, p) > 0.0;
           });
}

} // namespace

QString DoseRegimen::unit() const
{
    return form == DoseForm::Salt ? u"g"_s : u"mL"_s;
}

bool DoseRegimen::isOn(const QDate& day) const
{
    return day >= from && (!until.isValid() || day <= until);
}

const QStringList& dosedParameters()
{
    static const QStringList keys{u"no3"_s, u"po4"_s, u"k"_s, u"mg"_s, u"fe"_s};
    return keys;
}

double milligramsPerUnit(const DoseRegimen& regimen, const QString& parameter)
{
    const auto nutrient = nutrientOf(parameter);
    if (!nutrient) {
        return 0.0;
    }
    if (regimen.form == DoseForm::Fertiliser) {
        return labelled(regimen, *nutrient);
    }
    const water::Salt* salt = saltOf(regimen);
    return salt == nullptr ? 0.0 : water::milligramsPerGram(*salt, *nutrient) * gramsPerUnit(regimen);
}

bool bringsNitrogenOrPhosphorus(const DoseRegimen& regimen)
{
    if (const water::Salt* salt = saltOf(regimen)) {
        return water::milligramsPerGram(*salt, Nutrient::Nitrogen) > 0.0 ||
               water::milligramsPerGram(*salt, Nutrient::Phosphorus) > 0.0;
    }
    return regimen.nitrate_mg_per_mL > 0.0 || regimen.phosphate_mg_per_mL > 0.0;
}

QString regimenProblem(const DoseRegimen& regimen)
{
    if (regimen.name.trimmed().isEmpty()) {
        return words("The dose has no name yet: what is dosed?");
    }
    if (!(regimen.amount > 0.0)) {
        return words("The amount of one dose is not stated.");
    }
    if (!holdsAnything(regimen)) {
        return words("What is dosed holds nothing yet: choose a salt, say how strong the stock is, or type the label's "
                     "mg in a mL.");
    }
    if (regimen.everyDays < 0 || (regimen.everyDays == 0 && (regimen.weekdays & kEveryDayOfTheWeek) == 0)) {
        return words("No days are chosen: give days between doses, or weekdays.");
    }
    if (!regimen.from.isValid()) {
        return words("The day from which it is dosed is not stated.");
    }
    if (regimen.until.isValid() && regimen.until < regimen.from) {
        return words("Its last day lies before its first.");
    }
    return {};
}

} // namespace littoral::record
