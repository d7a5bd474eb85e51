// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/rounds_model.h"

#include "core/care/age.h"
#include "core/wording/numbers.h"
#include "ui/models/day_start.h"
#include "ui/models/day_words.h"

#include <QHash>
#include <algorithm>
#include <array>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

constexpr qint64 kDayMs = 86'400'000;

/// The parameters every keeper reads sooner or later; the rest appear when they are due, were read today, or on
/// request.
constexpr std::array kUsual{"tan"_L1, "no2"_L1, "no3"_L1, "ph"_L1, "kh"_L1, "gh"_L1, "temp"_L1, "cond"_L1};

bool isUsual(const QString& key)
{
    return std::ranges::any_of(kUsual, [&](QLatin1String usual) { return usual == key; });
}

/// A test that takes one of several parameters ("cond|tds") asks for the one that this layout is read by, else the
/// first.
QString readOneOf(const record::LayoutRecord& layout, const QString& keys)
{
    const QStringList choices = keys.split(u'|', Qt::SkipEmptyParts);
    for (const QString& choice : choices) {
        if (!layout.readingsOf(choice).empty()) {
            return choice;
        }
    }
    return choices.isEmpty() ? keys : choices.front();
}

} // namespace

RoundsModel::RoundsModel(facade::Keeper& keeper, const facade::Forecasts* forecasts, QObject* parent)
    : QAbstractTableModel(parent)
    , m_keeper(keeper)
    , m_forecasts(forecasts)
{
    connect(&keeper, &facade::Keeper::changed, this, &RoundsModel::refresh);
    connect(&keeper, &facade::Keeper::storeOpened, this, &RoundsModel::refresh);
    connect(&keeper, &facade::Keeper::storeClosed, this, [this] {
        m_drafts.clear();
        m_due.clear();
        m_dueKnown.clear();
        m_advice.clear();
        refresh();
    });
    refresh();
}

record::Moment RoundsModel::readAt(record::TankId tank) const
{
    if (m_sheetDay) {
        return record::Moment::fromLocal(*m_sheetDay, sheetTime(tank));
    }
    return m_readAt ? *m_readAt : m_keeper.clock().now();
}

/// Until when the round's own record goes: now, or the end of the sheet's day.
record::Moment RoundsModel::roundEnd() const
{
    const record::Moment now = m_keeper.clock().now();
    return m_sheetDay ? std::min(now, record::Moment::fromLocal(*m_sheetDay, QTime(23, 59, 59))) : now;
}

void RoundsModel::setSheetDay(const std::optional<QDate>& day)
{
    if (day != m_sheetDay) {
        m_sheetDay = day;
        m_sheetTimes.clear();
        refresh();
    }
}

void RoundsModel::setSheetTime(record::TankId tank, const QTime& time)
{
    m_sheetTimes[tank] = time;
    if (rowCount() > 0) {
        emit headerDataChanged(Qt::Vertical, 0, rowCount() - 1);
    }
}

QTime RoundsModel::sheetTime(record::TankId tank) const
{
    QTime time(12, 0);
    for (const RowInfo& info : m_rows) {
        if (const auto given = m_sheetTimes.find(info.tank); given != m_sheetTimes.end()) {
            time = given->second;
        }
        if (info.tank == tank) {
            break;
        }
    }
    return time;
}

void RoundsModel::noteDue(const record::LayoutRecord& layout)
{
    const record::Moment now = roundEnd();
    const auto add = [&](const record::Row& row) {
        for (const care::DueItem& item : care::dueWork(row, layout.layout.id, now, m_day)) {
            if (item.kind != care::WorkKind::Test || item.due > m_day) {
                continue;
            }
            for (const QString& parameter : item.parameters) {
                m_due.insert({layout.layout.id, readOneOf(layout, parameter)});
            }
        }
    };
    // A test stays part of the round once its first value is in, though the work it answers is then closed.
    if (m_dueKnown.insert(layout.layout.id).second) {
        add(rowAtDayStart(m_keeper.row(), layout.layout.id, m_day));
    }
    if (!m_sheetDay) {
        add(m_keeper.row());
    }
}

