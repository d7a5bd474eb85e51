// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/trends/trend_export.h"

#include "ui/models/trend_words.h"
#include "ui/widgets/trends/trend_view.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QImage>
#include <QPainter>
#include <QSaveFile>
#include <QSvgGenerator>

namespace littoral::ui {

namespace {

constexpr int kPngScale = 2;

QString words(const char* text)
{
    return QCoreApplication::translate("TrendExport", text);
}

/// All or nothing: a file that could not be finished is not left behind.
Result<void> write(const QString& path, const QByteArray& bytes)
{
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit()) {
        return Error{Fault::Storage, words("The file was not written: %1.").arg(file.errorString()).toStdString(),
                     path.toStdString(), words("Choose another folder or make room, then export again.").toStdString()};
    }
    return {};
}

Result<void> notDrawn(const QString& path)
{
    return Error{Fault::Storage, words("The picture could not be drawn at this size.").toStdString(),
                 path.toStdString(), words("Make the window smaller, then export again.").toStdString()};
}

} // namespace

Result<void> writeTrendPng(const TrendView& view, const QString& path, int width, int height)
{
    QImage image(QSize(width, height) * kPngScale, QImage::Format_RGB32);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    if (image.isNull() || !buffer.open(QIODevice::WriteOnly)) {
        return notDrawn(path);
    }
    image.setDevicePixelRatio(kPngScale);
    {
        QPainter painter(&image);
        view.render(painter, QSizeF(width, height), Theme(Scheme::Light));
    }
    return image.save(&buffer, "PNG") ? write(path, bytes) : notDrawn(path);
}

Result<void> writeTrendSvg(const TrendView& view, const QString& path, int width, int height)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    QSvgGenerator drawing;
    drawing.setOutputDevice(&buffer);
    drawing.setSize(QSize(width, height));
    drawing.setViewBox(QRect(0, 0, width, height));
    drawing.setTitle(view.accessibleName());
    drawing.setDescription(view.accessibleDescription());
    {
        QPainter painter;
        if (!painter.begin(&drawing)) {
            return notDrawn(path);
        }
        view.render(painter, QSizeF(width, height), Theme(Scheme::Light));
    }
    return write(path, bytes);
}

Result<void> writeTrendCsv(const TrendView& view, const TimeAxis& axis, const QString& path)
{
    return write(path, trendCsv(view.model(), axis.view(0, 1)));
}

} // namespace littoral::ui
