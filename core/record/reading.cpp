// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/reading.h"

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>
#include <algorithm>
#include <cmath>

namespace littoral::record {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Reading", text);
}

Error notUnderstood(const QString& text)
{
    return {
        Fault::BadInput,
        words("\"%1\" is not a reading.").arg(text).toStdString(),
        {},
        words(
            "Type a number such as 0.25, <0.05 below the lowest step, >8 above the highest, or 5-10 between two steps.")
            .toStdString()};
}

/// "1,250" is one and a quarter to one reader and twelve hundred and fifty to another; neither is guessed.
bool isAmbiguous(const QString& text)
{
    static const QRegularExpression grouped(u"(^|[^0-9.,])[1-9][0-9]{0,2},[0-9]{3}($|[^0-9.,])"_s);
    return grouped.match(text).hasMatch();
}

Error ambiguous(const QString& text)
{
    return {Fault::BadInput,
            words("\"%1\" can be read in two ways.").arg(text).toStdString(),
            {},
            words("Write thousands without a mark, or the decimal mark as a point.").toStdString()};
}

/// Whether zero of the scale means that there is none of it, so that half of a bound is a fair middle. It does not for
/// pH and temperature.
bool startsAtNothing(const Parameter& parameter)
{
    const bool shifted = std::ranges::any_of(parameter.units, [](const Unit& unit) { return unit.offset != 0.0; });
    return parameter.lowest <= 0.0 && !shifted;
}

std::optional<double> number(QString text)
{
    text = text.trimmed();
    text.replace(u',', u'.');
    text.replace(u'−', u'-');
    bool ok = false;
    const double value = QLocale::c().toDouble(text, &ok);
    return ok && std::isfinite(value) ? std::optional(value) : std::nullopt;
}

/// Where a range's dash is: not the first character (that would be a sign), not after an exponent's e.
qsizetype rangeMark(const QString& text)
{
    for (qsizetype i = 1; i < text.size(); ++i) {
        const QChar c = text[i];
        if (c == u'–' || c == u'/') {
            return i;
        }
        if (c == u'-' && text[i - 1].toLower() != u'e') {
            return i;
        }
    }
    return -1;
}

QString shownNumber(const Parameter& parameter, double canonical)
{
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale.toString(parameter.shown().fromCanonical(canonical), 'f', parameter.decimals);
}

} // namespace

Result<TypedValue> parseTypedValue(const QString& text)
{
    const QString trimmed = text.trimmed();
    if (trimmed.isEmpty()) {
        return notUnderstood(text);
    }
    if (isAmbiguous(trimmed)) {
        return ambiguous(trimmed);
    }
    const QChar first = trimmed.front();
    if (first == u'<' || first == u'>') {
        const auto bound = number(trimmed.mid(1));
        if (!bound) {
            return notUnderstood(text);
        }
        return first == u'<' ? TypedValue{Censoring::Below, 0.0, *bound} : TypedValue{Censoring::Above, *bound, *bound};
    }
    if (const qsizetype mark = rangeMark(trimmed); mark > 0) {
        const auto low = number(trimmed.left(mark));
        const auto high = number(trimmed.mid(mark + 1));
        if (!low || !high || *low > *high) {
            return notUnderstood(text);
        }
        return *low == *high ? TypedValue{Censoring::None, *low, *low} : TypedValue{Censoring::Between, *low, *high};
    }
    const auto value = number(trimmed);
    if (!value) {
        return notUnderstood(text);
    }
    return TypedValue{Censoring::None, *value, *value};
}

Result<void> setTypedValue(Reading& reading, const QString& typed, const QString& unitCode)
{
    const Parameter* parameter = findParameter(reading.parameter);
    if (parameter == nullptr) {
        return Error{
            Fault::BadInput, words("There is no parameter \"%1\".").arg(reading.parameter).toStdString(), {}, {}};
    }
    const Unit* unit = parameter->unit(unitCode);
    if (unit == nullptr) {
        QStringList codes;
        for (const Unit& option : parameter->units) {
            codes << option.code;
        }
        return Error{Fault::BadInput,
                     words("%1 cannot be given in \"%2\".").arg(parameter->name, unitCode).toStdString(),
                     {},
                     words("Units it takes: %1.").arg(codes.join(u", "_s)).toStdString()};
    }
    const auto parsed = parseTypedValue(typed);
    if (!parsed) {
        return parsed.error();
    }
    const bool below = parsed->censoring == Censoring::Below;
    const double high = unit->toCanonical(parsed->high);
    const double low = below ? std::min(parameter->lowest, high) : unit->toCanonical(parsed->low);
    if (low < parameter->lowest || high > parameter->highest || (below && high <= parameter->lowest)) {
        return Error{Fault::BadInput,
                     words("%1 %2 %3 is outside what this parameter can be.")
                         .arg(parameter->name, typed.trimmed(), unit->label)
                         .toStdString(),
                     {},
                     words("Look at the decimal mark and the unit; it goes from %1 to %2 %3.")
                         .arg(QLocale::c().toString(unit->fromCanonical(parameter->lowest), 'g', 4),
                              QLocale::c().toString(unit->fromCanonical(parameter->highest), 'g', 4), unit->label)
                         .toStdString()};
    }
    reading.typed = typed.trimmed();
    reading.unit = unit->code;
    reading.censoring = parsed->censoring;
    reading.low = low;
    reading.high = high;
    switch (parsed->censoring) {
    case Censoring::Below:
        reading.value = startsAtNothing(*parameter) ? high / 2.0 : high;
        break;
    case Censoring::Between:
        reading.value = (low + high) / 2.0;
        break;
    case Censoring::None:
    case Censoring::Above:
        reading.value = low;
        break;
    }
    return {};
}

QString valueText(const Reading& reading)
{
    const Parameter* parameter = findParameter(reading.parameter);
    if (parameter == nullptr) {
        return reading.typed;
    }
    // What was typed is shown as typed when it was in the unit on show: never more digits than the kit reads.
    const Unit* typedIn = parameter->unit(reading.unit);
    const Unit& shown = parameter->shown();
    if (typedIn != nullptr && typedIn->factor == shown.factor && typedIn->offset == shown.offset) {
        return reading.typed;
    }
    switch (reading.censoring) {
    case Censoring::Below:
        return u"<"_s + shownNumber(*parameter, reading.high);
    case Censoring::Above:
        return u">"_s + shownNumber(*parameter, reading.high);
    case Censoring::Between:
        return shownNumber(*parameter, reading.low) + u"–"_s + shownNumber(*parameter, reading.high);
    case Censoring::None:
        break;
    }
    return shownNumber(*parameter, reading.value);
}

} // namespace littoral::record
