// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/stock_table_models.h"
#include "ui/theme/theme.h"

#include <QHeaderView>
#include <QStyledItemDelegate>

namespace littoral::ui {

/// What both tables draw alike: ground, ring, a status with its word, text on one or two lines.
class StockDelegate : public QStyledItemDelegate
{
public:
    StockDelegate(Theme& theme, QObject* parent)
        : QStyledItemDelegate(parent)
        , m_theme(theme)
    {
    }

protected:
    void ground(QPainter& painter, const QStyleOptionViewItem& option) const;
    void ring(QPainter& painter, const QStyleOptionViewItem& option) const;
    void verdict(QPainter& painter, const QRect& rect, facade::Status status, const QString& text) const;
    void wrapped(QPainter& painter, const QRect& rect, const QFont& font, const QColor& ink, const QString& text) const;

    Theme& m_theme;
};

class AnimalsDelegate final : public StockDelegate
{
public:
    AnimalsDelegate(Theme& theme, const AnimalsModel& model, QObject* parent)
        : StockDelegate(theme, parent)
        , m_model(model)
    {
    }
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    void species(QPainter& painter, const QRect& rect, const QModelIndex& index) const;
    void cell(QPainter& painter, const QRect& rect, const facade::StockColumn& column,
              const facade::StockCell& cell) const;

    const AnimalsModel& m_model;
};

class PlantsDelegate final : public StockDelegate
{
public:
    PlantsDelegate(Theme& theme, const PlantsModel& model, QObject* parent)
        : StockDelegate(theme, parent)
        , m_model(model)
    {
    }
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    /// Steps of need with the tank's own level as a line across.
    void need(QPainter& painter, const QRect& rect, int steps, std::optional<double> level) const;
    void cover(QPainter& painter, const QRect& rect, const facade::PlantRow& row) const;

    const PlantsModel& m_model;
};

/// Parameter columns of the animals carry their mark and the ticks of the scale below the name; without animals only
/// names.
class StockHeader final : public QHeaderView
{
    Q_OBJECT

public:
    StockHeader(Theme& theme, const AnimalsModel* animals, QWidget* parent);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintSection(QPainter* painter, const QRect& rect, int section) const override;

private:
    Theme& m_theme;
    const AnimalsModel* m_animals;
};

/// Where a value stands in a parameter's cell.
[[nodiscard]] double scaleX(const facade::StockColumn& column, const QRect& cell, double value, const Theme& theme);

} // namespace littoral::ui
