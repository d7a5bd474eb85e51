// SPDX-License-Identifier: GPL-3.0-or-later
#include "temp_store.h"

#include <random>

using namespace littoral;
using namespace littoral::testing;
using namespace Qt::StringLiterals;
using namespace littoral::record;
using store::Edit;

namespace {

/// Makes edits at random on whatever the store holds at the time.
class RandomKeeper final
{
public:
    RandomKeeper(store::Store& store, unsigned seed)
        : m_store(store)
        , m_random(seed)
    {
    }

    void step()
    {
        m_row = *m_store.load();
        Edit edit(u"edit %1"_s.arg(++m_count));
        for (int i = 0; i <= pick(3); ++i) {
            one(edit);
        }
        // Some are refused (a name taken, a record removed twice): those must leave no trace either.
        m_applied += m_store.apply(edit) ? 1 : 0;
    }

    [[nodiscard]] int applied() const { return m_applied; }

private:
    int pick(int most) { return std::uniform_int_distribution<int>(0, most)(m_random); }

    template <typename C> const auto& any(const C& all)
    {
        return all[static_cast<std::size_t>(pick(static_cast<int>(all.size()) - 1))];
    }

    const LayoutRecord* anyLayout()
    {
        if (m_row.layouts.empty()) {
            return nullptr;
        }
        return &std::next(m_row.layouts.begin(), pick(static_cast<int>(m_row.layouts.size()) - 1))->second;
    }

    void one(Edit& edit)
    {
        const LayoutRecord* layout = anyLayout();
        switch (pick(9)) {
        case 0:
            addTank(edit);
            break;
        case 1:
            if (!m_row.tanks.empty()) {
                Tank tank = any(m_row.tanks);
                tank.name = u"tank %1"_s.arg(pick(6));
                tank.length_cm = pick(1000) / 7.0;
                edit.put(tank);
            }
            break;
        case 2:
            if (!m_row.tanks.empty() && pick(2) == 0) {
                edit.remove(any(m_row.tanks).id);
            }
            break;
        case 3:
            edit.set(u"key %1"_s.arg(pick(2)), pick(2) == 0 ? QString() : QString::number(pick(99)));
            break;
        case 4:
            addSource(edit);
            break;
        case 5:
            if (layout != nullptr && pick(3) == 0) {
                edit.remove(layout->layout.id);
            }
            break;
        default:
            if (layout != nullptr) {
                inLayout(edit, *layout);
            }
        }
    }

    void addTank(Edit& edit)
    {
        const TankId tank = edit.put(tankNamed(u"tank %1"_s.arg(pick(6))));
        Layout layout = layoutIn(tank);
        layout.measuredNet_L = pick(500) / 3.0;
        if (!m_row.sources.empty()) {
            layout.source = any(m_row.sources).id;
        }
        edit.put(layout);
    }

    void addSource(Edit& edit)
    {
        SourceWater source;
        source.name = u"water %1"_s.arg(m_count);
        if (m_row.sources.size() > 1 && pick(1) == 0) {
            // An older one turned into a blend may come to hold itself: that has to be refused.
            source = any(m_row.sources);
            source.kind = SourceKind::Blend;
            source.firstPart = any(m_row.sources).id;
            source.secondPart = any(m_row.sources).id;
            source.firstShare = pick(10) / 10.0;
        }
        if (!m_row.sources.empty() && pick(1) == 0) {
            edit.remove(any(m_row.sources).id);
        }
        edit.put(source);
    }

    void inLayout(Edit& edit, const LayoutRecord& record)
    {
        const Layout& layout = record.layout;
        const Moment at = layout.flooded.plusDays(pick(400) / 9.0);
        Reading reading = readingOf(layout.tank, layout.id, QString::number(pick(80) / 100.0), at);
        if (!record.readings.empty() && pick(2) == 0) {
            reading.id = any(record.readings).id;
        }
        edit.put(reading);
        Entry entry;
        entry.tank = layout.tank;
        entry.layout = layout.id;
        entry.at = at;
        entry.kind = static_cast<EntryKind>(pick(11));
        entry.fraction = pick(100) / 100.0;
        entry.source = layout.source;
        if (!m_row.tanks.empty()) {
            entry.otherTank = any(m_row.tanks).id;
        }
        const EntryId closedBy = edit.put(entry);
        Task task;
        task.tank = layout.tank;
        task.layout = layout.id;
        task.due = at.localDate();
        task.closedBy = closedBy;
        edit.put(task);
        if (!record.entries.empty() && pick(2) == 0) {
            edit.remove(any(record.entries).id);
        }
    }

    store::Store& m_store;
    std::mt19937 m_random;
    Row m_row;
    int m_count = 0;
    int m_applied = 0;
};

class Journalled : public ::testing::TestWithParam<unsigned>
{
};

} // namespace

TEST_P(Journalled, UndoAllIsTheBeginningRedoAllTheEnd)
{
    TempStore temp;
    const QString beginning = dump(temp.path());
    RandomKeeper keeper(*temp, GetParam());
    std::vector<QString> states{beginning};
    for (int i = 0; i < 60; ++i) {
        keeper.step();
        const QString now = dump(temp.path());
        if (now != states.back()) {
            states.push_back(now);
        }
    }
    EXPECT_GT(keeper.applied(), 30);
    ASSERT_EQ(temp->verify()->problems.size(), 0U);
    for (std::size_t i = states.size() - 1; i > 0; --i) {
        ASSERT_TRUE(succeeded(temp->undo()));
        ASSERT_EQ(dump(temp.path()), states[i - 1]) << "undone to state " << i - 1;
    }
    EXPECT_FALSE(temp->journal().undoLabel);
    temp.reopen();
    for (std::size_t i = 1; i < states.size(); ++i) {
        ASSERT_TRUE(succeeded(temp->redo()));
        ASSERT_EQ(dump(temp.path()), states[i]) << "redone to state " << i;
    }
    EXPECT_FALSE(temp->journal().redoLabel);
}

INSTANTIATE_TEST_SUITE_P(Seeds, Journalled, ::testing::Values(1U, 2U, 3U, 2026U));
