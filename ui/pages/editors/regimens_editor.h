// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"
#include "ui/pages/editors/form_binder.h"
#include "ui/widgets/side_panel.h"

class QListWidget;

namespace littoral::ui {

/// What one layout is dosed with: a salt, a stock solution or a fertiliser, how much, on which days and until when.
/// What a dose adds to the water is shown while it is typed.
class RegimensEditor final : public SidePanel
{
    Q_OBJECT

public:
    RegimensEditor(facade::Keeper& keeper, Theme& theme, QWidget* parent = nullptr);

    void setLayout(record::LayoutId layout);
    [[nodiscard]] bool hasDraft() const override;
    /// What is said under the form about the dose as typed.
    [[nodiscard]] QString outcome() const;

private:
    void makeForm();
    void makeContents();
    void makeDays();
    void refreshList();
    void show(const record::DoseRegimen& regimen);
    void startNew();
    void refreshOutcome();
    [[nodiscard]] record::DoseRegimen blank() const;
    [[nodiscard]] QString read(record::DoseRegimen& regimen) const;
    void save();
    void remove();

    facade::Keeper& m_keeper;
    record::LayoutId m_layout;
    record::DoseRegimen m_regimen;
    FormBinder<record::DoseRegimen> m_fields;
    QListWidget* m_list;
    QLineEdit *m_name, *m_amount, *m_every, *m_from, *m_until;
    QComboBox *m_form, *m_salt;
    QWidget *m_saltPart, *m_stockPart, *m_labelPart;
    std::vector<QCheckBox*> m_weekdays;
    Text* m_outcome;
    QPushButton *m_save, *m_remove;
};

} // namespace littoral::ui
