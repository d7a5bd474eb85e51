// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/care/events.h"
#include "core/care/stock.h"
#include "core/record/row.h"

#include <QByteArray>
#include <QStringList>
#include <map>
#include <optional>
#include <vector>

/// What work a tank asks for and when, as data. The file is resources/facts/task_templates.json; its shape is told in
/// resources/facts/README.md. A keeper's own template (record::TaskTemplate) has the shape of one element of its list
/// and replaces the built-in one of the same key.
namespace littoral::care {

enum class WorkKind { WaterChange, Test, Upkeep, Look, Decide, Own, Dose };

/// What must hold of a layout for a template, a variant or a round to count. What is not given always holds.
struct Condition
{
    std::vector<record::StartMethod> start;
    std::vector<record::Bed> bed;
    std::vector<record::Co2Mode> co2;
    std::optional<bool> rockHardens;
    std::optional<double> netBelow_L;
    std::optional<double> netFrom_L;
    std::optional<bool> animals;
    std::optional<bool> shrimp;
    std::optional<bool> plants;             ///< any planted density
    std::optional<bool> pureWater;          ///< demineralised, blended or rain source
    QString recorded;                       ///< an entry with this subject has been made before
    std::map<QString, double> readingBelow; ///< newest reading, at most three days old, canonical units
};

/// One stretch of a cadence: every so many days within an age, once at an age, days after an event, or a day of a
/// journey.
struct Round
{
    double every = 0.0; ///< days; a half ("3.5") alternates
    int from = 0;       ///< tank age of the first
    std::optional<int> to;
    std::optional<int> once;
    std::vector<Event> after;
    std::vector<int> days;             ///< after the event
    bool ifRaised = false;             ///< counted from a reading of ammonia or nitrite over its limit after the event
    std::optional<int> leaves;         ///< days after the day of leaving; negative: before it
    std::optional<int> returns;        ///< days after the day of return
    std::optional<double> fraction;    ///< water change asked for
    std::optional<double> fractionLow; ///< the range the practice gives
    std::optional<double> fractionHigh;
    Condition when;
};

struct Variant
{
    QString key; ///< names the row of the table: "new-media", "inert-low" ...
    Condition when;
    std::vector<Round> rounds;
};

/// What closes a round besides the keeper's own tick.
struct Closing
{
    std::optional<record::EntryKind> kind;
    QString subject;
    std::vector<QStringList> readings; ///< all of these; each a list of parameters of which one will do

    [[nodiscard]] bool byReadings() const { return !readings.empty(); }
};

struct WorkTemplate
{
    QString key;
    QString title; ///< source text, translated in the context "Templates"
    WorkKind kind = WorkKind::Upkeep;
    bool wholeRow = false; ///< asked once for the row, not for every tank
    Condition applies;
    std::vector<Variant> variants; ///< the first whose condition holds
    Closing closes;
    int minutes = 0;
    int grace = 0;
    int priority = 3;
    std::optional<int> lapse; ///< days past grace after which an open round is not asked for any more
    bool rolls = false;       ///< a missed round gives way to the next instead of staying open
    QString consequence;      ///< as title
    QString caution;
    QString source; ///< as title
    QString helper; ///< as title: how somebody does it for the first time; empty: not work for a helper
};

struct TemplateSet
{
    std::vector<WorkTemplate> all;
    std::vector<Error> problems; ///< the keeper's own templates that could not be used

    [[nodiscard]] const WorkTemplate* find(const QString& key) const;
};

/// Reads the whole file. The error names the template and the field.
[[nodiscard]] Result<std::vector<WorkTemplate>> parseTemplates(const QByteArray& json);
/// Reads one element.
[[nodiscard]] Result<WorkTemplate> parseTemplate(const QByteArray& json);
/// The program's own, read once; empty only if the resource is broken, which the tests would show.
[[nodiscard]] const std::vector<WorkTemplate>& builtInTemplates();
/// The program's own with the keeper's changes put over them.
[[nodiscard]] TemplateSet templatesFor(const record::Row& row);

/// What conditions are judged by.
struct Circumstances
{
    const record::Row* row = nullptr;
    const record::LayoutRecord* layout = nullptr;
    Stock stock;
    std::optional<double> net_L;
    bool pureWater = false;
    record::Moment now;
};
[[nodiscard]] Circumstances circumstances(const record::Row& row, const record::LayoutRecord& layout,
                                          const record::Moment& now);
[[nodiscard]] bool holds(const Condition& condition, const Circumstances& at);
/// The variant that applies; nullptr when the template does not apply at all.
[[nodiscard]] const Variant* variantFor(const WorkTemplate& work, const Circumstances& at);

} // namespace littoral::care
