// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/stock_model.h"

#include <QAbstractTableModel>
#include <QDate>

namespace littoral::ui {

/// The order of rows within their groups.
enum class StockOrder { Arrival, Verdict, Name };

/// Animals: a heading for those that live here, those planned and the one considered; then one row each. Columns:
/// species, class, one for each parameter, verdict.
class AnimalsModel final : public QAbstractTableModel
{
    Q_OBJECT

public:
    enum Column { SpeciesColumn, ClassColumn, FirstParameter };
    enum Role {
        HeadingRole = Qt::UserRole + 1, ///< bool
        CountRole,                      ///< second line of the species
        StatusRole,                     ///< facade::Status as int
        ReasonsRole,                    ///< QStringList
    };
    Q_ENUM(Role)

    using QAbstractTableModel::QAbstractTableModel;

    void setModel(const facade::StockModel& model, const QDate& today);
    void setFilter(const QString& text);
    void setOrder(StockOrder order);
    [[nodiscard]] const facade::StockModel& stock() const { return m_stock; }
    [[nodiscard]] const facade::AnimalRow* animal(int row) const; ///< nullptr for a heading
    [[nodiscard]] int verdictColumn() const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    struct Line
    {
        int animal = -1; ///< place in the stock; -1: a heading
        facade::StockPlace place = facade::StockPlace::Here;
    };
    void arrange();

    facade::StockModel m_stock;
    QDate m_today;
    QString m_filter;
    StockOrder m_order = StockOrder::Arrival;
    std::vector<Line> m_lines;
};

/// Plants: species, place, light, carbon dioxide, cover, condition.
class PlantsModel final : public QAbstractTableModel
{
    Q_OBJECT

public:
    enum Column { SpeciesColumn, PlaceColumn, LightColumn, Co2Column, CoverColumn, ConditionColumn, Columns };

    using QAbstractTableModel::QAbstractTableModel;

    void setModel(const facade::StockModel& model, const QDate& today);
    void setFilter(const QString& text);
    void setOrder(StockOrder order);
    [[nodiscard]] const facade::StockModel& stock() const { return m_stock; }
    [[nodiscard]] const facade::PlantRow* plant(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    void arrange();

    facade::StockModel m_stock;
    QDate m_today;
    QString m_filter;
    StockOrder m_order = StockOrder::Arrival;
    std::vector<int> m_rows;
};

} // namespace littoral::ui
