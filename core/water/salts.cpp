// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/salts.h"

#include "core/water/carbonate.h"
#include "core/water/hardness.h"
#include "core/water/refusal.h"

#include <cctype>
#include <utility>

namespace littoral::water {

namespace {

constexpr std::array<std::pair<std::string_view, double>, 17> kElements{{
    {"H", atomic::kH},
    {"C", atomic::kC},
    {"N", atomic::kN},
    {"O", atomic::kO},
    {"Na", atomic::kNa},
    {"Mg", atomic::kMg},
    {"P", atomic::kP},
    {"S", atomic::kS},
    {"Cl", atomic::kCl},
    {"K", atomic::kK},
    {"Ca", atomic::kCa},
    // IUPAC abridged, as those above.
    {"Mn", 54.938},
    {"Fe", 55.845},
    {"Cu", 63.546},
    {"Zn", 65.38},
    {"B", 10.81},
    {"Mo", 95.95},
}};

double weightOf(std::string_view symbol)
{
    for (const auto& [name, weight] : kElements) {
        if (name == symbol) {
            return weight;
        }
    }
    return 0.0;
}

/// Walks a formula and adds up its atoms: all of them by weight, or those of one element by number.
class FormulaReader
{
public:
    FormulaReader(std::string_view formula, std::string_view counted)
        : m_text(formula)
        , m_counted(counted)
    {
    }

    std::optional<double> read()
    {
        double sum = 0.0;
        while (m_ok && m_at < m_text.size()) {
            const double times = number();
            sum += times * group();
            if (m_at < m_text.size()) {
                m_ok = m_ok && m_text[m_at] == '.' && m_at + 1 < m_text.size(); // crystal water after the dot
                ++m_at;
            }
        }
        return m_ok && sum >= 0.0 && !m_text.empty() ? std::optional(sum) : std::nullopt;
    }

private:
    [[nodiscard]] bool atLetter() const
    {
        return m_at < m_text.size() && std::isupper(static_cast<unsigned char>(m_text[m_at])) != 0;
    }

    double number()
    {
        double value = 0.0;
        bool any = false;
        while (m_at < m_text.size() && std::isdigit(static_cast<unsigned char>(m_text[m_at])) != 0) {
            value = 10.0 * value + (m_text[m_at++] - '0');
            any = true;
        }
        return any ? value : 1.0;
    }

    double element()
    {
        std::size_t length = 1;
        if (m_at + 1 < m_text.size() && std::islower(static_cast<unsigned char>(m_text[m_at + 1])) != 0) {
            length = 2;
        }
        const std::string_view symbol = m_text.substr(m_at, length);
        m_at += length;
        const double weight = weightOf(symbol);
        m_ok = m_ok && weight > 0.0;
        if (m_counted.empty()) {
            return weight;
        }
        return symbol == m_counted ? 1.0 : 0.0;
    }

    double group()
    {
        double sum = 0.0;
        bool any = false;
        while (m_ok && m_at < m_text.size() && (atLetter() || m_text[m_at] == '(')) {
            any = true;
            double part = 0.0;
            if (m_text[m_at] == '(') {
                ++m_at;
                part = group();
                m_ok = m_ok && m_at < m_text.size() && m_text[m_at] == ')';
                ++m_at;
            } else {
                part = element();
            }
            sum += part * number();
        }
        m_ok = m_ok && any;
        return sum;
    }

