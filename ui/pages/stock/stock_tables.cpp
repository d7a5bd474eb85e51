// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/stock/stock_tables.h"

#include "ui/pages/stock/stock_delegates.h"

#include <QFontMetrics>
#include <QHeaderView>
#include <QKeyEvent>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

StockTable::StockTable(Theme& theme, QWidget* parent)
    : QTableView(parent)
    , m_theme(theme)
{
    setFrameShape(QFrame::NoFrame);
    setShowGrid(false);
    setTabKeyNavigation(false);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    verticalHeader()->hide();
    connect(this, &QTableView::doubleClicked, this, [this](const QModelIndex& index) { emit opened(index.row()); });
    connect(&theme, &Theme::changed, this, &StockTable::arrange);
}

int StockTable::fullHeight() const
{
    int height = horizontalHeader()->sizeHint().height() + 1;
    for (int row = 0; model() != nullptr && row < model()->rowCount(); ++row) {
        height += rowHeight(row);
    }
    return height;
}

void StockTable::arrange()
{
    arrangeRows();
    std::vector<int> wanted = widths(viewport()->width());
    int rest = viewport()->width();
    int sharing = 0;
    for (const int width : wanted) {
        rest -= std::max(0, width);
        sharing += width < 0 ? 1 : 0;
    }
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        const int column = static_cast<int>(i);
        const int width = wanted[i] < 0 ? std::max(40, rest / std::max(1, sharing)) : wanted[i];
        setColumnHidden(column, width == 0);
        if (width > 0) {
            setColumnWidth(column, width);
        }
    }
    setFixedHeight(fullHeight());
}

void StockTable::resizeEvent(QResizeEvent* event)
{
    QTableView::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) {
        arrange();
    }
}

void StockTable::currentChanged(const QModelIndex& current, const QModelIndex& previous)
{
    QTableView::currentChanged(current, previous);
    emit currentRowChanged(current.row());
}

void StockTable::keyPressEvent(QKeyEvent* event)
{
    if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) && currentIndex().isValid()) {
        emit opened(currentIndex().row());
        return;
    }
    // Letters are the page's keys here: nothing is searched for by typing.
    const bool letter = !event->text().isEmpty() && event->text().front().isPrint();
    if (letter && (event->modifiers() & (Qt::ControlModifier | Qt::AltModifier)) == 0) {
        event->ignore();
        return;
    }
    QTableView::keyPressEvent(event);
}

AnimalsTable::AnimalsTable(Theme& theme, AnimalsModel& model, QWidget* parent)
    : StockTable(theme, parent)
    , m_model(model)
{
    auto* header = new StockHeader(theme, &model, this);
    setHorizontalHeader(header);
    setModel(&model);
    setItemDelegate(new AnimalsDelegate(theme, model, this));
    setAccessibleName(tr("Animals: what each bears, and this water"));
    connect(&model, &QAbstractItemModel::modelReset, this, [this] { arrange(); });
}

std::vector<int> AnimalsTable::widths(int room) const
{
    const Theme& look = theme();
    const auto& columns = m_model.stock().columns;
    std::vector<int> made{std::clamp(room / 5, look.px(180), look.px(230)), look.px(126)};
    const int verdict = std::clamp(room / 6, look.px(120), look.px(180));
    const int least = look.px(78);
    int left = room - made[0] - made[1] - verdict;
    // Total ammonia gives way first (what harms is its free part), then the class, which is among the reasons; then
    // hardness, nitrate, nitrite. The row's sentences name every parameter.
    std::vector<QString> dropped;
    const auto needed = [&] { return least * static_cast<int>(columns.size() - dropped.size()); };
    if (left < needed()) {
        dropped.push_back(u"tan"_s);
    }
    if (left < needed()) {
        left += made[1];
        made[1] = 0;
    }
    for (const QString& lesser : {u"kh"_s, u"gh"_s, u"no3"_s, u"no2"_s}) {
        if (left < needed()) {
            dropped.push_back(lesser);
        }
    }
    for (const facade::StockColumn& column : columns) {
        made.push_back(std::ranges::find(dropped, column.parameter) == dropped.end() ? -1 : 0);
    }
    made.push_back(verdict);
    return made;
}

void AnimalsTable::arrangeRows()
{
    const int two = QFontMetrics(theme().font(13, 600)).height() + QFontMetrics(theme().font(11)).height();
    const int row = std::max(44, two + theme().px(10));
    const int heading = std::max(24, QFontMetrics(theme().font(11)).height() + theme().px(9));
    clearSpans();
    for (int i = 0; i < m_model.rowCount(); ++i) {
        const bool isHeading = m_model.animal(i) == nullptr;
        setRowHeight(i, isHeading ? heading : row);
        if (isHeading) {
            setSpan(i, 0, 1, m_model.columnCount());
        }
    }
}

PlantsTable::PlantsTable(Theme& theme, PlantsModel& model, QWidget* parent)
    : StockTable(theme, parent)
    , m_model(model)
{
    setHorizontalHeader(new StockHeader(theme, nullptr, this));
    setModel(&model);
    setItemDelegate(new PlantsDelegate(theme, model, this));
    setAccessibleName(tr("Plants: need, cover and condition"));
    connect(&model, &QAbstractItemModel::modelReset, this, [this] { arrange(); });
}

std::vector<int> PlantsTable::widths(int room) const
{
    const Theme& look = theme();
    const int need = look.px(84);
    const int condition = std::clamp(room / 4, look.px(150), look.px(260));
    const int name = std::clamp(room / 5, look.px(180), look.px(230));
    const int left = room - name - condition - 2 * need;
    // The place gives way first, then the curve of the cover: its last value is in the condition.
    const int place = left >= look.px(250) ? look.px(140) : 0;
    const int cover = left - place >= look.px(80) ? -1 : 0;
    return {cover == 0 ? -1 : name, place, need, need, cover, condition};
}

void PlantsTable::arrangeRows()
{
    const int row = std::max(36, 2 * QFontMetrics(theme().font(12)).height() + theme().px(8));
    for (int i = 0; i < m_model.rowCount(); ++i) {
        setRowHeight(i, row);
    }
}

} // namespace littoral::ui
