// SPDX-License-Identifier: GPL-3.0-or-later
// A printed sheet typed in afterwards, and the timers of a round as the window shows them.
#include "tests/ui/frame_fixture.h"
#include "ui/frame/main_window.h"
#include "ui/frame/panels.h"
#include "ui/frame/status_line.h"
#include "ui/models/round_timers.h"
#include "ui/pages/rounds/rounds_grid.h"
#include "ui/pages/rounds/rounds_page.h"
#include "ui/pages/rounds/work_panel.h"

#include <QApplication>
#include <QCheckBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;

class RoundsSheetTest : public FrameTest
{
protected:
    RoundsSheetTest()
    {
        addKits();
        m_a = addTank(u"Slate Ford"_s, 16);
        m_b = addTank(u"Fen Corner"_s, 16);
    }
    [[nodiscard]] static QLineEdit* field(QWidget& page, const QString& name)
    {
        for (QLineEdit* it : page.findChildren<QLineEdit*>()) {
            if (it->accessibleName() == name) {
                return it;
            }
        }
        return nullptr;
    }
    void typeInto(QLineEdit* at, const QString& text)
    {
        ASSERT_NE(at, nullptr);
        at->setText(text);
        emit at->editingFinished();
    }

    record::TankId m_a, m_b;
};

TEST_F(RoundsSheetTest, ASheetIsTypedInWithItsOwnDayAndTimes)
{
    RoundsPage page(m_keeper, m_forecasts, m_theme, m_ask);
    page.resize(1392, 920);
    page.show();
    auto* sheet = page.findChild<QCheckBox*>();
    ASSERT_NE(sheet, nullptr);
    sheet->setChecked(true);
    EXPECT_TRUE(page.model().isSheet());
    typeInto(field(page, u"Day of the round on the sheet"_s), u"2026-11-23"_s);
    EXPECT_EQ(page.model().day(), QDate(2026, 11, 23));
    const int column = page.model().columnOf(u"tan"_s);
    page.grid()->setCurrentIndex(page.model().index(0, column));
    typeInto(field(page, u"Time for Slate Ford"_s), u"0735"_s);
    page.grid()->setCurrentIndex(page.model().index(1, column));
    EXPECT_EQ(field(page, u"Time for Fen Corner"_s)->text(), u"07:35"_s) << "until it has its own";
    typeInto(field(page, u"Time for Fen Corner"_s), u"7.50"_s);
    EXPECT_TRUE(page.model().setData(page.model().index(0, column), u"0.4"_s));
    EXPECT_TRUE(page.model().setData(page.model().index(1, column), u"0.1"_s));
    const auto readAt = [&](record::TankId tank) {
        return m_keeper.row().layout(layoutOf(tank))->readings.back().at.toDateTime();
    };
    EXPECT_EQ(readAt(m_a).time(), QTime(7, 35));
    EXPECT_EQ(readAt(m_b).time(), QTime(7, 50));
    EXPECT_EQ(readAt(m_b).date(), QDate(2026, 11, 23));
    // Typed again on the same sheet it replaces; today's round knows it as a value of two days ago.
    EXPECT_TRUE(page.model().setData(page.model().index(0, column), u"0.8"_s));
    EXPECT_EQ(readingCount(), 2U);
    sheet->setChecked(false);
    EXPECT_EQ(page.model().day(), m_clock.today());
    EXPECT_EQ(page.model().index(0, column).data(RoundsModel::LastAgoRole).toString(), u"2 d"_s);
    EXPECT_TRUE(page.model().index(0, column).data(RoundsModel::TypedRole).toString().isEmpty());
}

TEST_F(RoundsSheetTest, ADayToComeIsRefusedAndTheSheetStays)
{
    RoundsPage page(m_keeper, m_forecasts, m_theme, m_ask);
    page.show();
    page.findChild<QCheckBox*>()->setChecked(true);
    typeInto(field(page, u"Day of the round on the sheet"_s), u"2026-12-24"_s);
    EXPECT_EQ(page.model().day(), m_clock.today());
    EXPECT_EQ(field(page, u"Day of the round on the sheet"_s)->text(), u"2026-11-25"_s);
    page.grid()->setCurrentIndex(page.model().index(0, 0));
    typeInto(field(page, u"Time for Slate Ford"_s), u"23:59"_s);
    EXPECT_LE(page.model().readAt(m_a), record::Moment::fromLocal(m_clock.today(), QTime(12, 0)));
}

