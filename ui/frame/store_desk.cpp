// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/store_desk.h"

#include "core/facade/due_calendar.h"
#include "core/facade/export.h"
#include "core/facade/import.h"
#include "core/facade/sample_row.h"

#include <QDir>
#include <QFileInfo>
#include <QGuiApplication>
#include <QSaveFile>
#include <QWidget>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

constexpr int kCalendarDays = 28;

/// The wait cursor while something runs, however it ends.
class Waiting final
{
public:
    Waiting() { QGuiApplication::setOverrideCursor(Qt::WaitCursor); }
    ~Waiting() { QGuiApplication::restoreOverrideCursor(); }
    Waiting(const Waiting&) = delete;
    Waiting& operator=(const Waiting&) = delete;
};

} // namespace

StoreDesk::StoreDesk(facade::Keeper& keeper, Ask& ask, Session& session, QWidget* window)
    : QObject(window)
    , m_keeper(keeper)
    , m_ask(ask)
    , m_session(session)
    , m_window(window)
{
}

QString StoreDesk::storePlace() const
{
    return m_keeper.hasStore() ? QString() : QDir::toNativeSeparators(Session::defaultStore());
}

void StoreDesk::openAtStart(const std::optional<QString>& path, bool sample)
{
    if (sample) {
        openSample();
        return;
    }
    if (path) {
        openPath(*path);
        return;
    }
    const QString last = m_session.lastStore();
    if (!last.isEmpty() && QFileInfo::exists(last)) {
        openPath(last);
    } else if (QFileInfo::exists(Session::defaultStore())) {
        openPath(Session::defaultStore());
    }
}

void StoreDesk::openPath(const QString& path)
{
    const Waiting waiting;
    auto opened = m_keeper.open(path);
    if (!opened && (opened.error().fault == Fault::Busy || !QFileInfo(path).isWritable())) {
        // Held by another program, or not ours to write: looking still works, and the banner says so.
        if (m_keeper.open(path, store::Access::ReadOnly)) {
            m_session.setLastStore(path);
            emit told(tr("%1 opened for reading").arg(QFileInfo(path).fileName()));
            return;
        }
    }
    if (!opened) {
        emit failed(opened.error(),
                    m_keeper.hasStore() ? tr("The store that was open stays open.") : tr("Nothing was changed."));
        return;
    }
    m_session.setLastStore(path);
    emit told(tr("%1 opened").arg(QFileInfo(path).fileName()));
    if (const QString copy = m_keeper.store()->copyBeforeUpgrade(); !copy.isEmpty()) {
        emit told(tr("The store was brought up to date; a copy of it as it was lies at %1").arg(copy));
    }
}

void StoreDesk::askOpen()
{
    const QString start = m_keeper.hasStore() ? m_keeper.path() : Session::defaultStore();
    if (const QString path = m_ask.storeToOpen(m_window, QFileInfo(start).absolutePath()); !path.isEmpty()) {
        openPath(path);
    }
}

bool StoreDesk::makeStore(const QString& path)
{
    QDir().mkpath(QFileInfo(path).absolutePath());
    if (const auto made = m_keeper.create(path); !made) {
        emit failed(made.error(),
                    m_keeper.hasStore() ? tr("The store that was open stays open.") : tr("Nothing was changed."));
        return false;
    }
    m_session.setLastStore(path);
    return true;
}

void StoreDesk::askNew()
{
    const QString path = m_ask.storeToMake(
        m_window, QDir(QFileInfo(Session::defaultStore()).absolutePath()).filePath(u"row.littoral"_s));
    if (!path.isEmpty() && makeStore(path)) {
        emit told(tr("New store at %1").arg(QDir::toNativeSeparators(path)));
    }
}

void StoreDesk::openSample()
{
    // One copy a day: its dates are moved so that today is today, and what was typed into it earlier today is still
    // there.
    const QString name = u"sample-row-%1.littoral"_s.arg(m_keeper.clock().today().toString(Qt::ISODate));
    const QString path = QDir(QFileInfo(Session::defaultStore()).absolutePath()).filePath(name);
    if (QFileInfo::exists(path)) {
        openPath(path);
        return;
    }
    const Waiting waiting;
    if (!makeStore(path)) {
        return;
    }
    if (const auto filled = facade::makeSampleRow(m_keeper, m_keeper.clock().now()); !filled) {
        emit failed(filled.error(), tr("Your own stores were not touched."));
        return;
    }
    emit told(
        tr("The sample row lies at %1; nothing in it touches your own stores").arg(QDir::toNativeSeparators(path)));
}

