// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"
#include "ui/frame/session.h"

#include <QDate>
#include <QObject>
#include <QString>
#include <memory>
#include <vector>

class QSystemTrayIcon;
class QWidget;

namespace littoral::ui {

/// Shows a message of the desktop's own kind, outside the window.
class Notifier
{
public:
    virtual ~Notifier() = default;
    /// False where the desktop has no place for it.
    [[nodiscard]] virtual bool show(const QString& title, const QString& text) = 0;
    /// Reminders were switched on or off: take up room on the desktop, or give it back.
    virtual void setOn(bool on) = 0;
};

/// By an icon in the tray, which is there only while reminders are on. A click brings the window to the front.
class TrayNotifier final : public QObject, public Notifier
{
    Q_OBJECT

public:
    explicit TrayNotifier(QWidget* window);
    ~TrayNotifier() override;
    [[nodiscard]] bool show(const QString& title, const QString& text) override;
    void setOn(bool on) override;

private:
    QWidget* m_window;
    std::unique_ptr<QSystemTrayIcon> m_icon;
};

/// Overdue work of one tank.
struct OverdueTank
{
    record::TankId tank;
    QString name;
    int count = 0;
    QString first; ///< what is longest overdue: "Water change 40 %, 3 days over"
};
/// Tanks with work past its grace at `now`, in the row's order.
[[nodiscard]] std::vector<OverdueTank> overdueTanks(const record::Row& row, const record::Moment& now);

/// Tells of overdue work while the program runs: off until it is switched on, silent in the quiet hours, and of each
/// tank at most once a day. Where the desktop takes no messages it is said in the status bar. Never a dialog.
class Reminder final : public QObject
{
    Q_OBJECT

public:
    /// All outlive the reminder.
    Reminder(facade::Keeper& keeper, Session& session, Notifier& notifier, QObject* parent = nullptr);

    [[nodiscard]] bool isOn() const;
    void setOn(bool on);
    /// Looks whether there is something to tell; cheap when nothing can have changed. Called every minute.
    void check();

signals:
    /// For the status bar, where the desktop did not take it.
    void told(const QString& sentence);

private:
    [[nodiscard]] bool isQuiet(int hour) const;

    facade::Keeper& m_keeper;
    Session& m_session;
    Notifier& m_notifier;
    quint64 m_revision = 0;
    qint64 m_looked = -1; ///< hours since 1970, local
};

} // namespace littoral::ui
