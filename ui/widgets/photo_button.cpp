// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/photo_button.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QDragEnterEvent>
#include <QFileInfo>
#include <QImageReader>
#include <QMimeData>
#include <QPainter>
#include <QUrl>
#include <algorithm>

namespace littoral::ui {

namespace {
constexpr int kJpegQuality = 85;
// A drawing that claims to be larger than this is refused before any memory is taken for it.
constexpr int kLargestSide = 20000;

QString words(const char* text)
{
    return QCoreApplication::translate("Photo", text);
}

Error unreadable(const QString& path, const QString& why)
{
    return {Fault::BadInput, words("The picture could not be read: %1.").arg(why).toStdString(), path.toStdString(),
            words("Choose a JPEG or PNG file.").toStdString()};
}

QImage onWhite(const QImage& image)
{
    if (!image.hasAlphaChannel()) {
        return image;
    }
    QImage flat(image.size(), QImage::Format_RGB32);
    flat.fill(Qt::white);
    QPainter(&flat).drawImage(0, 0, image);
    return flat;
}

} // namespace

Result<record::Photo> boundedPhoto(const QString& path)
{
    QImageReader reader(path);
    reader.setAutoTransform(true);
    const QSize full = reader.size();
    if (full.width() > kLargestSide || full.height() > kLargestSide) {
        return unreadable(path, words("it is too large"));
    }
    if (full.isValid() && std::max(full.width(), full.height()) > record::Photo::kPhotoSide) {
        reader.setScaledSize(full.scaled(record::Photo::kPhotoSide, record::Photo::kPhotoSide, Qt::KeepAspectRatio));
    }
    QImage image = reader.read();
    if (image.isNull()) {
        return unreadable(path, reader.errorString());
    }
    if (std::max(image.width(), image.height()) > record::Photo::kPhotoSide) {
        image = image.scaled(record::Photo::kPhotoSide, record::Photo::kPhotoSide, Qt::KeepAspectRatio,
                             Qt::SmoothTransformation);
    }
    record::Photo photo;
    QBuffer buffer(&photo.jpeg);
    buffer.open(QIODevice::WriteOnly);
    if (!onWhite(image).save(&buffer, "JPEG", kJpegQuality)) {
        return unreadable(path, words("it could not be written as JPEG"));
    }
    photo.width = image.width();
    photo.height = image.height();
    return photo;
}

PhotoButton::PhotoButton(Ask& ask, QWidget* parent)
    : QPushButton(tr("Photo"), parent)
{
    setAcceptDrops(true);
    setAccessibleName(tr("Add a photo: choose a file or drop one here"));
    setToolTip(tr("Choose a picture or drop one here; a copy of at most 1600 pixels is kept"));
    connect(this, &QPushButton::clicked, this, [this, &ask] {
        if (const QString path = ask.photo(window()); !path.isEmpty()) {
            emit photoTaken(path);
        }
    });
}

void PhotoButton::dragEnterEvent(QDragEnterEvent* event)
{
    const QList<QUrl> urls = event->mimeData()->urls();
    if (urls.size() == 1 && urls.front().isLocalFile()) {
        event->acceptProposedAction();
    }
}

void PhotoButton::dropEvent(QDropEvent* event)
{
    const QList<QUrl> urls = event->mimeData()->urls();
    if (!urls.isEmpty()) {
        event->acceptProposedAction();
        emit photoTaken(urls.front().toLocalFile());
    }
}

} // namespace littoral::ui
