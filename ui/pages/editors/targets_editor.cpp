// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/editors/targets_editor.h"

#include "ui/models/number_text.h"

#include <QGridLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

namespace littoral::ui {

TargetsEditor::TargetsEditor(facade::Keeper& keeper, Theme& theme, QWidget* parent)
    : SidePanel(theme, tr("Target bands"), parent)
    , m_keeper(keeper)
{
    body()->addWidget((new Text(theme, TextStyle::Secondary,
                                tr("The band is drawn in Lanes, and readings outside it are pointed out. An empty "
                                   "field leaves that end open.")))
                          ->wrapped());
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(8);
    grid->setVerticalSpacing(6);
    grid->addWidget(new Text(theme, TextStyle::SecondaryStrong, tr("from")), 0, 1);
    grid->addWidget(new Text(theme, TextStyle::SecondaryStrong, tr("to")), 0, 2);
    int row = 1;
    for (const record::Parameter& parameter : record::parameters()) {
        Line line{&parameter, new QLineEdit, new QLineEdit, {}, {}};
        auto* name = new Text(theme, TextStyle::Body,
                              parameter.name == parameter.shown().label
                                  ? parameter.name
                                  : tr("%1\n%2", "parameter, unit").arg(parameter.name, parameter.shown().label));
        name->setWordWrap(true);
        line.low->setAccessibleName(tr("%1, lowest wanted").arg(parameter.name));
        line.high->setAccessibleName(tr("%1, highest wanted").arg(parameter.name));
        grid->addWidget(name, row, 0);
        grid->addWidget(line.low, row, 1);
        grid->addWidget(line.high, row, 2);
        m_lines.push_back(line);
        ++row;
    }
    grid->setColumnStretch(0, 2);
    grid->setColumnStretch(1, 1);
    grid->setColumnStretch(2, 1);
    body()->addLayout(grid);
    body()->addStretch(1);
    m_save = addFootButton(tr("Save"), tr("Enter"), true);
    connect(m_save, &QPushButton::clicked, this, &TargetsEditor::save);
    setFirstField(m_lines.front().low);
}

void TargetsEditor::setTank(record::TankId tank)
{
    if (m_tank == tank && hasDraft()) {
        return;
    }
    m_tank = tank;
    clearProblem();
    const record::Tank* found = m_keeper.row().tank(tank);
    setTitle(found == nullptr ? tr("Target bands") : tr("Target bands of %1").arg(found->name));
    for (Line& line : m_lines) {
        const record::Target* target = m_keeper.row().target(tank, line.parameter->key);
        const auto text = [&](const std::optional<double>& value) {
            return value ? numberText(line.parameter->shown().fromCanonical(*value), 4) : QString();
        };
        line.lowShown = target == nullptr ? QString() : text(target->low);
        line.highShown = target == nullptr ? QString() : text(target->high);
        line.low->setText(line.lowShown);
        line.high->setText(line.highShown);
    }
    m_save->setEnabled(!m_keeper.isReadOnly());
}

bool TargetsEditor::hasDraft() const
{
    return std::ranges::any_of(m_lines, [](const Line& line) {
        return line.low->text() != line.lowShown || line.high->text() != line.highShown;
    });
}

void TargetsEditor::save()
{
    const record::Tank* tank = m_keeper.row().tank(m_tank);
    if (tank == nullptr) {
        return;
    }
    const QString name = tank->name; // the record is read anew when it changes
    store::Edit edit(tr("target bands, %1").arg(name));
    for (const Line& line : m_lines) {
        if (line.low->text() == line.lowShown && line.high->text() == line.highShown) {
            continue;
        }
        const record::Target* before = m_keeper.row().target(m_tank, line.parameter->key);
        record::Target target = before == nullptr ? record::Target{} : *before;
        target.tank = m_tank;
        target.parameter = line.parameter->key;
        for (const auto& [field, end] : {std::pair{line.low, &target.low}, std::pair{line.high, &target.high}}) {
            const auto value = numberFrom(field->text());
            if (!field->text().trimmed().isEmpty() && !value) {
                showProblem(tr("%1: \"%2\" is not a number.").arg(field->accessibleName(), field->text()));
                field->setFocus();
                return;
            }
            *end = value ? std::optional(line.parameter->shown().toCanonical(*value)) : std::nullopt;
        }
        if (target.low && target.high && *target.low > *target.high) {
            showProblem(tr("%1: the lower end is above the upper one.").arg(line.parameter->name));
            line.low->setFocus();
            return;
        }
        if (!target.low && !target.high) {
            if (before != nullptr) {
                edit.remove(before->id);
            }
        } else {
            edit.put(target);
        }
    }
    if (!edit.isEmpty()) {
        if (const auto done = m_keeper.commit(edit); !done) {
            showProblem(QString::fromStdString(done.error().sentence()));
            return;
        }
    }
    const record::TankId saved = m_tank;
    m_tank = {};
    setTank(saved);
    emit SidePanel::saved(tr("Target bands of %1 saved").arg(name));
    emit closeRequested();
}

} // namespace littoral::ui
