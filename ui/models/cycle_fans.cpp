// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/limits.h"
#include "core/care/water_state.h"
#include "core/facade/lane_parts.h"
#include "core/wording/forecast_sentences.h"
#include "core/wording/measures.h"
#include "core/wording/numbers.h"
#include "ui/models/cycle_parts.h"
#include "ui/paint/time_ticks.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>
#include <set>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

// Places of forecast::kQuantiles used for the bands.
enum Quantile : std::size_t { k10 = 1, k25 = 2, k50 = 3, k75 = 4, k90 = 5 };
constexpr double kHoursPerDay = 24.0;
constexpr double kEightInTen = 0.8;

QString words(const char* text)
{
    return QCoreApplication::translate("Cycle", text);
}

QString limitNumber(double value)
{
    return wording::numberText(value, value < 0.0095 ? 3 : value < 1.0 ? 2 : 1);
}

struct FanBuilder
{
    const cycle::Frame& frame;
    FanStackModel& fans;
    std::set<qint64> flagged{};

    [[nodiscard]] const facade::ForecastResult* result() const { return frame.result(); }
    [[nodiscard]] const forecast::Forecast* preview() const
    {
        return frame.asked.chosen && frame.asked.preview != nullptr ? &frame.asked.preview->forecast : nullptr;
    }

    [[nodiscard]] std::vector<LaneBand> bands(const std::vector<double>& days,
                                              const std::vector<forecast::Band>& values, double factor) const
    {
        std::vector<LaneBand> made;
        for (std::size_t i = 0; i < values.size() && i < days.size(); ++i) {
            const forecast::Band& b = values[i];
            made.push_back({frame.flooded().plusDays(days[i]).utcMs(), b[k10] * factor, b[k25] * factor,
                            b[k50] * factor, b[k75] * factor, b[k90] * factor});
        }
        return made;
    }

    FanSeries series(const QString& parameter, forecast::Substance substance, double factor) const
    {
        FanSeries made;
        made.parameter = parameter;
        if (result() != nullptr) {
            const auto& part = result()->forecast.substances[static_cast<std::size_t>(substance)];
            made.future = bands(result()->forecast.days, part.water, factor);
            made.fitted = bands(result()->forecast.pastDays, part.fitted, factor);
        }
        if (preview() != nullptr) {
            const auto& part = preview()->substances[static_cast<std::size_t>(substance)];
            made.preview = bands(preview()->days, part.water, factor);
        }
        return made;
    }

    /// Half a step of the kit to either neighbour, in the shown unit.
    void addStep(FanReading& made, const record::Reading& reading, const record::LayoutRecord& layout,
                 const record::Parameter& parameter) const
    {
        made.low = made.high = made.value;
        const record::TestKit* kit = frame.asked.row.kit(reading.kit);
        if (kit == nullptr) {
            kit = frame.asked.row.kitFor(layout, reading.parameter);
        }
        const record::Unit* unit = kit == nullptr ? nullptr : parameter.unit(kit->unit);
        if (unit == nullptr || kit->steps.size() < 2) {
            return;
        }
        const auto shown = [&](double inKit) { return parameter.shown().fromCanonical(unit->toCanonical(inKit)); };
        if (reading.censoring == record::Censoring::Between || reading.censoring == record::Censoring::Below) {
            made.low = parameter.shown().fromCanonical(reading.low);
            made.high = parameter.shown().fromCanonical(reading.high);
            return;
        }
        const double value = unit->fromCanonical(reading.value);
        const auto at = std::ranges::min_element(kit->steps, {}, [&](double s) { return std::abs(s - value); });
        const double below = at == kit->steps.begin() ? *at : (*(at - 1) + *at) / 2.0;
        const double above = at + 1 == kit->steps.end() ? *at + (*at - below) : (*at + *(at + 1)) / 2.0;
        made.low = shown(below);
        made.high = shown(above);
    }

