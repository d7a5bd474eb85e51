// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/forecasts.h"
#include "core/facade/keeper.h"
#include "ui/frame/file_ask.h"
#include "ui/frame/main_window.h"
#include "ui/theme/theme.h"

#include <QSize>
#include <QTemporaryDir>
#include <functional>

namespace littoral::test {

inline constexpr QSize kWholeWindow(1600, 1000);
inline constexpr QSize kSmallestWindow(1024, 680);

/// The workbench on the sample row in a store of its own, at 07:40 UTC on 25 November 2026, with its forecasts done.
/// The application must have the look of `theme` (ui::applyTheme).
class PageTour final
{
public:
    /// `theme` outlives the tour. Without the sample row there is no store: the first-run page.
    PageTour(ui::Theme& theme, QSize size, bool sample = true);

    [[nodiscard]] ui::MainWindow& window() { return *m_window; }
    [[nodiscard]] facade::Keeper& keeper() { return m_keeper; }
    [[nodiscard]] facade::Forecasts& forecasts() { return m_forecasts; }

    using Look = std::function<void(const QString& view)>;
    /// Every page in the state that shows most of it, then its other states: "lanes", "lanes_age", "trends", ...
    void pages(const Look& look);
    /// The side panels: "entry_editor", "tank_editor", "keys".
    void panels(const Look& look);
    /// Waits until nothing moves any more.
    void settle();

private:
    void select(const QString& tank);
    void lanes(const Look& look);
    void trends(const Look& look);
    void cycle(const Look& look);
    void history(const Look& look);
    void stock(const Look& look);
    void bench(const Look& look);
    void guide(const Look& look);

    QTemporaryDir m_place;
    record::FixedClock m_clock;
    facade::Keeper m_keeper;
    facade::Forecasts m_forecasts;
    ui::FileAsk m_ask;
    std::unique_ptr<ui::MainWindow> m_window;
};

} // namespace littoral::test
