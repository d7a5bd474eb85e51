// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/lane_model.h"
#include "core/findings/findings.h"
#include "core/record/row.h"
#include "core/wording/caution_words.h"

#include <QStringList>
#include <array>
#include <optional>
#include <utility>
#include <vector>

/// The review of one layout as plain values, words included: a question, the weeks before it, what the record points
/// to, what changed, for how long limits were passed, and how another tank did at the same age. Values are in the
/// parameter's shown unit. Nothing here is a verdict.
namespace littoral::facade {

/// One line of the record.
struct RecordRef
{
    record::EntryId entry;
    record::ReadingId reading;
    qint64 at = 0; ///< UTC ms

    bool operator==(const RecordRef&) const = default;
};

/// What the review is about: one run of observations of a subject, a run of losses, or nothing in particular.
struct CaseQuestion
{
    record::LayoutId layout;
    QString subject;      ///< empty: nothing in particular
    bool losses = false;  ///< of animals; `subject` is the first one's
    record::Moment onset; ///< first of the run; now (or the layout's end) when nothing in particular
    record::Moment last;  ///< newest of the run
    int worst = 0;        ///< highest severity of the run
    QString text;         ///< "Melt, from 17 Nov"

    bool operator==(const CaseQuestion&) const = default;
};

/// Questions the record of a tank raises, the one to begin with first. A run ends where nothing of the subject was
/// written down for 30 days, or where it was seen to be gone. One about nothing in particular stands last for each
/// layout. Empty: the tank has no layout.
[[nodiscard]] std::vector<CaseQuestion> caseQuestions(const record::Row& row, record::TankId tank,
                                                      const record::Moment& now);

struct CaseRequest
{
    CaseQuestion question;
    int lookBackDays = 21;
    record::LayoutId reference; ///< none: the one that compares best
    QString compared;           ///< what is compared; empty: what changed most
};

enum class EvidenceSide { For, Against, Unknown };

struct CaseAnswer
{
    QString subject; ///< of the observation it writes: "wipes_off=easy"
    QString words;
};

/// One item for, against or not known, with the lines of the record it rests on. An unknown one says how it can be
/// answered: a choice, a number within bounds, or a reading.
struct CaseEvidence
{
    EvidenceSide side = EvidenceSide::For;
    QString text;
    QString key;
    std::vector<RecordRef> rests;
    std::vector<CaseAnswer> answers;
    bool number = false;
    double low = 0.0, high = 0.0;
    QString unit;
    QString parameter; ///< a reading of it would settle this

    [[nodiscard]] bool canBeAnswered() const { return number || !answers.empty() || !parameter.isEmpty(); }
};

struct CaseFinding
{
    QString id, name, look;
    findings::Support support = findings::Support::Weak;
    QString supportWord;
    double bar = 0.0; ///< 0..1, never shown as a number
    std::vector<CaseEvidence> evidence;
    std::vector<wording::CautionText> cautions; ///< shown above the actions
    QString deferral;                           ///< who decides where animals' health is concerned; empty otherwise
    QStringList actions, avoid;
    QString nextLook, source;
};

/// The look that would change the order most.
struct CaseCheck
{
    QString text;
    QStringList outcomes;
    CaseEvidence ask;
};

struct CaseChange
{
    QString parameter; ///< of a reading; empty for what was done
    Glyph glyph = Glyph::Note;
    QString name, before, after;
    QString size; ///< against the layout's own spread
    int daysBefore = 0;
    QString sentence;
    std::vector<RecordRef> rests;
};

struct CaseExposure
{
    QString parameter;
    QString limit;    ///< "Nitrate above 50 mg/L NO₃"
    QString furthest; ///< the furthest reading
    double hours = 0.0, low = 0.0, high = 0.0, notRead = 0.0;
    QString sentence;
};

struct CaseStep
{
    QString parameter;
    QString text;
    bool inWindow = false;
    qint64 at = 0;
};

/// One question of the talk about keeping or resetting.
struct TalkPoint
{
    QString key, title;
    std::optional<int> points; ///< 0 good, 1 doubtful, 2 bad; nothing: not known
    QString why;               ///< what it rests on; empty when not known
    bool byHand = false;
    std::vector<CaseAnswer> answers;
};

/// One way to go on, with what comes first on it.
struct TalkWay
{
    QString name, when;
    QStringList first;
};

struct Talk
{
    std::vector<TalkPoint> points;
    int sum = 0;
    int open = 0;           ///< not known
    QString headline;       ///< "4 of 18 points, 3 questions open"
    QString leaning;        ///< which way the points speak, in words that leave it open
    QStringList overriding; ///< what counts for more than points
    std::vector<TalkWay> ways;
    QString judgeOn; ///< when to look again
};

struct AgeLine
{
    QString name;
    std::vector<std::pair<double, double>> points; ///< age in days, value
};

struct Comparison
{
    QString key; ///< a parameter's, or "cover:" and a subject
    QString name, unitLabel;
    int decimals = 1;
    AgeLine own, other;
    record::LayoutId reference;
    double nowAge = 0.0, onsetAge = 0.0;
    QStringList sentences;
    std::vector<std::pair<record::LayoutId, QString>> references; ///< that can be chosen
    std::vector<std::pair<QString, QString>> offers;              ///< what can be compared

    [[nodiscard]] bool any() const { return !own.points.empty() && !other.points.empty(); }
};

struct StripSeries
{
    LaneSeries series;
    std::vector<RecordRef> refs; ///< one for each mark
};

/// What the strip draws.
struct CaseStrip
{
    std::vector<StripSeries> series; ///< one or two
    std::vector<LaneEvent> events;
    qint64 flooded = 0;
    std::optional<qint64> ended;
    qint64 from = 0, onset = 0;
    QString bracket; ///< "What changed, 22 Oct to 12 Nov"
    QString onsetText;
};

struct CaseFile
{
    CaseRequest request;
    QString tankName; ///< "Fen Corner", "Slate Ford, layout 1"
    QString heading;  ///< "30 L · day 96 · flooded 21 Aug 2026"
    QDate today;
    bool silent = false; ///< nothing is recorded
    QString rests;       ///< "In the window: readings 11, entries 9, observations 4"
    QString opening;     ///< what the window is
    CaseStrip strip;
    std::vector<CaseFinding> findings; ///< those worth reading, best first
    std::vector<CaseFinding> weak;     ///< weighed, and not supported
    std::optional<CaseCheck> check;
    QString aboveAll; ///< what outranks every caution
    std::vector<CaseChange> changes;
    std::vector<CaseExposure> exposures;
    std::vector<CaseStep> steps;
    Talk talk;
    Comparison comparison;
};

/// Everything of one review. Pure; may run on any thread. A question about a layout that is gone gives an empty file.
[[nodiscard]] CaseFile caseFile(const record::Row& row, const CaseRequest& request, const record::Moment& now);

/// Lines of the record that an item of evidence rests on, oldest first.
[[nodiscard]] std::vector<RecordRef> recordOf(const findings::Judged& judged, const facts::FactBook& book,
                                              const record::LayoutRecord& layout);

/// The observation an answer is kept as.
[[nodiscard]] record::Entry answerEntry(const record::Row& row, record::LayoutId layout, const QString& subject,
                                        const record::Moment& at);

} // namespace littoral::facade
