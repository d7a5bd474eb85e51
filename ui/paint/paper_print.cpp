// SPDX-License-Identifier: GPL-3.0-or-later
// From a job to a device: counting the pages, then printing them.
#include "ui/paint/paper.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QImage>
#include <QPageSize>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

// Pixels of the theme to the inch on paper: body text of 13 px comes out at 9 points.
constexpr int kDotsPerInch = 104;
constexpr double kMargin_mm = 16.0;

QString words(const char* text)
{
    return QCoreApplication::translate("Paper", text);
}

/// The job on a canvas of nothing: how many pages, and where everything stands.
std::vector<PaperPiece> tryOut(const PaperJob& job, QSizeF room, int& pages)
{
    QImage nothing(1, 1, QImage::Format_ARGB32_Premultiplied);
    nothing.fill(Qt::white);
    QPainter painter(&nothing);
    const Theme theme(Scheme::Light);
    Paper paper(painter, {room.width(), room.height(), [] {}}, theme, job.head, 0);
    job.body(paper);
    pages = paper.page();
    return paper.pieces();
}

QSizeF roomOf(const QPageLayout& layout, double dotsPerInch)
{
    return layout.paintRectPixels(static_cast<int>(dotsPerInch)).size();
}

} // namespace

QPageLayout paperLayout(QPageLayout::Orientation orientation)
{
    return {QPageSize(QPageSize::A4), orientation, QMarginsF(kMargin_mm, kMargin_mm, kMargin_mm, kMargin_mm),
            QPageLayout::Millimeter};
}

bool printOn(QPagedPaintDevice& device, const PaperJob& job)
{
    device.setPageLayout(paperLayout(job.orientation));
    QPainter painter;
    if (!painter.begin(&device)) {
        return false;
    }
    // A printer has dots of its own; the painters draw in ours.
    const double scale = device.logicalDpiX() / static_cast<double>(kDotsPerInch);
    painter.scale(scale, scale);
    const QSizeF room(device.width() / scale, device.height() / scale);
    int pages = 0;
    (void)tryOut(job, room, pages);
    const Theme theme(Scheme::Light);
    Paper paper(painter, {room.width(), room.height(), [&device] { device.newPage(); }}, theme, job.head, pages);
    job.body(paper);
    return painter.end();
}

Result<void> printPdf(const QString& path, const PaperJob& job)
{
    const auto refused = [&] {
        return Error{Fault::Storage, words("The PDF could not be written.").toStdString(), path.toStdString(),
                     words("Choose a folder that may be written to.").toStdString()};
    };
    // Into memory first: a file that cannot be written is told by the file, not by the painter.
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setTitle(words("%1: %2").arg(job.head.subject, job.head.title));
        writer.setCreator(u"Littoral"_s);
        writer.setResolution(kDotsPerInch);
        if (!printOn(writer, job)) {
            return refused();
        }
    }
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(buffer.data()) != buffer.data().size() || !file.commit()) {
        return refused();
    }
    return {};
}

std::vector<PaperPiece> paperPieces(const PaperJob& job)
{
    int pages = 0;
    return tryOut(job, roomOf(paperLayout(job.orientation), kDotsPerInch), pages);
}

} // namespace littoral::ui
