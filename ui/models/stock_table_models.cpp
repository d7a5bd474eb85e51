// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/stock_table_models.h"

#include "core/wording/numbers.h"
#include "ui/models/guide_model.h"
#include "ui/models/stock_words.h"

#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;
using facade::AnimalRow;
using facade::PlantRow;
using facade::StockPlace;

namespace {

/// What asks for most stands first.
int weight(facade::Status status)
{
    switch (status) {
    case facade::Status::Act:
    case facade::Status::Overdue:
        return 0;
    case facade::Status::Watch:
        return 1;
    case facade::Status::Waiting:
        return 2;
    case facade::Status::Unknown:
        return 3;
    case facade::Status::Ok:
        break;
    }
    return 4;
}

template <typename Row> bool before(const Row& a, const Row& b, StockOrder order)
{
    if (order == StockOrder::Verdict) {
        return weight(a.status) < weight(b.status);
    }
    if (order == StockOrder::Name) {
        return a.subject.localeAwareCompare(b.subject) < 0;
    }
    return false;
}

/// "mg/L" of "mg/L NO₃": the symbol stands beside it.
QString plainUnit(const record::Parameter& parameter)
{
    QString unit = parameter.shown().label;
    return unit.endsWith(u' ' + parameter.symbol) ? unit.chopped(parameter.symbol.size()).trimmed() : unit;
}

QString plantName(const PlantRow& row)
{
    return row.species ? row.species->scientific : row.subject;
}

} // namespace

void AnimalsModel::setModel(const facade::StockModel& model, const QDate& today)
{
    beginResetModel();
    m_stock = model;
    m_today = today;
    arrange();
    endResetModel();
}

void AnimalsModel::setFilter(const QString& text)
{
    beginResetModel();
    m_filter = text;
    arrange();
    endResetModel();
}

void AnimalsModel::setOrder(StockOrder order)
{
    beginResetModel();
    m_order = order;
    arrange();
    endResetModel();
}

void AnimalsModel::arrange()
{
    m_lines.clear();
    for (const StockPlace place : {StockPlace::Here, StockPlace::Planned, StockPlace::Considered}) {
        std::vector<int> rows;
        for (std::size_t i = 0; i < m_stock.animals.size(); ++i) {
            const AnimalRow& row = m_stock.animals[i];
            const QString text = row.subject + u' ' + animalName(row) + u' ' +
                                 (row.species ? row.species->scientific : QString()) + u' ' +
                                 animalVerdict(m_stock, row);
            if (row.place == place && hasAllWords(text, m_filter)) {
                rows.push_back(static_cast<int>(i));
            }
        }
        std::ranges::stable_sort(rows, [this](int a, int b) {
            return before(m_stock.animals[static_cast<std::size_t>(a)], m_stock.animals[static_cast<std::size_t>(b)],
                          m_order);
        });
        if (!rows.empty()) {
            m_lines.push_back({-1, place});
            for (const int row : rows) {
                m_lines.push_back({row, place});
            }
        }
    }
}

const AnimalRow* AnimalsModel::animal(int row) const
{
    if (row < 0 || row >= rowCount() || m_lines[static_cast<std::size_t>(row)].animal < 0) {
        return nullptr;
    }
    return &m_stock.animals[static_cast<std::size_t>(m_lines[static_cast<std::size_t>(row)].animal)];
}

int AnimalsModel::verdictColumn() const
{
    return FirstParameter + static_cast<int>(m_stock.columns.size());
}

int AnimalsModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

int AnimalsModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : verdictColumn() + 1;
}

QVariant AnimalsModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid() || index.row() >= rowCount()) {
        return {};
    }
    const AnimalRow* row = animal(index.row());
    if (row == nullptr) {
        const StockPlace place = m_lines[static_cast<std::size_t>(index.row())].place;
        if (role == HeadingRole) {
            return true;
        }
        return role == Qt::DisplayRole && index.column() == 0
                   ? QVariant(place == StockPlace::Here      ? tr("Living here, day %1").arg(m_stock.ageDays)
                              : place == StockPlace::Planned ? tr("Planned")
                                                             : tr("Considered"))
                   : QVariant();
    }
    const int parameter = index.column() - FirstParameter;
    const bool isParameter = parameter >= 0 && parameter < static_cast<int>(row->cells.size());
    switch (role) {
    case HeadingRole:
        return false;
    case CountRole:
        return animalCountLine(*row, m_today);
    case StatusRole:
        return static_cast<int>(row->status);
    case ReasonsRole:
        return animalReasons(m_stock, *row, m_today);
    case Qt::ToolTipRole:
        return isParameter ? QVariant() : QVariant(animalReasons(m_stock, *row, m_today).join(u'\n'));
    case Qt::DisplayRole:
    case Qt::AccessibleTextRole:
        break;
    default:
        return {};
    }
    if (isParameter) {
        return cellText(m_stock.columns[static_cast<std::size_t>(parameter)],
                        row->cells[static_cast<std::size_t>(parameter)]);
    }
    if (index.column() == ClassColumn) {
        return animalClass(m_stock, *row);
    }
    if (index.column() == verdictColumn()) {
        return animalVerdict(m_stock, *row);
    }
    const QString name = row->species ? row->species->scientific : row->subject;
    return role == Qt::DisplayRole ? name
                                   : tr("%1, %2, %3").arg(name, animalName(*row), animalCountLine(*row, m_today));
}

