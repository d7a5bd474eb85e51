// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"
#include "ui/frame/session.h"
#include "ui/widgets/ask.h"

#include <QObject>
#include <optional>

class QWidget;

namespace littoral::ui {

/// What is done with whole stores: open, make, sample, import, export, back up. Asks through Ask, tells through
/// signals, and leaves the open store as it was when something fails.
class StoreDesk final : public QObject
{
    Q_OBJECT

public:
    StoreDesk(facade::Keeper& keeper, Ask& ask, Session& session, QWidget* window);

    /// At start: the path given, the sample row, the store of last time, or nothing.
    void openAtStart(const std::optional<QString>& path, bool sample);
    void openPath(const QString& path);
    void askOpen();
    void askNew();
    void openSample();
    void askImport();
    void importFrom(const QStringList& paths);
    void askExport();
    void askBackup();
    /// Due work of the next weeks as an iCalendar file.
    void askCalendar();
    /// Adds the first tank, making a store at its usual place when none is open.
    void addFirstTank(const record::Tank& tank, const record::Layout& layout);
    /// Where a store is made when none is open; empty when one is.
    [[nodiscard]] QString storePlace() const;

signals:
    void told(const QString& sentence);
    void failed(const littoral::Error& error, const QString& safe);
    void problems(const QString& what, const QString& safe, const QStringList& list);
    void backedUp(const QDateTime& at);
    void tankAdded(littoral::record::TankId tank);

private:
    [[nodiscard]] bool makeStore(const QString& path);

    facade::Keeper& m_keeper;
    Ask& m_ask;
    Session& m_session;
    QWidget* m_window;
};

} // namespace littoral::ui
