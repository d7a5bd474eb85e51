// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/frame_fixture.h"
#include "ui/frame/main_window.h"
#include "ui/frame/panels.h"
#include "ui/pages/journey/journey_panel.h"
#include "ui/pages/lanes/lanes_page.h"

#include <QCheckBox>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

namespace littoral::ui {
namespace {

using namespace Qt::StringLiterals;

class JourneyPanelTest : public test::FrameTest
{
protected:
    void SetUp() override
    {
        addKits();
        m_slate = addTank(u"Slate Ford"_s, 200);
        addTank(u"Fern Hollow"_s, 12);
        m_panel = std::make_unique<JourneyPanel>(m_keeper, m_theme);
        m_panel->resize(420, 900);
        m_panel->show();
        m_panel->open();
    }

    QLineEdit* field(const QString& name) const
    {
        for (QLineEdit* edit : m_panel->findChildren<QLineEdit*>()) {
            if (edit->accessibleName() == name) {
                return edit;
            }
        }
        return nullptr;
    }
    QPushButton* button(const QString& text) const
    {
        for (QPushButton* found : m_panel->findChildren<QPushButton*>()) {
            if (found->text() == text) {
                return found;
            }
        }
        return nullptr;
    }
    void type(const QString& leaves, const QString& returns)
    {
        field(u"Day of leaving"_s)->setText(leaves);
        field(u"Day of return"_s)->setText(returns);
        field(u"Who helps"_s)->setText(u"Ida"_s);
        QTest::mouseClick(button(u"Save and split the work"_s), Qt::LeftButton);
    }

    record::TankId m_slate;
    std::unique_ptr<JourneyPanel> m_panel;
};

TEST_F(JourneyPanelTest, SavesTheDaysAndShowsTheSplit)
{
    QSignalSpy saved(m_panel.get(), &SidePanel::saved);
    type(u"2026-12-05"_s, u"2026-12-15"_s);
    EXPECT_EQ(m_panel->problem(), QString());
    ASSERT_EQ(m_keeper.row().journeys.size(), 1U);
    EXPECT_EQ(m_keeper.row().journeys.front().helper, u"Ida"_s);
    EXPECT_EQ(saved.count(), 1);
    EXPECT_FALSE(m_panel->hasDraft());
    int open = 0;
    for (Disclosure* part : m_panel->findChildren<Disclosure*>()) {
        open += part->isVisibleTo(m_panel.get()) && !part->details().isEmpty() ? 1 : 0;
    }
    EXPECT_GE(open, 4) << "to prepare, before, the helper, on return at least";
    ASSERT_TRUE(m_keeper.undo());
    EXPECT_TRUE(m_keeper.row().journeys.empty());
    EXPECT_EQ(field(u"Day of leaving"_s)->text(), QString()) << "the panel follows the record";
}

TEST_F(JourneyPanelTest, WrongDaysAreSaidAndNothingTypedIsLost)
{
    type(u"someday"_s, u"2026-12-15"_s);
    EXPECT_TRUE(m_panel->problem().contains(u"someday"_s));
    type(u"2026-12-15"_s, u"2026-12-05"_s);
    EXPECT_FALSE(m_panel->problem().isEmpty());
    EXPECT_TRUE(m_keeper.row().journeys.empty());
    EXPECT_EQ(field(u"Who helps"_s)->text(), u"Ida"_s);
    EXPECT_TRUE(m_panel->hasDraft());
}

TEST_F(JourneyPanelTest, WhatTheHelperDidIsTypedIn)
{
    type(u"2026-11-14"_s, u"2026-11-25"_s); // back today
    ASSERT_GT(m_panel->helperForm()->lineCount(), 0);
    const std::size_t before = m_keeper.row().recordCount();
    QPushButton* write = button(u"Write down what was done"_s);
    ASSERT_NE(write, nullptr);
    write->click();
    EXPECT_FALSE(m_panel->problem().isEmpty()) << "nothing is ticked";
    QLineEdit* value = nullptr;
    for (QLineEdit* edit : m_panel->helperForm()->findChildren<QLineEdit*>()) {
        if (edit->accessibleName().contains(u" as read: "_s)) {
            value = edit;
            break;
        }
    }
    ASSERT_NE(value, nullptr) << "the young tank's tests";
    QTest::keyClicks(value, u"0.5"_s);
    const int lines = m_panel->helperForm()->lineCount();
    write->click();
    EXPECT_EQ(m_panel->problem(), QString());
    EXPECT_GT(m_keeper.row().recordCount(), before);
    EXPECT_LT(m_panel->helperForm()->lineCount(), lines);
}

TEST_F(JourneyPanelTest, EveryFieldHasItsName)
{
    type(u"2026-11-14"_s, u"2026-11-25"_s);
    for (QLineEdit* edit : m_panel->findChildren<QLineEdit*>()) {
        EXPECT_FALSE(edit->accessibleName().isEmpty());
    }
    for (QCheckBox* box : m_panel->findChildren<QCheckBox*>()) {
        EXPECT_FALSE(box->accessibleName().isEmpty());
    }
}

TEST_F(JourneyPanelTest, LanesSayWhatTheRowAsksFor)
{
    LanesPage page(m_keeper, m_forecasts, m_theme);
    EXPECT_TRUE(page.loadLine().startsWith(u"Today "_s)) << page.loadLine().toStdString();
    const QString before = page.loadLine();
    record::Entry entry;
    entry.tank = m_slate;
    entry.kind = record::EntryKind::WaterChange;
    entry.fraction = 0.4;
    entry.at = m_clock.now();
    ASSERT_TRUE(m_keeper.enter(entry));
    EXPECT_NE(page.loadLine(), before);
}

} // namespace
} // namespace littoral::ui
