// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/gates.h"

#include <QJsonObject>
#include <QStringList>

/// Gates as the keeper has set them, over the program's own.
namespace littoral::care {

/// Setting of the store that holds the keeper's own version of a gate: one object as in gates.json, with the key under
/// "id" as all the keeper's records have it.
[[nodiscard]] QString gateSetting(const QString& key); ///< "fact.gate.KEY"
/// Reads one such object; the error says what, where and how to mend it.
[[nodiscard]] Result<GateDefinition> readGate(const QString& place, const QString& key, const QJsonObject& object);
/// A gate as such an object.
[[nodiscard]] QJsonObject gateObject(const GateDefinition& gate);

struct GateSet
{
    GateBook book;
    QStringList own;             ///< keys of the gates that are the keeper's
    std::vector<Error> problems; ///< the keeper's gates that could not be used
};
/// The program's own with the keeper's put over them.
[[nodiscard]] GateSet gateSet(const record::Row& row);
[[nodiscard]] GateBook gatesOf(const record::Row& row);

} // namespace littoral::care
