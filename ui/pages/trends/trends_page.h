// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/forecasts.h"
#include "core/facade/keeper.h"
#include "ui/models/kept_trends.h"
#include "ui/pages/trends/trends_bar.h"
#include "ui/widgets/ask.h"
#include "ui/widgets/motion.h"
#include "ui/widgets/text.h"

#include <QTimer>
#include <QWidget>
#include <vector>

class QBoxLayout;
class QScrollArea;
class QStackedWidget;

namespace littoral::ui {

class CallField;
class TableTwin;
class TickList;
class TrendBrush;
class TrendsSide;
class TrendView;

/// How a parameter has moved, in one tank or several, by date or at equal age: what to show at the left, the charts,
/// and what they say in figures at the right.
class TrendsPage final : public QWidget
{
    Q_OBJECT

public:
    /// All outlive the page; `axis` is the one Lanes uses.
    TrendsPage(facade::Keeper& keeper, facade::Forecasts& forecasts, Theme& theme, Ask& ask, TimeAxis& axis,
               QWidget* parent = nullptr);

    /// The tank drawn heaviest; put on show if it is not.
    void setSelected(record::TankId tank);
    [[nodiscard]] TrendView& view() { return *m_view; }
    [[nodiscard]] TrendBrush& brush() { return *m_brush; }
    [[nodiscard]] TrendsSide& side() { return *m_side; }
    [[nodiscard]] TrendsBar& bar() { return *m_bar; }
    [[nodiscard]] CallField& filter() { return *m_filter; }
    [[nodiscard]] TickList& tanks() { return *m_tanks; }
    [[nodiscard]] TickList& parameters() { return *m_parameters; }
    [[nodiscard]] TableTwin& twin() { return *m_twin; }
    [[nodiscard]] QString message() const { return m_message->isHidden() ? QString() : m_message->text(); }
    [[nodiscard]] bool isTable() const;
    /// Parts of the page for F6, in order.
    [[nodiscard]] QList<QWidget*> regions() const;
    /// Puts the keyboard on the charts.
    void begin();
    /// Shows these layouts and parameters, by hand as it were.
    void choose(const std::vector<record::LayoutId>& layouts, const QStringList& parameters);
    /// The parameter the keyboard is at, for the guide.
    [[nodiscard]] QString focusedTopic() const;
    [[nodiscard]] QSize minimumSizeHint() const override;

public slots:
    /// Reads the record again; left until the page is seen.
    void refresh();
    void toggleTable();
    void toggleMode();
    void showNow();
    void openExport();
    /// Narrows the lists at the left to what has these letters.
    void openFilter();
    void useView(const QString& name);
    void saveView(const QString& name);
    void removeView(const QString& name);
    /// Asks where to and writes what is on show; a file, never the store.
    void exportTo(littoral::ui::TrendFile kind);

signals:
    /// One polite sentence for the status bar and for screen readers.
    void told(const QString& sentence);
    void failed(const littoral::Error& error, const QString& safe);
    void readingOpenWanted(littoral::record::ReadingId reading);
    void roundsWanted();

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void assemble();
    void connectAll();
    void arrange();
    void chooseByItself();
    void chooseParameters();
    void fillTanks();
    void fillParameters();
    void takeChoice();
    void draw();
    void say();
    void updateReadout();
    void updateFigures();
    [[nodiscard]] KeptTrend onShow() const;
    void remember();
    void recall();
    void fillViews();
    void writeViews(const QString& label, const QString& text, const QString& sentence);
    [[nodiscard]] std::vector<record::LayoutId> runningLayouts() const;

    facade::Keeper& m_keeper;
    facade::Forecasts& m_forecasts;
    Theme& m_theme;
    Ask& m_ask;
    TimeAxis& m_axis;
    Motion m_glide;
    record::TankId m_tank;
    std::vector<record::LayoutId> m_layouts; ///< on show, in order
    QStringList m_shown;                     ///< keys of parameters on show, in order
    QStringList m_order;                     ///< all parameters as the keeper ordered them
    bool m_byHand = false;                   ///< the keeper chose what is on show
    bool m_parametersByHand = false;
    bool m_stale = true;
    QTimer m_soon, m_figuresSoon;

    TrendsBar* m_bar;
    CallField* m_filter;
    TickList* m_tanks;
    TickList* m_parameters;
    Text* m_legend;
    QScrollArea* m_left;
    QWidget* m_messageStrip;
    Text* m_message;
    QWidget* m_messageButton;
    QStackedWidget* m_stack;
    QScrollArea* m_charts;
    TrendView* m_view;
    TableTwin* m_twin;
    TrendBrush* m_brush;
    TrendsSide* m_side;
    QScrollArea* m_right;
};

} // namespace littoral::ui
