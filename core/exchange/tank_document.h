// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/name_book.h"
#include "core/exchange/problems.h"
#include "core/record/row.h"

#include <QByteArray>
#include <QHash>
#include <QString>
#include <optional>
#include <vector>

namespace littoral::exchange {

inline constexpr int kTankFormatVersion = 1;

/// One tank with all that belongs to it, apart from any store. Records refer to each other by ids of the document's
/// own, which are below zero; an id above zero is one of the row it was read for (another tank that media came from).
struct TankDocument
{
    record::Tank tank;
    std::vector<record::LayoutRecord> layouts; ///< oldest first
    std::vector<record::SourceWater> sources;
    std::vector<record::TestKit> kits;
    std::vector<record::Target> targets;
    /// By entry: the name of another tank that media came from or went to, where the row it was read for has none of
    /// that name (yet: it may come with the next file).
    QHash<qint64, QString> otherTanks;
    QStringList remarks; ///< what was taken for granted, in words

    bool operator==(const TankDocument&) const;
};

/// A tank of the row as a document: its layouts, readings, entries, tasks, targets, and the source waters and kits it
/// uses. The tank must be in the row.
[[nodiscard]] TankDocument tankDocument(const record::Row& row, record::TankId tank);

/// The document as JSON ("littoral-tank", version 1); resources/formats.md has every key. `row` names the other tanks.
[[nodiscard]] QByteArray tankJson(const TankDocument& document, const NameBook& row);

/// Reads a tank file. Every problem is added to `problems` with its path; the result is there only when there were
/// none. `now` is when records count as entered that do not say so.
[[nodiscard]] std::optional<TankDocument> readTankJson(const QByteArray& bytes, const QString& fileName,
                                                       const NameBook& row, const record::Moment& now,
                                                       Problems& problems);

} // namespace littoral::exchange
