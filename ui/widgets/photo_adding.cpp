// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/photo_adding.h"

#include "ui/models/day_words.h"
#include "ui/widgets/camera_time.h"
#include "ui/widgets/photo_button.h"

#include <cstdlib>

namespace littoral::ui {

namespace {

constexpr qint64 kSameMs = 60'000; // closer than this is the same time

QString tankName(const facade::Keeper& keeper, record::TankId id)
{
    const record::Tank* tank = keeper.row().tank(id);
    return tank == nullptr ? QString() : tank->name;
}

} // namespace

Result<AddedPhoto> addPhoto(facade::Keeper& keeper, record::TankId tank, const QString& path, const record::Moment& at,
                            const QString& note)
{
    auto photo = boundedPhoto(path);
    if (!photo) {
        return photo.error();
    }
    const record::LayoutRecord* layout = keeper.row().layoutAt(tank, at);
    if (layout == nullptr) {
        return Error{Fault::NotFound,
                     CameraTimeOffer::tr("This tank has no layout to put a photograph to.").toStdString(),
                     {},
                     CameraTimeOffer::tr("Add a layout first.").toStdString()};
    }
    photo->tank = tank;
    photo->layout = layout->layout.id;
    photo->at = at;
    photo->note = note;
    store::Edit edit(CameraTimeOffer::tr("photo, %1").arg(tankName(keeper, tank)));
    photo->id = edit.put(*photo);
    if (const auto done = keeper.commit(edit); !done) {
        return done.error();
    }
    photo->jpeg.clear();
    std::optional<record::Moment> camera = cameraTimeOf(path);
    if (camera && (*camera > keeper.clock().now() || std::llabs(camera->utcMs() - at.utcMs()) < kSameMs)) {
        camera.reset();
    }
    return AddedPhoto{std::move(photo).value(), camera};
}

Result<void> setPhotoTime(facade::Keeper& keeper, record::Photo photo, const record::Moment& at)
{
    if (at > keeper.clock().now()) {
        return Error{Fault::BadInput,
                     CameraTimeOffer::tr("That is after now, and the photograph was taken.").toStdString(),
                     {},
                     CameraTimeOffer::tr("Type the time at which it was taken.").toStdString()};
    }
    if (const record::LayoutRecord* layout = keeper.row().layoutAt(photo.tank, at)) {
        photo.layout = layout->layout.id;
    }
    photo.at = at;
    store::Edit edit(CameraTimeOffer::tr("photograph of %1, %2")
                         .arg(momentText(at, keeper.clock().today()), tankName(keeper, photo.tank)));
    edit.put(std::move(photo));
    return keeper.commit(edit);
}

CameraTimeOffer::CameraTimeOffer(facade::Keeper& keeper, QWidget* parent)
    : QPushButton(parent)
    , m_keeper(keeper)
{
    hide();
    setAccessibleName(tr("Take the camera's time"));
    connect(this, &QPushButton::clicked, this, &CameraTimeOffer::take);
}

void CameraTimeOffer::offer(const AddedPhoto& added)
{
    m_added = added;
    setVisible(added.camera.has_value());
    if (added.camera) {
        const QString when = momentText(*added.camera, m_keeper.clock().today());
        setText(tr("Take the camera's time, %1").arg(when));
        setAccessibleName(tr("Take the time the camera wrote into the photo, %1").arg(when));
    }
}

void CameraTimeOffer::take()
{
    const QString when = momentText(*m_added.camera, m_keeper.clock().today());
    hide();
    if (const auto done = setPhotoTime(m_keeper, m_added.photo, *m_added.camera); !done) {
        emit failed(done.error());
        return;
    }
    emit taken(tr("The photo is kept as of %1").arg(when));
}

} // namespace littoral::ui
