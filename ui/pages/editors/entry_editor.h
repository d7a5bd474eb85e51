// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"
#include "ui/widgets/side_panel.h"

#include <map>

class QCheckBox;
class QComboBox;
class QPlainTextEdit;

namespace littoral::ui {

class CautionBox;
class MomentEdit;

/// One entry of any kind. The form shows the fields its kind has; what was typed in the others stays while the kind is
/// changed. An entry half typed is there again when the panel comes back.
class EntryEditor final : public SidePanel
{
    Q_OBJECT

public:
    EntryEditor(facade::Keeper& keeper, Theme& theme, QWidget* parent = nullptr);

    /// A new entry, unless one is half typed already.
    void begin(record::TankId tank, record::EntryKind kind);
    /// The same with more of it filled in beforehand.
    void begin(const record::Entry& proposed);
    void edit(record::EntryId entry);
    [[nodiscard]] bool hasDraft() const override;
    [[nodiscard]] record::EntryKind kind() const;
    /// The caution above the action; empty when the kind needs none.
    [[nodiscard]] QString caution() const;

private:
    /// Which fields a kind has.
    enum Field {
        Subject,
        Fraction,
        Litres,
        Amount,
        Unit,
        Second,
        Protein,
        Count,
        Load,
        Severity,
        Coverage,
        Where,
        Source,
        OtherTank
    };

    void makeForm();
    void makeFoot();
    [[nodiscard]] QLineEdit* number(Field field, const QString& label, const QString& hint = {});
    void place(Field field, QWidget* widget, const QString& label);
    void show(const record::Entry& entry);
    void fillChoices();
    void refreshKind();
    void refreshCaution();
    void refreshLitres();
    void refreshPlanned();
    void nameField(Field field, const QString& label);
    [[nodiscard]] std::optional<double> net() const;
    /// Empty when everything could be read.
    [[nodiscard]] QString read(record::Entry& entry) const;
    [[nodiscard]] QString keptSubject(const record::Entry& entry) const;
    [[nodiscard]] QString readNumbers(record::Entry& entry) const;
    [[nodiscard]] QString missing(const record::Entry& entry) const;
    void save();
    void remove();

    facade::Keeper& m_keeper;
    record::Entry m_entry;
    record::Entry m_asShown; ///< what the fields said when the entry was put into them
    QComboBox *m_tank, *m_kind, *m_subject, *m_severity, *m_source, *m_otherTank;
    MomentEdit* m_at;
    QCheckBox* m_planned;
    QLineEdit *m_fraction, *m_litres, *m_amount, *m_unit, *m_second, *m_protein, *m_count, *m_load, *m_coverage,
        *m_where;
    QPlainTextEdit* m_note;
    CautionBox* m_caution;
    QPushButton *m_save, *m_remove;
    QFormLayout* m_form;
    std::map<Field, std::pair<QLabel*, QWidget*>> m_rows;
};

} // namespace littoral::ui
