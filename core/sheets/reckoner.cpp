// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheets/reckoner.h"

#include "core/wording/numbers.h"

#include <algorithm>
#include <cmath>

namespace littoral::sheets {

using namespace Qt::StringLiterals;

namespace {
constexpr int kMostFigures = 3;
} // namespace

Error refused(const QString& what, const QString& mend, const QString& blank)
{
    return {Fault::BadInput, what.toStdString(), blank.toStdString(), mend.toStdString()};
}

Reckoner::Reckoner(const Sheet& sheet, const Values& values)
    : m_sheet(sheet)
    , m_values(values)
{
    m_answer.sheet = sheet.key;
    m_answer.source = sheet.source;
}

double Reckoner::number(const QString& key) const
{
    m_used.insert(key);
    return m_values.value(key).number;
}

bool Reckoner::has(const QString& key) const
{
    return m_values.contains(key);
}

std::optional<double> Reckoner::maybe(const QString& key) const
{
    return has(key) ? std::optional(number(key)) : std::nullopt;
}

QString Reckoner::choice(const QString& key) const
{
    return m_values.value(key).text;
}

QString Reckoner::choiceLabel(const QString& key) const
{
    const Input* input = m_sheet.input(key);
    const auto found = std::ranges::find(input->choices, choice(key), &Choice::code);
    return found == input->choices.end() ? choice(key) : found->label;
}

std::vector<double> Reckoner::series(const QString& key) const
{
    return m_values.value(key).series;
}

void Reckoner::mainResult(const QString& key, const QString& label, double value, const QString& unit)
{
    result(key, label, value, unit);
    m_answer.results.back().main = true;
}

void Reckoner::result(const QString& key, const QString& label, double value, const QString& unit)
{
    Figure figure;
    figure.key = key;
    figure.label = label;
    figure.unit = unit;
    figure.value = value;
    m_answer.results.push_back(std::move(figure));
}

void Reckoner::part(const QString& key, double value)
{
    Figure figure;
    figure.key = key;
    figure.value = value;
    m_parts.push_back(std::move(figure));
}

void Reckoner::count(const QString& key, const QString& label, int value, const QString& unit)
{
    result(key, label, value, unit);
    m_counts.push_back(key);
}

void Reckoner::sentence(const QString& key, const QString& label, const QString& text)
{
    result(key, label, 0.0, {});
    m_answer.results.back().text = text;
    m_answer.results.back().isWords = true;
}

void Reckoner::move(const QString& label, std::optional<double> before, double after, const QString& unit,
                    const QString& note)
{
    m_answer.moves.push_back({label, unit, {}, {}, note});
    Figure figure;
    figure.key = u"move:"_s + label;
    figure.value = after;
    m_moved.push_back(std::move(figure));
    m_movedFrom.push_back(before);
}

void Reckoner::caution(const QString& id)
{
    if (!m_answer.cautions.contains(id)) {
        m_answer.cautions << id;
    }
}

Result<void> Reckoner::done() const
{
    if (!m_error) {
        return {};
    }
    Error error = *m_error;
    for (std::string* text : {&error.what, &error.mend}) {
        if (!text->empty()) {
            *text = QCoreApplication::translate("Water", text->c_str()).toStdString();
        }
    }
    return error;
}

int deservedPlace(double value, double doubt)
{
    const auto magnitude = [](double x) { return static_cast<int>(std::floor(std::log10(std::abs(x)))); };
    const int finest = value != 0.0 ? magnitude(value) - (kMostFigures - 1) : -kMostFigures;
    if (!(doubt > 0.0) || !std::isfinite(doubt)) {
        return finest;
    }
    int place = magnitude(doubt);
    // A doubt of 1 or 2 in its first digit rounds too coarsely there: one more digit (as GUM 7.2.6 allows).
    if (doubt / std::pow(10.0, place) < 3.0) {
        --place;
    }
    // One figure always stands, however large the doubt: a nought would pass for a measured nothing, and the range
    // beside it says how little the figure means.
    return value != 0.0 ? std::min(std::max(place, finest), magnitude(value)) : std::max(place, finest);
}

QString roundedText(double value, int place)
{
    const double scale = std::pow(10.0, place);
    return wording::numberText(std::round(value / scale) * scale, std::max(0, -place));
}

QString deservedText(double value, double doubt)
{
    int place = deservedPlace(value, doubt);
    // A figure without doubt of its own is not made to look measured by zeros behind the mark.
    while (!(doubt > 0.0) && place < 0 &&
           std::abs(std::remainder(value, std::pow(10.0, place + 1))) < 0.5 * std::pow(10.0, place)) {
        ++place;
    }
    return roundedText(value, place);
}

QString plainText(double value)
{
    return deservedText(value, 0.0);
}

Write changeEntry(double share)
{
    record::Entry entry;
    entry.kind = record::EntryKind::WaterChange;
    entry.fraction = share;
    return {words("Write this water change to the record"), entry, std::nullopt, std::nullopt};
}

Write changeTask(double share)
{
    record::Task task;
    task.title = words("Water change %1").arg(wording::percentText(share));
    task.fraction = share;
    return {words("Make it a task"), std::nullopt, task, std::nullopt};
}

Write doseEntry(const QString& subject, double amount, const QString& unit)
{
    record::Entry entry;
    entry.kind = record::EntryKind::Dose;
    entry.subject = subject;
    entry.amount = amount;
    entry.unit = unit;
    return {words("Write this dose to the record"), entry, std::nullopt, std::nullopt};
}

Write readingWrite(const QString& parameter, const QString& unitCode, const QString& typed)
{
    record::Reading reading;
    reading.parameter = parameter;
    reading.unit = unitCode;
    reading.typed = typed;
    return {words("Write it as a reading"), std::nullopt, std::nullopt, reading};
}

Write noteEntry(const QString& text)
{
    record::Entry entry;
    entry.kind = record::EntryKind::Note;
    entry.note = text;
    return {words("Write a note to the record"), entry, std::nullopt, std::nullopt};
}

Write upkeepEntry(const QString& label, const QString& subject, const QString& note)
{
    record::Entry entry;
    entry.kind = record::EntryKind::Upkeep;
    entry.subject = subject;
    entry.note = note;
    return {label, entry, std::nullopt, std::nullopt};
}

} // namespace littoral::sheets
