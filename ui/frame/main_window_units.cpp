// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/main_window.h"

#include "core/facade/units.h"
#include "core/wording/language.h"
#include "ui/frame/panels.h"
#include "ui/frame/status_line.h"
#include "ui/pages/bench/bench_page.h"
#include "ui/pages/guide/guide_page.h"
#include "ui/pages/rounds/rounds_page.h"

#include <QActionGroup>
#include <QMenu>
#include <QPushButton>

namespace littoral::ui {

using namespace Qt::StringLiterals;
using Group = ActionRegistry::Group;

/// One way of showing values: what it changes, and how to tell whether it is in force.
struct MainWindow::UnitChoice
{
    QString id;
    QString text;
    std::function<void(record::Units&)> choose;
};

void MainWindow::addUnitChoices(const std::vector<UnitChoice>& choices)
{
    auto* group = new QActionGroup(this);
    for (const UnitChoice& choice : choices) {
        QAction* action = m_actions->add(choice.id, choice.text, Group::Units, {}, [this, choose = choice.choose] {
            if (panelIsOpen()) {
                refreshUnits();
                return;
            }
            record::Units units = record::unitsFrom(m_keeper.row().settings);
            choose(units);
            if (const auto done = facade::setUnits(m_keeper, units); !done) {
                fail(done.error(), tr("Values are shown as before."));
            }
            refreshUnits();
        });
        action->setCheckable(true);
        group->addAction(action);
        m_unitChoices.push_back({action, choice.choose});
    }
}

void MainWindow::makeUnitActions()
{
    using namespace record;
    addUnitChoices(
        {{u"units.ion"_s, tr("Nitrogen in mg/L of the ion"), [](Units& u) { u.nitrogen = NitrogenUnit::Ion; }},
         {u"units.n"_s, tr("Nitrogen in mg/L as N"), [](Units& u) { u.nitrogen = NitrogenUnit::AsNitrogen; }},
         {u"units.ppm"_s, tr("All of mg/L as ppm"), [](Units& u) { u.nitrogen = NitrogenUnit::Ppm; }}});
    addUnitChoices(
        {{u"units.degrees"_s, tr("Hardness in dKH, dGH"), [](Units& u) { u.hardness = HardnessUnit::Degrees; }},
         {u"units.molar"_s, tr("Hardness in meq/L, mmol/L"), [](Units& u) { u.hardness = HardnessUnit::Molar; }},
         {u"units.caco3"_s, tr("Hardness in ppm CaCO₃"), [](Units& u) { u.hardness = HardnessUnit::PpmCaCO3; }}});
    addUnitChoices(
        {{u"units.celsius"_s, tr("Temperature in °C"), [](Units& u) { u.temperature = TemperatureUnit::Celsius; }},
         {u"units.fahrenheit"_s, tr("Temperature in °F"),
          [](Units& u) { u.temperature = TemperatureUnit::Fahrenheit; }}});
    addUnitChoices(
        {{u"units.litres"_s, tr("Volume in litres"), [](Units& u) { u.volume = VolumeUnit::Litres; }},
         {u"units.gallons"_s, tr("Volume in US gallons"), [](Units& u) { u.volume = VolumeUnit::UsGallons; }}});
    addUnitChoices({{u"units.cm"_s, tr("Length in cm"), [](Units& u) { u.length = LengthUnit::Centimetres; }},
                    {u"units.inches"_s, tr("Length in inches"), [](Units& u) { u.length = LengthUnit::Inches; }}});
    m_actions->add(u"units"_s, tr("&Units of this store"), Group::View, {QKeySequence(Qt::CTRL | Qt::Key_U)}, [this] {
        QWidget* from =
            m_status->unitsButton()->isVisible() ? static_cast<QWidget*>(m_status->unitsButton()) : m_status;
        m_unitsMenu->popup(from->mapToGlobal(QPoint(0, -m_unitsMenu->sizeHint().height() - 2)));
        m_unitsMenu->setActiveAction(m_unitsMenu->actions().value(0));
    });
    connect(m_status, &StatusLine::unitsWanted, m_actions->action(u"units"_s), &QAction::trigger);
}

void MainWindow::makeUnitsMenu()
{
    m_unitsMenu->setAccessibleName(tr("Units of this store"));
    QActionGroup* before = nullptr;
    for (const auto& [action, choose] : m_unitChoices) {
        if (before != nullptr && before != action->actionGroup()) {
            m_unitsMenu->addSeparator();
        }
        before = action->actionGroup();
        m_unitsMenu->addAction(action);
    }
}

void MainWindow::refreshUnits()
{
    const record::Units now = record::shownUnits();
    const bool writable = m_keeper.hasStore() && !m_keeper.isReadOnly();
    for (const auto& [action, choose] : m_unitChoices) {
        record::Units chosen = now;
        choose(chosen);
        action->setChecked(chosen == now);
        action->setEnabled(writable);
    }
    m_actions->action(u"units"_s)->setEnabled(m_keeper.hasStore());
}

void MainWindow::makeLanguageActions()
{
    auto* group = new QActionGroup(this);
    const auto offer = [&](const QString& tag, const QString& text) {
        QAction* action = m_actions->add(u"language."_s + (tag.isEmpty() ? u"system"_s : tag), text, Group::View, {},
                                         [this, tag] { askLanguage(tag); });
        action->setCheckable(true);
        action->setChecked(m_session.language() == tag);
        group->addAction(action);
    };
    for (const wording::Language& language : wording::languages()) {
        offer(language.tag, language.name);
    }
    offer({}, tr("Language of the desktop"));
}

/// Another language or other units make another window, which knows nothing of what is half typed beside the page.
bool MainWindow::panelIsOpen()
{
    if (m_panels->host()->current() == nullptr) {
        return false;
    }
    tell(tr("Close the panel beside the page first, so that nothing typed in it is lost or changes its meaning."));
    return true;
}

void MainWindow::askLanguage(const QString& tag)
{
    if (panelIsOpen()) {
        const QString id = m_session.language().isEmpty() ? u"system"_s : m_session.language();
        m_actions->action(u"language."_s + id)->setChecked(true);
        return;
    }
    emit languageWanted(tag);
}

void MainWindow::settle()
{
    m_rounds->settle();
    m_bench->settle();
    m_guide->settle();
}

void MainWindow::takeUp(Page page, record::TankId tank)
{
    storeChanged();
    if (tank) {
        select(tank);
    }
    showPage(page);
}

} // namespace littoral::ui
