// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/lanes.h"

#include "core/care/gates.h"
#include "core/care/limits.h"
#include "core/facade/lane_parts.h"
#include "core/wording/forecast_sentences.h"
#include "core/wording/measures.h"
#include "core/wording/numbers.h"
#include "core/wording/sentences.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>
#include <set>

namespace littoral::facade {

using namespace Qt::StringLiterals;

namespace {

// A tall lane while the weeks of the start matter; the plans of practice run to day 56, a week is added to see it out.
constexpr int kYoungUntilDay = 63;
constexpr std::size_t kPresentReadings = 3;
constexpr std::size_t kLow = 1;  // 0.1 of forecast::kQuantiles
constexpr std::size_t kHigh = 5; // 0.9
constexpr double kEightInTen = 0.8;

QString words(const char* text)
{
    return QCoreApplication::translate("Lane", text);
}

QString startText(const record::Layout& layout)
{
    constexpr std::array kStart{QT_TRANSLATE_NOOP("Lane", "new media"), QT_TRANSLATE_NOOP("Lane", "mature media"),
                                QT_TRANSLATE_NOOP("Lane", "bottled starter"), QT_TRANSLATE_NOOP("Lane", "dry start"),
                                QT_TRANSLATE_NOOP("Lane", "dark start")};
    constexpr std::array kBed{QT_TRANSLATE_NOOP("Lane", "ammonia-rich soil"), QT_TRANSLATE_NOOP("Lane", "mild soil"),
                              QT_TRANSLATE_NOOP("Lane", "spent soil"), QT_TRANSLATE_NOOP("Lane", "inert bed")};
    return words("%1, %2").arg(words(kStart[static_cast<std::size_t>(layout.start)]),
                               words(kBed[static_cast<std::size_t>(layout.bed)]));
}

/// Which rounds get a chip: every water change; the next of each other kind of work that a keeper plans a day around;
/// anything overdue. The daily looks would cover the rest.
class ChipPicker
{
public:
    [[nodiscard]] bool wants(const care::DueItem& item)
    {
        if (item.overdue || item.kind == care::WorkKind::WaterChange || item.kind == care::WorkKind::Own) {
            return true;
        }
        const bool matters = item.kind == care::WorkKind::Test || item.kind == care::WorkKind::Decide ||
                             item.kind == care::WorkKind::Dose ||
                             (item.kind == care::WorkKind::Upkeep && item.priority <= 2) || item.task ||
                             item.plannedEntry;
        return matters && m_seen.insert(item.templateKey).second;
    }

private:
    std::set<QString> m_seen;
};

struct LaneBuilder
{
    const record::Row& row;
    const record::LayoutRecord& layout;
    const record::Tank& tank;
    const record::Moment now;
    const QDate today;
    const std::vector<care::DueItem> due;
    const care::Standing standing;
    const ForecastResult* forecast;
    LaneModel lane{};

    void head()
    {
        const record::Layout& facts = layout.layout;
        lane.tank = tank.id;
        lane.layout = facts.id;
        lane.earlier = facts.ended.has_value();
        lane.name = lane.earlier ? words("%1, %2").arg(tank.name, record::layoutName(facts)) : tank.name;
        const auto volume = record::netVolume(tank, facts);
        const QString litres = volume ? wording::litresText(volume->litres) : words("litres not known");
        const QString age = lane.earlier ? words("earlier layout") : wording::ageText(standing.ageDays);
        lane.litresAndAge = words("%1 · %2").arg(litres, age);
        lane.young = !lane.earlier && standing.ageDays <= kYoungUntilDay;
        lane.length_cm = tank.length_cm;
        lane.depth_cm = tank.depth_cm;
        lane.height_cm = tank.height_cm;
        const double area = tank.length_cm * tank.depth_cm;
        lane.bedShare = area > 0.0 && tank.height_cm > 0.0 && facts.bed_L > 0.0
                            ? std::clamp(facts.bed_L * 1000.0 / area / tank.height_cm, 0.03, 0.4)
                            : 0.1;
        lane.flooded = facts.flooded.utcMs();
        if (facts.ended) {
            lane.ended = facts.ended->utcMs();
        }
        lane.floodedText = words("Flooded %1, %2")
                               .arg(wording::dateText(facts.flooded.localDate(), today),
                                    QLocale::c().toString(facts.flooded.toDateTime().time(), u"HH:mm"_s));
        lane.startText = startText(facts);
    }

