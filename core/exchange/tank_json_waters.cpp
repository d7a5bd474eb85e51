// SPDX-License-Identifier: GPL-3.0-or-later
// What blends are made of and what a layout is dosed with: the part of the reader of tank files about them.
#include "core/exchange/codes.h"
#include "core/exchange/tank_json_reader.h"
#include "core/water/salts.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>

namespace littoral::exchange {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Exchange", text);
}

/// Is `wanted` among the parts of `blend`, or theirs? Waters of the row (ids above zero) lead no further.
bool leadsTo(const std::vector<record::SourceWater>& all, const record::SourceWater& blend,
             record::SourceWaterId wanted, std::size_t depth)
{
    for (const record::SourceWaterId part : {blend.firstPart, blend.secondPart}) {
        const auto found = std::ranges::find(all, part, &record::SourceWater::id);
        if (part == wanted || (found != all.end() && depth > 0 && leadsTo(all, *found, wanted, depth - 1))) {
            return true;
        }
    }
    return false;
}

} // namespace

void TankJsonReader::takeParts(ObjectReader& object, std::size_t place)
{
    if (!object.has(u"parts"_s)) {
        return;
    }
    std::vector<ObjectReader> parts = object.objects(u"parts"_s);
    if (m_document.sources[place].kind != record::SourceKind::Blend || parts.size() != 2) {
        object.complain(u"parts"_s, words("Parts belong to a blend, and there are two of them."));
        return;
    }
    std::array<std::optional<double>, 2> shares;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        m_parts.push_back({place, i == 0, parts[i].text(u"source"_s)});
        shares[i] = parts[i].number(u"share"_s, 0.0, 1.0);
        if (!shares[i]) {
            parts[i].need(u"share"_s);
        }
        parts[i].refuseOthers();
    }
    constexpr double kSumSlack = 1e-6;
    if (shares[0] && shares[1] && std::abs(*shares[0] + *shares[1] - 1.0) > kSumSlack) {
        object.complain(u"parts"_s, words("The two shares do not come to 1."));
    }
    m_document.sources[place].firstShare = shares[0];
}

void TankJsonReader::settleParts(ObjectReader& top)
{
    for (const Part& part : m_parts) {
        record::SourceWater& blend = m_document.sources[part.source];
        const auto id = m_names.source(part.name);
        if (!id) {
            top.complain(u"sources"_s, m_names.noSource(part.name));
            continue;
        }
        (part.first ? blend.firstPart : blend.secondPart) = *id;
    }
    std::vector<record::SourceWater> all = m_document.sources;
    for (const Part& part : m_parts) {
        const record::SourceWater& blend = all[part.source];
        if (blend.firstPart == blend.secondPart || leadsTo(all, blend, blend.id, all.size())) {
            top.complain(u"sources"_s, words("The blend \"%1\" would be made of itself.").arg(blend.name));
        }
    }
}

void TankJsonReader::takeRegimen(ObjectReader& item, record::LayoutRecord& layout)
{
    record::DoseRegimen regimen;
    regimen.id.value = -static_cast<qint64>(layout.regimens.size()) - 1;
    regimen.tank = m_document.tank.id;
    regimen.layout = layout.layout.id;
    regimen.name = item.text(u"name"_s);
    regimen.form = item.choice<record::DoseForm>(u"form"_s).value_or(record::DoseForm::Fertiliser);
    regimen.salt = item.text(u"salt"_s);
    if (!regimen.salt.isEmpty() && water::findSalt(regimen.salt.toStdString()) == nullptr) {
        item.complain(u"salt"_s, words("There is no salt \"%1\".").arg(regimen.salt));
    }
    constexpr double kMost = 1e6;
    regimen.stock_g = item.number(u"stock_g"_s, 0.0, kMost).value_or(0.0);
    regimen.stock_mL = item.number(u"stock_ml"_s, 0.0, kMost).value_or(0.0);
    if (auto contents = item.object(u"contents_mg_per_ml"_s)) {
        regimen.nitrate_mg_per_mL = contents->number(u"no3"_s, 0.0, kMost).value_or(0.0);
        regimen.phosphate_mg_per_mL = contents->number(u"po4"_s, 0.0, kMost).value_or(0.0);
        regimen.potassium_mg_per_mL = contents->number(u"k"_s, 0.0, kMost).value_or(0.0);
        regimen.magnesium_mg_per_mL = contents->number(u"mg"_s, 0.0, kMost).value_or(0.0);
        regimen.iron_mg_per_mL = contents->number(u"fe"_s, 0.0, kMost).value_or(0.0);
        contents->refuseOthers();
    }
    regimen.amount = item.number(u"amount"_s, 0.0, kMost).value_or(0.0);
    takeRegimenDays(item, regimen);
    regimen.leanStart = item.flag(u"lean_start"_s).value_or(true);
    regimen.note = item.text(u"note"_s);
    item.refuseOthers();
    if (const QString problem = record::regimenProblem(regimen); !problem.isEmpty()) {
        item.complain(u"name"_s, problem);
        return;
    }
    layout.regimens.push_back(std::move(regimen));
}

void TankJsonReader::takeRegimenDays(ObjectReader& item, record::DoseRegimen& regimen)
{
    regimen.everyDays = static_cast<int>(item.number(u"every_days"_s, 1.0, 365.0).value_or(0.0));
    const QJsonArray days = item.array(u"weekdays"_s);
    for (const QJsonValue& day : days) {
        if (const auto bit = weekdayFromCode(day.toString())) {
            regimen.weekdays |= *bit;
        } else {
            item.complain(
                u"weekdays"_s,
                words("\"%1\" is not a weekday. Write mon, tue, wed, thu, fri, sat or sun.").arg(day.toString()));
        }
    }
    if (regimen.everyDays > 0 && regimen.weekdays != 0) {
        item.complain(u"weekdays"_s, words("Give either every_days or weekdays."));
    }
    regimen.from = readDay(item, u"from"_s);
    regimen.until = readDay(item, u"until"_s);
}

} // namespace littoral::exchange
