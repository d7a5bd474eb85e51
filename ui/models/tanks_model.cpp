// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/tanks_model.h"

#include "core/facade/lanes.h"

#include <algorithm>

namespace littoral::ui {

namespace {
constexpr int kRestMs = 120;
}

facade::ForecastState forecastStateOf(const facade::Forecasts& forecasts, record::LayoutId layout)
{
    const auto result = forecasts.result(layout);
    if (result == nullptr) {
        return forecasts.isRunning(layout) ? facade::ForecastState::Running : facade::ForecastState::None;
    }
    if (!forecasts.isCurrent(layout)) {
        return facade::ForecastState::Stale;
    }
    return result->forecast.diagnostics.fitted ? facade::ForecastState::Ready : facade::ForecastState::NotFitted;
}

TanksModel::TanksModel(facade::Keeper& keeper, facade::Forecasts& forecasts, QObject* parent)
    : QAbstractListModel(parent)
    , m_keeper(keeper)
    , m_forecasts(forecasts)
{
    // What is typed on a round changes a status word at most: that can wait until the keys rest. Another tank cannot.
    m_soon.setSingleShot(true);
    connect(&m_soon, &QTimer::timeout, this, &TanksModel::refresh);
    connect(&keeper, &facade::Keeper::changed, this, [this] {
        if (m_keeper.row().tanks.size() != m_tankCount || m_keeper.row().layouts.size() != m_layoutCount) {
            refresh();
        } else {
            m_soon.start(kRestMs);
        }
    });
    connect(&keeper, &facade::Keeper::storeOpened, this, &TanksModel::refresh);
    connect(&keeper, &facade::Keeper::storeClosed, this, [this] {
        m_hidden.clear();
        m_shownEarlier.clear();
        refresh();
    });
    connect(&forecasts, &facade::Forecasts::ready, this, [this](record::LayoutId) { refresh(); });
    refresh();
}

void TanksModel::refresh()
{
    m_soon.stop();
    m_tankCount = m_keeper.row().tanks.size();
    m_layoutCount = m_keeper.row().layouts.size();
    const record::Row& row = m_keeper.row();
    const record::Moment now = m_keeper.clock().now();
    const QDate today = now.localDate();
    std::vector<Line> tanks;
    std::vector<Line> earlier;
    m_longest = 0.0;
    const auto lineOf = [&](record::LayoutId layout) {
        const auto result = m_forecasts.result(layout);
        return Line{
            false,
            {},
            {},
            facade::laneOf(row, layout, now, today.addDays(14), result.get(), forecastStateOf(m_forecasts, layout))};
    };
    for (const record::Tank& tank : row.tanks) {
        m_longest = std::max(m_longest, tank.length_cm);
        const record::LayoutRecord* current = row.currentLayout(tank.id, now);
        for (const record::LayoutRecord* layout : row.layoutsOf(tank.id)) {
            (layout == current ? tanks : earlier).push_back(lineOf(layout->layout.id));
        }
    }
    int overdue = 0;
    for (const Line& line : tanks) {
        overdue += line.lane.overdueCount;
    }
    std::vector<Line> lines;
    lines.push_back({true,
                     tr("Row: %n tank(s)", nullptr, static_cast<int>(tanks.size())),
                     overdue > 0 ? tr("%1 overdue").arg(overdue) : QString(),
                     {}});
    std::ranges::move(tanks, std::back_inserter(lines));
    if (!earlier.empty()) {
        lines.push_back({true, tr("Earlier layouts"), QString::number(earlier.size()), {}});
        std::ranges::move(earlier, std::back_inserter(lines));
    }
    const bool sameShape = std::ranges::equal(lines, m_lines, [](const Line& a, const Line& b) {
        return a.heading == b.heading && a.lane.layout == b.lane.layout && a.lane.earlier == b.lane.earlier;
    });
    if (sameShape) {
        m_lines = std::move(lines);
        emit dataChanged(index(0), index(rowCount() - 1));
    } else {
        beginResetModel();
        m_lines = std::move(lines);
        endResetModel();
        emit shownChanged();
    }
    emit refreshed();
}

int TanksModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

QVariant TanksModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid() || index.row() >= rowCount()) {
        return {};
    }
    const Line& line = m_lines[static_cast<std::size_t>(index.row())];
    const facade::LaneModel& lane = line.lane;
    switch (role) {
    case HeadingRole:
        return line.heading;
    case SideTextRole:
        return line.side;
    case Qt::DisplayRole:
        return line.heading ? line.text : lane.name;
    case Qt::AccessibleTextRole:
        if (line.heading) {
            return tr("%1, %2").arg(line.text, line.side);
        }
        return lane.statusWord.isEmpty() ? tr("%1, %2").arg(lane.name, lane.litresAndAge)
                                         : tr("%1, %2, %3").arg(lane.name, lane.litresAndAge, lane.statusWord);
    default:
        break;
    }
    if (line.heading) {
        return {};
    }
    switch (role) {
    case Qt::ToolTipRole:
        return tr("%1\n%2\n%3")
            .arg(lane.name, lane.litresAndAge, lane.statusLine.isEmpty() ? lane.statusWord : lane.statusLine);
    case Qt::CheckStateRole: {
        const bool shown = lane.earlier ? m_shownEarlier.contains(lane.layout) : !m_hidden.contains(lane.layout);
        return shown ? Qt::Checked : Qt::Unchecked;
    }
    case LineRole:
        return lane.litresAndAge;
    case StatusRole:
        return static_cast<int>(lane.status);
    case StatusWordRole:
        return lane.earlier ? QString() : lane.statusWord;
    case LengthRole:
        return lane.length_cm;
    case DepthRole:
        return lane.depth_cm;
    case HeightRole:
        return lane.height_cm;
    case BedShareRole:
        return lane.bedShare;
    case TankRole:
        return lane.tank.value;
    case LayoutRole:
        return lane.layout.value;
    default:
        return {};
    }
}

