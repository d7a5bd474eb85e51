// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/sample_water.h"

#include "core/exchange/codes.h"
#include "core/water/hardness.h"
#include "core/water/nitrogen.h"

namespace littoral::facade {

using namespace Qt::StringLiterals;

namespace {

double value(const QJsonObject& object, QLatin1String key)
{
    return object.value(key).toDouble();
}

QString text(const QJsonObject& object, QLatin1String key)
{
    return object.value(key).toString();
}

} // namespace

record::SourceWater sampleSource(const QJsonObject& from)
{
    record::SourceWater water;
    water.name = text(from, "name"_L1);
    water.kind = exchange::fromCode<record::SourceKind>(text(from, "kind"_L1)).value_or(record::SourceKind::Tap);
    water.nitrate_mgN_per_L = value(from, "nitrate_mg_per_l"_L1) / water::kNitratePerN;
    water.alkalinity_meq_per_L = value(from, "kh_dkh"_L1) * water::kMeqPerDegree;
    water.hardness_mmol_per_L = value(from, "gh_dgh"_L1) * water::kMmolPerDegree;
    water.ph = value(from, "ph"_L1);
    water.chloramine = record::YesNoUnknown::No;
    return water;
}

record::DoseRegimen sampleRegimen(const QJsonObject& from, const QDate& today)
{
    record::DoseRegimen regimen;
    regimen.name = text(from, "name"_L1);
    regimen.form = exchange::fromCode<record::DoseForm>(text(from, "form"_L1)).value_or(record::DoseForm::Fertiliser);
    regimen.salt = text(from, "salt"_L1);
    regimen.stock_g = value(from, "stock_g"_L1);
    regimen.stock_mL = value(from, "stock_ml"_L1);
    const QJsonObject contents = from.value("contents_mg_per_ml"_L1).toObject();
    regimen.nitrate_mg_per_mL = value(contents, "no3"_L1);
    regimen.phosphate_mg_per_mL = value(contents, "po4"_L1);
    regimen.potassium_mg_per_mL = value(contents, "k"_L1);
    regimen.magnesium_mg_per_mL = value(contents, "mg"_L1);
    regimen.iron_mg_per_mL = value(contents, "fe"_L1);
    regimen.amount = value(from, "amount"_L1);
    regimen.everyDays = from.value("every_days"_L1).toInt(1);
    regimen.from = today.addDays(-from.value("since_days_ago"_L1).toInt());
    return regimen;
}

} // namespace littoral::facade
