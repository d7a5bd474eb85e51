// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wording/finding_sentences.h"

#include "core/record/shown.h"
#include "core/wording/entry_words.h"
#include "core/wording/numbers.h"

#include <QCoreApplication>
#include <cmath>

namespace littoral::wording {

using namespace Qt::StringLiterals;
using facts::Evidence;
using facts::EvidenceKey;
using facts::KeyKind;
using facts::Relation;
using findings::Judged;
using findings::Verdict;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("FindingSentences", text);
}

/// The number with its unit as people write it.
/// In the unit on show, as few digits as the figure of a rule has.
QString plainInShown(const record::Parameter& parameter, double canonical)
{
    return words("%1 %2").arg(plainNumber(parameter.shown().fromCanonical(canonical), 3), parameter.shown().label);
}

QString figure(const EvidenceKey& key, double value)
{
    const QString number = plainNumber(value, 3);
    if (key.kind == KeyKind::Reading) {
        const record::Parameter* parameter = record::findParameter(key.parameter);
        const record::Unit* unit = parameter == nullptr ? nullptr : parameter->unit(key.unit);
        if (unit == nullptr || unit->code == u"pH"_s) {
            return number;
        }
        // Rules are written in a unit of their own; another one that was chosen is kept to throughout.
        const bool chosen = parameter->shown().code != record::inUsualUnits(*parameter).shown().code;
        return chosen ? plainInShown(*parameter, unit->toCanonical(value)) : words("%1 %2").arg(number, unit->label);
    }
    return key.unit.isEmpty() ? number : words("%1 %2").arg(number, key.unit);
}

QString asked(const EvidenceKey& key, const Evidence& item)
{
    switch (item.relation) {
    case Relation::Below:
        return words("below %1").arg(figure(key, item.high));
    case Relation::AtMost:
        return words("at most %1").arg(figure(key, item.high));
    case Relation::Above:
        return words("above %1").arg(figure(key, item.low));
    case Relation::AtLeast:
        return words("at least %1").arg(figure(key, item.low));
    default:
        return words("%1 to %2").arg(plainNumber(item.low, 3), figure(key, item.high));
    }
}

QString numberSentence(const Judged& judged, const EvidenceKey& key, const QDate& today)
{
    const findings::Known& known = judged.known;
    const QString value = known.low == known.high
                              ? figure(key, known.value)
                              : words("%1 to %2").arg(plainNumber(known.low, 3), figure(key, known.high));
    const QString name = factText(key.name);
    if (key.key == u"age_d"_s) {
        return words("%1 %2: %3 is usual.").arg(name, figure(key, std::floor(known.value)), asked(key, *judged.item));
    }
    return known.at.isValid() ? words("%1 %2 on %3: %4 counts.")
                                    .arg(name, value, dateText(known.at.localDate(), today), asked(key, *judged.item))
                              : words("%1 %2: %3 counts.").arg(name, value, asked(key, *judged.item));
}

QString tickSentence(const Judged& judged, const EvidenceKey& key)
{
    QStringList said;
    for (const QString& code : judged.known.ticks) {
        said << factText(key.valueText(code));
    }
    const QString answer = said.join(words(", "));
    if (judged.verdict == Verdict::Fails) {
        return words("%1 Seen: %2; asked for: %3.")
            .arg(factText(key.question), answer, factText(key.valueText(judged.item->value)));
    }
    return words("%1 Seen: %2.").arg(factText(key.question), answer);
}

QString eventSentence(const Judged& judged, const EvidenceKey& key, const QDate& today)
{
    const QString name = factText(key.name);
    if (judged.item->relation == Relation::NoEventFor) {
        const QString days = QString::number(static_cast<int>(judged.known.value));
        return judged.known.at.isValid()
                   ? words("%1: last on %2, %3 days ago.").arg(name, dateText(judged.known.at.localDate(), today), days)
                   : words("%1: never on record, in %2 days.").arg(name, days);
    }
    return words("%1 on %2.").arg(name, dateText(judged.known.at.localDate(), today));
}

QString namedSentence(const Judged& judged, const facts::FactBook& book, const QDate& today)
{
    const facts::Condition* condition = book.condition(judged.named);
    const QString name = condition == nullptr ? judged.named : factText(condition->name);
    const QString day = dateText(judged.known.at.localDate(), today);
    if (judged.verdict != Verdict::Holds) {
        return words("%1 was seen to be gone on %2.").arg(name, day);
    }
    return judged.sign ? words("%1 was noted by name on %2.").arg(name, day)
                       : words("%1 was noted on %2, for which it is often taken.").arg(name, day);
}

