// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"
#include "ui/widgets/side_panel.h"

#include <vector>

namespace littoral::ui {

/// The wanted range of each parameter in one tank, in shown units; either end may stay open.
class TargetsEditor final : public SidePanel
{
    Q_OBJECT

public:
    TargetsEditor(facade::Keeper& keeper, Theme& theme, QWidget* parent = nullptr);

    void setTank(record::TankId tank);
    [[nodiscard]] bool hasDraft() const override;

private:
    struct Line
    {
        const record::Parameter* parameter;
        QLineEdit* low;
        QLineEdit* high;
        QString lowShown, highShown;
    };
    void save();

    facade::Keeper& m_keeper;
    record::TankId m_tank;
    std::vector<Line> m_lines;
    QPushButton* m_save;
};

} // namespace littoral::ui
