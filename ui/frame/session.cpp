// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/session.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QPalette>
#include <QStandardPaths>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

const QStringList& lookWords()
{
    static const QStringList words{u"system"_s, u"light"_s, u"dark"_s, u"high-contrast"_s};
    return words;
}

constexpr int kQuietFrom = 21;
constexpr int kQuietTo = 8;

/// A path is no good settings key: its separators would make groups of it.
QString nameOf(const QString& store)
{
    return QString::fromLatin1(QCryptographicHash::hash(store.toUtf8(), QCryptographicHash::Sha1).toHex());
}

const QStringList& motionWords()
{
    static const QStringList words{u"system"_s, u"full"_s, u"reduced"_s};
    return words;
}

QString backupKey(const QString& store)
{
    return u"backup/"_s + nameOf(store);
}

QString remindedKey(const QString& store, record::TankId tank)
{
    return u"reminded/%1-%2"_s.arg(nameOf(store)).arg(tank.value);
}

} // namespace

Session::Session()
    : m_settings(u"Littoral"_s, u"Littoral"_s)
{
}

QByteArray Session::geometry() const
{
    return m_settings.value(u"window/geometry"_s).toByteArray();
}

void Session::setGeometry(const QByteArray& geometry)
{
    m_settings.setValue(u"window/geometry"_s, geometry);
}

QString Session::lastStore() const
{
    return m_settings.value(u"store/last"_s).toString();
}

void Session::setLastStore(const QString& path)
{
    m_settings.setValue(u"store/last"_s, path);
}

Look Session::look() const
{
    const qsizetype index = lookWords().indexOf(m_settings.value(u"look/scheme"_s).toString());
    return static_cast<Look>(std::max<qsizetype>(0, index));
}

void Session::setLook(Look look)
{
    m_settings.setValue(u"look/scheme"_s, lookWords().at(static_cast<qsizetype>(look)));
}

double Session::textScale() const
{
    return std::clamp(m_settings.value(u"look/textScale"_s, 1.0).toDouble(), 1.0, 2.0);
}

void Session::setTextScale(double scale)
{
    m_settings.setValue(u"look/textScale"_s, scale);
}

QString Session::language() const
{
    return m_settings.value(u"language"_s).toString();
}

void Session::setLanguage(const QString& tag)
{
    m_settings.setValue(u"language"_s, tag);
}

MotionChoice Session::motion() const
{
    const qsizetype index = motionWords().indexOf(m_settings.value(u"look/motion"_s).toString());
    return static_cast<MotionChoice>(std::max<qsizetype>(0, index));
}

void Session::setMotion(MotionChoice motion)
{
    m_settings.setValue(u"look/motion"_s, motionWords().at(static_cast<qsizetype>(motion)));
}

QDateTime Session::lastBackup(const QString& store) const
{
    return m_settings.value(backupKey(store)).toDateTime();
}

void Session::setLastBackup(const QString& store, const QDateTime& at)
{
    m_settings.setValue(backupKey(store), at);
}

bool Session::reminders() const
{
    return m_settings.value(u"reminders/on"_s, false).toBool();
}

void Session::setReminders(bool on)
{
    m_settings.setValue(u"reminders/on"_s, on);
}

std::pair<int, int> Session::quietHours() const
{
    return {std::clamp(m_settings.value(u"reminders/quietFrom"_s, kQuietFrom).toInt(), 0, 24),
            std::clamp(m_settings.value(u"reminders/quietTo"_s, kQuietTo).toInt(), 0, 24)};
}

void Session::setQuietHours(int from, int to)
{
    m_settings.setValue(u"reminders/quietFrom"_s, from);
    m_settings.setValue(u"reminders/quietTo"_s, to);
}

QDate Session::reminded(const QString& store, record::TankId tank) const
{
    return m_settings.value(remindedKey(store, tank)).toDate();
}

void Session::setReminded(const QString& store, record::TankId tank, const QDate& day)
{
    m_settings.setValue(remindedKey(store, tank), day);
}

QString Session::defaultStore()
{
    return QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)).filePath(u"row.littoral"_s);
}

Scheme schemeOf(Look look, Scheme system)
{
    switch (look) {
    case Look::System:
        return system;
    case Look::Light:
        return Scheme::Light;
    case Look::Dark:
        return Scheme::Dark;
    case Look::HighContrast:
        return Scheme::HighContrast;
    }
    return system;
}

Scheme systemScheme()
{
    const QPalette palette = QGuiApplication::palette();
    return palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness()
               ? Scheme::Dark
               : Scheme::Light;
}

bool isMotionReduced(MotionChoice choice, bool system)
{
    return choice == MotionChoice::System ? system : choice == MotionChoice::Reduced;
}

bool systemReducesMotion()
{
    if (const QString asked = qEnvironmentVariable("LITTORAL_MOTION"); !asked.isEmpty()) {
        return asked == u"reduced"_s;
    }
    const QDir folder(QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation));
    const auto kept = [&folder](const QString& file, const QString& key) {
        const QString path = folder.filePath(file);
        return QFile::exists(path) ? QSettings(path, QSettings::IniFormat).value(key).toString() : QString();
    };
    for (const QString& gtk : {u"gtk-4.0/settings.ini"_s, u"gtk-3.0/settings.ini"_s}) {
        const QString animated = kept(gtk, u"Settings/gtk-enable-animations"_s).toLower();
        if (!animated.isEmpty()) {
            return animated == u"0"_s || animated == u"false"_s;
        }
    }
    const QString factor = kept(u"kdeglobals"_s, u"KDE/AnimationDurationFactor"_s);
    return !factor.isEmpty() && factor.toDouble() <= 0.0;
}

} // namespace littoral::ui
