// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/case_file.h"
#include "ui/pages/history/history_card.h"
#include "ui/paint/age_chart.h"
#include "ui/widgets/chart_widget.h"

class QComboBox;

namespace littoral::ui {

class CardTable;
class TableTwin;

/// What was otherwise in the window, largest first, against the layout's own earlier spread.
class ChangesCard final : public HistoryCard
{
    Q_OBJECT

public:
    explicit ChangesCard(Theme& theme, QWidget* parent = nullptr);
    void setCase(const facade::CaseFile& file);
    [[nodiscard]] CardTable& table() { return *m_table; }

signals:
    void pointed(const std::vector<littoral::facade::RecordRef>& rests);

private:
    std::vector<facade::CaseChange> m_changes;
    CardTable* m_table;
    Text *m_none, *m_statistic, *m_steps;
};

/// Hours beyond each limit since the window opened.
class ExposureCard final : public HistoryCard
{
    Q_OBJECT

public:
    explicit ExposureCard(Theme& theme, QWidget* parent = nullptr);
    void setCase(const facade::CaseFile& file);
    [[nodiscard]] CardTable& table() { return *m_table; }

private:
    CardTable* m_table;
    Text *m_none, *m_note;
};

/// The chart of a comparison at equal age.
class AgeChartView final : public ChartWidget
{
    Q_OBJECT

public:
    explicit AgeChartView(Theme& theme, QWidget* parent = nullptr);
    void setComparison(const facade::Comparison& made);
    [[nodiscard]] int partCount() const override;
    [[nodiscard]] QString partSentence(int part) const override;
    [[nodiscard]] QRect partRect(int part) const override;
    [[nodiscard]] int currentPart() const override { return m_current; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    void reached(const QString& sentence);

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    [[nodiscard]] std::vector<AgeChart::Point> points() const;

    Theme& m_theme;
    facade::Comparison m_made;
    int m_current = -1;
};

/// Beside another tank, or an earlier layout, at the same age.
class CompareCard final : public HistoryCard
{
    Q_OBJECT

public:
    explicit CompareCard(Theme& theme, QWidget* parent = nullptr);
    void setComparison(const facade::Comparison& made);
    [[nodiscard]] QComboBox* what() { return m_what; }
    [[nodiscard]] QComboBox* reference() { return m_reference; }
    /// The chart, or the same values as a table.
    void toggleTable();
    [[nodiscard]] TableTwin& twin() { return *m_twin; }

signals:
    void wanted(const QString& key, littoral::record::LayoutId reference);

private:
    void choose();
    void arrange();

    facade::Comparison m_made;
    QComboBox *m_what, *m_reference;
    QWidget* m_bar;
    AgeChartView* m_chart;
    TableTwin* m_twin;
    bool m_table = false;
    Text* m_said;
};

} // namespace littoral::ui
