// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wording/entry_words.h"

#include "core/facts/fact_book.h"
#include "core/wording/measures.h"
#include "core/wording/numbers.h"
#include "core/wording/review_points.h"

#include <QCoreApplication>
#include <QLocale>
#include <array>
#include <cmath>
#include <optional>

namespace littoral::wording {

using namespace Qt::StringLiterals;
using record::Entry;
using record::EntryKind;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("EntryWords", text);
}

struct Subject
{
    const char* code;
    const char* text;
};

// Subjects with a code of their own: those that rules and templates refer to.
constexpr std::array kSubjects{
    Subject{"trim-stems", QT_TRANSLATE_NOOP("EntryWords", "stems trimmed")},
    Subject{"trim-carpet", QT_TRANSLATE_NOOP("EntryWords", "carpet trimmed")},
    Subject{"filter-service", QT_TRANSLATE_NOOP("EntryWords", "filter service")},
    Subject{"cylinder-change", QT_TRANSLATE_NOOP("EntryWords", "cylinder changed")},
    Subject{"media", QT_TRANSLATE_NOOP("EntryWords", "mature media")},
    Subject{"given", QT_TRANSLATE_NOOP("EntryWords", "media given")},
    Subject{"squeezings", QT_TRANSLATE_NOOP("EntryWords", "filter squeezings")},
    Subject{"surface-film", QT_TRANSLATE_NOOP("EntryWords", "surface film")},
    Subject{"shrimp-count", QT_TRANSLATE_NOOP("EntryWords", "shrimp counted")},
    Subject{"co2-curve", QT_TRANSLATE_NOOP("EntryWords", "CO₂ curve")},
    Subject{"look-daily", QT_TRANSLATE_NOOP("EntryWords", "looked over")},
    Subject{"gate-review", QT_TRANSLATE_NOOP("EntryWords", "gates reviewed")},
    Subject{"algae-score", QT_TRANSLATE_NOOP("EntryWords", "algae scored")},
    Subject{"melt-remove", QT_TRANSLATE_NOOP("EntryWords", "dead leaves out")},
    Subject{"after-adding", QT_TRANSLATE_NOOP("EntryWords", "watched after adding")},
    Subject{"rcd-test", QT_TRANSLATE_NOOP("EntryWords", "residual-current device tested")},
    Subject{"power-cut", QT_TRANSLATE_NOOP("EntryWords", "power cut")},
    Subject{"power-after", QT_TRANSLATE_NOOP("EntryWords", "filter rinsed after a power cut")},
    Subject{"medication", QT_TRANSLATE_NOOP("EntryWords", "medicine")},
    Subject{"medication-end", QT_TRANSLATE_NOOP("EntryWords", "end of a treatment")},
    Subject{"medication-watch", QT_TRANSLATE_NOOP("EntryWords", "watched during a treatment")},
    Subject{"gate-overridden", QT_TRANSLATE_NOOP("EntryWords", "in before their gate")},
    Subject{"ask-veterinarian", QT_TRANSLATE_NOOP("EntryWords", "veterinarian asked")},
    Subject{"journey-ready", QT_TRANSLATE_NOOP("EntryWords", "made ready for a journey")},
    Subject{"helper-sheet", QT_TRANSLATE_NOOP("EntryWords", "helper's sheets walked through")},
    Subject{"journey-back", QT_TRANSLATE_NOOP("EntryWords", "full round after a journey")},
    Subject{"an_gasp", QT_TRANSLATE_NOOP("EntryWords", "gasping at the surface")},
    Subject{"bac_haze", QT_TRANSLATE_NOOP("EntryWords", "white haze")},
    Subject{"alg_diatom", QT_TRANSLATE_NOOP("EntryWords", "diatom film")},
    Subject{"alg_tuft", QT_TRANSLATE_NOOP("EntryWords", "tuft algae")},
    Subject{"alg_spot", QT_TRANSLATE_NOOP("EntryWords", "green spot")},
    Subject{"alg_hair", QT_TRANSLATE_NOOP("EntryWords", "green hair")},
    Subject{"alg_dust", QT_TRANSLATE_NOOP("EntryWords", "green dust")},
};

QString percent(double fraction)
{
    return plainNumber(std::round(fraction * 1000.0) / 10.0);
}

QString amountText(const Entry& entry)
{
    return entry.unit.isEmpty() ? plainNumber(*entry.amount)
                                : words("%1 %2").arg(plainNumber(*entry.amount), entry.unit);
}

/// What was set at a trial of gas or light, after the figure.
QString withSubject(const QString& head, const QString& subject)
{
    return subject.isEmpty() ? head : words("%1: %2").arg(head, subject);
}

QString counted(const Entry& entry)
{
    return entry.count ? words("%1 %2").arg(QString::number(*entry.count), subjectText(entry.subject))
                       : subjectText(entry.subject);
}

