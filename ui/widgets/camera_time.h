// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/moment.h"

#include <QByteArray>
#include <optional>

namespace littoral::ui {

/// When a picture was taken by the camera's own clock: EXIF DateTimeOriginal, with OffsetTimeOriginal where the camera
/// wrote it, else the system's zone on that day. Nothing when the picture does not say, or says what is no date.
[[nodiscard]] std::optional<record::Moment> cameraTime(const QByteArray& picture);
[[nodiscard]] std::optional<record::Moment> cameraTimeOf(const QString& path);

} // namespace littoral::ui
