// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facts/fact_book.h"

#include <QString>
#include <QStringList>
#include <vector>

/// The cautions of the file of facts as people read them. Ids that are not known are left out: a template of the
/// keeper's own may name one that is gone.
namespace littoral::wording {

struct CautionText
{
    QString id, title;
    QStringList points;
};

/// What must have been read before the action itself; the guide has the rest.
[[nodiscard]] std::vector<CautionText> cautionsBefore(const facts::FactBook& book, const QStringList& ids);
/// Every point.
[[nodiscard]] std::vector<CautionText> wholeCautions(const facts::FactBook& book, const QStringList& ids);
/// One paragraph: "Household bleach. Keep it apart ... Wear gloves ..."
[[nodiscard]] QString cautionText(const CautionText& caution);
/// For places with room for a line or two: the most telling point of each, one after another; empty for no ids.
[[nodiscard]] QString cautionLine(const facts::FactBook& book, const QStringList& ids);

} // namespace littoral::wording
