// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/editors/kits_editor.h"

#include "ui/models/day_words.h"
#include "ui/models/round_timers.h"

#include <QFormLayout>
#include <QListWidget>
#include <QPushButton>
#include <QRegularExpression>
#include <QVBoxLayout>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

Result<std::vector<double>> stepsFrom(const QString& text)
{
    static const QRegularExpression gaps(u"[\\s;]+"_s);
    // "0, 0.5, 1" has commas between numbers; "0,5" is a number of its own.
    QString plain = text;
    plain.replace(QRegularExpression(u",\\s+"_s), u" "_s);
    std::vector<double> steps;
    for (const QString& part : plain.split(gaps, Qt::SkipEmptyParts)) {
        const auto step = numberFrom(part);
        if (!step || *step < 0.0) {
            return Error{Fault::BadInput,
                         KitsEditor::tr("Steps: \"%1\" is not a number.").arg(part).toStdString(),
                         {},
                         KitsEditor::tr("Type them apart by spaces: 0 0.25 0.5 1 2.").toStdString()};
        }
        if (!steps.empty() && *step <= steps.back()) {
            return Error{Fault::BadInput,
                         KitsEditor::tr("Steps: %1 does not follow %2.")
                             .arg(numberText(*step), numberText(steps.back()))
                             .toStdString(),
                         {},
                         KitsEditor::tr("Each step is higher than the one before.").toStdString()};
        }
        steps.push_back(*step);
    }
    return steps;
}

QString stepsText(const std::vector<double>& steps)
{
    QStringList parts;
    for (double step : steps) {
        parts << numberText(step);
    }
    return parts.join(u' ');
}

KitsEditor::KitsEditor(facade::Keeper& keeper, Theme& theme, QWidget* parent)
    : SidePanel(theme, tr("Test kits"), parent)
    , m_keeper(keeper)
    , m_list(new QListWidget)
{
    m_list->setAccessibleName(tr("Test kits"));
    m_list->setMaximumHeight(theme.px(170));
    body()->addWidget(m_list);
    makeForm();
    body()->addStretch(1);
    m_save = addFootButton(tr("Save kit"), tr("Enter"), true);
    auto* fresh = addFootButton(tr("New kit"), {}, false);
    connect(m_save, &QPushButton::clicked, this, &KitsEditor::save);
    connect(fresh, &QPushButton::clicked, this, [this] {
        m_list->setCurrentRow(-1);
        show({});
        m_name->setFocus();
    });
    connect(m_list, &QListWidget::currentRowChanged, this, [this](int row) {
        const record::TestKit* kit =
            row < 0 ? nullptr : m_keeper.row().kit(record::KitId{m_list->item(row)->data(Qt::UserRole).toLongLong()});
        if (kit != nullptr) {
            show(*kit);
        }
    });
    setFirstField(m_list);
    connect(&keeper, &facade::Keeper::changed, this, &KitsEditor::refreshList);
    connect(&theme, &Theme::changed, this, [this] { m_list->setMaximumHeight(this->theme().px(170)); });
    refreshList();
    show({});
}

void KitsEditor::makeForm()
{
    QFormLayout* form = addForm();
    m_name = addField(form, tr("Name"));
    m_parameter = new QComboBox;
    for (const record::Parameter& parameter : record::parameters()) {
        m_parameter->addItem(parameter.name, parameter.key);
    }
    addRow(form, tr("Reads"), m_parameter);
    m_unit = new QComboBox;
    addRow(form, tr("In the unit printed on it"), m_unit);
    auto* kind = new QComboBox;
    kind->addItems({tr("Colour card"), tr("Drops"), tr("Strip"), tr("Digital")});
    addRow(form, tr("Kind"), kind);
    m_steps = addField(form, tr("Steps, from 0 upwards"), u"0 0.25 0.5 1 2"_s);
    auto* nitrite = new QCheckBox(tr("Its nitrate value takes in nitrite too"));
    nitrite->setAccessibleName(nitrite->text());
    form->addRow(nitrite);
    m_shake = addField(form, tr("Minutes to shake, before the waiting time"));
    m_wait = addField(form, tr("Minutes until the colour is read"));
    m_opened = addField(form, tr("Opened on"), u"2026-11-25"_s);
    m_expires = addField(form, tr("Good until"), u"2027-04-30"_s);
    m_fields.text(m_name, &record::TestKit::name);
    m_fields.choice(kind, &record::TestKit::kind);
    m_fields.flag(nitrite, &record::TestKit::readsNitriteToo);
    m_fields.text(addField(form, tr("Lot")), &record::TestKit::lot);
    m_fields.text(addField(form, tr("Note")), &record::TestKit::note);
    auto* retired = new QCheckBox(tr("No longer in use"));
    retired->setAccessibleName(retired->text());
    form->addRow(retired);
    m_fields.flag(retired, &record::TestKit::retired);
    for (QComboBox* combo : {m_parameter, m_unit, kind}) {
        combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        combo->setMinimumContentsLength(10);
    }
    connect(m_parameter, &QComboBox::currentIndexChanged, this, &KitsEditor::fillUnits);
}

