// SPDX-License-Identifier: GPL-3.0-or-later
// Languages and units in the window: every menu, the live switch, and the units beside every number.
#include "tests/ui/frame_fixture.h"

#include "core/facade/units.h"
#include "ui/frame/panels.h"
#include "ui/frame/rail.h"
#include "ui/frame/status_line.h"
#include "ui/frame/workbench.h"
#include "ui/models/bench_sheet.h"

#include <QApplication>
#include <QMenu>
#include <QPushButton>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;

namespace {

class LanguageTest : public FrameTest
{
protected:
    LanguageTest()
        : m_before(QLocale())
    {
        addKits();
        m_tank = addTank(u"Slate Ford"_s, 16);
        read(m_tank, u"no2"_s, u"0.8"_s, 1);
        Session().setLanguage(u"en"_s);
    }

    ~LanguageTest() override
    {
        m_workbench.reset();
        Session().setLanguage(u"en"_s);
        m_translation.use(u"en"_s);
        record::showUnits({});
        QLocale::setDefault(m_before);
        QGuiApplication::setLayoutDirection(Qt::LeftToRight);
    }

    Workbench& open()
    {
        m_workbench = std::make_unique<Workbench>(m_keeper, m_forecasts, m_theme, m_ask, m_translation);
        m_workbench->window().show();
        return *m_workbench;
    }

    /// A choice takes effect once control is back in the event loop.
    void choose(const QString& action)
    {
        m_workbench->window().actions().action(action)->trigger();
        QCoreApplication::processEvents();
    }

    QLocale m_before;
    wording::Translation m_translation;
    record::TankId m_tank;
    std::unique_ptr<Workbench> m_workbench;
};

void expectDistinctMnemonics(const QMenu& menu)
{
    QMap<QChar, QString> taken;
    for (const QAction* action : menu.actions()) {
        const QString text = action->text();
        const qsizetype mark = text.indexOf(u'&');
        if (mark < 0 || mark + 1 >= text.size()) {
            continue;
        }
        const QChar letter = text[mark + 1].toLower();
        EXPECT_FALSE(taken.contains(letter))
            << "\"" << taken.value(letter).toStdString() << "\" and \"" << text.toStdString() << "\" in one menu";
        taken.insert(letter, text);
    }
}

} // namespace

TEST_F(LanguageTest, NoLetterMeansTwoThingsInOneMenu)
{
    Workbench& bench = open();
    for (const QString& language : {u"language.en"_s, u"language.de"_s}) {
        choose(language);
        const QList<QMenu*> menus = bench.window().findChildren<QMenu*>();
        EXPECT_GE(menus.size(), 6);
        for (const QMenu* menu : menus) {
            expectDistinctMnemonics(*menu);
        }
    }
}

TEST_F(LanguageTest, TheWindowIsMadeAnewWhereItWas)
{
    Workbench& bench = open();
    bench.window().resize(1200, 800);
    bench.window().showPage(MainWindow::Page::Bench);
    choose(u"language.de"_s);
    MainWindow& german = bench.window();
    EXPECT_TRUE(german.isVisible());
    EXPECT_EQ(german.page(), MainWindow::Page::Bench);
    EXPECT_EQ(german.rail()->selected(), m_tank);
    EXPECT_EQ(german.actions().action(u"undo"_s)->text().left(3), u"&Rü"_s);
    EXPECT_TRUE(german.actions().action(u"language.de"_s)->isChecked());
    EXPECT_EQ(Session().language(), u"de"_s);
    EXPECT_TRUE(m_keeper.hasStore());
    choose(u"language.en"_s);
    EXPECT_EQ(bench.window().actions().action(u"undo"_s)->text().left(5), u"&Undo"_s);
}

TEST_F(LanguageTest, WhatIsHalfTypedIsNotLostToAnotherLanguage)
{
    Workbench& bench = open();
    bench.window().panels()->addTank();
    MainWindow* before = &bench.window();
    choose(u"language.de"_s);
    EXPECT_EQ(&bench.window(), before);
    EXPECT_NE(bench.window().panels()->host()->current(), nullptr);
    EXPECT_FALSE(bench.window().statusLine()->lastText().isEmpty());
    EXPECT_TRUE(bench.window().actions().action(u"language.en"_s)->isChecked());
}

