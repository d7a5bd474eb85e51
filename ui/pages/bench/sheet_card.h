// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/bench_sheet.h"
#include "ui/pages/bench/bench_card.h"
#include "ui/widgets/caution_box.h"

#include <vector>

class QComboBox;
class QGridLayout;

namespace littoral::ui {

class CardTable;
class DisclosureLine;
class FlowLayout;
class SheetField;
class TableTwin;

/// A worksheet: blanks, formula with the figures, result with its doubt, what else moves, cautions, source, actions.
class SheetCard final : public BenchCard
{
    Q_OBJECT

public:
    explicit SheetCard(Theme& theme, QWidget* parent = nullptr);

    struct Surroundings
    {
        const record::Row* row = nullptr;
        record::Moment now;
        bool working = true;
        bool table = false; ///< the charts as tables
        bool writable = true;
        QString tankName;
    };
    void show(const BenchSheet& open, const Surroundings& around);

    [[nodiscard]] QWidget* firstField() override;
    [[nodiscard]] SheetField* field(const QString& key) const; ///< nullptr when there is none
    [[nodiscard]] QString resultText() const;
    [[nodiscard]] QString cautionText() const { return m_cautions->text(); }
    [[nodiscard]] QString problemText() const { return m_problem->text(); }
    [[nodiscard]] const std::vector<QPushButton*>& actionButtons() const { return m_buttons; }
    [[nodiscard]] QPushButton* taskButton() const { return m_task; }
    /// Days from today that a task is set for.
    [[nodiscard]] int taskDays() const;
    [[nodiscard]] CurveView* curve() { return m_curve; }
    [[nodiscard]] TableTwin* twin() { return m_twin; }

signals:
    void typed(const QString& key, const QString& text);
    void clearWanted();
    /// Put down `answer().writes[index]` now.
    void writeWanted(int index);
    /// Plan all that the sheet proposes, the first of them in `days` days.
    void taskWanted(int days);
    void copied(const QString& sentence);

private:
    void makeBody();
    void makeActions();
    void makeFields(const sheets::Sheet& sheet);
    void showFields(const BenchSheet& open);
    [[nodiscard]] QWidget* wantingField() const;
    void showAnswer(const BenchSheet& open, const Surroundings& around);
    void showResults(const sheets::Answer& answer);
    void showMoves(const sheets::Answer& answer);
    void showCharts(const BenchSheet& open, const Surroundings& around);
    void showWrites(const std::vector<sheets::Write>& writes);
    void showActions(const BenchSheet& open, const Surroundings& around);
    void showDays(const record::Moment& now);
    void fold();
    void copy();

    const sheets::Sheet* m_sheet = nullptr;
    std::vector<SheetField*> m_fields;
    std::vector<bool> m_folded;
    QString m_copy;
    QDate m_daysFrom;
    QWidget* m_fieldBox;
    DisclosureLine* m_more;
    FormulaPane* m_formula;
    Text* m_problem;
    Text* m_result;
    Text* m_resultNote;
    CurveView* m_ways;
    CurveView* m_curve;
    TableTwin* m_twin;
    QWidget* m_resultBox;
    QGridLayout* m_results;
    CardTable* m_moves;
    Text* m_notes;
    CautionBox* m_cautions;
    Text* m_source;
    QWidget* m_actionBox;
    FlowLayout* m_actions;
    QPushButton* m_task;
    QComboBox* m_day;
    QPushButton* m_copyButton;
    QPushButton* m_clear;
    std::vector<QPushButton*> m_buttons; ///< one for each thing the sheet can write
    std::vector<QPushButton*> m_pool;    ///< all that were ever needed
};

} // namespace littoral::ui
