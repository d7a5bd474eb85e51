// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/events.h"
#include "core/sheets/fill.h"
#include "core/wording/numbers.h"
#include "ui/models/bench_sheet.h"

#include <QCoreApplication>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("BenchSheet", text);
}

/// The tank alone with its layout, another source water named in it.
record::Row withSource(const record::Row& row, record::TankId tank, const record::Moment& now,
                       record::SourceWaterId source)
{
    record::Row small;
    const record::Tank* found = row.tank(tank);
    const record::LayoutRecord* layout = row.currentLayout(tank, now);
    if (found != nullptr && layout != nullptr) {
        small.tanks = {*found};
        record::LayoutRecord changed = *layout;
        changed.layout.source = source;
        small.layouts.emplace(changed.layout.id, std::move(changed));
    }
    small.sources = row.sources;
    small.kits = row.kits;
    return small;
}

/// Weighings of the cylinder since it was last changed; oldest first.
std::vector<const record::Reading*> weighings(const record::Row& row, const record::LayoutRecord& layout,
                                              const record::Moment& now)
{
    const auto changes = care::occurrences(row, layout, care::Event::CylinderChange, now);
    std::vector<const record::Reading*> found;
    for (const record::Reading* reading : layout.readingsOf(u"cylinder"_s)) {
        if (reading->at <= now && (changes.empty() || reading->at >= changes.back()->at)) {
            found.push_back(reading);
        }
    }
    return found;
}

sheets::Value known(double number, int decimals, const QString& origin)
{
    sheets::Value value;
    value.number = number;
    value.text = wording::numberText(number, decimals);
    value.step = decimals == 0 ? 1.0 : 0.1;
    value.origin = origin;
    return value;
}

/// First and last weighing of the cylinder in use, and the days between them.
void fillCylinder(sheets::Values& values, const record::Row& row, record::TankId tank, const record::Moment& now)
{
    const record::LayoutRecord* layout = row.currentLayout(tank, now);
    const auto weighed = layout == nullptr ? std::vector<const record::Reading*>{} : weighings(row, *layout, now);
    if (weighed.size() < 2) {
        return;
    }
    const record::Reading& first = *weighed.front();
    const record::Reading& last = *weighed.back();
    const auto origin = [&](const record::Reading& reading) {
        return words("weighed %1").arg(wording::dateText(reading.at.localDate(), now.localDate()));
    };
    values.insert(u"earlier"_s, known(first.value, 0, origin(first)));
    values.insert(u"later"_s, known(last.value, 0, origin(last)));
    values.insert(u"days"_s, known(record::daysBetween(first.at, last.at), 1, words("between these weighings")));
}

} // namespace

sheets::Values benchFill(const sheets::Sheet& sheet, const record::Row& row, record::TankId tank,
                         const record::Moment& now, const sheets::Values& typed, record::SourceWaterId source)
{
    sheets::Values values = source ? sheets::fillFromRecord(sheet, withSource(row, tank, now, source), tank, now, typed)
                                   : sheets::fillFromRecord(sheet, row, tank, now, typed);
    if (sheet.key == u"cylinder"_s) {
        fillCylinder(values, row, tank, now);
    }
    return values;
}

} // namespace littoral::ui
