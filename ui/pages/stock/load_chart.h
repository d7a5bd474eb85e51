// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/stock_desk.h"
#include "ui/theme/theme.h"
#include "ui/widgets/card_chart.h"
#include "ui/widgets/chart_widget.h"

namespace littoral::ui {

/// A trial as three pictures: what the filter carries now, what comes on top and what it can take; then total ammonia
/// and nitrite after adding, 8 in 10, against their limits with animals. Up and Down go from one to the next.
class LoadChart final : public ChartWidget
{
    Q_OBJECT

public:
    explicit LoadChart(Theme& theme, QWidget* parent = nullptr);

    void setTrial(std::shared_ptr<const facade::AdditionTrial> trial);

    [[nodiscard]] int partCount() const override { return m_trial == nullptr ? 0 : 3; }
    [[nodiscard]] QString partSentence(int part) const override;
    [[nodiscard]] QRect partRect(int part) const override;
    [[nodiscard]] int currentPart() const override { return m_part; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    [[nodiscard]] int barHeight() const;
    [[nodiscard]] int plotHeight() const;
    /// mg N an hour in the whole tank.
    [[nodiscard]] double perHour(double mgN_per_L_d) const;
    void paintBar(QPainter& painter, const QRectF& room) const;
    void paintPlot(QPainter& painter, const QRectF& room, int part);
    void setPlot(CardChart& chart, const QString& parameter, const std::vector<forecast::Band>& with,
                 const std::vector<forecast::Band>& without, double limit) const;

    Theme& m_theme;
    std::shared_ptr<const facade::AdditionTrial> m_trial;
    CardChart m_ammonia, m_nitrite;
    int m_part = 0;
};

} // namespace littoral::ui
