// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sheets/sheet.h"
#include "core/water/refusal.h"

#include <QCoreApplication>
#include <QSet>

/// What a sheet's function works with: reads the blanks, puts down results. It runs many times for one answer, each
/// time with one input moved by its doubt; only the first run's words are kept.
namespace littoral::sheets {

/// A translated sentence of a sheet.
[[nodiscard]] inline QString words(const char* text)
{
    return QCoreApplication::translate("Sheets", text);
}

/// A refusal in the sheet's own words. `blank` is the key of the one to put right; it becomes the error's `where`.
[[nodiscard]] Error refused(const QString& what, const QString& mend = {}, const QString& blank = {});

class Reckoner
{
public:
    Reckoner(const Sheet& sheet, const Values& values);

    /// The number in a blank; 0 when an optional one is empty.
    [[nodiscard]] double number(const QString& key) const;
    [[nodiscard]] bool has(const QString& key) const;
    [[nodiscard]] std::optional<double> maybe(const QString& key) const;
    [[nodiscard]] double share(const QString& key) const { return number(key) / 100.0; }
    [[nodiscard]] QString choice(const QString& key) const;
    [[nodiscard]] QString choiceLabel(const QString& key) const;
    [[nodiscard]] std::vector<double> series(const QString& key) const;

    /// `{key}` in these stands for an input as typed or a result as rounded.
    void formula(const QString& text) { m_answer.formula = text; }
    void figures(const QString& text) { m_answer.figures = text; }
    void mainResult(const QString& key, const QString& label, double value, const QString& unit);
    void result(const QString& key, const QString& label, double value, const QString& unit);
    /// A figure that only stands within a sentence or a note, as `{key}`, rounded as results are.
    void part(const QString& key, double value);
    /// A whole number, shown as such.
    void count(const QString& key, const QString& label, int value, const QString& unit);
    void sentence(const QString& key, const QString& label, const QString& text);
    void move(const QString& label, std::optional<double> before, double after, const QString& unit,
              const QString& note = {});
    void note(const QString& text) { m_answer.notes << text; }
    void caution(const QString& id);
    void write(Write write) { m_answer.writes.push_back(std::move(write)); }

    [[nodiscard]] Answer& answer() { return m_answer; }
    [[nodiscard]] const std::vector<QString>& counts() const { return m_counts; }
    [[nodiscard]] const std::vector<Figure>& parts() const { return m_parts; }
    /// The moves as figures, so that their doubt can be worked through as well; their value before beside them.
    [[nodiscard]] const std::vector<Figure>& moved() const { return m_moved; }
    [[nodiscard]] const std::vector<std::optional<double>>& movedFrom() const { return m_movedFrom; }
    /// Which blanks the sheet looked at.
    [[nodiscard]] const QSet<QString>& used() const { return m_used; }

    /// Takes a value out of a Result or keeps its refusal for done(), naming the blank to put right.
    template <typename T> [[nodiscard]] T take(const QString& blank, const Result<T>& result)
    {
        if (result) {
            return *result;
        }
        if (!m_error) {
            m_error = result.error();
            m_error->where = blank.toStdString();
        }
        return T{};
    }
    /// The first refusal met, with its sentence translated; success otherwise. End a sheet with it.
    [[nodiscard]] Result<void> done() const;

private:
    const Sheet& m_sheet;
    const Values& m_values;
    Answer m_answer;
    std::vector<QString> m_counts;
    std::vector<Figure> m_moved;
    std::vector<Figure> m_parts;
    std::vector<std::optional<double>> m_movedFrom;
    mutable QSet<QString> m_used;
    std::optional<Error> m_error;
};

/// Three significant figures at most and no idle zeros, for figures that carry no doubt of their own.
[[nodiscard]] QString plainText(double value);
/// The value rounded to where its doubt begins, at most three significant figures.
[[nodiscard]] QString deservedText(double value, double doubt);
/// Decimal place (power of ten) at which a value with this doubt is rounded.
[[nodiscard]] int deservedPlace(double value, double doubt);
[[nodiscard]] QString roundedText(double value, int place);

/// Entries and tasks most sheets write.
[[nodiscard]] Write changeEntry(double share);
[[nodiscard]] Write changeTask(double share);
[[nodiscard]] Write doseEntry(const QString& subject, double amount, const QString& unit);
/// `typed`, like the texts of entries, may hold `{key}`: an input as typed or a result as rounded.
[[nodiscard]] Write readingWrite(const QString& parameter, const QString& unitCode, const QString& typed);
[[nodiscard]] Write noteEntry(const QString& text);
/// Work at the tub or the tank that the sheet has worked out, to be written down or planned.
[[nodiscard]] Write upkeepEntry(const QString& label, const QString& subject, const QString& note);

} // namespace littoral::sheets
