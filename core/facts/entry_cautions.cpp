// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facts/entry_cautions.h"

#include "core/care/work_template.h"

#include <QRegularExpression>
#include <algorithm>

namespace littoral::facts {

using namespace Qt::StringLiterals;

namespace {

QStringList ofKind(record::EntryKind kind)
{
    switch (kind) {
    case record::EntryKind::WaterChange:
        return {u"C-ELEC"_s, u"C-CHLOR"_s, u"C-LOAD"_s};
    case record::EntryKind::TopUp:
        return {u"C-HOME"_s};
    case record::EntryKind::Dose:
        return {u"C-SALTS"_s};
    case record::EntryKind::Upkeep:
    case record::EntryKind::MediaTransfer:
        return {u"C-ELEC"_s, u"C-HANDS"_s};
    case record::EntryKind::Addition:
        return {u"C-HANDS"_s, u"C-RELEASE"_s};
    case record::EntryKind::Loss:
        return {u"C-MED"_s, u"C-KILL"_s, u"C-RELEASE"_s};
    case record::EntryKind::LightChange:
        return {u"C-ELEC"_s};
    case record::EntryKind::Co2Change:
        return {u"C-CO2"_s, u"C-O2"_s};
    case record::EntryKind::Feeding:
    case record::EntryKind::Observation:
    case record::EntryKind::Note:
        break;
    }
    return {};
}

bool speaksOf(const Caution& caution, const QString& subject)
{
    static const QRegularExpression gap(u"[\\s,;:/()]+"_s);
    const QStringList said = subject.split(gap, Qt::SkipEmptyParts);
    return std::ranges::any_of(caution.words, [&](const QString& beginning) {
        return std::ranges::any_of(
            said, [&](const QString& word) { return word.startsWith(beginning, Qt::CaseInsensitive); });
    });
}

QStringList ofWork(const FactBook& book, const QString& key, const QString& named)
{
    QStringList ids;
    if (!named.isEmpty()) {
        ids << named;
    }
    for (const Caution& caution : book.cautions) {
        if (caution.work.contains(key) && caution.id != named) {
            ids << caution.id;
        }
    }
    return ids;
}

} // namespace

QStringList cautionsFor(const FactBook& book, const care::DueItem& item)
{
    return ofWork(book, item.templateKey, item.caution);
}

QStringList cautionsFor(const FactBook& book, const care::WorkTemplate& work)
{
    return ofWork(book, work.key, work.caution);
}

QStringList cautionsFor(const FactBook& book, record::EntryKind kind, const QString& subject)
{
    QStringList ids = ofKind(kind);
    // Writing down what was seen is no work: nobody is warned while looking.
    if (subject.isEmpty() || kind == record::EntryKind::Observation || kind == record::EntryKind::Note) {
        return ids;
    }
    for (const care::WorkTemplate& work : care::builtInTemplates()) {
        if (work.closes.kind == kind && work.closes.subject == subject) {
            ids << cautionsFor(book, work);
        }
    }
    for (const Caution& caution : book.cautions) {
        if (speaksOf(caution, subject)) {
            ids << caution.id;
        }
    }
    ids.removeDuplicates();
    return ids;
}

} // namespace littoral::facts
