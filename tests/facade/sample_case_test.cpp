// SPDX-License-Identifier: GPL-3.0-or-later
// The sample row's bad tank: what the scenario did to it (other source water, a large change, more light before the
// crypts melted) is what its case file names.
#include "core/facade/case_file.h"
#include "core/facade/sample_row.h"
#include "tests/support/temp_store.h"

#include <algorithm>
#include <gtest/gtest.h>

using namespace littoral;
using namespace Qt::StringLiterals;

TEST(SampleCase, TheBadTankNamesItsPlantedCauseFirstAndListsThePlantedChanges)
{
    test::TempKeeper t;
    ASSERT_TRUE(facade::makeSampleRow(t.keeper, t.clock.now()));
    const record::Row& row = t.keeper.row();
    const record::Tank* tank = row.tankNamed(u"Fen Corner"_s);
    ASSERT_NE(tank, nullptr);
    const auto questions = facade::caseQuestions(row, tank->id, t.clock.now());
    ASSERT_FALSE(questions.empty());
    EXPECT_EQ(questions.front().subject, u"melt"_s);
    facade::CaseRequest request;
    request.question = questions.front();
    const facade::CaseFile file = facade::caseFile(row, request, t.clock.now());
    ASSERT_FALSE(file.findings.empty());
    EXPECT_EQ(file.findings.front().id, u"pl_crypt_melt"_s) << "crypts in new water";
    EXPECT_FALSE(file.findings.front().source.isEmpty());
    const auto lists = [&](const QString& word) {
        return std::ranges::any_of(file.changes, [&](const facade::CaseChange& change) {
            return change.name.contains(word, Qt::CaseInsensitive) ||
                   change.sentence.contains(word, Qt::CaseInsensitive);
        });
    };
    EXPECT_TRUE(lists(u"source water"_s));
    EXPECT_TRUE(lists(u"hardness"_s)) << "the tap water is harder";
    EXPECT_EQ(file.changes.front().name.contains(u"source"_s, Qt::CaseInsensitive), true)
        << "what was done comes before what was read, the largest first";
}
