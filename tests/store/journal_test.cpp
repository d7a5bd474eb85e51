// SPDX-License-Identifier: GPL-3.0-or-later
#include "temp_store.h"

using namespace littoral;
using namespace littoral::testing;
using namespace Qt::StringLiterals;
using namespace littoral::record;
using store::Edit;
using store::Record;
using store::RecordId;

namespace {

std::vector<RecordId> idsOf(const Everything& ids)
{
    return {ids.tank,         ids.layout, ids.source, ids.kit,  ids.reading,  ids.entry,   ids.photo,   ids.supply,
            ids.taskTemplate, ids.task,   ids.target, ids.plan, ids.forecast, ids.regimen, ids.osmosis, ids.journey};
}

/// Undo gives the first state, redo the second, also when the store is closed in between.
void expectUndoAndRedo(TempStore& temp, const QString& before, const QString& label)
{
    const QString after = dump(temp.path());
    ASSERT_NE(after, before);
    temp.reopen();
    EXPECT_EQ(temp->journal().undoLabel, label);
    EXPECT_EQ(*temp->undo(), label);
    EXPECT_EQ(dump(temp.path()), before);
    temp.reopen();
    EXPECT_EQ(temp->journal().redoLabel, label);
    EXPECT_EQ(*temp->redo(), label);
    EXPECT_EQ(dump(temp.path()), after);
}

} // namespace

TEST(Journal, NothingToUndoInAFreshStore)
{
    TempStore temp;
    EXPECT_FALSE(temp->journal().undoLabel);
    EXPECT_FALSE(temp->journal().redoLabel);
    EXPECT_TRUE(complete(temp->undo().error(), Fault::NotFound));
    EXPECT_TRUE(complete(temp->redo().error(), Fault::NotFound));
}

TEST(Journal, AddingEverythingIsUndoneAndRedoneAsOne)
{
    TempStore temp;
    const QString before = dump(temp.path());
    static_cast<void>(fill(*temp));
    expectUndoAndRedo(temp, before, u"one of everything"_s);
}

/// Removing each kind of record, with what hangs on it, and taking it back.
class JournalOfKind : public ::testing::TestWithParam<std::size_t>
{
};

TEST_P(JournalOfKind, RemovalIsUndoneAndRedone)
{
    TempStore temp;
    const Everything ids = fill(*temp);
    const QString before = dump(temp.path());
    Edit edit(u"remove"_s);
    edit.remove(idsOf(ids)[GetParam()]);
    ASSERT_TRUE(succeeded(temp->apply(edit)));
    expectUndoAndRedo(temp, before, u"remove"_s);
    const auto report = temp->verify();
    ASSERT_TRUE(succeeded(report));
    EXPECT_TRUE(report->problems.empty());
}

INSTANTIATE_TEST_SUITE_P(EveryKind, JournalOfKind, ::testing::Range(std::size_t{0}, std::variant_size_v<Record>));

TEST(Journal, ChangeOfEachKindIsUndoneAndRedone)
{
    TempStore temp;
    const Everything ids = fill(*temp);
    auto row = *temp->load();
    const LayoutRecord& layout = row.layouts.at(ids.layout);
    std::vector<Record> changed;
    const auto add = [&](auto record, auto change) {
        change(record);
        changed.emplace_back(std::move(record));
    };
    add(*row.tank(ids.tank), [](Tank& it) { it.name = u"Renamed"_s; });
    add(layout.layout, [](Layout& it) { it.ended.reset(); });
    add(*row.source(ids.source), [](SourceWater& it) { it.ph.reset(); });
    add(*row.kit(ids.kit), [](TestKit& it) { it.steps = {0.0, 0.1 + 0.2}; });
    add(layout.readings.front(), [](Reading& it) { it.note.clear(); });
    add(layout.entries.front(), [](Entry& it) { it.fraction = 1.0 / 3.0; });
    add(temp->photos(ids.layout)->front(), [](Photo& it) { it.note = u"side"_s; });
    add(row.supplies.front(), [](Supply& it) { it.amount = 0.0; });
    add(row.journeys.front(), [](Journey& it) { it.returns = QDate(2027, 1, 5); });
    add(row.templates.front(), [](TaskTemplate& it) { it.definition.clear(); });
    add(layout.tasks.front(), [](Task& it) { it.movedTo.reset(); });
    add(row.targets.front(), [](Target& it) { it.low = -0.0; });
    add(row.plans.front(), [](Plan& it) { it.adopted.reset(); });
    add(temp->issuedForecasts(ids.layout)->front(), [](IssuedForecast& it) { it.model = u"2"_s; });
    add(layout.regimens.front(), [](DoseRegimen& it) { it.until = QDate(); });
    ASSERT_EQ(changed.size(), std::variant_size_v<Record>);
    for (const Record& record : changed) {
        const QString before = dump(temp.path());
        Edit edit(u"change"_s);
        std::visit([&](const auto& it) { edit.put(it); }, record);
        ASSERT_TRUE(succeeded(temp->apply(edit)));
        expectUndoAndRedo(temp, before, u"change"_s);
    }
    EXPECT_EQ(temp->photoBytes(ids.photo)->size(), 16) << "a note's change keeps the picture";
}

