// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/theme/theme.h"

#include <QWidget>

namespace littoral::ui {

/// The tank seen from the front, to scale, with its length and height written along it; follows the fields as they are
/// typed. Dashed and without numbers until there are dimensions.
class OutlineView final : public QWidget
{
    Q_OBJECT

public:
    explicit OutlineView(Theme& theme, QWidget* parent = nullptr);

    void setBox(double length_cm, double height_cm, double gap_cm, double bedShare);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void drawTank(QPainter& painter, const QRectF& box) const;
    void drawMeasures(QPainter& painter, const QRectF& box) const;

    Theme& m_theme;
    double m_length = 0.0, m_height = 0.0, m_gap = 3.0, m_bedShare = 0.15;
};

} // namespace littoral::ui
