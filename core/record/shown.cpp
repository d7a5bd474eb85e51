// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/shown.h"

#include <array>
#include <atomic>
#include <cmath>

namespace littoral::record {

using namespace Qt::StringLiterals;

namespace {

// Exact by definition: the international inch (1959) and the US liquid gallon of 231 cubic inches; NIST SP 811, app.
// B.8.
constexpr double kCmPerInch = 2.54;
constexpr double kLitresPerGallon = 3.785411784;

std::mutex g_lock;
std::atomic<unsigned> g_choice = 1;
Units g_units;
QString g_language = u"en"_s;

struct Code
{
    const char* key;
    std::array<const char*, 3> words; ///< nullptr: no third
};
constexpr Code kNitrogen{"units.nitrogen", {"ion", "n", "ppm"}};
constexpr Code kHardness{"units.hardness", {"degrees", "molar", "ppm-caco3"}};
constexpr Code kTemperature{"units.temperature", {"celsius", "fahrenheit", nullptr}};
constexpr Code kVolume{"units.volume", {"litres", "us-gallons", nullptr}};
constexpr Code kLength{"units.length", {"cm", "inches", nullptr}};

template <typename T> T read(const QMap<QString, QString>& settings, const Code& code)
{
    const QString word = settings.value(QLatin1String(code.key));
    for (std::size_t i = 0; i < code.words.size(); ++i) {
        if (code.words[i] != nullptr && word == QLatin1String(code.words[i])) {
            return static_cast<T>(i);
        }
    }
    return T{};
}

template <typename T> void write(QMap<QString, QString>& settings, const Code& code, T value)
{
    settings.insert(QLatin1String(code.key), QLatin1String(code.words[static_cast<std::size_t>(value)]));
}

} // namespace

Units unitsFrom(const QMap<QString, QString>& settings)
{
    return {read<NitrogenUnit>(settings, kNitrogen), read<HardnessUnit>(settings, kHardness),
            read<TemperatureUnit>(settings, kTemperature), read<VolumeUnit>(settings, kVolume),
            read<LengthUnit>(settings, kLength)};
}

QMap<QString, QString> settingsOf(const Units& units)
{
    QMap<QString, QString> settings;
    write(settings, kNitrogen, units.nitrogen);
    write(settings, kHardness, units.hardness);
    write(settings, kTemperature, units.temperature);
    write(settings, kVolume, units.volume);
    write(settings, kLength, units.length);
    return settings;
}

Measure volumeMeasure(const Units& units)
{
    return units.volume == VolumeUnit::Litres ? Measure{u"L"_s} : Measure{u"US gal"_s, 1.0 / kLitresPerGallon, 0.0, 1};
}

Measure lengthMeasure(const Units& units)
{
    return units.length == LengthUnit::Centimetres ? Measure{u"cm"_s} : Measure{u"in"_s, 1.0 / kCmPerInch, 0.0, 1};
}

Measure temperatureMeasure(const Units& units)
{
    return units.temperature == TemperatureUnit::Celsius ? Measure{u"°C"_s} : Measure{u"°F"_s, 1.8, 32.0, 0};
}

double leastDigit(const Parameter& parameter)
{
    const Parameter& usual = inUsualUnits(parameter);
    return std::abs(usual.shown().factor) * std::pow(10.0, -usual.decimals);
}

Units shownUnits()
{
    const std::scoped_lock lock(g_lock);
    return g_units;
}

QString shownLanguage()
{
    const std::scoped_lock lock(g_lock);
    return g_language;
}

unsigned shownChoice()
{
    return g_choice.load(std::memory_order_acquire);
}

void showUnits(const Units& units)
{
    const std::scoped_lock lock(g_lock);
    if (g_units != units) {
        g_units = units;
        g_choice.fetch_add(1, std::memory_order_release);
    }
}

void showLanguage(const QString& tag)
{
    const std::scoped_lock lock(g_lock);
    if (g_language != tag) {
        g_language = tag;
        g_choice.fetch_add(1, std::memory_order_release);
    }
}

} // namespace littoral::record