void StoreDesk::askImport()
{
    const QStringList paths = m_ask.csvFiles(m_window);
    if (!paths.isEmpty()) {
        importFrom(paths);
    }
}

void StoreDesk::importFrom(const QStringList& paths)
{
    if (!m_keeper.hasStore() && !makeStore(Session::defaultStore())) {
        return;
    }
    emit told(tr("Reading the files"));
    const Waiting waiting;
    const auto summary = facade::importFiles(m_keeper, paths, false);
    if (!summary) {
        emit failed(summary.error(), tr("Nothing was brought in."));
        return;
    }
    if (!summary->problems.isEmpty()) {
        emit problems(tr("%n place(s) could not be read.", nullptr, static_cast<int>(summary->problems.size())),
                      tr("Nothing was brought in."), summary->problems);
        return;
    }
    if (summary->shelf > 0 && summary->readings + summary->entries == 0) {
        emit told(tr("Supplies and task templates brought in: %1, there already: %2")
                      .arg(summary->shelf)
                      .arg(summary->skipped));
        return;
    }
    emit told(tr("%1 readings and %2 entries brought in, %3 were there already")
                  .arg(summary->readings)
                  .arg(summary->entries)
                  .arg(summary->skipped));
}

void StoreDesk::askExport()
{
    const QString folder = m_ask.exportFolder(m_window);
    if (folder.isEmpty()) {
        return;
    }
    const Waiting waiting;
    const auto written = facade::exportRow(m_keeper.row(), folder, false);
    if (!written) {
        emit failed(written.error(), tr("The store is untouched."));
        return;
    }
    emit told(tr("Files written to %2: %1").arg(written->size()).arg(QDir::toNativeSeparators(folder)));
}

void StoreDesk::askBackup()
{
    const QFileInfo store(m_keeper.path());
    const QDateTime now = m_keeper.clock().now().toDateTime();
    const QString proposed = store.absoluteDir().filePath(
        u"%1-%2.littoral"_s.arg(store.completeBaseName(), now.toString(u"yyyy-MM-dd-HHmm"_s)));
    const QString path = m_ask.backupFile(m_window, proposed);
    if (path.isEmpty()) {
        return;
    }
    const Waiting waiting;
    if (const auto done = m_keeper.store()->backup(path); !done) {
        emit failed(done.error(), tr("The store is untouched."));
        return;
    }
    m_session.setLastBackup(m_keeper.path(), now);
    emit backedUp(now);
    emit told(tr("Backed up to %1 and checked").arg(QDir::toNativeSeparators(path)));
}

void StoreDesk::askCalendar()
{
    const QString path =
        m_ask.fileToWrite(m_window, tr("Due work as a calendar"),
                          QFileInfo(m_keeper.path()).absoluteDir().filePath(u"due-work.ics"_s), u"ics"_s);
    if (path.isEmpty()) {
        return;
    }
    const Waiting waiting;
    const record::Moment now = m_keeper.clock().now();
    const QByteArray calendar = facade::dueCalendar(m_keeper.row(), now, now.localDate().addDays(kCalendarDays));
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(calendar) != calendar.size() || !file.commit()) {
        emit failed(Error{Fault::Storage,
                          tr("It cannot be written: %1.").arg(file.errorString()).toStdString(),
                          QDir::toNativeSeparators(path).toStdString(),
                          {}},
                    tr("The store is untouched."));
        return;
    }
    emit told(tr("Due work of four weeks written to %1").arg(QDir::toNativeSeparators(path)));
}

void StoreDesk::addFirstTank(const record::Tank& tank, const record::Layout& layout)
{
    const bool made = !m_keeper.hasStore();
    if (made && !makeStore(Session::defaultStore())) {
        return;
    }
    const auto added = m_keeper.addTank(tank, layout);
    if (!added) {
        emit failed(added.error(), tr("What you typed is still in the fields."));
        return;
    }
    emit tankAdded(*added);
    emit told(made ? tr("%1 added; the store lies at %2").arg(tank.name, QDir::toNativeSeparators(m_keeper.path()))
                   : tr("%1 added").arg(tank.name));
}

} // namespace littoral::ui
