// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup.h"

#include "core/store/failure.h"
#include "core/store/store.h"

#include <QDir>
#include <QFile>

#ifdef Q_OS_UNIX
#include <unistd.h>
#endif

namespace littoral::store {

using namespace Qt::StringLiterals;

namespace {

Result<void> copyInto(Connection& connection, const QString& part)
{
    // SQLite counts VACUUM INTO as a write, although it leaves this file alone.
    const bool guarded = connection.mode() == Mode::QueryOnly;
    if (guarded) {
        if (const auto lifted = connection.run(u"PRAGMA query_only = OFF"_s); !lifted) {
            return lifted;
        }
    }
    const auto copied = connection.prepare(u"VACUUM INTO ?"_s).bind(part).exec();
    if (guarded) {
        if (const auto restored = connection.run(u"PRAGMA query_only = ON"_s); !restored) {
            return restored;
        }
    }
    return copied;
}

/// VACUUM INTO does not wait for the disk; a backup is to survive the power failing right after.
bool flushed(const QString& path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadWrite)) {
        return false;
    }
#ifdef Q_OS_UNIX
    return ::fsync(file.handle()) == 0;
#else
    return true;
#endif
}

Result<void> checkCopy(const QString& part)
{
    const auto copy = Connection::open(part, Mode::ReadOnly);
    if (!copy) {
        return copy.error();
    }
    const auto verdict = (*copy)->value(u"PRAGMA quick_check(1)"_s);
    if (!verdict) {
        return verdict.error();
    }
    const auto id = (*copy)->value(u"PRAGMA application_id"_s);
    if (!id) {
        return id.error();
    }
    if (verdict->toString() != u"ok"_s || id->toInt() != kApplicationId) {
        return damagedFailure(part, verdict->toString());
    }
    return {};
}

Error notMade(const QString& path, const QString& why)
{
    return failure(Fault::Storage, Words::tr("The backup could not be made (%1).").arg(why),
                   QDir::toNativeSeparators(path),
                   Words::tr("Choose a folder that exists, that you may write to and that has room, then try again."));
}

Result<void> makeAndCheck(Connection& connection, const QString& part, const QString& path)
{
    if (const auto copied = copyInto(connection, part); !copied) {
        return notMade(path, QString::fromStdString(copied.error().what));
    }
    if (!flushed(part)) {
        return notMade(path, Words::tr("it could not be written to disk"));
    }
    if (const auto sound = checkCopy(part); !sound) {
        return notMade(path, QString::fromStdString(sound.error().what));
    }
    if (!QFile::rename(part, path)) {
        return notMade(path, Words::tr("it could not be given its name"));
    }
    return {};
}

} // namespace

Result<void> backupTo(Connection& connection, const QString& path)
{
    if (QFile::exists(path)) {
        return failure(Fault::Conflict, Words::tr("There is already a file of this name; it was left as it is."),
                       QDir::toNativeSeparators(path), Words::tr("Choose another name for the backup."));
    }
    const QString part = path + u".part"_s;
    QFile::remove(part); // left over from a backup that was cut off
    const auto made = makeAndCheck(connection, part, path);
    if (!made) {
        QFile::remove(part);
    }
    return made;
}

} // namespace littoral::store