std::vector<const record::Parameter*> RoundsModel::readColumns() const
{
    // Readings are kept oldest first: only the last day or two of each layout can be of today.
    std::set<QString> today;
    const qint64 earliest = roundEnd().utcMs() - 2 * kDayMs;
    for (const auto& [id, layout] : m_keeper.row().layouts) {
        for (auto reading = layout.readings.rbegin();
             reading != layout.readings.rend() && reading->at.utcMs() >= earliest; ++reading) {
            if (reading->at.localDate() == m_day) {
                today.insert(reading->parameter);
            }
        }
    }
    std::vector<const record::Parameter*> columns;
    for (const record::Parameter& parameter : record::parameters()) {
        const auto wanted = [&](const auto& entry) { return entry.second == parameter.key; };
        if (m_all || isUsual(parameter.key) || today.contains(parameter.key) || std::ranges::any_of(m_due, wanted)) {
            columns.push_back(&parameter);
        }
    }
    return columns;
}

std::vector<RoundsModel::Cell> RoundsModel::readCells(const record::LayoutRecord& layout,
                                                      const std::vector<const record::Parameter*>& columns) const
{
    std::vector<Cell> cells(columns.size());
    QHash<QString, std::size_t> place;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const record::Parameter& parameter = *columns[i];
        const record::TestKit* kit = m_keeper.row().kitFor(layout, parameter.key);
        cells[i].unit = kit != nullptr && parameter.unit(kit->unit) != nullptr ? kit->unit : parameter.shown().code;
        cells[i].due = m_due.contains({layout.layout.id, parameter.key});
        place.insert(parameter.key, i);
    }
    std::size_t open = columns.size(); // cells whose value before this round is still to be found
    for (auto reading = layout.readings.rbegin(); reading != layout.readings.rend() && open > 0; ++reading) {
        const auto found = place.constFind(reading->parameter);
        if (found == place.cend() || !cells[*found].last.isEmpty()) {
            continue;
        }
        Cell& cell = cells[*found];
        const QDate day = reading->at.localDate();
        if (day < m_day) {
            cell.last = record::valueText(*reading);
            cell.ago = agoText(day, m_day);
            --open;
        } else if (day == m_day && !cell.entered) {
            cell.entered = reading->id;
            cell.typed = reading->typed;
            cell.unit = reading->unit;
        }
    }
    return cells;
}

std::vector<RoundsModel::RowInfo> RoundsModel::readRows(const std::vector<const record::Parameter*>& columns)
{
    std::vector<RowInfo> rows;
    const record::Row& row = m_keeper.row();
    const record::Moment now = roundEnd();
    for (const record::Tank& tank : row.tanks) {
        const record::LayoutRecord* layout = row.currentLayout(tank.id, now);
        const bool ended = layout != nullptr && layout->layout.ended && *layout->layout.ended <= now;
        if (layout == nullptr || ended || layout->layout.flooded > now) {
            continue;
        }
        RowInfo info{tank.id, layout->layout.id, tank.name, {}, {}};
        const auto net = record::netVolume(tank, layout->layout);
        const QString age = wording::ageText(care::ageDays(layout->layout, m_day));
        info.line = net ? tr("%1 · %2", "litres, age").arg(wording::litresText(net->litres), age) : age;
        info.cells = readCells(*layout, columns);
        rows.push_back(std::move(info));
    }
    return rows;
}

void RoundsModel::refresh()
{
    if (m_reshaping) {
        return; // a cell is being saved before rows or columns change; they are read again after it
    }
    const QDate day = m_sheetDay.value_or(m_keeper.clock().today());
    if (day != m_day) {
        m_day = day;
        m_due.clear();
        m_dueKnown.clear();
        m_advice.clear();
    }
    const record::Moment now = roundEnd();
    for (const record::Tank& tank : m_keeper.row().tanks) {
        const record::LayoutRecord* layout = m_keeper.row().currentLayout(tank.id, now);
        if (layout != nullptr && (!layout->layout.ended || *layout->layout.ended > now)) {
            noteDue(*layout);
        }
    }
    std::vector<const record::Parameter*> columns = readColumns();
    std::vector<RowInfo> rows = readRows(columns);
    const auto sameShape = [&] {
        return columns == m_columns && std::ranges::equal(rows, m_rows, [](const RowInfo& a, const RowInfo& b) {
                   return a.layout == b.layout;
               });
    };
    if (!sameShape()) {
        m_reshaping = true;
        emit shapeAboutToChange();
        m_reshaping = false;
        columns = readColumns();
        rows = readRows(columns);
    }
    if (sameShape()) {
        // Not a reset: an open cell editor, the selection and the scroll position stay where they are.
        m_rows = std::move(rows);
        if (!m_rows.empty()) {
            emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
            emit headerDataChanged(Qt::Vertical, 0, rowCount() - 1);
        }
    } else {
        beginResetModel();
        m_columns = std::move(columns);
        m_rows = std::move(rows);
        endResetModel();
    }
    emit progressChanged();
}

