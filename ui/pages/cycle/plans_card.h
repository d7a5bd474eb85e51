// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/pages/cycle/cycle_cards.h"

#include <functional>
#include <optional>

class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QSlider;

namespace littoral::ui {

class PlanScatterView;

/// Water-change plans: the table, the same plans as litres against exposure, a plan of one's own on a slider, and
/// adopting one.
class PlansCard final : public CycleCard
{
    Q_OBJECT

public:
    using Plan = std::optional<forecast::ChangePlan>; ///< nothing: as planned now

    explicit PlansCard(Theme& theme, QWidget* parent = nullptr);

    void setModel(const CycleModel& model, bool writable);
    /// Answers "the least water that keeps the odds of nitrite above X under Y"; `any` is false when no plan does.
    using Finder = std::function<std::optional<forecast::ChangePlan>(double nitrite_mgN_per_L, double most, bool& any)>;
    void setFinder(Finder finder) { m_finder = std::move(finder); }

    [[nodiscard]] CardTable& table() { return *m_table; }
    [[nodiscard]] PlanScatterView& scatter() { return *m_scatter; }
    [[nodiscard]] QSlider& slider() { return *m_slider; }
    [[nodiscard]] QComboBox& interval() { return *m_interval; }
    [[nodiscard]] QPushButton& adoptButton() { return *m_adopt; }
    [[nodiscard]] QString adoptionText() const;
    [[nodiscard]] QString answerText() const;
    /// Asks the finder with what the two fields hold.
    void findCheapest();

signals:
    void planChosen(const std::optional<littoral::forecast::ChangePlan>& plan);
    void adoptWanted();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    [[nodiscard]] QWidget* makeControls();
    [[nodiscard]] QWidget* makeFinder();
    void fillTable(const CycleModel& model);
    void fillControls(const CycleModel& model);
    void controlsMoved();
    void setColumns();

    std::vector<Plan> m_rows;
    std::vector<Plan> m_points;
    Finder m_finder;
    QString m_hours, m_late, m_gateTitle;
    bool m_narrow = false;
    CycleModel m_model;
    CardTable* m_table;
    PlanScatterView* m_scatter;
    QSlider* m_slider;
    Text* m_percent;
    Text* m_quick;
    QComboBox* m_interval;
    QComboBox* m_ease;
    QComboBox* m_source;
    QPushButton* m_adopt;
    QPushButton* m_keep;
    Text* m_adoption;
    Disclosure* m_list;
    QDoubleSpinBox* m_level;
    QComboBox* m_most;
    QPushButton* m_find;
    Text* m_answer;
    Text* m_caution;
};

} // namespace littoral::ui
