// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/entry_words.h"

#include "core/wording/entry_words.h"

#include <QCoreApplication>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Subjects", text);
}

/// Kept as these codes; what is not a code of the rules is kept in the words offered.
QStringList subjectsOf(record::EntryKind kind)
{
    switch (kind) {
    case record::EntryKind::Dose:
        return {u"starter"_s,
                u"ammonia"_s,
                words("conditioner"),
                words("macro fertiliser"),
                words("micro fertiliser"),
                words("potassium"),
                words("iron"),
                words("mineral salt")};
    case record::EntryKind::Upkeep:
        return {
            u"trim-stems"_s,          u"trim-carpet"_s, u"filter-service"_s, u"prefilter"_s,     u"glass"_s,
            u"cylinder-change"_s,     u"hoses"_s,       u"diffuser"_s,       words("replanted"), words("lamps wiped"),
            words("heater looked at")};
    case record::EntryKind::Observation:
        return {u"melt"_s,
                u"alg_diatom"_s,
                u"alg_dust"_s,
                u"alg_spot"_s,
                u"alg_hair"_s,
                u"alg_tuft"_s,
                u"surface-film"_s,
                words("cyanobacteria"),
                words("green water"),
                words("bacterial film on wood"),
                words("cloudy water"),
                words("pale new leaves"),
                words("pinholes in old leaves"),
                words("stunted tips"),
                words("uprooted plants"),
                words("gasping at the surface"),
                words("clamped fins"),
                words("white spots"),
                words("hiding"),
                words("planaria"),
                words("hydra"),
                words("good new growth")};
    case record::EntryKind::Co2Change:
        return {words("opened a little, indicator blue"),
                words("opened a little, indicator green"),
                words("closed a little, indicator yellow"),
                words("left as it is, indicator green"),
                words("starts earlier"),
                words("animals at the surface, gas closed")};
    case record::EntryKind::LightChange:
        return {words("hours"), words("intensity"), words("height of the lamp")};
    case record::EntryKind::MediaTransfer:
        return {u"media"_s, u"squeezings"_s, u"given"_s};
    default:
        return {};
    }
}

} // namespace

QString subjectShown(const QString& subject)
{
    return wording::subjectText(subject);
}

QStringList commonSubjects(record::EntryKind kind)
{
    QStringList shown;
    for (const QString& subject : subjectsOf(kind)) {
        shown << subjectShown(subject);
    }
    return shown;
}

QString subjectFrom(record::EntryKind kind, const QString& typed)
{
    const QString wanted = typed.simplified();
    const QStringList subjects = subjectsOf(kind);
    const auto found = std::ranges::find_if(subjects, [&](const QString& subject) {
        return subject.compare(wanted, Qt::CaseInsensitive) == 0 ||
               subjectShown(subject).compare(wanted, Qt::CaseInsensitive) == 0;
    });
    return found == subjects.end() ? wanted : *found;
}

} // namespace littoral::ui
