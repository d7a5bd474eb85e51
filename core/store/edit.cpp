// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/edit.h"

#include <QRandomGenerator>
#include <algorithm>
#include <atomic>
#include <chrono>

namespace littoral::store {

namespace {
constexpr qint64 kStep = 64;
}

qint64 Edit::nextId()
{
    static const qint64 remainder = QRandomGenerator::system()->bounded(static_cast<int>(kStep));
    static std::atomic<qint64> last{0};
    const auto now = std::chrono::system_clock::now().time_since_epoch();
    const qint64 step = std::chrono::duration_cast<std::chrono::microseconds>(now).count() / kStep;
    qint64 before = last.load();
    qint64 next = 0;
    do {
        next = std::max(before + 1, step);
    } while (!last.compare_exchange_weak(before, next));
    return next * kStep + remainder;
}

} // namespace littoral::store
