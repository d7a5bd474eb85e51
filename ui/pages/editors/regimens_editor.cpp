// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/editors/regimens_editor.h"

#include "core/water/salts.h"
#include "core/wording/dose_sentences.h"
#include "ui/models/day_words.h"
#include "ui/widgets/flow_layout.h"

#include <QFormLayout>
#include <QListWidget>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

constexpr int kMostDaysApart = 365;

QString textOf(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

/// A part of the form that comes and goes with what is dosed.
QFormLayout* formIn(QWidget* part)
{
    auto* form = new QFormLayout(part);
    form->setContentsMargins(0, 0, 0, 0);
    form->setRowWrapPolicy(QFormLayout::WrapAllRows);
    return form;
}

} // namespace

RegimensEditor::RegimensEditor(facade::Keeper& keeper, Theme& theme, QWidget* parent)
    : SidePanel(theme, tr("Doses"), parent)
    , m_keeper(keeper)
    , m_list(new QListWidget)
{
    m_list->setAccessibleName(tr("What this layout is dosed with"));
    m_list->setWordWrap(true);
    m_list->setMaximumHeight(theme.px(150));
    body()->addWidget(m_list);
    makeForm();
    makeContents();
    makeDays();
    m_outcome = new Text(theme, TextStyle::Secondary);
    m_outcome->setWordWrap(true);
    body()->addWidget(m_outcome);
    auto* caution = new Text(theme, TextStyle::Secondary,
                             tr("Keep supplies away from children and food. Never mix concentrates; dose phosphate and "
                                "iron on different days. With shrimp, add up the copper on the labels."));
    caution->setWordWrap(true);
    body()->insertWidget(0, caution);
    body()->addStretch(1);
    m_save = addFootButton(tr("Save dose"), tr("Enter"), true);
    auto* fresh = addFootButton(tr("New dose"), {}, false);
    m_remove = addFootButton(tr("Remove"), {}, false);
    connect(m_save, &QPushButton::clicked, this, &RegimensEditor::save);
    connect(fresh, &QPushButton::clicked, this, &RegimensEditor::startNew);
    connect(m_remove, &QPushButton::clicked, this, &RegimensEditor::remove);
    connect(m_list, &QListWidget::currentRowChanged, this, [this](int row) {
        const record::LayoutRecord* layout = m_keeper.row().layout(m_layout);
        if (layout != nullptr && row >= 0 && row < static_cast<int>(layout->regimens.size())) {
            show(layout->regimens[static_cast<std::size_t>(row)]);
        }
    });
    for (QLineEdit* field : findChildren<QLineEdit*>()) {
        connect(field, &QLineEdit::textChanged, this, &RegimensEditor::refreshOutcome);
    }
    for (QComboBox* combo : {m_form, m_salt}) {
        connect(combo, &QComboBox::currentIndexChanged, this, &RegimensEditor::refreshOutcome);
    }
    for (QCheckBox* box : findChildren<QCheckBox*>()) {
        connect(box, &QCheckBox::toggled, this, &RegimensEditor::refreshOutcome);
    }
    setFirstField(m_name);
    connect(&keeper, &facade::Keeper::changed, this, &RegimensEditor::refreshList);
    connect(&theme, &Theme::changed, this, [this] { m_list->setMaximumHeight(this->theme().px(150)); });
}

void RegimensEditor::makeForm()
{
    QFormLayout* form = addForm();
    m_name = addField(form, tr("What is dosed"), tr("potassium nitrate"));
    m_form = new QComboBox;
    m_form->addItems({tr("A salt, weighed dry"), tr("A stock solution of a salt"), tr("A bought fertiliser")});
    addRow(form, tr("As"), m_form);
    m_fields.text(m_name, &record::DoseRegimen::name);
    m_fields.choice(m_form, &record::DoseRegimen::form);
    m_saltPart = new QWidget;
    QFormLayout* salt = formIn(m_saltPart);
    m_salt = new QComboBox;
    for (const water::Salt& one : water::salts()) {
        m_salt->addItem(
            tr("%1, %2").arg(QCoreApplication::translate("Water", std::string(one.name).c_str()), textOf(one.formula)),
            textOf(one.key));
    }
    m_salt->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_salt->setMinimumContentsLength(10);
    addRow(salt, tr("Salt"), m_salt);
    body()->addWidget(m_saltPart);
}

