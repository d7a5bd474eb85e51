// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/connection.h"
#include "temp_store.h"

#include <QElapsedTimer>

using namespace littoral;
using namespace littoral::testing;
using namespace Qt::StringLiterals;
using namespace littoral::record;
using store::Edit;

// Times are recorded for whoever reads the report, not judged: machines differ.
TEST(Bulk, TenThousandReadingsInOneEdit)
{
    TempStore temp;
    Edit edit(u"import"_s);
    const TankId tank = edit.put(tankNamed(u"Slate Ford"_s));
    const LayoutId layout = edit.put(layoutIn(tank));
    Reading reading = readingOf(tank, layout, u"0.25"_s, moment("2026-01-01T07:30:00+01:00"));
    for (int i = 0; i < 10'000; ++i) {
        reading.at = reading.at.plusMs(60'000);
        edit.put(reading);
    }
    QElapsedTimer timer;
    timer.start();
    ASSERT_TRUE(succeeded(temp->apply(edit)));
    RecordProperty("apply_ms", static_cast<int>(timer.restart()));
    const auto row = temp->load();
    RecordProperty("load_ms", static_cast<int>(timer.restart()));
    EXPECT_EQ(row->recordCount(), 10'000U);
    ASSERT_TRUE(succeeded(temp->undo()));
    RecordProperty("undo_ms", static_cast<int>(timer.restart()));
    EXPECT_EQ(temp->load()->recordCount(), 0U);
    ASSERT_TRUE(succeeded(temp->redo()));
    Edit removal(u"remove"_s);
    removal.remove(tank);
    timer.restart();
    ASSERT_TRUE(succeeded(temp->apply(removal)));
    RecordProperty("remove_ms", static_cast<int>(timer.restart()));
    ASSERT_TRUE(succeeded(temp->undo()));
    EXPECT_EQ(temp->load()->recordCount(), 10'000U);
}

// The series of one parameter is read from the covering index alone.
TEST(Bulk, SeriesQueryIsCovered)
{
    TempStore temp;
    auto connection = store::Connection::open(temp.path(), store::Mode::QueryOnly);
    ASSERT_TRUE(succeeded(connection));
    store::Statement plan =
        (*connection)
            ->prepare(
                u"EXPLAIN QUERY PLAN SELECT at_utc, value FROM reading WHERE layout = 1 AND parameter = 'no2' AND at_utc > 0 ORDER BY at_utc"_s);
    ASSERT_TRUE(succeeded(plan.exec()));
    ASSERT_TRUE(plan.next());
    const QString detail = plan.value(3).toString();
    EXPECT_TRUE(detail.contains(u"COVERING INDEX reading_series"_s)) << detail.toStdString();
    EXPECT_FALSE(plan.next()) << "no separate sorting";
}
