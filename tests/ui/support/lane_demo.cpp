// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/lane_demo.h"

#include <QDateTime>
#include <QTimeZone>
#include <algorithm>
#include <cmath>

namespace littoral::ui::demo {

using namespace Qt::StringLiterals;
using namespace littoral::facade;

namespace {

struct Sample
{
    double day, value;
};

LaneSeries series(const QString& key, const QString& name, const QString& unit, int decimals,
                  const std::vector<Sample>& samples)
{
    LaneSeries out;
    out.parameter = key;
    out.name = name;
    out.unitLabel = unit;
    out.decimals = decimals;
    qint64 id = 1;
    for (const Sample& s : samples) {
        LaneMark mark;
        mark.at = day(s.day);
        mark.value = s.value;
        mark.reading.value = id++;
        mark.sentence = u"%1 %2 %3"_s.arg(name).arg(s.value, 0, 'f', decimals).arg(unit);
        out.marks.push_back(mark);
    }
    return out;
}

/// A fan that starts at `start`, changes by `perDay` and is cut by `cut` at each of `changes`.
void addFan(LaneSeries& out, double start, double perDay, const std::vector<double>& changes, double cut, double spread)
{
    double value = start;
    std::size_t next = 0;
    for (double d = -0.18; d < 20.0; d += 0.25) {
        if (next < changes.size() && d >= changes[next]) {
            value *= 1.0 - cut;
            ++next;
        }
        value = std::max(0.0, value + perDay * 0.25);
        const double s = spread * value * std::sqrt(std::max(0.05, d + 0.3)) * 0.2;
        out.forecast.push_back(
            {day(d), std::max(0.0, value - 2 * s), std::max(0.0, value - s), value, value + s, value + 2.2 * s});
    }
}

LaneEvent change(double at, double fraction, bool planned = false)
{
    LaneEvent e;
    e.at = day(at);
    e.glyph = Glyph::WaterChange;
    e.fraction = fraction;
    e.word = QString::number(std::lround(fraction * 100));
    e.planned = planned;
    e.sentence = u"Water change %1 %"_s.arg(e.word);
    e.entry.value = std::lround(at * 10) + 10000;
    return e;
}

LaneEvent event(double at, Glyph glyph, const QString& word, const QString& sentence, bool serious = false)
{
    LaneEvent e;
    e.at = day(at);
    e.glyph = glyph;
    e.word = word;
    e.sentence = sentence;
    e.serious = serious;
    e.planned = at > 0;
    e.entry.value = std::lround(at * 10) + 20000;
    return e;
}

LaneChip over(int days, Glyph glyph, const QString& title, const QString& shortText, const QString& why)
{
    LaneChip c = chip(-days, glyph, title, shortText);
    c.overdue = true;
    c.daysOver = days;
    c.item.overdue = true;
    c.item.daysOver = days;
    c.text = u"%1, %2 d over"_s.arg(title).arg(days);
    c.why = why;
    return c;
}

LaneChip today(Glyph glyph, const QString& title, const QString& shortText)
{
    LaneChip c = chip(0, glyph, title, shortText);
    c.today = true;
    c.text = u"%1, today"_s.arg(title);
    return c;
}

LaneModel base(qint64 id, const QString& name, const QString& size, double l, double h, int ageDays)
{
    LaneModel m;
    m.tank.value = id;
    m.layout.value = id * 10;
    m.name = name;
    m.litresAndAge = u"%1 · day %2"_s.arg(size).arg(ageDays);
    m.length_cm = l;
    m.height_cm = h;
    m.depth_cm = h;
    m.young = ageDays < 63 && ageDays < 20;
    m.flooded = day(-ageDays) - 2 * 3'600'000;
    return m;
}

void finish(LaneModel& m)
{
    std::ranges::sort(m.events, {}, &LaneEvent::at);
    m.overdueCount = static_cast<int>(std::ranges::count_if(m.chips, &LaneChip::overdue));
    for (const LaneEvent& e : m.events) {
        if (!e.planned && e.glyph == Glyph::WaterChange) {
            m.doneWork.push_back(e.at);
        }
    }
    m.forecastState = ForecastState::Ready;
}

LaneModel slateFord()
{
    LaneModel m = base(1, u"Slate Ford"_s, u"180 L"_s, 60, 50, 16);
    m.floodedText = u"Flooded 9 Nov, 10:00"_s;
    m.startText = u"new media, ammonia-rich soil"_s;
    m.status = m.lineStatus = Status::Act;
    m.statusWord = u"Nitrite high"_s;
    m.phaseLine = u"Nitrite at its peak"_s;
    m.verdict = u"Nitrite clear about 4–9 Dec (8 in 10)"_s;
    m.statusLine = u"Nitrite 6 mg/L: no animals yet"_s;
    m.nextLine = u"Next change 50 %, tomorrow"_s;
    m.present = {{u"tan"_s, u"NH₃/₄"_s, u"0.2"_s}, {u"no2"_s, u"NO₂"_s, u"6"_s}, {u"no3"_s, u"NO₃"_s, u"5"_s}};
    LaneSeries tan = series(u"tan"_s, u"Total ammonia"_s, u"mg/L"_s, 1,
                            {{-15, 2},
                             {-14, 2},
                             {-13, 3},
                             {-12, 2},
                             {-11, 4},
                             {-10, 3},
                             {-9, 3},
                             {-8, 2},
                             {-7, 3},
                             {-6, 1.5},
                             {-5, 1.5},
                             {-4, 0.8},
                             {-3, 0.8},
                             {-2, 0.2},
                             {-1, 0.2}});
    LaneSeries no2 = series(u"no2"_s, u"Nitrite"_s, u"mg/L"_s, 1,
                            {{-15, 0.1},
                             {-14, 0.1},
                             {-13, 0.1},
                             {-12, 0.1},
                             {-11, 0.2},
                             {-10, 0.4},
                             {-9, 0.8},
                             {-8, 0.8},
                             {-7, 1.5},
                             {-6, 1.5},
                             {-5, 3},
                             {-4, 3},
                             {-3, 5},
                             {-2, 4},
                             {-1, 6}});
    tan.marks.front().censoring = record::Censoring::Above;
    no2.marks[2].censoring = record::Censoring::Below;
    addFan(tan, 0.1, -0.01, {}, 0, 1.0);
    addFan(no2, 3.4, 0.4, {1, 3, 5, 7, 9}, 0.5, 0.5);
    m.series = {tan, no2};
    m.events = {event(-12, Glyph::Dose, u"starter"_s, u"Starter bacteria"_s),
                event(-8, Glyph::Light, u"6 h"_s, u"Light 6 hours"_s)};
    for (const double d : {-15.0, -14.0, -13.0, -11.0, -9.0, -7.0, -5.0, -3.0, -1.0}) {
        m.events.push_back(change(d, d > -6 ? 0.4 : 0.5));
    }
    for (const double d : {1.0, 3.0, 5.0, 7.0, 9.0, 13.0}) {
        m.events.push_back(change(d, d > 4 && d < 10 ? 0.4 : 0.5, true));
        m.chips.push_back(chip(d, Glyph::WaterChange, d > 4 && d < 10 ? u"Water change 40 %"_s : u"Water change 50 %"_s,
                               d > 4 && d < 10 ? u"40 %"_s : u"50 %"_s));
    }
    m.chips.push_back(today(Glyph::Test, u"Test NH₃/₄ NO₂ NO₃"_s, u"×3"_s));
    m.chips.push_back(chip(9, Glyph::Test, u"Confirm nitrite clear"_s, u"NO₂"_s));
    m.alerts = {{Status::Act, day(-8), u"Nitrite above 1 mg/L since 17 Nov"_s}};
    m.gates = {{day(9), day(14), u"Nitrite clear, 8 in 10"_s, u"Nitrite clear between 4 and 9 December, 8 in 10"_s}};
    m.phases = {{m.flooded, day(-11), u"ammonia rising"_s, false},
                {day(-11), day(-4), u"ammonia falling"_s, false},
                {day(-4), day(0), u"nitrite high"_s, false},
                {day(0), day(14), u"nitrite falling"_s, true},
                {day(14), day(60), u"cycled, forecast"_s, true}};
    finish(m);
    return m;
}

LaneModel alderShelf()
{
    LaneModel m = base(2, u"Alder Shelf"_s, u"60 L"_s, 45, 36, 12);
    m.floodedText = u"Flooded 13 Nov, 09:30"_s;
    m.startText = u"inert sand, mature media"_s;
    m.status = m.lineStatus = Status::Watch;
    m.statusWord = u"Gate in 2 days"_s;
    m.phaseLine = u"Mature media carrying the load"_s;
    m.verdict = u"Hardy grazers from 27 Nov (9 in 10)"_s;
    m.statusLine = u"One more clear nitrite test"_s;
    m.present = {{u"tan"_s, u"NH₃/₄"_s, u"0.1"_s}, {u"no2"_s, u"NO₂"_s, u"0.1"_s}, {u"no3"_s, u"NO₃"_s, u"10"_s}};
    LaneSeries tan =
        series(u"tan"_s, u"Total ammonia"_s, u"mg/L"_s, 2,
               {{-11, 0.4}, {-10, 0.4}, {-9, 0.8}, {-8, 0.4}, {-6, 0.4}, {-4, 0.2}, {-2, 0.1}, {-0.8, 0.1}});
    LaneSeries no2 =
        series(u"no2"_s, u"Nitrite"_s, u"mg/L"_s, 2,
               {{-11, 0.2}, {-10, 0.4}, {-9, 0.4}, {-8, 0.8}, {-6, 0.8}, {-4, 0.2}, {-2, 0.1}, {-0.8, 0.1}});
    addFan(no2, 0.1, -0.006, {}, 0, 1.0);
    m.series = {tan, no2};
    m.events = {event(-11.6, Glyph::Media, u"3 L from Mill Race"_s, u"3 L of media from Mill Race"_s),
                event(-4, Glyph::Observation, u"film"_s, u"Film on the surface"_s),
                event(5, Glyph::In, u"8 snails"_s, u"8 snails planned"_s)};
    for (const double d : {-11.0, -9.0, -6.0, -2.0}) {
        m.events.push_back(change(d, 0.3));
    }
    for (const double d : {2.0, 9.0, 16.0}) {
        m.events.push_back(change(d, 0.3, true));
    }
    m.chips = {today(Glyph::Test, u"Test NO₂"_s, u"NO₂"_s),
               chip(3, Glyph::Gate, u"Hardy grazers may go in"_s, u"grazers"_s),
               chip(10, Glyph::WaterChange, u"Change 30 %"_s, u"30 %"_s)};
    m.gates = {{day(2), day(5), u"Grazers"_s, u"Hardy grazers from 27 November, 9 in 10"_s}};
    m.phases = {{m.flooded, day(-5), u"mature media settling"_s, false},
                {day(-5), day(0), u"clear"_s, false},
                {day(0), day(60), u"cycled, forecast"_s, true}};
    finish(m);
    return m;
}

std::vector<Sample> saw(double low, double high, double step, double first, double last)
{
    std::vector<Sample> out;
    for (double d = first; d <= last; d += step) {
        const double phase = std::fmod(d - first, 7.0) / 7.0;
        out.push_back({d, low + (high - low) * phase});
    }
    return out;
}

LaneModel millRace()
{
    LaneModel m = base(3, u"Mill Race"_s, u"500 L"_s, 150, 55, 412);
    m.status = m.lineStatus = Status::Overdue;
    m.statusWord = u"2 overdue"_s;
    m.phaseLine = u"Established"_s;
    m.verdict = u"Nitrate 33 mg/L, target 10–25"_s;
    m.statusLine = u"2 overdue, longest 6 days"_s;
    m.present = {{u"no3"_s, u"NO₃"_s, u"33"_s}, {u"po4"_s, u"PO₄"_s, u"1.4"_s}, {u"kh"_s, u"KH"_s, u"5.2"_s}};
    LaneSeries no3 = series(u"no3"_s, u"Nitrate"_s, u"mg/L"_s, 0,
                            {{-26, 20},
                             {-24.5, 23},
                             {-22.7, 19},
                             {-20, 22},
                             {-17, 26},
                             {-16, 18},
                             {-12, 22},
                             {-10, 25},
                             {-9, 20},
                             {-6, 24},
                             {-4, 28},
                             {-2.5, 31},
                             {-0.9, 33}});
    no3.targetLow = 10;
    no3.targetHigh = 25;
    addFan(no3, 34, 0.8, {0.4, 4, 11, 18}, 0.35, 0.12);
    m.series = {no3};
    m.events = {event(-20, Glyph::Trim, u"stems"_s, u"Stems trimmed"_s),
                event(-13.5, Glyph::Out, u"3 L media"_s, u"3 L of media to Alder Shelf"_s),
                event(-6.4, Glyph::Dose, u"K"_s, u"Potassium"_s),
                event(-3.2, Glyph::Trim, u"carpet"_s, u"Carpet trimmed"_s)};
    for (const double d : {-24.0, -17.0, -10.0}) {
        m.events.push_back(change(d, 0.4));
    }
    for (const double d : {0.6, 4.0, 11.0, 18.0}) {
        m.events.push_back(change(d, 0.4, true));
    }
    m.chips = {
        over(6, Glyph::Upkeep, u"Filter service"_s, u"filter"_s, u"Due 19 Nov, 6 days over. Every 6 weeks."_s),
        over(
            3, Glyph::WaterChange, u"Water change 40 %"_s, u"40 %"_s,
            u"Due 22 Nov, 3 days over. Last one 15 Nov; every 7 days while nitrate stays above 20 mg/L (33 on 24 Nov)."_s),
        chip(6, Glyph::Test, u"Test NO₃ PO₄"_s, u"×2"_s), chip(11, Glyph::WaterChange, u"Change 40 %"_s, u"40 %"_s)};
    m.alerts = {{Status::Watch, day(-5), u"Above target since 20 Nov"_s}};
    finish(m);
    return m;
}

LaneModel fenCorner()
{
    LaneModel m = base(4, u"Fen Corner"_s, u"30 L"_s, 31, 31, 96);
    m.status = Status::Act;
    m.lineStatus = Status::Watch;
    m.statusWord = u"Melt, day 13"_s;
    m.phaseLine = u"Settled, then melt from 12 Nov"_s;
    m.verdict = u"Likely cause: KH step of 8 Nov"_s;
    m.statusLine = u"New leaves: likely to recover"_s;
    m.present = {{u"kh"_s, u"KH"_s, u"4.2"_s}, {u"no3"_s, u"NO₃"_s, u"24"_s}, {u"ph"_s, u"pH"_s, u"7.1"_s}};
    LaneSeries kh = series(u"kh"_s, u"KH"_s, u"dKH"_s, 1,
                           {{-26, 2.8},
                            {-22, 3},
                            {-19, 2.8},
                            {-17.3, 3},
                            {-15, 4.8},
                            {-12, 4.8},
                            {-9, 5.2},
                            {-5, 5.2},
                            {-2, 4.2},
                            {-0.3, 4.2}});
    kh.targetLow = 2.5;
    kh.targetHigh = 4;
    addFan(kh, 4.2, 0, {4, 11, 18}, 0.14, 0.08);
    m.series = {kh};
    m.events = {event(-20, Glyph::Co2, u"+0.5 b/s"_s, u"CO₂ raised"_s),
                event(-13, Glyph::Observation, u"melt 2"_s, u"Melt, severity 2"_s, true),
                event(-8, Glyph::Observation, u"melt 3"_s, u"Melt, severity 3"_s, true),
                event(-5, Glyph::Trim, {}, u"Dead leaves cut"_s),
                event(-1.6, Glyph::Observation, u"leaf"_s, u"New leaves"_s)};
    for (const double d : {-24.0, -17.0, -10.0, -3.0}) {
        m.events.push_back(change(d, d == -17.0 ? 0.5 : 0.25));
    }
    for (const double d : {4.0, 11.0, 18.0}) {
        m.events.push_back(change(d, 0.25, true));
    }
    m.chips = {today(Glyph::Observation, u"Look at crowns"_s, u"look"_s),
               chip(5, Glyph::WaterChange, u"Change 25 %, blend 2:1"_s, u"25 %"_s),
               chip(14, Glyph::Test, u"KH"_s, u"KH"_s)};
    m.alerts = {{Status::Act, day(-13), u"Melt, severity 3 of 4 at worst"_s}};
    finish(m);
    return m;
}

LaneModel heronSill()
{
    LaneModel m = base(5, u"Heron Sill"_s, u"240 L"_s, 120, 45, 61);
    m.status = m.lineStatus = Status::Ok;
    m.statusWord = u"In range"_s;
    m.phaseLine = u"Growing in, day 61"_s;
    m.statusLine = u"In range; change may ease"_s;
    m.present = {{u"no3"_s, u"NO₃"_s, u"12"_s}, {u"po4"_s, u"PO₄"_s, u"0.6"_s}, {u"co2"_s, u"CO₂"_s, u"27"_s}};
    LaneSeries no3 = series(u"no3"_s, u"Nitrate"_s, u"mg/L"_s, 0, saw(9, 14, 2.3, -26, -0.4));
    no3.targetLow = 5;
    no3.targetHigh = 15;
    addFan(no3, 10, 0.45, {6, 13}, 0.35, 0.2);
    m.series = {no3};
    m.events = {event(-24, Glyph::Trim, u"stems"_s, u"Stems trimmed"_s),
                event(-18, Glyph::In, u"12 shrimp"_s, u"12 shrimp in"_s),
                event(-13, Glyph::Cylinder, u"refill"_s, u"Cylinder filled"_s),
                event(-11, Glyph::In, u"6 fish"_s, u"6 fish in"_s),
                event(-5, Glyph::Light, u"7 to 8 h"_s, u"Light 7 to 8 hours"_s),
                event(10, Glyph::Trim, {}, u"Trim planned"_s)};
    for (const double d : {-22.0, -15.0, -8.0, -1.0}) {
        m.events.push_back(change(d, 0.5));
    }
    m.events.push_back(change(6, 0.4, true));
    m.events.push_back(change(13, 0.4, true));
    m.chips = {today(Glyph::Decide, u"Decide: ease cadence?"_s, u"ease?"_s),
               chip(7, Glyph::WaterChange, u"Change 40 %"_s, u"40 %"_s),
               chip(13, Glyph::WaterChange, u"Change 40 %"_s, u"40 %"_s)};
    finish(m);
    return m;
}

LaneModel lowWeir()
{
    LaneModel m = base(6, u"Low Weir"_s, u"8 L"_s, 20, 22, 203);
    m.status = m.lineStatus = Status::Overdue;
    m.statusWord = u"1 overdue"_s;
    m.phaseLine = u"Settled, 31 shrimp"_s;
    m.statusLine = u"Top-up 2 days overdue"_s;
    m.present = {{u"cond"_s, u"EC"_s, u"312"_s}, {u"temp"_s, u"Temp"_s, u"22.4"_s}, {u"gh"_s, u"GH"_s, u"7"_s}};
    LaneSeries cond =
        series(u"cond"_s, u"Conductivity"_s, u"µS/cm"_s, 0,
               {{-26, 268}, {-22, 270}, {-18, 262}, {-14, 268}, {-10, 275}, {-6, 290}, {-3, 300}, {-0.5, 312}});
    cond.targetLow = 240;
    cond.targetHigh = 290;
    addFan(cond, 314, 1.5, {0.3, 7, 14}, 0.12, 0.02);
    m.series = {cond};
    m.events = {event(-24, Glyph::TopUp, u"0.4 L"_s, u"Topped up 0.4 L"_s),
                event(-17, Glyph::TopUp, u"0.4 L"_s, u"Topped up 0.4 L"_s),
                event(-12, Glyph::Observation, u"31 shrimp"_s, u"31 shrimp counted"_s),
                event(0.5, Glyph::TopUp, u"0.6 L"_s, u"Top-up planned"_s),
                change(-20, 0.15),
                change(7, 0.15, true),
                change(14, 0.15, true)};
    m.chips = {over(2, Glyph::TopUp, u"Top up 0.6 L RO"_s, u"0.6 L"_s, u"Due 23 Nov, 2 days over."_s),
               chip(7, Glyph::WaterChange, u"Change 15 %"_s, u"15 %"_s),
               chip(12, Glyph::Test, u"GH, conductivity"_s, u"GH"_s)};
    m.alerts = {{Status::Watch, day(-6), u"Above range since 19 Nov"_s}};
    finish(m);
    return m;
}

} // namespace

qint64 now()
{
    return QDateTime(QDate(2026, 11, 25), QTime(6, 40), QTimeZone::utc()).toMSecsSinceEpoch();
}

qint64 day(double fromNow)
{
    const qint64 noon = QDateTime(QDate(2026, 11, 25), QTime(11, 0), QTimeZone::utc()).toMSecsSinceEpoch();
    return noon + static_cast<qint64>(fromNow * 86'400'000.0);
}

LaneChip chip(double dayFromNow, Glyph glyph, const QString& title, const QString& shortText)
{
    LaneChip c;
    c.at = day(dayFromNow);
    c.glyph = glyph;
    c.title = c.text = title;
    c.shortText = shortText;
    c.item.templateKey = title;
    c.item.due = QDate(2026, 11, 25).addDays(std::lround(dayFromNow));
    c.item.cadenceDue = c.item.due;
    const auto percent = shortText.indexOf(u" %"_s);
    if (percent > 0) {
        c.item.fraction = shortText.left(percent).toDouble() / 100.0;
    }
    return c;
}

std::vector<LanePtr> sixLanes()
{
    std::vector<LanePtr> lanes;
    for (const LaneModel& m : {slateFord(), alderShelf(), millRace(), fenCorner(), heronSill(), lowWeir()}) {
        lanes.push_back(std::make_shared<const LaneModel>(m));
    }
    return lanes;
}

std::vector<LanePtr> manyLanes(int count, int days)
{
    std::vector<LanePtr> lanes;
    for (int i = 0; i < count; ++i) {
        LaneModel m = i % 2 == 0 ? millRace() : heronSill();
        m.tank.value = i + 1;
        m.layout.value = (i + 1) * 10;
        m.name = u"Reach %1"_s.arg(i + 1);
        std::vector<Sample> samples;
        for (int d = -days; d < 0; ++d) {
            samples.push_back({static_cast<double>(d), 20.0 + 8.0 * std::sin(d * 0.9 + i)});
        }
        const auto targets = m.series.front();
        m.series.front() = series(u"no3"_s, u"Nitrate"_s, u"mg/L"_s, 0, samples);
        m.series.front().forecast = targets.forecast;
        m.series.front().targetLow = targets.targetLow;
        m.series.front().targetHigh = targets.targetHigh;
        m.flooded = day(-days - 1);
        lanes.push_back(std::make_shared<const LaneModel>(m));
    }
    return lanes;
}

} // namespace littoral::ui::demo
