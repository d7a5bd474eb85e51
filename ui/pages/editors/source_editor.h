// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"
#include "ui/pages/editors/form_binder.h"
#include "ui/widgets/side_panel.h"

namespace littoral::ui {

/// One source water: what goes in at a water change. Every figure may stay empty; nothing measured is nothing stated.
class SourceEditor final : public SidePanel
{
    Q_OBJECT

public:
    SourceEditor(facade::Keeper& keeper, Theme& theme, QWidget* parent = nullptr);

    /// None: a new one.
    void edit(record::SourceWaterId source);
    [[nodiscard]] bool hasDraft() const override;

private:
    void show(const record::SourceWater& source);
    void save();

    facade::Keeper& m_keeper;
    record::SourceWater m_source;
    FormBinder<record::SourceWater> m_fields;
    QLineEdit* m_name;
    QPushButton* m_save;
};

} // namespace littoral::ui
