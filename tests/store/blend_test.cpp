// SPDX-License-Identifier: GPL-3.0-or-later
#include "temp_store.h"

using namespace littoral;
using namespace littoral::testing;
using namespace Qt::StringLiterals;
using namespace littoral::record;
using store::Edit;

namespace {

SourceWater water(const QString& name, SourceKind kind = SourceKind::Tap)
{
    SourceWater made;
    made.name = name;
    made.kind = kind;
    return made;
}

SourceWater blend(const QString& name, SourceWaterId first, SourceWaterId second)
{
    SourceWater made = water(name, SourceKind::Blend);
    made.firstPart = first;
    made.secondPart = second;
    made.firstShare = 0.5;
    return made;
}

} // namespace

TEST(Blends, OneThatLeadsBackToItselfIsRefusedWhole)
{
    TempStore temp;
    Edit sound(u"waters"_s);
    const SourceWaterId tap = sound.put(water(u"tap"_s));
    const SourceWaterId rain = sound.put(water(u"rain"_s, SourceKind::Rain));
    SourceWater inner = blend(u"inner"_s, tap, rain);
    inner.id = sound.put(inner);
    SourceWater outer = blend(u"outer"_s, inner.id, tap);
    outer.id = sound.put(outer);
    ASSERT_TRUE(succeeded(temp->apply(sound)));
    const QString before = dump(temp.path());

    inner.firstPart = outer.id;
    Edit round(u"round"_s);
    round.put(water(u"another"_s));
    round.put(inner);
    const auto refused = temp->apply(round);
    ASSERT_FALSE(refused);
    EXPECT_TRUE(complete(refused.error(), Fault::BadInput));
    EXPECT_NE(refused.error().what.find("itself"), std::string::npos) << refused.error().sentence();
    EXPECT_EQ(dump(temp.path()), before);
}

TEST(Blends, APartThatIsRemovedIsForgottenAndTheBlendSaysSo)
{
    TempStore temp;
    Edit sound(u"waters"_s);
    const SourceWaterId tap = sound.put(water(u"tap"_s));
    const SourceWaterId rain = sound.put(water(u"rain"_s, SourceKind::Rain));
    const SourceWaterId mixed = sound.put(blend(u"mixed"_s, tap, rain));
    ASSERT_TRUE(succeeded(temp->apply(sound)));
    Edit removal(u"remove rain"_s);
    removal.remove(rain);
    ASSERT_TRUE(succeeded(temp->apply(removal)));
    EXPECT_FALSE(temp->load()->source(mixed)->secondPart);
    EXPECT_EQ(temp->load()->source(mixed)->firstPart, tap);
    ASSERT_TRUE(succeeded(temp->undo()));
    EXPECT_EQ(temp->load()->source(mixed)->secondPart, rain);
}

TEST(Blends, VerifyFindsOneThatCameInByAnotherDoor)
{
    TempStore temp;
    Edit sound(u"waters"_s);
    const SourceWaterId tap = sound.put(water(u"tap"_s));
    const SourceWaterId rain = sound.put(water(u"rain"_s, SourceKind::Rain));
    const SourceWaterId mixed = sound.put(blend(u"mixed"_s, tap, rain));
    ASSERT_TRUE(succeeded(temp->apply(sound)));
    EXPECT_TRUE(temp->verify()->problems.empty());
    temp.close();
    tamper(temp.path(), {u"UPDATE source_water SET first_part = %1 WHERE id = %1"_s.arg(mixed.value)});
    temp.reopen();
    const auto report = temp->verify();
    ASSERT_EQ(report->problems.size(), 1U);
    EXPECT_TRUE(report->problems.front().contains(u"mixed"_s));
}
