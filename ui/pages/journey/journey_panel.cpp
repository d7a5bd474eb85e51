// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/journey/journey_panel.h"

#include "core/wording/hand_over_words.h"
#include "core/wording/numbers.h"
#include "ui/models/day_words.h"

#include <QFormLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace littoral::ui {

namespace {

QString dayText(const QDate& day)
{
    return day.isValid() ? day.toString(Qt::ISODate) : QString();
}

QStringList taskLines(const std::vector<facade::HandOverTask>& tasks, const QDate& today)
{
    QStringList lines;
    for (const facade::HandOverTask& task : tasks) {
        const QString tank = task.tank.isEmpty() ? JourneyPanel::tr("whole row") : task.tank;
        lines << JourneyPanel::tr("%1, %2: %3. %4", "day, tank, work, why")
                     .arg(wording::weekdayText(task.day, today), tank, task.what, task.why);
    }
    return lines;
}

QStringList preparationLines(const facade::HandOver& over)
{
    QStringList lines;
    for (const facade::Preparation& one : over.preparations) {
        const QString days = one.from == one.until ? wording::weekdayText(one.from, over.today)
                                                   : wording::dateRangeText(one.from, one.until, over.today);
        const QString what = one.tank.isEmpty() ? one.text : JourneyPanel::tr("%1: %2").arg(one.tank, one.text);
        lines << JourneyPanel::tr("%1: %2", "days, what to prepare").arg(days, what);
        if (one.broken) {
            lines << one.remark;
        }
    }
    return lines;
}

void setPart(Disclosure& part, const QString& title, const QStringList& lines)
{
    const QString count = QString::number(lines.size());
    part.setWords(title, count, JourneyPanel::tr("%1, lines: %2").arg(title, count), lines);
    part.setEnabled(!lines.isEmpty());
}

} // namespace

JourneyPanel::JourneyPanel(facade::Keeper& keeper, Theme& theme, QWidget* parent)
    : SidePanel(theme, tr("Journey and helper"), parent)
    , m_keeper(keeper)
    , m_sums((new Text(theme, TextStyle::Body))->wrapped())
    , m_prepare(new Disclosure(theme))
    , m_before(new Disclosure(theme))
    , m_helps(new Disclosure(theme))
    , m_after(new Disclosure(theme))
    , m_return(new Disclosure(theme))
    , m_afterwards(new Text(theme, TextStyle::Strong, tr("What the helper did")))
    , m_helper(new HelperForm(keeper, theme))
{
    makeFields();
    makeParts();
    connect(m_helper, &HelperForm::written, this, [this](const QString& sentence) {
        clearProblem();
        refreshSplit();
        emit saved(sentence);
    });
    connect(m_helper, &HelperForm::refused, this, &JourneyPanel::showProblem);
    // A change of the record, undo among them, may move the rounds; typing in the fields stays.
    connect(&keeper, &facade::Keeper::changed, this, [this] {
        if (isVisible() && !hasDraft()) {
            open();
        }
    });
}

void JourneyPanel::makeFields()
{
    body()->addWidget(
        (new Text(theme(), TextStyle::Secondary,
                  tr("Work of the day of leaving and of the day of return stays yours. The sheet for each "
                     "tank is printed from these lists.")))
            ->wrapped());
    auto* form = addForm();
    m_leaves = addField(form, tr("Day of leaving"), tr("23 Dec or 2026-12-23"));
    m_returns = addField(form, tr("Day of return"), tr("3 Jan 2027"));
    m_who = addField(form, tr("Who helps"));
    m_phone = addField(form, tr("Whom to call"), tr("numbers in order, parted by ;"));
    m_note = addField(form, tr("Note"));
    m_save = addFootButton(tr("Save and split the work"), tr("Enter"), true);
    m_remove = addFootButton(tr("Take out"), {}, false);
    m_new = addFootButton(tr("Another"), {}, false);
    m_new->setAccessibleName(tr("Another journey"));
    connect(m_save, &QPushButton::clicked, this, &JourneyPanel::save);
    connect(m_remove, &QPushButton::clicked, this, &JourneyPanel::remove);
    connect(m_new, &QPushButton::clicked, this, &JourneyPanel::begin);
    setFirstField(m_leaves);
}

void JourneyPanel::makeParts()
{
    body()->addWidget(m_sums);
    for (Disclosure* part : {m_prepare, m_before, m_helps, m_after, m_return}) {
        body()->addWidget(part);
    }
    body()->addWidget(m_afterwards);
    body()->addWidget(m_helper);
    body()->addStretch(1);
}

void JourneyPanel::open()
{
    if (hasDraft()) {
        return;
    }
    const record::Journey* kept = facade::journeyAround(m_keeper.row(), m_keeper.clock().today());
    fill(kept == nullptr ? record::Journey{} : *kept);
}

