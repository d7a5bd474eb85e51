// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/frame_fixture.h"

namespace littoral::ui::test {

using namespace Qt::StringLiterals;

FrameTest::FrameTest()
    : m_clock(record::Moment::fromIso(u"2026-11-25T07:30:00Z"_s))
    , m_keeper(m_clock)
    , m_forecasts(m_keeper)
    , m_theme(Scheme::Light)
{
    // Settings and data of the test's own: nothing of the person at the machine is read or written.
    qputenv("XDG_CONFIG_HOME", m_folder.path().toUtf8());
    qputenv("XDG_DATA_HOME", m_folder.path().toUtf8());
    const auto made = m_keeper.create(path(u"test.littoral"_s));
    EXPECT_TRUE(made) << (made ? std::string() : made.error().sentence());
}

void FrameTest::addKits()
{
    store::Edit edit(u"kits"_s);
    const auto kit = [&](const QString& name, const QString& parameter, const QString& unit, std::vector<double> steps,
                         const QDate& expires) {
        record::TestKit k;
        k.name = name;
        k.parameter = parameter;
        k.unit = unit;
        k.steps = std::move(steps);
        k.expires = expires;
        edit.put(k);
    };
    kit(u"Drops A"_s, u"tan"_s, u"mg/L NH4"_s, {0, 0.05, 0.1, 0.2, 0.4, 0.8, 1.5, 3}, QDate(2027, 4, 30));
    kit(u"Drops B"_s, u"no2"_s, u"mg/L NO2"_s, {0, 0.05, 0.1, 0.2, 0.4, 0.8, 1.5, 2, 3, 4}, QDate(2027, 4, 30));
    kit(u"Drops C"_s, u"no3"_s, u"mg/L NO3"_s, {0, 1, 5, 10, 20, 40, 60}, QDate(2026, 10, 3));
    const auto done = m_keeper.commit(edit);
    EXPECT_TRUE(done) << (done ? std::string() : done.error().sentence());
}

record::TankId FrameTest::addTank(const QString& name, int daysAgo)
{
    record::Tank tank;
    tank.name = name;
    tank.length_cm = 60;
    tank.depth_cm = 35;
    tank.height_cm = 40;
    record::Layout layout;
    layout.flooded = m_clock.now().plusDays(-daysAgo);
    layout.bed_L = 8;
    const auto added = m_keeper.addTank(tank, layout);
    EXPECT_TRUE(added) << (added ? std::string() : added.error().sentence());
    return added ? *added : record::TankId{};
}

record::LayoutId FrameTest::layoutOf(record::TankId tank) const
{
    const record::LayoutRecord* layout = m_keeper.row().currentLayout(tank, m_clock.now());
    return layout == nullptr ? record::LayoutId{} : layout->layout.id;
}

record::ReadingId FrameTest::read(record::TankId tank, const QString& parameter, const QString& typed, int daysAgo)
{
    facade::Keeper::TypedReading reading;
    reading.layout = layoutOf(tank);
    reading.parameter = parameter;
    reading.typed = typed;
    reading.at = m_clock.now().plusDays(-daysAgo);
    const auto done = m_keeper.enterReading(reading);
    EXPECT_TRUE(done) << (done ? std::string() : done.error().sentence());
    return done ? *done : record::ReadingId{};
}

std::size_t FrameTest::readingCount() const
{
    std::size_t count = 0;
    for (const auto& [id, layout] : m_keeper.row().layouts) {
        count += layout.readings.size();
    }
    return count;
}

} // namespace littoral::ui::test
