// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wording/dose_sentences.h"
#include "core/wording/entry_words.h"
#include "core/wording/numbers.h"
#include "core/wording/sentences.h"

#include <QCoreApplication>
#include <QLocale>

namespace littoral::wording {

using namespace Qt::StringLiterals;
using care::Basis;
using care::DueItem;
using care::WorkKind;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("DueSentences", text);
}

QString ofTemplate(const QString& source)
{
    return QCoreApplication::translate("Templates", source.toUtf8().constData());
}

QString dueSentence(const DueItem& item, const QDate& today)
{
    if (item.reason.basis == Basis::Proposal) {
        return words("Nothing has to be done: the readings would bear it.");
    }
    const QString day = weekdayText(item.due, today);
    if (item.daysOver > 0) {
        return words("Due %1, %2.").arg(day, overText(item.daysOver));
    }
    return item.due == today ? words("Due today.") : words("Due %1.").arg(day);
}

QString cadenceSentence(const DueItem& item, const QDate& today)
{
    const care::Reason& reason = item.reason;
    if (reason.intervalDays <= 0.0) {
        return {};
    }
    const QString interval = intervalText(reason.intervalDays);
    if (!reason.last) {
        return reason.cadenceUntil
                   ? words("None entered yet; %1 until %2.").arg(interval, dateText(*reason.cadenceUntil, today))
                   : words("None entered yet; %1.").arg(interval);
    }
    const QString last = dateText(*reason.last, today);
    if (reason.cadenceUntil && *reason.cadenceUntil >= today) {
        return words("The last one was %1; %2 until %3.").arg(last, interval, dateText(*reason.cadenceUntil, today));
    }
    return words("The last one was %1; %2.").arg(last, interval);
}

QString eventName(const QString& trigger)
{
    struct Name
    {
        const char* key;
        const char* text;
    };
    static constexpr Name kNames[]{
        {"after-addition", QT_TRANSLATE_NOOP("DueSentences", "animals were added")},
        {"after-filter-service", QT_TRANSLATE_NOOP("DueSentences", "the filter was serviced")},
        {"after-media-replaced", QT_TRANSLATE_NOOP("DueSentences", "filter media were replaced")},
        {"after-media-given", QT_TRANSLATE_NOOP("DueSentences", "filter media were given away")},
        {"after-power-cut", QT_TRANSLATE_NOOP("DueSentences", "the power was cut")},
        {"after-bed-disturbed", QT_TRANSLATE_NOOP("DueSentences", "the bed was disturbed")},
        {"after-co2-change", QT_TRANSLATE_NOOP("DueSentences", "the CO₂ was changed")},
        {"after-cylinder-change", QT_TRANSLATE_NOOP("DueSentences", "the cylinder was changed")},
        {"after-source-change", QT_TRANSLATE_NOOP("DueSentences", "the source water changed")},
        {"after-loss", QT_TRANSLATE_NOOP("DueSentences", "an animal was lost")},
        {"after-repeated-loss", QT_TRANSLATE_NOOP("DueSentences", "animals were lost again")},
        {"after-replant", QT_TRANSLATE_NOOP("DueSentences", "plants were moved")},
        {"after-trim", QT_TRANSLATE_NOOP("DueSentences", "plants were trimmed")},
        {"after-overfeed", QT_TRANSLATE_NOOP("DueSentences", "too much food went in")},
        {"after-medication", QT_TRANSLATE_NOOP("DueSentences", "a medicine was given")},
        {"after-medication-end", QT_TRANSLATE_NOOP("DueSentences", "a treatment ended")},
        {"after-gate-overridden", QT_TRANSLATE_NOOP("DueSentences", "animals went in that were to wait")},
        {"after-light-change", QT_TRANSLATE_NOOP("DueSentences", "the light was changed")},
        {"after-dose", QT_TRANSLATE_NOOP("DueSentences", "something was dosed")},
    };
    for (const Name& name : kNames) {
        if (trigger == QLatin1String(name.key)) {
            return words(name.text);
        }
    }
    return trigger;
}

