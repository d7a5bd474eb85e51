// SPDX-License-Identifier: GPL-3.0-or-later
// What the bench puts into the record: entries, readings, planned work, and paper.
#include "core/record/parameter.h"
#include "core/store/edit.h"
#include "core/wording/entry_words.h"
#include "core/wording/numbers.h"
#include "ui/pages/bench/bench_page.h"
#include "ui/pages/bench/sheet_paper.h"

#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

constexpr int kDaysBetweenTasks = 3; // "some days apart", common practice
constexpr int kPlannedHour = 18;

QString noteOf(const BenchSheet& sheet)
{
    return BenchPage::tr("Reckoned on the bench, %1: %2").arg(sheet.sheet().title, sheet.answer()->figures);
}

/// What a sheet proposes to do, ready but for tank, layout and day.
std::vector<record::Entry> proposals(const BenchSheet& sheet)
{
    std::vector<record::Entry> entries;
    for (const double share : proposedChanges(sheet)) {
        record::Entry entry;
        entry.kind = record::EntryKind::WaterChange;
        entry.fraction = share;
        entries.push_back(entry);
    }
    if (entries.empty()) {
        for (const sheets::Write& write : sheet.answer()->writes) {
            if (isPlannable(write)) {
                entries.push_back(*write.entry);
                break;
            }
        }
    }
    return entries;
}

} // namespace

const record::LayoutRecord* BenchPage::layoutFor(const BenchSheet& sheet)
{
    const record::LayoutRecord* layout = m_keeper.row().currentLayout(sheet.tank(), m_keeper.clock().now());
    if (layout == nullptr) {
        emit failed({Fault::NotFound,
                     tr("There is no layout to write to.").toStdString(),
                     {},
                     tr("Choose a tank under \"Values from\".").toStdString()},
                    tr("What was typed is kept."));
    }
    return layout;
}

void BenchPage::finish(const Result<void>& done, const QString& sentence)
{
    if (done) {
        emit told(sentence);
    } else {
        emit failed(done.error(), tr("Nothing was written; what was typed is kept."));
    }
}

void BenchPage::write(int pin, int index)
{
    const BenchSheet* sheet = sheetOf(pin);
    if (sheet == nullptr || !sheet->answer() || index < 0 ||
        index >= static_cast<int>(sheet->answer()->writes.size())) {
        return;
    }
    const record::LayoutRecord* layout = layoutFor(*sheet);
    if (layout == nullptr) {
        return;
    }
    const sheets::Write write = sheet->answer()->writes[static_cast<std::size_t>(index)];
    const record::Tank* tank = m_keeper.row().tank(sheet->tank());
    const QString name = tank == nullptr ? QString() : tank->name;
    if (write.reading) {
        facade::Keeper::TypedReading typed;
        typed.layout = layout->layout.id;
        typed.parameter = write.reading->parameter;
        typed.typed = write.reading->typed;
        typed.unit = write.reading->unit;
        typed.at = m_keeper.clock().now();
        typed.note = noteOf(*sheet);
        const QString sentence =
            tr("%1 written as a reading of %2").arg(wording::readingWithUnit(*write.reading), name);
        const auto done = m_keeper.enterReading(typed);
        finish(done ? Result<void>() : Result<void>(done.error()), sentence);
        return;
    }
    if (!write.entry) {
        return;
    }
    record::Entry entry = *write.entry;
    entry.tank = sheet->tank();
    entry.layout = layout->layout.id;
    entry.at = m_keeper.clock().now();
    entry.note = entry.note.isEmpty() ? noteOf(*sheet) : tr("%1 %2", "note, working").arg(entry.note, noteOf(*sheet));
    const QString sentence = tr("Written to %1: %2").arg(name, wording::entryText(entry));
    const auto done = m_keeper.enter(entry);
    finish(done ? Result<void>() : Result<void>(done.error()), sentence);
}

void BenchPage::plan(int pin, int days)
{
    const BenchSheet* sheet = sheetOf(pin);
    if (sheet == nullptr || !sheet->answer()) {
        return;
    }
    const record::LayoutRecord* layout = layoutFor(*sheet);
    std::vector<record::Entry> entries = proposals(*sheet);
    if (layout == nullptr || entries.empty()) {
        return;
    }
    const record::Tank* tank = m_keeper.row().tank(sheet->tank());
    const record::Moment now = m_keeper.clock().now();
    store::Edit edit(tr("planned: %1, %2").arg(wording::entryText(entries.front()), tank->name));
    QStringList dates;
    QDate day = now.localDate().addDays(days);
    for (record::Entry& entry : entries) {
        entry.tank = sheet->tank();
        entry.layout = layout->layout.id;
        // The evening of the day by the keeper's own clock.
        const QDateTime at(day, QTime(kPlannedHour, 0), Qt::OffsetFromUTC, now.offsetSeconds());
        entry.at = std::max(record::Moment::fromDateTime(at), now);
        entry.planned = true;
        entry.note = noteOf(*sheet);
        entry.enteredAt = now;
        dates << wording::weekdayText(day, now.localDate());
        edit.put(entry);
        day = day.addDays(kDaysBetweenTasks);
    }
    const QString sentence =
        tr("%1 planned for %2: %3").arg(wording::entryText(entries.front()), tank->name, dates.join(u", "_s));
    finish(m_keeper.commit(edit), sentence);
}

void BenchPage::print(PaperTo to)
{
    std::vector<PaperSheet> sheets;
    bool plan = m_front->isHidden();
    const auto add = [&](const BenchSheet& sheet) {
        const record::Tank* tank = m_keeper.row().tank(sheet.tank());
        sheets.push_back({sheet, tank == nullptr ? QString() : tank->name});
    };
    if (const BenchSheet* front = sheet()) {
        add(*front);
    }
    for (const BenchMemory::Pin& pin : m_memory.pins()) {
        if (pin.sheet) {
            add(*pin.sheet);
        } else {
            plan = true;
        }
    }
    const record::Moment now = m_keeper.clock().now();
    facade::RowPlanOptions options;
    options.conditioner_mL_per_100L = m_memory.conditioner_mL_per_100L;
    auto water = plan ? std::optional(facade::rowPlan(m_keeper.row(), now, options)) : std::nullopt;
    const PaperJob job = sheetPaper(std::move(sheets), std::move(water), m_keeper.row(), now);
    if (const auto done = putOnPaper(m_ask, this, job, tr("worksheets"), to)) {
        finish(*done ? Result<void>() : Result<void>(done->error()), *done ? **done : QString());
    }
}

} // namespace littoral::ui
