// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/reset_forecast.h"
#include "ui/pages/history/history_card.h"
#include "ui/paint/time_axis.h"

#include <memory>

class QComboBox;

namespace littoral::ui {

class CardTable;
class FanStack;

/// Carrying on against starting afresh: both forecasts on one axis, with the work and the water to each gate. It says
/// what is assumed and decides nothing.
class ResetCard final : public HistoryCard
{
    Q_OBJECT

public:
    explicit ResetCard(Theme& theme, QWidget* parent = nullptr);

    /// How the new layout would begin.
    [[nodiscard]] record::StartMethod start() const;
    /// A forecast is on its way; the old picture stays until it is there.
    void setWaiting();
    void setForecast(std::shared_ptr<const facade::ResetForecast> made);
    void setFailure(const QString& sentence);
    [[nodiscard]] const std::shared_ptr<const facade::ResetForecast>& forecast() const { return m_made; }
    [[nodiscard]] QString headline() const { return m_headline->text(); }
    [[nodiscard]] CardTable& table() { return *m_table; }
    [[nodiscard]] FanStack& charts() { return *m_charts; }
    [[nodiscard]] QComboBox* startField() { return m_start; }

signals:
    void startChosen();

private:
    void showParts(bool any);
    void sizeChart();

    TimeAxis m_axis; ///< its own: both ways begin today
    std::shared_ptr<const facade::ResetForecast> m_made;
    QComboBox* m_start;
    Text *m_headline, *m_state;
    FanStack* m_charts;
    CardTable* m_table;
    Text* m_sentences;
};

} // namespace littoral::ui
