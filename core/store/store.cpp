// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/store.h"

#include "core/store/backup.h"
#include "core/store/failure.h"
#include "core/store/journal.h"
#include "core/store/loader.h"
#include "core/store/store_file.h"
#include "core/store/transaction.h"
#include "core/store/verify.h"
#include "core/store/writer.h"

#include <QDir>

namespace littoral::store {

using namespace Qt::StringLiterals;

struct Store::Private
{
    std::unique_ptr<Connection> connection;
    QString copyBeforeUpgrade;
    qint64 dataVersion = 0;

    [[nodiscard]] qint64 dataVersionNow() const
    {
        const auto version = connection->value(u"PRAGMA data_version"_s);
        return version ? version->toLongLong() : dataVersion;
    }

    [[nodiscard]] bool readOnly() const { return connection->mode() != Mode::ReadWrite; }

    [[nodiscard]] Result<void> mayWrite() const
    {
        if (!readOnly()) {
            return {};
        }
        return failure(
            Fault::Storage, Words::tr("This store is open for reading only."),
            QDir::toNativeSeparators(connection->path()),
            Words::tr(
                "Open it for writing; if it lies where you may not write, copy it to a folder of your own first."));
    }
};

Store::Store()
    : d(std::make_unique<Private>())
{
}

Store::~Store() = default;

Result<std::unique_ptr<Store>> Store::create(const QString& path)
{
    auto file = createFile(path, builtInMigrations());
    if (!file) {
        return file.error();
    }
    std::unique_ptr<Store> store(new Store);
    store->d->connection = std::move(file->connection);
    store->d->dataVersion = store->d->dataVersionNow();
    return store;
}

Result<std::unique_ptr<Store>> Store::open(const QString& path, Access access)
{
    auto file = openFile(path, access, builtInMigrations());
    if (!file) {
        return file.error();
    }
    std::unique_ptr<Store> store(new Store);
    store->d->connection = std::move(file->connection);
    store->d->copyBeforeUpgrade = file->copyBeforeUpgrade;
    store->d->dataVersion = store->d->dataVersionNow();
    return store;
}

QString Store::path() const
{
    return d->connection->path();
}

bool Store::isReadOnly() const
{
    return d->readOnly();
}

QString Store::copyBeforeUpgrade() const
{
    return d->copyBeforeUpgrade;
}

Result<record::Row> Store::load() const
{
    return loadRow(*d->connection);
}

Result<void> Store::apply(const Edit& edit)
{
    if (const auto allowed = d->mayWrite(); !allowed) {
        return allowed;
    }
    if (edit.isEmpty()) {
        return {};
    }
    auto transaction = Transaction::begin(*d->connection, Transaction::Kind::Immediate);
    if (!transaction) {
        return transaction.error();
    }
    if (const auto written = Writer(*d->connection, edit).run(); !written) {
        return written;
    }
    return transaction->commit();
}

Result<QString> Store::undo()
{
    if (const auto allowed = d->mayWrite(); !allowed) {
        return allowed.error();
    }
    return replay(*d->connection, Direction::Undo);
}

Result<QString> Store::redo()
{
    if (const auto allowed = d->mayWrite(); !allowed) {
        return allowed.error();
    }
    return replay(*d->connection, Direction::Redo);
}

JournalState Store::journal() const
{
    return journalState(*d->connection);
}

Result<std::vector<record::Photo>> Store::photos(record::LayoutId layout) const
{
    QString sql = RowMapping<record::Photo>::table().select;
    sql.replace(u"jpeg"_s, u"x''"_s);
    Statement query = d->connection->prepare(sql + u" WHERE layout = ? ORDER BY at_utc DESC, id DESC"_s);
    if (const auto done = query.bind(layout.value).exec(); !done) {
        return done.error();
    }
    std::vector<record::Photo> photos;
    while (query.next()) {
        photos.push_back(RowMapping<record::Photo>::record(query.row()));
    }
    if (const auto sound = query.end(); !sound) {
        return sound.error();
    }
    return photos;
}

Result<QByteArray> Store::photoBytes(record::PhotoId id) const
{
    Statement query = d->connection->prepare(u"SELECT jpeg FROM photo WHERE id = ?"_s);
    if (const auto done = query.bind(id.value).exec(); !done) {
        return done.error();
    }
    if (!query.next()) {
        return failure(Fault::NotFound, Words::tr("The photograph is no longer in the store."),
                       QDir::toNativeSeparators(path()),
                       Words::tr("Load the store again; another program may have removed it."));
    }
    return query.value(0).toByteArray();
}

Result<std::vector<record::IssuedForecast>> Store::issuedForecasts(record::LayoutId layout) const
{
    Statement query = d->connection->prepare(RowMapping<record::IssuedForecast>::table().select +
                                             u" WHERE layout = ? ORDER BY issued_utc, id"_s);
    if (const auto done = query.bind(layout.value).exec(); !done) {
        return done.error();
    }
    std::vector<record::IssuedForecast> forecasts;
    while (query.next()) {
        forecasts.push_back(RowMapping<record::IssuedForecast>::record(query.row()));
    }
    if (const auto sound = query.end(); !sound) {
        return sound.error();
    }
    return forecasts;
}

Result<std::optional<record::IssuedForecast>> Store::newestIssued(record::LayoutId layout) const
{
    Statement query = d->connection->prepare(RowMapping<record::IssuedForecast>::table().select +
                                             u" WHERE layout = ? ORDER BY issued_utc DESC, id DESC LIMIT 1"_s);
    if (const auto done = query.bind(layout.value).exec(); !done) {
        return done.error();
    }
    if (query.next()) {
        return std::optional(RowMapping<record::IssuedForecast>::record(query.row()));
    }
    if (const auto sound = query.end(); !sound) {
        return sound.error();
    }
    return std::optional<record::IssuedForecast>{};
}

Result<record::ForecastId> Store::keepIssued(record::IssuedForecast forecast)
{
    if (const auto allowed = d->mayWrite(); !allowed) {
        return allowed.error();
    }
    forecast.id.value = Edit::nextId();
    if (const auto sound = RowMapping<record::IssuedForecast>::check(forecast); !sound) {
        return sound.error();
    }
    auto transaction = Transaction::begin(*d->connection, Transaction::Kind::Immediate);
    if (!transaction) {
        return transaction.error();
    }
    {
        Statement insert = d->connection->prepare(RowMapping<record::IssuedForecast>::table().insert);
        for (const QVariant& value : RowMapping<record::IssuedForecast>::values(forecast)) {
            insert.bind(value);
        }
        if (const auto written = insert.exec(); !written) {
            return written.error();
        }
    }
    if (const auto committed = transaction->commit(); !committed) {
        return committed.error();
    }
    return forecast.id;
}

bool Store::changedOutside()
{
    const qint64 now = d->dataVersionNow();
    return std::exchange(d->dataVersion, now) != now;
}

Result<void> Store::backup(const QString& path) const
{
    return backupTo(*d->connection, path);
}

Result<Store::Verification> Store::verify() const
{
    return verifyStore(*d->connection);
}

} // namespace littoral::store
