// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/record/entry.h"
#include "ui/widgets/ask.h"

#include <QPushButton>

namespace littoral::ui {

/// Reads a picture file and makes the bounded copy that a store keeps: turned upright, no side over Photo::kPhotoSide,
/// JPEG of quality 85, free of the camera's own data. Only jpeg, width and height are filled.
[[nodiscard]] Result<record::Photo> boundedPhoto(const QString& path);

/// A button that takes a photograph by choosing a file or by dropping one on it.
class PhotoButton final : public QPushButton
{
    Q_OBJECT

public:
    PhotoButton(Ask& ask, QWidget* parent = nullptr);

signals:
    void photoTaken(const QString& path);

protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;
};

} // namespace littoral::ui
