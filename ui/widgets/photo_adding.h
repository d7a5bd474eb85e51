// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"

#include <QPushButton>

namespace littoral::ui {

struct AddedPhoto
{
    record::Photo photo;                  ///< as kept, without its bytes
    std::optional<record::Moment> camera; ///< the camera's own time, where it is another and not after now
};
/// Keeps a bounded copy of the file as taken at `at`. One change.
[[nodiscard]] Result<AddedPhoto> addPhoto(facade::Keeper& keeper, record::TankId tank, const QString& path,
                                          const record::Moment& at, const QString& note);
/// Gives a photograph another time; it goes to the layout that stood then. One change.
[[nodiscard]] Result<void> setPhotoTime(facade::Keeper& keeper, record::Photo photo, const record::Moment& at);

/// Offers the camera's own time for the photograph added last: hidden until there is one to offer.
class CameraTimeOffer final : public QPushButton
{
    Q_OBJECT

public:
    explicit CameraTimeOffer(facade::Keeper& keeper, QWidget* parent = nullptr);

    void offer(const AddedPhoto& added);

signals:
    void taken(const QString& sentence);
    void failed(const littoral::Error& error);

private:
    void take();

    facade::Keeper& m_keeper;
    AddedPhoto m_added;
};

} // namespace littoral::ui
