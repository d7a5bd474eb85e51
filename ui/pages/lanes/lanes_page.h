// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/pages/lanes/lane_feed.h"
#include "ui/paint/paper.h"
#include "ui/paint/time_axis.h"
#include "ui/theme/theme.h"
#include "ui/widgets/text.h"

#include <QTimer>
#include <QWidget>
#include <optional>

namespace littoral::ui {

class LaneView;
class LanesBar;
class WhyStrip;

/// How each tank is doing, what is due and what comes next, all on one time axis: page bar, lanes, foot strip.
class LanesPage final : public QWidget
{
    Q_OBJECT

public:
    /// All outlive the page.
    LanesPage(facade::Keeper& keeper, facade::Forecasts& forecasts, Theme& theme, QWidget* parent = nullptr);

    /// Which layouts have a lane, in order. Until it is called: the running layout of every tank.
    void setShown(const std::vector<record::LayoutId>& layouts);
    void setSelected(record::TankId tank);
    [[nodiscard]] LaneView& view() { return *m_view; }
    [[nodiscard]] WhyStrip& whyStrip() { return *m_why; }
    [[nodiscard]] TimeAxis& axis() { return m_axis; }
    /// What the keyboard is on, for the guide, the closest first: task, entry, parameter, phase.
    [[nodiscard]] QStringList focusedTopics() const;
    [[nodiscard]] const LaneFeed& feed() const { return m_feed; }
    [[nodiscard]] facade::EaseDesk& ease() { return m_ease; }
    /// What the row asks of its keeper: minutes and litres of today and of seven days, and where large changes meet.
    [[nodiscard]] QString loadLine() const { return m_load->text(); }
    /// The whole row on paper, whichever lanes are on show.
    [[nodiscard]] PaperJob paper();

public slots:
    /// Reads what changed since the last time; cheap when nothing did.
    void refresh();
    void showNow();
    void openFilter();

signals:
    void selected(littoral::record::TankId tank);
    /// One polite sentence for the status bar and for screen readers.
    void told(const QString& sentence);
    void failed(const littoral::Error& error, const QString& safe);
    void entryOpenWanted(littoral::record::EntryId entry);
    void readingOpenWanted(littoral::record::ReadingId reading);
    void layoutOpenWanted(littoral::record::LayoutId layout);
    void workOpenWanted(const littoral::care::DueItem& item);
    void ruleWanted(const QString& templateKey);
    void waterChangeWanted(littoral::record::TankId tank, littoral::record::LayoutId layout);
    /// Whether the row has no tank at all: then another page belongs here.
    void emptyChanged(bool empty);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void connectView();
    void connectWork();
    void updateNow();
    void updateExtent();
    void updateLegend();
    void updateWhy();
    void updateLoad();
    void writeWork(const Result<void>& outcome, const QString& sentence);

    facade::Keeper& m_keeper;
    facade::Forecasts& m_forecasts;
    TimeAxis m_axis;
    facade::EaseDesk m_ease;
    LaneFeed m_feed;
    LanesBar* m_bar;
    Text* m_load;
    quint64 m_loadRevision = 0; ///< of the record the line under the bar was reckoned from
    QDate m_loadDay;
    LaneView* m_view;
    WhyStrip* m_why;
    std::optional<std::vector<record::LayoutId>> m_shown;
    QString m_filter;
    bool m_empty = false;
    QTimer m_minute;
    QTimer m_soon;
};

} // namespace littoral::ui
