// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"
#include "core/facade/plan_desk.h"
#include "core/facade/track_record.h"
#include "ui/models/cycle_model.h"
#include "ui/theme/theme.h"
#include "ui/widgets/motion.h"

#include <QDate>
#include <QTimer>
#include <QWidget>
#include <map>
#include <optional>

class QBoxLayout;
class QScrollArea;
class QStackedWidget;
class QVBoxLayout;

namespace littoral::ui {

class CycleBar;
class FanStack;
class CycleGatesCard;
class PlansCard;
class CycleRecordCard;
class TableTwin;
class Text;
class VerdictCard;

/// One tank's cycle: fans on the shared time axis at the left; verdict, gates, plans and track record at the right.
class CyclePage final : public QWidget
{
    Q_OBJECT

public:
    /// All outlive the page; `axis` is the one Lanes uses.
    CyclePage(facade::Keeper& keeper, facade::Forecasts& forecasts, Theme& theme, TimeAxis& axis,
              QWidget* parent = nullptr);
    ~CyclePage() override;

    void setSelected(record::TankId tank);
    [[nodiscard]] record::TankId tank() const { return m_tank; }
    [[nodiscard]] const CycleModel& model() const { return m_model; }
    [[nodiscard]] facade::PlanDesk& desk() { return m_desk; }
    [[nodiscard]] FanStack& charts() { return *m_charts; }
    [[nodiscard]] TableTwin& twin() { return *m_twin; }
    [[nodiscard]] VerdictCard& verdict() { return *m_verdict; }
    [[nodiscard]] CycleGatesCard& gates() { return *m_gates; }
    [[nodiscard]] PlansCard& plans() { return *m_plans; }
    [[nodiscard]] CycleRecordCard& track() { return *m_record; }
    [[nodiscard]] bool isTable() const;
    [[nodiscard]] bool canAdopt() const;
    /// What the keyboard is at, for the guide: a gate, a plan, the parameter of a panel.
    [[nodiscard]] QString focusedTopic() const;
    /// Parts of the page for F6, in order.
    [[nodiscard]] QList<QWidget*> regions() const;
    /// Puts the keyboard on the charts.
    void begin();
    /// Blocks until nothing is running (tests, pictures).
    void wait();

public slots:
    void refresh();
    /// Looks at a plan without adopting it; nothing: back to what is planned now.
    void choosePlan(const std::optional<littoral::forecast::ChangePlan>& plan);
    void chooseGate(const QString& key);
    void adopt();
    void toggleTable();
    void toggleMode();
    void showNow();
    void refit();
    void setLearning(bool on);

signals:
    /// One polite sentence for the status bar and for screen readers.
    void told(const QString& sentence);
    void failed(const littoral::Error& error, const QString& safe);
    void readingOpenWanted(littoral::record::ReadingId reading);
    /// Whether a plan can be adopted may have changed.
    void stateChanged();

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void assemble();
    void connectAll();
    void apply();
    void arrange();
    void ask();
    void readTrack();
    [[nodiscard]] record::LayoutId layout() const;
    [[nodiscard]] facade::ForecastState stateOf(record::LayoutId layout) const;
    [[nodiscard]] std::optional<forecast::ChangePlan> cheapest(double nitrite_mgN_per_L, double most, bool& any) const;

    facade::Keeper& m_keeper;
    facade::Forecasts& m_forecasts;
    Theme& m_theme;
    TimeAxis& m_axis;
    Motion m_glide;
    facade::PlanDesk m_desk;
    record::TankId m_tank;
    QString m_gate;
    std::optional<forecast::ChangePlan> m_chosen;
    std::map<record::LayoutId, QString> m_failures;
    std::optional<facade::TrackRecord> m_track;
    quint64 m_trackRevision = 0;
    CycleModel m_model;
    QTimer m_soon;

    CycleBar* m_bar;
    QStackedWidget* m_pages; ///< message or body
    Text* m_message;
    QWidget* m_body;
    QBoxLayout* m_columns = nullptr;
    QScrollArea* m_left;
    QScrollArea* m_right;
    QVBoxLayout* m_cards = nullptr;
    QStackedWidget* m_chartStack;
    FanStack* m_charts;
    TableTwin* m_twin;
    VerdictCard* m_verdict;
    CycleGatesCard* m_gates;
    PlansCard* m_plans;
    CycleRecordCard* m_record;
    bool m_single = false; ///< one column
};

} // namespace littoral::ui
