// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheets/text_input.h"

#include "core/record/shown.h"
#include "core/sheets/reckoner.h"
#include "core/sheets/shown_units.h"
#include "core/water/volume.h"

#include <QRegularExpression>
#include <algorithm>
#include <cmath>
#include <numeric>

namespace littoral::sheets {

using namespace Qt::StringLiterals;

namespace {

Error notANumber(const Input& input, const QString& text)
{
    return refused(words("\"%1\" is no number for \"%2\".").arg(text, input.label),
                   words("Write %1=6.6, or %1=6.6±0.1 with its doubt.").arg(input.key));
}

bool isAmbiguous(const QString& text)
{
    static const QRegularExpression grouped(u"(^|[^0-9.,])[1-9][0-9]{0,2},[0-9]{3}($|[^0-9.,])"_s);
    return grouped.match(text).hasMatch();
}

std::optional<double> plainNumber(QString text)
{
    text.replace(u',', u'.');
    text.replace(u'−', u'-');
    bool ok = false;
    const double value = text.toDouble(&ok);
    return ok && std::isfinite(value) ? std::optional(value) : std::nullopt;
}

/// One unit of the last digit typed: 0.1 for "6.6", 1 for "4".
double lastDigit(const QString& digits)
{
    const qsizetype mark = std::max(digits.indexOf(u'.'), digits.indexOf(u','));
    return mark < 0 ? 1.0 : std::pow(10.0, -static_cast<double>(digits.size() - mark - 1));
}

/// Letters and digits of a unit, with raised and lowered ones written plainly, for comparison.
QString bare(const QString& unit)
{
    QString plain;
    for (const QChar c : unit.normalized(QString::NormalizationForm_KD)) {
        if (c.isLetterOrNumber() || c == u'/' || c == u'%') {
            plain += c.toLower();
        }
    }
    return plain.replace(u'μ', u'u');
}

/// factor and offset from a typed unit to the blank's own.
struct Conversion
{
    double factor = 1.0;
    double offset = 0.0;
};

std::optional<Conversion> gallons(const Input& input, const QString& unit)
{
    if (input.unit != u"L"_s) {
        return std::nullopt;
    }
    if (unit == u"gal"_s || unit == u"usgal"_s) {
        return Conversion{water::kLitresPerUSGallon, 0.0};
    }
    if (unit == u"impgal"_s || unit == u"ukgal"_s) {
        return Conversion{water::kLitresPerImperialGallon, 0.0};
    }
    return unit == u"ml"_s ? std::optional(Conversion{0.001, 0.0}) : std::nullopt;
}

std::optional<Conversion> conversionFor(const Input& input, const QString& typedUnit)
{
    const QString unit = bare(typedUnit);
    if (unit.isEmpty() || unit == bare(input.unit)) {
        return Conversion{};
    }
    if (const auto volume = gallons(input, unit)) {
        return volume;
    }
    for (const record::Measure& other : measuresOf(input.unit)) {
        if (bare(other.label) == unit) {
            return Conversion{1.0 / other.factor, -other.offset / other.factor};
        }
    }
    const record::Parameter* parameter = record::findParameter(input.fill.key);
    if (parameter == nullptr || (input.fill.from != FillFrom::Reading && input.fill.from != FillFrom::Source)) {
        return std::nullopt;
    }
    const record::Unit* own =
        input.fill.unit.isEmpty() ? &record::inUsualUnits(*parameter).shown() : parameter->unit(input.fill.unit);
    for (const record::Unit& known : parameter->units) {
        if (own != nullptr && (bare(known.code) == unit || bare(known.label) == unit)) {
            return Conversion{known.factor / own->factor, (known.offset - own->offset) / own->factor};
        }
    }
    return std::nullopt;
}

Result<Value> parseNumber(const Input& input, const QString& text)
{
    static const QRegularExpression pattern(
        u"^([+\\-−]?[0-9]+(?:[.,][0-9]+)?|[+\\-−]?[.,][0-9]+)\\s*(?:(?:±|\\+/?-)\\s*([0-9]+(?:[.,][0-9]+)?))?\\s*(\\D.*)?$"_s);
    const auto match = pattern.match(text.trimmed());
    if (!match.hasMatch()) {
        return notANumber(input, text);
    }
    if (isAmbiguous(text)) {
        return refused(words("\"%1\" can be read in two ways.").arg(text),
                       words("Write thousands without a mark, or the decimal mark as a point."));
    }
    const auto number = plainNumber(match.captured(1));
    const auto conversion = conversionFor(input, match.captured(3));
    if (!number) {
        return notANumber(input, text);
    }
    if (!conversion) {
        return refused(words("\"%1\" has no unit \"%2\".").arg(input.label, match.captured(3)),
                       input.unit.isEmpty() ? words("Leave the unit out.")
                                            : words("It is reckoned in %1.").arg(input.unit));
    }
    Value value;
    value.number = *number * conversion->factor + conversion->offset;
    value.step = lastDigit(match.captured(1)) * conversion->factor;
    if (!match.captured(2).isEmpty()) {
        value.error = *plainNumber(match.captured(2)) * conversion->factor;
    }
    const bool converted = conversion->factor != 1.0 || conversion->offset != 0.0;
    value.text = converted ? deservedText(value.number, 0.5 * value.step) : match.captured(1);
    return value;
}

Result<Value> parseSeries(const Input& input, const QString& text)
{
    static const QRegularExpression between(u"\\s*[/;]\\s*"_s);
    Value value;
    value.text = text;
    for (const QString& part : text.split(between, Qt::SkipEmptyParts)) {
        const auto number = parseNumber(input, part);
        if (!number) {
            return number.error();
        }
        value.series.push_back(number->number);
    }
    return value.series.empty() ? Result<Value>(notANumber(input, text)) : Result<Value>(value);
}

Result<Value> parseChoice(const Input& input, const QString& text)
{
    QStringList codes;
    for (const Choice& choice : input.choices) {
        codes << choice.code;
        if (choice.code.compare(text.trimmed(), Qt::CaseInsensitive) == 0 ||
            choice.label.compare(text.trimmed(), Qt::CaseInsensitive) == 0) {
            Value value;
            value.text = choice.code;
            return value;
        }
    }
    return refused(words("\"%1\" cannot be \"%2\".").arg(input.label, text),
                   words("Choose one of %1.").arg(codes.join(u", "_s)));
}

int distance(const QString& a, const QString& b)
{
    std::vector<int> row(static_cast<std::size_t>(b.size()) + 1);
    std::iota(row.begin(), row.end(), 0);
    for (qsizetype i = 0; i < a.size(); ++i) {
        int corner = row[0]++;
        for (qsizetype j = 0; j < b.size(); ++j) {
            const auto at = static_cast<std::size_t>(j) + 1;
            const int swapped = corner + (a[i] == b[j] ? 0 : 1);
            corner = row[at];
            row[at] = std::min({swapped, row[at] + 1, row[at - 1] + 1});
        }
    }
    return row.back();
}

Error unknownName(const Sheet& sheet, const QString& name)
{
    QStringList keys;
    for (const Input& input : sheet.inputs) {
        keys << input.key;
    }
    const auto near = nearest(name, keys);
    return refused(words("The sheet \"%1\" has no \"%2\".").arg(sheet.key, name),
                   near ? words("Did you mean \"%1\"?").arg(*near) : words("It takes: %1.").arg(keys.join(u", "_s)),
                   name);
}

QStringList splitLine(const QString& line)
{
    QStringList parts(QString{});
    bool quoted = false;
    for (const QChar c : line) {
        if (c == u'"') {
            quoted = !quoted;
        } else if (c.isSpace() && !quoted) {
            parts << QString();
        } else {
            parts.back() += c;
        }
    }
    parts.removeAll(QString());
    return parts;
}

} // namespace

std::optional<QString> nearest(const QString& typed, const QStringList& known)
{
    std::optional<QString> best;
    int least = std::max(2, static_cast<int>(typed.size()) / 2);
    for (const QString& name : known) {
        if (const int steps = distance(typed.toLower(), name.toLower()); steps < least) {
            least = steps;
            best = name;
        }
    }
    return best;
}

Result<Value> parseValue(const Input& input, const QString& text)
{
    auto value = input.kind == InputKind::Choice   ? parseChoice(input, text)
                 : input.kind == InputKind::Series ? parseSeries(input, text)
                                                   : parseNumber(input, text);
    if (value) {
        return value;
    }
    Error error = value.error();
    error.where = input.key.toStdString();
    return error;
}

Result<Values> parseValues(const Sheet& sheet, const QStringList& typed)
{
    Values values;
    QStringList bareWords;
    for (const QString& word : typed) {
        const qsizetype mark = word.indexOf(u'=');
        if (mark <= 0) {
            bareWords << word;
            continue;
        }
        const Input* input = sheet.input(word.left(mark).trimmed());
        if (input == nullptr) {
            return unknownName(sheet, word.left(mark));
        }
        const auto value = parseValue(*input, word.mid(mark + 1));
        if (!value) {
            return value.error();
        }
        values.insert(input->key, *value);
    }
    auto next = sheet.inputs.begin();
    for (const QString& word : bareWords) {
        while (next != sheet.inputs.end() && values.contains(next->key)) {
            ++next;
        }
        if (next == sheet.inputs.end()) {
            return refused(words("\"%1\" is one too many for the sheet \"%2\".").arg(word, sheet.key),
                           words("Name each as in %1=...").arg(sheet.inputs.back().key));
        }
        const auto value = parseValue(*next, word);
        if (!value) {
            return value.error();
        }
        values.insert(next->key, *value);
    }
    return values;
}

Result<Request> parseLine(const QString& line)
{
    QStringList parts = splitLine(line);
    if (parts.isEmpty()) {
        return refused(words("Nothing was typed."), words("Begin with the name of a sheet, such as co2."));
    }
    const QString name = parts.takeFirst();
    const Sheet* sheet = findSheet(name);
    if (sheet == nullptr) {
        QStringList keys;
        for (const Sheet& known : sheets()) {
            keys << known.key;
        }
        const auto near = nearest(name, keys);
        return refused(words("There is no sheet \"%1\".").arg(name),
                       near ? words("Did you mean \"%1\"?").arg(*near)
                            : words("There are: %1.").arg(keys.join(u", "_s)));
    }
    const auto values = parseValues(*sheet, parts);
    if (!values) {
        return values.error();
    }
    return Request{sheet, *values};
}

} // namespace littoral::sheets
