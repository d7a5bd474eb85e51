// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/findings/small_row.h"

using namespace littoral::record;
using namespace Qt::StringLiterals;

SmallRow::SmallRow()
{
    Tank tank;
    tank.id = TankId{1};
    tank.name = u"Reed End"_s;
    row.tanks.push_back(tank);
    Layout layout;
    layout.id = layoutId;
    layout.tank = tank.id;
    layout.flooded = Moment::fromIso(u"2026-03-01T10:00:00Z"_s);
    layout.co2 = Co2Mode::Pressurised;
    row.layouts[layoutId].layout = layout;
}

Moment SmallRow::at(double age) const
{
    return row.layouts.at(layoutId).layout.flooded.plusDays(age);
}

Reading& SmallRow::read(const QString& parameter, double age, double canonical)
{
    Reading reading;
    reading.id = ReadingId{++m_next};
    reading.tank = TankId{1};
    reading.layout = layoutId;
    reading.parameter = parameter;
    reading.at = at(age);
    reading.value = canonical;
    reading.low = canonical;
    reading.high = canonical;
    record().readings.push_back(reading);
    return record().readings.back();
}

Entry& SmallRow::enter(EntryKind kind, double age, const QString& subject)
{
    Entry entry;
    entry.id = EntryId{++m_next};
    entry.tank = TankId{1};
    entry.layout = layoutId;
    entry.kind = kind;
    entry.at = at(age);
    entry.subject = subject;
    record().entries.push_back(entry);
    return record().entries.back();
}

Entry& SmallRow::change(double age, double fraction)
{
    Entry& entry = enter(EntryKind::WaterChange, age);
    entry.fraction = fraction;
    return entry;
}

Entry& SmallRow::look(const QString& keyAndValue, double age)
{
    return enter(EntryKind::Observation, age, keyAndValue);
}

const LayoutRecord& SmallRow::sorted()
{
    sortRow(row);
    return record();
}
