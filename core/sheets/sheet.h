// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/record/entry.h"
#include "core/record/reading.h"
#include "core/record/task.h"

#include <QMap>
#include <QString>
#include <QStringList>
#include <functional>
#include <optional>
#include <vector>

/// Worksheets: one sum a keeper needs, as data (its inputs) and one function. Page, command line and find field all use
/// these; none of them knows a formula.
namespace littoral::sheets {

class Reckoner;

/// Where an input is filled from when a tank is chosen.
enum class FillFrom {
    Nothing,
    Reading,   ///< newest reading of a parameter
    NetVolume, ///< litres of water in the tank
    Source,    ///< the layout's source water, by parameter
    Layout,    ///< a field of the layout: temperature, co2-target, co2-hours, light-hours, par, flow, bed, rock, gap
    Glass      ///< a measure of the tank: length, depth, height, glass
};

struct Fill
{
    FillFrom from = FillFrom::Nothing;
    QString key;  ///< parameter or field; "@x": what the choice `x` holds
    QString unit; ///< the parameter's unit code in which the sheet reckons; empty: the unit people meet first
};

enum class InputKind {
    Number,
    Choice,
    Series ///< numbers in a row: "50/20/30"
};

struct Choice
{
    QString code;
    QString label;
};

/// One blank of a sheet. Made by number(), choice(), series() and the calls below, which read as a list of its traits.
struct Input
{
    QString key;
    QString label;
    QString unit; ///< as people read it; empty for none
    InputKind kind = InputKind::Number;
    double lowest = 0.0;
    double highest = 0.0;
    QString preset; ///< what stands there until something is typed
    bool optional = false;
    bool exact = false;      ///< a decision or a count: no doubt of its own
    double usualError = 0.0; ///< half-width where none is stated: half a kit step, what a colour leaves open
    std::vector<Choice> choices;
    Fill fill;

    [[nodiscard]] static Input number(QString key, QString label, QString unit, double lowest, double highest);
    [[nodiscard]] static Input choice(QString key, QString label, std::vector<Choice> choices);
    [[nodiscard]] static Input series(QString key, QString label, QString unit, double lowest, double highest);

    [[nodiscard]] Input presetTo(QString text) const;
    [[nodiscard]] Input mayBeEmpty() const;
    [[nodiscard]] Input decided() const; ///< exact
    [[nodiscard]] Input usually(double error) const;
    [[nodiscard]] Input filled(FillFrom from, QString key = {}, QString unitCode = {}) const;
};

/// What stands in a blank.
struct Value
{
    double number = 0.0;
    std::optional<double> error; ///< half-width, when one was typed or the record knows it
    std::vector<double> series;
    QString text;      ///< as typed; for a choice its code
    QString origin;    ///< where it came from, for people; empty when it was typed
    double step = 0.0; ///< one unit of the last digit typed
};
using Values = QMap<QString, Value>;

/// One result with as many digits as its inputs deserve.
struct Figure
{
    QString key;
    QString label;
    QString unit;
    double value = 0.0;
    std::optional<double> low; ///< both or neither: where inputs have a known doubt
    std::optional<double> high;
    QString text;  ///< the value, rounded
    QString range; ///< "28–42"; empty without a known doubt
    bool main = false;
    bool isWords = false; ///< `text` is a sentence, `value` means nothing
};

/// Something else the same action moves.
struct Move
{
    QString label;
    QString unit;
    QString before; ///< empty when it is not known
    QString after;
    QString note;
};

/// What "Write to the record" or "Make it a task" puts down. Tank, layout and time are the caller's to fill in.
struct Write
{
    QString label; ///< on the button
    std::optional<record::Entry> entry;
    std::optional<record::Task> task;
    std::optional<record::Reading> reading;
};

struct Answer
{
    QString sheet;   ///< key
    QString formula; ///< in symbols
    QString figures; ///< the same with the figures put in
    std::vector<Figure> results;
    std::vector<Move> moves;
    QStringList notes;    ///< validity, doubts, what to watch
    QStringList cautions; ///< ids, worded by core/wording/caution_words.h; shown above whatever is done with the result
    QString source;
    std::vector<Write> writes;
    QStringList origins; ///< "pH 6.6: reading of 24 Nov", one per input that was filled in

    [[nodiscard]] const Figure* find(const QString& key) const; ///< nullptr when there is none
};

struct Sheet
{
    QString key;     ///< one word, as typed: "co2"
    QString title;   ///< "CO₂ three ways"
    QString purpose; ///< half a line
    QString group;   ///< heading it stands under
    std::vector<Input> inputs;
    QString source;
    std::function<Result<void>(Reckoner&)> reckon;
    QString example; ///< figures that have an answer, as typed: "6.6 4"

    [[nodiscard]] const Input* input(const QString& key) const; ///< nullptr when it has none
};

/// Fills what is empty with presets, checks every blank, reckons, and works the doubts of the inputs through to the
/// results (core/water/uncertain.h says how). Refuses missing and impossible input, naming the blank and how to mend
/// it.
[[nodiscard]] Result<Answer> evaluate(const Sheet& sheet, const Values& values);

/// The sheet reckoned with its example: how formula, cautions and notes read before any figure is at hand.
[[nodiscard]] Answer exampleOf(const Sheet& sheet);

/// All sheets in the order in which they are listed.
[[nodiscard]] const std::vector<Sheet>& sheets();
[[nodiscard]] const Sheet* findSheet(const QString& key); ///< any case; nullptr when there is none

} // namespace littoral::sheets
