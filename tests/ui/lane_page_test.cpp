// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/frame_fixture.h"
#include "ui/pages/lanes/lanes_page.h"
#include "ui/widgets/lanes/lane_view.h"
#include "ui/widgets/lanes/why_strip.h"

#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

#include <algorithm>

namespace littoral::ui {
namespace {

using namespace Qt::StringLiterals;

class LanePageTest : public test::FrameTest
{
protected:
    /// Two tanks that have run for weeks without an entry: there is overdue work in both.
    void SetUp() override
    {
        addKits();
        m_slate = addTank(u"Slate Ford"_s, 16);
        m_mill = addTank(u"Mill Race"_s, 200);
        read(m_slate, u"no2"_s, u"0.8"_s, 1);
        read(m_mill, u"no3"_s, u"20"_s, 1);
        m_page = std::make_unique<LanesPage>(m_keeper, m_forecasts, m_theme);
        m_page->resize(1392, 900);
        m_page->show();
        m_page->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(m_page.get()));
        view().setFocus();
        ASSERT_EQ(view().lanes().size(), 2u);
        ASSERT_NE(view().selectedChip(), nullptr);
    }
    LaneView& view() { return m_page->view(); }
    QLineEdit* strip() { return m_page->whyStrip().findChild<QLineEdit*>(); }
    std::size_t taskCount(record::TaskState state)
    {
        std::size_t count = 0;
        for (const auto& [id, layout] : m_keeper.row().layouts) {
            count += static_cast<std::size_t>(std::ranges::count(layout.tasks, state, &record::Task::state));
        }
        return count;
    }

