// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/care/care_row.h"

using namespace Qt::StringLiterals;
namespace record = littoral::record;
namespace care = littoral::care;

namespace {
constexpr int kOffset = 3600;
const QDate kFlooded(2026, 3, 1);
} // namespace

CareRow::CareRow(record::StartMethod start, record::Bed bed, record::Co2Mode co2)
{
    record::Tank tank;
    tank.id = tankId;
    tank.name = u"Slate Ford"_s;
    row.tanks.push_back(tank);
    record::LayoutRecord made;
    made.layout.id = layoutId;
    made.layout.tank = tankId;
    made.layout.flooded = at(0, 10);
    made.layout.start = start;
    made.layout.bed = bed;
    made.layout.co2 = co2;
    made.layout.measuredNet_L = 100.0;
    row.layouts.emplace(layoutId, made);
}

QDate CareRow::day(int age)
{
    return kFlooded.addDays(age);
}

record::Moment CareRow::at(int age, int hour, int minute)
{
    return record::Moment::fromDateTime(QDateTime(day(age), QTime(hour, minute), Qt::OffsetFromUTC, kOffset));
}

record::Reading& CareRow::read(const QString& parameter, int age, double canonical, int hour)
{
    record::Reading reading;
    reading.id = {m_next++};
    reading.tank = tankId;
    reading.layout = layoutId;
    reading.parameter = parameter;
    reading.at = at(age, hour);
    reading.value = reading.low = reading.high = canonical;
    reading.typed = QString::number(canonical);
    record().readings.push_back(reading);
    return record().readings.back();
}

record::Entry& CareRow::enter(record::EntryKind kind, int age, const QString& subject, int hour)
{
    record::Entry entry;
    entry.id = {m_next++};
    entry.tank = tankId;
    entry.layout = layoutId;
    entry.kind = kind;
    entry.at = at(age, hour);
    entry.subject = subject;
    record().entries.push_back(entry);
    return record().entries.back();
}

record::Entry& CareRow::change(int age, double fraction, int hour)
{
    record::Entry& entry = enter(record::EntryKind::WaterChange, age, {}, hour);
    entry.fraction = fraction;
    return entry;
}

record::Entry& CareRow::observe(const QString& subject, int age, int severity, double coverage)
{
    record::Entry& entry = enter(record::EntryKind::Observation, age, subject, 9);
    entry.severity = severity;
    entry.coverage = coverage;
    return entry;
}

record::Entry& CareRow::animals(const QString& subject, int age, int count)
{
    record::Entry& entry = enter(record::EntryKind::Addition, age, subject, 11);
    entry.count = count;
    return entry;
}

record::Task& CareRow::task(const QString& key, int dueAge, record::TaskState state)
{
    record::Task task;
    task.id = {m_next++};
    task.tank = tankId;
    task.layout = layoutId;
    task.templateKey = key;
    task.due = day(dueAge);
    task.state = state;
    record().tasks.push_back(task);
    return record().tasks.back();
}

void CareRow::target(const QString& parameter, double low, double high)
{
    row.targets.push_back({{m_next++}, tankId, parameter, low, high});
}

void CareRow::changes(const std::vector<int>& ages, double fraction)
{
    for (const int age : ages) {
        change(age, fraction);
    }
}

const record::Row& CareRow::sorted()
{
    record::sortRow(row);
    return row;
}

std::vector<care::DueItem> CareRow::due(int age, int untilAge, int hour)
{
    return care::dueWork(sorted(), layoutId, at(age, hour), day(untilAge));
}

std::vector<care::DueItem> CareRow::due(const QString& key, int age, int untilAge, int hour)
{
    std::vector<care::DueItem> items = due(age, untilAge, hour);
    std::erase_if(items, [&](const care::DueItem& item) { return item.templateKey != key; });
    return items;
}

std::vector<int> CareRow::ages(const QString& key, int age, int untilAge, int hour)
{
    std::vector<int> found;
    for (const care::DueItem& item : due(key, age, untilAge, hour)) {
        found.push_back(static_cast<int>(kFlooded.daysTo(item.due)));
    }
    return found;
}