void RegimensEditor::makeContents()
{
    m_stockPart = new QWidget;
    QFormLayout* stock = formIn(m_stockPart);
    m_fields.number(addField(stock, tr("Salt in the stock, g")), &record::DoseRegimen::stock_g, 0, 1e5);
    m_fields.number(addField(stock, tr("Made up to, mL")), &record::DoseRegimen::stock_mL, 0, 1e6);
    body()->addWidget(m_stockPart);
    m_labelPart = new QWidget;
    QFormLayout* label = formIn(m_labelPart);
    const auto add = [&](const QString& text, double record::DoseRegimen::*member) {
        m_fields.number(addField(label, text, tr("none")), member, 0, 1e4);
    };
    add(tr("Nitrate on the label, mg NO₃ in a mL"), &record::DoseRegimen::nitrate_mg_per_mL);
    add(tr("Phosphate, mg PO₄ in a mL"), &record::DoseRegimen::phosphate_mg_per_mL);
    add(tr("Potassium, mg K in a mL"), &record::DoseRegimen::potassium_mg_per_mL);
    add(tr("Magnesium, mg Mg in a mL"), &record::DoseRegimen::magnesium_mg_per_mL);
    add(tr("Iron, mg Fe in a mL"), &record::DoseRegimen::iron_mg_per_mL);
    body()->addWidget(m_labelPart);
}

void RegimensEditor::makeDays()
{
    QFormLayout* form = addForm(tr("How much, and when"));
    m_amount = addField(form, tr("One full dose, g of salt or mL"));
    m_fields.number(m_amount, &record::DoseRegimen::amount, 0, 1e5);
    m_every = addField(form, tr("Days between doses"), tr("leave empty for weekdays"));
    auto* week = new QWidget;
    auto* flow = new FlowLayout(week, 8);
    for (int day = 1; day <= 7; ++day) {
        auto* box = new QCheckBox(QLocale().dayName(day, QLocale::ShortFormat));
        box->setAccessibleName(tr("Dose on %1").arg(QLocale().dayName(day)));
        m_weekdays.push_back(box);
        flow->addWidget(box);
    }
    addRow(form, tr("Or on these weekdays"), week);
    m_from = addField(form, tr("From"), u"2026-11-25"_s);
    m_until = addField(form, tr("Until"), tr("open"));
    auto* lean = new QCheckBox(tr("Less in the first four weeks on ammonia-rich soil"));
    lean->setAccessibleName(lean->text());
    lean->setToolTip(tr("Common practice: no nitrogen or phosphorus and a quarter of the rest in weeks 1 and 2, a "
                        "quarter in week 3, half in week 4; all of it once nitrate reads below 5 mg/L"));
    form->addRow(lean);
    m_fields.flag(lean, &record::DoseRegimen::leanStart);
    m_fields.text(addField(form, tr("Note")), &record::DoseRegimen::note);
}

record::DoseRegimen RegimensEditor::blank() const
{
    record::DoseRegimen regimen;
    regimen.layout = m_layout;
    if (const record::LayoutRecord* layout = m_keeper.row().layout(m_layout)) {
        regimen.tank = layout->layout.tank;
    }
    regimen.salt = textOf(water::salts().front().key);
    regimen.from = m_keeper.clock().today();
    return regimen;
}

void RegimensEditor::setLayout(record::LayoutId layout)
{
    if (layout == m_layout && hasDraft()) {
        return; // half-typed before: it is still there
    }
    m_layout = layout;
    const record::LayoutRecord* record = m_keeper.row().layout(layout);
    const record::Tank* tank = record == nullptr ? nullptr : m_keeper.row().tank(record->layout.tank);
    setTitle(tank == nullptr ? tr("Doses") : tr("Doses of %1").arg(tank->name));
    m_save->setEnabled(tank != nullptr && !m_keeper.isReadOnly());
    show(record != nullptr && !record->regimens.empty() ? record->regimens.front() : blank());
    refreshList();
}

void RegimensEditor::refreshList()
{
    const QSignalBlocker quiet(m_list);
    m_list->clear();
    const record::LayoutRecord* layout = m_keeper.row().layout(m_layout);
    m_list->setVisible(layout != nullptr && !layout->regimens.empty());
    for (const record::DoseRegimen& regimen :
         layout == nullptr ? std::vector<record::DoseRegimen>{} : layout->regimens) {
        auto* item = new QListWidgetItem(wording::regimenLine(regimen, std::nullopt, m_keeper.clock().today()), m_list);
        if (regimen.id == m_regimen.id) {
            m_list->setCurrentItem(item);
        }
    }
}