QString sightSentence(const Judged& judged, const facts::FactBook& book, const QDate& today)
{
    const EvidenceKey* key = book.key(judged.item->key);
    const facts::Condition* condition = book.condition(judged.item->key);
    const QString name = key != nullptr         ? factText(key->name)
                         : condition != nullptr ? factText(condition->name)
                                                : judged.item->key;
    return words("%1: %2 on %3.")
        .arg(name, severityWord(static_cast<int>(judged.known.value)), dateText(judged.known.at.localDate(), today));
}

QString answerName(const findings::Check& check, const findings::Answer& answer)
{
    const EvidenceKey& key = *check.key;
    if (!answer.number) {
        return answer.tick.isEmpty() ? words("anything else") : factText(key.valueText(answer.tick));
    }
    if (answer.openLow) {
        return words("below %1").arg(figure(key, answer.high));
    }
    return answer.openHigh ? words("above %1").arg(figure(key, answer.low))
                           : words("%1 to %2").arg(plainNumber(answer.low, 3), figure(key, answer.high));
}

QString hoursText(double hours)
{
    return plainNumber(hours < 10.0 ? std::round(hours * 10.0) / 10.0 : std::round(hours), 6);
}

} // namespace

QString factText(const QString& source)
{
    return source.isEmpty() ? source : QCoreApplication::translate("Facts", source.toUtf8().constData());
}

QString supportText(findings::Support support)
{
    switch (support) {
    case findings::Support::Strong:
        return words("Strong support");
    case findings::Support::Fair:
        return words("Fair support");
    case findings::Support::Against:
        return words("More speaks against it");
    case findings::Support::Weak:
        break;
    }
    return words("Weak support");
}

QString healthDeferral(const facts::Condition& condition)
{
    static const QStringList health{u"animal"_s, u"disease"_s, u"shrimp"_s, u"snail"_s};
    const bool medicine = condition.cautions.contains(u"C-MED"_s);
    return health.contains(condition.kind) || medicine
               ? words("An animal's health is for a veterinarian or a fish-health laboratory to judge. What is "
                       "written here helps to describe it to them, and medicines follow local law.")
               : QString();
}

QString evidenceText(const Judged& judged, const facts::FactBook& book, const QDate& today)
{
    if (judged.item == nullptr) {
        return namedSentence(judged, book, today);
    }
    if (judged.item->relation == Relation::SeenAtLeast) {
        return sightSentence(judged, book, today);
    }
    const EvidenceKey* key = book.key(judged.item->key);
    if (key == nullptr) {
        return judged.item->text;
    }
    switch (key->kind) {
    case KeyKind::Event:
        return eventSentence(judged, *key, today);
    case KeyKind::Tick:
        return tickSentence(judged, *key);
    default:
        return numberSentence(judged, *key, today);
    }
}

QString unknownText(const Judged& judged, const facts::FactBook& book)
{
    const EvidenceKey* key = judged.item == nullptr ? nullptr : book.key(judged.item->key);
    if (key == nullptr) {
        const facts::Condition* condition = judged.item == nullptr ? nullptr : book.condition(judged.item->key);
        return condition == nullptr ? QString() : words("%1 was not looked for.").arg(factText(condition->name));
    }
    switch (key->kind) {
    case KeyKind::Reading:
        return words("%1 was not read.").arg(factText(key->name));
    case KeyKind::Event:
        return judged.known.at.isValid() ? words("%1: not as lately as asked for.").arg(factText(key->name))
                                         : words("%1: nothing on record.").arg(factText(key->name));
    default:
        return factText(key->question);
    }
}

QString checkText(const findings::Check& check)
{
    const EvidenceKey& key = *check.key;
    return key.kind == KeyKind::Reading ? words("What decides best: a reading of %1.").arg(factText(key.name))
                                        : words("What decides best: %1").arg(factText(key.question));
}

QStringList checkAnswers(const findings::Check& check)
{
    QStringList lines;
    if (!check.changesFirst) {
        return {words("No answer would put another finding first; it makes the first one firmer or weaker.")};
    }
    for (const findings::Answer& answer : check.answers) {
        lines << words("Answer \"%1\": %2 would come first.")
                     .arg(answerName(check, answer), factText(answer.first->name));
    }
    return lines;
}

