// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/supplies.h"
#include "core/facade/keeper.h"
#include "ui/pages/editors/form_binder.h"
#include "ui/widgets/side_panel.h"

class QListWidget;

namespace littoral::ui {

/// What is in stock: how much was there and when, what uses it up, its date; above the form what is left and how long
/// it lasts, with what that rests on. A cylinder is weighed here, too.
class SuppliesEditor final : public SidePanel
{
    Q_OBJECT

public:
    SuppliesEditor(facade::Keeper& keeper, Theme& theme, QWidget* parent = nullptr);

    void open();
    /// The supply with the keyboard in its form.
    void edit(record::SupplyId supply);
    [[nodiscard]] bool hasDraft() const override;
    /// What the panel says about the supply shown.
    [[nodiscard]] QString standingText() const { return m_standing->text(); }

signals:
    /// A test kit of the list was chosen: its form is another.
    void kitsWanted();

private:
    struct Draft
    {
        record::Supply supply;
        care::SupplyUse use;

        bool operator==(const Draft&) const = default;
    };

    void makeForm();
    void makeWeighing();
    void refreshList();
    void refreshChoices();
    void refreshStanding();
    void arrangeFields();
    void show(const record::Supply& supply);
    [[nodiscard]] QString read(Draft& draft) const;
    [[nodiscard]] QString readDays(record::Supply& supply) const;
    void choose(int row);
    void save();
    void remove();
    void enterWeighing();
    [[nodiscard]] QString kind() const;

    facade::Keeper& m_keeper;
    Draft m_shown;
    FormBinder<record::Supply> m_fields;
    QListWidget* m_list;
    Text* m_standing;
    Text* m_caution;
    QLineEdit *m_name, *m_opened, *m_expires, *m_perLitre, *m_empty, *m_weight;
    QComboBox *m_kind, *m_unit, *m_source, *m_tank;
    QWidget *m_useBox, *m_cylinderBox;
    QPushButton *m_save, *m_remove, *m_weigh;
};

} // namespace littoral::ui
