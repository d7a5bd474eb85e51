// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"
#include "core/sheets/sheet.h"
#include "ui/models/find_model.h"

#include <QMap>
#include <functional>

namespace littoral::ui {

/// What the find-or-do field offers for a worksheet typed with its values ("co2 6.6 4", "target now=33 target=20"): the
/// sheet with its result, its blanks filled as typed and the rest from the tank's record. Sheets are also found by the
/// beginnings of words of their titles.
class BenchOffers
{
public:
    /// Opens a sheet with what was typed, blank by blank.
    using Open = std::function<void(const QString& sheet, const QMap<QString, QString>& typed)>;

    explicit BenchOffers(Open open)
        : m_open(std::move(open))
    {
    }

    [[nodiscard]] std::vector<FindModel::Offer> offers(const QString& text, const record::Row& row, record::TankId tank,
                                                       const record::Moment& now) const;

private:
    [[nodiscard]] FindModel::Offer withValues(const sheets::Sheet& sheet, const QString& text, const record::Row& row,
                                              record::TankId tank, const record::Moment& now) const;

    Open m_open;
};

} // namespace littoral::ui
