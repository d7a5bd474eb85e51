// SPDX-License-Identifier: GPL-3.0-or-later
// Stores kept from each schema version: every later program must open them and find the same records.
//
// A kept store is made once, by the program of its time, with LITTORAL_KEEP_STORE=<path> in the environment of this
// test (see KeptStore.Version1), and is never made again.
#include "temp_store.h"

#include <QFile>
#include <QFileInfo>

using namespace littoral;
using namespace littoral::testing;
using namespace Qt::StringLiterals;
using namespace littoral::record;
using store::Store;

namespace {

QString kept(const char* name)
{
    return QStringLiteral(LITTORAL_SOURCE_DIR) + u"/tests/data/stores/"_s + QString::fromLatin1(name);
}

void keepOneIfAsked()
{
    const QString path = qEnvironmentVariable("LITTORAL_KEEP_STORE");
    if (path.isEmpty()) {
        return;
    }
    auto made = Store::create(path);
    ASSERT_TRUE(succeeded(made));
    static_cast<void>(fill(**made));
    store::Edit edit(u"second tank's note"_s);
    Tank tank = *(*made)->load()->tankNamed(u"Fern Hollow"_s);
    tank.note = u"shaded"_s;
    edit.put(tank);
    ASSERT_TRUE(succeeded((*made)->apply(edit)));
}

} // namespace

TEST(KeptStore, Version1)
{
    keepOneIfAsked();
    const TempStore temp;
    const QString path = temp.path(u"v1.littoral"_s);
    ASSERT_TRUE(QFile::copy(kept("v1.littoral"), path));
    ASSERT_TRUE(QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner));
    auto opened = Store::open(path);
    ASSERT_TRUE(succeeded(opened));
    Store& store = **opened;
    EXPECT_EQ(store.copyBeforeUpgrade().isEmpty(), store::kSchemaVersion == 1);

    const auto row = store.load();
    ASSERT_TRUE(succeeded(row));
    const Tank* slate = row->tankNamed(u"Slate Ford"_s);
    ASSERT_NE(slate, nullptr);
    EXPECT_EQ(row->tankNamed(u"Fern Hollow"_s)->note, u"shaded"_s);
    const LayoutRecord& layout = *row->layoutsOf(slate->id).front();
    EXPECT_EQ(layout.layout.flooded, moment("2026-11-01T10:00:00+01:00"));
    EXPECT_EQ(layout.layout.flooded.offsetSeconds(), 3600);
    ASSERT_EQ(layout.readings.size(), 1U);
    EXPECT_EQ(layout.readings.front().typed, u"<0,05"_s);
    EXPECT_NEAR(layout.readings.front().high, 0.05 / 3.284, 1e-5); // NO2 : N by IUPAC atomic weights
    EXPECT_EQ(layout.entries.front().fraction, 0.45);
    EXPECT_EQ(layout.tasks.front().closedBy, layout.entries.front().id);
    EXPECT_EQ(row->kits.front().steps.size(), 6U);
    EXPECT_EQ(row->settings.value(u"language"_s), u"en"_s);
    // What version 1 did not know: its blend names no parts, nobody judged uptake, nothing is dosed by plan.
    EXPECT_EQ(row->sources.front().kind, SourceKind::Blend);
    EXPECT_FALSE(row->sources.front().firstPart);
    EXPECT_FALSE(row->sources.front().firstShare);
    EXPECT_FALSE(layout.layout.uptakeLow_mg_per_L_wk);
    EXPECT_TRUE(layout.regimens.empty());
    EXPECT_EQ(store.photoBytes(store.photos(layout.layout.id)->front().id)->size(), 16);
    EXPECT_EQ(store.issuedForecasts(layout.layout.id)->size(), 1U);
    EXPECT_TRUE(store.verify()->problems.empty());
    EXPECT_EQ(*store.undo(), u"second tank's note"_s);
    EXPECT_EQ(*store.undo(), u"one of everything"_s);
    EXPECT_TRUE(store.load()->tanks.empty());
}
