// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/row.h"
#include "ui/paint/trend_layout.h"

#include <QJsonObject>
#include <optional>

namespace littoral::ui {

/// What the Trends page shows, as it is kept: under a name in the store, and nameless as the last choice of this
/// keeper.
struct KeptTrend
{
    QString name;
    std::vector<record::LayoutId> layouts; ///< in order; empty: the page chooses
    QStringList parameters;                ///< keys in order; empty: the page chooses
    TrendOptions options;
    AxisMode mode = AxisMode::Calendar;
    /// Range in days: from flooding in age mode, from now on the calendar, so that "the last four weeks" stay the last.
    double from_d = -28.0, to_d = 21.0;

    bool operator==(const KeptTrend&) const = default;
};

[[nodiscard]] QJsonObject toJson(const KeptTrend& trend);
/// nullopt for what is no view; unknown parameters are left out.
[[nodiscard]] std::optional<KeptTrend> trendFromJson(const QJsonObject& object);

/// Setting of the store that holds the named views.
inline constexpr char16_t kTrendViewsSetting[] = u"trends.views";
/// By name; layouts that are no longer there are left out.
[[nodiscard]] std::vector<KeptTrend> keptTrends(const record::Row& row);
/// The setting's text with `trend` in it, in place of one of the same name.
[[nodiscard]] QString withTrend(const record::Row& row, const KeptTrend& trend);
[[nodiscard]] QString withoutTrend(const record::Row& row, const QString& name);

/// What was on show last in the store at `path`; kept beside the window's own settings, not in the store.
[[nodiscard]] std::optional<KeptTrend> lastTrend(const QString& path);
void keepLastTrend(const QString& path, const KeptTrend& trend);

} // namespace littoral::ui
