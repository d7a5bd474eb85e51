// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/source_profile.h"

#include "core/water/blend.h"
#include "core/water/carbonate.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>

namespace littoral::record {

namespace {

// Source water is read at about room temperature; pH of a blend moves by 0.01 to 0.02 per degree.
constexpr double kRoom_C = 20.0;

QString words(const char* text)
{
    return QCoreApplication::translate("SourceWater", text);
}

Error blendError(const QString& what, const SourceWater& blend)
{
    return {Fault::BadInput, what.toStdString(), blend.name.toStdString(),
            words("Open the source water and name its two parts and their share.").toStdString()};
}

const SourceWater* find(std::span<const SourceWater> all, SourceWaterId id)
{
    const auto found = std::ranges::find(all, id, &SourceWater::id);
    return !id || found == all.end() ? nullptr : &*found;
}

/// Takes blends apart; `m_open` are the blends being taken apart, to find one that holds itself.
class Parter
{
public:
    explicit Parter(std::span<const SourceWater> all)
        : m_all(all)
    {
    }

    Result<void> add(const SourceWater& water, double share)
    {
        if (water.kind != SourceKind::Blend) {
            m_parts.push_back({&water, share});
            return {};
        }
        const auto same = [&](const SourceWater* open) { return open == &water || (water.id && open->id == water.id); };
        if (std::ranges::any_of(m_open, same)) {
            return blendError(words("The blend %1 is made of itself.").arg(water.name), water);
        }
        const SourceWater* first = find(m_all, water.firstPart);
        const SourceWater* second = find(m_all, water.secondPart);
        if (first == nullptr || second == nullptr) {
            return blendError(words("The parts of the blend %1 are not both named.").arg(water.name), water);
        }
        if (!water.firstShare || !(*water.firstShare >= 0.0) || !(*water.firstShare <= 1.0)) {
            return blendError(words("The share of the first part in the blend %1 is not stated.").arg(water.name),
                              water);
        }
        m_open.push_back(&water);
        if (auto done = add(*first, share * *water.firstShare); !done) {
            return done;
        }
        if (auto done = add(*second, share * (1.0 - *water.firstShare)); !done) {
            return done;
        }
        m_open.pop_back();
        return {};
    }

