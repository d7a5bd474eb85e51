// SPDX-License-Identifier: GPL-3.0-or-later
// What a screen reader and a keyboard meet on every page of the sample row.
#include "tests/support/page_tour.h"
#include "tests/ui/support/look_of_all.h"
#include "ui/frame/panels.h"
#include "ui/frame/rail.h"
#include "ui/pages/lanes/lanes_page.h"
#include "ui/pages/rounds/rounds_page.h"
#include "ui/pages/trends/trends_page.h"
#include "ui/widgets/call_field.h"
#include "ui/widgets/lanes/lane_view.h"
#include "ui/widgets/trends/trend_view.h"

#include <QAccessible>
#include <QAction>
#include <QApplication>
#include <QListView>
#include <QTest>
#include <gtest/gtest.h>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;

namespace {

bool isInteractive(QAccessible::Role role)
{
    switch (role) {
    case QAccessible::PushButton:
    case QAccessible::CheckBox:
    case QAccessible::RadioButton:
    case QAccessible::ComboBox:
    case QAccessible::EditableText:
    case QAccessible::SpinBox:
    case QAccessible::Slider:
    case QAccessible::Link:
    case QAccessible::ListItem:
    case QAccessible::Cell:
    case QAccessible::MenuItem:
    case QAccessible::List:
    case QAccessible::Table:
    case QAccessible::Tree:
    case QAccessible::Chart:
        return true;
    default:
        return false;
    }
}

/// Rows of long tables are alike: some of each are enough.
constexpr int kMostChildren = 60;

void walk(QAccessibleInterface* node, const QString& path, int& seen, QStringList& unnamed)
{
    if (node == nullptr || !node->isValid() || node->state().invisible) {
        return;
    }
    const QString name = node->text(QAccessible::Name);
    const QAccessible::Role role = node->role();
    const QString here = path + u"/"_s + (name.isEmpty() ? QString::number(role) : name.left(24));
    if (isInteractive(role)) {
        ++seen;
        // An empty cell says what it is by its headers; an editor inside a named field takes its name from it.
        const bool blank = name.isEmpty() && node->text(QAccessible::Value).isEmpty() &&
                           node->text(QAccessible::Description).isEmpty();
        const QAccessibleInterface* parent = node->parent();
        const bool inner =
            parent != nullptr && (parent->role() == QAccessible::SpinBox || parent->role() == QAccessible::ComboBox ||
                                  parent->role() == QAccessible::EditableText);
        if (blank && role != QAccessible::Cell && !inner) {
            unnamed << here;
        }
    }
    for (int i = 0; i < std::min(node->childCount(), kMostChildren); ++i) {
        walk(node->child(i), here, seen, unnamed);
    }
}

} // namespace

class PageAccess : public ::testing::Test
{
protected:
    PageAccess()
        : m_tour(lookOfAll(), littoral::test::kWholeWindow)
    {
        m_tour.window().activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_tour.window()));
    }
    MainWindow& window() { return m_tour.window(); }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus == nullptr ? &window() : focus, key, modifiers);
        QCoreApplication::processEvents();
    }

    littoral::test::PageTour m_tour;
};

TEST_F(PageAccess, NothingInteractiveIsWithoutAName)
{
    const auto look = [&](const QString& view) {
        int seen = 0;
        QStringList unnamed;
        walk(QAccessible::queryAccessibleInterface(&window()), {}, seen, unnamed);
        EXPECT_GT(seen, 20) << view.toStdString() << ": the tree is not there";
        EXPECT_TRUE(unnamed.isEmpty()) << view.toStdString() << ":\n" << unnamed.join(u'\n').toStdString();
    };
    m_tour.pages(look);
    m_tour.panels(look);
}

TEST_F(PageAccess, TheKeyboardIsOnThePageAfterEachSwitch)
{
    using Page = MainWindow::Page;
    for (const Page page :
         {Page::Lanes, Page::Trends, Page::Cycle, Page::History, Page::Rounds, Page::Stock, Page::Bench, Page::Guide}) {
        press(static_cast<Qt::Key>(Qt::Key_1 + static_cast<int>(page)), Qt::ControlModifier);
        EXPECT_EQ(window().page(), page);
        m_tour.settle();
        EXPECT_NE(QApplication::focusWidget(), nullptr) << "page " << static_cast<int>(page);
    }
}

TEST_F(PageAccess, TheKeyboardIsNotLostByDoneAndUndo)
{
    press(Qt::Key_1, Qt::ControlModifier);
    auto* lanes = window().findChild<LanesPage*>();
    lanes->view().setFocus();
    const facade::LaneChip* chip = lanes->view().selectedChip();
    ASSERT_NE(chip, nullptr);
    press(Qt::Key_Space);
    EXPECT_TRUE(lanes->view().hasFocus());
    EXPECT_NE(lanes->view().selectedLane(), nullptr);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(lanes->view().hasFocus());
    ASSERT_NE(lanes->view().selectedLane(), nullptr);
    press(Qt::Key_5, Qt::ControlModifier);
    m_tour.settle();
    QWidget* before = QApplication::focusWidget();
    ASSERT_NE(before, nullptr);
    press(Qt::Key_Z, Qt::ControlModifier);
    press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_NE(QApplication::focusWidget(), nullptr);
}

TEST_F(PageAccess, EscapeStepsBackOneLevel)
{
    // A panel, then the page under it, which stays.
    press(Qt::Key_1, Qt::ControlModifier);
    window().actions().action(u"entry.new"_s)->trigger();
    QCoreApplication::processEvents();
    ASSERT_TRUE(window().panels()->host()->isVisible());
    press(Qt::Key_Escape);
    EXPECT_FALSE(window().panels()->host()->isVisible());
    EXPECT_EQ(window().page(), MainWindow::Page::Lanes);
    EXPECT_NE(QApplication::focusWidget(), nullptr);
    // The filter of Trends, then its crosshair.
    press(Qt::Key_2, Qt::ControlModifier);
    window().trends()->view().setFocus();
    window().trends()->view().setCursor(window().trends()->view().cursor());
    press(Qt::Key_F, Qt::ControlModifier);
    ASSERT_TRUE(window().trends()->filter().hasFocus());
    QTest::keyClicks(QApplication::focusWidget(), u"nitr"_s);
    press(Qt::Key_Escape);
    EXPECT_FALSE(window().trends()->filter().isVisible());
    EXPECT_TRUE(window().trends()->view().hasFocus());
    EXPECT_TRUE(window().trends()->view().hasCursor()) << "one level, not two";
    press(Qt::Key_Escape);
    EXPECT_FALSE(window().trends()->view().hasCursor());
}

} // namespace littoral::ui::test
