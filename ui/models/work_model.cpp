// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/work_model.h"

#include "core/facade/lane_parts.h"
#include "core/facade/supply_work.h"
#include "core/facts/entry_cautions.h"
#include "core/wording/caution_words.h"
#include "core/wording/sentences.h"
#include "ui/models/day_start.h"

#include <algorithm>
#include <iterator>

namespace littoral::ui {

namespace {

bool sameRound(const care::DueItem& a, const care::DueItem& b)
{
    return a.layout == b.layout && a.templateKey == b.templateKey && a.cadenceDue == b.cadenceDue &&
           a.subject == b.subject;
}

std::vector<care::DueItem> workDue(const record::Row& row, record::LayoutId layout, const record::Moment& now)
{
    std::vector<care::DueItem> items = care::dueWork(row, layout, now, now.localDate());
    std::erase_if(items, [&](const care::DueItem& item) { return item.due > now.localDate(); });
    return items;
}

/// What the keeper decided about a round, if anything.
const record::Task* taskOf(const record::LayoutRecord& layout, const care::DueItem& item)
{
    const auto found = std::ranges::find_if(layout.tasks, [&](const record::Task& task) {
        return (item.task && task.id == item.task) ||
               (task.templateKey == item.templateKey && task.due == item.cadenceDue);
    });
    return found == layout.tasks.end() ? nullptr : &*found;
}

} // namespace

WorkModel::WorkModel(facade::Keeper& keeper, QObject* parent)
    : QAbstractListModel(parent)
    , m_keeper(keeper)
{
    connect(&keeper, &facade::Keeper::changed, this, &WorkModel::refresh);
    connect(&keeper, &facade::Keeper::storeOpened, this, &WorkModel::refresh);
    connect(&keeper, &facade::Keeper::storeClosed, this, [this] {
        m_atDayStart.clear();
        m_rowSeen.clear();
        refresh();
    });
    refresh();
}

void WorkModel::appendTank(std::vector<Line>& lines, const record::Tank& tank)
{
    const record::Row& row = m_keeper.row();
    const record::Moment now = roundEnd();
    const record::LayoutRecord* layout = row.currentLayout(tank.id, now);
    if (layout == nullptr || (layout->layout.ended && *layout->layout.ended <= now)) {
        return;
    }
    const record::LayoutId id = layout->layout.id;
    if (!m_atDayStart.contains(id)) {
        m_atDayStart[id] = workDue(rowAtDayStart(row, id, m_day), id, now);
    }
    const std::vector<care::DueItem> open = workDue(row, id, now);
    std::vector<Line> work;
    for (const care::DueItem& item : open) {
        work.push_back({false, false, false, tank.name, item, {}});
    }
    // By count and not by date: what was done early in the day may shift the dates of the rounds still open.
    std::map<std::pair<QString, QString>, int> stillOpen;
    for (const care::DueItem& item : open) {
        ++stillOpen[{item.templateKey, item.subject}];
    }
    std::vector<Line> done;
    const std::vector<care::DueItem>& start = m_atDayStart[id];
    for (auto item = start.rbegin(); item != start.rend(); ++item) {
        if (stillOpen[{item->templateKey, item->subject}]-- > 0) {
            continue;
        }
        const record::Task* task = taskOf(*layout, *item);
        const bool movedAway =
            task != nullptr && task->state == record::TaskState::Open && task->movedTo && *task->movedTo > m_day;
        if (!movedAway) {
            done.push_back(
                {false, true, task != nullptr && task->state == record::TaskState::Skipped, tank.name, *item, {}});
        }
    }
    work.insert(work.end(), std::make_move_iterator(done.rbegin()), std::make_move_iterator(done.rend()));
    if (!work.empty()) {
        lines.push_back({true, false, false, tank.name, {}, {}});
        std::ranges::move(work, std::back_inserter(lines));
    }
}

/// Work for the whole row: backup, residual-current device, journeys, supplies that run out. What was never entered is
/// only offered and stays out of the list; what was ticked since it was first shown today stays in it.
void WorkModel::appendRow(std::vector<Line>& lines)
{
    std::vector<care::DueItem> open = care::rowWork(m_keeper.row(), m_keeper.clock().now(), m_day);
    std::erase_if(open, [&](const care::DueItem& item) { return care::isOffered(item) || item.due > m_day; });
    const auto isIn = [](const std::vector<care::DueItem>& all, const care::DueItem& item) {
        return std::ranges::any_of(all, [&](const care::DueItem& other) { return sameRound(other, item); });
    };
    for (const care::DueItem& item : open) {
        if (!isIn(m_rowSeen, item)) {
            m_rowSeen.push_back(item);
        }
    }
    const std::vector<facade::SupplyTask> supplies = facade::supplyWork(m_keeper.row(), m_keeper.clock().now(), m_day);
    if (m_rowSeen.empty() && supplies.empty()) {
        return;
    }
    const QString name = tr("Whole row");
    lines.push_back({true, false, false, name, {}});
    for (const care::DueItem& item : open) {
        lines.push_back({false, false, false, name, item});
    }
    for (const care::DueItem& item : m_rowSeen) {
        if (!isIn(open, item)) {
            lines.push_back({false, true, false, name, item});
        }
    }
    for (const facade::SupplyTask& task : supplies) {
        lines.push_back({false, false, false, name, task.item, task.why.join(u' ')});
    }
}

record::Moment WorkModel::roundEnd() const
{
    const record::Moment now = m_keeper.clock().now();
    return m_sheetDay ? std::min(now, record::Moment::fromLocal(*m_sheetDay, QTime(23, 59, 59))) : now;
}

void WorkModel::setSheet(const std::optional<QDate>& day, std::function<record::Moment(record::TankId)> at)
{
    m_sheetDay = day;
    m_sheetTime = std::move(at);
    refresh();
}

void WorkModel::refresh()
{
    const QDate day = m_sheetDay.value_or(m_keeper.clock().today());
    if (day != m_day) {
        m_day = day;
        m_atDayStart.clear();
        m_rowSeen.clear();
    }
    std::vector<Line> lines;
    for (const record::Tank& tank : m_keeper.row().tanks) {
        appendTank(lines, tank);
    }
    if (!m_sheetDay) {
        appendRow(lines);
    }
    const bool sameShape = std::ranges::equal(lines, m_lines, [](const Line& a, const Line& b) {
        return a.heading == b.heading && a.done == b.done && a.tank == b.tank &&
               (a.heading || sameRound(a.item, b.item));
    });
    if (sameShape) {
        m_lines = std::move(lines);
        if (!m_lines.empty()) {
            emit dataChanged(index(0), index(rowCount() - 1));
        }
        return;
    }
    beginResetModel();
    m_lines = std::move(lines);
    endResetModel();
}

int WorkModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

QVariant WorkModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid() || index.row() >= rowCount()) {
        return {};
    }
    const Line& line = m_lines[static_cast<std::size_t>(index.row())];
    switch (role) {
    case HeadingRole:
        return line.heading;
    case TankNameRole:
        return line.tank;
    case Qt::DisplayRole:
        return line.heading ? line.tank : wording::dueTitle(line.item);
    default:
        break;
    }
    if (line.heading) {
        return {};
    }
    switch (role) {
    case Qt::CheckStateRole:
        return line.done ? Qt::Checked : Qt::Unchecked;
    case GlyphRole:
        return static_cast<int>(facade::glyphOf(line.item));
    case OverdueRole:
        return !line.done && line.item.overdue;
    case SideTextRole:
        if (line.done) {
            return line.skipped ? tr("skipped") : tr("done");
        }
        return line.item.daysOver > 0 ? tr("%1 d over").arg(line.item.daysOver) : tr("today");
    case WhyRole:
    case Qt::ToolTipRole:
        return line.why.isEmpty() ? wording::dueWhy(line.item, m_day) : line.why;
    case CautionRole:
        return line.done
                   ? QString()
                   : wording::cautionLine(facts::builtInFacts(), facts::cautionsFor(facts::builtInFacts(), line.item));
    case Qt::AccessibleTextRole:
        return tr("%1, %2, %3").arg(line.tank, wording::dueTitle(line.item), data(index, SideTextRole).toString());
    default:
        return {};
    }
}

