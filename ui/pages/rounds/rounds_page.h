// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/forecasts.h"
#include "core/facade/keeper.h"
#include "ui/models/rounds_model.h"
#include "ui/widgets/paper_out.h"
#include "ui/widgets/text.h"

#include <QWidget>

class QBoxLayout;
class QCheckBox;
class QLineEdit;
class QProgressBar;

namespace littoral::ui {

class CellPanel;
class RoundTimers;
class TimerStrip;
class MomentEdit;
class RoundsGrid;
class SeenRow;
class WorkPanel;

/// The Rounds page: walk along the row, type the readings, tick the work, note what is seen. Nothing on it is a
/// document to be saved: each cell and tick is in the store as it is left, so a half-done round is simply there again.
class RoundsPage final : public QWidget
{
    Q_OBJECT

public:
    RoundsPage(facade::Keeper& keeper, facade::Forecasts& forecasts, Theme& theme, Ask& ask, QWidget* parent = nullptr);

    /// Starts the timer of the kit that reads the current cell.
    void startTimer();
    /// Puts the keyboard on a cell; a timer that is ready there has done its work.
    void goToCell(record::TankId tank, const QString& parameter);
    /// Typing in a sheet that was walked with on that day; nothing: today's round.
    void setSheetDay(const std::optional<QDate>& day);
    [[nodiscard]] RoundTimers& timers() { return *m_timers; }

    void setSelected(record::TankId tank);
    /// Puts the keyboard on the first due cell.
    void begin();
    /// Saves the open cell; before the page is left.
    void settle();
    [[nodiscard]] RoundsGrid* grid() { return m_grid; }
    [[nodiscard]] RoundsModel& model() { return *m_model; }
    [[nodiscard]] WorkPanel* work() { return m_work; }
    [[nodiscard]] SeenRow* seen() { return m_seen; }
    [[nodiscard]] CellPanel* cellPanel() { return m_cell; }
    [[nodiscard]] QString progressText() const;
    /// What the keyboard is at, for the guide: a task of the list, what is being noted, the parameter of the cell.
    [[nodiscard]] QString focusedTopic() const;
    /// The round sheet, in the order chosen on the page.
    void print(PaperTo to);
    /// Parts of the page for F6, in order.
    [[nodiscard]] QList<QWidget*> regions() const;

signals:
    void selected(littoral::record::TankId tank);
    void finished(const QString& sentence);
    void told(const QString& sentence);
    void failed(const littoral::Error& error, const QString& safe);
    void photosWanted(littoral::record::TankId tank);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QWidget* makeBar();
    [[nodiscard]] QWidget* makeFoot();
    void connectAll();
    void refreshProgress();
    void refreshTitle();
    void readAtChanged();
    void makeSheetFields(QWidget* bar);
    void sheetDayTyped();
    void sheetTimeTyped();
    void showSheetTime();
    void showTimerButton();
    void finish();
    void arrange();

    facade::Keeper& m_keeper;
    Theme& m_theme;
    Ask& m_ask;
    RoundsModel* m_model;
    RoundsGrid* m_grid;
    CellPanel* m_cell;
    SeenRow* m_seen;
    WorkPanel* m_work;
    RoundTimers* m_timers;
    TimerStrip* m_strip;
    MomentEdit* m_readAt;
    QWidget* m_readAtBox = nullptr;
    QCheckBox* m_sheet = nullptr;
    QWidget* m_sheetBox = nullptr;
    QLineEdit* m_sheetDay = nullptr;
    QLineEdit* m_sheetTime = nullptr;
    Text* m_sheetTank = nullptr;
    Text* m_title;
    Text* m_progress;
    Text* m_empty;
    Text* m_savedNote = nullptr;
    QProgressBar* m_bar;
    QBoxLayout* m_columns;
    QWidget* m_pageBar;
    QWidget* m_foot;
};

} // namespace littoral::ui
