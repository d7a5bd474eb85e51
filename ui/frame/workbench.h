// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/forecasts.h"
#include "core/wording/language.h"
#include "ui/frame/main_window.h"

#include <memory>

namespace littoral::ui {

/// The window, the language it speaks and the units it shows. Another language or other units mean another window, made
/// where the old one stood, on the same page and tank; the store stays open and nothing is read again.
class Workbench final : public QObject
{
    Q_OBJECT

public:
    /// All references outlive the workbench.
    Workbench(facade::Keeper& keeper, facade::Forecasts& forecasts, Theme& theme, Ask& ask,
              wording::Translation& translation, QObject* parent = nullptr);
    ~Workbench() override;

    void setSystemScheme(Scheme scheme);
    void setSystemMotion(bool reduced);
    [[nodiscard]] MainWindow& window() { return *m_window; }
    /// Now, and at the next start; empty: the desktop's language.
    void speak(const QString& tag);

private:
    void makeWindow();
    void remakeWindow();
    void apply(const QString& tag);
    void followUnits();

    facade::Keeper& m_keeper;
    facade::Forecasts& m_forecasts;
    Theme& m_theme;
    Ask& m_ask;
    wording::Translation& m_translation;
    Session m_session;
    Scheme m_system = Scheme::Light;
    bool m_systemMotionReduced = false;
    record::Units m_windowUnits; ///< those the window was made for
    std::unique_ptr<MainWindow> m_window;
};

} // namespace littoral::ui
