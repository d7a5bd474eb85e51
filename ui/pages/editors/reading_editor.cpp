// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/editors/reading_editor.h"

#include "ui/models/day_words.h"
#include "ui/models/entries_model.h"
#include "ui/widgets/moment_edit.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace littoral::ui {

ReadingEditor::ReadingEditor(facade::Keeper& keeper, Theme& theme, QWidget* parent)
    : SidePanel(theme, tr("Reading"), parent)
    , m_keeper(keeper)
{
    QFormLayout* form = addForm();
    m_value = addField(form, tr("Value"), tr("0.25, <0.05 or 5-10"));
    m_unit = new QComboBox;
    addRow(form, tr("Unit"), m_unit);
    m_at = new MomentEdit(keeper.clock(), false);
    addRow(form, tr("Read at"), m_at);
    m_note = addField(form, tr("Note"));
    body()->addStretch(1);
    m_save = addFootButton(tr("Save"), tr("Enter"), true);
    connect(m_save, &QPushButton::clicked, this, &ReadingEditor::save);
    setFirstField(m_value);
}

void ReadingEditor::edit(record::ReadingId reading)
{
    if (m_reading.id == reading && hasDraft()) {
        return;
    }
    for (const auto& [id, layout] : m_keeper.row().layouts) {
        for (const record::Reading& found : layout.readings) {
            if (found.id == reading) {
                m_reading = found;
            }
        }
    }
    clearProblem();
    m_unit->clear();
    if (const record::Parameter* parameter = record::findParameter(m_reading.parameter)) {
        for (const record::Unit& unit : parameter->units) {
            m_unit->addItem(unit.label, unit.code);
        }
        const record::Tank* tank = m_keeper.row().tank(m_reading.tank);
        setTitle(tank == nullptr ? parameter->name : tr("%1, %2").arg(tank->name, parameter->name));
    }
    m_unit->setCurrentIndex(std::max(0, m_unit->findData(m_reading.unit)));
    m_value->setText(m_reading.typed);
    m_at->setMoment(m_reading.at);
    m_note->setText(m_reading.note);
    m_save->setEnabled(!m_keeper.isReadOnly());
}

bool ReadingEditor::hasDraft() const
{
    return m_reading.id &&
           (m_value->text() != m_reading.typed || m_note->text() != m_reading.note ||
            m_at->text() != momentEditText(m_reading.at) || m_unit->currentData().toString() != m_reading.unit);
}

void ReadingEditor::save()
{
    facade::Keeper::TypedReading typed;
    typed.replaces = m_reading.id;
    typed.layout = m_reading.layout;
    typed.parameter = m_reading.parameter;
    typed.typed = m_value->text();
    typed.unit = m_unit->currentData().toString();
    typed.at = m_at->text() == momentEditText(m_reading.at) ? m_reading.at : m_at->moment();
    typed.kit = m_reading.kit;
    typed.note = m_note->text().trimmed();
    if (!typed.at.isValid()) {
        showProblem(tr("The time is not understood. Type it as 2026-11-25 07:30."));
        return;
    }
    if (const auto done = m_keeper.enterReading(typed); !done) {
        showProblem(QString::fromStdString(done.error().sentence()));
        return;
    }
    m_reading = {};
    emit saved(tr("%1: %2 saved").arg(title(), m_value->text().trimmed()));
    emit closeRequested();
}

} // namespace littoral::ui
