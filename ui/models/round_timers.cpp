// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/round_timers.h"

#include "ui/models/number_text.h"

#include <algorithm>
#include <cmath>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

constexpr int kSecondMs = 1000;

/// "3:12".
QString clockText(qint64 ms)
{
    const qint64 seconds = (std::max<qint64>(0, ms) + 999) / 1000;
    return u"%1:%2"_s.arg(seconds / 60).arg(seconds % 60, 2, 10, QLatin1Char('0'));
}

} // namespace

QString shakeSettingKey(record::KitId kit)
{
    return u"kit.shake.%1"_s.arg(kit.value);
}

double shakeMinutes(const record::Row& row, record::KitId kit)
{
    return std::clamp(row.settings.value(shakeSettingKey(kit)).toDouble(), 0.0, 60.0);
}

RoundTimers::RoundTimers(facade::Keeper& keeper, QObject* parent)
    : QObject(parent)
    , m_keeper(keeper)
{
    m_second.setInterval(kSecondMs);
    connect(&m_second, &QTimer::timeout, this, &RoundTimers::tick);
    connect(&keeper, &facade::Keeper::storeClosed, this, [this] {
        m_timers.clear();
        m_second.stop();
        emit changed();
    });
}

int RoundTimers::start(record::TankId tank, const QString& parameter, double shakeMinutes, double waitMinutes)
{
    const record::Tank* known = m_keeper.row().tank(tank);
    const record::Parameter* reads = record::findParameter(parameter);
    if (known == nullptr || reads == nullptr || shakeMinutes + waitMinutes <= 0.0) {
        return 0;
    }
    std::erase_if(m_timers, [&](const Timer& it) { return it.tank == tank && it.parameter == parameter; });
    const record::Moment now = m_keeper.clock().now();
    const auto after = [](const record::Moment& from, double minutes) {
        return from.plusMs(static_cast<qint64>(std::llround(minutes * 60'000.0)));
    };
    const record::Moment shaken = after(now, shakeMinutes);
    m_timers.push_back({++m_last, tank, parameter, tr("%1, %2", "parameter, tank").arg(reads->name, known->name),
                        shaken, after(shaken, waitMinutes), false});
    std::ranges::stable_sort(m_timers, {}, [](const Timer& it) { return it.readyAt.utcMs(); });
    m_second.start();
    emit changed();
    return m_last;
}

void RoundTimers::stop(int id)
{
    if (std::erase_if(m_timers, [id](const Timer& it) { return it.id == id; }) > 0) {
        emit changed();
    }
}

const RoundTimers::Timer* RoundTimers::of(record::TankId tank, const QString& parameter) const
{
    const auto found =
        std::ranges::find_if(m_timers, [&](const Timer& it) { return it.tank == tank && it.parameter == parameter; });
    return found == m_timers.end() ? nullptr : &*found;
}

void RoundTimers::tick()
{
    const record::Moment now = m_keeper.clock().now();
    bool running = false;
    QStringList done;
    for (Timer& it : m_timers) {
        if (!it.ready && it.readyAt <= now) {
            it.ready = true;
            done << tr("Ready to read: %1").arg(it.name);
        }
        running = running || !it.ready;
    }
    if (!running) {
        m_second.stop();
    }
    emit changed();
    for (const QString& sentence : std::as_const(done)) {
        emit ready(sentence);
    }
}

QString RoundTimers::stateText(const Timer& timer) const
{
    const record::Moment now = m_keeper.clock().now();
    if (timer.ready || timer.readyAt <= now) {
        return tr("read it now");
    }
    return now < timer.shakenAt ? tr("shake %1").arg(clockText(timer.shakenAt.utcMs() - now.utcMs()))
                                : clockText(timer.readyAt.utcMs() - now.utcMs());
}

QString RoundTimers::summary() const
{
    if (m_timers.empty()) {
        return {};
    }
    const Timer& first = m_timers.front();
    const QString one = tr("%1: %2", "what is timed, how it stands").arg(first.name, stateText(first));
    const int others = static_cast<int>(m_timers.size()) - 1;
    return others == 0 ? one : tr("%1, and %n more", nullptr, others).arg(one);
}

} // namespace littoral::ui
