// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"
#include "ui/pages/editors/form_binder.h"
#include "ui/widgets/side_panel.h"

class QComboBox;

namespace littoral::ui {

class CautionBox;
class MomentEdit;
class OutlineView;

/// A tank and one of its layouts, every field of both, with the outline and the litres of water as they follow.
class TankEditor final : public SidePanel
{
    Q_OBJECT

public:
    TankEditor(facade::Keeper& keeper, Theme& theme, QWidget* parent = nullptr);

    void addTank();
    /// The tank with its running (or newest) layout.
    void editTank(record::TankId tank);
    void editLayout(record::LayoutId layout);
    /// A further layout for the tank, flooded now unless told otherwise.
    void addLayout(record::TankId tank);
    [[nodiscard]] bool hasDraft() const override;
    [[nodiscard]] record::TankId tank() const { return m_tank.id; }

signals:
    void tankAdded(littoral::record::TankId tank);
    void kitsWanted();
    void targetsWanted(littoral::record::TankId tank);
    void sourceWanted(littoral::record::SourceWaterId source);
    void dosesWanted(littoral::record::LayoutId layout);
    void entriesWanted(littoral::record::TankId tank);

private:
    void makeTankForm();
    void makeLayoutForm();
    void makeWaterForm();
    void makeLinks();
    void makeFoot();
    void bind();
    void show(const record::Tank& tank, const record::Layout& layout);
    void fillSources();
    void refreshOutcome();
    void save();
    void endLayout();
    void removeTank();
    /// Empty when everything could be read.
    [[nodiscard]] QString read(record::Tank& tank, record::Layout& layout) const;

    facade::Keeper& m_keeper;
    record::Tank m_tank;
    record::Layout m_layout;
    // The window is made anew when units change.
    record::Measure m_lengthUnit = record::lengthMeasure(record::shownUnits());
    record::Measure m_volume = record::volumeMeasure(record::shownUnits());
    record::Measure m_temperatureUnit = record::temperatureMeasure(record::shownUnits());
    FormBinder<record::Tank> m_tankFields;
    FormBinder<record::Layout> m_layoutFields;
    QLineEdit *m_name, *m_length, *m_depth, *m_height, *m_glass, *m_note;
    QLineEdit *m_layoutName, *m_bedLitres, *m_rock, *m_gap, *m_net, *m_co2Target, *m_co2Hours, *m_lightHours, *m_par,
        *m_flow, *m_temperature, *m_uptakeLow, *m_uptakeHigh, *m_layoutNote;
    MomentEdit *m_flooded, *m_ended;
    QComboBox *m_start, *m_bed, *m_plants, *m_source, *m_co2;
    QCheckBox *m_hardens, *m_cadence;
    OutlineView* m_outline;
    CautionBox* m_caution;
    Text *m_litres, *m_kits;
    QPushButton *m_save, *m_newLayout, *m_end, *m_remove;
    QWidget* m_links;
};

} // namespace littoral::ui
