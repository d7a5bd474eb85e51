// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/trend_layout.h"
#include "ui/theme/theme.h"

#include <QWidget>

class QAction;
class QCheckBox;
class QComboBox;
class QLabel;
class QMenu;
class QPushButton;

namespace littoral::ui {

class CallField;
class SegmentedControl;

/// What a picture of the charts is kept as.
enum class TrendFile { Png, Svg, Csv };

/// The page bar of Trends: arrangement, dates or ages, span, what is drawn, table, export.
class TrendsBar final : public QWidget
{
    Q_OBJECT

public:
    /// Both outlive the bar; mode and span are set on the axis directly.
    TrendsBar(const Theme& theme, TimeAxis& axis, QWidget* parent = nullptr);

    [[nodiscard]] TrendOptions options() const;
    void setOptions(const TrendOptions& options);
    void setArrangement(TrendArrangement arrangement);
    /// Names of kept views; `writable`: whether one may be kept or removed.
    void setViews(const QStringList& names, bool writable);
    void openViews();
    /// Asks for the name of what is on show now.
    void askViewName();
    [[nodiscard]] QMenu* viewsMenu() { return m_viewsMenu; }
    [[nodiscard]] CallField* viewName() { return m_viewName; }
    /// Everything there is, own places of the axis, for "Everything".
    void setExtent(qint64 from, qint64 to);
    void setTable(bool table);
    /// Where there is room for one side only: which one is shown, Choose (0) or Read (1).
    void setOneSide(bool one);
    [[nodiscard]] int side() const;
    void setSide(int side);
    void openExport();
    [[nodiscard]] QMenu* exportMenu() { return m_exportMenu; }

signals:
    void optionsChanged();
    void tableWanted(bool table);
    void sideChosen(int side);
    void exportWanted(littoral::ui::TrendFile kind);
    void viewWanted(const QString& name);
    void viewSaveWanted(const QString& name);
    void viewRemoveWanted(const QString& name);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QCheckBox* check(const QString& text, bool on);
    void makeExport();
    void fillSpans();
    void applySpan(int index);
    void rangeChanged();
    void applyTheme();

    const Theme& m_theme;
    TimeAxis& m_axis;
    SegmentedControl* m_arrangement;
    SegmentedControl* m_mode;
    QLabel* m_spanLabel;
    QComboBox* m_span;
    QCheckBox *m_targets, *m_events, *m_forecast, *m_expected, *m_steps, *m_log;
    SegmentedControl* m_side;
    QPushButton* m_table;
    QPushButton* m_views;
    QMenu* m_viewsMenu;
    CallField* m_viewName;
    QPushButton* m_export;
    QMenu* m_exportMenu;
    qint64 m_from = 0, m_to = 1;
    bool m_applying = false;
};

} // namespace littoral::ui
