// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wording/source_words.h"

#include "core/record/parameter.h"
#include "core/wording/numbers.h"

#include <QCoreApplication>
#include <QLocale>

namespace littoral::wording {

using namespace Qt::StringLiterals;
using record::Origin;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("SourceWater", text);
}

QString figureText(const QString& parameter, const record::SourceFigure& figure)
{
    const QString name = parameterSymbol(parameter);
    if (!figure.value) {
        return words("%1 unknown").arg(name);
    }
    const QString value = valueWithUnit(parameter, *figure.value);
    switch (figure.origin) {
    case Origin::Reckoned:
        return words("%1 %2, reckoned").arg(name, value);
    case Origin::Assumed:
        return words("%1 %2, assumed").arg(name, value);
    case Origin::Measured:
    case Origin::Unknown:
        break;
    }
    return words("%1 %2, measured").arg(name, value);
}

QString chloramineText(const record::SourceProfile& profile)
{
    switch (profile.chloramine) {
    case record::YesNoUnknown::Yes:
        return words("chloramine in it");
    case record::YesNoUnknown::No:
        return words("no chloramine");
    case record::YesNoUnknown::Unknown:
        break;
    }
    return words("chloramine unknown");
}

} // namespace

QString sourcePartsText(std::span<const record::SourceWater> all, const record::SourceWater& water)
{
    const auto parts = record::sourceParts(all, water);
    if (!parts) {
        return QString::fromStdString(parts.error().what);
    }
    if (parts->size() == 1) {
        return parts->front().water->name;
    }
    QStringList texts;
    for (const record::SourcePart& part : *parts) {
        texts << words("%1 %2").arg(percentText(part.share), part.water->name);
    }
    return QLocale().createSeparatedList(texts);
}

QString sourceProfileText(std::span<const record::SourceWater> all, const record::SourceWater& water)
{
    const record::SourceProfile profile = record::sourceProfile(all, water);
    const QStringList figures{figureText(u"no3"_s, profile.nitrate_mgN_per_L),
                              figureText(u"kh"_s, profile.alkalinity_meq_per_L),
                              figureText(u"gh"_s, profile.hardness_mmol_per_L),
                              figureText(u"cl"_s, profile.chloride_mg_per_L),
                              figureText(u"ph"_s, profile.ph),
                              chloramineText(profile)};
    const QString comes = words("It comes to: %1.").arg(figures.join(words("; ")));
    if (water.kind != record::SourceKind::Blend) {
        return comes;
    }
    const auto parts = record::sourceParts(all, water);
    return parts ? words("%1. %2").arg(sourcePartsText(all, water), comes)
                 : words("%1 %2").arg(sourcePartsText(all, water), comes);
}

} // namespace littoral::wording
