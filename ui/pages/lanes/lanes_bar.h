// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/lane_layout.h"

#include <QWidget>
#include <vector>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace littoral::ui {

class SegmentedControl;

/// Names and marks of the parameters on show, right aligned; entries that do not fit are counted ("+2") and listed in
/// the tip.
class MarkLegend final : public QWidget
{
    Q_OBJECT

public:
    struct Entry
    {
        QString parameter, name;
        bool operator==(const Entry&) const = default;
    };
    explicit MarkLegend(const Theme& theme, QWidget* parent = nullptr);
    void setEntries(std::vector<Entry> entries);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] double widthOf(const Entry& entry) const;
    const Theme& m_theme;
    std::vector<Entry> m_entries;
};

/// The page bar of Lanes: dates or ages, span, what is drawn, legend, back to now.
class LanesBar final : public QWidget
{
    Q_OBJECT

public:
    /// Both outlive the bar; the span is set on the axis directly.
    LanesBar(const Theme& theme, TimeAxis& axis, QWidget* parent = nullptr);

    [[nodiscard]] LaneOptions options() const;
    /// First and last instant there is anything at, for "Everything"; age in days of the oldest layout.
    void setExtent(qint64 first, qint64 last, double oldestDays);
    void setLegend(std::vector<MarkLegend::Entry> entries) { m_legend->setEntries(std::move(entries)); }
    /// Shows the filter field with the keyboard in it; Esc hides it and clears the filter.
    void openFilter();

signals:
    void optionsChanged();
    void nowWanted();
    void filterChanged(const QString& text);
    void filterClosed();

protected:
    void paintEvent(QPaintEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void makeControls();
    void fillSpans();
    void applySpan(int index);
    void modeChanged();
    void rangeChanged();
    void applyTheme();
    QCheckBox* check(const QString& text, bool on);

    const Theme& m_theme;
    TimeAxis& m_axis;
    SegmentedControl* m_mode;
    QLabel* m_spanLabel;
    QComboBox* m_span;
    QCheckBox* m_forecast;
    QCheckBox* m_targets;
    QCheckBox* m_done;
    QCheckBox* m_freeAmmonia;
    QCheckBox* m_phases;
    QLineEdit* m_filter;
    MarkLegend* m_legend;
    QPushButton* m_now;
    qint64 m_first = 0, m_last = 0;
    double m_oldestDays = 63;
    bool m_applying = false;
};

} // namespace littoral::ui