    record::TankId m_slate, m_mill;
    std::unique_ptr<LanesPage> m_page;
};

TEST_F(LanePageTest, TheFootStripSaysWhatHasTheFocusAndWhy)
{
    const auto* chip = view().selectedChip();
    const QString text = m_page->whyStrip().text();
    EXPECT_TRUE(text.contains(view().selectedLane()->name));
    EXPECT_TRUE(text.contains(chip->title));
    EXPECT_TRUE(text.contains(chip->why));
}

TEST_F(LanePageTest, SpaceMarksTheWorkDone)
{
    const QString key = view().selectedChip()->item.templateKey;
    const quint64 before = m_keeper.revision();
    QSignalSpy told(m_page.get(), &LanesPage::told);
    QSignalSpy failed(m_page.get(), &LanesPage::failed);
    QTest::keyClick(&view(), Qt::Key_Space);
    EXPECT_EQ(failed.count(), 0);
    EXPECT_EQ(told.count(), 1);
    EXPECT_GT(m_keeper.revision(), before);
    EXPECT_TRUE(view().hasFocus());
    const auto undone = m_keeper.undo();
    ASSERT_TRUE(undone);
    EXPECT_TRUE(
        std::ranges::any_of(view().selectedLane()->chips, [&](const auto& c) { return c.item.templateKey == key; }));
}

TEST_F(LanePageTest, SnoozingAsksInTheStripWithTomorrowFilledIn)
{
    QTest::keyClick(&view(), Qt::Key_S);
    ASSERT_TRUE(m_page->whyStrip().isAsking());
    ASSERT_TRUE(strip()->hasFocus());
    EXPECT_EQ(strip()->text(), u"26 Nov 2026"_s);
    QTest::keyClick(strip(), Qt::Key_Return);
    EXPECT_FALSE(m_page->whyStrip().isAsking());
    EXPECT_TRUE(view().hasFocus());
    ASSERT_EQ(taskCount(record::TaskState::Open), 1u);
    for (const auto& [id, layout] : m_keeper.row().layouts) {
        for (const record::Task& task : layout.tasks) {
            EXPECT_TRUE(task.snoozed);
            EXPECT_EQ(task.movedTo, QDate(2026, 11, 26));
        }
    }
}

TEST_F(LanePageTest, ADayThatIsNoneOrPastIsNotTaken)
{
    QTest::keyClick(&view(), Qt::Key_S);
    for (const QString& wrong : {u"someday"_s, u"20 Nov 2026"_s}) {
        strip()->setText(wrong);
        QTest::keyClick(strip(), Qt::Key_Return);
        EXPECT_TRUE(m_page->whyStrip().isAsking()) << wrong.toStdString();
        EXPECT_EQ(strip()->text(), wrong);
    }
    EXPECT_EQ(taskCount(record::TaskState::Open), 0u);
}

TEST_F(LanePageTest, SkippingKeepsItsReasonAndEscapeKeepsTheTyping)
{
    QTest::keyClick(&view(), Qt::Key_K);
    ASSERT_TRUE(strip()->hasFocus());
    QTest::keyClick(strip(), Qt::Key_Return);
    EXPECT_TRUE(m_page->whyStrip().isAsking()) << "a reason is asked for";
    QTest::keyClicks(strip(), u"away that week"_s);
    QTest::keyClick(strip(), Qt::Key_Escape);
    EXPECT_FALSE(m_page->whyStrip().isAsking());
    EXPECT_TRUE(view().hasFocus());
    EXPECT_EQ(taskCount(record::TaskState::Skipped), 0u);
    QTest::keyClick(&view(), Qt::Key_K);
    EXPECT_EQ(strip()->text(), u"away that week"_s);
    QTest::keyClick(strip(), Qt::Key_Return);
    ASSERT_EQ(taskCount(record::TaskState::Skipped), 1u);
    for (const auto& [id, layout] : m_keeper.row().layouts) {
        for (const record::Task& task : layout.tasks) {
            EXPECT_EQ(task.reason, u"away that week"_s);
        }
    }
}

TEST_F(LanePageTest, TheFilterNarrowsTheLanesAndEscapeBringsThemBack)
{
    m_page->openFilter();
    auto* field = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_NE(field, nullptr);
    QTest::keyClicks(field, u"mill"_s);
    ASSERT_EQ(view().lanes().size(), 1u);
    EXPECT_EQ(view().lanes().front()->name, u"Mill Race"_s);
    QTest::keyClicks(field, u"x"_s);
    EXPECT_TRUE(view().lanes().empty());
    EXPECT_TRUE(m_page->whyStrip().text().contains(u"millx"_s));
    QTest::keyClick(field, Qt::Key_Escape);
    EXPECT_EQ(view().lanes().size(), 2u);
    EXPECT_TRUE(view().hasFocus());
}

TEST_F(LanePageTest, OnlyWhatIsShownHasALane)
{
    m_page->setShown({layoutOf(m_mill)});
    ASSERT_EQ(view().lanes().size(), 1u);
    EXPECT_EQ(view().lanes().front()->tank, m_mill);
    m_page->setShown({layoutOf(m_mill), layoutOf(m_slate)});
    EXPECT_EQ(view().lanes().back()->tank, m_slate);
}

TEST_F(LanePageTest, ModelsAreMadeAgainOnlyAfterAChange)
{
    const int before = m_page->feed().builds();
    m_page->refresh();
    m_page->refresh();
    EXPECT_EQ(m_page->feed().builds(), before);
    read(m_slate, u"no2"_s, u"0.4"_s, 0);
    EXPECT_EQ(m_page->feed().builds(), before + 2);
    m_clock.set(m_clock.now().plusDays(1));
    m_page->refresh();
    EXPECT_EQ(m_page->feed().builds(), before + 4);
}

TEST_F(LanePageTest, SelectingATankIsTold)
{
    QSignalSpy selected(m_page.get(), &LanesPage::selected);
    m_page->setSelected(m_mill);
    EXPECT_EQ(view().selectedLane()->tank, m_mill);
    ASSERT_EQ(selected.count(), 1);
    m_page->setSelected(m_mill);
    EXPECT_EQ(selected.count(), 1);
}

TEST_F(LanePageTest, NothingIsCutOffAtTwiceTheTextSize)
{
    m_theme.setTextScale(2.0);
    for (const QSize size : {QSize(1392, 900), QSize(960, 600)}) {
        m_page->resize(size);
        QCoreApplication::processEvents();
        const auto children = m_page->findChildren<QWidget*>();
        for (const QWidget* child : children) {
            if (child->isVisible() && child->parentWidget() != nullptr &&
                child->metaObject() != &QWidget::staticMetaObject && !child->inherits("QScrollBar")) {
                EXPECT_TRUE(child->parentWidget()->rect().contains(child->geometry()))
                    << child->metaObject()->className() << ' ' << child->accessibleName().toStdString();
            }
        }
    }
}

} // namespace
} // namespace littoral::ui