Qt::ItemFlags TanksModel::flags(const QModelIndex& index) const
{
    if (!index.isValid() || index.row() >= rowCount()) {
        return Qt::NoItemFlags;
    }
    if (m_lines[static_cast<std::size_t>(index.row())].heading) {
        return Qt::ItemIsEnabled | Qt::ItemNeverHasChildren;
    }
    return Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable | Qt::ItemNeverHasChildren;
}

bool TanksModel::setData(const QModelIndex& index, const QVariant& value, int role)
{
    if (role != Qt::CheckStateRole || !index.isValid() || index.row() >= rowCount()) {
        return false;
    }
    const facade::LaneModel& lane = m_lines[static_cast<std::size_t>(index.row())].lane;
    const bool show = value.toInt() == static_cast<int>(Qt::Checked);
    std::set<record::LayoutId>& set = lane.earlier ? m_shownEarlier : m_hidden;
    if (show == lane.earlier) {
        set.insert(lane.layout);
    } else {
        set.erase(lane.layout);
    }
    emit dataChanged(index, index, {Qt::CheckStateRole});
    emit shownChanged();
    return true;
}

std::vector<record::LayoutId> TanksModel::shown() const
{
    std::vector<record::LayoutId> layouts;
    for (const Line& line : m_lines) {
        if (line.heading) {
            continue;
        }
        if (line.lane.earlier ? m_shownEarlier.contains(line.lane.layout) : !m_hidden.contains(line.lane.layout)) {
            layouts.push_back(line.lane.layout);
        }
    }
    return layouts;
}

TanksModel::Counts TanksModel::counts() const
{
    Counts counts;
    for (const Line& line : m_lines) {
        if (!line.heading && !line.lane.earlier) {
            counts.due += line.lane.dueTodayCount;
            counts.overdue += line.lane.overdueCount;
            counts.snoozed += line.lane.snoozedCount;
        }
    }
    return counts;
}

int TanksModel::rowOf(record::TankId tank) const
{
    const auto found = std::ranges::find_if(
        m_lines, [&](const Line& line) { return !line.heading && !line.lane.earlier && line.lane.tank == tank; });
    return found == m_lines.end() ? -1 : static_cast<int>(found - m_lines.begin());
}

record::TankId TanksModel::tankAt(int row) const
{
    return row >= 0 && row < rowCount() ? m_lines[static_cast<std::size_t>(row)].lane.tank : record::TankId{};
}

} // namespace littoral::ui
