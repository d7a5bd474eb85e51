// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/object_reader.h"
#include "core/exchange/tank_document.h"

namespace littoral::exchange {

/// Builds a TankDocument from the parsed top object of a tank file. Used once. Complaints go through the ObjectReaders.
class TankJsonReader final
{
public:
    TankJsonReader(const NameBook& row, record::Moment now);

    [[nodiscard]] TankDocument read(ObjectReader& top);

private:
    void readTank(ObjectReader& top);
    record::SourceWaterId addSource(ObjectReader& object);
    [[nodiscard]] std::optional<double> readNitrate(ObjectReader& object);
    void takeParts(ObjectReader& object, std::size_t source);
    /// Once all waters are known: a blend may stand before its parts.
    void settleParts(ObjectReader& top);
    void readKit(ObjectReader& object);
    [[nodiscard]] std::vector<double> readSteps(ObjectReader& object);
    [[nodiscard]] QDate readDay(ObjectReader& object, const QString& key);
    void readTarget(ObjectReader& object);
    void readLayout(ObjectReader& object);
    void readSetup(ObjectReader& object, record::Layout& layout);
    void readBed(ObjectReader& object, record::Layout& layout);
    void readWater(ObjectReader& object, record::Layout& layout);
    /// A day count is taken only where `flooded` is known.
    [[nodiscard]] std::optional<record::Moment> readInstant(ObjectReader& object, const QString& key,
                                                            const record::Moment& flooded);
    void takeReading(ObjectReader& item, record::LayoutRecord& layout);
    void takeEntry(ObjectReader& item, record::LayoutRecord& layout, std::optional<double> net_L);
    void takeTask(ObjectReader& item, record::LayoutRecord& layout);
    void takeRegimen(ObjectReader& item, record::LayoutRecord& layout);
    void takeRegimenDays(ObjectReader& item, record::DoseRegimen& regimen);

    struct Part
    {
        std::size_t source = 0; ///< place of the blend in the document
        bool first = true;
        QString name;
    };

    NameBook m_names;
    record::Moment m_now;
    TankDocument m_document;
    std::vector<Part> m_parts;
    qint64 m_lastReading = 0;
    qint64 m_lastEntry = 0;
    bool m_exported = false; ///< written by an export: what the store holds comes back, also without litres
};

} // namespace littoral::exchange
