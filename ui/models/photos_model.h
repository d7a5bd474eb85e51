// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"

#include <QAbstractListModel>
#include <QHash>
#include <QPixmap>

namespace littoral::ui {

/// The photographs of one tank, oldest first. Small pictures are made when they are first looked at.
class PhotosModel final : public QAbstractListModel
{
    Q_OBJECT

public:
    explicit PhotosModel(facade::Keeper& keeper, QObject* parent = nullptr);

    void setTank(record::TankId tank);
    void setSmallSide(int px);
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;

    [[nodiscard]] const record::Photo* photo(int row) const; ///< nullptr outside
    [[nodiscard]] int rowOf(record::PhotoId id) const;       ///< -1 when it is not there
    /// "25 Nov 07:30 · day 16", with the layout's name where the tank had several.
    [[nodiscard]] QString caption(const record::Photo& photo) const;
    /// The whole picture; null when the store cannot give it.
    [[nodiscard]] QImage picture(record::PhotoId id) const;
    void refresh();

private:
    facade::Keeper& m_keeper;
    record::TankId m_tank;
    int m_side = 96;
    std::vector<record::Photo> m_photos;
    mutable QHash<qint64, QPixmap> m_small;
};

} // namespace littoral::ui
