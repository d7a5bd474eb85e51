// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/file_ask.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QPrintDialog>
#include <QPrinter>

namespace littoral::ui {

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("FileAsk", text);
}

QString withSuffix(const QString& path)
{
    return path.isEmpty() || path.endsWith(QStringLiteral(".littoral")) ? path : path + QStringLiteral(".littoral");
}

} // namespace

QString FileAsk::storeToOpen(QWidget* parent, const QString& startIn)
{
    return QFileDialog::getOpenFileName(parent, words("Open a store"), startIn,
                                        words("Stores (*.littoral);;All files (*)"));
}

QString FileAsk::storeToMake(QWidget* parent, const QString& proposed)
{
    return withSuffix(QFileDialog::getSaveFileName(parent, words("Make a new store"), proposed,
                                                   words("Stores (*.littoral)"), nullptr,
                                                   QFileDialog::DontConfirmOverwrite));
}

QStringList FileAsk::csvFiles(QWidget* parent)
{
    return QFileDialog::getOpenFileNames(parent, words("Bring in files"), QString(),
                                         words("CSV and tank files (*.csv *.json);;All files (*)"));
}

QString FileAsk::exportFolder(QWidget* parent)
{
    return QFileDialog::getExistingDirectory(parent, words("Folder to export to"));
}

QString FileAsk::backupFile(QWidget* parent, const QString& proposed)
{
    return withSuffix(QFileDialog::getSaveFileName(parent, words("Back up the store to"), proposed,
                                                   words("Stores (*.littoral)"), nullptr,
                                                   QFileDialog::DontConfirmOverwrite));
}

QString FileAsk::photo(QWidget* parent)
{
    return QFileDialog::getOpenFileName(parent, words("Choose a photo"), QString(),
                                        words("Pictures (*.jpg *.jpeg *.png);;All files (*)"));
}

QString FileAsk::fileToWrite(QWidget* parent, const QString& title, const QString& proposed, const QString& suffix)
{
    const QString path =
        QFileDialog::getSaveFileName(parent, title, proposed, words("%1 files (*.%2)").arg(suffix.toUpper(), suffix));
    const QString ending = u'.' + suffix;
    return path.isEmpty() || path.endsWith(ending, Qt::CaseInsensitive) ? path : path + ending;
}

std::unique_ptr<QPagedPaintDevice> FileAsk::printer(QWidget* parent, const QString& title)
{
    auto printer = std::make_unique<QPrinter>(QPrinter::HighResolution);
    printer->setDocName(title);
    QPrintDialog dialog(printer.get(), parent);
    dialog.setWindowTitle(title);
    // The papers here count their own pages and are printed whole.
    dialog.setOptions(QAbstractPrintDialog::PrintToFile | QAbstractPrintDialog::PrintCollateCopies);
    if (dialog.exec() != QDialog::Accepted) {
        return nullptr;
    }
    return printer;
}

} // namespace littoral::ui