    void sayings()
    {
        lane.status = standing.status;
        lane.statusWord = wording::statusWord(standing);
        lane.phaseLine = wording::phaseLine(standing);
        lane.lineStatus = standing.status;
        lane.statusLine = wording::statusLine(standing, today);
        lane.verdict = verdict();
        const auto change = std::ranges::find_if(
            due, [](const care::DueItem& item) { return item.kind == care::WorkKind::WaterChange && !item.overdue; });
        if (change != due.end()) {
            lane.nextLine = wording::nextLine(*change, today);
        }
        for (const record::Reading& reading : standing.newest) {
            if (lane.present.size() == kPresentReadings) {
                break;
            }
            lane.present.push_back(
                {reading.parameter, wording::parameterSymbol(reading.parameter), record::valueText(reading)});
        }
    }

    [[nodiscard]] bool cycleIsOpen() const
    {
        return forecast != nullptr && !forecast->inputs.request.tank.setup.established;
    }

    /// Whether the whole range of dates lies behind us.
    [[nodiscard]] bool cycleIsOver() const
    {
        return forecast->forecast.complete.day[kHigh] <= forecast->inputs.request.tank.decisionDay;
    }

    [[nodiscard]] QString verdict() const
    {
        if (lane.earlier) {
            return words("Ran %1").arg(
                wording::dateRangeText(layout.layout.flooded.localDate(), layout.layout.ended->localDate(), today));
        }
        const QString completion =
            cycleIsOpen() ? wording::completionText(forecast->forecast.complete, layout.layout.flooded, today)
                          : QString();
        if (cycleIsOpen() && !cycleIsOver()) {
            return completion;
        }
        // Once that is over, how the water stands against its target is the news.
        for (const QString& parameter : standing.chartParameters) {
            const record::Target* target = row.target(tank.id, parameter);
            const record::Reading* reading = layout.newest(parameter, now);
            if (target != nullptr && reading != nullptr) {
                return wording::againstTarget(*reading, *target);
            }
        }
        return completion;
    }

    void charts()
    {
        for (const QString& parameter : standing.chartParameters) {
            lane.series.push_back(seriesOf(row, layout, parameter, forecast));
        }
        lane.freeAmmonia = freeAmmoniaOf(forecast);
        lane.events = eventsOf(layout);
        for (const record::Entry& entry : layout.entries) {
            if (!entry.planned &&
                (entry.kind == record::EntryKind::WaterChange || entry.kind == record::EntryKind::Upkeep)) {
                lane.doneWork.push_back(entry.at.utcMs());
            }
        }
        for (const care::Alert& alert : standing.alerts) {
            lane.alerts.push_back({alert.level, alert.since.utcMs(), wording::alertText(alert, today)});
        }
    }

    void work()
    {
        ChipPicker picker;
        for (const care::DueItem& item : due) {
            lane.overdueCount += item.overdue ? 1 : 0;
            lane.dueTodayCount += item.due <= today && !item.overdue ? 1 : 0;
            lane.snoozedCount += item.snoozed ? 1 : 0;
            if (picker.wants(item)) {
                lane.chips.push_back(chip(item));
            }
        }
        std::ranges::stable_sort(lane.chips, [](const LaneChip& a, const LaneChip& b) {
            return std::tuple(!a.overdue, a.overdue ? -a.daysOver : 0, a.at) <
                   std::tuple(!b.overdue, b.overdue ? -b.daysOver : 0, b.at);
        });
    }

    [[nodiscard]] LaneChip chip(const care::DueItem& item) const
    {
        LaneChip made;
        made.item = item;
        made.glyph = glyphOf(item);
        made.at = QDateTime(item.due, QTime(12, 0), Qt::OffsetFromUTC, now.offsetSeconds()).toMSecsSinceEpoch();
        made.overdue = item.overdue;
        made.today = item.due <= today && !item.overdue;
        made.daysOver = item.daysOver;
        made.title = wording::dueTitle(item);
        made.shortText = wording::dueChip(item);
        made.why = wording::dueReasons(item, today).join(u' ');
        if (made.overdue) {
            made.text = words("%1, %2 d over").arg(made.title).arg(made.daysOver);
        } else {
            made.text = made.today ? words("%1, today").arg(made.shortText) : made.shortText;
        }
        return made;
    }