void JourneyPanel::begin()
{
    fill({});
    m_leaves->setFocus();
}

void JourneyPanel::fill(const record::Journey& journey)
{
    clearProblem();
    m_shown = journey;
    m_leaves->setText(dayText(journey.leaves));
    m_returns->setText(dayText(journey.returns));
    m_who->setText(journey.helper);
    m_phone->setText(journey.phone);
    m_note->setText(journey.note);
    const bool writable = m_keeper.hasStore() && !m_keeper.isReadOnly();
    const bool kept = static_cast<bool>(journey.id);
    m_save->setEnabled(writable);
    m_remove->setVisible(kept);
    m_remove->setEnabled(writable);
    m_new->setVisible(kept);
    m_new->setEnabled(writable);
    refreshSplit();
}

bool JourneyPanel::hasDraft() const
{
    return m_leaves->text() != dayText(m_shown.leaves) || m_returns->text() != dayText(m_shown.returns) ||
           m_who->text() != m_shown.helper || m_phone->text() != m_shown.phone || m_note->text() != m_shown.note ||
           m_helper->hasDraft();
}

void JourneyPanel::refreshSplit()
{
    const bool kept = static_cast<bool>(m_shown.id);
    const auto over =
        kept ? facade::handOver(m_keeper.row(), m_shown, m_keeper.clock().now()) : Result<facade::HandOver>(Error{});
    for (QWidget* part : std::initializer_list<QWidget*>{m_sums, m_prepare, m_before, m_helps, m_after, m_return}) {
        part->setVisible(kept && over);
    }
    const QDate today = m_keeper.clock().today();
    const bool begun = kept && m_shown.leaves < today;
    m_afterwards->setVisible(begun);
    m_helper->setVisible(begun);
    if (!kept || !over) {
        return;
    }
    std::vector<facade::HandOverTask> helps;
    for (const facade::HelperSheet& sheet : over->sheets) {
        helps.insert(helps.end(), sheet.tasks.begin(), sheet.tasks.end());
    }
    m_sums->setText(tr("The helper's tasks take %1 minutes and %2 of water over the journey, daily looks not counted.")
                        .arg(QString::number(over->helperMinutes()), wording::litresText(over->helperLitres())));
    setPart(*m_prepare, tr("To prepare"), preparationLines(*over));
    setPart(*m_before, tr("Before leaving"), taskLines(over->before, today));
    setPart(*m_helps, tr("The helper does"), taskLines(helps, today));
    setPart(*m_after, tr("Waits for you"), taskLines(over->after, today));
    setPart(*m_return, tr("On the day of return"), over->onReturn);
    if (begun) {
        m_helper->show(m_shown);
    }
}

std::optional<record::Journey> JourneyPanel::typed()
{
    record::Journey journey = m_shown;
    for (const auto& [field, day] : {std::pair{m_leaves, &journey.leaves}, std::pair{m_returns, &journey.returns}}) {
        const record::Moment moment = momentFrom(field->text(), m_keeper.clock().now());
        if (!moment.isValid()) {
            showProblem(field->text().trimmed().isEmpty()
                            ? tr("%1 is missing.").arg(field->accessibleName())
                            : tr("\"%1\" is not a day. Type it as 27 Nov or 2026-11-27.").arg(field->text()));
            field->setFocus();
            return std::nullopt;
        }
        *day = moment.localDate();
    }
    if (journey.returns <= journey.leaves) {
        showProblem(tr("The day of return comes after the day of leaving."));
        m_returns->setFocus();
        return std::nullopt;
    }
    journey.helper = m_who->text().trimmed();
    journey.phone = m_phone->text().trimmed();
    journey.note = m_note->text().trimmed();
    return journey;
}

void JourneyPanel::save()
{
    clearProblem();
    const auto journey = typed();
    if (!journey) {
        return;
    }
    const auto kept = facade::keepJourney(m_keeper, *journey);
    if (!kept) {
        showProblem(QString::fromStdString(kept.error().sentence()));
        return;
    }
    record::Journey stored = *journey;
    stored.id = *kept;
    fill(stored);
    m_before->setOpen(true);
    emit saved(tr("Journey kept: %1").arg(wording::journeyTitle(stored, m_keeper.clock().today())));
}

void JourneyPanel::remove()
{
    const record::Journey before = m_shown;
    fill({});
    if (const auto done = facade::dropJourney(m_keeper, before.id); !done) {
        fill(before);
        showProblem(QString::fromStdString(done.error().sentence()));
        return;
    }
    emit saved(tr("Journey taken out: %1").arg(wording::journeyTitle(before, m_keeper.clock().today())));
    emit closeRequested();
}

} // namespace littoral::ui