void KitsEditor::fillUnits()
{
    m_unit->clear();
    if (const record::Parameter* parameter = record::findParameter(m_parameter->currentData().toString())) {
        for (const record::Unit& unit : parameter->units) {
            m_unit->addItem(unit.label, unit.code);
        }
        m_unit->setCurrentIndex(parameter->shownUnit);
    }
}

void KitsEditor::refreshList()
{
    const QSignalBlocker quiet(m_list);
    m_list->clear();
    for (const record::TestKit& kit : m_keeper.row().kits) {
        const record::Parameter* parameter = record::findParameter(kit.parameter);
        const QString reads = parameter == nullptr ? kit.parameter : parameter->name;
        auto* item = new QListWidgetItem(kit.retired ? tr("%1, %2, no longer in use").arg(kit.name, reads)
                                                     : tr("%1, %2").arg(kit.name, reads),
                                         m_list);
        item->setData(Qt::UserRole, kit.id.value);
        if (kit.id == m_kit.id) {
            m_list->setCurrentItem(item);
        }
    }
}

void KitsEditor::open()
{
    refreshList();
    m_save->setEnabled(!m_keeper.isReadOnly());
}

void KitsEditor::show(const record::TestKit& kit)
{
    m_kit = kit;
    clearProblem();
    m_fields.fill(kit);
    m_parameter->setCurrentIndex(std::max(0, m_parameter->findData(kit.parameter)));
    fillUnits();
    if (!kit.unit.isEmpty()) {
        m_unit->setCurrentIndex(std::max(0, m_unit->findData(kit.unit)));
    }
    m_steps->setText(stepsText(kit.steps));
    m_shake->setText(shakeText(kit.id));
    m_wait->setText(kit.waitMinutes > 0 ? QString::number(kit.waitMinutes) : QString());
    m_opened->setText(kit.opened.toString(Qt::ISODate));
    m_expires->setText(kit.expires.toString(Qt::ISODate));
}

QString KitsEditor::read(record::TestKit& kit) const
{
    const QString problem = m_fields.read(kit);
    if (!problem.isEmpty()) {
        return problem;
    }
    if (kit.name.isEmpty()) {
        return tr("The kit has no name yet.");
    }
    kit.parameter = m_parameter->currentData().toString();
    kit.unit = m_unit->currentData().toString();
    const auto steps = stepsFrom(m_steps->text());
    if (!steps) {
        return QString::fromStdString(steps.error().sentence());
    }
    kit.steps = *steps;
    const auto wait = numberFrom(m_wait->text());
    kit.waitMinutes = static_cast<int>(std::clamp(wait.value_or(0.0), 0.0, 1440.0));
    for (const auto& [field, day] : {std::pair{m_opened, &kit.opened}, std::pair{m_expires, &kit.expires}}) {
        const QString text = field->text().trimmed();
        const record::Moment at = momentFrom(text, m_keeper.clock().now());
        *day = at.isValid() ? at.localDate() : QDate();
        if (!text.isEmpty() && !day->isValid()) {
            return tr("%1: \"%2\" is not a date. Type it as 2027-04-30.").arg(field->accessibleName(), text);
        }
    }
    return {};
}

QString KitsEditor::shakeText(record::KitId kit) const
{
    return numberOrEmpty(shakeMinutes(m_keeper.row(), kit));
}

bool KitsEditor::hasDraft() const
{
    record::TestKit typed = m_kit;
    return !m_name->text().trimmed().isEmpty() &&
           (!read(typed).isEmpty() || typed != m_kit || m_shake->text().trimmed() != shakeText(m_kit.id));
}

void KitsEditor::save()
{
    record::TestKit kit = m_kit;
    if (const QString problem = read(kit); !problem.isEmpty()) {
        showProblem(problem);
        return;
    }
    store::Edit edit(tr("test kit %1").arg(kit.name));
    kit.id = edit.put(kit);
    const double shake = std::clamp(numberFrom(m_shake->text()).value_or(0.0), 0.0, 60.0);
    if (shake != shakeMinutes(m_keeper.row(), kit.id)) {
        edit.set(shakeSettingKey(kit.id), shake > 0.0 ? numberText(shake) : QString());
    }
    m_kit = kit;
    if (const auto done = m_keeper.commit(edit); !done) {
        showProblem(QString::fromStdString(done.error().sentence()));
        return;
    }
    show(kit);
    emit saved(tr("Test kit %1 saved").arg(kit.name));
}

} // namespace littoral::ui
