// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/tank_document.h"

#include "core/base/check.h"

#include <QHash>
#include <algorithm>

namespace littoral::exchange {

namespace {

/// Gives the records that are used their document ids, in the order in which they turn up.
template <typename T> class Used final
{
public:
    explicit Used(std::vector<T>& out)
        : m_out(out)
    {
    }

    auto take(const T* record)
    {
        using Id = decltype(record->id);
        if (record == nullptr) {
            return Id{};
        }
        const auto known = m_ids.constFind(record->id.value);
        if (known != m_ids.cend()) {
            return Id{*known};
        }
        T copy = *record;
        copy.id.value = -static_cast<qint64>(m_out.size()) - 1;
        makeNameOwn(copy);
        m_ids.insert(record->id.value, copy.id.value);
        const Id id = copy.id;
        m_out.push_back(std::move(copy));
        return id;
    }

private:
    static QString group(const record::TestKit& kit) { return kit.parameter; }
    static QString group(const record::SourceWater&) { return {}; }

    /// Records refer to each other by name in a file, so two lots of one kit need two names.
    void makeNameOwn(T& record) const
    {
        const QString name = record.name.isEmpty() ? QStringLiteral("unnamed") : record.name;
        const auto taken = [&](const T& other) {
            return group(other) == group(record) && other.name.compare(record.name, Qt::CaseInsensitive) == 0;
        };
        record.name = name;
        for (int n = 2; std::ranges::any_of(m_out, taken); ++n) {
            record.name = QStringLiteral("%1 (%2)").arg(name, QString::number(n));
        }
    }

    std::vector<T>& m_out;
    QHash<qint64, qint64> m_ids;
};

/// Copies layouts into a document, giving every record its document id.
class Collector final
{
public:
    Collector(const record::Row& row, TankDocument& document)
        : m_row(row)
        , m_document(document)
        , m_sources(document.sources)
        , m_kits(document.kits)
    {
    }

    void add(const record::LayoutRecord& original)
    {
        record::LayoutRecord copy = original;
        copy.layout.id.value = -static_cast<qint64>(m_document.layouts.size()) - 1;
        copy.layout.tank = m_document.tank.id;
        copy.layout.source = takeSource(copy.layout.source);
        settleRecords(copy);
        // Kits the forecast would take the next readings to come from, though none came from them yet.
        for (const record::Parameter& parameter : record::parameters()) {
            m_kits.take(m_row.kitFor(original, parameter.key));
        }
        m_document.layouts.push_back(std::move(copy));
    }

private:
    template <typename T> void settle(T& record, const record::LayoutRecord& layout, qint64 id)
    {
        record.id.value = id;
        record.tank = m_document.tank.id;
        record.layout = layout.layout.id;
    }

    void settleRecords(record::LayoutRecord& copy)
    {
        for (record::Reading& reading : copy.readings) {
            settle(reading, copy, --m_lastReading);
            reading.kit = m_kits.take(m_row.kit(reading.kit));
        }
        QHash<qint64, qint64> entryIds;
        for (record::Entry& entry : copy.entries) {
            entryIds.insert(entry.id.value, --m_lastEntry);
            settle(entry, copy, m_lastEntry);
            entry.source = takeSource(entry.source);
        }
        qint64 lastTask = 0;
        for (record::Task& task : copy.tasks) {
            settle(task, copy, --lastTask);
            task.closedBy.value = entryIds.value(task.closedBy.value, 0);
        }
        qint64 lastRegimen = 0;
        for (record::DoseRegimen& regimen : copy.regimens) {
            settle(regimen, copy, --lastRegimen);
        }
    }

    /// With the parts of a blend, which have to be in the file as well.
    record::SourceWaterId takeSource(record::SourceWaterId id)
    {
        const record::SourceWater* original = m_row.source(id);
        const std::size_t before = m_document.sources.size();
        const record::SourceWaterId taken = m_sources.take(original);
        if (m_document.sources.size() > before) {
            const record::SourceWaterId first = takeSource(original->firstPart);
            const record::SourceWaterId second = takeSource(original->secondPart);
            m_document.sources[before].firstPart = first;
            m_document.sources[before].secondPart = second;
        }
        return taken;
    }

    const record::Row& m_row;
    TankDocument& m_document;
    Used<record::SourceWater> m_sources;
    Used<record::TestKit> m_kits;
    qint64 m_lastReading = 0;
    qint64 m_lastEntry = 0;
};

} // namespace

bool TankDocument::operator==(const TankDocument& other) const
{
    const auto same = [](const record::LayoutRecord& a, const record::LayoutRecord& b) {
        return a.layout == b.layout && a.readings == b.readings && a.entries == b.entries && a.tasks == b.tasks &&
               a.regimens == b.regimens;
    };
    return tank == other.tank && std::ranges::equal(layouts, other.layouts, same) && sources == other.sources &&
           kits == other.kits && targets == other.targets && otherTanks == other.otherTanks;
}

TankDocument tankDocument(const record::Row& row, record::TankId id)
{
    const record::Tank* tank = row.tank(id);
    LITTORAL_CHECK(tank != nullptr);
    TankDocument document;
    document.tank = *tank;
    document.tank.id.value = -1;
    document.tank.position = 0;
    Collector collector(row, document);
    for (const record::LayoutRecord* layout : row.layoutsOf(id)) {
        collector.add(*layout);
    }
    for (record::Target target : row.targets) {
        if (target.tank == id) {
            target.id.value = -static_cast<qint64>(document.targets.size()) - 1;
            target.tank = document.tank.id;
            document.targets.push_back(std::move(target));
        }
    }
    return document;
}

} // namespace littoral::exchange
