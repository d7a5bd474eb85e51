// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/parameter.h"

#include <QMap>
#include <QString>
#include <map>
#include <memory>
#include <mutex>

/// How values are shown: units and language. The record itself is kept in canonical units whatever is chosen here, and
/// what was typed stays as typed. Like a default locale, the choice holds for the whole program: one store is open, and
/// every sentence, column and axis of it speaks the same units.
namespace littoral::record {

enum class NitrogenUnit { Ion, AsNitrogen, Ppm };
enum class HardnessUnit { Degrees, Molar, PpmCaCO3 };
enum class TemperatureUnit { Celsius, Fahrenheit };
enum class VolumeUnit { Litres, UsGallons };
enum class LengthUnit { Centimetres, Inches };

struct Units
{
    NitrogenUnit nitrogen = NitrogenUnit::Ion; ///< with Ppm, everything in mg/L is written as ppm
    HardnessUnit hardness = HardnessUnit::Degrees;
    TemperatureUnit temperature = TemperatureUnit::Celsius;
    VolumeUnit volume = VolumeUnit::Litres;
    LengthUnit length = LengthUnit::Centimetres;

    bool operator==(const Units&) const = default;
};

/// From and to settings of a store ("units.nitrogen" ...); what is missing or unknown is the first of its kind.
[[nodiscard]] Units unitsFrom(const QMap<QString, QString>& settings);
[[nodiscard]] QMap<QString, QString> settingsOf(const Units& units);

/// The parameter as the program reckons and writes files, whatever is on show: its usual unit and decimals, and the
/// name it has in files.
[[nodiscard]] const Parameter& inUsualUnits(const Parameter& parameter);
/// The last digit of the usual unit, canonical.
[[nodiscard]] double leastDigit(const Parameter& parameter);

/// A measure other than a parameter's: shown = canonical * factor + offset.
struct Measure
{
    QString label; ///< "L", "US gal", "cm", "in", "°C", "°F"
    double factor = 1.0;
    double offset = 0.0;
    int decimals = 0; ///< more than the canonical unit needs

    [[nodiscard]] double shown(double canonical) const { return canonical * factor + offset; }
    [[nodiscard]] double canonical(double shown) const { return (shown - offset) / factor; }
    [[nodiscard]] bool isCanonical() const { return factor == 1.0 && offset == 0.0; }
};
[[nodiscard]] Measure volumeMeasure(const Units& units);      ///< of litres
[[nodiscard]] Measure lengthMeasure(const Units& units);      ///< of centimetres
[[nodiscard]] Measure temperatureMeasure(const Units& units); ///< of degrees Celsius

/// May be called from any thread.
[[nodiscard]] Units shownUnits();
/// Tag of the language translated texts are made in: "en" unless set.
[[nodiscard]] QString shownLanguage();

/// Rises with every change of units or language; cheap to ask.
[[nodiscard]] unsigned shownChoice();

void showUnits(const Units& units);
/// The translators of that language are in place already (core/wording/language.h sees to it).
void showLanguage(const QString& tag);

/// A table of translated texts, made once for each language and kept.
template <typename T> class PerLanguage
{
public:
    explicit PerLanguage(T (*make)())
        : m_make(make)
    {
    }

    [[nodiscard]] const T& get()
    {
        const std::scoped_lock lock(m_lock);
        std::unique_ptr<const T>& made = m_made[shownLanguage()];
        if (made == nullptr) {
            made = std::make_unique<const T>(m_make());
        }
        return *made;
    }

private:
    T (*m_make)();
    std::mutex m_lock;
    std::map<QString, std::unique_ptr<const T>> m_made;
};

} // namespace littoral::record
