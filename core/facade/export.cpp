// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/export.h"

#include "core/exchange/csv_export.h"
#include "core/exchange/journeys_csv.h"
#include "core/exchange/tank_document.h"
#include "core/facade/knowledge.h"
#include "core/facade/shelf_exchange.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QSaveFile>
#include <QSet>

namespace littoral::facade {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Export", text);
}

/// A file name that every file system takes, made of the tank's name.
QString fileStem(const QString& name)
{
    QString stem;
    for (const QChar c : name.simplified()) {
        stem += c.isLetterOrNumber() || c == u'-' || c == u'_' ? c : QChar(u'-');
    }
    return stem.isEmpty() ? u"tank"_s : stem.left(100);
}

struct File
{
    QString path;
    QByteArray bytes;
};

Result<void> write(const File& file)
{
    QSaveFile out(file.path);
    if (!out.open(QIODevice::WriteOnly) || out.write(file.bytes) != file.bytes.size() || !out.commit()) {
        return Error{Fault::Storage,
                     words("It cannot be written: %1.").arg(out.errorString()).toStdString(),
                     file.path.toStdString(),
                     {}};
    }
    return {};
}

std::vector<File> filesOf(const record::Row& row, const QDir& directory)
{
    std::vector<File> files;
    files.push_back({directory.filePath(u"readings.csv"_s), exchange::readingsCsv(row)});
    files.push_back({directory.filePath(u"entries.csv"_s), exchange::entriesCsv(row)});
    if (!row.journeys.empty()) {
        files.push_back({directory.filePath(u"journeys.csv"_s), exchange::journeysCsv(row)});
    }
    if (QByteArray supplies = suppliesJson(row); !supplies.isEmpty()) {
        files.push_back({directory.filePath(u"supplies.json"_s), std::move(supplies)});
    }
    const exchange::NameBook names(row);
    QSet<QString> taken;
    for (const record::Tank& tank : row.tanks) {
        const QString stem = fileStem(tank.name);
        QString name = stem;
        for (int n = 2; taken.contains(name.toCaseFolded()); ++n) {
            name = stem + u'-' + QString::number(n);
        }
        taken.insert(name.toCaseFolded());
        files.push_back({directory.filePath(u"tanks/"_s + name + u".json"_s),
                         exchange::tankJson(exchange::tankDocument(row, tank.id), names)});
    }
    if (QByteArray knowledge = knowledgeJson(row); !knowledge.isEmpty()) {
        files.push_back({directory.filePath(u"knowledge.json"_s), std::move(knowledge)});
    }
    return files;
}

} // namespace

Result<QStringList> exportRow(const record::Row& row, const QString& path, bool overwrite)
{
    const QDir directory(path);
    if (!directory.mkpath(u"tanks"_s)) {
        return Error{Fault::Storage, words("The directory cannot be made.").toStdString(), path.toStdString(), {}};
    }
    const std::vector<File> files = filesOf(row, directory);
    for (const File& file : files) {
        if (!overwrite && QFileInfo::exists(file.path)) {
            return Error{Fault::Conflict, words("There is such a file already.").toStdString(), file.path.toStdString(),
                         words("Export to an empty directory.").toStdString()};
        }
    }
    QStringList written;
    for (const File& file : files) {
        if (auto done = write(file); !done) {
            return done.error();
        }
        written << file.path;
    }
    return written;
}

Result<QByteArray> exportTankJson(const record::Row& row, record::TankId tank)
{
    if (row.tank(tank) == nullptr) {
        return Error{Fault::NotFound, words("That tank is not in the store any more.").toStdString(), {}, {}};
    }
    return exchange::tankJson(exchange::tankDocument(row, tank), exchange::NameBook(row));
}

} // namespace littoral::facade
