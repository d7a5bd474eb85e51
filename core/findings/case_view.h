// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facts/fact_book.h"
#include "core/record/row.h"

#include <map>
#include <optional>
#include <set>

namespace littoral::findings {

/// What is known about one key of evidence at the time of asking.
struct Known
{
    bool number = false;
    double value = 0.0; ///< in the unit of the key
    double low = 0.0;   ///< what the reading allows; equal to value when it is exact
    double high = 0.0;
    QStringList ticks; ///< values ticked on the newest day the key was looked at
    record::Moment at; ///< when it was read or seen; not valid: the layout tells it

    [[nodiscard]] static Known exactly(double value, const record::Moment& at)
    {
        return {true, value, value, value, {}, at};
    }
};

/// One layout at one time as evidence sees it: readings in the units of the rules, what the keeper ticked (observations
/// whose subject is "key=value"), what the record tells by itself, events and severities. Everything older than its key
/// allows is not known.
class CaseView final
{
public:
    /// The view is a value of its own; `book` has to outlive it.
    CaseView(const facts::FactBook& book, const record::Row& row, const record::LayoutRecord& layout,
             const record::Moment& at);

    [[nodiscard]] const Known* known(const QString& key) const; ///< nullptr: nobody looked, or too long ago
    /// When it last happened; nothing when it is not on record.
    [[nodiscard]] std::optional<record::Moment> lastEvent(const QString& key) const;
    struct Severity
    {
        int level = 0;
        record::Moment at;
    };
    /// Newest severity of a subject seen in the last 14 days.
    [[nodiscard]] std::optional<Severity> severity(const QString& subject) const;
    [[nodiscard]] double ageDays() const { return m_ageDays; }
    [[nodiscard]] bool hasEntries() const { return m_hasEntries; } ///< a record without any is silent, not eventless
    [[nodiscard]] const record::Moment& at() const { return m_at; }
    [[nodiscard]] const facts::FactBook& book() const { return *m_book; }

    /// The same with one key known otherwise: for asking what a check would change.
    [[nodiscard]] CaseView with(const QString& key, Known known) const;

private:
    void readParameters(const record::LayoutRecord& layout);
    void readTicks(const record::LayoutRecord& layout);
    void readHints(const record::LayoutRecord& layout);
    void readLayout(const record::Row& row, const record::LayoutRecord& layout);
    void readEvents(const record::Row& row, const record::LayoutRecord& layout);
    void tell(const QString& key, const QString& value); ///< of the layout itself
    [[nodiscard]] bool isFresh(const facts::EvidenceKey& key, const record::Moment& then) const;

    const facts::FactBook* m_book;
    record::Moment m_at;
    double m_ageDays = 0.0;
    bool m_hasEntries = false;
    std::map<QString, Known> m_known;
    std::map<QString, record::Moment> m_events;
    std::map<QString, Severity> m_seen;
};

/// The numbers that are reckoned from the record, each as its key in evidence.json says; only those that can be.
[[nodiscard]] std::map<QString, Known> reckonedNumbers(const record::LayoutRecord& layout, const record::Moment& at);

} // namespace littoral::findings
