// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/age.h"
#include "core/facade/case_parts.h"
#include "core/facade/lane_parts.h"
#include "core/wording/entry_words.h"
#include "core/wording/numbers.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <set>

namespace littoral::facade {

using namespace Qt::StringLiterals;

namespace {

constexpr std::size_t kLeastPoints = 2;
const QString kCover = u"cover:"_s;

QString words(const char* text)
{
    return QCoreApplication::translate("CaseFile", text);
}

LaneSeries lineOf(const record::Row& row, const record::LayoutRecord& layout, const QString& key)
{
    return key.startsWith(kCover) ? coverSeries(layout, key.mid(kCover.size())).series
                                  : seriesOf(row, layout, key, nullptr);
}

AgeLine agesOf(const record::Row& row, const record::LayoutRecord& layout, const QString& key, const record::Moment& at)
{
    AgeLine line;
    line.name = layoutTitle(row, layout);
    const qint64 flooded = layout.layout.flooded.utcMs();
    for (const LaneMark& mark : lineOf(row, layout, key).marks) {
        if (mark.at <= at.utcMs() && mark.at >= flooded) {
            line.points.emplace_back(static_cast<double>(mark.at - flooded) / 86'400'000.0, mark.value);
        }
    }
    return line;
}

QStringList keysOf(const record::LayoutRecord& layout)
{
    QStringList keys;
    std::set<QString> subjects;
    for (const record::Entry& entry : layout.entries) {
        if (entry.kind == record::EntryKind::Observation && entry.coverage && subjects.insert(entry.subject).second) {
            keys << kCover + entry.subject;
        }
    }
    for (const record::Parameter& parameter : record::parameters()) {
        if (layout.readingsOf(parameter.key).size() >= kLeastPoints) {
            keys << parameter.key;
        }
    }
    return keys;
}

QString nameOf(const QString& key)
{
    return key.startsWith(kCover) ? words("Cover of %1").arg(wording::subjectText(key.mid(kCover.size())))
                                  : wording::parameterName(key);
}

/// Straight between the readings on either side; nothing outside them.
std::optional<double> valueAt(const AgeLine& line, double age)
{
    const auto next = std::ranges::lower_bound(line.points, age, {}, &std::pair<double, double>::first);
    if (next == line.points.end() || (next == line.points.begin() && next->first > age)) {
        return std::nullopt;
    }
    if (next->first == age || next == line.points.begin()) {
        return next->second;
    }
    const auto before = std::prev(next);
    const double share = (age - before->first) / (next->first - before->first);
    return before->second + share * (next->second - before->second);
}

struct Candidate
{
    const record::LayoutRecord* layout = nullptr;
    AgeLine line;
    bool sameBed = false, reaches = false;
};

std::vector<Candidate> candidates(const record::Row& row, const record::LayoutRecord& own, const QString& key,
                                  double age, const record::Moment& at)
{
    std::vector<Candidate> all;
    for (const auto& [id, layout] : row.layouts) {
        if (id == own.layout.id) {
            continue;
        }
        AgeLine line = agesOf(row, layout, key, at);
        if (line.points.size() >= kLeastPoints) {
            const bool reaches = line.points.back().first >= age;
            all.push_back({&layout, std::move(line), layout.layout.bed == own.layout.bed, reaches});
        }
    }
    std::ranges::stable_sort(all, [](const Candidate& a, const Candidate& b) {
        if (a.reaches != b.reaches) {
            return a.reaches;
        }
        if (a.sameBed != b.sameBed) {
            return a.sameBed;
        }
        return a.line.points.size() > b.line.points.size();
    });
    return all;
}

QString figure(const Comparison& made, double value)
{
    const QString number = wording::numberText(value, made.decimals);
    return made.unitLabel.isEmpty() ? number : words("%1 %2").arg(number, made.unitLabel);
}

QStringList say(const Comparison& made, const Candidate& other)
{
    QStringList said;
    const auto& [age, value] = made.own.points.back();
    const QString day = wording::ageText(static_cast<int>(std::floor(age)));
    if (const auto then = valueAt(made.other, age)) {
        said << words("On %1 %2 stood at %3; %4 stood at %5 at that age.")
                    .arg(day, made.own.name, figure(made, value), made.other.name, figure(made, *then));
    } else {
        said << words("%1 has nothing on record at %2, so only the earlier part compares.").arg(made.other.name, day);
    }
    if (!other.sameBed) {
        said << words("The two stand on different beds.");
    }
    said << words("This is one tank beside one other: a difference between them may be chance.");
    return said;
}

} // namespace

QString layoutTitle(const record::Row& row, const record::LayoutRecord& layout)
{
    const record::Tank* tank = row.tank(layout.layout.tank);
    const QString name = tank == nullptr ? QString() : tank->name;
    return layout.layout.ended ? words("%1, %2").arg(name, record::layoutName(layout.layout)) : name;
}

StripSeries coverSeries(const record::LayoutRecord& layout, const QString& subject)
{
    StripSeries made;
    made.series.name = words("Cover of %1").arg(wording::subjectText(subject));
    made.series.unitLabel = u"%"_s;
    made.series.decimals = 0;
    for (const record::Entry& entry : layout.entries) {
        if (entry.kind == record::EntryKind::Observation && entry.subject == subject && entry.coverage &&
            !entry.planned) {
            LaneMark mark;
            mark.at = entry.at.utcMs();
            mark.value = *entry.coverage * 100.0;
            mark.sentence = wording::entryText(entry);
            made.series.marks.push_back(mark);
            made.refs.push_back({entry.id, {}, mark.at});
        }
    }
    return made;
}

Comparison comparisonOf(const record::Row& row, const record::LayoutRecord& layout, const CaseRequest& request,
                        const QString& fallback, const record::Moment& at)
{
    Comparison made;
    made.nowAge = record::daysBetween(layout.layout.flooded, at);
    made.onsetAge = record::daysBetween(layout.layout.flooded, request.question.onset);
    for (const QString& key : keysOf(layout)) {
        if (!candidates(row, layout, key, made.nowAge, at).empty()) {
            made.offers.emplace_back(key, nameOf(key));
        }
    }
    if (made.offers.empty()) {
        return made;
    }
    const auto offered = [&](const QString& key) {
        return std::ranges::find(made.offers, key, &std::pair<QString, QString>::first) != made.offers.end();
    };
    const QString seen = kCover + request.question.subject;
    made.key = offered(request.compared) ? request.compared
               : offered(seen)           ? seen
               : offered(fallback)       ? fallback
                                         : made.offers.front().first;
    const std::vector<Candidate> all = candidates(row, layout, made.key, made.nowAge, at);
    for (const Candidate& candidate : all) {
        made.references.emplace_back(candidate.layout->layout.id, candidate.line.name);
    }
    const auto wanted = std::ranges::find_if(
        all, [&](const Candidate& candidate) { return candidate.layout->layout.id == request.reference; });
    const Candidate& other = wanted == all.end() ? all.front() : *wanted;
    const LaneSeries series = lineOf(row, layout, made.key);
    made.name = nameOf(made.key);
    made.unitLabel = series.unitLabel;
    made.decimals = series.decimals;
    made.own = agesOf(row, layout, made.key, at);
    made.other = other.line;
    made.reference = other.layout->layout.id;
    if (made.any()) {
        made.sentences = say(made, other);
    }
    return made;
}

} // namespace littoral::facade
