// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/row_plan.h"
#include "ui/pages/bench/bench_card.h"

class QLineEdit;

namespace littoral::ui {

class CardTable;

/// Litres a day as bars, the demineralised part apart, days on which large changes collide flagged.
class WaterBars final : public QWidget
{
    Q_OBJECT

public:
    explicit WaterBars(Theme& theme, QWidget* parent = nullptr);

    void setPlan(const facade::RowPlan& plan);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Theme& m_theme;
    std::vector<facade::WaterDay> m_days;
};

/// The water of the whole row in the coming two weeks.
class RowPlanCard final : public BenchCard
{
    Q_OBJECT

public:
    explicit RowPlanCard(Theme& theme, QWidget* parent = nullptr);

    void show(const facade::RowPlan& plan, std::optional<double> conditioner_mL_per_100L);
    [[nodiscard]] QWidget* firstField() override;
    [[nodiscard]] QLineEdit* conditioner() const { return m_conditioner; }
    [[nodiscard]] QString totals() const { return m_totals->text(); }
    [[nodiscard]] CardTable* table() const { return m_table; }
    [[nodiscard]] QString problem() const { return m_problem->text(); }

signals:
    /// Nothing: the field was emptied.
    void conditionerTyped(std::optional<double> mL_per_100L);

private:
    void readConditioner(const QString& text);

    QLineEdit* m_conditioner;
    Text* m_problem;
    Text* m_totals;
    Text* m_collisions;
    WaterBars* m_bars;
    CardTable* m_table;
    Text* m_notes;
};

} // namespace littoral::ui