void RoundsModel::setAllParameters(bool all)
{
    if (all != m_all) {
        m_all = all;
        refresh();
    }
}

int RoundsModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int RoundsModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_columns.size());
}

const RoundsModel::Cell* RoundsModel::cell(const QModelIndex& index) const
{
    if (!index.isValid() || index.row() >= rowCount() || index.column() >= columnCount()) {
        return nullptr;
    }
    return &m_rows[static_cast<std::size_t>(index.row())].cells[static_cast<std::size_t>(index.column())];
}

RoundsModel::Key RoundsModel::key(const QModelIndex& index) const
{
    return {layout(index.row()), parameter(index.column())->key};
}

const RoundsModel::Draft* RoundsModel::draft(const QModelIndex& index) const
{
    const auto found = m_drafts.find(key(index));
    return found == m_drafts.end() ? nullptr : &found->second;
}

CellState RoundsModel::state(const QModelIndex& index) const
{
    const Cell* c = cell(index);
    if (draft(index) != nullptr) {
        return CellState::NotUnderstood;
    }
    if (c->entered) {
        const auto advice = m_advice.find(key(index));
        const bool odd = advice != m_advice.end() && advice->second.level == Advice::Level::Unlikely;
        return odd ? CellState::LookAgain : CellState::Entered;
    }
    return c->due ? CellState::Due : CellState::Quiet;
}

QString RoundsModel::sentence(const QModelIndex& index) const
{
    const Cell& c = *cell(index);
    const QString where =
        tr("%1, %2").arg(m_rows[static_cast<std::size_t>(index.row())].name, parameter(index.column())->name);
    const record::Unit* unit = parameter(index.column())->unit(c.unit);
    const QString label = unit == nullptr ? QString() : unit->label;
    const QString last = c.last.isEmpty() ? tr("not read before") : tr("last %1, %2 ago").arg(c.last, c.ago);
    switch (state(index)) {
    case CellState::NotUnderstood:
        return tr("%1: \"%2\" is not a reading yet").arg(where, draft(index)->typed);
    case CellState::LookAgain:
        return tr("%1: entered %2 %3, look again, %4").arg(where, c.typed, label, last);
    case CellState::Entered:
        return tr("%1: entered %2 %3, %4").arg(where, c.typed, label, last);
    case CellState::Due:
        return tr("%1: due, %2").arg(where, last);
    case CellState::Quiet:
        break;
    }
    return tr("%1: not due, %2").arg(where, last);
}

QVariant RoundsModel::data(const QModelIndex& index, int role) const
{
    const Cell* c = cell(index);
    if (c == nullptr) {
        return {};
    }
    const Draft* typing = draft(index);
    switch (role) {
    case Qt::DisplayRole:
        return typing != nullptr ? typing->typed : c->entered ? c->typed : c->last;
    case Qt::EditRole:
    case TypedRole:
        return typing != nullptr ? typing->typed : c->typed;
    case Qt::TextAlignmentRole:
        return QVariant::fromValue(Qt::Alignment(Qt::AlignRight | Qt::AlignVCenter));
    case Qt::AccessibleTextRole:
        return sentence(index);
    case StateRole:
        return static_cast<int>(state(index));
    case LastTextRole:
        return c->last;
    case LastAgoRole:
        return c->ago;
    case UnitLabelRole:
    case ForeignUnitRole: {
        const record::Parameter& p = *parameter(index.column());
        const record::Unit* unit = p.unit(c->unit);
        const bool foreign = unit != nullptr && unit->code != p.shown().code;
        return unit == nullptr || (role == ForeignUnitRole && !foreign) ? QString() : unit->label;
    }
    case AdviceRole: {
        const auto advice = m_advice.find(key(index));
        return typing != nullptr          ? typing->advice.headline
               : advice != m_advice.end() ? advice->second.headline
                                          : QString();
    }
    case ParameterRole:
        return parameter(index.column())->key;
    case TankNameRole:
        return m_rows[static_cast<std::size_t>(index.row())].name;
    case DueRole:
        return c->due;
    default:
        return {};
    }
}

