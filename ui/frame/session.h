// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/ids.h"
#include "ui/theme/tokens.h"

#include <QByteArray>
#include <QDateTime>
#include <QSettings>
#include <utility>

namespace littoral::ui {

/// Which look the keeper chose; System follows the desktop at start.
enum class Look { System, Light, Dark, HighContrast };

/// Whether things may move; System follows the desktop at start.
enum class MotionChoice { System, Full, Reduced };

/// What the workbench remembers between runs: window, last store, look. Nothing about tanks is kept here.
class Session final
{
public:
    Session();

    [[nodiscard]] QByteArray geometry() const;
    void setGeometry(const QByteArray& geometry);
    [[nodiscard]] QString lastStore() const;
    void setLastStore(const QString& path);
    [[nodiscard]] Look look() const;
    void setLook(Look look);
    /// 1.0 .. 2.0
    [[nodiscard]] double textScale() const;
    void setTextScale(double scale);
    /// Tag of the language chosen; empty: the desktop's.
    [[nodiscard]] QString language() const;
    void setLanguage(const QString& tag);
    /// Whether overdue work is told of outside the window; off until it is switched on.
    [[nodiscard]] bool reminders() const;
    void setReminders(bool on);
    /// Hours of the day without a reminder: from the first to before the second, over midnight where the first is the
    /// later; the same twice: none.
    [[nodiscard]] std::pair<int, int> quietHours() const;
    void setQuietHours(int from, int to);
    /// The day on which a tank of that store was last told of; invalid when never.
    [[nodiscard]] QDate reminded(const QString& store, record::TankId tank) const;
    void setReminded(const QString& store, record::TankId tank, const QDate& day);
    [[nodiscard]] MotionChoice motion() const;
    void setMotion(MotionChoice motion);
    /// When a backup of that store was last made from here; invalid when never.
    [[nodiscard]] QDateTime lastBackup(const QString& store) const;
    void setLastBackup(const QString& store, const QDateTime& at);

    /// Where a store is made when nobody says otherwise.
    [[nodiscard]] static QString defaultStore();

private:
    mutable QSettings m_settings;
};

[[nodiscard]] Scheme schemeOf(Look look, Scheme system);
/// The desktop's own look, by the palette the application was given. Ask before the theme is applied.
[[nodiscard]] Scheme systemScheme();
[[nodiscard]] bool isMotionReduced(MotionChoice choice, bool system);
/// Whether the desktop asks for reduced motion: LITTORAL_MOTION=reduced or full in the environment, else the files in
/// which GTK desktops (gtk-enable-animations) and KDE (AnimationDurationFactor) keep it. Qt 6.4 has no question for it.
[[nodiscard]] bool systemReducesMotion();

} // namespace littoral::ui
