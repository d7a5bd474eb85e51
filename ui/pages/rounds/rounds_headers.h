// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"
#include "ui/theme/theme.h"

#include <QHeaderView>

namespace littoral::ui {

class RoundsModel;

/// Above the columns: the parameter's mark and symbol, its unit beneath.
class ParameterHeader final : public QHeaderView
{
    Q_OBJECT

public:
    explicit ParameterHeader(Theme& theme, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintSection(QPainter* painter, const QRect& rect, int section) const override;

private:
    Theme& m_theme;
};

/// Beside the rows: the tank's name, litres and age, outline to one scale.
class TankHeader final : public QHeaderView
{
    Q_OBJECT

public:
    TankHeader(Theme& theme, const facade::Keeper& keeper, const RoundsModel& model, QWidget* parent = nullptr);
    void setCurrentRow(int row);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintSection(QPainter* painter, const QRect& rect, int section) const override;

private:
    Theme& m_theme;
    const facade::Keeper& m_keeper;
    const RoundsModel& m_model;
    int m_current = -1;
};

} // namespace littoral::ui
