// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/photos_model.h"

#include "core/care/age.h"
#include "core/facade/photos.h"
#include "core/wording/numbers.h"
#include "ui/models/day_words.h"

#include <QBuffer>
#include <QImageReader>
#include <algorithm>

namespace littoral::ui {

PhotosModel::PhotosModel(facade::Keeper& keeper, QObject* parent)
    : QAbstractListModel(parent)
    , m_keeper(keeper)
{
    connect(&keeper, &facade::Keeper::changed, this, &PhotosModel::refresh);
    connect(&keeper, &facade::Keeper::storeOpened, this, [this] {
        m_tank = {};
        m_small.clear();
        refresh();
    });
}

void PhotosModel::setTank(record::TankId tank)
{
    m_tank = tank;
    refresh();
}

void PhotosModel::setSmallSide(int px)
{
    m_side = px;
    m_small.clear();
    if (rowCount() > 0) {
        emit dataChanged(index(0), index(rowCount() - 1));
    }
}

void PhotosModel::refresh()
{
    std::vector<record::Photo> photos = m_tank ? facade::photosOf(m_keeper, m_tank) : std::vector<record::Photo>();
    if (photos == m_photos) {
        return;
    }
    beginResetModel();
    m_photos = std::move(photos);
    endResetModel();
}

int PhotosModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_photos.size());
}

const record::Photo* PhotosModel::photo(int row) const
{
    return row < 0 || row >= rowCount() ? nullptr : &m_photos[static_cast<std::size_t>(row)];
}

int PhotosModel::rowOf(record::PhotoId id) const
{
    const auto found = std::ranges::find(m_photos, id, &record::Photo::id);
    return found == m_photos.end() ? -1 : static_cast<int>(found - m_photos.begin());
}

QString PhotosModel::caption(const record::Photo& photo) const
{
    const QString when = momentText(photo.at, m_keeper.clock().today());
    const record::LayoutRecord* layout = m_keeper.row().layout(photo.layout);
    if (layout == nullptr) {
        return when;
    }
    const QString age = wording::ageText(care::ageDays(layout->layout, photo.at.localDate()));
    return m_keeper.row().layoutsOf(photo.tank).size() > 1
               ? tr("%1 · %2 · %3", "time, age, layout").arg(when, age, record::layoutName(layout->layout))
               : tr("%1 · %2", "time, age").arg(when, age);
}

QImage PhotosModel::picture(record::PhotoId id) const
{
    const auto bytes = facade::photoBytes(m_keeper, id);
    return bytes ? QImage::fromData(*bytes, "JPEG") : QImage();
}

QVariant PhotosModel::data(const QModelIndex& index, int role) const
{
    const record::Photo* it = photo(index.row());
    if (it == nullptr) {
        return {};
    }
    switch (role) {
    case Qt::DisplayRole:
        return caption(*it);
    case Qt::ToolTipRole:
        return it->note;
    case Qt::AccessibleTextRole:
        return it->note.isEmpty() ? caption(*it) : tr("%1, %2", "caption, note").arg(caption(*it), it->note);
    case Qt::DecorationRole: {
        QPixmap& small = m_small[it->id.value];
        if (small.isNull()) {
            auto bytes = facade::photoBytes(m_keeper, it->id);
            if (!bytes) {
                return {};
            }
            QBuffer buffer(&*bytes);
            QImageReader reader(&buffer, "JPEG");
            // The decoder scales while it reads: a tenth of the time of reading all of it.
            reader.setScaledSize(QSize(it->width, it->height).scaled(m_side, m_side, Qt::KeepAspectRatio));
            small = QPixmap::fromImage(reader.read());
        }
        return small;
    }
    default:
        return {};
    }
}

} // namespace littoral::ui
