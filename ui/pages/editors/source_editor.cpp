// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/editors/source_editor.h"

#include "core/record/shown.h"

#include <QFormLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

double factorOf(const QString& parameter)
{
    const record::Parameter* found = record::findParameter(parameter);
    return found == nullptr ? 1.0 : found->shown().factor;
}

/// The highest figure of the usual unit, in the one on show.
double most(const QString& parameter, double usual)
{
    const record::Parameter* found = record::findParameter(parameter);
    return found == nullptr ? usual
                            : found->shown().fromCanonical(record::inUsualUnits(*found).shown().toCanonical(usual));
}

QString withUnit(const QString& label, const QString& parameter)
{
    return label.arg(record::findParameter(parameter)->shown().label);
}

} // namespace

SourceEditor::SourceEditor(facade::Keeper& keeper, Theme& theme, QWidget* parent)
    : SidePanel(theme, tr("Source water"), parent)
    , m_keeper(keeper)
{
    QFormLayout* form = addForm();
    m_name = addField(form, tr("Name"), tr("tap"));
    auto* kind = new QComboBox;
    kind->addItems({tr("Tap"), tr("Reverse osmosis"), tr("Blend"), tr("Rain")});
    addRow(form, tr("Kind"), kind);
    auto* chloramine = new QComboBox;
    chloramine->addItems({tr("No"), tr("Unknown"), tr("Yes")});
    addRow(form, tr("Chloramine in it"), chloramine);
    m_fields.text(m_name, &record::SourceWater::name);
    m_fields.choice(kind, &record::SourceWater::kind);
    m_fields.choice(chloramine, &record::SourceWater::chloramine);
    const QString unknown = tr("not measured");
    m_fields.optional(addField(form, withUnit(tr("Nitrate, %1"), u"no3"_s), unknown),
                      &record::SourceWater::nitrate_mgN_per_L, 0, most(u"no3"_s, 500), factorOf(u"no3"_s));
    m_fields.optional(addField(form, withUnit(tr("KH, %1"), u"kh"_s), unknown),
                      &record::SourceWater::alkalinity_meq_per_L, 0, most(u"kh"_s, 50), factorOf(u"kh"_s));
    m_fields.optional(addField(form, withUnit(tr("GH, %1"), u"gh"_s), unknown),
                      &record::SourceWater::hardness_mmol_per_L, 0, most(u"gh"_s, 80), factorOf(u"gh"_s));
    m_fields.optional(addField(form, tr("pH"), unknown), &record::SourceWater::ph, 2, 13);
    m_fields.optional(addField(form, withUnit(tr("Chloride, %1"), u"cl"_s), unknown),
                      &record::SourceWater::chloride_mg_per_L, 0, 5000);
    m_fields.text(addField(form, tr("Note")), &record::SourceWater::note);
    body()->addStretch(1);
    m_save = addFootButton(tr("Save"), tr("Enter"), true);
    connect(m_save, &QPushButton::clicked, this, &SourceEditor::save);
    setFirstField(m_name);
    show({});
}

void SourceEditor::show(const record::SourceWater& source)
{
    m_source = source;
    clearProblem();
    m_fields.fill(source);
    setTitle(source.id ? tr("Source water %1").arg(source.name) : tr("New source water"));
    m_save->setEnabled(!m_keeper.isReadOnly());
}

void SourceEditor::edit(record::SourceWaterId source)
{
    const record::SourceWater* found = m_keeper.row().source(source);
    if (!(m_source.id == source && hasDraft())) {
        show(found == nullptr ? record::SourceWater{} : *found);
    }
}

bool SourceEditor::hasDraft() const
{
    record::SourceWater typed = m_source;
    return !m_fields.read(typed).isEmpty() || typed != m_source;
}

void SourceEditor::save()
{
    record::SourceWater typed = m_source;
    QString problem = m_fields.read(typed);
    if (problem.isEmpty() && typed.name.isEmpty()) {
        problem = tr("The source water has no name yet.");
    }
    if (!problem.isEmpty()) {
        showProblem(problem);
        return;
    }
    store::Edit edit(tr("source water %1").arg(typed.name));
    typed.id = edit.put(typed);
    if (const auto done = m_keeper.commit(edit); !done) {
        showProblem(QString::fromStdString(done.error().sentence()));
        return;
    }
    show(typed);
    emit saved(tr("Source water %1 saved").arg(typed.name));
    emit closeRequested();
}

} // namespace littoral::ui
