// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/acclimation_plan.h"
#include "core/facade/keeper.h"
#include "core/facade/stock_desk.h"
#include "core/facade/stock_model.h"
#include "ui/widgets/text.h"

#include <QFrame>
#include <optional>

class QComboBox;
class QLineEdit;
class QPushButton;
class QSpinBox;
class QVBoxLayout;

namespace littoral::ui {

class CautionBox;

class LoadChart;
class MomentEdit;

/// A card of the side column: title, a word beside it, a body.
class StockCard : public QFrame
{
    Q_OBJECT

public:
    StockCard(Theme& theme, const QString& title, QWidget* parent = nullptr);

    void setTitle(const QString& title);
    void setAside(const QString& words);

protected:
    [[nodiscard]] Theme& theme() const { return m_theme; }
    [[nodiscard]] QVBoxLayout* body() const { return m_body; }
    Text* addText(TextStyle style, const QString& text = {});

private:
    Theme& m_theme;
    Text* m_title;
    Text* m_aside;
    QVBoxLayout* m_body;
};

/// Choose an animal and how many; see what the filter and the forecast say; plan it or record it as added.
class AdditionCard final : public StockCard
{
    Q_OBJECT

public:
    AdditionCard(facade::Keeper& keeper, facade::StockDesk& desk, Theme& theme, QWidget* parent = nullptr);

    void setSpecies(const facts::FactBook& book);
    /// The tank it is about, with its stock; `wish` rows are in it already.
    void setStock(const facade::StockModel& model);
    [[nodiscard]] std::optional<facade::StockWish> wish() const;
    [[nodiscard]] std::optional<facade::Addition> addition() const;
    void choose(const QString& speciesId, int count, int lots = 1);
    void focusFirst();
    /// Asks for the trial again (a new forecast, another tank).
    void weigh();

    [[nodiscard]] QComboBox* speciesBox() { return m_species; }
    [[nodiscard]] QSpinBox* countBox() { return m_count; }
    [[nodiscard]] QLineEdit* reason() { return m_reason; }
    [[nodiscard]] QPushButton* planButton() { return m_plan; }
    [[nodiscard]] QPushButton* recordButton() { return m_record; }
    [[nodiscard]] QString verdict() const;

signals:
    void wishChanged();
    void told(const QString& sentence);
    void failed(const littoral::Error& error, const QString& safe);

private:
    void makeForm();
    void changed();
    void refresh();
    void write(bool plan);

    facade::Keeper& m_keeper;
    facade::StockDesk& m_desk;
    facade::StockModel m_stock;
    std::vector<facts::Species> m_animals;
    QComboBox* m_species;
    QSpinBox *m_count, *m_lots;
    MomentEdit* m_day;
    LoadChart* m_chart;
    Text *m_load, *m_verdict, *m_gates, *m_against, *m_advice;
    CautionBox* m_caution;
    QLineEdit* m_reason;
    QPushButton *m_plan, *m_record;
};

/// Every gate with what is still open of it.
class StockGatesCard final : public StockCard
{
    Q_OBJECT

public:
    StockGatesCard(Theme& theme, QWidget* parent = nullptr);
    void setStock(const facade::StockModel& model, const QDate& today);

private:
    QVBoxLayout* m_rows;
};

/// Steps from the bag into the tank, for the animal considered.
class AcclimationCard final : public StockCard
{
    Q_OBJECT

public:
    explicit AcclimationCard(Theme& theme, QWidget* parent = nullptr);
    void setAnimal(const std::optional<facts::Species>& species, const facade::StockModel& model);
    [[nodiscard]] const facade::AcclimationPlan& plan() const { return m_plan; }
    [[nodiscard]] QLineEdit* ghField() { return m_gh; }
    [[nodiscard]] QLineEdit* phField() { return m_ph; }

private:
    void refresh();

    std::optional<facts::Species> m_species;
    facade::TankWater m_tank;
    facade::AcclimationPlan m_plan;
    QLineEdit *m_ph, *m_gh, *m_hours, *m_litres;
    Text* m_way;
    QWidget* m_fields;
    QVBoxLayout* m_steps;
    CautionBox* m_caution;
};

/// A row of a status with a strong line and a smaller one; what gates and steps are made of.
[[nodiscard]] QWidget* statusRow(Theme& theme, facade::Status status, const QString& strong, const QString& rest);

} // namespace littoral::ui
