// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/doubts.h"

#include <gtest/gtest.h>

namespace littoral::facade {
namespace {

using namespace Qt::StringLiterals;

TEST(Doubts, CausesNameTheKitOrTheDay)
{
    ForecastCase inputs;
    inputs.flooded = record::Moment::fromIso(u"2026-11-01T10:00:00+00:00"_s);
    ASSERT_TRUE(inputs.flooded.isValid());
    inputs.request.tank.kits.resize(2);
    inputs.request.tank.kits[1].substance = forecast::Substance::Nitrite;
    inputs.kits.resize(2);
    inputs.kits[0].name = u"Ammonia drops"_s;
    const QStringList sentences = causeSentences(inputs,
                                                 {{forecast::Cause::DeadKit, 0, 0.0, 9.0},
                                                  {forecast::Cause::OtherUnitBasis, 1, 0.0, 5.0},
                                                  {forecast::Cause::UnloggedChange, -1, 9.5, 4.0}},
                                                 QDate(2026, 11, 25));
    ASSERT_EQ(sentences.size(), 3);
    EXPECT_TRUE(sentences[0].contains(u"Ammonia drops"_s)) << sentences[0].toStdString();
    EXPECT_TRUE(sentences[1].contains(u"itrite"_s)) << "a kit without a name goes by what it measures";
    EXPECT_TRUE(sentences[2].contains(u"10 Nov"_s)) << sentences[2].toStdString();
}

} // namespace
} // namespace littoral::facade
