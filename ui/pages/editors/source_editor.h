// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"
#include "ui/pages/editors/form_binder.h"
#include "ui/widgets/side_panel.h"

namespace littoral::ui {

/// One source water: what goes in at a water change. Every figure may stay empty; nothing measured is nothing stated. A
/// blend names its two parts and their share; what that comes to is shown while it is typed.
class SourceEditor final : public SidePanel
{
    Q_OBJECT

public:
    SourceEditor(facade::Keeper& keeper, Theme& theme, QWidget* parent = nullptr);

    /// None: a new one.
    void edit(record::SourceWaterId source);
    [[nodiscard]] bool hasDraft() const override;
    /// What the water comes to as it is typed.
    [[nodiscard]] QString profile() const;

private:
    void makePartsForm();
    void makeFigures();
    void show(const record::SourceWater& source);
    void fillParts();
    void refreshProfile();
    /// Empty when everything could be read.
    [[nodiscard]] QString read(record::SourceWater& source) const;
    void save();

    facade::Keeper& m_keeper;
    record::SourceWater m_source;
    FormBinder<record::SourceWater> m_fields;
    QLineEdit *m_name, *m_share;
    QComboBox *m_kind, *m_first, *m_second;
    QWidget* m_parts;
    Text* m_profile;
    QPushButton* m_save;
};

} // namespace littoral::ui
