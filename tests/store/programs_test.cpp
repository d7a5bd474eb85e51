// SPDX-License-Identifier: GPL-3.0-or-later
// Several programs on one store, and one that is killed while it writes.
#include "core/store/connection.h"
#include "core/store/transaction.h"
#include "temp_store.h"

#include <algorithm>
#include <csignal>
#include <sys/wait.h>
#include <unistd.h>

using namespace littoral;
using namespace littoral::testing;
using namespace Qt::StringLiterals;
using namespace littoral::record;
using store::Edit;
using store::Store;

namespace {

struct Home
{
    TankId tank;
    LayoutId layout;
};

Home homeIn(Store& store)
{
    Home home;
    Edit edit(u"home"_s);
    home.tank = edit.put(tankNamed(u"Slate Ford"_s));
    home.layout = edit.put(layoutIn(home.tank));
    EXPECT_TRUE(succeeded(store.apply(edit)));
    return home;
}

/// In the child: applies edits of three readings for ever, reporting the first id of each once apply() has returned.
[[noreturn]] void writeForEver(const QString& path, const Home& home, int pipe)
{
    auto opened = Store::open(path);
    while (opened) {
        Edit edit(u"three"_s);
        const Moment at = moment("2026-11-25T07:30:00+01:00");
        const ReadingId id = edit.put(readingOf(home.tank, home.layout, u"0.1"_s, at));
        edit.put(readingOf(home.tank, home.layout, u"0.2"_s, at));
        edit.put(readingOf(home.tank, home.layout, u"0.3"_s, at));
        if (!(*opened)->apply(edit) || ::write(pipe, &id.value, sizeof id.value) != sizeof id.value) {
            break;
        }
    }
    ::_exit(1);
}

/// Ids the child reported before it was killed, having been let live for `most` reports.
std::vector<qint64> killedAfter(const QString& path, const Home& home, int most)
{
    int ends[2] = {-1, -1};
    EXPECT_EQ(::pipe(ends), 0);
    const pid_t child = ::fork();
    if (child == 0) {
        ::close(ends[0]);
        writeForEver(path, home, ends[1]);
    }
    ::close(ends[1]);
    std::vector<qint64> ids;
    qint64 id = 0;
    while (static_cast<int>(ids.size()) < most && ::read(ends[0], &id, sizeof id) == sizeof id) {
        ids.push_back(id);
    }
    ::kill(child, SIGKILL);
    while (::read(ends[0], &id, sizeof id) == sizeof id) {
        ids.push_back(id);
    }
    ::close(ends[0]);
    int status = 0;
    EXPECT_EQ(::waitpid(child, &status, 0), child);
    EXPECT_TRUE(WIFSIGNALED(status)) << "the writer gave up before it was killed";
    return ids;
}

} // namespace

TEST(Programs, WhatWasAppliedSurvivesAKillInMidWrite)
{
    TempStore temp;
    const Home home = homeIn(*temp);
    temp.close();
    std::vector<qint64> reported;
    for (const int most : {1, 7, 23, 60, 110}) {
        const std::vector<qint64> ids = killedAfter(temp.path(), home, most);
        ASSERT_GE(static_cast<int>(ids.size()), most);
        reported.insert(reported.end(), ids.begin(), ids.end());
        temp.reopen();
        const auto row = temp->load();
        ASSERT_TRUE(succeeded(row));
        const auto& readings = row->layouts.at(home.layout).readings;
        EXPECT_EQ(readings.size() % 3, 0U) << "an edit is whole or not there";
        for (const qint64 id : reported) {
            ASSERT_TRUE(std::ranges::any_of(readings, [&](const Reading& it) { return it.id.value == id; })) << id;
        }
        EXPECT_EQ(temp->verify()->problems.size(), 0U);
        ASSERT_TRUE(succeeded(temp->undo())) << "the journal is whole too";
        ASSERT_TRUE(succeeded(temp->redo()));
        temp.close();
    }
}

TEST(Programs, EachSeesWhatTheOtherWrote)
{
    TempStore temp;
    auto opened = Store::open(temp.path());
    ASSERT_TRUE(succeeded(opened));
    const auto& other = *opened;
    EXPECT_FALSE(temp->changedOutside());
    const Home home = homeIn(*other);
    EXPECT_TRUE(temp->changedOutside());
    EXPECT_FALSE(temp->changedOutside()) << "once for each time";
    EXPECT_FALSE(other->changedOutside()) << "one's own changes do not count";
    EXPECT_NE(temp->load()->tank(home.tank), nullptr);
    EXPECT_EQ(*temp->undo(), u"home"_s) << "the journal is the store's, not a program's";
    EXPECT_TRUE(other->changedOutside());
    EXPECT_TRUE(other->load()->tanks.empty());
}

TEST(Programs, ReadersGoOnWhileAnotherWrites)
{
    TempStore temp;
    const Home home = homeIn(*temp);
    auto writer = store::Connection::open(temp.path(), store::Mode::ReadWrite);
    ASSERT_TRUE(succeeded(writer));
    auto lock = store::Transaction::begin(**writer, store::Transaction::Kind::Immediate);
    ASSERT_TRUE(succeeded(lock));
    ASSERT_TRUE(succeeded((*writer)->run(u"UPDATE tank SET note = 'half'"_s)));
    EXPECT_TRUE(temp->load()->tank(home.tank)->note.isEmpty());
}

TEST(Programs, WriterThatWaitsTooLongIsToldWhy)
{
    TempStore temp;
    auto holder = store::Connection::open(temp.path(), store::Mode::ReadWrite);
    ASSERT_TRUE(succeeded(holder));
    auto lock = store::Transaction::begin(**holder, store::Transaction::Kind::Immediate);
    ASSERT_TRUE(succeeded(lock));
    // The same wait as the store's, only shorter.
    auto impatient = store::Connection::open(temp.path(), store::Mode::ReadWrite, 50);
    ASSERT_TRUE(succeeded(impatient));
    const auto refused = store::Transaction::begin(**impatient, store::Transaction::Kind::Immediate);
    ASSERT_FALSE(refused);
    EXPECT_TRUE(complete(refused.error(), Fault::Busy));
    Edit edit(u"x"_s);
    edit.put(tankNamed(u"X"_s));
    const auto applied = temp->apply(edit);
    ASSERT_FALSE(applied);
    EXPECT_TRUE(complete(applied.error(), Fault::Busy));
}

TEST(Programs, WriterWaitsForTheOther)
{
    TempStore temp;
    temp.close();
    int ends[2] = {-1, -1};
    ASSERT_EQ(::pipe(ends), 0);
    const pid_t child = ::fork();
    if (child == 0) {
        auto connection = store::Connection::open(temp.path(), store::Mode::ReadWrite);
        auto lock = store::Transaction::begin(**connection, store::Transaction::Kind::Immediate);
        const char ready = 'r';
        static_cast<void>(::write(ends[1], &ready, 1));
        ::usleep(300'000);
        ::_exit(lock->commit() ? 0 : 1);
    }
    char ready = 0;
    ASSERT_EQ(::read(ends[0], &ready, 1), 1);
    temp.reopen();
    Edit edit(u"x"_s);
    edit.put(tankNamed(u"X"_s));
    EXPECT_TRUE(succeeded(temp->apply(edit)));
    int status = 0;
    ::waitpid(child, &status, 0);
    EXPECT_EQ(WEXITSTATUS(status), 0);
    ::close(ends[0]);
    ::close(ends[1]);
}
