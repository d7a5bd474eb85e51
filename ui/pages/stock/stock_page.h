// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/stock_desk.h"
#include "ui/models/stock_table_models.h"
#include "ui/widgets/text.h"

#include <QWidget>

class QBoxLayout;
class QComboBox;
class QLineEdit;
class QPushButton;

namespace littoral::ui {

class AcclimationCard;
class Co2TrialsCard;
class AdditionCard;
class AnimalsTable;
class StockGatesCard;
class LineageView;
class PlantsTable;
class StockCard;

/// Which plants and animals live in the selected tank, whether they suit its water, and who may go in when.
class StockPage final : public QWidget
{
    Q_OBJECT

public:
    /// All outlive the page.
    StockPage(facade::Keeper& keeper, facade::Forecasts& forecasts, Theme& theme, QWidget* parent = nullptr);

    void setSelected(record::TankId tank);
    /// Puts the keyboard on the animals, or on what would fill them.
    void begin();
    void openFilter();
    /// Puts the keyboard on the animal to consider.
    void consider();

    [[nodiscard]] const facade::StockModel& stock() const { return m_stock; }
    [[nodiscard]] AnimalsTable* animals() { return m_animals; }
    [[nodiscard]] PlantsTable* plants() { return m_plants; }
    [[nodiscard]] AnimalsModel& animalsModel() { return *m_animalsModel; }
    [[nodiscard]] PlantsModel& plantsModel() { return *m_plantsModel; }
    [[nodiscard]] AdditionCard* addition() { return m_addition; }
    [[nodiscard]] AcclimationCard* acclimation() { return m_acclimation; }
    [[nodiscard]] LineageView* lineage() { return m_lineage; }
    [[nodiscard]] Co2TrialsCard* co2Trials() { return m_co2; }
    [[nodiscard]] facade::StockDesk& desk() { return *m_desk; }
    /// Species under the keyboard, for the guide; empty when there is none.
    [[nodiscard]] QString focusedSpecies() const;
    /// Parts of the page for F6, in order.
    [[nodiscard]] QList<QWidget*> regions() const;

signals:
    void told(const QString& sentence);
    void failed(const littoral::Error& error, const QString& safe);
    void entryOpenWanted(littoral::record::EntryId entry);
    /// A new entry with this much filled in.
    void newEntryWanted(const littoral::record::Entry& proposed);
    /// The guide at this topic or subject.
    void guideWanted(const QString& subject);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    [[nodiscard]] QWidget* makeBar();
    [[nodiscard]] QWidget* makeAnimals();
    [[nodiscard]] QWidget* makePlants();
    [[nodiscard]] StockCard* makeLineage();
    void connectAll();
    void refresh();
    void refreshNow();
    void refreshWhy(int row);
    void propose(record::EntryKind kind, bool plants);
    void quarantineDone();
    void arrange();

    facade::Keeper& m_keeper;
    facade::Forecasts& m_forecasts;
    Theme& m_theme;
    facts::FactBook m_book;
    QMap<QString, QString> m_ownFacts;
    record::TankId m_tank;
    facade::StockModel m_stock;
    facade::StockDesk* m_desk;
    AnimalsModel* m_animalsModel;
    PlantsModel* m_plantsModel;
    AnimalsTable* m_animals;
    PlantsTable* m_plants;
    AdditionCard* m_addition;
    StockGatesCard* m_gates;
    Co2TrialsCard* m_co2;
    AcclimationCard* m_acclimation;
    LineageView* m_lineage;
    StockCard* m_lineageCard;
    Text *m_title, *m_litres, *m_why, *m_plantNote, *m_noAnimals, *m_noPlants, *m_clock, *m_noMoves;
    QLineEdit* m_filter;
    QComboBox* m_order;
    QPushButton* m_quarantine;
    QWidget* m_bar;
    QWidget* m_left;
    QWidget* m_side;
    QBoxLayout* m_columns;
    bool m_stale = true;
};

} // namespace littoral::ui
