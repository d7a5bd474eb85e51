// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/store/edit.h"

#include <QString>
#include <memory>
#include <optional>

namespace littoral::store {

inline constexpr int kSchemaVersion = 3;
/// 'LTRL' in ASCII: written to the file header so that a store is told from any other SQLite file.
inline constexpr qint32 kApplicationId = 0x4C54524C;

enum class Access { ReadWrite, ReadOnly };

/// What undo or redo would do next, for a menu: "Undo nitrite 0.8, Slate Ford".
struct JournalState
{
    std::optional<QString> undoLabel;
    std::optional<QString> redoLabel;
};

/// One SQLite file with everything about one keeper's tanks. Not thread-safe: use one Store on one thread. Nothing
/// outside this module knows SQL.
class Store
{
public:
    /// Makes a new, empty store; fails with Conflict if the file exists.
    [[nodiscard]] static Result<std::unique_ptr<Store>> create(const QString& path);
    /// Opens after checking: application id, schema version (an older one is upgraded in a transaction, a copy of the
    /// file set aside first), quick_check. A file or folder that may not be written is opened for reading: ask
    /// isReadOnly(). Faults: NotFound, OtherFile, NewerStore, Damaged, Busy, Storage.
    [[nodiscard]] static Result<std::unique_ptr<Store>> open(const QString& path, Access access = Access::ReadWrite);
    ~Store();
    Store(const Store&) = delete;
    Store& operator=(const Store&) = delete;

    [[nodiscard]] QString path() const;
    [[nodiscard]] bool isReadOnly() const;
    /// Where the copy made before an upgrade lies; empty when there was none.
    [[nodiscard]] QString copyBeforeUpgrade() const;

    /// Everything but photographs' bytes and issued forecasts' bodies.
    [[nodiscard]] Result<record::Row> load() const;

    /// The only way anything is written: the change and its inverse in one transaction, then it is on disk.
    [[nodiscard]] Result<void> apply(const Edit& edit);
    /// Undo or redo the newest change not yet undone or redone; returns its label. NotFound when there is nothing to
    /// do.
    [[nodiscard]] Result<QString> undo();
    [[nodiscard]] Result<QString> redo();
    [[nodiscard]] JournalState journal() const;

    /// Photographs of a layout, newest first, without their bytes; the bytes by id.
    [[nodiscard]] Result<std::vector<record::Photo>> photos(record::LayoutId layout) const;
    [[nodiscard]] Result<QByteArray> photoBytes(record::PhotoId id) const;
    /// Forecasts issued for a layout, oldest first, bodies included.
    [[nodiscard]] Result<std::vector<record::IssuedForecast>> issuedForecasts(record::LayoutId layout) const;
    /// The one issued last; nothing when there is none.
    [[nodiscard]] Result<std::optional<record::IssuedForecast>> newestIssued(record::LayoutId layout) const;
    /// Keeps a forecast as issued, beside the journal: it is nobody's change, and undo does not take it back. Its id is
    /// made here. Goes when its layout goes.
    [[nodiscard]] Result<record::ForecastId> keepIssued(record::IssuedForecast forecast);

    /// True once after each time another program changed the file.
    [[nodiscard]] bool changedOutside();

    /// A consistent copy of the whole store (also of one in use) at `path`, checked by opening it. Never overwrites.
    [[nodiscard]] Result<void> backup(const QString& path) const;

    struct Verification
    {
        int schemaVersion = 0;
        qint64 tanks = 0, layouts = 0, readings = 0, entries = 0, tasks = 0, photos = 0, journal = 0;
        std::vector<QString> problems; ///< empty: sound
    };
    /// Full integrity_check, foreign_key_check and our own rules (readings inside their layout's tank, parameters
    /// known).
    [[nodiscard]] Result<Verification> verify() const;

private:
    Store();
    struct Private;
    std::unique_ptr<Private> d;
};

} // namespace littoral::store
