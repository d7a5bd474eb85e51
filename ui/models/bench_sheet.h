// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"
#include "core/sheets/sheet.h"

#include <QJsonObject>
#include <QMap>
#include <QString>
#include <optional>
#include <vector>

namespace littoral::ui {

/// One blank of an open worksheet: what stands in it and where that came from.
struct BenchBlank
{
    enum class From { Nothing, Record, Preset, Typed };

    const sheets::Input* input = nullptr;
    QString text; ///< in the field; of a choice its code
    QString unit; ///< beside the field
    From from = From::Nothing;
    QString origin;        ///< "reading of 24 Nov", "typed", "usual value"; empty for none
    QString wayBack;       ///< typed over the record: what the record would put there; empty otherwise
    QString problem, mend; ///< what is wrong with what was typed, and how to put it right
    bool folded = false;   ///< stands behind "more": an assumption or something that may stay empty
    bool missing = false;  ///< needed, and nothing is there
};

/// A worksheet as it lies on the bench: what the keeper typed, what the record fills in, and the answer. Typed text is
/// kept as it is, also when it cannot be used. A plain value.
class BenchSheet
{
public:
    explicit BenchSheet(const sheets::Sheet& sheet, record::TankId tank = {});

    [[nodiscard]] const sheets::Sheet& sheet() const { return *m_sheet; }
    [[nodiscard]] record::TankId tank() const { return m_tank; }
    [[nodiscard]] const QMap<QString, QString>& typed() const { return m_typed; }
    /// Empty text takes what was typed away again.
    void type(const QString& key, const QString& text);
    /// The same as typed into the field: a bare number is in the unit beside it.
    void typeShown(const QString& key, const QString& text);
    void clear() { m_typed.clear(); }

    /// Fills and reckons anew. `source` stands in for the layout's own source water; zero: its own.
    void refresh(const record::Row& row, const record::Moment& now, record::SourceWaterId source = {});

    [[nodiscard]] const std::vector<BenchBlank>& blanks() const { return m_blanks; }
    [[nodiscard]] const BenchBlank* blank(const QString& key) const;
    /// Nothing while a blank is missing or wrong, or the figures have no answer.
    [[nodiscard]] const std::optional<sheets::Answer>& answer() const { return m_answer; }
    /// Why there is no answer, in one or two sentences; empty when there is one.
    [[nodiscard]] QString problem() const { return m_problem; }
    [[nodiscard]] QString mend() const { return m_mend; }
    /// The sheet only waits for blanks to be filled: nothing is wrong yet.
    [[nodiscard]] bool isWaiting() const { return m_waiting; }
    /// Everything in the blanks, ready to be reckoned with.
    [[nodiscard]] const sheets::Values& values() const { return m_values; }

    [[nodiscard]] QJsonObject toJson() const;
    /// Nothing when the sheet is not known any more.
    [[nodiscard]] static std::optional<BenchSheet> fromJson(const QJsonObject& object);

private:
    void parseTyped();
    void describe(const sheets::Values& untouched);
    void reckon();
    [[nodiscard]] BenchBlank describe(const sheets::Input& input, const sheets::Values& untouched) const;
    [[nodiscard]] QString unitOf(const sheets::Input& input) const;
    [[nodiscard]] QString withShownUnit(const QString& key, const QString& text) const;
    [[nodiscard]] QString fieldText(const sheets::Input& input) const;
    BenchBlank* blame(const Error& error);

    const sheets::Sheet* m_sheet;
    record::TankId m_tank;
    QMap<QString, QString> m_typed;
    QMap<QString, Error> m_wrong;
    sheets::Values m_values;
    std::vector<BenchBlank> m_blanks;
    std::optional<sheets::Answer> m_answer;
    QString m_problem, m_mend;
    bool m_waiting = false;
};

/// The water changes a sheet proposes, as shares in order; one that is more than half of the water is proposed as two
/// smaller ones where the sheet knows how large these are. Empty for sheets about something else.
[[nodiscard]] std::vector<double> proposedChanges(const BenchSheet& open);

/// Whether what a sheet writes down could also be work for a day to come; a note could not.
[[nodiscard]] bool isPlannable(const sheets::Write& write);

/// The text that types a value back in: its digits with the doubt that was given.
[[nodiscard]] QString typedText(const sheets::Value& value);

/// What the record of a tank puts into a sheet: fillFromRecord, and for the cylinder its weighings since it was
/// changed.
[[nodiscard]] sheets::Values benchFill(const sheets::Sheet& sheet, const record::Row& row, record::TankId tank,
                                       const record::Moment& now, const sheets::Values& typed,
                                       record::SourceWaterId source);

} // namespace littoral::ui