    std::vector<SourcePart> take() { return std::move(m_parts); }

private:
    std::span<const SourceWater> m_all;
    std::vector<const SourceWater*> m_open;
    std::vector<SourcePart> m_parts;
};

SourceFigure own(const std::optional<double>& stated, SourceKind kind)
{
    if (stated) {
        return {stated, Origin::Measured};
    }
    // A membrane holds back some 95 % of salts and 85 to 95 % of nitrate (common practice): nil is nearer than unknown.
    return kind == SourceKind::ReverseOsmosis ? SourceFigure{0.0, Origin::Assumed} : SourceFigure{};
}

SourceProfile ownFigures(const SourceWater& water)
{
    SourceProfile profile;
    profile.nitrate_mgN_per_L = own(water.nitrate_mgN_per_L, water.kind);
    profile.alkalinity_meq_per_L = own(water.alkalinity_meq_per_L, water.kind);
    profile.hardness_mmol_per_L = own(water.hardness_mmol_per_L, water.kind);
    profile.chloride_mg_per_L = own(water.chloride_mg_per_L, water.kind);
    if (water.ph) {
        profile.ph = {water.ph, Origin::Measured};
    }
    profile.chloramine = water.chloramine;
    profile.chloramineOrigin = water.chloramine == YesNoUnknown::Unknown ? Origin::Unknown : Origin::Measured;
    return profile;
}

void fillMissing(SourceFigure& figure, const SourceFigure& first, const SourceFigure& second, double share)
{
    if (!figure.value && first.value && second.value) {
        figure = {water::mixedLevel(*first.value, *second.value, share), Origin::Reckoned};
    }
}

std::optional<water::CarbonatePortion> portionOf(const SourceProfile& profile, double litres)
{
    if (!profile.ph.value || !profile.alkalinity_meq_per_L.value) {
        return std::nullopt;
    }
    const water::MeqPerL alkalinity{*profile.alkalinity_meq_per_L.value};
    const water::MmolPerL hardness{profile.hardness_mmol_per_L.value.value_or(alkalinity.value / 2.0)};
    const water::Medium medium{kRoom_C, water::ionicStrengthFromHardness(hardness, alkalinity)};
    const auto carbon = water::totalCarbon(*profile.ph.value, alkalinity, medium);
    return carbon ? std::optional(water::CarbonatePortion{litres, alkalinity, *carbon, 0.0, medium}) : std::nullopt;
}

void fillPh(SourceProfile& profile, const SourceProfile& first, const SourceProfile& second, double share)
{
    const auto one = portionOf(first, share);
    const auto other = portionOf(second, 1.0 - share);
    if (profile.ph.value || !one || !other) {
        return;
    }
    const std::array portions{*one, *other};
    const auto mixed = water::mixPortions(portions);
    const auto ph = mixed ? water::phOf(*mixed) : Result<double>(mixed.error());
    if (ph) {
        profile.ph = {*ph, Origin::Reckoned};
    }
}

void fillChloramine(SourceProfile& profile, const SourceProfile& first, const SourceProfile& second, double share)
{
    if (profile.chloramine != YesNoUnknown::Unknown) {
        return;
    }
    const bool some = (share > 0.0 && first.chloramine == YesNoUnknown::Yes) ||
                      (share < 1.0 && second.chloramine == YesNoUnknown::Yes);
    const bool none = (share <= 0.0 || first.chloramine == YesNoUnknown::No) &&
                      (share >= 1.0 || second.chloramine == YesNoUnknown::No);
    if (some || none) {
        profile.chloramine = some ? YesNoUnknown::Yes : YesNoUnknown::No;
        profile.chloramineOrigin = Origin::Reckoned;
    }
}

/// `water` is known to have its parts, and none of them to hold itself.
SourceProfile profileOf(std::span<const SourceWater> all, const SourceWater& water)
{
    SourceProfile profile = ownFigures(water);
    if (water.kind != SourceKind::Blend) {
        return profile;
    }
    const double share = *water.firstShare;
    const SourceProfile first = profileOf(all, *find(all, water.firstPart));
    const SourceProfile second = profileOf(all, *find(all, water.secondPart));
    for (const auto figure : {&SourceProfile::nitrate_mgN_per_L, &SourceProfile::alkalinity_meq_per_L,
                              &SourceProfile::hardness_mmol_per_L, &SourceProfile::chloride_mg_per_L}) {
        fillMissing(profile.*figure, first.*figure, second.*figure, share);
    }
    fillPh(profile, first, second, share);
    fillChloramine(profile, first, second, share);
    return profile;
}

} // namespace

Result<std::vector<SourcePart>> sourceParts(std::span<const SourceWater> all, const SourceWater& water)
{
    Parter parter(all);
    if (auto done = parter.add(water, 1.0); !done) {
        return done.error();
    }
    return parter.take();
}

SourceProfile sourceProfile(std::span<const SourceWater> all, const SourceWater& water)
{
    return sourceParts(all, water) ? profileOf(all, water) : ownFigures(water);
}

SourceProfile sourceProfile(const Row& row, SourceWaterId water)
{
    const SourceWater* found = row.source(water);
    return found == nullptr ? SourceProfile{} : sourceProfile(row.sources, *found);
}

QStringList blendProblems(std::span<const SourceWater> all)
{
    QStringList problems;
    for (const SourceWater& water : all) {
        if (const auto parts = sourceParts(all, water); !parts) {
            problems << QString::fromStdString(parts.error().sentence());
        }
    }
    return problems;
}

bool isAllFromTap(std::span<const SourceWater> all, const SourceWater& water)
{
    const auto parts = sourceParts(all, water);
    return parts ? std::ranges::all_of(
                       *parts,
                       [](const SourcePart& part) { return part.share <= 0.0 || part.water->kind == SourceKind::Tap; })
                 : false;
}

} // namespace littoral::record
