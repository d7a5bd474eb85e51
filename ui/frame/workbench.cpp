// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/workbench.h"

#include "ui/frame/rail.h"

#include <QGuiApplication>
#include <QLocale>

namespace littoral::ui {

using namespace Qt::StringLiterals;

Workbench::Workbench(facade::Keeper& keeper, facade::Forecasts& forecasts, Theme& theme, Ask& ask,
                     wording::Translation& translation, QObject* parent)
    : QObject(parent)
    , m_keeper(keeper)
    , m_forecasts(forecasts)
    , m_theme(theme)
    , m_ask(ask)
    , m_translation(translation)
{
    apply(m_session.language());
    makeWindow();
    connect(&keeper, &facade::Keeper::changed, this, &Workbench::followUnits);
    connect(&keeper, &facade::Keeper::storeOpened, this, &Workbench::followUnits);
}

Workbench::~Workbench() = default;

void Workbench::apply(const QString& tag)
{
    // For whoever looks for texts that are cut off or not translatable: every one longer, the layout mirrored.
    const bool pseudo = qEnvironmentVariableIsSet("LITTORAL_PSEUDO");
    m_translation.use(pseudo ? u"pseudo"_s : tag.isEmpty() ? wording::systemLanguage() : tag);
    const QLocale locale = wording::localeFor(m_translation.tag());
    QLocale::setDefault(locale);
    QGuiApplication::setLayoutDirection(pseudo ? Qt::RightToLeft : locale.textDirection());
}

/// The window's own answer to the same signal comes first.
void Workbench::followUnits()
{
    if (record::shownUnits() != m_windowUnits) {
        const auto remake = [this] {
            if (record::shownUnits() != m_windowUnits) { // an undo that was taken back changes nothing
                remakeWindow();
            }
        };
        QMetaObject::invokeMethod(this, remake, Qt::QueuedConnection);
    }
}

void Workbench::makeWindow()
{
    m_windowUnits = record::shownUnits();
    m_window = std::make_unique<MainWindow>(m_keeper, m_forecasts, m_theme, m_ask);
    m_window->setSystemScheme(m_system);
    m_window->setSystemMotion(m_systemMotionReduced);
    // Queued: the old window is still in the menu that asked when the new one takes its place.
    connect(m_window.get(), &MainWindow::languageWanted, this, &Workbench::speak, Qt::QueuedConnection);
}

void Workbench::setSystemScheme(Scheme scheme)
{
    m_system = scheme;
    m_window->setSystemScheme(scheme);
}

void Workbench::setSystemMotion(bool reduced)
{
    m_systemMotionReduced = reduced;
    m_window->setSystemMotion(reduced);
}

void Workbench::speak(const QString& tag)
{
    m_session.setLanguage(tag);
    const QString wanted = tag.isEmpty() ? wording::systemLanguage() : tag;
    if (wanted == m_translation.tag()) {
        return;
    }
    apply(tag);
    remakeWindow();
}

void Workbench::remakeWindow()
{
    const QByteArray geometry = m_window->saveGeometry();
    const MainWindow::Page page = m_window->page();
    const record::TankId tank = m_window->rail()->selected();
    const bool shown = m_window->isVisible();
    m_window->settle();
    m_window.reset();
    makeWindow();
    m_window->restoreGeometry(geometry);
    if (shown) {
        m_window->show();
    }
    m_window->takeUp(page, tank);
}

} // namespace littoral::ui
