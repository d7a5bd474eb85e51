// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/failure.h"

#include <QDir>
#include <QSqlError>

namespace littoral::store {

namespace {

// Primary result codes of SQLite (sqlite3.h); extended codes carry them in their low byte.
constexpr int kSqliteBusy = 5;
constexpr int kSqliteLocked = 6;
constexpr int kSqliteReadOnly = 8;
constexpr int kSqliteIoError = 10;
constexpr int kSqliteCorrupt = 11;
constexpr int kSqliteFull = 13;
constexpr int kSqliteCannotOpen = 14;
constexpr int kSqliteConstraint = 19;
constexpr int kSqliteNotADatabase = 26;

} // namespace

Error failure(Fault fault, const QString& what, const QString& where, const QString& mend)
{
    return {fault, what.toStdString(), where.toStdString(), mend.toStdString()};
}

Error sqlFailure(const QSqlError& error, const QString& path)
{
    const QString where = QDir::toNativeSeparators(path);
    const QString said = error.databaseText().isEmpty() ? error.driverText() : error.databaseText();
    switch (error.nativeErrorCode().toInt() & 0xff) {
    case kSqliteBusy:
    case kSqliteLocked:
        return failure(Fault::Busy, Words::tr("Another program is writing to this store."), where,
                       Words::tr("Wait until it has finished, or close it, then try again."));
    case kSqliteReadOnly:
        return failure(
            Fault::Storage, Words::tr("This store cannot be written to."), where,
            Words::tr("Check that you may write to the file and its folder, or copy it to a folder of your own."));
    case kSqliteFull:
        return failure(Fault::Storage, Words::tr("There is no room left on the disk; nothing was changed."), where,
                       Words::tr("Free some space, then try again."));
    case kSqliteIoError:
        return failure(
            Fault::Storage, Words::tr("The disk could not be read or written (%1).").arg(said), where,
            Words::tr(
                "Check that the disk is still connected, then try again; copy the file elsewhere if this goes on."));
    case kSqliteCorrupt:
    case kSqliteNotADatabase:
        return damagedFailure(path, said);
    case kSqliteCannotOpen:
        return failure(
            Fault::Storage, Words::tr("The file could not be opened."), where,
            Words::tr("Check that you may read the file and write to its folder, or copy it to a folder of your own."));
    case kSqliteConstraint:
        return failure(Fault::Conflict, Words::tr("This change would contradict what is in the store (%1).").arg(said),
                       where, Words::tr("Nothing was changed. Load the store again and look at what is there now."));
    default:
        return failure(Fault::Storage, Words::tr("The database refused: %1.").arg(said), where,
                       Words::tr("Nothing was changed. Try again; if it goes on, have the store verified."));
    }
}

Error damagedFailure(const QString& path, const QString& detail)
{
    return failure(
        Fault::Damaged, Words::tr("This store is damaged (%1).").arg(detail), QDir::toNativeSeparators(path),
        Words::tr("Keep the file as it is, restore the newest backup, and export what can still be read from a copy "
                  "(the sqlite3 shell's .recover does that)."));
}

Error otherFileFailure(const QString& path)
{
    return failure(Fault::OtherFile, Words::tr("This file is not a Littoral store."), QDir::toNativeSeparators(path),
                   Words::tr("Choose a file with the suffix .littoral; the file was left untouched."));
}

Error newerFailure(const QString& path, int version, int ours)
{
    return failure(
        Fault::NewerStore,
        Words::tr("This store was written by a newer version of the program (store format %1, this program knows %2).")
            .arg(version)
            .arg(ours),
        QDir::toNativeSeparators(path),
        Words::tr("Open it with a newer version of the program; the file was left untouched."));
}

} // namespace littoral::store
