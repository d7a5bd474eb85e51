// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/reminder.h"

#include "core/wording/sentences.h"

#include <QPainter>
#include <QPixmap>
#include <QSystemTrayIcon>
#include <QWidget>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

constexpr qint64 kHourMs = 3'600'000;
constexpr int kShownMs = 15'000;
constexpr int kSide = 32;
constexpr qsizetype kNamed = 3;

/// A tank seen from its front: the row's own sign, so that the icon is not taken for another program's.
QIcon tankIcon()
{
    QPixmap picture(kSide, kSide);
    picture.fill(Qt::transparent);
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    const Tokens tokens;
    painter.setPen(QPen(tokens[Token::Accent], 2));
    painter.setBrush(tokens[Token::Water]);
    painter.drawRect(QRectF(2, 8, 28, 18));
    painter.fillRect(QRectF(3, 21, 26, 4), tokens[Token::Soil]);
    return QIcon(picture);
}

} // namespace

TrayNotifier::TrayNotifier(QWidget* window)
    : m_window(window)
{
}

TrayNotifier::~TrayNotifier() = default;

void TrayNotifier::setOn(bool on)
{
    if (!on) {
        m_icon.reset();
        return;
    }
    if (m_icon == nullptr && QSystemTrayIcon::isSystemTrayAvailable()) {
        m_icon = std::make_unique<QSystemTrayIcon>(tankIcon());
        m_icon->setToolTip(tr("Littoral"));
        const auto raise = [this] {
            m_window->showNormal();
            m_window->raise();
            m_window->activateWindow();
        };
        connect(m_icon.get(), &QSystemTrayIcon::messageClicked, this, raise);
        connect(m_icon.get(), &QSystemTrayIcon::activated, this, raise);
        m_icon->show();
    }
}

bool TrayNotifier::show(const QString& title, const QString& text)
{
    if (m_icon == nullptr || !QSystemTrayIcon::supportsMessages()) {
        return false;
    }
    m_icon->showMessage(title, text, QSystemTrayIcon::NoIcon, kShownMs);
    return true;
}

std::vector<OverdueTank> overdueTanks(const record::Row& row, const record::Moment& now)
{
    std::vector<OverdueTank> found;
    for (const record::Tank& tank : row.tanks) {
        const record::LayoutRecord* layout = row.currentLayout(tank.id, now);
        if (layout == nullptr) {
            continue;
        }
        const auto due = care::dueWork(row, layout->layout.id, now, now.localDate());
        OverdueTank one{tank.id, tank.name, 0, {}};
        int most = -1;
        for (const care::DueItem& item : due) {
            if (!item.overdue) {
                continue;
            }
            ++one.count;
            if (item.daysOver > most) {
                most = item.daysOver;
                one.first =
                    Reminder::tr("%1, %2").arg(wording::dueTitle(item), wording::dueWhen(item, now.localDate()));
            }
        }
        if (one.count > 0) {
            found.push_back(one);
        }
    }
    return found;
}

Reminder::Reminder(facade::Keeper& keeper, Session& session, Notifier& notifier, QObject* parent)
    : QObject(parent)
    , m_keeper(keeper)
    , m_session(session)
    , m_notifier(notifier)
{
    m_notifier.setOn(isOn());
}

bool Reminder::isOn() const
{
    return m_session.reminders();
}

void Reminder::setOn(bool on)
{
    m_session.setReminders(on);
    m_notifier.setOn(on);
    m_looked = -1;
    check();
}

/// From the first hour to the one before the last, over midnight where the first is the later.
bool Reminder::isQuiet(int hour) const
{
    const auto [from, to] = m_session.quietHours();
    return from <= to ? hour >= from && hour < to : hour >= from || hour < to;
}

void Reminder::check()
{
    if (!isOn() || !m_keeper.hasStore()) {
        return;
    }
    const record::Moment now = m_keeper.clock().now();
    const qint64 hour = (now.utcMs() + now.offsetSeconds() * 1000LL) / kHourMs;
    if (isQuiet(static_cast<int>(hour % 24)) || (hour == m_looked && m_keeper.revision() == m_revision)) {
        return;
    }
    m_looked = hour;
    m_revision = m_keeper.revision();
    const QDate today = now.localDate();
    QStringList lines;
    std::vector<OverdueTank> fresh;
    for (const OverdueTank& tank : overdueTanks(m_keeper.row(), now)) {
        if (m_session.reminded(m_keeper.path(), tank.tank) == today) {
            continue;
        }
        m_session.setReminded(m_keeper.path(), tank.tank, today);
        if (lines.size() < kNamed) {
            lines << (tank.count == 1 ? tr("%1: %2").arg(tank.name, tank.first)
                                      : tr("%1: %2, and %n more", nullptr, tank.count - 1).arg(tank.name, tank.first));
        }
        fresh.push_back(tank);
    }
    if (fresh.empty()) {
        return;
    }
    const int tanks = static_cast<int>(fresh.size());
    if (tanks > lines.size()) {
        lines << tr("further tanks: %1").arg(tanks - static_cast<int>(lines.size()));
    }
    const QString title = tanks == 1 ? tr("Overdue work") : tr("Overdue work in %n tanks", nullptr, tanks);
    if (!m_notifier.show(title, lines.join(u'\n'))) {
        emit told(tr("%1: %2").arg(title, lines.join(u"; "_s)));
    }
}

} // namespace littoral::ui
