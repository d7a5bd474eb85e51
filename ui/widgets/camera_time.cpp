// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/camera_time.h"

#include <QFile>
#include <QRegularExpression>
#include <libexif/exif-data.h>
#include <memory>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

constexpr qint64 kMostHeader = 256 * 1024; // the EXIF block stands at the beginning and is at most 64 KiB
// Exif 2.31 (CIPA DC-008-2016), tag 36881; not in the enumeration of every version of the library.
constexpr auto kOffsetTimeOriginal = static_cast<ExifTag>(0x9011);

QString textOf(ExifData* data, ExifTag tag)
{
    ExifContent* content = data->ifd[EXIF_IFD_EXIF];
    for (unsigned i = 0; content != nullptr && i < content->count; ++i) {
        const ExifEntry* entry = content->entries[i];
        if (entry->tag == tag && entry->format == EXIF_FORMAT_ASCII && entry->data != nullptr) {
            const QByteArray bytes(reinterpret_cast<const char*>(entry->data), static_cast<qsizetype>(entry->size));
            return QString::fromLatin1(bytes.constData()).trimmed();
        }
    }
    return {};
}

/// "+01:00" in seconds.
std::optional<int> offsetFrom(const QString& text)
{
    static const QRegularExpression form(u"^([+-])(\\d\\d):(\\d\\d)$"_s);
    const QRegularExpressionMatch match = form.match(text);
    if (!match.hasMatch()) {
        return std::nullopt;
    }
    const int seconds = match.captured(2).toInt() * 3600 + match.captured(3).toInt() * 60;
    return match.captured(1) == u"-"_s ? -seconds : seconds;
}

} // namespace

std::optional<record::Moment> cameraTime(const QByteArray& picture)
{
    const std::unique_ptr<ExifData, void (*)(ExifData*)> data(
        exif_data_new_from_data(reinterpret_cast<const unsigned char*>(picture.constData()),
                                static_cast<unsigned>(picture.size())),
        exif_data_unref);
    if (data == nullptr) {
        return std::nullopt;
    }
    const QDateTime time =
        QDateTime::fromString(textOf(data.get(), EXIF_TAG_DATE_TIME_ORIGINAL), u"yyyy:MM:dd HH:mm:ss"_s);
    if (!time.isValid()) {
        return std::nullopt;
    }
    if (const auto offset = offsetFrom(textOf(data.get(), kOffsetTimeOriginal))) {
        return record::Moment::fromDateTime(QDateTime(time.date(), time.time(), Qt::OffsetFromUTC, *offset));
    }
    return record::Moment::fromLocal(time.date(), time.time());
}

std::optional<record::Moment> cameraTimeOf(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? cameraTime(file.read(kMostHeader)) : std::nullopt;
}

} // namespace littoral::ui
