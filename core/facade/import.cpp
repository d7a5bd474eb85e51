// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/import.h"

#include "core/exchange/csv_import.h"
#include "core/exchange/journeys_csv.h"
#include "core/exchange/tank_document.h"
#include "core/facade/keeper.h"
#include "core/facade/knowledge.h"
#include "core/facade/shelf_exchange.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QHash>
#include <algorithm>

namespace littoral::facade {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Import", text);
}

// Larger than any keeper's record by far; keeps a wrong file from filling the memory.
constexpr qint64 kLargestFile = 256ll * 1024 * 1024;

Result<QByteArray> contents(const QString& path)
{
    QFile file(path);
    if (!file.exists()) {
        return Error{Fault::NotFound, words("There is no such file.").toStdString(), path.toStdString(), {}};
    }
    if (!file.open(QIODevice::ReadOnly)) {
        return Error{Fault::Storage,
                     words("It cannot be read: %1.").arg(file.errorString()).toStdString(),
                     path.toStdString(),
                     {}};
    }
    if (file.size() > kLargestFile) {
        return Error{
            Fault::BadInput, words("It is too large to be a record of tanks.").toStdString(), path.toStdString(), {}};
    }
    return file.readAll();
}

/// What one import gathers before a single change is written. `m_row` is the row as it would be with the tanks gathered
/// so far, so that later files can refer to them.
class Batch final
{
public:
    explicit Batch(Keeper& keeper)
        : m_row(keeper.row())
        , m_now(keeper.clock().now())
        , m_edit(words("import"))
    {
    }

    Result<void> add(const QString& path)
    {
        auto bytes = contents(path);
        if (!bytes) {
            return bytes.error();
        }
        const QString name = QFileInfo(path).fileName();
        if (path.endsWith(u".json"_s, Qt::CaseInsensitive) && isKnowledgeJson(*bytes)) {
            addKnowledge(*bytes, name);
        } else if (path.endsWith(u".json"_s, Qt::CaseInsensitive)) {
            finishCsv();
            isShelfJson(*bytes) ? addShelf(*bytes, name) : addTank(*bytes, name);
        } else if (exchange::isJourneysCsv(*bytes)) {
            addJourneys(*bytes, name);
        } else {
            if (!m_csv) {
                m_csv.emplace(m_row, m_now);
            }
            m_csv->read(*bytes, name);
        }
        return {};
    }

    ImportSummary finish()
    {
        finishCsv();
        finishTanks();
        m_summary.problems = m_problems;
        return m_summary;
    }

    [[nodiscard]] const store::Edit& edit() const { return m_edit; }

private:
    void addKnowledge(const QByteArray& bytes, const QString& name)
    {
        const KnowledgeImport made = readKnowledge(bytes, name, m_row, m_edit);
        m_summary.facts += made.records;
        m_summary.skipped += made.skipped;
        m_problems += made.problems;
    }

    void finishCsv()
    {
        if (!m_csv) {
            return;
        }
        for (const record::Reading& reading : m_csv->readings()) {
            m_edit.put(reading);
        }
        for (const record::Entry& entry : m_csv->entries()) {
            m_edit.put(entry);
        }
        m_summary.readings += static_cast<int>(m_csv->readings().size());
        m_summary.entries += static_cast<int>(m_csv->entries().size());
        m_summary.skipped += m_csv->skipped();
        m_summary.remarks += m_csv->remarks();
        m_problems += m_csv->problems().sentences();
        m_csv.reset();
    }

    void addJourneys(const QByteArray& bytes, const QString& fileName)
    {
        exchange::Problems problems;
        for (record::Journey& journey :
             exchange::readJourneysCsv(bytes, fileName, m_row, m_now, problems, m_summary.skipped)) {
            m_row.journeys.push_back(journey);
            m_edit.put(std::move(journey));
            ++m_summary.journeys;
        }
        m_problems += problems.sentences();
    }

