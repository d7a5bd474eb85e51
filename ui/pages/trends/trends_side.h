// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/trend_words.h"
#include "ui/widgets/text.h"
#include "ui/widgets/trends/side_column.h"

class QPushButton;

namespace littoral::ui {

class FigureTable;

/// What the charts say in figures and words: values at the crosshair, statistics of the stretch, comparison, events of
/// the day.
class TrendsSide final : public SideColumn
{
    Q_OBJECT

public:
    explicit TrendsSide(Theme& theme, QWidget* parent = nullptr);

    void setReadout(const TrendTable& table);
    /// `stretchSet`: the stretch was chosen by hand.
    void setStatistics(const TrendTable& table, bool stretchSet);
    void setComparison(const QStringList& sentences);
    void setEvents(const QStringList& sentences);
    [[nodiscard]] FigureTable& readout() { return *m_readout; }
    [[nodiscard]] FigureTable& statistics() { return *m_statistics; }
    [[nodiscard]] QString comparison() const;

signals:
    void nextReadingWanted();

private:
    static void fill(FigureTable& card, const TrendTable& table);

    Text* m_place;
    FigureTable* m_readout;
    QPushButton* m_next;
    Text* m_statisticsTitle;
    Text* m_statisticsNote;
    FigureTable* m_statistics;
    Text* m_comparison;
    Text* m_eventsTitle;
    Text* m_events;
};

} // namespace littoral::ui
