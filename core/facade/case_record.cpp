// SPDX-License-Identifier: GPL-3.0-or-later
// From an item of evidence back to the lines of the record it rests on, and from an answer to its entry.
#include "core/care/events.h"
#include "core/facade/case_file.h"

#include <algorithm>

namespace littoral::facade {

using namespace Qt::StringLiterals;
using facts::EvidenceKey;
using facts::KeyKind;
using record::Entry;
using record::EntryKind;

namespace {

class Finder
{
public:
    explicit Finder(const record::LayoutRecord& layout)
        : m_layout(layout)
    {
    }

    template <typename Is> void entries(const Is& is)
    {
        for (const Entry& entry : m_layout.entries) {
            if (!entry.planned && is(entry)) {
                m_found.push_back({entry.id, {}, entry.at.utcMs()});
            }
        }
    }
    template <typename Is> void readings(const Is& is)
    {
        for (const record::Reading& reading : m_layout.readings) {
            if (is(reading)) {
                m_found.push_back({{}, reading.id, reading.at.utcMs()});
            }
        }
    }
    [[nodiscard]] std::vector<RecordRef> found()
    {
        std::ranges::stable_sort(m_found, {}, &RecordRef::at);
        return std::move(m_found);
    }

private:
    const record::LayoutRecord& m_layout;
    std::vector<RecordRef> m_found;
};

/// Parameters a reckoned number is made from; empty: not from readings.
QStringList parametersOf(const QString& key)
{
    static const std::vector<std::pair<QString, QStringList>> made{{u"nh3_n"_s, {u"tan"_s, u"ph"_s, u"temp"_s}},
                                                                   {u"co2_swing"_s, {u"ph"_s}},
                                                                   {u"gh_change"_s, {u"gh"_s}},
                                                                   {u"tds_change_pct"_s, {u"tds"_s, u"ec"_s}},
                                                                   {u"temp_minus_set"_s, {u"temp"_s}},
                                                                   {u"temp_drop"_s, {u"temp"_s}},
                                                                   {u"temp_jump"_s, {u"temp"_s}},
                                                                   {u"ca_mg_ratio"_s, {u"ca"_s, u"mg"_s}},
                                                                   {u"flow_pct"_s, {u"flow"_s}}};
    const auto found = std::ranges::find(made, key, &std::pair<QString, QStringList>::first);
    return found == made.end() ? QStringList() : found->second;
}

void findNumber(Finder& finder, const EvidenceKey& key, const record::Moment& at)
{
    const QStringList parameters = parametersOf(key.key);
    finder.readings([&](const record::Reading& reading) {
        return parameters.contains(reading.parameter) && std::abs(record::daysBetween(reading.at, at)) < 1.0;
    });
    finder.entries([&](const Entry& entry) {
        const bool own = entry.subject.startsWith(key.key + u'=');
        const bool change = key.key.startsWith(u"wc_"_s) && entry.kind == EntryKind::WaterChange;
        const bool light = (key.key == u"photo_h"_s || key.key == u"dli"_s) && entry.kind == EntryKind::LightChange;
        const bool loss = key.key.startsWith(u"loss"_s) && entry.kind == EntryKind::Loss;
        const double reach = key.key == u"wc_frac_7d"_s ? 7.0 : loss ? 30.0 : 0.01;
        const double before = record::daysBetween(entry.at, at);
        return (own || change || light || loss) && before >= -0.01 && before <= reach;
    });
}

} // namespace

std::vector<RecordRef> recordOf(const findings::Judged& judged, const facts::FactBook& book,
                                const record::LayoutRecord& layout)
{
    const record::Moment& at = judged.known.at;
    if (!at.isValid()) {
        return {};
    }
    Finder finder(layout);
    const EvidenceKey* key = judged.item == nullptr ? nullptr : book.key(judged.item->key);
    if (key == nullptr || key->kind == KeyKind::Sight) {
        const QString subject = judged.item == nullptr ? judged.named : judged.item->key;
        finder.entries([&](const Entry& entry) {
            return entry.kind == EntryKind::Observation && entry.subject == subject && entry.at == at;
        });
        return finder.found();
    }
    switch (key->kind) {
    case KeyKind::Reading:
        finder.readings(
            [&](const record::Reading& reading) { return reading.parameter == key->parameter && reading.at == at; });
        break;
    case KeyKind::Tick:
        finder.entries([&](const Entry& entry) {
            const bool own = entry.subject.startsWith(key->key + u'=') && entry.at.localDate() == at.localDate();
            return entry.kind == EntryKind::Observation && (own || (entry.at == at && !entry.subject.contains(u'=')));
        });
        break;
    case KeyKind::Event:
        finder.entries([&](const Entry& entry) { return entry.at == at && entry.kind != EntryKind::Observation; });
        break;
    default:
        findNumber(finder, *key, at);
    }
    return finder.found();
}

record::Entry answerEntry(const record::Row& row, record::LayoutId layout, const QString& subject,
                          const record::Moment& at)
{
    record::Entry entry;
    const record::LayoutRecord* found = row.layout(layout);
    entry.tank = found == nullptr ? record::TankId{} : found->layout.tank;
    entry.layout = layout;
    entry.kind = EntryKind::Observation;
    entry.at = at;
    entry.subject = subject;
    return entry;
}

} // namespace littoral::facade
