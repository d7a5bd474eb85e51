// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/trends/trends_side.h"

#include "ui/widgets/trends/figure_table.h"

#include <QPushButton>
#include <QVBoxLayout>

namespace littoral::ui {

namespace {

// More tanks than this do not fit side by side: they go under one another, parameter by parameter.
constexpr qsizetype kMostColumns = 3;

} // namespace

TrendsSide::TrendsSide(Theme& theme, QWidget* parent)
    : SideColumn(theme, parent)
    , m_place(new Text(theme, TextStyle::Name))
    , m_readout(new FigureTable(theme))
    , m_next(new QPushButton(tr("Next reading")))
    , m_statisticsTitle(new Text(theme, TextStyle::Strong))
    , m_statisticsNote(new Text(theme, TextStyle::Secondary))
    , m_statistics(new FigureTable(theme))
    , m_comparison(new Text(theme, TextStyle::Body))
    , m_eventsTitle(new Text(theme, TextStyle::Strong, tr("On that day")))
    , m_events(new Text(theme, TextStyle::Secondary))
{
    setAccessibleName(tr("Values, statistics and comparison"));
    m_readout->setAccessibleName(tr("Values at the cursor"));
    m_statistics->setAccessibleName(tr("Statistics of the stretch"));
    m_readout->setAccessibleName(tr("Values at the crosshair"));
    m_next->setProperty("keyHint", QStringLiteral("."));
    for (Text* text : {m_place, m_statisticsTitle, m_statisticsNote, m_comparison, m_events}) {
        text->wrapped();
    }
    m_events->setToken(Token::Ink2);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 12, 12, 12);
    column->setSpacing(4);
    auto* keys =
        (new Text(theme, TextStyle::Secondary, tr("← → by a day, comma and full stop by a reading")))->wrapped();
    column->addWidget(m_place);
    column->addWidget(keys);
    column->addWidget(m_readout);
    column->addSpacing(6);
    column->addWidget(m_next);
    column->addSpacing(14);
    column->addWidget(m_statisticsTitle);
    column->addWidget(m_statisticsNote);
    column->addWidget(m_statistics);
    column->addSpacing(14);
    column->addWidget(new Text(theme, TextStyle::Strong, tr("Side by side")));
    column->addWidget(m_comparison);
    column->addSpacing(14);
    column->addWidget(m_eventsTitle);
    column->addWidget(m_events);
    column->addStretch(1);
    connect(m_next, &QPushButton::clicked, this, &TrendsSide::nextReadingWanted);
}

void TrendsSide::fill(FigureTable& card, const TrendTable& table)
{
    std::vector<FigureRow> rows;
    if (table.columns.size() <= kMostColumns) {
        for (const TrendRow& row : table.rows) {
            FigureRow made{row.title, row.parameter, {}, false, row.sentence};
            for (std::size_t i = 0; i < row.cells.size(); ++i) {
                made.cells.push_back({row.cells[i].value, row.cells[i].notes, i == 0});
            }
            rows.push_back(std::move(made));
        }
        card.setTable(table.columns, std::move(rows));
        return;
    }
    for (const TrendRow& row : table.rows) {
        rows.push_back({row.title, row.parameter, {}, true, row.sentence});
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            const QString& name = table.columns[static_cast<qsizetype>(i)];
            rows.push_back({name,
                            {},
                            {{row.cells[i].value, {row.cells[i].notes.join(QStringLiteral(" "))}, false}},
                            false,
                            tr("%1, %2: %3", "tank, figure, value").arg(name, row.title, row.cells[i].value)});
            if (row.cells[i].notes.isEmpty()) {
                rows.back().cells.front().notes.clear();
            }
        }
    }
    card.setTable({QString()}, std::move(rows));
}

void TrendsSide::setReadout(const TrendTable& table)
{
    QString place = table.caption;
    place.replace(0, 1, place.left(1).toUpper());
    m_place->setText(place);
    fill(*m_readout, table);
}

void TrendsSide::setStatistics(const TrendTable& table, bool stretchSet)
{
    m_statisticsTitle->setText(table.caption);
    m_statisticsNote->setText(stretchSet ? tr("Stretch set with [ and ]; Backspace takes it away")
                                         : tr("What is on show; [ and ] set a stretch at the crosshair"));
    m_statistics->setAccessibleName(tr("Statistics, %1").arg(table.caption));
    fill(*m_statistics, table);
}

void TrendsSide::setComparison(const QStringList& sentences)
{
    m_comparison->setText(sentences.join(QLatin1Char('\n')));
}

QString TrendsSide::comparison() const
{
    return m_comparison->text();
}

void TrendsSide::setEvents(const QStringList& sentences)
{
    m_events->setText(sentences.isEmpty() ? tr("Nothing was noted.") : sentences.join(QLatin1Char('\n')));
}

} // namespace littoral::ui
