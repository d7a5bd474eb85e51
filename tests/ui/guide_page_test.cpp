// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/frame_fixture.h"
#include "ui/pages/guide/guide_page.h"
#include "ui/pages/guide/own_note.h"
#include "ui/pages/guide/reading_pane.h"
#include "ui/pages/guide/topic_list.h"

#include <QAccessible>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;

namespace {

class GuidePageTest : public FrameTest
{
protected:
    GuidePageTest()
        : m_page(m_keeper, m_theme)
    {
        m_page.resize(1300, 860);
        m_page.show();
    }
    [[nodiscard]] QString shown() const { return m_page.topic(); }

    GuidePage m_page;
};

} // namespace

TEST_F(GuidePageTest, BackAndForwardFollowTheTrail)
{
    m_page.open(u"condition:alg_dust"_s);
    m_page.open(u"condition:alg_spot"_s);
    EXPECT_FALSE(m_page.forwardButton()->isEnabled());
    m_page.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&m_page)) << "shortcuts need it";
    m_page.list()->setFocus();
    QTest::keyClick(m_page.list(), Qt::Key_Left, Qt::AltModifier);
    EXPECT_EQ(shown(), u"condition:alg_dust"_s);
    EXPECT_TRUE(m_page.forwardButton()->isEnabled());
    QTest::keyClick(m_page.list(), Qt::Key_Right, Qt::AltModifier);
    EXPECT_EQ(shown(), u"condition:alg_spot"_s);
    m_page.back();
    m_page.open(u"caution:C-CO2"_s); // a new way cuts off the old one
    EXPECT_FALSE(m_page.forwardButton()->isEnabled());
    m_page.back();
    m_page.back();
    EXPECT_EQ(shown(), QString());
    EXPECT_FALSE(m_page.backButton()->isEnabled());
}

TEST_F(GuidePageTest, TheKeyboardGoesFromSearchToListToLink)
{
    m_page.begin();
    QTest::keyClicks(m_page.field(), u"staghorn"_s);
    EXPECT_EQ(shown(), QString()) << "typing must not move the article";
    QTest::keyClick(m_page.field(), Qt::Key_Down);
    EXPECT_EQ(shown(), u"condition:alg_staghorn"_s);
    m_page.pane()->setFocus();
    QTest::keyClick(m_page.pane(), Qt::Key_Tab); // the first link of the article
    QTest::keyClick(m_page.pane(), Qt::Key_Return);
    EXPECT_NE(shown(), u"condition:alg_staghorn"_s);
}

TEST_F(GuidePageTest, EscapeEmptiesTheSearchThenLeaves)
{
    QSignalSpy leave(&m_page, &GuidePage::leaveWanted);
    m_page.begin();
    QTest::keyClicks(m_page.field(), u"melt"_s);
    QTest::keyClick(m_page.field(), Qt::Key_Escape);
    EXPECT_TRUE(m_page.field()->text().isEmpty());
    EXPECT_EQ(leave.count(), 0);
    QTest::keyClick(m_page.field(), Qt::Key_Escape);
    EXPECT_EQ(leave.count(), 1);
}

TEST_F(GuidePageTest, TheKeepersNoteIsKeptAndUndone)
{
    m_page.open(u"condition:alg_dust"_s);
    m_page.note()->field()->setPlainText(u"Fades here after three weeks."_s);
    m_page.open(u"condition:alg_spot"_s);
    EXPECT_TRUE(m_page.note()->field()->toPlainText().isEmpty());
    EXPECT_EQ(m_keeper.row().settings.value(noteSetting(u"condition:alg_dust"_s)), u"Fades here after three weeks."_s);
    m_page.back();
    EXPECT_EQ(m_page.note()->field()->toPlainText(), u"Fades here after three weeks."_s);
    ASSERT_TRUE(m_keeper.undo());
    EXPECT_TRUE(m_page.note()->field()->toPlainText().isEmpty());
}

TEST_F(GuidePageTest, EverythingHasAName)
{
    for (QWidget* widget : m_page.findChildren<QWidget*>()) {
        if (widget->isVisible() && (widget->focusPolicy() & Qt::TabFocus) != 0 && !widget->focusProxy()) {
            QAccessibleInterface* node = QAccessible::queryAccessibleInterface(widget);
            ASSERT_NE(node, nullptr);
            EXPECT_FALSE(node->text(QAccessible::Name).isEmpty()) << widget->metaObject()->className();
        }
    }
}

TEST_F(GuidePageTest, NothingClipsAtTwiceTheSize)
{
    m_theme.setTextScale(2.0);
    m_page.resize(930, 600);
    m_page.open(u"species:A002"_s);
    QTest::qWait(1);
    EXPECT_EQ(m_page.width(), 930) << "the page must not ask for more than the smallest window has";
    EXPECT_GT(m_page.pane()->viewport()->width(), 300);
    EXPECT_GE(m_page.field()->height(), m_page.field()->sizeHint().height());
}

} // namespace littoral::ui::test