    [[nodiscard]] std::vector<FanReading> readings(const record::LayoutRecord& layout,
                                                   const record::Parameter& parameter) const
    {
        std::vector<FanReading> made;
        const facade::LaneSeries lane = facade::seriesOf(frame.asked.row, layout, parameter.key, nullptr);
        const std::vector<const record::Reading*> all = layout.readingsOf(parameter.key);
        for (std::size_t i = 0; i < lane.marks.size() && i < all.size(); ++i) {
            const facade::LaneMark& mark = lane.marks[i];
            FanReading reading{mark.at,
                               mark.value,
                               mark.value,
                               mark.value,
                               mark.censoring,
                               mark.reading,
                               flagged.contains(mark.reading.value),
                               mark.sentence};
            addStep(reading, *all[i], layout, parameter);
            if (reading.atOdds) {
                reading.sentence = words("%1. At odds with the other readings.").arg(reading.sentence);
            }
            made.push_back(std::move(reading));
        }
        return made;
    }

    /// An earlier layout's readings, moved so that equal ages stand over each other.
    [[nodiscard]] std::vector<FanReading> referenceOf(const record::LayoutRecord* earlier,
                                                      const record::Parameter& parameter) const
    {
        if (earlier == nullptr || !frame.asked.withReference) {
            return {};
        }
        std::vector<FanReading> made = readings(*earlier, parameter);
        const qint64 shift = frame.flooded().utcMs() - earlier->layout.flooded.utcMs();
        for (FanReading& reading : made) {
            reading.at += shift;
        }
        return made;
    }

    void addSubstance(const QString& key, forecast::Substance substance, double share,
                      const std::optional<double>& limit_mgN, const record::LayoutRecord* earlier)
    {
        const record::Parameter* parameter = record::findParameter(key);
        FanPanel panel;
        panel.parameter = key;
        panel.title = parameter->name;
        panel.unit = parameter->shown().label;
        panel.decimals = parameter->decimals;
        panel.share = share;
        panel.series.push_back(series(key, substance, parameter->shown().fromCanonical(1.0)));
        panel.readings = readings(frame.layout, *parameter);
        panel.reference = referenceOf(earlier, *parameter);
        if (limit_mgN) {
            const double shown = parameter->shown().fromCanonical(*limit_mgN);
            panel.limits.push_back({shown, words("clear ≤ %1").arg(limitNumber(shown))});
        }
        fans.panels.push_back(std::move(panel));
    }

    void addFreeAmmonia()
    {
        FanPanel panel;
        panel.parameter = u"nh3"_s;
        panel.title = words("Free ammonia");
        panel.unit = words("%1, reckoned from pH and temperature").arg(wording::freeAmmoniaUnit());
        panel.decimals = 3;
        panel.share = 0.75;
        panel.series.push_back(series(u"nh3"_s, forecast::Substance::FreeAmmonia, 1.0));
        for (const record::Reading* reading : frame.layout.readingsOf(u"tan"_s)) {
            if (const auto free = care::freeAmmoniaOf(frame.layout, *reading)) {
                panel.readings.push_back(
                    {reading->at.utcMs(),
                     free->mgN_per_L,
                     free->mgN_per_L,
                     free->mgN_per_L,
                     record::Censoring::None,
                     {},
                     false,
                     words("Free ammonia %1, reckoned for %2")
                         .arg(wording::valueWithUnit(u"nh3"_s, free->mgN_per_L),
                              wording::dateTimeText(reading->at.toDateTime(), reading->at.localDate()))});
            }
        }
        const double caution = care::limitsOf(frame.asked.row).freeAmmoniaAnimals;
        panel.limits.push_back({caution, words("caution %1").arg(wording::numberText(caution, 2))});
        fans.panels.push_back(std::move(panel));
    }

