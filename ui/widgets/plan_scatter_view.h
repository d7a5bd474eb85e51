// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/plan_scatter.h"
#include "ui/widgets/chart_widget.h"

namespace littoral::ui {

/// Plans as litres against exposure. Left and Right walk along the litres, Enter or a click chooses.
class PlanScatterView final : public ChartWidget
{
    Q_OBJECT

public:
    explicit PlanScatterView(const Theme& theme, QWidget* parent = nullptr);

    void setModel(ScatterModel model);
    [[nodiscard]] const ScatterModel& model() const { return m_model; }

    [[nodiscard]] int partCount() const override { return static_cast<int>(m_model.points.size()); }
    [[nodiscard]] QString partSentence(int part) const override;
    [[nodiscard]] QRect partRect(int part) const override;
    [[nodiscard]] int currentPart() const override { return m_current; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    /// Place in the model's points.
    void chosen(int point);

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    bool event(QEvent* event) override;

private:
    [[nodiscard]] ScatterLayout layoutNow() const;
    void step(bool right);

    const Theme& m_theme;
    ScatterModel m_model;
    int m_current = -1;
};

} // namespace littoral::ui
