// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/editors/entry_editor.h"

#include "core/facts/entry_cautions.h"
#include "core/record/shown.h"
#include "core/wording/entry_words.h"
#include "ui/models/day_words.h"
#include "ui/models/entry_words.h"
#include "ui/models/number_text.h"
#include "ui/pages/editors/entry_kinds.h"
#include "ui/widgets/caution_box.h"
#include "ui/widgets/moment_edit.h"

#include <QCheckBox>
#include <QComboBox>
#include <QCompleter>
#include <QFormLayout>
#include <QFrame>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <cmath>

namespace littoral::ui {

namespace {

record::Measure volumeUnit()
{
    return record::volumeMeasure(record::shownUnits());
}

/// From what is typed to what is kept. Only water is typed in a unit that can be chosen.
double amountFactor(record::EntryKind kind)
{
    return kind == record::EntryKind::TopUp ? volumeUnit().canonical(1.0) : 1.0;
}

QString amountShown(const record::Entry& entry)
{
    const double factor = amountFactor(entry.kind);
    return entry.amount && factor != 1.0 ? numberText(*entry.amount / factor, 4) : numberText(entry.amount);
}

} // namespace

EntryEditor::EntryEditor(facade::Keeper& keeper, Theme& theme, QWidget* parent)
    : SidePanel(theme, tr("New entry"), parent)
    , m_keeper(keeper)
{
    makeForm();
    makeFoot();
    setFirstField(m_kind);
    connect(m_kind, &QComboBox::currentIndexChanged, this, &EntryEditor::refreshKind);
    connect(m_subject, &QComboBox::editTextChanged, this, &EntryEditor::refreshCaution);
    connect(m_tank, &QComboBox::currentIndexChanged, this, &EntryEditor::refreshLitres);
    connect(m_at, &MomentEdit::momentChanged, this, &EntryEditor::refreshPlanned);
    connect(m_fraction, &QLineEdit::textEdited, this, &EntryEditor::refreshLitres);
    connect(m_litres, &QLineEdit::textEdited, this, [this](const QString& text) {
        const auto litres = numberFrom(text);
        const auto volume = net();
        if (litres && volume && *volume > 0.0) {
            const double share = volumeUnit().canonical(*litres) / *volume;
            m_fraction->setText(numberText(std::round(share * 1000.0) / 10.0, 4));
        }
    });
    show({});
}

QLineEdit* EntryEditor::number(Field field, const QString& label, const QString& hint)
{
    auto* edit = new QLineEdit;
    edit->setPlaceholderText(hint);
    place(field, edit, label);
    return edit;
}

void EntryEditor::place(Field field, QWidget* widget, const QString& label)
{
    addRow(m_form, label, widget);
    m_rows[field] = {static_cast<QLabel*>(m_form->labelForField(widget)), widget};
}

void EntryEditor::makeForm()
{
    m_form = addForm();
    m_tank = new QComboBox;
    m_kind = new QComboBox;
    for (int kind = 0; kind <= static_cast<int>(record::EntryKind::Note); ++kind) {
        m_kind->addItem(record::entryKindName(static_cast<record::EntryKind>(kind)));
    }
    m_at = new MomentEdit(m_keeper.clock(), true);
    m_planned = new QCheckBox(tr("Planned, not done yet"));
    m_planned->setAccessibleName(m_planned->text());
    addRow(m_form, tr("Tank"), m_tank);
    addRow(m_form, tr("Kind"), m_kind);
    addRow(m_form, tr("When"), m_at);
    m_form->addRow(m_planned);
    m_subject = new QComboBox;
    m_subject->setEditable(true);
    place(Subject, m_subject, tr("What"));
    m_fraction = number(Fraction, tr("Part changed, %"));
    m_litres = number(Litres, tr("or %1", "a unit of volume").arg(volumeUnit().label));
    m_amount = number(Amount, tr("Amount"));
    m_unit = number(Unit, tr("Unit"));
    m_second = number(Second, tr("Second"));
    m_protein = number(Protein, tr("Protein in the feed, %"), tr("as on the tin"));
    m_count = number(Count, tr("How many"));
    m_load = number(Load, tr("Their load, mg/L N a day"), tr("not known"));
    m_severity = new QComboBox;
    for (int severity = 0; severity <= 4; ++severity) {
        m_severity->addItem(tr("%1, %2", "severity number, word").arg(severity).arg(wording::severityWord(severity)));
    }
    place(Severity, m_severity, tr("Severity"));
    m_coverage = number(Coverage, tr("Coverage, %"), tr("not judged"));
    m_where = number(Where, tr("Where"));
    m_source = new QComboBox;
    place(Source, m_source, tr("Source water"));
    m_otherTank = new QComboBox;
    place(OtherTank, m_otherTank, tr("From tank"));
    m_note = new QPlainTextEdit;
    m_note->setTabChangesFocus(true);
    m_note->setMaximumHeight(theme().px(84));
    addRow(m_form, tr("Note"), m_note);
    for (QComboBox* combo : {m_tank, m_subject, m_source, m_otherTank, m_severity}) {
        combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        combo->setMinimumContentsLength(10);
    }
    m_caution = new CautionBox(theme());
    body()->insertWidget(0, m_caution); // read before the form is filled in, without scrolling
    body()->addStretch(1);
}

void EntryEditor::makeFoot()
{
    m_save = addFootButton(tr("Save"), tr("Enter"), true);
    m_remove = addFootButton(tr("Remove"), {}, false);
    connect(m_save, &QPushButton::clicked, this, &EntryEditor::save);
    connect(m_remove, &QPushButton::clicked, this, &EntryEditor::remove);
}

record::EntryKind EntryEditor::kind() const
{
    return static_cast<record::EntryKind>(std::max(0, m_kind->currentIndex()));
}

QString EntryEditor::caution() const
{
    return m_caution->isHidden() ? QString() : m_caution->text();
}

void EntryEditor::fillChoices()
{
    m_tank->clear();
    m_otherTank->clear();
    m_source->clear();
    m_otherTank->addItem(tr("Not one of the row"), QVariant::fromValue<qint64>(0));
    m_source->addItem(tr("The layout's own"), QVariant::fromValue<qint64>(0));
    for (const record::Tank& tank : m_keeper.row().tanks) {
        m_tank->addItem(tank.name, tank.id.value);
        m_otherTank->addItem(tank.name, tank.id.value);
    }
    for (const record::SourceWater& source : m_keeper.row().sources) {
        m_source->addItem(source.name, source.id.value);
    }
}

void EntryEditor::show(const record::Entry& entry)
{
    m_entry = entry;
    clearProblem();
    fillChoices();
    m_tank->setCurrentIndex(std::max(0, m_tank->findData(entry.tank.value)));
    m_kind->setCurrentIndex(static_cast<int>(entry.kind));
    refreshKind();
    m_at->setMoment(entry.at);
    m_planned->setChecked(entry.planned);
    m_subject->setEditText(subjectShown(entry.subject));
    m_fraction->setText(entry.fraction ? numberText(*entry.fraction * 100.0, 4) : QString());
    refreshLitres();
    m_amount->setText(amountShown(entry));
    m_unit->setText(entry.id || !entry.unit.isEmpty() ? entry.unit : entryForm(entry.kind).unitProposed);
    m_second->setText(numberText(entry.second));
    m_protein->setText(entry.proteinShare ? numberText(*entry.proteinShare * 100.0, 4) : QString());
    m_count->setText(entry.count ? QString::number(*entry.count) : QString());
    m_load->setText(numberText(entry.load_mgN_per_L_d));
    m_severity->setCurrentIndex(entry.severity.value_or(2));
    m_coverage->setText(entry.coverage ? numberText(*entry.coverage * 100.0, 4) : QString());
    m_where->setText(entry.where);
    m_source->setCurrentIndex(std::max(0, m_source->findData(entry.source.value)));
    m_otherTank->setCurrentIndex(std::max(0, m_otherTank->findData(entry.otherTank.value)));
    m_note->setPlainText(entry.note);
    setTitle(entry.id ? tr("Edit entry") : tr("New entry"));
    m_remove->setVisible(static_cast<bool>(entry.id));
    m_save->setEnabled(!m_keeper.isReadOnly());
    m_remove->setEnabled(!m_keeper.isReadOnly());
    m_asShown = m_entry;
    (void)read(m_asShown);
}

void EntryEditor::begin(record::TankId tank, record::EntryKind kind)
{
    record::Entry entry;
    entry.tank = tank;
    entry.kind = kind;
    begin(entry);
}

void EntryEditor::begin(const record::Entry& proposed)
{
    if (!m_entry.id && hasDraft()) {
        return;
    }
    show(proposed);
}

void EntryEditor::edit(record::EntryId entry)
{
    if (m_entry.id == entry && hasDraft()) {
        return;
    }
    for (const auto& [id, layout] : m_keeper.row().layouts) {
        for (const record::Entry& found : layout.entries) {
            if (found.id == entry) {
                show(found);
                return;
            }
        }
    }
}

void EntryEditor::nameField(Field field, const QString& label)
{
    const auto& [name, widget] = m_rows.at(field);
    const bool there = !label.isEmpty();
    name->setVisible(there);
    widget->setVisible(there);
    if (there) {
        name->setText(label);
        widget->setAccessibleName(label);
    }
}

void EntryEditor::refreshKind()
{
    const EntryForm form = entryForm(kind());
    const auto shown = [&](Field field, bool there, const QString& label) {
        nameField(field, there ? label : QString());
    };
    nameField(Subject, form.subject);
    shown(Fraction, form.fraction,
          kind() == record::EntryKind::MediaTransfer ? tr("Share of a whole filter, %") : tr("Part changed, %"));
    shown(Litres, form.litres, tr("or %1", "a unit of volume").arg(volumeUnit().label));
    nameField(Amount, form.amount);
    nameField(Unit, form.unit);
    nameField(Second, form.second);
    shown(Protein, form.protein, tr("Protein in the feed, %"));
    shown(Count, form.count, tr("How many"));
    shown(Load, form.load, tr("Their load, mg/L N a day"));
    shown(Severity, form.severity, tr("Severity"));
    shown(Coverage, form.coverage, tr("Coverage, %"));
    shown(Where, form.where, tr("Where"));
    shown(Source, form.source, tr("Source water"));
    shown(OtherTank, form.otherTank, tr("From tank"));
    const QString typed = m_subject->currentText();
    m_subject->clear();
    m_subject->addItems(commonSubjects(kind()));
    if (kind() == record::EntryKind::Dose) {
        for (const record::Supply& supply : m_keeper.row().supplies) {
            m_subject->addItem(supply.name);
        }
    }
    m_subject->setCurrentIndex(-1);
    m_subject->setEditText(typed);
    if (m_unit->text().isEmpty()) {
        m_unit->setText(form.unitProposed);
    }
    refreshCaution();
}

void EntryEditor::refreshCaution()
{
    const QString subject = subjectFrom(kind(), m_subject->currentText().trimmed());
    m_caution->setCautions(facts::cautionsFor(facts::builtInFacts(), kind(), subject), CautionBox::Extent::Line);
}

std::optional<double> EntryEditor::net() const
{
    const record::TankId id{m_tank->currentData().toLongLong()};
    const record::Moment at = m_at->moment().isValid() ? m_at->moment() : m_keeper.clock().now();
    const record::Tank* tank = m_keeper.row().tank(id);
    const record::LayoutRecord* layout = m_keeper.row().layoutAt(id, at);
    const auto volume = tank == nullptr || layout == nullptr ? std::nullopt : record::netVolume(*tank, layout->layout);
    return volume ? std::optional(volume->litres) : std::nullopt;
}

void EntryEditor::refreshLitres()
{
    const auto percent = numberFrom(m_fraction->text());
    const auto volume = net();
    m_litres->setText(percent && volume ? numberText(volumeUnit().shown(*percent / 100.0 * *volume), 3) : QString());
    m_litres->setEnabled(volume.has_value());
}

void EntryEditor::refreshPlanned()
{
    const record::Moment at = m_at->moment();
    if (at.isValid() && at.localDate() != m_keeper.clock().today()) {
        m_planned->setChecked(m_keeper.clock().now() < at);
    }
}

bool EntryEditor::hasDraft() const
{
    record::Entry typed = m_entry;
    return !read(typed).isEmpty() || typed != m_asShown;
}

QString EntryEditor::readNumbers(record::Entry& entry) const
{
    const EntryForm form = entryForm(entry.kind);
    QString problem;
    const auto take = [&](bool there, const QLineEdit* field, std::optional<double>& into, double factor,
                          double highest) {
        const QString text = field->text().trimmed();
        if (!there || text.isEmpty()) {
            into.reset();
            return;
        }
        const auto value = numberFrom(text);
        if (!value || *value < 0.0 || *value > highest) {
            problem = problem.isEmpty() ? tr("%1: \"%2\" is not a number from 0 to %3.")
                                              .arg(field->accessibleName(), text, numberText(highest))
                                        : problem;
            return;
        }
        into = *value * factor;
    };
    take(form.fraction, m_fraction, entry.fraction, 0.01, 100.0);
    take(!form.amount.isEmpty(), m_amount, entry.amount, amountFactor(entry.kind), 100000.0);
    if (m_entry.kind == entry.kind && m_amount->text() == amountShown(m_entry)) {
        entry.amount = m_entry.amount; // what was not retyped keeps its digits
    }
    take(!form.second.isEmpty(), m_second, entry.second, 1.0, 2500.0);
    take(form.protein, m_protein, entry.proteinShare, 0.01, 100.0);
    take(form.load, m_load, entry.load_mgN_per_L_d, 1.0, 1000.0);
    take(form.coverage, m_coverage, entry.coverage, 0.01, 100.0);
    std::optional<double> count;
    take(form.count, m_count, count, 1.0, 100000.0);
    entry.count = count ? std::optional(static_cast<int>(std::lround(*count))) : std::nullopt;
    return problem;
}

QString EntryEditor::keptSubject(const record::Entry& entry) const
{
    // What was not retyped keeps its code, be it one that is offered or not.
    const QString typed = m_subject->currentText().trimmed();
    return typed == subjectShown(entry.subject) ? entry.subject : subjectFrom(entry.kind, typed);
}

QString EntryEditor::read(record::Entry& entry) const
{
    entry.tank = record::TankId{m_tank->currentData().toLongLong()};
    entry.kind = kind();
    const EntryForm form = entryForm(entry.kind);
    if (!entry.at.isValid() || m_at->text() != momentEditText(entry.at)) {
        entry.at = m_at->isNow() ? record::Moment{} : m_at->moment();
    }
    entry.planned = m_planned->isChecked();
    entry.subject = form.subject.isEmpty() ? QString() : keptSubject(entry);
    entry.unit = form.unit.isEmpty() ? QString() : m_unit->text().trimmed();
    entry.severity = form.severity ? std::optional(m_severity->currentIndex()) : std::nullopt;
    entry.where = form.where ? m_where->text().trimmed() : QString();
    entry.source = form.source ? record::SourceWaterId{m_source->currentData().toLongLong()} : record::SourceWaterId{};
    entry.otherTank = form.otherTank ? record::TankId{m_otherTank->currentData().toLongLong()} : record::TankId{};
    entry.note = m_note->toPlainText().trimmed();
    const QString problem = readNumbers(entry);
    if (problem.isEmpty() && !m_at->isNow() && !entry.at.isValid()) {
        return tr("The time is not understood. Type it as 2026-11-25 07:30, 25 Nov or 07:30.");
    }
    return problem;
}

QString EntryEditor::missing(const record::Entry& entry) const
{
    const EntryForm form = entryForm(entry.kind);
    if (!entry.tank) {
        return tr("There is no tank to write to yet.");
    }
    if (entry.kind == record::EntryKind::WaterChange && (!entry.fraction || *entry.fraction <= 0.0)) {
        return tr("How much water was changed: type a part in percent or the volume.");
    }
    if (entry.kind == record::EntryKind::MediaTransfer && !entry.fraction) {
        return tr("How much of a whole filter was moved: type it in percent.");
    }
    if (!form.amount.isEmpty() && !entry.amount) {
        return tr("%1: a number is needed.").arg(form.amount);
    }
    if (!form.subject.isEmpty() && entry.subject.isEmpty() && entry.note.isEmpty()) {
        return tr("%1: a word is needed.").arg(form.subject);
    }
    return {};
}

void EntryEditor::save()
{
    record::Entry entry = m_entry;
    QString problem = read(entry);
    if (m_at->isNow()) {
        entry.at = m_keeper.clock().now();
    }
    problem = problem.isEmpty() ? missing(entry) : problem;
    if (!problem.isEmpty()) {
        showProblem(problem);
        return;
    }
    if (entry.planned) {
        entry.plannedFor = entry.at;
        entry.plannedFraction = entry.fraction;
    }
    const record::LayoutRecord* layout = m_keeper.row().layout(entry.layout);
    if (layout == nullptr || layout->layout.tank != entry.tank || entry.at != m_entry.at) {
        entry.layout = {};
    }
    if (const auto done = m_keeper.enter(entry); !done) {
        showProblem(QString::fromStdString(done.error().sentence()));
        return;
    }
    const record::Tank* tank = m_keeper.row().tank(entry.tank);
    const QString sentence = tr("%1: %2").arg(tank == nullptr ? QString() : tank->name, wording::entryText(entry));
    record::Entry next;
    next.tank = entry.tank;
    next.kind = entry.kind;
    show(next);
    emit saved(sentence);
    emit closeRequested();
}

void EntryEditor::remove()
{
    store::Edit edit(tr("remove entry: %1").arg(wording::entryText(m_entry)));
    edit.remove(m_entry.id);
    if (const auto done = m_keeper.commit(edit); !done) {
        showProblem(QString::fromStdString(done.error().sentence()));
        return;
    }
    const QString sentence = tr("Removed: %1").arg(wording::entryText(m_entry));
    record::Entry next;
    next.tank = m_entry.tank;
    show(next);
    emit saved(sentence);
    emit closeRequested();
}

} // namespace littoral::ui