TEST_F(RoundsSheetTest, WorkTickedOnASheetIsDoneOnItsDay)
{
    RoundsPage page(m_keeper, m_forecasts, m_theme, m_ask);
    page.show();
    page.setSheetDay(QDate(2026, 11, 23));
    WorkModel& work = page.work()->model();
    for (int row = 0; row < work.rowCount(); ++row) {
        if (const care::DueItem* item = work.item(work.index(row));
            item != nullptr && item->kind == care::WorkKind::WaterChange) {
            EXPECT_TRUE(work.setData(work.index(row), static_cast<int>(Qt::Checked), Qt::CheckStateRole));
            break;
        }
    }
    std::vector<record::Entry> all = m_keeper.row().layout(layoutOf(m_a))->entries;
    std::ranges::copy(m_keeper.row().layout(layoutOf(m_b))->entries, std::back_inserter(all));
    ASSERT_EQ(all.size(), 1U);
    EXPECT_EQ(all[0].at.localDate(), QDate(2026, 11, 23));
    EXPECT_TRUE(m_keeper.lastChangeText().startsWith(u"done: Water change"_s))
        << m_keeper.lastChangeText().toStdString();
}

TEST_F(RoundsSheetTest, ATimerIsSeenFromEveryPage)
{
    store::Edit wait(u"wait"_s);
    for (record::TestKit kit : m_keeper.row().kits) {
        kit.waitMinutes = 5;
        wait.put(kit);
    }
    ASSERT_TRUE(m_keeper.commit(wait));
    MainWindow window(m_keeper, m_forecasts, m_theme, m_ask);
    window.resize(1600, 1000);
    window.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    window.showPage(MainWindow::Page::Rounds);
    RoundsPage& rounds = *window.rounds();
    rounds.goToCell(m_b, u"no2"_s);
    window.actions().action(u"rounds.timer"_s)->trigger();
    EXPECT_TRUE(window.statusLine()->timersButton()->isVisible());
    window.showPage(MainWindow::Page::Lanes);
    EXPECT_TRUE(window.statusLine()->timersButton()->isVisible()) << "a page change stops nothing";
    EXPECT_TRUE(window.statusLine()->timersButton()->text().contains(u"Nitrite, Fen Corner"_s));
    m_clock.set(m_clock.now().plusMs(5 * 60'000));
    rounds.timers().tick();
    EXPECT_TRUE(window.statusLine()->lastText().contains(u"Ready to read: Nitrite, Fen Corner"_s));
    window.statusLine()->timersButton()->click();
    EXPECT_EQ(window.page(), MainWindow::Page::Rounds);
    EXPECT_EQ(rounds.model().tank(rounds.grid()->currentIndex().row()), m_b);
    EXPECT_FALSE(window.statusLine()->timersButton()->isVisible()) << "looked at, it is gone";
}

TEST_F(RoundsSheetTest, WidePanelsTakeThePageAndGiveItBack)
{
    read(m_a, u"no2"_s, u"0.8"_s, 1);
    MainWindow window(m_keeper, m_forecasts, m_theme, m_ask);
    window.resize(1600, 1000);
    window.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    window.actions().action(u"entries.row"_s)->trigger();
    SidePanel* entries = window.panels()->host()->current();
    ASSERT_NE(entries, nullptr);
    EXPECT_TRUE(entries->takesPage());
    QCoreApplication::processEvents();
    EXPECT_GT(entries->width(), 900);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    ASSERT_NE(window.panels()->host()->current(), entries) << "the line's form";
    window.panels()->host()->close();
    EXPECT_EQ(window.panels()->host()->current(), entries) << "one level back";
    window.panels()->host()->close();
    EXPECT_EQ(window.panels()->host()->current(), nullptr);
    for (const char* id : {"photos", "supplies", "templates"}) {
        window.actions().action(QString::fromLatin1(id))->trigger();
        ASSERT_NE(window.panels()->host()->current(), nullptr) << id;
        window.panels()->host()->close();
    }
    EXPECT_TRUE(window.actions().action(u"undo"_s)->text().contains(u"Nitrite 0.8"_s));
}

} // namespace littoral::ui::test
