// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wording/numbers.h"

#include "core/wording/measures.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <array>
#include <cmath>

namespace littoral::wording {

using namespace Qt::StringLiterals;

namespace {

constexpr QChar kMinus(0x2212);
constexpr QChar kThinSpace(0x2009);

QString words(const char* text)
{
    return QCoreApplication::translate("Numbers", text);
}

QString plural(const char* text, int n)
{
    return QCoreApplication::translate("Numbers", text, nullptr, n);
}

/// Forms of dates, in the letters QLocale::toString knows; a language has its own order and dots.
QString dayForm()
{
    return words("d MMM");
}

QString dayYearForm()
{
    return words("d MMM yyyy");
}

/// As few decimals as say the value, at most `most`.
QString fewest(double value, int most)
{
    for (int decimals = 0; decimals < most; ++decimals) {
        const double scale = std::pow(10.0, decimals);
        if (std::abs(std::round(value * scale) / scale - value) < 0.5 * std::pow(10.0, -most)) {
            return numberText(value, decimals);
        }
    }
    return numberText(value, most);
}

QString twoFigures(double value)
{
    if (value <= 0.0) {
        return numberText(0.0, 0);
    }
    const int magnitude = static_cast<int>(std::floor(std::log10(value)));
    return numberText(value, std::max(0, 1 - magnitude));
}

} // namespace

QString numberText(double value, int decimals)
{
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    QString digits = locale.toString(std::abs(value), 'f', std::max(0, decimals));
    qsizetype whole = digits.indexOf(locale.decimalPoint());
    whole = whole < 0 ? digits.size() : whole;
    for (qsizetype place = whole - 3; place > 0 && whole > 4; place -= 3) {
        digits.insert(place, kThinSpace);
    }
    const bool zero = QLocale::c().toDouble(QLocale::c().toString(value, 'f', std::max(0, decimals))) == 0.0;
    return value < 0.0 && !zero ? kMinus + digits : digits;
}

QString percentText(double fraction)
{
    return words("%1 %").arg(fewest(fraction * 100.0, 1));
}

QString litresText(double litres)
{
    const record::Measure volume = record::volumeMeasure(record::shownUnits());
    const double shown = volume.shown(litres);
    return words("%1 %2").arg(shown < 10.0 ? fewest(shown, 1) : numberText(shown, 0), volume.label);
}

QString parameterName(const QString& parameter)
{
    if (parameter == u"nh3"_s) {
        return words("Free ammonia");
    }
    const record::Parameter* known = record::findParameter(parameter);
    return known == nullptr ? parameter : known->name;
}

QString parameterSymbol(const QString& parameter)
{
    if (parameter == u"nh3"_s) {
        return u"NH₃"_s; // reckoned, so no parameter of the record
    }
    const record::Parameter* known = record::findParameter(parameter);
    return known == nullptr ? parameter : known->symbol;
}

QString valueWithUnit(const QString& parameter, double canonical)
{
    if (parameter == u"nh3"_s) {
        return words("%1 %2").arg(twoFigures(canonical), freeAmmoniaUnit());
    }
    const record::Parameter* known = record::findParameter(parameter);
    if (known == nullptr) {
        return fewest(canonical, 2);
    }
    const QString value = fewest(known->shown().fromCanonical(canonical), known->decimals);
    return known->key == u"ph"_s ? value : words("%1 %2").arg(value, known->shown().label);
}

QString readingWithUnit(const record::Reading& reading)
{
    const record::Parameter* known = record::findParameter(reading.parameter);
    const QString value = record::valueText(reading);
    return known == nullptr || known->key == u"ph"_s ? value : words("%1 %2").arg(value, known->shown().label);
}

QString dateText(const QDate& day, const QDate& today)
{
    return QLocale().toString(day, day.year() == today.year() ? dayForm() : dayYearForm());
}

QString weekdayText(const QDate& day, const QDate& today)
{
    return QLocale().toString(day, day.year() == today.year() ? words("ddd d MMM") : words("ddd d MMM yyyy"));
}

QString dateRangeText(const QDate& first, const QDate& last, const QDate& today)
{
    if (first >= last) {
        return dateText(first, today);
    }
    if (first.year() == last.year() && first.month() == last.month()) {
        return words("%1–%2").arg(QLocale().toString(first, words("d")), dateText(last, today));
    }
    const bool sameYear = first.year() == last.year();
    return words("%1 – %2").arg(sameYear ? QLocale().toString(first, dayForm())
                                         : QLocale().toString(first, dayYearForm()),
                                sameYear ? dateText(last, today) : QLocale().toString(last, dayYearForm()));
}

QString ageText(int days)
{
    return words("day %1").arg(numberText(days, 0));
}

QString intervalText(double days)
{
    if (days <= 1.0) {
        return words("every day");
    }
    if (days == 3.5) {
        return words("twice a week");
    }
    return words("every %1 days").arg(fewest(days, 1));
}

QString overText(int days)
{
    if (days <= 0) {
        return {};
    }
    return plural("%n day(s) over", days);
}

QString oddsText(double probability)
{
    const double p = std::clamp(probability, 0.0, 1.0);
    if (p < 0.01) {
        return words("less than 1 in 100");
    }
    if (p > 0.99) {
        return words("more than 99 in 100");
    }
    constexpr std::array kOneIn{100, 50, 30, 20, 15, 12};
    const auto nearest = [&](double share) {
        return *std::ranges::min_element(kOneIn, {}, [&](int n) { return std::abs(std::log(share * n)); });
    };
    if (p < 0.095) {
        return words("1 in %1").arg(nearest(p));
    }
    if (p > 0.905) {
        const int n = nearest(1.0 - p);
        return words("%1 in %2").arg(n - 1).arg(n);
    }
    return words("%1 in 10").arg(static_cast<int>(std::lround(p * 10.0)));
}

} // namespace littoral::wording
