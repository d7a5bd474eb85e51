// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"
#include "ui/models/bench_memory.h"
#include "ui/pages/bench/row_plan_card.h"
#include "ui/pages/bench/sheet_card.h"
#include "ui/widgets/paper_out.h"

#include <QMap>
#include <QTimer>

class QCheckBox;
class QComboBox;
class QHBoxLayout;
class QLineEdit;
class QPushButton;
class QScrollArea;

namespace littoral::ui {

class BenchListModel;
class SheetList;

/// Worksheets: a list with a filter, the one in front filled from the tank's newest readings, others pinned beside it.
/// What is typed stays, over page changes and restarts, until it is cleared.
class BenchPage final : public QWidget
{
    Q_OBJECT

public:
    /// All outlive the page.
    BenchPage(facade::Keeper& keeper, Theme& theme, Ask& ask, QWidget* parent = nullptr);
    ~BenchPage() override;

    void setSelected(record::TankId tank);
    /// A sheet by key, or the row's plan; `typed` goes into its blanks, keyboard into the first that needs something.
    void open(const QString& key, const QMap<QString, QString>& typed = {});
    /// Puts the keyboard on the list.
    void begin();
    /// Keeps what was typed; before the page is left and at the end.
    void settle();

    [[nodiscard]] QString inFront() const { return m_memory.inFront; }
    [[nodiscard]] SheetCard* front() { return m_front; }
    [[nodiscard]] RowPlanCard* rowPlan() { return m_plan; }
    [[nodiscard]] SheetList* list() { return m_list; }
    [[nodiscard]] QLineEdit* filterField() { return m_filter; }
    [[nodiscard]] QList<BenchCard*> pinned() const;
    [[nodiscard]] QComboBox* tankChoice() { return m_tankChoice; }
    [[nodiscard]] QComboBox* sourceChoice() { return m_sourceChoice; }
    [[nodiscard]] QCheckBox* workingChoice() { return m_working; }
    [[nodiscard]] BenchMemory& memory() { return m_memory; }
    /// The sheet in front as it stands; nullptr for the row's plan.
    [[nodiscard]] const BenchSheet* sheet();
    [[nodiscard]] QList<QWidget*> regions() const;
    void pinFront();
    /// The charts of all sheets as tables, and back.
    void toggleTable();
    /// Key of the sheet that has the keyboard, pinned or in front; empty for the row's plan.
    [[nodiscard]] QString focusedSheet();
    /// Puts everything shown on paper.
    void print(PaperTo to = PaperTo::File);

signals:
    void selected(littoral::record::TankId tank);
    void told(const QString& sentence);
    void failed(const littoral::Error& error, const QString& safe);

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    /// A pinned card and the pin it shows.
    struct PinnedCard
    {
        int number = 0;
        BenchCard* card = nullptr;
    };

    [[nodiscard]] QWidget* makeBar();
    [[nodiscard]] QWidget* makeList();
    void makeColumns();
    void makeKeys();
    void connectSheet(SheetCard* card, int pin);
    void connectPlan(RowPlanCard* card);
    void storeChanged();
    void refresh();
    void refreshWhenSeen();
    void refreshChoices();
    void refreshFront();
    void refreshPins();
    void showPlan(RowPlanCard& card);
    void showSheet(SheetCard& card, BenchSheet& sheet);
    [[nodiscard]] BenchSheet* sheetOf(int pin); ///< 0: in front
    [[nodiscard]] SheetCard* cardAtHand(int& pin);
    void write(int pin, int index);
    void plan(int pin, int days);
    [[nodiscard]] const record::LayoutRecord* layoutFor(const BenchSheet& sheet);
    void finish(const Result<void>& done, const QString& sentence);
    void unpin(int number);
    void arrange();
    void place();

    facade::Keeper& m_keeper;
    Theme& m_theme;
    Ask& m_ask;
    BenchMemory m_memory;
    record::TankId m_tank;
    record::SourceWaterId m_source;
    BenchListModel* m_model;
    SheetList* m_list;
    QLineEdit* m_filter;
    Text* m_found;
    QComboBox* m_tankChoice;
    QComboBox* m_sourceChoice;
    QCheckBox* m_working;
    QPushButton* m_print;
    QWidget* m_bar;
    QWidget* m_listPanel;
    QScrollArea* m_scroll;
    QHBoxLayout* m_columns;
    std::vector<QWidget*> m_columnBoxes;
    SheetCard* m_front;
    RowPlanCard* m_plan; ///< in front
    std::vector<PinnedCard> m_pinned;
    QTimer m_saveSoon;
    int m_columnCount = 0;
    bool m_table = false;
    bool m_stale = false; ///< something changed while another page was shown
};

} // namespace littoral::ui
