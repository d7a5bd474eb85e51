// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/journey/helper_form.h"

#include "core/wording/numbers.h"
#include "ui/models/day_words.h"

#include <QCheckBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

namespace littoral::ui {

namespace {

bool sameRound(const facade::HandOverTask& a, const facade::HandOverTask& b)
{
    return a.item.layout == b.item.layout && a.item.templateKey == b.item.templateKey &&
           a.item.cadenceDue == b.item.cadenceDue && a.item.subject == b.item.subject;
}

} // namespace

HelperForm::HelperForm(facade::Keeper& keeper, Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_keeper(keeper)
    , m_theme(theme)
    , m_column(new QVBoxLayout(this))
    , m_empty((new Text(theme, TextStyle::Secondary,
                        tr("Nothing of the helper's sheets is open: all of it is written down, or its day is still to "
                           "come.")))
                  ->wrapped())
    , m_write(new QPushButton(tr("Write down what was done")))
{
    setAccessibleName(tr("What the helper did"));
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(10);
    m_column->addWidget(m_empty);
    m_column->addWidget(m_write, 0, Qt::AlignLeft);
    connect(m_write, &QPushButton::clicked, this, &HelperForm::write);
}

void HelperForm::show(const record::Journey& journey)
{
    const auto open = facade::openHelperTasks(m_keeper.row(), journey, m_keeper.clock().now());
    const bool same =
        m_journey.id == journey.id && open.size() == m_lines.size() &&
        std::equal(open.begin(), open.end(), m_lines.begin(),
                   [](const facade::HandOverTask& task, const Line& line) { return sameRound(task, line.task); });
    m_journey = journey;
    if (same && m_list != nullptr) {
        return;
    }
    delete m_list;
    m_lines.clear();
    m_list = new QWidget;
    auto* lines = new QVBoxLayout(m_list);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(12);
    m_column->insertWidget(1, m_list);
    for (const facade::HandOverTask& task : open) {
        makeLine(task);
    }
    m_empty->setVisible(open.empty());
    m_write->setVisible(!open.empty());
    m_write->setEnabled(!m_keeper.isReadOnly());
}

void HelperForm::makeLine(const facade::HandOverTask& task)
{
    const QDate today = m_keeper.clock().today();
    const QString title =
        tr("%1, %2: %3", "tank, day, work").arg(task.tank, wording::weekdayText(task.day, today), task.what);
    Line line;
    line.task = task;
    line.done = new QCheckBox(tr("Done"));
    line.done->setAccessibleName(tr("Done: %1").arg(title));
    line.leftOut = new QCheckBox(tr("Left out"));
    line.leftOut->setAccessibleName(tr("Left out: %1").arg(title));
    line.day = new QLineEdit(task.day.toString(Qt::ISODate));
    line.day->setAccessibleName(tr("Day it was done: %1").arg(title));
    line.note = new QLineEdit;
    line.note->setAccessibleName(tr("Note, or why it was left out: %1").arg(title));
    line.note->setPlaceholderText(tr("note, or why it was left out"));
    connect(line.done, &QCheckBox::toggled, line.leftOut, [other = line.leftOut](bool on) {
        if (on) {
            other->setChecked(false);
        }
    });
    connect(line.leftOut, &QCheckBox::toggled, line.done, [other = line.done](bool on) {
        if (on) {
            other->setChecked(false);
        }
    });
    auto* column = qobject_cast<QVBoxLayout*>(m_list->layout());
    column->addWidget((new Text(m_theme, TextStyle::Body, title))->wrapped());
    auto* ticks = new QHBoxLayout;
    ticks->addWidget(line.done);
    ticks->addWidget(line.leftOut);
    ticks->addStretch(1);
    column->addLayout(ticks);
    auto* form = new QFormLayout;
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form->addRow(tr("Day"), line.day);
    if (task.item.kind == care::WorkKind::Test) {
        for (const QString& parameter : task.item.parameters) {
            auto* field = new QLineEdit;
            const QString name = wording::parameterName(parameter);
            field->setAccessibleName(tr("%1 as read: %2").arg(name, title));
            form->addRow(name, field);
            // A number is a test that was done.
            connect(field, &QLineEdit::textEdited, line.done,
                    [box = line.done](const QString& text) { box->setChecked(!text.trimmed().isEmpty()); });
            line.values.emplace_back(parameter, field);
        }
    }
    form->addRow(tr("Note"), line.note);
    column->addLayout(form);
    m_lines.push_back(std::move(line));
}

bool HelperForm::hasDraft() const
{
    return std::ranges::any_of(m_lines, [](const Line& line) {
        return line.done->isChecked() || line.leftOut->isChecked() || !line.note->text().isEmpty();
    });
}

void HelperForm::write()
{
    std::vector<facade::HelperDone> lines;
    for (const Line& line : m_lines) {
        if (!line.done->isChecked() && !line.leftOut->isChecked()) {
            continue;
        }
        const record::Moment day = momentFrom(line.day->text(), m_keeper.clock().now());
        if (!day.isValid()) {
            emit refused(tr("\"%1\" is not a day. Type it as 27 Nov or 2026-11-27.").arg(line.day->text()));
            line.day->setFocus();
            return;
        }
        facade::HelperDone done;
        done.item = line.task.item;
        done.done = line.done->isChecked();
        done.day = day.localDate();
        done.note = line.note->text();
        for (const auto& [parameter, field] : line.values) {
            done.values.push_back({parameter, field->text(), {}});
        }
        lines.push_back(std::move(done));
    }
    if (lines.empty()) {
        emit refused(tr("Tick what was done, or what was left out."));
        return;
    }
    const record::Journey journey = m_journey; // the record changes under it
    const auto count = facade::writeHelperWork(m_keeper, journey, lines);
    if (!count) {
        emit refused(QString::fromStdString(count.error().sentence()));
        return;
    }
    emit written(tr("Rounds written down from the journey: %1", "count").arg(*count));
    show(journey);
}

} // namespace littoral::ui
