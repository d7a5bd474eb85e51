// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/frame_fixture.h"
#include "ui/frame/main_window.h"
#include "ui/pages/guide/guide_page.h"
#include "ui/pages/guide/reading_pane.h"
#include "ui/pages/rounds/rounds_grid.h"
#include "ui/pages/rounds/rounds_page.h"

#include <QAction>
#include <QLineEdit>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;

TEST_F(FrameTest, F1OpensTheGuideAtWhatIsFocused)
{
    addKits();
    addTank(u"Slate Ford"_s, 20);
    MainWindow window(m_keeper, m_forecasts, m_theme, m_ask);
    window.resize(1600, 1000);
    window.show();
    window.showPage(MainWindow::Page::Rounds);
    const int column = window.rounds()->model().columnOf(u"no2"_s);
    ASSERT_GE(column, 0);
    window.rounds()->grid()->setCurrentIndex(window.rounds()->model().index(0, column));
    window.actions().action(u"guide.open"_s)->trigger();
    EXPECT_EQ(window.page(), MainWindow::Page::Guide);
    EXPECT_TRUE(window.guide()->pane()->article().title.contains(u"Nitrite"_s))
        << window.guide()->pane()->article().title.toStdString();
    window.actions().action(u"guide.open"_s)->setData(u"C-BLEACH"_s);
    window.actions().action(u"guide.open"_s)->trigger();
    EXPECT_EQ(window.guide()->topic(), u"caution:C-BLEACH"_s);
    EXPECT_FALSE(window.actions().action(u"guide.open"_s)->data().isValid() &&
                 !window.actions().action(u"guide.open"_s)->data().toString().isEmpty());
    window.guide()->field()->clear();
    emit window.guide()->leaveWanted();
    EXPECT_EQ(window.page(), MainWindow::Page::Rounds) << "Escape goes back to the page it was called from";
}

} // namespace littoral::ui::test