    std::string_view m_text;
    std::string_view m_counted;
    std::size_t m_at = 0;
    bool m_ok = true;
};

constexpr std::string_view kCrc = "CRC handbook, 20 °C, from memory";

// Hydrates whose solubility is given as this salt in added water; the anhydrous figures are in the comments.
constexpr std::array kSalts{
    Salt{"kno3", "KNO3", "potassium nitrate", 0, true, false, 31.6, "handbook value of a worked exercise, 20 °C"},
    Salt{"kh2po4", "KH2PO4", "monopotassium phosphate", 0, false, false, 22.6, "reference table, 20 °C"},
    Salt{"k2so4", "K2SO4", "potassium sulfate", 0, false, false, 11.1, kCrc},
    Salt{"kcl", "KCl", "potassium chloride", 0, false, false, 34.0, kCrc},
    Salt{"khco3", "KHCO3", "potassium bicarbonate", 1, false, false, 33.0, kCrc},
    Salt{"k2co3", "K2CO3", "potassium carbonate", 2, false, false, 0, ""},
    Salt{"nahco3", "NaHCO3", "sodium bicarbonate", 1, false, false, 9.6, kCrc},
    // 33.7 g anhydrous
    Salt{"mgso4", "MgSO4.7H2O", "magnesium sulfate heptahydrate", 0, false, false, 106.7, kCrc},
    Salt{"mgcl2", "MgCl2.6H2O", "magnesium chloride hexahydrate", 0, false, false, 0, ""},
    // 2.69 g/kg with wateq4f.dat, 2.57 with phreeqc.dat
    Salt{"caso4", "CaSO4.2H2O", "calcium sulfate dihydrate", 0, false, false, 0.26, "PHREEQC 3, 25 °C"},
    // 74 g anhydrous
    Salt{"cacl2", "CaCl2.2H2O", "calcium chloride dihydrate", 0, false, false, 129.0, kCrc},
    Salt{"cacl2-dry", "CaCl2", "calcium chloride, anhydrous", 0, false, false, 74.0, kCrc},
    Salt{"mgso4-dry", "MgSO4", "magnesium sulfate, anhydrous", 0, false, false, 33.7, kCrc},
    Salt{"caco3", "CaCO3", "calcium carbonate", 2, false, false, 0.0013, "dissolves only with carbon dioxide"},
    Salt{"cano3", "Ca(NO3)2.4H2O", "calcium nitrate tetrahydrate", 0, true, false, 0, ""},
    Salt{"mgno3", "Mg(NO3)2.6H2O", "magnesium nitrate hexahydrate", 0, true, false, 0, ""},
    Salt{"urea", "CH4N2O", "urea", 0, false, false, 0, ""},
    Salt{"nh4cl", "NH4Cl", "ammonium chloride", 0, false, true, 0, ""},
    Salt{"nacl", "NaCl", "sodium chloride", 0, false, false, 35.9, kCrc},
};

/// mol of the nutrient in a mol of salt, and its molar mass.
std::pair<double, double> molesAndMass(const Salt& salt, Nutrient nutrient)
{
    const auto atoms = [&salt](std::string_view element) { return atomsOf(element, salt.formula).value_or(0.0); };
    using namespace atomic;
    switch (nutrient) {
    case Nutrient::Nitrogen:
        return {atoms("N"), kN};
    case Nutrient::Nitrate:
        return {salt.nitrateNitrogen ? atoms("N") : 0.0, kN + 3.0 * kO};
    case Nutrient::Ammonium:
        return {salt.ammoniaNitrogen ? atoms("N") : 0.0, kN + 4.0 * kH};
    case Nutrient::Phosphorus:
        return {atoms("P"), kP};
    case Nutrient::Phosphate:
        return {atoms("P"), kP + 4.0 * kO};
    case Nutrient::Potassium:
        return {atoms("K"), kK};
    case Nutrient::Calcium:
        return {atoms("Ca"), kCa};
    case Nutrient::Magnesium:
        return {atoms("Mg"), kMg};
    case Nutrient::Sodium:
        return {atoms("Na"), kNa};
    case Nutrient::Sulfate:
        return {atoms("S"), kS + 4.0 * kO};
    case Nutrient::Chloride:
        return {atoms("Cl"), kCl};
    case Nutrient::Iron:
        return {atoms("Fe"), weightOf("Fe")};
    case Nutrient::Bicarbonate:
        return {salt.charges, kMolarMassHCO3};
    }
    return {0.0, 0.0};
}

Error noVolume()
{
    return refuse("The volume must be above zero.", "Give the net litres of the tank.");
}

Error hasNone()
{
    return refuse("This salt brings none of that.", "Choose a salt that contains it.");
}

} // namespace

std::optional<double> molarMass(std::string_view formula)
{
    return FormulaReader(formula, {}).read();
}

std::optional<double> atomsOf(std::string_view element, std::string_view formula)
{
    return FormulaReader(formula, element).read();
}

std::span<const Salt> salts()
{
    return kSalts;
}

const Salt* findSalt(std::string_view keyOrFormula)
{
    for (const Salt& salt : kSalts) {
        if (salt.key == keyOrFormula || salt.formula == keyOrFormula) {
            return &salt;
        }
    }
    return nullptr;
}

double milligramsPerGram(const Salt& salt, Nutrient nutrient)
{
    const auto [moles, mass] = molesAndMass(salt, nutrient);
    const auto whole = molarMass(salt.formula);
    return whole ? 1000.0 * moles * mass / *whole : 0.0;
}

Result<double> riseFrom(const Salt& salt, Nutrient nutrient, double grams, double net_L)
{
    if (!(net_L > 0.0)) {
        return noVolume();
    }
    return grams * milligramsPerGram(salt, nutrient) / net_L;
}

Result<double> gramsFor(const Salt& salt, Nutrient nutrient, double rise_mg_per_L, double net_L)
{
    if (!(net_L > 0.0)) {
        return noVolume();
    }
    const double each = milligramsPerGram(salt, nutrient);
    if (!(each > 0.0)) {
        return hasNone();
    }
    return rise_mg_per_L * net_L / each;
}

double alkalinityPerGram_dKH(const Salt& salt)
{
    return carbonateHardness_dKH(milligramsPerGram(salt, Nutrient::Bicarbonate));
}

double hardnessPerGram_dGH(const Salt& salt)
{
    return generalHardness_dGH(milligramsPerGram(salt, Nutrient::Calcium),
                               milligramsPerGram(salt, Nutrient::Magnesium));
}

Result<double> gramsForAlkalinity(const Salt& salt, double rise_dKH, double net_L)
{
    if (!(net_L > 0.0)) {
        return noVolume();
    }
    const double each = alkalinityPerGram_dKH(salt);
    return each > 0.0 ? Result<double>(rise_dKH * net_L / each) : Result<double>(hasNone());
}

Result<double> gramsForHardness(const Salt& salt, double rise_dGH, double net_L)
{
    if (!(net_L > 0.0)) {
        return noVolume();
    }
    const double each = hardnessPerGram_dGH(salt);
    return each > 0.0 ? Result<double>(rise_dGH * net_L / each) : Result<double>(hasNone());
}

Result<double> riseFromShare(double milligrams, double share, double net_L)
{
    if (!(net_L > 0.0)) {
        return noVolume();
    }
    if (!within(share, 0.0, 1.0)) {
        return refuse("The share on the label lies between 0 and 100 %.");
    }
    return milligrams * share / net_L;
}

Result<double> hydrateSolubility_g_per_100g(double anhydrous_g_per_100g, double ratio)
{
    const double rest = 100.0 - anhydrous_g_per_100g * (ratio - 1.0);
    if (!(anhydrous_g_per_100g >= 0.0) || !(ratio >= 1.0) || !(rest > 0.0)) {
        return refuse("This hydrate would melt in its own crystal water before it is saturated.");
    }
    return anhydrous_g_per_100g * ratio / rest * 100.0;
}

std::optional<double> saturationShare(const Salt& salt, const Stock& stock)
{
    if (!(salt.solubility_g_per_100g > 0.0) || !(stock.water_mL > 0.0)) {
        return std::nullopt;
    }
    return stock.grams / stock.water_mL * 100.0 / salt.solubility_g_per_100g;
}

Result<double> stockMillilitresFor(const Salt& salt, const Stock& stock, Nutrient nutrient, double rise_mg_per_L,
                                   double net_L)
{
    const auto grams = gramsFor(salt, nutrient, rise_mg_per_L, net_L);
    if (!grams) {
        return grams.error();
    }
    if (!(stock.grams > 0.0) || !(stock.water_mL > 0.0)) {
        return refuse("The stock solution holds no salt or no water.");
    }
    return *grams * stock.water_mL / stock.grams;
}

} // namespace littoral::water