    /// Entries that name a tank of a later file, and after them the tasks, which an entry may have closed.
    void finishTanks()
    {
        for (Waiting& waiting : m_waiting) {
            if (const record::Tank* other = m_row.tankNamed(waiting.otherTank)) {
                waiting.entry.otherTank = other->id;
            } else {
                m_summary.remarks << words(
                                         "There is no tank \"%1\" here; the media transfer with it is kept without it.")
                                         .arg(waiting.otherTank);
            }
            m_edit.put(waiting.entry);
        }
        for (const record::Task& task : m_tasks) {
            m_edit.put(task);
        }
    }

    void addShelf(const QByteArray& bytes, const QString& fileName)
    {
        exchange::Problems problems;
        const ShelfCounts counts = readShelfJson(bytes, fileName, m_row, m_edit, problems);
        m_summary.shelf += counts.added;
        m_summary.skipped += counts.skipped;
        m_problems += problems.sentences();
    }

    void addTank(const QByteArray& bytes, const QString& fileName)
    {
        exchange::Problems problems;
        auto document = exchange::readTankJson(bytes, fileName, exchange::NameBook(m_row), m_now, problems);
        if (document && m_row.tankNamed(document->tank.name) != nullptr) {
            problems.add(words("%1, name").arg(fileName),
                         words("There is a tank \"%1\" already.").arg(document->tank.name));
        }
        m_problems += problems.sentences();
        if (problems.isEmpty()) {
            putTank(std::move(*document), fileName);
        }
    }

    void putTank(exchange::TankDocument document, const QString& fileName)
    {
        for (const QString& remark : std::as_const(document.remarks)) {
            m_summary.remarks << words("%1: %2").arg(fileName, remark);
        }
        document.tank.id = {};
        document.tank.position = 1;
        for (const record::Tank& other : m_row.tanks) {
            document.tank.position = std::max(document.tank.position, other.position + 1);
        }
        record::Tank tank = document.tank;
        tank.id = m_edit.put(tank);
        m_row.tanks.push_back(tank);
        const QHash<qint64, qint64> sources = putSources(document.sources, tank.name);
        const QHash<qint64, qint64> kits =
            putShared(document.kits, m_row.kits, tank.name, [](const auto& kit) { return kit.parameter; });
        for (record::LayoutRecord& layout : document.layouts) {
            putLayout(layout, tank.id, sources, kits, document.otherTanks);
        }
        for (record::Target& target : document.targets) {
            target.id = {};
            target.tank = tank.id;
            m_edit.put(target);
        }
        ++m_summary.tanks;
        m_summary.lastTank = tank.id;
    }

    /// Parts before the blends made of them, so that a blend can be told from one that is there already.
    QHash<qint64, qint64> putSources(std::vector<record::SourceWater>& incoming, const QString& tankName)
    {
        QHash<qint64, qint64> ids;
        std::vector<record::SourceWater> waiting = std::move(incoming);
        const auto isSettled = [&](record::SourceWaterId part) { return part.value >= 0 || ids.contains(part.value); };
        while (!waiting.empty()) {
            auto ready = std::ranges::stable_partition(waiting, [&](const record::SourceWater& water) {
                return !isSettled(water.firstPart) || !isSettled(water.secondPart);
            });
            if (ready.empty()) {
                break; // the reader refused blends of themselves
            }
            std::vector<record::SourceWater> now(ready.begin(), ready.end());
            waiting.erase(ready.begin(), ready.end());
            for (record::SourceWater& water : now) {
                water.firstPart.value = ids.value(water.firstPart.value, water.firstPart.value);
                water.secondPart.value = ids.value(water.secondPart.value, water.secondPart.value);
            }
            ids.insert(putShared(now, m_row.sources, tankName, [](const auto&) { return QString(); }));
        }
        return ids;
    }

    /// Source waters and kits belong to the row: one that is there already, the same in every respect, is used again;
    /// one of the same name that differs is left alone, and the new one is told from it by the tank's name.
    template <typename T, typename Group>
    QHash<qint64, qint64> putShared(std::vector<T>& incoming, std::vector<T>& present, const QString& tankName,
                                    Group group)
    {
        QHash<qint64, qint64> ids;
        for (T& record : incoming) {
            const qint64 documentId = record.id.value;
            const auto sameName = [&](const T& other) {
                return other.name.compare(record.name, Qt::CaseInsensitive) == 0 && group(other) == group(record);
            };
            auto found = std::ranges::find_if(present, sameName);
            if (found != present.end()) {
                record.id = found->id;
                if (record == *found) {
                    ids.insert(documentId, found->id.value);
                    continue;
                }
                record.name = words("%1 (%2)").arg(record.name, tankName);
            }
            record.id = {};
            record.id = m_edit.put(record);
            ids.insert(documentId, record.id.value);
            present.push_back(record);
        }
        return ids;
    }

