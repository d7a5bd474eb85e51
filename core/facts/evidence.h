// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <QString>
#include <QStringList>
#include <map>
#include <utility>
#include <vector>

namespace littoral::facts {

/// How an item of evidence compares what is known with what it asks for.
enum class Relation {
    Below,       ///< key<high
    AtMost,      ///< key<=high
    Above,       ///< key>low
    AtLeast,     ///< key>=low
    Within,      ///< key in low..high, ends included
    Is,          ///< key=value
    EventWithin, ///< ev:key<Nd: the event happened in the last N days
    NoEventFor,  ///< ev:key>Nd: it has not happened for N days
    SeenAtLeast, ///< obs:key>=N: observed at a severity of N or more
};

/// One item of evidence: what it asks for and how much it weighs, 1 weak, 2 moderate, 3 strong. Weights are judgement.
struct Evidence
{
    QString text; ///< as written, without the weight: "po4<0.3"
    QString key;
    Relation relation = Relation::Is;
    double low = 0.0;
    double high = 0.0; ///< days for the two relations of events
    QString value;
    int weight = 1;
};

/// Reads "age_d in 5..45 ::3", "po4<0.3 ::2", "colour=brown ::2", "ev:light_change<14d ::2" (or hours: <6h),
/// "obs:alg_tuft>=2 ::1". The error says which part was not understood and shows the form.
[[nodiscard]] Result<Evidence> parseEvidence(const QString& text, const QString& where);

enum class KeyKind {
    Reading, ///< a parameter of the record
    Number,  ///< reckoned from the record, or written down by the keeper as "key=12"
    Tick,    ///< one of some values, written down as an observation "key=value" or told by the record
    Event,
    Sight, ///< an observation with a severity
};

/// What a key of evidence means: how it is asked for, what fills it, how long it holds.
struct EvidenceKey
{
    QString key;
    KeyKind kind = KeyKind::Tick;
    QString name;      ///< source text, translated in the context "Facts"; empty for ticks
    QString question;  ///< as name; empty for events and readings
    QString parameter; ///< Reading: key of the parameter
    QString unit;      ///< Reading: code of the unit its figures are in; Number: label
    double low = 0.0;  ///< Number: least and greatest that can be
    double high = 0.0;
    int days = 0;            ///< how long it counts after it was read or seen; 0: as long as the layout stands
    bool background = false; ///< circumstance that makes a condition likelier but is no sign of it
    QString reckoned;        ///< how the program fills it from the record; empty when only the keeper can
    std::vector<std::pair<QString, QString>> values; ///< Tick: code and words
    std::map<QString, QStringList> words;            ///< Tick: words in an observation's place that stand for a value
    QString event;                                   ///< Event: code in core/care/events.h, or
    QStringList subjects;                            ///< entries with one of these subjects, or
    QStringList entries;                             ///< entries of these kinds

    [[nodiscard]] bool hasValue(const QString& code) const;
    [[nodiscard]] QString valueText(const QString& code) const; ///< source text; the code itself when unknown
};

} // namespace littoral::facts
