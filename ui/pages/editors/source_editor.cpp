// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/editors/source_editor.h"

#include "core/record/shown.h"
#include "core/wording/source_words.h"

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
    m_kind = new QComboBox;
    m_kind->addItems({tr("Tap"), tr("Reverse osmosis"), tr("Blend"), tr("Rain")});
    addRow(form, tr("Kind"), m_kind);
    m_fields.text(m_name, &record::SourceWater::name);
    m_fields.choice(m_kind, &record::SourceWater::kind);
    makePartsForm();
    makeFigures();
    body()->addStretch(1);
    m_save = addFootButton(tr("Save"), tr("Enter"), true);
    connect(m_save, &QPushButton::clicked, this, &SourceEditor::save);
    connect(m_kind, &QComboBox::currentIndexChanged, this, &SourceEditor::refreshProfile);
    for (QLineEdit* field : findChildren<QLineEdit*>()) {
        connect(field, &QLineEdit::textChanged, this, &SourceEditor::refreshProfile);
    }
    for (QComboBox* combo : findChildren<QComboBox*>()) {
        connect(combo, &QComboBox::currentIndexChanged, this, &SourceEditor::refreshProfile);
    }
    setFirstField(m_name);
    show({});
}

void SourceEditor::makePartsForm()
{
    m_parts = new QWidget;
    auto* form = new QFormLayout(m_parts);
    form->setContentsMargins(0, 0, 0, 0);
    form->setRowWrapPolicy(QFormLayout::WrapAllRows);
    m_first = new QComboBox;
    m_second = new QComboBox;
    for (QComboBox* combo : {m_first, m_second}) {
        combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        combo->setMinimumContentsLength(10);
    }
    addRow(form, tr("First part"), m_first);
    m_share = addField(form, tr("Share of the first part, %"), tr("30"));
    addRow(form, tr("Second part"), m_second);
    m_fields.optional(m_share, &record::SourceWater::firstShare, 0, 100, 0.01);
    body()->addWidget(m_parts);
}

void SourceEditor::makeFigures()
{
    m_profile = new Text(theme(), TextStyle::Secondary);
    m_profile->setWordWrap(true);
    body()->addWidget(m_profile);
    QFormLayout* form = addForm(tr("Measured"));
    auto* chloramine = new QComboBox;
    chloramine->addItems({tr("No"), tr("Unknown"), tr("Yes")});
    addRow(form, tr("Chloramine in it"), chloramine);
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
}

void SourceEditor::fillParts()
{
    for (const auto& [combo, part] :
         {std::pair{m_first, m_source.firstPart}, std::pair{m_second, m_source.secondPart}}) {
        const QSignalBlocker quiet(combo);
        combo->clear();
        combo->addItem(tr("Not stated"), QVariant::fromValue<qint64>(0));
        for (const record::SourceWater& water : m_keeper.row().sources) {
            if (water.id != m_source.id) {
                combo->addItem(water.name, water.id.value);
            }
        }
        combo->setCurrentIndex(std::max(0, combo->findData(part.value)));
    }
}

void SourceEditor::show(const record::SourceWater& source)
{
    m_source = source;
    clearProblem();
    fillParts();
    m_fields.fill(source);
    setTitle(source.id ? tr("Source water %1").arg(source.name) : tr("New source water"));
    m_save->setEnabled(!m_keeper.isReadOnly());
    refreshProfile();
}

void SourceEditor::edit(record::SourceWaterId source)
{
    const record::SourceWater* found = m_keeper.row().source(source);
    if (!(m_source.id == source && hasDraft())) {
        show(found == nullptr ? record::SourceWater{} : *found);
    }
}

QString SourceEditor::read(record::SourceWater& source) const
{
    const QString problem = m_fields.read(source);
    const bool blend = source.kind == record::SourceKind::Blend;
    source.firstPart.value = blend ? m_first->currentData().toLongLong() : 0;
    source.secondPart.value = blend ? m_second->currentData().toLongLong() : 0;
    if (!blend) {
        source.firstShare.reset();
    }
    return problem;
}

/// What the blend comes to as it stands in the fields, before it is saved.
void SourceEditor::refreshProfile()
{
    const bool blend = m_kind->currentIndex() == static_cast<int>(record::SourceKind::Blend);
    m_parts->setVisible(blend);
    m_profile->setVisible(blend || m_kind->currentIndex() == static_cast<int>(record::SourceKind::ReverseOsmosis));
    record::SourceWater typed = m_source;
    (void)read(typed);
    std::vector<record::SourceWater> all = m_keeper.row().sources;
    std::erase_if(all, [&](const record::SourceWater& water) { return water.id == typed.id; });
    all.push_back(typed);
    m_profile->setText(wording::sourceProfileText(all, all.back()));
}

QString SourceEditor::profile() const
{
    return m_profile->text();
}

bool SourceEditor::hasDraft() const
{
    record::SourceWater typed = m_source;
    return !read(typed).isEmpty() || typed != m_source;
}

void SourceEditor::save()
{
    record::SourceWater typed = m_source;
    QString problem = read(typed);
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
