// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheets/salt_words.h"

#include <array>
#include <utility>

namespace littoral::sheets {

using namespace Qt::StringLiterals;
using water::Nutrient;

namespace {

struct Named
{
    Nutrient nutrient;
    const char16_t* code;
    const char* name;
};
constexpr std::array kNamed{
    Named{Nutrient::Nitrate, u"no3", QT_TRANSLATE_NOOP("Sheets", "Nitrate")},
    Named{Nutrient::Nitrogen, u"n", QT_TRANSLATE_NOOP("Sheets", "Nitrogen, all forms")},
    Named{Nutrient::Ammonium, u"nh4", QT_TRANSLATE_NOOP("Sheets", "Ammonium")},
    Named{Nutrient::Phosphate, u"po4", QT_TRANSLATE_NOOP("Sheets", "Phosphate")},
    Named{Nutrient::Phosphorus, u"p", QT_TRANSLATE_NOOP("Sheets", "Phosphorus")},
    Named{Nutrient::Potassium, u"k", QT_TRANSLATE_NOOP("Sheets", "Potassium")},
    Named{Nutrient::Calcium, u"ca", QT_TRANSLATE_NOOP("Sheets", "Calcium")},
    Named{Nutrient::Magnesium, u"mg", QT_TRANSLATE_NOOP("Sheets", "Magnesium")},
    Named{Nutrient::Sodium, u"na", QT_TRANSLATE_NOOP("Sheets", "Sodium")},
    Named{Nutrient::Sulfate, u"so4", QT_TRANSLATE_NOOP("Sheets", "Sulfate")},
    Named{Nutrient::Chloride, u"cl", QT_TRANSLATE_NOOP("Sheets", "Chloride")},
    Named{Nutrient::Bicarbonate, u"hco3", QT_TRANSLATE_NOOP("Sheets", "Bicarbonate")},
};

/// A row of the table is one line; nitrogen and phosphorus as elements would say the ions a second time.
bool isSecondName(Nutrient nutrient)
{
    return nutrient == Nutrient::Nitrogen || nutrient == Nutrient::Phosphorus || nutrient == Nutrient::Bicarbonate;
}

} // namespace

std::vector<Choice> saltChoices()
{
    std::vector<Choice> choices;
    for (const water::Salt& salt : water::salts()) {
        const QString key = QString::fromUtf8(salt.key.data(), static_cast<qsizetype>(salt.key.size()));
        const QString formula = QString::fromUtf8(salt.formula.data(), static_cast<qsizetype>(salt.formula.size()));
        choices.push_back(
            {key, words("%1, %2").arg(QCoreApplication::translate("Water", std::string(salt.name).c_str()), formula)});
    }
    return choices;
}

std::vector<Choice> nutrientChoices()
{
    std::vector<Choice> choices;
    for (const Named& named : kNamed) {
        choices.push_back({QString::fromUtf16(named.code), words(named.name)});
    }
    return choices;
}

const water::Salt& saltOf(const Reckoner& in)
{
    return *water::findSalt(in.choice(u"salt"_s).toStdString());
}

Nutrient nutrientOf(const Reckoner& in)
{
    const QString code = in.choice(u"nutrient"_s);
    for (const Named& named : kNamed) {
        if (code == QString::fromUtf16(named.code)) {
            return named.nutrient;
        }
    }
    return Nutrient::Nitrate;
}

QString nutrientName(Nutrient nutrient)
{
    for (const Named& named : kNamed) {
        if (named.nutrient == nutrient) {
            return words(named.name);
        }
    }
    return {};
}

void moveAll(Reckoner& in, const water::Salt& salt, double grams, double litres, std::optional<Nutrient> but)
{
    for (const Named& named : kNamed) {
        const double rise = grams * water::milligramsPerGram(salt, named.nutrient) / litres;
        // Urea has nitrogen only as such.
        const bool repeated = isSecondName(named.nutrient) &&
                              !(named.nutrient == Nutrient::Nitrogen && !salt.nitrateNitrogen && !salt.ammoniaNitrogen);
        if (rise > 0.0 && named.nutrient != but && !repeated) {
            in.move(words(named.name), std::nullopt, rise, u"mg/L"_s, words("That much more than before."));
        }
    }
    if (const double gh = water::hardnessPerGram_dGH(salt); gh > 0.0) {
        in.move(words("GH"), std::nullopt, grams * gh / litres, u"dGH"_s, words("That much more than before."));
    }
    if (const double kh = water::alkalinityPerGram_dKH(salt); kh > 0.0) {
        in.move(words("KH"), std::nullopt, grams * kh / litres, u"dKH"_s, words("That much more than before."));
    }
}

void saltCautions(Reckoner& in, const water::Salt& salt)
{
    in.caution(u"C-SALTS"_s);
    if (salt.formula.find("H2O") != std::string_view::npos || salt.key.ends_with("-dry")) {
        in.note(words(
            "Read on the label whether the salt holds crystal water: it changes the weight by a third to double."));
    }
    if (salt.ammoniaNitrogen || salt.key == "urea") {
        in.note(words(
            "This feeds ammonia into the water: never with animals that cannot stand it; see the sheet \"ammonia\"."));
    }
}

Input netLitres()
{
    return Input::number(u"litres"_s, words("Water in the tank"), u"L"_s, 0.5, 100000).filled(FillFrom::NetVolume);
}

} // namespace littoral::sheets