QString changeFigure(const findings::Change& change, double value)
{
    using findings::ChangeKind;
    switch (change.kind) {
    case ChangeKind::Event:
        return plainNumber(value, 3);
    case ChangeKind::LightHours:
        return words("%1 h").arg(plainNumber(value, 3));
    case ChangeKind::LightPar:
        return words("%1 µmol/m²/s").arg(plainNumber(value, 3));
    case ChangeKind::Co2Target:
        return valueWithUnit(u"co2"_s, value);
    case ChangeKind::WaterChanged:
    case ChangeKind::LargestChange:
        return percentText(value);
    case ChangeKind::Reading:
        return valueWithUnit(change.key, value);
    case ChangeKind::Feeding:
        return words("%1 %2").arg(plainNumber(value, 3), change.key);
    case ChangeKind::Dose:
        break;
    }
    return change.unit.isEmpty() ? plainNumber(value, 3) : words("%1 %2").arg(plainNumber(value, 3), change.unit);
}

QString changeName(const findings::Change& change)
{
    using findings::ChangeKind;
    switch (change.kind) {
    case ChangeKind::Event: {
        QString code = change.key;
        const EvidenceKey* key = facts::builtInFacts().key(code.replace(u'-', u'_'));
        return key == nullptr ? subjectText(change.key) : factText(key->name);
    }
    case ChangeKind::LightHours:
        return words("Hours of light");
    case ChangeKind::LightPar:
        return words("Light at the bed");
    case ChangeKind::Co2Target:
        return words("CO₂ target");
    case ChangeKind::Feeding:
        return words("Daily feed");
    case ChangeKind::WaterChanged:
        return words("Water changed in a week");
    case ChangeKind::LargestChange:
        return words("Largest water change");
    case ChangeKind::Dose:
        return words("Dose of %1 in a week").arg(subjectText(change.key));
    case ChangeKind::Reading:
        break;
    }
    return parameterName(change.key);
}

QString changeText(const findings::Change& change, const QDate& today)
{
    const QString day = dateText(change.first.localDate(), today);
    if (change.kind == findings::ChangeKind::Event) {
        return change.after > 1.0
                   ? words("%1: %2 times, first on %3.").arg(changeName(change), plainNumber(change.after, 3), day)
                   : words("%1 on %2.").arg(changeName(change), day);
    }
    return words("%1: %2 before, %3 from %4.")
        .arg(changeName(change), changeFigure(change, change.before), changeFigure(change, change.after), day);
}

QString changeSize(const findings::Change& change)
{
    const QString size = plainNumber(std::round(std::abs(change.z) * 10.0) / 10.0, 4);
    return change.ownSpread ? words("%1 times the usual spread of this layout").arg(size)
                            : words("too few earlier values for a spread of its own");
}

QString changePointText(const QString& parameter, const findings::ChangePoint& point, const QDate& today)
{
    return words("%1: %2 until %3, %4 from %5.")
        .arg(parameterName(parameter), valueWithUnit(parameter, point.levelBefore),
             dateText(point.before.localDate(), today), valueWithUnit(parameter, point.levelAfter),
             dateText(point.after.localDate(), today));
}

QString exposureText(const findings::Exposure& exposure, const QDate& today)
{
    const findings::Limit& limit = exposure.limit;
    const QString name = parameterName(limit.parameter);
    const QString level = valueWithUnit(limit.parameter, limit.value);
    if (exposure.readings == 0) {
        return words("%1 was not read.").arg(name);
    }
    const QString days = plainNumber(std::round(exposure.gapHours / 24.0 * 10.0) / 10.0, 4);
    if (exposure.hoursHigh <= 0.0) {
        const QString quiet = limit.above
                                  ? words("%1 never above %2 where it was read; highest %3 on %4; %5 days not read.")
                                  : words("%1 never below %2 where it was read; lowest %3 on %4; %5 days not read.");
        return quiet.arg(name, level, valueWithUnit(limit.parameter, exposure.worst),
                         dateText(exposure.worstAt.localDate(), today), days);
    }
    const QString pattern = limit.above
                                ? words("%1 above %2 for about %3 h, %4 to %5 h by the kit's error; worst %6 on %7; %8 "
                                        "days not read.")
                                : words("%1 below %2 for about %3 h, %4 to %5 h by the kit's error; worst %6 on %7; %8 "
                                        "days not read.");
    return pattern.arg(name, level, hoursText(exposure.hours), hoursText(exposure.hoursLow),
                       hoursText(exposure.hoursHigh), valueWithUnit(limit.parameter, exposure.worst),
                       dateText(exposure.worstAt.localDate(), today), days);
}

} // namespace littoral::wording
