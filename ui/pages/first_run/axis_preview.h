// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/moment.h"
#include "ui/theme/theme.h"

#include <QWidget>

namespace littoral::ui {

/// The time axis with nothing on it yet, and words where things will be: an empty row still shows what it is for.
class AxisPreview final : public QWidget
{
    Q_OBJECT

public:
    AxisPreview(Theme& theme, const record::Clock& clock, QWidget* parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return {0, sizeHint().height()}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void paintHeader(QPainter& painter, double header) const;
    void paintRows(QPainter& painter, double header) const;
    void paintNow(QPainter& painter, double header) const;
    [[nodiscard]] double headerHeight() const;
    [[nodiscard]] QString nowText() const;
    [[nodiscard]] QRectF flagBox() const;

    Theme& m_theme;
    const record::Clock& m_clock;
};

} // namespace littoral::ui