/// "Does it wipe off? with one finger" of "wipes_off=easy"; nothing when it is no answer to a question of the facts.
std::optional<QString> tickText(const QString& subject)
{
    const qsizetype cut = subject.indexOf(u'=');
    const facts::EvidenceKey* key = cut < 0 ? nullptr : facts::builtInFacts().key(subject.left(cut));
    if (key == nullptr) {
        return std::nullopt;
    }
    const auto fact = [](const QString& source) {
        return QCoreApplication::translate("Facts", source.toUtf8().constData());
    };
    const QString value = subject.mid(cut + 1);
    if (key->kind == facts::KeyKind::Tick) {
        return words("%1 %2").arg(fact(key->question), fact(key->valueText(value)));
    }
    return words("%1 %2").arg(fact(key->name), key->unit.isEmpty() ? value : words("%1 %2").arg(value, key->unit));
}

QString coreText(const Entry& entry)
{
    const QString name = record::entryKindName(entry.kind);
    const QString subject = subjectText(entry.subject);
    switch (entry.kind) {
    case EntryKind::WaterChange:
        return entry.fraction ? words("%1 %2 %").arg(name, percent(*entry.fraction)) : name;
    case EntryKind::TopUp:
        return entry.amount ? words("%1 %2").arg(name, typedLitresText(*entry.amount)) : name;
    case EntryKind::MediaTransfer:
        return entry.fraction ? words("%1: %2, %3 % of a filter").arg(name, subject, percent(*entry.fraction)) : name;
    case EntryKind::LightChange:
        return withSubject(entry.amount ? words("%1 to %2 h").arg(name, plainNumber(*entry.amount)) : name, subject);
    case EntryKind::Co2Change:
        return withSubject(entry.amount ? words("%1 to %2").arg(name, valueWithUnit(u"co2"_s, *entry.amount)) : name,
                           subject);
    case EntryKind::Observation:
        if (entry.severity) {
            return words("%1: %2, %3").arg(name, subject, severityWord(*entry.severity));
        }
        break;
    case EntryKind::Addition:
    case EntryKind::Loss:
        if (entry.count) {
            return words("%1: %2").arg(name, counted(entry));
        }
        break;
    case EntryKind::Dose:
    case EntryKind::Feeding:
        if (entry.amount) {
            return subject.isEmpty() ? words("%1: %2").arg(name, amountText(entry))
                                     : words("%1: %2, %3").arg(name, subject, amountText(entry));
        }
        break;
    case EntryKind::Upkeep:
    case EntryKind::Note:
        break;
    }
    return subject.isEmpty() ? name : words("%1: %2").arg(name, subject);
}

} // namespace

QString plainNumber(double value, int digits)
{
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale.toString(value, 'g', digits);
}

QString subjectText(const QString& subject)
{
    for (const Subject& known : kSubjects) {
        if (subject == QLatin1String(known.code)) {
            return words(known.text);
        }
    }
    if (const auto answer = reviewAnswerText(subject)) {
        return *answer;
    }
    if (const auto tick = tickText(subject)) {
        return *tick;
    }
    // Other codes of rules read well enough once their joints are taken out.
    QString plain = subject;
    return plain.contains(u' ') ? plain : plain.replace(u'-', u' ').replace(u'_', u' ');
}

QString severityWord(int severity)
{
    constexpr std::array kWords{QT_TRANSLATE_NOOP("EntryWords", "gone"), QT_TRANSLATE_NOOP("EntryWords", "trace"),
                                QT_TRANSLATE_NOOP("EntryWords", "clear"), QT_TRANSLATE_NOOP("EntryWords", "heavy"),
                                QT_TRANSLATE_NOOP("EntryWords", "out of hand")};
    return severity < 0 || severity >= static_cast<int>(kWords.size())
               ? QString()
               : words(kWords[static_cast<std::size_t>(severity)]);
}

QString entryText(const Entry& entry)
{
    QString text = coreText(entry);
    if (!entry.where.isEmpty()) {
        text = words("%1, %2").arg(text, entry.where);
    }
    if (!entry.note.isEmpty()) {
        text = words("%1. %2").arg(text, entry.note);
    }
    return entry.planned ? words("Planned: %1").arg(text) : text;
}

QString entryWord(const Entry& entry)
{
    switch (entry.kind) {
    case EntryKind::WaterChange:
        return entry.fraction ? percent(*entry.fraction) : QString();
    case EntryKind::TopUp:
        return entry.amount ? typedLitresText(*entry.amount) : QString();
    case EntryKind::LightChange:
        return entry.amount ? words("%1 h").arg(plainNumber(*entry.amount)) : QString();
    case EntryKind::Co2Change:
        return entry.amount ? valueWithUnit(u"co2"_s, *entry.amount) : QString();
    case EntryKind::Observation:
        return entry.severity.value_or(0) > 0
                   ? words("%1 %2").arg(subjectText(entry.subject), QString::number(*entry.severity))
                   : subjectText(entry.subject);
    case EntryKind::Addition:
    case EntryKind::Loss:
        return counted(entry);
    case EntryKind::Feeding:
        return entry.amount ? amountText(entry) : QString();
    case EntryKind::Dose:
    case EntryKind::Upkeep:
    case EntryKind::MediaTransfer:
    case EntryKind::Note:
        break;
    }
    return subjectText(entry.subject);
}

} // namespace littoral::wording
