// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/reset_fans.h"

#include "core/wording/numbers.h"

#include <QCoreApplication>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

// Places of forecast::kQuantiles used for the bands.
enum Quantile : std::size_t { k10 = 1, k25 = 2, k50 = 3, k75 = 4, k90 = 5 };

QString words(const char* text)
{
    return QCoreApplication::translate("Reset", text);
}

std::vector<LaneBand> bandsOf(const facade::ResetForecast& made, const facade::ResetWay& way, std::size_t substance,
                              const record::Unit& unit)
{
    std::vector<LaneBand> bands;
    const auto& values = way.bands[substance];
    for (std::size_t i = 0; i < values.size() && i < way.days.size(); ++i) {
        const auto at = [&](Quantile place) { return unit.fromCanonical(values[i][place]); };
        bands.push_back({made.now.plusDays(way.days[i]).utcMs(), at(k10), at(k25), at(k50), at(k75), at(k90)});
    }
    return bands;
}

} // namespace

FanStackModel resetFans(const facade::ResetForecast& made)
{
    FanStackModel fans;
    fans.flooded = made.now.utcMs();
    fans.previewText = words("a fresh start");
    fans.futureText = words("carrying on");
    const std::array keys{u"tan"_s, u"no2"_s};
    for (std::size_t i = 0; i < keys.size(); ++i) {
        const record::Parameter* parameter = record::findParameter(keys[i]);
        FanPanel panel;
        panel.parameter = keys[i];
        panel.title = parameter->name;
        panel.unit = parameter->shown().label;
        panel.decimals = 2;
        FanSeries series;
        series.parameter = keys[i];
        series.future = bandsOf(made, made.keep, i, parameter->shown());
        series.preview = bandsOf(made, made.fresh, i, parameter->shown());
        panel.series.push_back(std::move(series));
        fans.panels.push_back(std::move(panel));
    }
    return fans;
}

qint64 resetEnd(const facade::ResetForecast& made)
{
    return made.now.plusDays(facade::kResetWindow_d).utcMs();
}

} // namespace littoral::ui
