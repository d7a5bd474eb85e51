// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/care/due.h"
#include "core/record/row.h"
#include "core/store/store.h"

#include <QObject>
#include <memory>

namespace littoral::facade {

/// The few verbs that the workbench and the command line share: one open store, the row in memory, every change through
/// one door. Lives on one thread; row() may be copied and handed to workers.
class Keeper final : public QObject
{
    Q_OBJECT

public:
    /// `clock` outlives the keeper.
    explicit Keeper(const record::Clock& clock, QObject* parent = nullptr);
    ~Keeper() override;

    [[nodiscard]] Result<void> create(const QString& path);
    [[nodiscard]] Result<void> open(const QString& path, store::Access access = store::Access::ReadWrite);
    void close();

    [[nodiscard]] bool hasStore() const { return m_store != nullptr; }
    [[nodiscard]] bool isReadOnly() const;
    [[nodiscard]] QString path() const;
    [[nodiscard]] const record::Row& row() const { return m_row; }
    [[nodiscard]] const record::Clock& clock() const { return m_clock; }
    [[nodiscard]] store::Store* store() { return m_store.get(); }
    /// Rises with every change of the row.
    [[nodiscard]] quint64 revision() const { return m_revision; }

    /// Writes the change; on success the row is current and changed() has been emitted.
    [[nodiscard]] Result<void> commit(const store::Edit& edit);
    [[nodiscard]] Result<QString> undo();
    [[nodiscard]] Result<QString> redo();
    [[nodiscard]] store::JournalState journal() const;
    /// Reads the row again if another program wrote to the store.
    void refreshIfChangedOutside();

    /// Adds a tank with its first layout; fills position, number and entered times.
    [[nodiscard]] Result<record::TankId> addTank(record::Tank tank, record::Layout layout);

    struct TypedReading
    {
        record::ReadingId replaces; ///< zero: a new one
        record::LayoutId layout;
        QString parameter;
        QString typed;
        QString unit; ///< empty: the kit's, else the parameter's shown unit
        record::Moment at;
        record::KitId kit;
        QString note;
    };
    [[nodiscard]] Result<record::ReadingId> enterReading(const TypedReading& typed);
    /// Adds or replaces an entry; fills the entered time, the layout if it is not given, and closes the round it
    /// answers.
    [[nodiscard]] Result<record::EntryId> enter(record::Entry entry);

    /// Done at `at`: a water change becomes an entry, other work an upkeep entry or a closed task, as the template
    /// says. The question whether to ease the water changes is done by easing them one step.
    [[nodiscard]] Result<void> markDone(const care::DueItem& item, const record::Moment& at);
    /// Of a round that stands for a planned entry: skipping takes the plan out, snoozing and moving move it.
    [[nodiscard]] Result<void> skip(const care::DueItem& item, const QString& reason);
    [[nodiscard]] Result<void> snooze(const care::DueItem& item, const QDate& until);
    [[nodiscard]] Result<void> moveTo(const care::DueItem& item, const QDate& day);

    /// Last thing typed, for the status bar: "nitrate 24 mg/L, Fen Corner"; empty when nothing can be undone.
    [[nodiscard]] QString lastChangeText() const;

signals:
    void storeOpened();
    void storeClosed();
    void changed();

private:
    Result<void> reload();
    const record::Entry* plannedFor(const care::DueItem& item) const;
    Result<void> movePlanned(record::Entry entry, const QDate& day, const QString& label);

    const record::Clock& m_clock;
    std::unique_ptr<store::Store> m_store;
    record::Row m_row;
    quint64 m_revision = 0;
};

} // namespace littoral::facade