Qt::ItemFlags WorkModel::flags(const QModelIndex& index) const
{
    if (!index.isValid() || index.row() >= rowCount()) {
        return Qt::NoItemFlags;
    }
    const Line& line = m_lines[static_cast<std::size_t>(index.row())];
    if (line.heading) {
        return Qt::ItemIsEnabled | Qt::ItemNeverHasChildren;
    }
    const Qt::ItemFlags plain = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    return line.done || m_keeper.isReadOnly() ? plain : plain | Qt::ItemIsUserCheckable;
}

bool WorkModel::setData(const QModelIndex& index, const QVariant& value, int role)
{
    const care::DueItem* due = item(index);
    if (role != Qt::CheckStateRole || due == nullptr || m_keeper.isReadOnly() ||
        value.toInt() != static_cast<int>(Qt::Checked)) {
        return false;
    }
    const care::DueItem copy = *due; // the line goes when the row changes
    const record::Moment at = m_sheetDay && m_sheetTime ? m_sheetTime(copy.tank) : m_keeper.clock().now();
    if (const auto done = m_keeper.markDone(copy, at); !done) {
        emit writeFailed(done.error());
        return false;
    }
    return true;
}

const care::DueItem* WorkModel::item(const QModelIndex& index) const
{
    if (!index.isValid() || index.row() >= rowCount()) {
        return nullptr;
    }
    const Line& line = m_lines[static_cast<std::size_t>(index.row())];
    return line.heading || line.done ? nullptr : &line.item;
}

WorkModel::Progress WorkModel::progress() const
{
    Progress progress;
    for (const Line& line : m_lines) {
        progress.all += line.heading ? 0 : 1;
        progress.done += line.done ? 1 : 0;
    }
    return progress;
}

} // namespace littoral::ui