QVariant AnimalsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) {
        return {};
    }
    if (section == SpeciesColumn) {
        return tr("Species");
    }
    if (section == ClassColumn) {
        return tr("Class");
    }
    if (section == verdictColumn()) {
        return tr("Verdict");
    }
    const QString& parameter = m_stock.columns[static_cast<std::size_t>(section - FirstParameter)].parameter;
    const record::Parameter* known = record::findParameter(parameter);
    return known == nullptr || parameter == u"ph"_s ? wording::parameterSymbol(parameter)
                                                    : tr("%1, %2").arg(known->symbol, plainUnit(*known));
}

Qt::ItemFlags AnimalsModel::flags(const QModelIndex& index) const
{
    return animal(index.row()) == nullptr ? Qt::NoItemFlags : Qt::ItemIsEnabled | Qt::ItemIsSelectable;
}

void PlantsModel::setModel(const facade::StockModel& model, const QDate& today)
{
    beginResetModel();
    m_stock = model;
    m_today = today;
    arrange();
    endResetModel();
}

void PlantsModel::setFilter(const QString& text)
{
    beginResetModel();
    m_filter = text;
    arrange();
    endResetModel();
}

void PlantsModel::setOrder(StockOrder order)
{
    beginResetModel();
    m_order = order;
    arrange();
    endResetModel();
}

void PlantsModel::arrange()
{
    m_rows.clear();
    for (std::size_t i = 0; i < m_stock.plants.size(); ++i) {
        const PlantRow& row = m_stock.plants[i];
        const QString text =
            row.subject + u' ' + plantName(row) + u' ' + row.where + u' ' + plantCondition(row, m_today);
        if (hasAllWords(text, m_filter)) {
            m_rows.push_back(static_cast<int>(i));
        }
    }
    std::ranges::stable_sort(m_rows, [this](int a, int b) {
        return before(m_stock.plants[static_cast<std::size_t>(a)], m_stock.plants[static_cast<std::size_t>(b)],
                      m_order);
    });
}

const PlantRow* PlantsModel::plant(int row) const
{
    return row < 0 || row >= rowCount()
               ? nullptr
               : &m_stock.plants[static_cast<std::size_t>(m_rows[static_cast<std::size_t>(row)])];
}

int PlantsModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int PlantsModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : Columns;
}

QVariant PlantsModel::data(const QModelIndex& index, int role) const
{
    const PlantRow* row = index.isValid() ? plant(index.row()) : nullptr;
    if (row == nullptr) {
        return {};
    }
    if (role == AnimalsModel::StatusRole) {
        return static_cast<int>(row->status);
    }
    if (role != Qt::DisplayRole && role != Qt::AccessibleTextRole && role != Qt::ToolTipRole) {
        return {};
    }
    switch (index.column()) {
    case SpeciesColumn:
        return plantName(*row);
    case PlaceColumn: {
        const QString count = row->count ? tr("%1 %2").arg(*row->count).arg(row->unit) : QString();
        return count.isEmpty() ? row->where : row->where.isEmpty() ? count : tr("%1, %2").arg(row->where, count);
    }
    case LightColumn:
        return row->lightShort ? tr("%1: short of it").arg(lightNeedText(*row)) : lightNeedText(*row);
    case Co2Column:
        return row->co2Short ? tr("%1: short of it").arg(co2NeedText(*row)) : co2NeedText(*row);
    case CoverColumn:
        return row->cover.empty()
                   ? tr("no cover noted")
                   : tr("cover %1 on %2")
                         .arg(wording::percentText(row->cover.back().share),
                              wording::dateText(record::Moment(row->cover.back().at, 0).localDate(), m_today));
    case ConditionColumn:
        return plantCondition(*row, m_today);
    default:
        return {};
    }
}

QVariant PlantsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) {
        return {};
    }
    switch (section) {
    case SpeciesColumn:
        return tr("Species");
    case PlaceColumn:
        return tr("Place");
    case LightColumn:
        return tr("Light");
    case Co2Column:
        return tr("CO₂");
    case CoverColumn:
        return tr("Cover, %");
    case ConditionColumn:
        return tr("Condition");
    default:
        return {};
    }
}

} // namespace littoral::ui