QVariant RoundsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation == Qt::Vertical) {
        if (section < 0 || section >= rowCount()) {
            return {};
        }
        const RowInfo& info = m_rows[static_cast<std::size_t>(section)];
        return role == Qt::DisplayRole || role == TankNameRole ? QVariant(info.name)
               : role == TankLineRole
                   ? QVariant(m_sheetDay ? tr("%1 · %2", "litres and age, time on the sheet")
                                               .arg(info.line, sheetTime(info.tank).toString(u"HH:mm"_s))
                                         : info.line)
                   : QVariant();
    }
    const record::Parameter* p = parameter(section);
    if (p == nullptr) {
        return {};
    }
    switch (role) {
    case Qt::DisplayRole:
        return p->symbol;
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole:
        return tr("%1, %2").arg(p->name, p->shown().label);
    case UnitLabelRole:
        return p->key == "ph"_L1 ? QString() : p->shown().label;
    case ParameterRole:
        return p->key;
    default:
        return {};
    }
}

Qt::ItemFlags RoundsModel::flags(const QModelIndex& index) const
{
    if (!index.isValid()) {
        return Qt::NoItemFlags;
    }
    const Qt::ItemFlags plain = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    return m_keeper.isReadOnly() ? plain : plain | Qt::ItemIsEditable;
}

record::LayoutId RoundsModel::layout(int row) const
{
    return row >= 0 && row < rowCount() ? m_rows[static_cast<std::size_t>(row)].layout : record::LayoutId{};
}

record::TankId RoundsModel::tank(int row) const
{
    return row >= 0 && row < rowCount() ? m_rows[static_cast<std::size_t>(row)].tank : record::TankId{};
}

const record::Parameter* RoundsModel::parameter(int column) const
{
    return column >= 0 && column < columnCount() ? m_columns[static_cast<std::size_t>(column)] : nullptr;
}

int RoundsModel::columnOf(const QString& parameterKey) const
{
    const auto found =
        std::ranges::find_if(m_columns, [&](const record::Parameter* p) { return p->key == parameterKey; });
    return found == m_columns.end() ? -1 : static_cast<int>(found - m_columns.begin());
}

int RoundsModel::rowOf(record::TankId tank) const
{
    const auto found = std::ranges::find_if(m_rows, [&](const RowInfo& info) { return info.tank == tank; });
    return found == m_rows.end() ? -1 : static_cast<int>(found - m_rows.begin());
}

const record::TestKit* RoundsModel::kit(const QModelIndex& index) const
{
    const record::LayoutRecord* record = m_keeper.row().layout(layout(index.row()));
    const record::Parameter* p = parameter(index.column());
    return record == nullptr || p == nullptr ? nullptr : m_keeper.row().kitFor(*record, p->key);
}

std::vector<double> RoundsModel::steps(const QModelIndex& index) const
{
    const record::TestKit* used = kit(index);
    const Cell* c = cell(index);
    return used == nullptr || c == nullptr || used->unit != c->unit ? std::vector<double>{} : used->steps;
}

const record::Reading* RoundsModel::lastReading(const QModelIndex& index) const
{
    const record::LayoutRecord* record = m_keeper.row().layout(layout(index.row()));
    const record::Parameter* p = parameter(index.column());
    if (record == nullptr || p == nullptr) {
        return nullptr;
    }
    for (auto reading = record->readings.rbegin(); reading != record->readings.rend(); ++reading) {
        if (reading->parameter == p->key && reading->at.localDate() < m_day) {
            return &*reading;
        }
    }
    return nullptr;
}

} // namespace littoral::ui
