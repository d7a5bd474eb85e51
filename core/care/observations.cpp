// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/observations.h"

#include "core/care/stock.h"

#include <algorithm>

namespace littoral::care {

using namespace Qt::StringLiterals;
using record::Entry;
using record::EntryKind;

namespace {

bool isSeen(const Entry& entry, const record::Moment& at)
{
    return entry.kind == EntryKind::Observation && !entry.planned && entry.at <= at;
}

} // namespace

const Entry* newestObservation(const record::LayoutRecord& layout, const QString& subject, const record::Moment& at)
{
    return layout.lastDone(EntryKind::Observation, at, subject);
}

std::vector<const Entry*> observationsOf(const record::LayoutRecord& layout, const QString& subject,
                                         const record::Moment& at)
{
    std::vector<const Entry*> found;
    for (const Entry& entry : layout.entries) {
        if (isSeen(entry, at) && entry.subject == subject) {
            found.push_back(&entry);
        }
    }
    return found;
}

QStringList observedSubjects(const record::LayoutRecord& layout, const record::Moment& at)
{
    QStringList found;
    for (const Entry& entry : layout.entries) {
        if (isSeen(entry, at) && !found.contains(entry.subject)) {
            found << entry.subject;
        }
    }
    return found;
}

bool isAlgae(const QString& subject)
{
    return subject.startsWith(u"alg_"_s);
}

bool isAnimalSign(const QString& subject)
{
    return subject.startsWith(u"an_"_s) || subject.startsWith(u"dz_"_s) || subject.startsWith(u"sh_"_s);
}

std::vector<Rise> risesOfAlgae(const record::LayoutRecord& layout, const record::Moment& at, double days)
{
    std::vector<Rise> rises;
    for (const QString& subject : observedSubjects(layout, at)) {
        if (!isAlgae(subject)) {
            continue;
        }
        const auto all = observationsOf(layout, subject, at);
        const Entry* now = all.back();
        // The lowest of the days before decides, so that a rise seen in two small looks is still one.
        const Entry* before = nullptr;
        for (const Entry* earlier : all) {
            if (earlier != now && record::daysBetween(earlier->at, now->at) <= days &&
                (before == nullptr || earlier->severity.value_or(0) < before->severity.value_or(0))) {
                before = earlier;
            }
        }
        if (before != nullptr && now->severity.value_or(0) > before->severity.value_or(0)) {
            rises.push_back({before, now});
        }
    }
    return rises;
}

std::optional<record::Moment> plantedAt(const record::LayoutRecord& layout, const record::Moment& at)
{
    if (layout.layout.start != record::StartMethod::DarkStart) {
        return layout.layout.flooded;
    }
    for (const Entry& entry : layout.entries) {
        const bool plants = entry.kind == EntryKind::Addition && isAboutPlants(entry);
        const bool light = entry.kind == EntryKind::LightChange && entry.amount.value_or(0.0) > 0.0;
        if ((plants || light) && !entry.planned && entry.at <= at) {
            return entry.at;
        }
    }
    return std::nullopt;
}

bool isPlanted(const record::LayoutRecord& layout, const record::Moment& at)
{
    return plantedAt(layout, at).has_value();
}

} // namespace littoral::care
