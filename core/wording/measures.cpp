// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wording/measures.h"

#include "core/wording/numbers.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

namespace littoral::wording {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Numbers", text);
}

/// No idle zeros, at most `most` decimals.
QString shortest(double value, int most)
{
    int places = most;
    while (places > 0) {
        const double scale = std::pow(10.0, places - 1);
        if (std::abs(std::round(value * scale) / scale - value) >= 0.5 * std::pow(10.0, -most)) {
            break;
        }
        --places;
    }
    return numberText(value, places);
}

QString inMeasure(double shown, int most, const record::Measure& measure)
{
    return words("%1 %2").arg(shortest(shown, most), measure.label);
}

} // namespace

QString typedLitresText(double litres)
{
    const record::Measure volume = record::volumeMeasure(record::shownUnits());
    return inMeasure(volume.shown(litres), 2, volume);
}

QString lengthText(double cm)
{
    const record::Measure length = record::lengthMeasure(record::shownUnits());
    return inMeasure(length.shown(cm), 1, length);
}

QString temperatureText(double celsius)
{
    const record::Measure temperature = record::temperatureMeasure(record::shownUnits());
    return inMeasure(temperature.shown(celsius), 1, temperature);
}

QString temperatureStepText(double celsius)
{
    const record::Measure temperature = record::temperatureMeasure(record::shownUnits());
    return inMeasure(celsius * temperature.factor, 1, temperature);
}

QString freeAmmoniaUnit()
{
    return record::shownUnits().nitrogen == record::NitrogenUnit::Ppm ? words("ppm N") : words("mg/L N");
}

QString unitsText(const record::Units& units)
{
    using namespace record;
    const QString nitrogen = units.nitrogen == NitrogenUnit::Ion          ? words("mg/L as ion")
                             : units.nitrogen == NitrogenUnit::AsNitrogen ? words("mg/L as N")
                                                                          : words("ppm");
    const QString hardness = units.hardness == HardnessUnit::Degrees ? words("dKH, dGH")
                             : units.hardness == HardnessUnit::Molar ? words("meq/L, mmol/L")
                                                                     : words("ppm CaCO₃");
    const QString volume = units.volume == VolumeUnit::Litres ? words("litres") : words("US gallons");
    return words("%1 · %2 · %3 · %4 · %5")
        .arg(nitrogen, hardness, temperatureMeasure(units).label, volume, lengthMeasure(units).label);
}

QString dateTimeText(const QDateTime& time, const QDate& today)
{
    return words("%1 %2").arg(dateText(time.date(), today), time.time().toString(u"HH:mm"_s));
}

QString fullDateTimeText(const QDateTime& time)
{
    return words("%1 %2").arg(QLocale().toString(time.date(), words("d MMM yyyy")), time.time().toString(u"HH:mm"_s));
}

} // namespace littoral::wording
