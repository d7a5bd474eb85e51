// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/forecasts.h"
#include "core/facade/keeper.h"
#include "ui/models/rounds_model.h"
#include "ui/widgets/text.h"

#include <QFrame>

class QPushButton;

namespace littoral::ui {

class AdvicePanel;
class FlowLayout;
class ReadingSparkline;

/// Under the grid: whose cell this is, the kit that reads it with its steps as buttons, the parameter's last weeks,
/// advice.
class CellPanel final : public QFrame
{
    Q_OBJECT

public:
    CellPanel(Theme& theme, facade::Keeper& keeper, const facade::Forecasts& forecasts, const RoundsModel& model,
              QWidget* parent = nullptr);

    void showCell(const QModelIndex& cell, RoundsModel::Order order);
    void showTyping(const QModelIndex& cell, const QString& typed);
    /// The button of the kit's timer: minutes it takes (0: hidden), and how a running one stands.
    void showTimer(double minutes, const QString& state);
    [[nodiscard]] const AdvicePanel* advice() const { return m_advice; }

signals:
    void stepChosen(double step);
    void keep();
    void timerWanted();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void fillSteps(const QModelIndex& cell);
    [[nodiscard]] QString kitLine(const QModelIndex& cell) const;
    [[nodiscard]] QString quietLine(const QModelIndex& cell) const;

    Theme& m_theme;
    facade::Keeper& m_keeper;
    const facade::Forecasts& m_forecasts;
    const RoundsModel& m_model;
    QString m_parameter;
    Text* m_title;
    Text* m_kit;
    QPushButton* m_timer;
    Text* m_place;
    Text* m_stepsLine;
    QWidget* m_stepBox;
    FlowLayout* m_stepFlow;
    std::vector<QPushButton*> m_stepButtons;
    std::vector<double> m_steps;
    ReadingSparkline* m_sparkline;
    AdvicePanel* m_advice;
};

} // namespace littoral::ui