    void addGate(const QString& what, const forecast::DateOdds& odds)
    {
        const double from = odds.day[kLow];
        const double decided = forecast->inputs.request.tank.decisionDay;
        if (!std::isfinite(from) || odds.day[kHigh] <= decided) {
            return; // nothing to bracket: not in sight, or already there
        }
        const bool closed = std::isfinite(odds.day[kHigh]);
        const double to = closed ? odds.day[kHigh] : odds.lastDay;
        const record::Moment& flooded = layout.layout.flooded;
        lane.gates.push_back({flooded.plusDays(std::max(from, decided)).utcMs(), flooded.plusDays(to).utcMs(),
                              wording::bracketText(what, closed ? kEightInTen : 1.0 - odds.notByLast),
                              wording::openingText(what, odds, flooded, today)});
    }

    void gates()
    {
        if (!cycleIsOpen()) {
            return;
        }
        addGate(words("Cycle complete"), forecast->forecast.complete);
        if (!lane.gates.empty()) {
            return; // one bracket at a time: the next gate follows the cycle
        }
        const std::vector<care::GateState> states = care::gateStates(row, layout.layout.id, now);
        for (std::size_t i = 0; i < states.size() && i < forecast->forecast.gates.size(); ++i) {
            if (states[i].state() != care::Known::Met) {
                addGate(wording::gateTitle(states[i]), forecast->forecast.gates[i]);
                return;
            }
        }
    }

    void phases()
    {
        const record::Moment until = layout.layout.ended.value_or(now);
        for (const care::CyclePhaseSpan& span : care::cyclePhases(layout, until, care::limitsOf(row))) {
            lane.phases.push_back({span.from.utcMs(), span.to.utcMs(), wording::cyclePhaseName(span.phase), false});
        }
        if (!cycleIsOpen()) {
            return;
        }
        const double middle = forecast->forecast.complete.day[3];
        const double decided = forecast->inputs.request.tank.decisionDay;
        const record::Moment& flooded = layout.layout.flooded;
        const qint64 end =
            flooded.plusDays(forecast->forecast.days.empty() ? decided : forecast->forecast.days.back()).utcMs();
        const qint64 turn =
            std::isfinite(middle) ? std::clamp(flooded.plusDays(middle).utcMs(), now.utcMs(), end) : end;
        if (turn > now.utcMs()) {
            lane.phases.push_back({now.utcMs(), turn, words("cycling, forecast"), true});
        }
        if (end > turn) {
            lane.phases.push_back({turn, end, words("complete, forecast"), true});
        }
    }

    [[nodiscard]] QString forecastTime() const
    {
        return wording::dateTimeText(forecast->inputs.asOf.toDateTime(), today);
    }

    void forecastNote(ForecastState state)
    {
        lane.forecastState = lane.earlier ? ForecastState::NotForecast : state;
        if (forecast != nullptr && !forecast->forecast.diagnostics.fitted) {
            lane.forecastState = ForecastState::NotFitted;
            lane.forecastNote =
                words("Not fitted: the readings contradict the model, so the wide range without them is shown.");
        } else if (state == ForecastState::Stale && forecast != nullptr) {
            lane.forecastNote = words("Forecast of %1").arg(forecastTime());
        } else if (state == ForecastState::Running) {
            lane.forecastNote = forecast != nullptr ? words("Forecast of %1, a new one is running").arg(forecastTime())
                                                    : words("The first forecast is running");
        }
    }
};

} // namespace

LaneModel laneOf(const record::Row& row, record::LayoutId id, const record::Moment& now, const QDate& until,
                 const ForecastResult* forecast, ForecastState state, const std::optional<care::DueItem>& question)
{
    const record::LayoutRecord* layout = row.layout(id);
    const record::Tank* tank = layout == nullptr ? nullptr : row.tank(layout->layout.tank);
    if (tank == nullptr) {
        return {};
    }
    std::vector<care::DueItem> due = care::dueWork(row, id, now, until);
    care::Standing standing = care::standing(row, id, now, due);
    if (question) {
        due.push_back(*question);
    }
    LaneBuilder builder{row, *layout, *tank, now, now.localDate(), std::move(due), std::move(standing), forecast};
    builder.head();
    builder.sayings();
    builder.charts();
    builder.work();
    builder.gates();
    builder.phases();
    builder.forecastNote(state);
    return std::move(builder.lane);
}

} // namespace littoral::facade
