// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheets/reckoner.h"
#include "core/sheets/text_input.h"
#include "core/water/uncertain.h"
#include "core/wording/numbers.h"

#include <algorithm>
#include <cmath>

namespace littoral::sheets {

using namespace Qt::StringLiterals;

namespace {

/// What the digits typed leave open is never taken as more than this share of the value: people leave out the zeros of
/// "1 L" and "50 L".
constexpr double kMostImplied = 0.05;

QString bound(double value)
{
    return QString::number(value, 'g', 6);
}

Error missing(const Input& input)
{
    const QString example = input.kind == InputKind::Choice
                                ? input.choices.front().code
                                : bound(std::max(input.lowest, 0.5 * std::min(input.highest, 2.0)));
    return refused(words("\"%1\" is missing.").arg(input.label), words("Give %1=%2.").arg(input.key, example),
                   input.key);
}

Error outside(const Input& input, double value)
{
    return refused(words("\"%1\" must lie from %2 to %3, not %4.")
                       .arg(input.label, bound(input.lowest), bound(input.highest), bound(value)),
                   words("Check the decimal mark and the unit of %1.").arg(input.key), input.key);
}

Result<void> checkInput(const Input& input, const Value& value)
{
    if (input.kind == InputKind::Choice) {
        const bool known = std::ranges::find(input.choices, value.text, &Choice::code) != input.choices.end();
        return known ? Result<void>()
                     : Result<void>(refused(words("\"%1\" cannot be \"%2\".").arg(input.label, value.text),
                                            words("Choose one of those listed."), input.key));
    }
    const std::vector<double> numbers =
        input.kind == InputKind::Series ? value.series : std::vector<double>{value.number};
    for (const double number : numbers) {
        if (!water::within(number, input.lowest, input.highest)) {
            return outside(input, number);
        }
    }
    return {};
}

/// Presets put in, everything checked.
Result<Values> completed(const Sheet& sheet, const Values& values)
{
    Values all;
    for (const Input& input : sheet.inputs) {
        if (values.contains(input.key)) {
            all.insert(input.key, values.value(input.key));
        } else if (!input.preset.isEmpty()) {
            const auto preset = parseValue(input, input.preset);
            if (!preset) {
                return preset.error();
            }
            all.insert(input.key, *preset);
            all[input.key].step = 0.0; // an assumption, not a measurement read to a digit
            if (input.kind == InputKind::Number) {
                all[input.key].origin = words("assumed, as nothing was given");
            }
        } else if (!input.optional) {
            return missing(input);
        }
        if (all.contains(input.key)) {
            if (const auto good = checkInput(input, all.value(input.key)); !good) {
                return good.error();
            }
        }
    }
    return all;
}

/// Half-width of an input, and whether it is one that people should see in the result.
struct Doubt
{
    double width = 0.0;
    bool known = false;
};

Doubt doubtOf(const Input& input, const Value& value)
{
    if (input.kind != InputKind::Number) {
        return {};
    }
    if (value.error) {
        return {*value.error, *value.error > 0.0};
    }
    if (input.usualError > 0.0) {
        return {input.usualError, true};
    }
    return {input.exact ? 0.0 : std::min(0.5 * value.step, kMostImplied * std::abs(value.number)), false};
}

/// How far each result moves with each input.
struct Deviations
{
    std::vector<double> above;
    std::vector<double> below;
};

class Evaluation
{
public:
    Evaluation(const Sheet& sheet, Values values)
        : m_sheet(sheet)
        , m_values(std::move(values))
    {
    }

    Result<Answer> run()
    {
        Reckoner middle(m_sheet, m_values);
        if (const auto done = m_sheet.reckon(middle); !done) {
            return done.error();
        }
        m_answer = std::move(middle.answer());
        m_counts = middle.counts();
        m_used = middle.used();
        m_figures = figuresOf(m_answer, middle);
        for (const Figure& figure : m_figures) {
            if (!figure.isWords && !std::isfinite(figure.value)) {
                return refused(words("These figures have no answer."), words("Check the inputs."));
            }
        }
        for (const Input& input : m_sheet.inputs) {
            moveInput(input);
        }
        for (Figure& figure : m_figures) {
            finish(figure);
        }
        spread(middle.movedFrom());
        putIn(m_answer.figures);
        for (Figure& figure : m_answer.results) {
            putIn(figure.text);
        }
        for (QString& note : m_answer.notes) {
            putIn(note);
        }
        for (Move& move : m_answer.moves) {
            putIn(move.note);
        }
        fillWrites();
        listOrigins();
        return m_answer;
    }

private:
    /// Everything with a doubt: results, moves, and what stands within sentences.
    static std::vector<Figure> figuresOf(const Answer& answer, const Reckoner& by)
    {
        std::vector<Figure> all = answer.results;
        all.insert(all.end(), by.moved().begin(), by.moved().end());
        all.insert(all.end(), by.parts().begin(), by.parts().end());
        return all;
    }