QString eventSentence(const care::Reason& reason, const QDate& today)
{
    const QString event = eventName(reason.trigger);
    const QString day = dateText(reason.eventDay, today);
    if (reason.raised && !reason.tightened.empty()) {
        const care::ReadingEvidence& reading = reason.tightened.front();
        return words("%1 %2 on %3, after %4, %5: read every day for a week.")
            .arg(parameterName(reading.parameter), valueWithUnit(reading.parameter, reading.value),
                 dateText(reading.at.localDate(), today), event, day);
    }
    return reason.dayAfter == 0 ? words("The day %1, %2.").arg(event, day)
                                : words("Day %1 after %2, %3.").arg(QString::number(reason.dayAfter), event, day);
}

QString journeySentence(const care::Reason& reason, const QDate& today)
{
    const QString day = dateText(reason.eventDay, today);
    if (reason.trigger == u"returns"_s) {
        return words("The journey ends on %1.").arg(day);
    }
    return words("A journey begins on %1.").arg(day);
}

QString basisSentence(const DueItem& item, const QDate& today)
{
    const care::Reason& reason = item.reason;
    switch (reason.basis) {
    case Basis::Cadence:
    case Basis::Trigger:
        return cadenceSentence(item, today);
    case Basis::Once:
        return words("Once at this age.");
    case Basis::Event:
        return eventSentence(reason, today);
    case Basis::Journey:
        return journeySentence(reason, today);
    case Basis::ByHand:
        return words("Set by hand.");
    case Basis::Planned:
        return words("Planned for that day.");
    case Basis::Proposal:
        return reason.loosening ? easeProposal(*reason.loosening) : QString();
    }
    return {};
}

QString movedSentence(const DueItem& item, const QDate& today)
{
    const care::Reason& reason = item.reason;
    const QString first = dateText(item.cadenceDue, today);
    if (reason.snoozed) {
        return words("Put off from %1.").arg(first);
    }
    if (!reason.movedByHand) {
        return {};
    }
    return reason.moveReason.isEmpty() ? words("Moved by hand from %1.").arg(first)
                                       : words("Moved by hand from %1: %2.").arg(first, reason.moveReason);
}

QString stepsSentence(int steps)
{
    if (steps == 0) {
        return {};
    }
    if (steps == 1 || steps == -1) {
        return steps > 0 ? words("One step looser than the table, as accepted.")
                         : words("One step tighter than the table, as accepted.");
    }
    return steps > 0 ? words("%1 steps looser than the table, as accepted.").arg(steps)
                     : words("%1 steps tighter than the table, as accepted.").arg(-steps);
}

QString riskSentence(const DueItem& item)
{
    if (item.reason.animalsAtRisk.isEmpty() || item.daysOver <= 0) {
        return {};
    }
    QStringList names;
    for (const QString& subject : item.reason.animalsAtRisk) {
        names << subjectText(subject);
    }
    return words("In the tank: %1.").arg(names.join(words(", ")));
}

QString waterSentence(const DueItem& item)
{
    if (!item.litres || item.kind != WorkKind::WaterChange) {
        return {};
    }
    if (item.parts.size() < 2) {
        return words("That is %1.").arg(litresText(*item.litres));
    }
    QStringList parts;
    for (const care::WaterPart& part : item.parts) {
        parts << words("%1 of %2").arg(litresText(part.litres), part.name);
    }
    return words("That is %1: %2.").arg(litresText(*item.litres), QLocale().createSeparatedList(parts));
}

void add(QStringList& sentences, const QString& sentence)
{
    if (!sentence.isEmpty()) {
        sentences << sentence;
    }
}

QString testTitle(const QStringList& parameters)
{
    QStringList names;
    for (const QString& key : parameters) {
        const record::Parameter* known = record::findParameter(key);
        const bool isName =
            known != nullptr && (key == u"tan"_s || key == u"no2"_s || key == u"no3"_s || key == u"po4"_s);
        names << (isName ? known->name.toLower() : parameterSymbol(key));
    }
    if (names.size() < 2) {
        return words("Test %1").arg(names.value(0));
    }
    const QString last = names.takeLast();
    return words("Test %1 and %2").arg(names.join(words(", ")), last);
}

} // namespace

QString dueTitle(const DueItem& item)
{
    switch (item.kind) {
    case WorkKind::WaterChange:
        return item.fraction ? words("Water change %1").arg(percentText(*item.fraction)) : words("Water change");
    case WorkKind::Test:
        return item.templateKey == u"retest"_s ? ofTemplate(item.title) : testTitle(item.parameters);
    case WorkKind::Own:
        return subjectText(item.subject);
    case WorkKind::Dose:
        return doseTitle(item);
    case WorkKind::Upkeep:
    case WorkKind::Look:
    case WorkKind::Decide:
        break;
    }
    return ofTemplate(item.title);
}