    void putLayout(record::LayoutRecord& record, record::TankId tank, const QHash<qint64, qint64>& sources,
                   const QHash<qint64, qint64>& kits, const QHash<qint64, QString>& otherTanks)
    {
        const auto settle = [](auto& id, const QHash<qint64, qint64>& ids) {
            id.value = ids.value(id.value, id.value);
        };
        record.layout.id = {};
        record.layout.tank = tank;
        settle(record.layout.source, sources);
        record.layout.id = m_edit.put(record.layout);
        for (record::Reading& reading : record.readings) {
            reading.id = {};
            reading.tank = tank;
            reading.layout = record.layout.id;
            settle(reading.kit, kits);
            reading.id = m_edit.put(reading);
        }
        QHash<qint64, qint64> entryIds;
        for (record::Entry& entry : record.entries) {
            const qint64 documentId = std::exchange(entry.id, {}).value;
            entry.tank = tank;
            entry.layout = record.layout.id;
            settle(entry.source, sources);
            if (const QString other = otherTanks.value(documentId); other.isEmpty()) {
                entry.id = m_edit.put(entry);
            } else {
                entry.id.value = store::Edit::nextId();
                m_waiting.push_back({entry, other});
            }
            entryIds.insert(documentId, entry.id.value);
        }
        for (record::Task& task : record.tasks) {
            task.id = {};
            task.tank = tank;
            task.layout = record.layout.id;
            settle(task.closedBy, entryIds);
            m_tasks.push_back(task);
        }
        for (record::DoseRegimen& regimen : record.regimens) {
            regimen.id = {};
            regimen.tank = tank;
            regimen.layout = record.layout.id;
            regimen.id = m_edit.put(regimen);
        }
        m_summary.readings += static_cast<int>(record.readings.size());
        m_summary.entries += static_cast<int>(record.entries.size());
        m_row.layouts.insert_or_assign(record.layout.id, record);
    }

    record::Row m_row;
    record::Moment m_now;
    store::Edit m_edit;
    std::optional<exchange::CsvImport> m_csv;
    ImportSummary m_summary;
    QStringList m_problems;
    struct Waiting
    {
        record::Entry entry;
        QString otherTank;
    };
    std::vector<Waiting> m_waiting;
    std::vector<record::Task> m_tasks;
};

} // namespace

Result<ImportSummary> importFiles(Keeper& keeper, const QStringList& paths, bool dryRun)
{
    Batch batch(keeper);
    for (const QString& path : paths) {
        if (auto added = batch.add(path); !added) {
            return added.error();
        }
    }
    ImportSummary summary = batch.finish();
    if (dryRun || !summary.problems.isEmpty()) {
        summary.lastTank = {};
    } else {
        if (auto written = keeper.commit(batch.edit()); !written) {
            return written.error();
        }
    }
    return summary;
}

Result<ImportSummary> importCsvFiles(Keeper& keeper, const QStringList& paths, bool dryRun)
{
    for (const QString& path : paths) {
        if (path.endsWith(u".json"_s, Qt::CaseInsensitive)) {
            return Error{
                Fault::BadInput, words("This is a tank file, not a table.").toStdString(), path.toStdString(), {}};
        }
    }
    return importFiles(keeper, paths, dryRun);
}

Result<record::TankId> importTankJson(Keeper& keeper, const QString& path, bool dryRun, ImportSummary* summary)
{
    auto imported = importFiles(keeper, {path}, dryRun);
    if (!imported) {
        return imported.error();
    }
    if (summary != nullptr) {
        *summary = *imported;
    }
    if (!imported->problems.isEmpty()) {
        return Error{Fault::BadInput, imported->problems.front().toStdString(), {}, {}};
    }
    return imported->lastTank;
}

} // namespace littoral::facade
