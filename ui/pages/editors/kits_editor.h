// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"
#include "ui/pages/editors/form_binder.h"
#include "ui/widgets/side_panel.h"

class QListWidget;

namespace littoral::ui {

/// The test kits of the row: what each reads, in which unit and basis, on which steps, and until when it is good.
class KitsEditor final : public SidePanel
{
    Q_OBJECT

public:
    KitsEditor(facade::Keeper& keeper, Theme& theme, QWidget* parent = nullptr);

    void open();
    [[nodiscard]] bool hasDraft() const override;

private:
    void makeForm();
    void refreshList();
    void show(const record::TestKit& kit);
    void fillUnits();
    [[nodiscard]] QString read(record::TestKit& kit) const;
    [[nodiscard]] QString shakeText(record::KitId kit) const;
    void save();

    facade::Keeper& m_keeper;
    record::TestKit m_kit;
    FormBinder<record::TestKit> m_fields;
    QListWidget* m_list;
    QLineEdit *m_name, *m_steps, *m_shake, *m_wait, *m_opened, *m_expires;
    QComboBox *m_parameter, *m_unit;
    QPushButton* m_save;
};

/// "0 0.25 0.5 1 2": numbers apart by spaces, semicolons or, with decimal points, commas. The error names what is
/// wrong.
[[nodiscard]] Result<std::vector<double>> stepsFrom(const QString& text);
[[nodiscard]] QString stepsText(const std::vector<double>& steps);

} // namespace littoral::ui
