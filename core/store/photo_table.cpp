// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/checks.h"
#include "core/store/failure.h"
#include "core/store/table.h"

namespace littoral::store {

using record::Photo;

namespace {

/// A 1600 x 1600 JPEG of fair quality stays well below this; what is larger was not made by the program.
constexpr qsizetype kMostBytes = 8 * 1024 * 1024;

struct Fields
{
    template <typename Io, typename T> static void visit(Io& io, T& photo)
    {
        io.field("id", photo.id);
        io.field("tank", photo.tank);
        io.field("layout", photo.layout);
        io.field("at", photo.at);
        io.field("width", photo.width);
        io.field("height", photo.height);
        io.field("note", photo.note);
        io.blob("jpeg", photo.jpeg);
    }
};

} // namespace

template <> const Table& RowMapping<Photo>::table()
{
    static const Table table = describe<Fields, Photo>("photo");
    return table;
}

template <> Values RowMapping<Photo>::values(const Photo& photo)
{
    return toValues<Fields>(photo);
}

template <> Photo RowMapping<Photo>::record(const QSqlQuery& row)
{
    return toRecord<Fields, Photo>(row);
}

template <> Result<void> RowMapping<Photo>::check(const Photo& photo)
{
    const bool bounded =
        photo.width >= 0 && photo.height >= 0 && photo.width <= Photo::kPhotoSide && photo.height <= Photo::kPhotoSide;
    return Checks(Words::tr("Photograph"))
        .hasTank(photo.tank)
        .hasLayout(photo.layout)
        .hasTime(photo.at)
        .rule(bounded && photo.jpeg.size() <= kMostBytes, Words::tr("The photograph is larger than the store keeps."),
              Words::tr("Add it again from its file; the program makes a smaller copy."))
        .result();
}

} // namespace littoral::store
