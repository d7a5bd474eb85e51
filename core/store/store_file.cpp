// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/store_file.h"

#include "core/store/catalogue.h"
#include "core/store/failure.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QtEndian>

namespace littoral::store {

using namespace Qt::StringLiterals;

namespace {

// SQLite database header, 100 bytes (sqlite.org/fileformat2.html, section 1.3): magic text, page size at 16 (1 stands
// for 65536), user_version at 60, application_id at 68, all big-endian.
constexpr qsizetype kHeaderBytes = 100;
constexpr qsizetype kPageSizeAt = 16;
constexpr qsizetype kVersionAt = 60;
constexpr qsizetype kApplicationAt = 68;
constexpr char kMagic[] = "SQLite format 3"; // its closing zero is part of it

int topOf(const std::vector<Migration>& ladder)
{
    return ladder.empty() ? 0 : ladder.back().version;
}

Error cannotRead(const QString& path, const QString& why)
{
    return failure(Fault::Storage, Words::tr("The file could not be read: %1.").arg(why),
                   QDir::toNativeSeparators(path),
                   Words::tr("Check that you may read it and that its disk is connected."));
}

/// A database is whole pages. SQLite itself takes a last page that is cut short for one that ends in zeros. (While the
/// write-ahead log holds something, it may still mend the last page.)
bool endsWithinAPage(const QString& path, const QByteArray& header)
{
    const int stated = qFromBigEndian<quint16>(header.constData() + kPageSizeAt);
    const int pageSize = stated == 1 ? 65536 : stated;
    const bool logEmpty = QFileInfo(path + u"-wal"_s).size() == 0;
    return pageSize > 0 && logEmpty && QFileInfo(path).size() % pageSize != 0;
}

Result<void> checkHeader(const QString& path, int newestKnown)
{
    const QFileInfo info(path);
    if (!info.exists()) {
        return failure(Fault::NotFound, Words::tr("There is no such store."), QDir::toNativeSeparators(path),
                       Words::tr("Check the path, or make a new store there."));
    }
    if (info.isDir()) {
        return failure(Fault::OtherFile, Words::tr("This is a folder, not a store."), QDir::toNativeSeparators(path),
                       Words::tr("Choose a file with the suffix .littoral."));
    }
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        return cannotRead(path, file.errorString());
    }
    const QByteArray header = file.read(kHeaderBytes);
    if (!header.startsWith(QByteArrayView(kMagic, sizeof kMagic))) {
        return otherFileFailure(path);
    }
    if (header.size() < kHeaderBytes) {
        return damagedFailure(path, Words::tr("the file ends within its first page"));
    }
    if (qFromBigEndian<qint32>(header.constData() + kApplicationAt) != kApplicationId) {
        return otherFileFailure(path);
    }
    const int version = qFromBigEndian<qint32>(header.constData() + kVersionAt);
    if (version > newestKnown) {
        return newerFailure(path, version, newestKnown);
    }
    if (endsWithinAPage(path, header)) {
        return damagedFailure(path, Words::tr("the file ends within a page"));
    }
    return {};
}

Mode modeFor(const QString& path, Access access)
{
    const QFileInfo file(path);
    const bool writable = file.isWritable() && QFileInfo(file.absolutePath()).isWritable();
    if (writable) {
        return access == Access::ReadWrite ? Mode::ReadWrite : Mode::QueryOnly;
    }
    // Without a folder to put side files in, a store that was closed properly can be read as it lies. One with a
    // write-ahead log that still holds something cannot: its newest changes are in the log.
    const bool logEmpty = QFileInfo(path + u"-wal"_s).size() == 0;
    return logEmpty ? Mode::Immutable : Mode::ReadOnly;
}

Result<void> checkIdentity(Connection& connection)
{
    const auto id = connection.value(u"PRAGMA application_id"_s);
    if (!id) {
        return id.error();
    }
    if (id->toInt() != kApplicationId) {
        return otherFileFailure(connection.path());
    }
    return {};
}

Result<void> quickCheck(Connection& connection)
{
    const auto verdict = connection.value(u"PRAGMA quick_check(1)"_s);
    if (!verdict) {
        return verdict.error();
    }
    if (verdict->toString() != u"ok"_s) {
        return damagedFailure(connection.path(), verdict->toString());
    }
    return {};
}

/// A store that may not be written is taken only in the format the program knows.
Result<void> needsNoUpgrade(Connection& connection, int known)
{
    const auto version = connection.value(u"PRAGMA user_version"_s);
    if (!version) {
        return version.error();
    }
    if (version->toInt() > known) {
        return newerFailure(connection.path(), version->toInt(), known);
    }
    if (version->toInt() < known) {
        return failure(Fault::Storage,
                       Words::tr("This store has an older format and must be upgraded before it can be read."),
                       QDir::toNativeSeparators(connection.path()),
                       Words::tr("Open it once for writing; copy it to a folder of your own first if it cannot be "
                                 "written where it is."));
    }
    return {};
}

Result<QString> bringUpToDate(Connection& connection, const std::vector<Migration>& ladder)
{
    if (connection.mode() != Mode::ReadWrite) {
        if (const auto current = needsNoUpgrade(connection, topOf(ladder)); !current) {
            return current.error();
        }
        return QString();
    }
    const auto migrated = migrate(connection, ladder);
    if (!migrated) {
        return migrated.error();
    }
    if (const auto synced = syncCatalogue(connection); !synced) {
        return synced.error();
    }
    return migrated->copy;
}

Result<void> makeEmptyFile(const QString& path)
{
    if (QFile::exists(path)) {
        return failure(Fault::Conflict, Words::tr("There is already a file of this name; it was left as it is."),
                       QDir::toNativeSeparators(path), Words::tr("Open it, or choose another name for the new store."));
    }
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly | QIODevice::NewOnly)) {
        return failure(Fault::Storage, Words::tr("The store could not be made: %1.").arg(file.errorString()),
                       QDir::toNativeSeparators(path),
                       Words::tr("Choose a folder that exists and that you may write to."));
    }
    return {};
}

Result<OpenedFile> fillFile(const QString& path, const std::vector<Migration>& ladder)
{
    auto connection = Connection::open(path, Mode::ReadWrite);
    if (!connection) {
        return connection.error();
    }
    if (const auto made = bringUpToDate(**connection, ladder); !made) {
        return made.error();
    }
    // The header is what tells a store from another file: it must not linger in the log alone.
    if (const auto flushed = (*connection)->value(u"PRAGMA wal_checkpoint(TRUNCATE)"_s); !flushed) {
        return flushed.error();
    }
    return OpenedFile{std::move(*connection), {}};
}

} // namespace

Result<OpenedFile> createFile(const QString& path, const std::vector<Migration>& ladder)
{
    if (const auto made = makeEmptyFile(path); !made) {
        return made.error();
    }
    auto filled = fillFile(path, ladder);
    if (!filled) {
        QFile::remove(path);
    }
    return filled;
}

Result<OpenedFile> openFile(const QString& path, Access access, const std::vector<Migration>& ladder)
{
    if (const auto ours = checkHeader(path, topOf(ladder)); !ours) {
        return ours.error();
    }
    auto connection = Connection::open(path, modeFor(path, access));
    if (!connection) {
        return connection.error();
    }
    for (const auto check : {checkIdentity, quickCheck}) {
        if (const auto sound = check(**connection); !sound) {
            return sound.error();
        }
    }
    const auto copy = bringUpToDate(**connection, ladder);
    if (!copy) {
        return copy.error();
    }
    return OpenedFile{std::move(*connection), *copy};
}

} // namespace littoral::store
