// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"

#include <QHash>
#include <QString>
#include <QStringList>
#include <optional>

namespace littoral::exchange {

/// The names that files use for tanks, source waters and kits, looked up without regard to case. A kit's name belongs
/// to its parameter: one maker's box often holds several kits.
class NameBook final
{
public:
    NameBook() = default;
    explicit NameBook(const record::Row& row);

    void add(const record::Tank& tank);
    void add(const record::SourceWater& source);
    void add(const record::TestKit& kit);

    [[nodiscard]] std::optional<record::TankId> tank(const QString& name) const;
    [[nodiscard]] std::optional<record::SourceWaterId> source(const QString& name) const;
    struct Kit
    {
        record::KitId id;
        QString unit;
    };
    [[nodiscard]] std::optional<Kit> kit(const QString& name, const QString& parameter) const;

    [[nodiscard]] QString nameOf(record::TankId id) const; ///< empty when unknown
    [[nodiscard]] QString nameOf(record::SourceWaterId id) const;
    [[nodiscard]] QString nameOf(record::KitId id) const;

    /// "There is no tank "X". ..." with the nearest name, or the names there are.
    [[nodiscard]] QString noTank(const QString& name) const;
    [[nodiscard]] QString noSource(const QString& name) const;
    [[nodiscard]] QString noKit(const QString& name, const QString& parameter) const;

private:
    QHash<QString, record::TankId> m_tanks;
    QHash<QString, record::SourceWaterId> m_sources;
    QHash<QString, Kit> m_kits;
    QHash<qint64, QString> m_tankNames, m_sourceNames, m_kitNames;
    QStringList m_kitParameters; ///< "parameter\nname", for suggestions
};

/// The name most like `wanted` by edit distance, if any is near enough to be a slip of the hand.
[[nodiscard]] std::optional<QString> nearestName(const QString& wanted, const QStringList& names);

} // namespace littoral::exchange