void RegimensEditor::show(const record::DoseRegimen& regimen)
{
    m_regimen = regimen;
    clearProblem();
    m_fields.fill(regimen);
    m_salt->setCurrentIndex(std::max(0, m_salt->findData(regimen.salt)));
    m_every->setText(regimen.everyDays > 0 ? QString::number(regimen.everyDays) : QString());
    for (std::size_t day = 0; day < m_weekdays.size(); ++day) {
        m_weekdays[day]->setChecked((regimen.weekdays & (1 << day)) != 0);
    }
    m_from->setText(regimen.from.toString(Qt::ISODate));
    m_until->setText(regimen.until.toString(Qt::ISODate));
    m_remove->setEnabled(static_cast<bool>(regimen.id) && !m_keeper.isReadOnly());
    refreshOutcome();
}

void RegimensEditor::startNew()
{
    m_list->setCurrentRow(-1);
    show(blank());
    m_name->setFocus();
}

QString RegimensEditor::read(record::DoseRegimen& regimen) const
{
    const QString problem = m_fields.read(regimen);
    if (!problem.isEmpty()) {
        return problem;
    }
    if (regimen.form != record::DoseForm::Fertiliser) {
        regimen.salt = m_salt->currentData().toString();
    }
    const QString every = m_every->text().trimmed();
    const auto days = every.isEmpty() ? std::optional(0.0) : numberFrom(every);
    if (!days || *days < 0.0 || *days > kMostDaysApart || *days != static_cast<int>(*days)) {
        return tr("%1: \"%2\" is not a whole number of days from 1 to 365.").arg(m_every->accessibleName(), every);
    }
    regimen.everyDays = static_cast<int>(*days);
    regimen.weekdays = 0;
    for (std::size_t day = 0; regimen.everyDays == 0 && day < m_weekdays.size(); ++day) {
        regimen.weekdays |= m_weekdays[day]->isChecked() ? 1 << day : 0;
    }
    for (const auto& [field, day] : {std::pair{m_from, &regimen.from}, std::pair{m_until, &regimen.until}}) {
        const QString text = field->text().trimmed();
        const record::Moment at = momentFrom(text, m_keeper.clock().now());
        *day = at.isValid() ? at.localDate() : QDate();
        if (!text.isEmpty() && !day->isValid()) {
            return tr("%1: \"%2\" is not a date. Type it as 2026-11-25.").arg(field->accessibleName(), text);
        }
    }
    return record::regimenProblem(regimen);
}

void RegimensEditor::refreshOutcome()
{
    const auto form = static_cast<record::DoseForm>(m_form->currentIndex());
    m_saltPart->setVisible(form != record::DoseForm::Fertiliser);
    m_stockPart->setVisible(form == record::DoseForm::Stock);
    m_labelPart->setVisible(form == record::DoseForm::Fertiliser);
    record::DoseRegimen typed = m_regimen;
    const QString problem = read(typed);
    if (!problem.isEmpty()) {
        m_outcome->setText(problem);
        return;
    }
    const record::LayoutRecord* layout = m_keeper.row().layout(m_layout);
    const record::Tank* tank = layout == nullptr ? nullptr : m_keeper.row().tank(layout->layout.tank);
    const auto net = tank == nullptr ? std::nullopt : record::netVolume(*tank, layout->layout);
    const QString line =
        wording::regimenLine(typed, net ? std::optional(net->litres) : std::nullopt, m_keeper.clock().today());
    m_outcome->setText(net ? line : tr("%1. What it adds is not known without the litres of the tank.").arg(line));
}

QString RegimensEditor::outcome() const
{
    return m_outcome->text();
}

bool RegimensEditor::hasDraft() const
{
    record::DoseRegimen typed = m_regimen;
    return !m_name->text().trimmed().isEmpty() && (!read(typed).isEmpty() || typed != m_regimen);
}

void RegimensEditor::save()
{
    record::DoseRegimen typed = m_regimen;
    if (const QString problem = read(typed); !problem.isEmpty()) {
        showProblem(problem);
        return;
    }
    store::Edit edit(tr("dose %1").arg(typed.name));
    typed.id = edit.put(typed);
    m_regimen = typed;
    if (const auto done = m_keeper.commit(edit); !done) {
        showProblem(QString::fromStdString(done.error().sentence()));
        return;
    }
    show(typed);
    emit saved(tr("Dose %1 saved; it falls due by its days").arg(typed.name));
}

void RegimensEditor::remove()
{
    store::Edit edit(tr("remove dose %1").arg(m_regimen.name));
    edit.remove(m_regimen.id);
    const QString name = m_regimen.name;
    if (const auto done = m_keeper.commit(edit); !done) {
        showProblem(QString::fromStdString(done.error().sentence()));
        return;
    }
    startNew();
    emit saved(tr("Dose %1 removed; doses already entered stay, and undo brings it back").arg(name));
}

} // namespace littoral::ui