QString dueChip(const DueItem& item)
{
    if (item.kind == WorkKind::WaterChange && item.fraction) {
        return percentText(*item.fraction);
    }
    if (item.kind == WorkKind::Dose && item.amount) {
        return doseAmount(*item.amount, item.unit);
    }
    if (item.kind == WorkKind::Test) {
        QStringList symbols;
        for (const QString& key : item.parameters) {
            symbols << parameterSymbol(key);
        }
        return words("Test %1").arg(symbols.join(u' '));
    }
    return dueTitle(item);
}

QString dueWhen(const DueItem& item, const QDate& today)
{
    if (item.daysOver > 0) {
        return overText(item.daysOver);
    }
    const qint64 ahead = today.daysTo(item.due);
    if (ahead == 0) {
        return words("today");
    }
    return ahead == 1 ? words("tomorrow") : weekdayText(item.due, today);
}

QStringList dueReasons(const DueItem& item, const QDate& today)
{
    QStringList sentences;
    add(sentences, dueSentence(item, today));
    if (item.kind == WorkKind::Dose) {
        sentences << doseReasons(item, today);
    } else {
        add(sentences, basisSentence(item, today));
    }
    add(sentences, movedSentence(item, today));
    for (const care::Trigger& trigger : item.reason.triggers) {
        add(sentences, triggerText(trigger, today));
    }
    if (item.reason.loosening) {
        for (const care::EaseEvidence& evidence : item.reason.loosening->evidence) {
            add(sentences, easeText(evidence, today));
        }
    }
    add(sentences, stepsSentence(item.reason.acceptedSteps));
    add(sentences, waterSentence(item));
    add(sentences, riskSentence(item));
    if (!item.consequence.isEmpty() && item.reason.basis != Basis::Proposal) {
        add(sentences, words("Left undone: %1").arg(ofTemplate(item.consequence)));
    }
    if (!item.source.isEmpty()) {
        add(sentences, words("Rule: %1.").arg(sourceText(item.source)));
    }
    return sentences;
}

QString dueWhy(const DueItem& item, const QDate& today)
{
    QStringList sentences = dueReasons(item, today);
    const QString title = dueTitle(item);
    sentences.prepend(title.endsWith(u'?') ? title : words("%1.").arg(title));
    return sentences.join(u' ');
}

QString nextLine(const DueItem& item, const QDate& today)
{
    const QString when = dueWhen(item, today);
    if (item.kind == WorkKind::WaterChange && item.fraction) {
        return words("Next change %1, %2").arg(percentText(*item.fraction), when);
    }
    return words("Next: %1, %2").arg(dueTitle(item), when);
}

QString easeProposal(const care::Loosening& loosening)
{
    const QString now = percentText(loosening.now.fraction);
    if (loosening.looser.everyDays != loosening.now.everyDays) {
        return words("Change %1 instead of %2, %3 as before.")
            .arg(intervalText(loosening.looser.everyDays), intervalText(loosening.now.everyDays), now);
    }
    return words("Change %1 instead of %2, %3 as before.")
        .arg(percentText(loosening.looser.fraction), now, intervalText(loosening.now.everyDays));
}

QString sourceText(const QString& source)
{
    return ofTemplate(source);
}

QString collisionText(const QStringList& tanks, const std::optional<QDate>& freerDay, const QDate& today)
{
    if (tanks.isEmpty()) {
        return {};
    }
    const QString names = tanks.join(words(", "));
    return freerDay ? words("Large changes meet: %1. Free of them: %2.").arg(names, weekdayText(*freerDay, today))
                    : words("Large changes meet: %1.").arg(names);
}

QString rowLoadText(int minutesToday, double litresToday, int minutesWeek, double litresWeek)
{
    const auto time = [](int minutes) {
        return minutes < 60 ? words("%1 min").arg(minutes)
                            : words("%1 h %2 min").arg(QString::number(minutes / 60), QString::number(minutes % 60));
    };
    return words("Today %1, %2; seven days %3, %4.")
        .arg(time(minutesToday), litresText(litresToday), time(minutesWeek), litresText(litresWeek));
}

} // namespace littoral::wording
