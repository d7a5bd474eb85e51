// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/case_view.h"

#include "core/care/events.h"
#include "core/care/stock.h"

#include <QRegularExpression>
#include <algorithm>

namespace littoral::findings {

using namespace Qt::StringLiterals;
using facts::EvidenceKey;
using facts::KeyKind;
using record::Entry;
using record::EntryKind;

namespace {

constexpr double kSeverityDays = 14.0;

bool isDone(const Entry& entry, const record::Moment& at)
{
    return !entry.planned && entry.at <= at;
}

/// "wipes_off=easy" of an observation; nothing of any other entry.
std::optional<std::pair<QString, QString>> tickOf(const Entry& entry)
{
    static const QRegularExpression form(u"^([a-z0-9_]+)=(\\S+)$"_s);
    const auto match = form.match(entry.subject.trimmed());
    if (entry.kind != EntryKind::Observation || !match.hasMatch()) {
        return std::nullopt;
    }
    return std::pair(match.captured(1), match.captured(2));
}

QString startValue(record::StartMethod start)
{
    switch (start) {
    case record::StartMethod::MatureMedia:
        return u"mature_media"_s;
    case record::StartMethod::Starter:
        return u"starter"_s;
    case record::StartMethod::DryStart:
        return u"dry_start"_s;
    case record::StartMethod::DarkStart:
        return u"dark_start"_s;
    case record::StartMethod::NewMedia:
        break;
    }
    return u"new_media"_s;
}

QString bedValue(record::Bed bed)
{
    switch (bed) {
    case record::Bed::MildSoil:
        return u"mild"_s;
    case record::Bed::SpentSoil:
        return u"spent"_s;
    case record::Bed::Inert:
        return u"inert"_s;
    case record::Bed::RichSoil:
        break;
    }
    return u"rich"_s;
}

QString co2Value(record::Co2Mode mode)
{
    return mode == record::Co2Mode::Pressurised ? u"pressurised"_s
           : mode == record::Co2Mode::Other     ? u"other"_s
                                                : u"none"_s;
}

QString sourceValue(record::SourceKind kind)
{
    return kind == record::SourceKind::Tap ? u"tap"_s : kind == record::SourceKind::Blend ? u"blend"_s : u"pure"_s;
}

/// A change made with another source than the change before it is a change of source, whether or not it was noted so.
std::optional<record::Moment> lastSourceSwitch(const record::LayoutRecord& layout, const record::Moment& at)
{
    record::SourceWaterId before = layout.layout.source;
    std::optional<record::Moment> last;
    for (const Entry& entry : layout.entries) {
        if (entry.kind != EntryKind::WaterChange || !isDone(entry, at) || !entry.source) {
            continue;
        }
        if (before && entry.source != before) {
            last = entry.at;
        }
        before = entry.source;
    }
    return last;
}

bool tellsOf(const EvidenceKey& key, const Entry& entry)
{
    if (!key.subjects.isEmpty()) {
        return key.subjects.contains(entry.subject, Qt::CaseInsensitive);
    }
    return key.entries.contains(record::entryKindCode(entry.kind));
}

} // namespace

CaseView::CaseView(const facts::FactBook& book, const record::Row& row, const record::LayoutRecord& layout,
                   const record::Moment& at)
    : m_book(&book)
    , m_at(at)
    , m_ageDays(record::daysBetween(layout.layout.flooded, at))
{
    readLayout(row, layout);
    readParameters(layout);
    for (const auto& [key, known] : reckonedNumbers(layout, at)) {
        m_known[key] = known;
    }
    readHints(layout);
    readTicks(layout);
    readEvents(row, layout);
}

const Known* CaseView::known(const QString& key) const
{
    const auto found = m_known.find(key);
    return found == m_known.end() ? nullptr : &found->second;
}

std::optional<record::Moment> CaseView::lastEvent(const QString& key) const
{
    const auto found = m_events.find(key);
    return found == m_events.end() ? std::nullopt : std::optional(found->second);
}

std::optional<CaseView::Severity> CaseView::severity(const QString& subject) const
{
    const auto found = m_seen.find(subject);
    return found == m_seen.end() ? std::nullopt : std::optional(found->second);
}

CaseView CaseView::with(const QString& key, Known known) const
{
    CaseView other = *this;
    other.m_known[key] = std::move(known);
    return other;
}

bool CaseView::isFresh(const EvidenceKey& key, const record::Moment& then) const
{
    return then <= m_at && (key.days == 0 || record::daysBetween(then, m_at) <= key.days);
}

void CaseView::readParameters(const record::LayoutRecord& layout)
{
    for (const EvidenceKey& key : m_book->keys) {
        if (key.kind != KeyKind::Reading) {
            continue;
        }
        const record::Reading* reading = layout.newest(key.parameter, m_at);
        const record::Parameter* parameter = record::findParameter(key.parameter);
        const record::Unit* unit = parameter == nullptr ? nullptr : parameter->unit(key.unit);
        if (reading == nullptr || unit == nullptr || !isFresh(key, reading->at)) {
            continue;
        }
        const bool exact = reading->censoring == record::Censoring::None;
        const double high = reading->censoring == record::Censoring::Above ? parameter->highest : reading->high;
        m_known[key.key] = {true,
                            unit->fromCanonical(reading->value),
                            unit->fromCanonical(exact ? reading->value : reading->low),
                            unit->fromCanonical(exact ? reading->value : high),
                            {},
                            reading->at};
    }
}

void CaseView::readTicks(const record::LayoutRecord& layout)
{
    std::map<QString, QDate> newest;
    for (const Entry& entry : layout.entries) {
        const auto tick = tickOf(entry);
        const EvidenceKey* key = tick && isDone(entry, m_at) ? m_book->key(tick->first) : nullptr;
        if (key == nullptr || !isFresh(*key, entry.at)) {
            continue;
        }
        if (key->kind == KeyKind::Number) {
            bool read = false;
            const double value = tick->second.toDouble(&read);
            if (read && value >= key->low && value <= key->high) {
                m_known[key->key] = Known::exactly(value, entry.at);
            }
        } else if (key->kind == KeyKind::Tick && key->hasValue(tick->second)) {
            const QDate day = entry.at.localDate();
            Known& known = m_known[key->key];
            if (newest[key->key] != day) {
                known = {};
                newest[key->key] = day;
            }
            known.at = entry.at;
            known.ticks << tick->second;
        }
    }
}

void CaseView::readHints(const record::LayoutRecord& layout)
{
    for (const EvidenceKey& key : m_book->keys) {
        if (key.words.empty()) {
            continue;
        }
        for (const Entry& entry : layout.entries) {
            const bool looked = entry.kind == EntryKind::Observation && isDone(entry, m_at) && isFresh(key, entry.at) &&
                                entry.severity.value_or(1) > 0 && !tickOf(entry);
            for (const auto& [value, hints] : key.words) {
                const bool said = looked && std::ranges::any_of(hints, [&](const QString& word) {
                                      return entry.where.contains(word, Qt::CaseInsensitive);
                                  });
                if (said) {
                    Known& known = m_known[key.key];
                    known.at = entry.at;
                    if (!known.ticks.contains(value)) {
                        known.ticks << value;
                    }
                }
            }
        }
    }
}

void CaseView::tell(const QString& key, const QString& value)
{
    Known known;
    known.ticks << value;
    m_known[key] = known;
}

void CaseView::readLayout(const record::Row& row, const record::LayoutRecord& layout)
{
    const record::Layout& facts = layout.layout;
    tell(u"start"_s, startValue(facts.start));
    tell(u"soil"_s, bedValue(facts.bed));
    tell(u"co2_mode"_s, co2Value(facts.co2));
    if (facts.rock_kg > 0.0) {
        tell(u"rock"_s, facts.rockHardens ? u"hardening"_s : u"inert"_s);
    }
    const Entry* change = layout.lastDone(EntryKind::WaterChange, m_at);
    const record::SourceWater* source = row.source(change != nullptr && change->source ? change->source : facts.source);
    if (source != nullptr) {
        tell(u"source"_s, sourceValue(source->kind));
    }
    const care::Stock stock = care::stockAt(layout, m_at);
    if (stock.any()) {
        const bool only = std::ranges::all_of(stock.animals, [](const care::Animals& animals) {
            return animals.subject.contains(u"shrimp"_s, Qt::CaseInsensitive) ||
                   animals.subject.contains(u"snail"_s, Qt::CaseInsensitive);
        });
        tell(u"shrimp_only"_s, only ? u"yes"_s : u"no"_s);
    }
    for (const record::Reading& reading : layout.readings) {
        const record::TestKit* kit = reading.kit ? row.kit(reading.kit) : nullptr;
        const bool recent = reading.at <= m_at && record::daysBetween(reading.at, m_at) <= 7.0;
        if (kit != nullptr && recent && kit->expires.isValid() && kit->expires < reading.at.localDate()) {
            tell(u"kit_expired"_s, u"yes"_s);
        }
    }
}

void CaseView::readEvents(const record::Row& row, const record::LayoutRecord& layout)
{
    for (const Entry& entry : layout.entries) {
        if (!isDone(entry, m_at)) {
            continue;
        }
        m_hasEntries = m_hasEntries || entry.kind != EntryKind::Observation;
        if (entry.kind == EntryKind::Observation && entry.severity &&
            record::daysBetween(entry.at, m_at) <= kSeverityDays) {
            m_seen[entry.subject] = {*entry.severity, entry.at};
        }
        for (const EvidenceKey& key : m_book->keys) {
            if (key.kind == KeyKind::Event && key.event.isEmpty() && tellsOf(key, entry)) {
                m_events[key.key] = entry.at;
            }
        }
    }
    for (const EvidenceKey& key : m_book->keys) {
        const auto event = care::eventFromCode(key.event);
        if (key.kind != KeyKind::Event || !event) {
            continue;
        }
        const auto all = care::occurrences(row, layout, *event, m_at);
        if (!all.empty()) {
            m_events[key.key] = all.back()->at;
        }
        if (*event == care::Event::SourceChange) {
            const auto switched = lastSourceSwitch(layout, m_at);
            if (switched && (all.empty() || all.back()->at < *switched)) {
                m_events[key.key] = *switched;
            }
        }
    }
}

} // namespace littoral::findings