TEST_F(LanguageTest, UnitsAreTheStoresAndUndoable)
{
    Workbench& bench = open();
    EXPECT_TRUE(bench.window().statusLine()->unitsButton()->text().contains(u"mg/L"_s));
    choose(u"units.n"_s);
    EXPECT_EQ(record::shownUnits().nitrogen, record::NitrogenUnit::AsNitrogen);
    EXPECT_EQ(m_keeper.row().settings.value(u"units.nitrogen"_s), u"n"_s);
    EXPECT_TRUE(bench.window().actions().action(u"units.n"_s)->isChecked());
    EXPECT_TRUE(bench.window().statusLine()->unitsButton()->text().contains(u"mg/L as N"_s));
    choose(u"units.gallons"_s);
    EXPECT_TRUE(bench.window().statusLine()->unitsButton()->text().contains(u"gallons"_s));
    choose(u"undo"_s);
    choose(u"undo"_s);
    EXPECT_EQ(record::shownUnits(), record::Units{});
    EXPECT_TRUE(bench.window().actions().action(u"units.litres"_s)->isChecked());
}

TEST_F(LanguageTest, UnitsDoNotMoveUnderWhatIsHalfTyped)
{
    Workbench& bench = open();
    choose(u"units.inches"_s);
    bench.window().panels()->addTank();
    choose(u"units.cm"_s);
    EXPECT_EQ(record::shownUnits().length, record::LengthUnit::Inches);
    choose(u"undo"_s);
    EXPECT_EQ(record::shownUnits().length, record::LengthUnit::Inches) << "undo as well";
    EXPECT_NE(bench.window().panels()->host()->current(), nullptr);
}

TEST_F(LanguageTest, AStoreBringsItsUnits)
{
    ASSERT_TRUE(facade::setUnits(m_keeper, {.temperature = record::TemperatureUnit::Fahrenheit}));
    const QString first = m_keeper.path();
    ASSERT_TRUE(m_keeper.create(path(u"other.littoral"_s)));
    EXPECT_EQ(record::shownUnits(), record::Units{});
    ASSERT_TRUE(m_keeper.open(first));
    EXPECT_EQ(record::shownUnits().temperature, record::TemperatureUnit::Fahrenheit);
}

TEST_F(LanguageTest, WorksheetsTakeAndShowTheChosenUnit)
{
    BenchSheet sheet(*sheets::findSheet(u"volume"_s));
    const auto shown = [&](const QString& key) {
        sheet.refresh(m_keeper.row(), m_clock.now());
        return sheet.blank(key);
    };
    for (const auto& [key, text] :
         {std::pair(u"length"_s, u"60"_s), std::pair(u"depth"_s, u"30"_s), std::pair(u"height"_s, u"36"_s)}) {
        sheet.typeShown(key, text);
    }
    ASSERT_NE(shown(u"length"_s), nullptr);
    ASSERT_TRUE(sheet.answer());
    const double litres = sheet.answer()->find(u"net"_s)->value;
    EXPECT_EQ(sheet.answer()->find(u"net"_s)->unit, u"L"_s);

    record::showUnits({.volume = record::VolumeUnit::UsGallons, .length = record::LengthUnit::Inches});
    EXPECT_EQ(shown(u"length"_s)->unit, u"in"_s);
    EXPECT_EQ(shown(u"length"_s)->text, u"60 cm"_s) << "what was typed stays as typed, with the unit it was typed in";
    ASSERT_TRUE(sheet.answer());
    EXPECT_EQ(sheet.answer()->find(u"net"_s)->unit, u"US gal"_s);
    EXPECT_NEAR(sheet.answer()->find(u"net"_s)->value, litres / 3.785411784, 1e-6);

    sheet.typeShown(u"length"_s, u"24"_s);
    EXPECT_EQ(shown(u"length"_s)->text, u"24"_s);
    EXPECT_NEAR(sheet.values().value(u"length"_s).number, 60.96, 1e-6);
    record::showUnits({});
    EXPECT_EQ(shown(u"length"_s)->text, u"24 in"_s);
    EXPECT_NEAR(sheet.values().value(u"length"_s).number, 60.96, 1e-6);
}

} // namespace littoral::ui::test
