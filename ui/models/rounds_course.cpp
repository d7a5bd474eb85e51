// SPDX-License-Identifier: GPL-3.0-or-later
// The course of a round: which cell is next, how far it is, and what happens when a cell is typed into.
#include "ui/models/entries_model.h"
#include "ui/models/rounds_model.h"

#include <algorithm>
#include <functional>

namespace littoral::ui {

namespace {

/// The first of `cells` (in order) after `from` that `wanted` takes, round the end if need be, never `from` itself.
QModelIndex firstAfter(const QModelIndex& from, RoundsModel::Order order, const std::vector<QModelIndex>& cells,
                       const std::function<bool(const QModelIndex&)>& wanted)
{
    const auto rank = [order](const QModelIndex& i) {
        return order == RoundsModel::Order::AlongRow ? std::pair{i.row(), i.column()} : std::pair{i.column(), i.row()};
    };
    QModelIndex first;
    for (const QModelIndex& candidate : cells) {
        if (!wanted(candidate)) {
            continue;
        }
        if (!from.isValid() || rank(candidate) > rank(from)) {
            return candidate;
        }
        if (!first.isValid() && rank(candidate) != rank(from)) {
            first = candidate;
        }
    }
    return first;
}

} // namespace

bool RoundsModel::isOpen(const QModelIndex& index) const
{
    return cell(index)->due && state(index) == CellState::Due;
}

std::vector<QModelIndex> RoundsModel::cellsIn(Order order) const
{
    std::vector<QModelIndex> cells;
    const int outer = order == Order::AlongRow ? rowCount() : columnCount();
    const int inner = order == Order::AlongRow ? columnCount() : rowCount();
    for (int a = 0; a < outer; ++a) {
        for (int b = 0; b < inner; ++b) {
            cells.push_back(order == Order::AlongRow ? index(a, b) : index(b, a));
        }
    }
    return cells;
}

std::vector<QModelIndex> RoundsModel::dueCells(Order order) const
{
    std::vector<QModelIndex> cells = cellsIn(order);
    std::erase_if(cells, [this](const QModelIndex& at) { return !cell(at)->due; });
    return cells;
}

QModelIndex RoundsModel::nextDue(const QModelIndex& from, Order order) const
{
    return firstAfter(from, order, dueCells(order), [this](const QModelIndex& cell) { return isOpen(cell); });
}

QModelIndex RoundsModel::nextUnread(const QModelIndex& from, Order order) const
{
    return firstAfter(from, order, cellsIn(order), [this](const QModelIndex& at) {
        return !cell(at)->entered && at.flags().testFlag(Qt::ItemIsEditable);
    });
}

RoundsModel::Progress RoundsModel::progress() const
{
    Progress progress;
    for (int row = 0; row < rowCount(); ++row) {
        for (int column = 0; column < columnCount(); ++column) {
            const Cell& c = *cell(index(row, column));
            progress.all += c.due || c.entered ? 1 : 0;
            progress.done += c.entered ? 1 : 0;
        }
    }
    return progress;
}

int RoundsModel::placeOf(const QModelIndex& index, Order order) const
{
    const std::vector<QModelIndex> cells = dueCells(order);
    const auto found = std::ranges::find(cells, index);
    return found == cells.end() ? 0 : static_cast<int>(found - cells.begin()) + 1;
}

Advice RoundsModel::advise(const QModelIndex& index, const QString& typed) const
{
    const Cell* c = cell(index);
    const record::LayoutRecord* record = m_keeper.row().layout(layout(index.row()));
    if (c == nullptr || record == nullptr) {
        return {};
    }
    const record::TestKit* used = kit(index);
    const AdviceQuestion question{parameter(index.column())->key,
                                  typed,
                                  c->unit,
                                  readAt(tank(index.row())),
                                  used == nullptr ? record::KitId{} : used->id,
                                  c->entered};
    const auto result = m_forecasts == nullptr ? nullptr : m_forecasts->result(layout(index.row()));
    return adviseReading(m_keeper.row(), *record, question, result.get());
}

bool RoundsModel::enter(const QModelIndex& index, const QString& typed)
{
    const Cell before = *cell(index);
    const Key where = key(index);
    const Advice advice = advise(index, typed);
    const record::TestKit* used = kit(index);
    facade::Keeper::TypedReading reading;
    reading.replaces = before.entered;
    reading.layout = where.first;
    reading.parameter = where.second;
    reading.typed = typed;
    reading.unit = before.unit;
    reading.at = readAt(tank(index.row()));
    if (used != nullptr && used->unit == before.unit) {
        reading.kit = used->id;
    }
    // Known before the write, since changed() arrives within it.
    const std::map<Key, Advice> adviceBefore = m_advice;
    m_advice[where] = advice;
    const std::optional<Draft> kept = draft(index) != nullptr ? std::optional(*draft(index)) : std::nullopt;
    m_drafts.erase(where);
    const auto written = m_keeper.enterReading(reading);
    if (written) {
        return true;
    }
    m_advice = adviceBefore;
    Draft failed{typed, advice};
    if (advice.level != Advice::Level::Impossible) {
        failed.advice.headline = QString::fromStdString(written.error().what);
        failed.advice.body = QString::fromStdString(written.error().mend);
    }
    m_drafts[where] = std::move(failed);
    emit dataChanged(index, index);
    if (written.error().fault != Fault::BadInput) {
        emit writeFailed(written.error());
    }
    return false;
}

bool RoundsModel::setData(const QModelIndex& index, const QVariant& value, int role)
{
    const Cell* c = cell(index);
    if (c == nullptr || role != Qt::EditRole || m_keeper.isReadOnly()) {
        return false;
    }
    const QString typed = value.toString().trimmed();
    if (typed.isEmpty()) {
        if (m_drafts.erase(key(index)) > 0) {
            emit dataChanged(index, index);
        }
        return true;
    }
    if (c->entered && typed == c->typed && draft(index) == nullptr) {
        return true;
    }
    return enter(index, typed);
}

void RoundsModel::clearCell(const QModelIndex& index)
{
    const Cell* c = cell(index);
    if (c == nullptr || m_keeper.isReadOnly()) {
        return;
    }
    if (m_drafts.erase(key(index)) > 0) {
        emit dataChanged(index, index);
        return;
    }
    if (!c->entered) {
        return;
    }
    store::Edit edit(
        tr("take out %1 %2, %3")
            .arg(nameInText(*parameter(index.column())), c->typed, m_rows[static_cast<std::size_t>(index.row())].name));
    edit.remove(c->entered);
    m_advice.erase(key(index));
    if (const auto done = m_keeper.commit(edit); !done) {
        emit writeFailed(done.error());
    }
}

} // namespace littoral::ui