    /// Puts the finished figures back: results first, then the moves, in order.
    void spread(const std::vector<std::optional<double>>& before)
    {
        const std::size_t results = m_answer.results.size();
        std::copy_n(m_figures.begin(), results, m_answer.results.begin());
        for (std::size_t i = 0; i < m_answer.moves.size(); ++i) {
            m_answer.moves[i].after = m_figures[results + i].text;
            m_answer.moves[i].before =
                before[i] ? deservedText(*before[i], doubtOfFigure(m_figures[results + i].key)) : QString();
        }
    }

    [[nodiscard]] double doubtOfFigure(const QString& key) const
    {
        const Deviations all = m_all.value(key);
        return std::max(water::rootSumOfSquares(all.above), water::rootSumOfSquares(all.below));
    }

    void moveInput(const Input& input)
    {
        const Doubt doubt = m_values.contains(input.key) ? doubtOf(input, m_values.value(input.key)) : Doubt{};
        if (!(doubt.width > 0.0)) {
            return;
        }
        QMap<QString, std::pair<double, double>> moved;
        for (const double sign : {-1.0, 1.0}) {
            Values values = m_values;
            double& number = values[input.key].number;
            number = std::clamp(number + sign * doubt.width, input.lowest, input.highest);
            Reckoner again(m_sheet, values);
            if (!m_sheet.reckon(again)) {
                continue;
            }
            for (const Figure& figure : figuresOf(again.answer(), again)) {
                const auto middle = std::ranges::find(m_figures, figure.key, &Figure::key);
                if (middle != m_figures.end() && !figure.isWords && std::isfinite(figure.value)) {
                    auto& [up, down] = moved[figure.key];
                    up = std::max(up, figure.value - middle->value);
                    down = std::max(down, middle->value - figure.value);
                }
            }
        }
        for (auto it = moved.cbegin(); it != moved.cend(); ++it) {
            m_all[it.key()].above.push_back(it->first);
            m_all[it.key()].below.push_back(it->second);
            if (doubt.known && (it->first > 0.0 || it->second > 0.0)) {
                m_known[it.key()] = true;
            }
        }
    }

    void finish(Figure& figure)
    {
        if (figure.isWords) {
            return;
        }
        if (std::ranges::find(m_counts, figure.key) != m_counts.end()) {
            figure.text = roundedText(figure.value, 0);
            return;
        }
        const double up = water::rootSumOfSquares(m_all[figure.key].above);
        const double down = water::rootSumOfSquares(m_all[figure.key].below);
        const int place = deservedPlace(figure.value, std::max(up, down));
        figure.text = deservedText(figure.value, std::max(up, down));
        if (!m_known.value(figure.key)) {
            return;
        }
        const QString low = roundedText(figure.value - down, place);
        const QString high = roundedText(figure.value + up, place);
        if (low != high) { // a doubt below the last digit shown is none that anybody can use
            figure.low = figure.value - down;
            figure.high = figure.value + up;
            figure.range = words("%1–%2").arg(low, high);
        }
    }

    void putIn(QString& text) const
    {
        for (auto it = m_values.cbegin(); it != m_values.cend(); ++it) {
            text.replace(u'{' + it.key() + u'}', it->text);
        }
        for (const Figure& figure : m_figures) {
            text.replace(u'{' + figure.key + u'}', figure.text);
        }
    }

    /// What is written down says what the sheet shows, digit for digit. A result that is no reading is not offered.
    void fillWrites()
    {
        for (Write& write : m_answer.writes) {
            if (write.entry) {
                putIn(write.entry->subject);
                putIn(write.entry->note);
            }
            if (write.reading) {
                record::Reading& reading = *write.reading;
                putIn(reading.typed);
                if (!record::setTypedValue(reading, QString(reading.typed), reading.unit)) {
                    write.reading.reset();
                }
            }
        }
        std::erase_if(m_answer.writes,
                      [](const Write& write) { return !write.entry && !write.task && !write.reading; });
    }

    void listOrigins()
    {
        for (const Input& input : m_sheet.inputs) {
            const Value value = m_values.value(input.key);
            if (!value.origin.isEmpty() && m_used.contains(input.key)) {
                const QString shown = input.unit.isEmpty() ? value.text : words("%1 %2").arg(value.text, input.unit);
                m_answer.origins << words("%1 %2: %3").arg(input.label, shown, value.origin);
            }
        }
    }

    const Sheet& m_sheet;
    Values m_values;
    Answer m_answer;
    std::vector<QString> m_counts;
    std::vector<Figure> m_figures;
    QSet<QString> m_used;
    QMap<QString, Deviations> m_all;
    QMap<QString, bool> m_known;
};

} // namespace

Result<Answer> evaluate(const Sheet& sheet, const Values& values)
{
    auto all = completed(sheet, values);
    if (!all) {
        return all.error();
    }
    return Evaluation(sheet, std::move(*all)).run();
}

} // namespace littoral::sheets
