// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/paper_out.h"

#include <QCoreApplication>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("PaperOut", text);
}

} // namespace

std::optional<Result<QString>> putOnPaper(Ask& ask, QWidget* parent, const PaperJob& job, const QString& proposed,
                                          PaperTo to)
{
    if (to == PaperTo::Printer) {
        const auto device = ask.printer(parent, job.head.title);
        if (device == nullptr) {
            return std::nullopt;
        }
        if (printOn(*device, job)) {
            return Result<QString>(words("%1: sent to the printer.").arg(job.head.title));
        }
        return Result<QString>(Error{Fault::Storage, words("The printer did not take the pages.").toStdString(),
                                     job.head.title.toStdString(),
                                     words("Look at the printer, or print to a PDF file.").toStdString()});
    }
    QString name = proposed;
    name.replace(u'/', u'-');
    const QString path = ask.fileToWrite(parent, words("Print to a PDF file"), name + u".pdf"_s, u"pdf"_s);
    if (path.isEmpty()) {
        return std::nullopt;
    }
    if (const auto done = printPdf(path, job); !done) {
        return Result<QString>(done.error());
    }
    return Result<QString>(words("Printed to %1").arg(path));
}

} // namespace littoral::ui