TEST(Journal, SettingsAreUndoneAndRedone)
{
    TempStore temp;
    for (const QString& value : {u"de"_s, u"en"_s, u""_s}) {
        const QString before = dump(temp.path());
        Edit edit(u"language"_s);
        edit.set(u"language"_s, value);
        ASSERT_TRUE(succeeded(temp->apply(edit)));
        expectUndoAndRedo(temp, before, u"language"_s);
    }
    EXPECT_FALSE(temp->load()->settings.contains(u"language"_s));
}

TEST(Journal, TankTakesEverythingWithItAndOthersForgetIt)
{
    TempStore temp;
    const Everything ids = fill(*temp);
    Edit edit(u"remove"_s);
    edit.remove(ids.tank);
    ASSERT_TRUE(succeeded(temp->apply(edit)));
    const auto row = temp->load();
    EXPECT_EQ(row->tanks.size(), 1U);
    EXPECT_EQ(row->layouts.size(), 1U);
    EXPECT_TRUE(row->targets.empty());
    EXPECT_TRUE(row->plans.empty());
    EXPECT_TRUE(temp->photos(ids.layout)->empty());
    EXPECT_TRUE(temp->issuedForecasts(ids.layout)->empty());
    const Entry& transfer = row->layouts.at(ids.otherLayout).entries.front();
    EXPECT_EQ(transfer.id, ids.transfer);
    EXPECT_FALSE(transfer.otherTank);
    EXPECT_EQ(row->kits.size(), 1U) << "kits, sources and supplies belong to the row, not to a tank";
    EXPECT_EQ(row->sources.size(), 3U);
    EXPECT_EQ(row->supplies.size(), 1U);
}

TEST(Journal, NewChangeEndsWhatCouldBeRedone)
{
    TempStore temp;
    for (const QString& name : {u"A"_s, u"B"_s}) {
        Edit edit(name);
        edit.put(tankNamed(name));
        ASSERT_TRUE(succeeded(temp->apply(edit)));
    }
    ASSERT_TRUE(succeeded(temp->undo()));
    EXPECT_EQ(temp->journal().redoLabel, u"B"_s);
    Edit edit(u"C"_s);
    edit.put(tankNamed(u"C"_s));
    ASSERT_TRUE(succeeded(temp->apply(edit)));
    EXPECT_FALSE(temp->journal().redoLabel);
    EXPECT_TRUE(complete(temp->redo().error(), Fault::NotFound));
    EXPECT_EQ(*temp->undo(), u"C"_s);
    EXPECT_EQ(*temp->undo(), u"A"_s);
    EXPECT_TRUE(temp->load()->tanks.empty());
}

TEST(Journal, ChangeWithoutEffectLeavesNoTrace)
{
    TempStore temp;
    const Everything ids = fill(*temp);
    ASSERT_TRUE(succeeded(temp->undo()));
    ASSERT_TRUE(succeeded(temp->redo()));
    Edit edit(u"same again"_s);
    edit.put(*temp->load()->tank(ids.tank));
    edit.put(temp->load()->layouts.at(ids.layout).readings.front());
    edit.set(u"language"_s, u"en"_s);
    ASSERT_TRUE(succeeded(temp->apply(edit)));
    ASSERT_TRUE(succeeded(temp->apply(Edit(u"nothing"_s))));
    EXPECT_EQ(temp->journal().undoLabel, u"one of everything"_s);
}

TEST(Journal, RowChangedPastTheJournalIsAConflictAndNothingMoves)
{
    TempStore temp;
    const Everything ids = fill(*temp);
    Edit edit(u"rename"_s);
    Tank tank = *temp->load()->tank(ids.tank);
    tank.name = u"Renamed"_s;
    Tank other = *temp->load()->tank(ids.otherTank);
    other.note = u"moved"_s;
    edit.put(tank);
    edit.put(other);
    ASSERT_TRUE(succeeded(temp->apply(edit)));
    tamper(temp.path(), {u"UPDATE tank SET note = 'by hand' WHERE id = %1"_s.arg(ids.tank.value)});
    const QString before = dump(temp.path());
    const auto undone = temp->undo();
    ASSERT_FALSE(undone);
    EXPECT_TRUE(complete(undone.error(), Fault::Conflict));
    EXPECT_EQ(dump(temp.path()), before);
    EXPECT_EQ(temp->journal().undoLabel, u"rename"_s);
}

TEST(Journal, KeepsItsBound)
{
    TempStore temp;
    temp.close();
    // 5,000 is how far undo reaches: a store with more is filled past the program, then one change is made.
    tamper(temp.path(), {u"WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 5100) "
                         "INSERT INTO journal SELECT i, 0, 0, 'old', 'done', 10 FROM n"_s,
                         u"INSERT INTO journal_row SELECT id, 1, 'tank', id, NULL, '{}' FROM journal"_s});
    temp.reopen();
    Edit edit(u"new"_s);
    edit.put(tankNamed(u"A"_s));
    ASSERT_TRUE(succeeded(temp->apply(edit)));
    EXPECT_EQ(temp->verify()->journal, 5000);
    temp.close();
    EXPECT_EQ(ask(temp.path(), u"SELECT count(*) FROM journal_row"_s).toInt(), 5000);
    EXPECT_EQ(ask(temp.path(), u"SELECT label FROM journal ORDER BY id DESC LIMIT 1"_s).toString(), u"new"_s);
}
