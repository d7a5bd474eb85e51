// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/reminder.h"

#include "tests/ui/frame_fixture.h"

#include <QSignalSpy>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;

namespace {

class FakeNotifier final : public Notifier
{
public:
    bool show(const QString& title, const QString& text) override
    {
        shown << title + u": "_s + text;
        return takes;
    }
    void setOn(bool value) override { on = value; }

    QStringList shown;
    bool on = false;
    bool takes = true;
};

class ReminderTest : public FrameTest
{
protected:
    ReminderTest()
        : m_reminder(m_keeper, m_session, m_notifier)
    {
        m_session.setReminders(false);
        m_session.setQuietHours(21, 8);
    }
    void at(const QString& iso)
    {
        m_clock.set(record::Moment::fromIso(iso));
        m_reminder.check();
    }

    Session m_session;
    FakeNotifier m_notifier;
    Reminder m_reminder;
};

} // namespace

TEST_F(ReminderTest, IsOffUntilItIsSwitchedOn)
{
    addTank(u"Slate Ford"_s, 40);
    EXPECT_FALSE(m_reminder.isOn());
    at(u"2026-11-25T12:00:00Z"_s);
    EXPECT_TRUE(m_notifier.shown.isEmpty());
    EXPECT_FALSE(m_notifier.on);
    m_reminder.setOn(true);
    EXPECT_TRUE(m_notifier.on);
    ASSERT_EQ(m_notifier.shown.size(), 1);
    EXPECT_TRUE(m_notifier.shown.front().contains(u"Slate Ford"_s)) << m_notifier.shown.front().toStdString();
}

TEST_F(ReminderTest, TellsOfEachTankOnceADayAndNeverInTheQuietHours)
{
    addTank(u"Slate Ford"_s, 40);
    m_clock.set(record::Moment::fromIso(u"2026-11-25T07:59:00Z"_s));
    m_reminder.setOn(true);
    EXPECT_TRUE(m_notifier.shown.isEmpty()) << "quiet until eight";
    at(u"2026-11-25T08:00:00Z"_s);
    EXPECT_EQ(m_notifier.shown.size(), 1);
    at(u"2026-11-25T09:00:00Z"_s);
    at(u"2026-11-25T20:59:00Z"_s);
    EXPECT_EQ(m_notifier.shown.size(), 1) << "once a day";
    addTank(u"Fen Corner"_s, 40);
    at(u"2026-11-25T20:59:00Z"_s);
    ASSERT_EQ(m_notifier.shown.size(), 2) << "of another tank";
    EXPECT_FALSE(m_notifier.shown.back().contains(u"Slate Ford"_s));
    at(u"2026-11-25T22:00:00Z"_s);
    at(u"2026-11-26T03:00:00Z"_s);
    EXPECT_EQ(m_notifier.shown.size(), 2);
    at(u"2026-11-26T08:00:00Z"_s);
    ASSERT_EQ(m_notifier.shown.size(), 3);
    EXPECT_TRUE(m_notifier.shown.back().contains(u"Slate Ford"_s) && m_notifier.shown.back().contains(u"Fen Corner"_s))
        << "both in one message";
    m_session.setQuietHours(0, 0);
    at(u"2026-11-27T03:00:00Z"_s);
    EXPECT_EQ(m_notifier.shown.size(), 4) << "no quiet hours";
}

TEST_F(ReminderTest, WhatWasToldIsRememberedAcrossStarts)
{
    addTank(u"Slate Ford"_s, 40);
    m_clock.set(record::Moment::fromIso(u"2026-11-25T12:00:00Z"_s));
    m_reminder.setOn(true);
    Reminder next(m_keeper, m_session, m_notifier);
    next.check();
    EXPECT_EQ(m_notifier.shown.size(), 1);
    EXPECT_TRUE(next.isOn());
}

TEST_F(ReminderTest, WithoutAPlaceOnTheDesktopTheStatusBarSaysIt)
{
    addTank(u"Slate Ford"_s, 40);
    m_notifier.takes = false;
    QSignalSpy told(&m_reminder, &Reminder::told);
    m_clock.set(record::Moment::fromIso(u"2026-11-25T12:00:00Z"_s));
    m_reminder.setOn(true);
    ASSERT_EQ(told.count(), 1);
    EXPECT_TRUE(told.front().front().toString().contains(u"Slate Ford"_s));
}

TEST_F(ReminderTest, ATankWithNothingOverdueIsNotNamed)
{
    addTank(u"New"_s, 0);
    EXPECT_TRUE(overdueTanks(m_keeper.row(), m_clock.now()).empty());
    addTank(u"Slate Ford"_s, 40);
    const auto found = overdueTanks(m_keeper.row(), m_clock.now());
    ASSERT_EQ(found.size(), 1u);
    EXPECT_GT(found.front().count, 0);
    EXPECT_FALSE(found.front().first.isEmpty());
}

} // namespace littoral::ui::test
