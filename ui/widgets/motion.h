// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/time_axis.h"

#include <QVariantAnimation>
#include <functional>

namespace littoral::ui {

/// Part of a chart that lies before now by default.
inline constexpr double kNowShare = 4.0 / 7.0;

/// One thing of a view that moves, easing out in the time the style gives for it (SH_Widget_Animation_Duration); at
/// once where that is none, because reduced motion is asked for, or the view is not on show.
class Motion final : public QObject
{
    Q_OBJECT

public:
    /// `view` outlives the motion.
    explicit Motion(const QWidget& view);

    /// Calls `step` with shares rising to 1; the last is exactly 1. One that is under way is left where it is.
    void start(std::function<void(double)> step);
    /// Takes no further step: what was moving is gone.
    void stop();
    [[nodiscard]] bool isMoving() const { return m_step != nullptr; }
    /// The axis so that now stands where it does by default, at the span it has. `flooded` (UTC ms) is the tank's whose
    /// now is meant in age mode.
    void glideToNow(TimeAxis& axis, qint64 flooded);

private:
    void advance(double share);

    const QWidget& m_view;
    QVariantAnimation m_clock;
    std::function<void(double)> m_step;
};

} // namespace littoral::ui