    void addCapacity()
    {
        FanPanel panel;
        panel.parameter = u"tan"_s;
        panel.title = words("Filter capacity");
        panel.decimals = 1;
        panel.share = 0.95;
        // Without the litres of the tank there is no total; a litre of water is what is left to speak of.
        const bool whole = frame.net_L > 0.0;
        const double factor = (whole ? frame.net_L : 1000.0) / kHoursPerDay;
        panel.unit = whole ? words("mg N an hour it could oxidise at the clear limit")
                           : words("µg N an hour and litre it could oxidise at the clear limit");
        const std::array labels{words("ammonia oxidisers"), words("nitrite oxidisers")};
        const std::array hues{u"tan"_s, u"no2"_s};
        for (std::size_t guild = 0; guild < 2 && result() != nullptr; ++guild) {
            FanSeries made;
            made.parameter = hues[guild];
            made.label = labels[guild];
            made.future = bands(result()->forecast.days, result()->forecast.capacity[guild].future, factor);
            made.fitted = bands(result()->forecast.pastDays, result()->forecast.capacity[guild].fitted, factor);
            if (preview() != nullptr) {
                made.preview = bands(preview()->days, preview()->capacity[guild].future, factor);
            }
            panel.series.push_back(std::move(made));
        }
        const double load = result() == nullptr ? 0.0 : result()->inputs.request.load_mgN_per_L_d * factor;
        if (load > 0.0) {
            panel.limits.push_back({load, words("load of the planned stock %1").arg(wording::numberText(load, 1))});
        }
        fans.panels.push_back(std::move(panel));
    }

    void addBracket()
    {
        const forecast::DateOdds* odds = frame.focusOdds();
        if (odds == nullptr || fans.panels.size() < 2) {
            return;
        }
        const double decided = result()->inputs.request.tank.decisionDay;
        const double from = odds->day[k10];
        if (!std::isfinite(from) || odds->day[k90] <= decided) {
            return;
        }
        const bool closed = std::isfinite(odds->day[k90]);
        const double to = closed ? odds->day[k90] : odds->lastDay;
        fans.panels[1].bracket =
            FanBracket{frame.flooded().plusDays(std::max(from, decided)).utcMs(), frame.flooded().plusDays(to).utcMs(),
                       wording::bracketText(frame.focusTitle(), closed ? kEightInTen : 1.0 - odds->notByLast)};
    }

    void addChange(std::vector<FanChange>& to, const record::Moment& at, double fraction, bool planned) const
    {
        const QString day = wording::dateText(at.localDate(), frame.today);
        to.push_back({at.utcMs(), fraction, planned,
                      planned ? words("Water change %1 planned for %2").arg(wording::percentText(fraction), day)
                              : words("Water change %1 on %2").arg(wording::percentText(fraction), day)});
    }

    void addChanges()
    {
        for (const record::Entry& entry : frame.layout.entries) {
            if (entry.kind == record::EntryKind::WaterChange && !entry.planned && entry.fraction &&
                entry.at <= frame.asked.now) {
                addChange(fans.changes, entry.at, *entry.fraction, false);
            }
        }
        if (result() == nullptr) {
            return;
        }
        const auto& tank = result()->inputs.request.tank;
        for (const forecast::Event& event : tank.events) {
            if (event.kind == forecast::EventKind::WaterChange && event.day > tank.decisionDay) {
                addChange(fans.changes, frame.flooded().plusDays(event.day), event.amount, true);
            }
        }
        if (preview() != nullptr) {
            const double last = preview()->days.empty() ? tank.decisionDay : preview()->days.back();
            for (const forecast::Event& event : forecast::changesOf(frame.asked.preview->plan, tank, last)) {
                addChange(fans.previewChanges, frame.flooded().plusDays(event.day), event.amount, true);
            }
        }
    }
};

const record::LayoutRecord* earlierLayout(const cycle::Frame& frame)
{
    const record::LayoutRecord* best = nullptr;
    for (const record::LayoutRecord* other : frame.asked.row.layoutsOf(frame.tank.id)) {
        if (other->layout.id != frame.layout.layout.id && other->layout.flooded < frame.flooded()) {
            best = other;
        }
    }
    return best;
}

} // namespace

