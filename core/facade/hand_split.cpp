// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/hand_split.h"

#include "core/care/age.h"
#include "core/facade/row_edit.h"
#include "core/wording/hand_over_words.h"
#include "core/wording/sentences.h"

#include <QCoreApplication>
#include <algorithm>
#include <set>

namespace littoral::facade {

using namespace Qt::StringLiterals;
using care::Basis;
using care::DueItem;
using care::WorkKind;

namespace {

constexpr int kYoungDays = 28;
constexpr int kServiceDays = 6; // before leaving: between five and seven
constexpr int kEvening_h = 20, kDone_h = 18;

bool isService(const DueItem& item)
{
    return item.subject == u"filter-service"_s;
}

HandOverTask taskOf(const DueItem& item, Hand hand, const QDate& day, const QString& why)
{
    HandOverTask task;
    task.item = item;
    task.hand = hand;
    task.day = day;
    task.what = wording::dueTitle(item);
    task.why = why;
    return task;
}

QStringList helperCautions(const DueItem& item)
{
    if (item.kind == WorkKind::WaterChange) {
        return {u"C-ELEC"_s, u"C-CHLOR"_s, u"C-LOAD"_s, u"C-HANDS"_s};
    }
    QStringList cautions;
    if (!item.caution.isEmpty()) {
        cautions << item.caution;
    }
    if (item.kind == WorkKind::Test) {
        cautions << u"C-HOME"_s; // reagents within reach of children
    } else if (item.kind == WorkKind::Upkeep && item.subject != u"topup"_s && !cautions.contains(u"C-HANDS"_s)) {
        cautions << u"C-HANDS"_s;
    }
    return cautions;
}

} // namespace

HandSplit::HandSplit(const record::Row& row, const record::Journey& journey, const record::Moment& now)
    : m_row(row)
    , m_journey(journey)
    , m_then(row)
    , m_moment(now)
    , m_templates(care::templatesFor(row))
{
    m_moment = std::min(now, on(journey.leaves, kEvening_h));
}

record::Moment HandSplit::on(const QDate& day, int hour) const
{
    return record::Moment::fromDateTime(QDateTime(day, QTime(hour, 0), Qt::OffsetFromUTC, m_moment.offsetSeconds()));
}

const record::LayoutRecord* HandSplit::layoutOf(record::TankId tank) const
{
    const record::Moment leaving = on(m_journey.leaves, kEvening_h);
    const record::LayoutRecord* layout = m_row.currentLayout(tank, leaving);
    const bool inWater = layout != nullptr && layout->layout.flooded.isValid() && layout->layout.flooded <= leaving &&
                         (!layout->layout.ended || *layout->layout.ended > leaving);
    return inWater ? layout : nullptr;
}

std::vector<DueItem> HandSplit::workOf(const record::Row& row, record::LayoutId layout, const record::Moment& at) const
{
    return care::dueWork(row, layout, at, m_journey.returns.addDays(-1), m_templates);
}

bool HandSplit::canWait(const DueItem& item) const
{
    return item.due.addDays(item.graceDays) >= m_journey.returns;
}

bool HandSplit::givesWay(const DueItem& item) const
{
    const care::WorkTemplate* work = m_templates.find(item.templateKey);
    return work != nullptr && work->rolls && work->priority > 1;
}

const QString& HandSplit::helperWords(const DueItem& item) const
{
    static const QString kNone;
    // A test taken again after an emergency change is the test of ammonia or nitrite.
    const care::WorkTemplate* work =
        m_templates.find(item.templateKey == u"retest"_s ? u"test-after-event"_s : item.templateKey);
    return work == nullptr ? kNone : work->helper;
}

/// Into a row of what-if: as if done on that day.
void HandSplit::markDone(record::Row& row, const DueItem& item, const QDate& day) const
{
    const record::Moment at = on(day, kDone_h);
    const auto layout = row.layouts.find(item.layout);
    if (layout == row.layouts.end()) {
        return;
    }
    store::Edit edit{QString()};
    if (auto entry = entryThatCloses(row, item, at)) {
        edit.put(std::move(*entry));
    }
    record::Task task = taskFor(row, item, at);
    task.state = record::TaskState::Done;
    task.closedAt = at;
    edit.put(std::move(task));
    static_cast<void>(applyTo(row, edit)); // puts alone, and few: the row takes them
}

std::optional<HandOverTask> HandSplit::broughtForward(const DueItem& item, bool young) const
{
    const QDate& leaves = m_journey.leaves;
    if (item.kind == WorkKind::WaterChange) {
        // A young tank's changes stay on their days; so does one that a reading asks for.
        const bool may = !young && item.reason.basis == Basis::Cadence;
        return may ? std::optional(taskOf(item, Hand::Before, leaves,
                                          wording::handChangeFirstText(item.due, m_moment.localDate())))
                   : std::nullopt;
    }
    const bool movable = item.reason.basis != Basis::Event && item.reason.basis != Basis::Trigger &&
                         item.reason.basis != Basis::Journey && item.kind != WorkKind::Decide;
    if (!movable || !helperWords(item).isEmpty() || isOffered(item) || canWait(item) || givesWay(item)) {
        return std::nullopt;
    }
    const QDate today = m_moment.localDate();
    if (isService(item)) {
        return taskOf(item, Hand::Before, std::clamp(leaves.addDays(-kServiceDays), std::min(today, leaves), leaves),
                      wording::handServiceText(item.due, today));
    }
    return taskOf(item, Hand::Before, leaves, wording::handBroughtForwardText(item.due, today));
}

HandOverTask HandSplit::helperTask(const record::LayoutRecord& layout, const DueItem& item) const
{
    HandOverTask task = taskOf(item, Hand::Helper, item.due,
                               wording::handHelperText(item.due.addDays(item.graceDays + 1), m_moment.localDate()));
    task.how = QCoreApplication::translate("Templates", helperWords(item).toUtf8().constData());
    task.cautions = helperCautions(item);
    if (item.kind == WorkKind::WaterChange) {
        const record::SourceWater* source = m_row.source(layout.layout.source);
        task.howMuch = item.litres
                           ? wording::changeAmountText(*item.litres, source == nullptr ? QString() : source->name)
                           : wording::changeShareText(item.fraction.value_or(0.0));
    } else if (item.kind == WorkKind::Test) {
        task.howMuch = wording::readingsAmountText(item.parameters);
    }
    return task;
}

HandOverTask HandSplit::laterTask(const DueItem& item) const
{
    const QDate waits = item.due.addDays(item.graceDays);
    QString why;
    if (isOffered(item)) {
        why = wording::handNotEnteredText();
    } else if (canWait(item)) {
        why = wording::handWaitsText(waits, m_moment.localDate());
    } else if (givesWay(item)) {
        why = wording::handGivesWayText();
    } else {
        why = wording::handLateText(static_cast<int>(item.due.daysTo(m_journey.returns)));
    }
    return taskOf(item, Hand::After, m_journey.returns, why);
}

std::vector<HandOverTask> HandSplit::tasksOf(const record::LayoutRecord& layout)
{
    const record::LayoutId id = layout.layout.id;
    const QDate today = m_moment.localDate();
    const record::Moment leaving = on(m_journey.leaves, kEvening_h);
    const bool young = care::ageDays(layout.layout, m_journey.leaves) < kYoungDays;
    record::LayoutRecord& kept = m_then.layouts.at(id);
    kept = layout;
    std::vector<HandOverTask> tasks;
    for (const DueItem& item : workOf(m_row, id, m_moment)) {
        if (item.due > m_journey.leaves || isOffered(item)) {
            continue;
        }
        const bool open = item.due <= today;
        if (open || item.due == m_journey.leaves) {
            tasks.push_back(taskOf(item, Hand::Before, open ? today : item.due,
                                   open ? wording::handOpenNowText() : wording::handOnLeavingText()));
        }
        markDone(m_then, item, std::max(item.due, today));
    }
    std::set<QString> forward;
    for (const DueItem& item : workOf(m_then, id, leaving)) {
        if (!isBetween(item.due) || forward.contains(item.templateKey)) {
            continue;
        }
        const bool changedThatDay = item.kind == WorkKind::WaterChange && item.reason.last == m_journey.leaves;
        auto task = changedThatDay ? std::nullopt : broughtForward(item, young);
        if (task) {
            forward.insert(item.templateKey);
            markDone(m_then, item, task->day);
            tasks.push_back(std::move(*task));
        }
    }
    std::set<QString> later;
    for (const DueItem& item : workOf(m_then, id, leaving)) {
        if (!isBetween(item.due)) {
            continue;
        }
        if (!isOffered(item) && !canWait(item) && !helperWords(item).isEmpty()) {
            tasks.push_back(helperTask(layout, item));
        } else if (later.insert(item.templateKey + item.subject).second) {
            tasks.push_back(laterTask(item));
        }
    }
    kept = layout;
    return tasks;
}

std::vector<HandOverTask> HandSplit::rowTasks() const
{
    std::vector<HandOverTask> tasks;
    std::set<QString> seen;
    for (const DueItem& item : care::rowWork(m_row, m_moment, m_journey.returns.addDays(-1))) {
        // What is looked at every day stands on every sheet.
        const bool daily = item.reason.intervalDays == 1.0;
        const bool inTime = isBetween(item.due) || item.due == m_journey.leaves;
        if (daily || !inTime || item.reason.basis == Basis::Journey || !seen.insert(item.templateKey).second) {
            continue;
        }
        const bool waits = isOffered(item) || canWait(item) || givesWay(item);
        tasks.push_back(waits ? laterTask(item)
                              : taskOf(item, Hand::Before, m_journey.leaves,
                                       wording::handBroughtForwardText(item.due, m_moment.localDate())));
    }
    return tasks;
}

} // namespace littoral::facade
