// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"
#include "ui/widgets/side_panel.h"

class QComboBox;

namespace littoral::ui {

class MomentEdit;

/// One reading that was typed before: its value, unit, time and note. New readings are typed on Rounds.
class ReadingEditor final : public SidePanel
{
    Q_OBJECT

public:
    ReadingEditor(facade::Keeper& keeper, Theme& theme, QWidget* parent = nullptr);

    void edit(record::ReadingId reading);
    [[nodiscard]] bool hasDraft() const override;

private:
    void save();

    facade::Keeper& m_keeper;
    record::Reading m_reading;
    QLineEdit *m_value, *m_note;
    QComboBox* m_unit;
    MomentEdit* m_at;
    QPushButton* m_save;
};

} // namespace littoral::ui
