// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/units.h"

#include <QCoreApplication>

namespace littoral::facade {

Result<void> setUnits(Keeper& keeper, const record::Units& units)
{
    store::Edit edit(QCoreApplication::translate("littoral::facade::Keeper", "units"));
    const QMap<QString, QString> settings = record::settingsOf(units);
    for (auto it = settings.begin(); it != settings.end(); ++it) {
        if (keeper.row().settings.value(it.key()) != it.value()) {
            edit.set(it.key(), it.value());
        }
    }
    return keeper.commit(edit);
}

} // namespace littoral::facade
