// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/motion.h"

#include <QStyle>
#include <QWidget>

namespace littoral::ui {

Motion::Motion(const QWidget& view)
    : m_view(view)
{
    m_clock.setEasingCurve(QEasingCurve::OutCubic);
    m_clock.setStartValue(0.0);
    m_clock.setEndValue(1.0);
    connect(&m_clock, &QVariantAnimation::valueChanged, this,
            [this](const QVariant& value) { advance(value.toDouble()); });
}

void Motion::start(std::function<void(double)> step)
{
    stop();
    m_step = std::move(step);
    const int duration = m_view.style()->styleHint(QStyle::SH_Widget_Animation_Duration, nullptr, &m_view);
    if (duration <= 0 || !m_view.isVisible()) {
        advance(1.0);
        return;
    }
    // The clock tells of changes only: without this the view would stand at its end until the first tick.
    advance(0.0);
    m_clock.setDuration(duration);
    m_clock.start();
}

void Motion::stop()
{
    m_step = nullptr;
    m_clock.stop();
}

void Motion::advance(double share)
{
    if (!m_step) {
        return;
    }
    // The last step may start another motion: it is taken out first.
    const std::function<void(double)> step = share < 1.0 ? m_step : std::exchange(m_step, nullptr);
    step(share);
}

void Motion::glideToNow(TimeAxis& axis, qint64 flooded)
{
    const qint64 now = axis.mode() == AxisMode::Age ? axis.now() - flooded : axis.now();
    const qint64 span = axis.to() - axis.from();
    const qint64 from = now - static_cast<qint64>(kNowShare * static_cast<double>(span));
    const qint64 to = from + span;
    const qint64 startFrom = axis.from();
    const qint64 startTo = axis.to();
    const AxisMode mode = axis.mode();
    start([=, &axis](double done) {
        if (axis.mode() != mode) {
            return; // another range is in force: this one was on its way elsewhere
        }
        const auto between = [done](qint64 a, qint64 b) {
            return done >= 1.0 ? b : a + static_cast<qint64>(static_cast<double>(b - a) * done);
        };
        axis.setRange(between(startFrom, from), between(startTo, to));
    });
}

} // namespace littoral::ui
