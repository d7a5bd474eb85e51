// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/co2_trials.h"
#include "core/facade/keeper.h"
#include "ui/pages/stock/stock_cards.h"

namespace littoral::ui {

class CardTable;

/// Each change of the CO2 with what the indicator, pH and the animals said of it, and a way to note the colour at once.
class Co2TrialsCard final : public StockCard
{
    Q_OBJECT

public:
    Co2TrialsCard(facade::Keeper& keeper, Theme& theme, QWidget* parent = nullptr);

    /// Hidden for a layout without CO2 that never had any.
    void setLayout(record::LayoutId layout, const facts::FactBook& book);
    [[nodiscard]] CardTable* table() { return m_table; }
    [[nodiscard]] const std::vector<facade::Co2Trial>& trials() const { return m_trials; }

signals:
    void told(const QString& sentence);
    void failed(const littoral::Error& error, const QString& safe);
    void entryOpenWanted(littoral::record::EntryId entry);
    void newEntryWanted(const littoral::record::Entry& proposed);

private:
    void makeButtons();
    void noteColour(const QString& colour);

    facade::Keeper& m_keeper;
    record::LayoutId m_layout;
    std::vector<facade::Co2Trial> m_trials;
    CardTable* m_table;
    Text* m_none;
    QWidget* m_buttons;
};

} // namespace littoral::ui