void cycle::addFans(CycleModel& model, const Frame& frame)
{
    model.fans.flooded = frame.flooded().utcMs();
    FanBuilder builder{frame, model.fans};
    if (frame.result() != nullptr) {
        for (const forecast::FlaggedReading& flagged : frame.result()->forecast.diagnostics.flagged) {
            builder.flagged.insert(flagged.tag);
        }
    }
    const forecast::GateRule* rule = frame.rule();
    const auto limit = [&](double forecast::GateRule::*which) {
        return rule != nullptr && std::isfinite(rule->*which) ? std::optional(rule->*which) : std::nullopt;
    };
    const record::LayoutRecord* earlier = earlierLayout(frame);
    if (earlier != nullptr) {
        model.referenceName = words("%1 at the same age").arg(record::layoutName(earlier->layout));
        model.referenceName.front() = model.referenceName.front().toUpper();
    }
    builder.addSubstance(u"tan"_s, forecast::Substance::TotalAmmonia, 1.15, limit(&forecast::GateRule::total_mgN_per_L),
                         earlier);
    builder.addSubstance(u"no2"_s, forecast::Substance::Nitrite, 1.4, limit(&forecast::GateRule::nitrite_mgN_per_L),
                         earlier);
    builder.addSubstance(u"no3"_s, forecast::Substance::Nitrate, 0.85, std::nullopt, earlier);
    builder.addFreeAmmonia();
    builder.addCapacity();
    builder.addBracket();
    builder.addChanges();
}

PlainTable fanTable(const FanStackModel& model, const QTimeZone& zone, qint64 now)
{
    PlainTable table;
    table.caption = words("Cycle day by day: middle value and 8-in-10 range, with what was read");
    table.header << words("Day") << words("Date");
    qint64 last = now;
    for (const FanPanel& panel : model.panels) {
        for (const FanSeries& series : panel.series) {
            const QString name = series.label.isEmpty() ? panel.title : series.label;
            table.header << words("%1, %2").arg(name, panel.unit.section(u' ', 0, 1)) << words("8 in 10");
            last = series.future.empty() ? last : std::max(last, series.future.back().at);
        }
        if (!panel.readings.empty()) {
            table.header << words("%1 read").arg(panel.title);
        }
    }
    table.header << words("Water change");
    const auto dayOf = [&](qint64 at) { return QDateTime::fromMSecsSinceEpoch(at, zone).date(); };
    const QDate first = dayOf(model.flooded);
    const QDate today = dayOf(now);
    for (QDate day = first; day <= dayOf(last); day = day.addDays(1)) {
        // The middle of what is known of a day: noon, and for the day of flooding the flooding.
        const qint64 at = day == today ? now : startOfDay(day, zone) + kDayMs / 2;
        QStringList row{QString::number(first.daysTo(day)), wording::dateText(day, today)};
        for (const FanPanel& panel : model.panels) {
            for (const FanSeries& series : panel.series) {
                const auto& future = series.preview.empty() ? series.future : series.preview;
                const LaneBand* band = day < today ? nullptr : bandAt(future, at);
                const LaneBand* past = band == nullptr ? bandAt(series.fitted, at) : nullptr;
                const auto number = [&](double value) { return wording::numberText(value, panel.decimals); };
                row << (band != nullptr ? number(band->q50) : past != nullptr ? number(past->q50) : QString());
                row << (band != nullptr ? words("%1–%2").arg(number(band->q10), number(band->q90)) : QString());
            }
            if (!panel.readings.empty()) {
                QStringList read;
                for (const FanReading& reading : panel.readings) {
                    if (dayOf(reading.at) == day) {
                        const QString value = wording::numberText(reading.value, panel.decimals);
                        read << (reading.censoring == record::Censoring::Below ? words("<%1").arg(value) : value);
                    }
                }
                row << read.join(u"; "_s);
            }
        }
        QStringList changes;
        const bool looked = !model.previewText.isEmpty();
        for (const auto* list : {&model.changes, &model.previewChanges}) {
            for (const FanChange& change : *list) {
                const bool counts = list == &model.previewChanges ? looked : !(change.planned && looked);
                if (counts && dayOf(change.at) == day) {
                    changes << (change.planned ? words("%1 planned").arg(wording::percentText(change.fraction))
                                               : wording::percentText(change.fraction));
                }
            }
        }
        row << changes.join(u"; "_s);
        if (day == today) {
            table.currentRow = static_cast<int>(table.rows.size());
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

} // namespace littoral::ui
