// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/lane_chips.h"

#include "core/wording/sentences.h"
#include "ui/theme/figures.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

namespace littoral::ui {

namespace {

using facade::LaneChip;

constexpr std::size_t kOverdueShown = 3;

QString timesText(std::size_t count)
{
    return QCoreApplication::translate("LaneChips", "×%1", "several chips of one kind of work folded into one")
        .arg(count);
}

QString countText(std::size_t count)
{
    return QCoreApplication::translate("LaneChips", "%1 due", "several chips folded into one").arg(count);
}

QString overText(std::size_t count)
{
    return QCoreApplication::translate("LaneChips", "%1 over", "overdue chips folded into one").arg(count);
}

QString moreText(std::size_t count)
{
    return QCoreApplication::translate("LaneChips", "+%1", "further overdue work, folded").arg(count);
}

QString todayText(const QString& work)
{
    return QCoreApplication::translate("LaneChips", "%1, today", "work on a chip").arg(work);
}

double textOnlyWidth(const LaneMetrics& metrics, const QString& text)
{
    return std::ceil(std::max(metrics.chipHeight, figuresWidth(metrics.chipStrong, text) + metrics.px(14)));
}

/// What one chip says: one piece of work, or all tests of a round of one day, since one bottle after the other is
/// opened anyway.
struct Unit
{
    std::vector<std::size_t> chips;
    QString full, brief;

    const QString& text(ChipForm form) const { return form == ChipForm::Full || brief.isEmpty() ? full : brief; }
};

/// Chips of one day in one row, which are laid out side by side or folded together.
struct Cluster
{
    std::vector<std::size_t> chips;
    double anchor = 0.0;
    bool today = false;
    bool merged = false; ///< of more than one day: only a number is honest
    ChipForm form = ChipForm::Full;
    std::size_t shown = 0; ///< units that are spelt out; the rest is "+n"
};

class Row final
{
public:
    Row(const std::vector<LaneChip>& chips, const LaneMetrics& metrics, double top)
        : m_chips(chips)
        , m_metrics(metrics)
        , m_top(top)
    {
    }

    /// Overdue chips, given most overdue first; returns the left edge of what was laid.
    void stackLeftwards(const std::vector<std::size_t>& order, double from, double limit,
                        std::vector<ChipBox>& out) const
    {
        const std::size_t shown = std::min(order.size(), kOverdueShown);
        for (const ChipForm form : {ChipForm::Full, ChipForm::Short}) {
            for (std::size_t count = shown; count >= 1; --count) {
                if (tryStack(order, count, form, from, limit, out)) {
                    return;
                }
                if (form == ChipForm::Full && count == 2) {
                    break; // two short chips say more than one long one
                }
            }
        }
        ChipBox box = folded(order, ChipForm::Count, overText(order.size()));
        box.rect.moveRight(from);
        box.overdue = true;
        out.push_back(box);
    }

    /// Clusters left to right; each keeps to its day as far as the next one lets it. The last ends at `edge`.
    void layForwards(std::vector<Cluster> clusters, double cursor, double edge, std::vector<ChipBox>& out) const
    {
        std::erase_if(clusters, [&](const Cluster& cluster) { return cluster.anchor > edge; });
        for (std::size_t i = 0; i < clusters.size();) {
            const double x = std::max(clusters[i].anchor, cursor);
            const bool last = i + 1 == clusters.size();
            // All but the last leave room for at least a glyph of it.
            const double limit =
                last ? edge
                     : std::min(clusters[i + 1].anchor + allowedShift(), edge - chipWidth(m_metrics, {})) -
                           m_metrics.gap;
            const bool fits = fit(clusters[i], x, limit);
            if (fits || last) {
                if (!fits && cursor + widthOf(clusters[i]) > edge) {
                    clusters[i].form = ChipForm::Glyph; // a word cut by the edge says less than none
                }
                const double reach = fits ? x : edge - widthOf(clusters[i]);
                cursor = place(clusters[i], std::max(cursor, reach), out);
                ++i;
                continue;
            }
            // Even the count is too wide for its day: count it together with the next day.
            Cluster& next = clusters[i + 1];
            next.chips.insert(next.chips.begin(), clusters[i].chips.begin(), clusters[i].chips.end());
            next.anchor = clusters[i].anchor;
            next.today = next.today || clusters[i].today;
            next.merged = true;
            ++i;
        }
    }

private:
    double allowedShift() const { return m_metrics.px(56); }

    ChipBox boxOf(const Unit& unit, ChipForm form) const
    {
        ChipBox box;
        box.form = form;
        box.chips = unit.chips;
        box.text = unit.text(form);
        box.withGlyph = true;
        box.overdue = m_chips[unit.chips.front()].overdue;
        box.today = m_chips[unit.chips.front()].today;
        box.rect = QRectF(0, m_top, chipWidth(m_metrics, box.text), m_metrics.chipHeight);
        return box;
    }

    ChipBox folded(const std::vector<std::size_t>& chips, ChipForm form, const QString& text) const
    {
        ChipBox box;
        box.form = form;
        box.chips = chips;
        box.text = text;
        box.rect = QRectF(0, m_top, textOnlyWidth(m_metrics, text), m_metrics.chipHeight);
        return box;
    }

    bool tryStack(const std::vector<std::size_t>& order, std::size_t shown, ChipForm form, double from, double limit,
                  std::vector<ChipBox>& out) const
    {
        std::vector<ChipBox> laid;
        double right = from;
        for (std::size_t i = 0; i < shown; ++i) {
            ChipBox box = boxOf(single(order[i]), form);
            box.rect.moveRight(right);
            box.anchor = right;
            right = box.rect.left() - m_metrics.gap;
            laid.push_back(box);
        }
        if (order.size() > shown) {
            const std::vector<std::size_t> rest(order.begin() + static_cast<std::ptrdiff_t>(shown), order.end());
            ChipBox box = folded(rest, ChipForm::More, moreText(rest.size()));
            box.rect.moveRight(right);
            box.anchor = right;
            box.overdue = true;
            laid.push_back(box);
        }
        if (laid.back().rect.left() < limit) {
            return false;
        }
        out.insert(out.end(), laid.begin(), laid.end());
        return true;
    }

    /// The number, with its glyph when all of the cluster is one kind of work.
    ChipBox counted(const Cluster& cluster) const
    {
        const std::size_t count = cluster.chips.size();
        const auto glyph = m_chips[cluster.chips.front()].glyph;
        const bool alike = std::ranges::all_of(cluster.chips, [&](std::size_t c) { return m_chips[c].glyph == glyph; });
        ChipBox box = folded(cluster.chips, ChipForm::Count, alike ? timesText(count) : countText(count));
        box.withGlyph = alike;
        if (alike) {
            box.rect.setWidth(chipWidth(m_metrics, box.text));
        }
        return box;
    }

    Unit single(std::size_t chip) const { return {{chip}, m_chips[chip].text, m_chips[chip].shortText}; }

    Unit testRound(const std::vector<std::size_t>& tests, bool today) const
    {
        care::DueItem all = m_chips[tests.front()].item;
        for (std::size_t i = 1; i < tests.size(); ++i) {
            all.parameters += m_chips[tests[i]].item.parameters;
        }
        all.parameters.removeDuplicates();
        const QString text = wording::dueChip(all);
        return {tests, today ? todayText(text) : text, timesText(tests.size())};
    }

    std::vector<Unit> unitsOf(const Cluster& cluster) const
    {
        std::vector<std::size_t> tests;
        std::ranges::copy_if(cluster.chips, std::back_inserter(tests),
                             [&](std::size_t c) { return m_chips[c].glyph == facade::Glyph::Test; });
        std::vector<Unit> units;
        bool tested = false;
        for (const std::size_t chip : cluster.chips) {
            if (m_chips[chip].glyph != facade::Glyph::Test || tests.size() < 2) {
                units.push_back(single(chip));
            } else if (!std::exchange(tested, true)) {
                units.push_back(testRound(tests, cluster.today));
            }
        }
        return units;
    }

    double widthOf(const Cluster& cluster) const
    {
        const std::vector<Unit> units = unitsOf(cluster);
        if (cluster.form == ChipForm::Count) {
            return counted(cluster).rect.width();
        }
        if (cluster.form == ChipForm::Glyph) {
            return chipWidth(m_metrics, {});
        }
        double width = -m_metrics.gap;
        for (std::size_t i = 0; i < cluster.shown; ++i) {
            width += chipWidth(m_metrics, units[i].text(cluster.form)) + m_metrics.gap;
        }
        const std::size_t rest = units.size() - cluster.shown;
        return width + (rest == 0 ? 0.0 : textOnlyWidth(m_metrics, moreText(rest)) + m_metrics.gap);
    }

    /// The fullest form that ends before `limit`; false leaves the narrowest one.
    bool fit(Cluster& cluster, double x, double limit) const
    {
        const std::size_t units = unitsOf(cluster).size();
        const auto fits = [&](ChipForm form, std::size_t shown) {
            cluster.form = form;
            cluster.shown = shown;
            return x + widthOf(cluster) <= limit;
        };
        if (!cluster.merged) {
            if (fits(ChipForm::Full, units) || fits(ChipForm::Short, units)) {
                return true;
            }
            for (std::size_t shown = units - 1; shown > 0; --shown) {
                if (fits(ChipForm::Short, shown)) {
                    return true;
                }
            }
        }
        return fits(cluster.chips.size() > 1 ? ChipForm::Count : ChipForm::Glyph, 0);
    }

    double place(const Cluster& cluster, double x, std::vector<ChipBox>& out) const
    {
        const auto put = [&](ChipBox box) {
            box.rect.moveLeft(x);
            box.anchor = cluster.anchor;
            x = box.rect.right() + m_metrics.gap;
            out.push_back(std::move(box));
        };
        const std::vector<Unit> units = unitsOf(cluster);
        if (cluster.form == ChipForm::Count) {
            ChipBox box = counted(cluster);
            box.today = cluster.today;
            put(box);
            return x;
        }
        if (cluster.form == ChipForm::Glyph) {
            put(boxOf({cluster.chips, {}, {}}, ChipForm::Glyph));
            return x;
        }
        for (std::size_t i = 0; i < cluster.shown; ++i) {
            put(boxOf(units[i], cluster.form));
        }
        if (cluster.shown < units.size()) {
            std::vector<std::size_t> rest;
            for (std::size_t i = cluster.shown; i < units.size(); ++i) {
                rest.insert(rest.end(), units[i].chips.begin(), units[i].chips.end());
            }
            ChipBox box = folded(rest, ChipForm::More, moreText(units.size() - cluster.shown));
            box.today = cluster.today;
            put(box);
        }
        return x;
    }

    const std::vector<LaneChip>& m_chips;
    const LaneMetrics& m_metrics;
    double m_top;
};

bool onFirstRow(const LaneChip& chip)
{
    return chip.glyph == facade::Glyph::WaterChange;
}

std::vector<std::size_t> overdueOrder(const std::vector<LaneChip>& chips, const std::vector<std::size_t>& mine)
{
    std::vector<std::size_t> order;
    std::ranges::copy_if(mine, std::back_inserter(order), [&](std::size_t i) { return chips[i].overdue; });
    std::ranges::stable_sort(order,
                             [&](std::size_t a, std::size_t b) { return chips[a].daysOver > chips[b].daysOver; });
    return order;
}

std::vector<Cluster> clustersOf(const std::vector<LaneChip>& chips, const std::vector<std::size_t>& mine,
                                const AxisView& axis, qint64 flooded, double nowX)
{
    std::vector<std::size_t> later;
    std::ranges::copy_if(mine, std::back_inserter(later), [&](std::size_t i) { return !chips[i].overdue; });
    std::ranges::stable_sort(later, [&](std::size_t a, std::size_t b) { return chips[a].at < chips[b].at; });
    std::vector<Cluster> clusters;
    qint64 day = 0;
    for (const std::size_t i : later) {
        const LaneChip& chip = chips[i];
        // What is due today or within its grace begins at the now-line.
        const bool atNow = chip.today || chip.at <= axis.now;
        const double x = atNow ? nowX + 4.0 : std::max(nowX + 4.0, axis.x(chip.at, flooded));
        const bool joins =
            !clusters.empty() && (atNow ? clusters.back().today : !clusters.back().today && chip.at == day);
        if (joins) {
            clusters.back().chips.push_back(i);
        } else {
            clusters.push_back({{i}, std::round(x), atNow, false, ChipForm::Full, 0});
        }
        day = chip.at;
    }
    return clusters;
}

} // namespace

double chipWidth(const LaneMetrics& metrics, const QString& text)
{
    const double label = text.isEmpty() ? 0.0 : figuresWidth(metrics.chipStrong, text) + metrics.px(4);
    return std::ceil(metrics.px(6) + metrics.glyph + label + metrics.px(7));
}

std::vector<ChipBox> layOutChips(const std::vector<LaneChip>& chips, const AxisView& axis, qint64 flooded,
                                 const ChipRoom& room, const LaneMetrics& metrics)
{
    std::vector<ChipBox> boxes;
    const bool two = room.rowTops.size() > 1;
    std::vector<std::size_t> all(chips.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    // Overdue work is one queue: it stands in the first row whatever it is.
    const Row first(chips, metrics, room.rowTops.front());
    const std::vector<std::size_t> over = overdueOrder(chips, all);
    const double nowX = std::round(room.nowX);
    if (!over.empty() && nowX - 4.0 > room.left) {
        first.stackLeftwards(over, nowX - 4.0, room.left, boxes);
    }
    for (std::size_t row = 0; row < room.rowTops.size(); ++row) {
        std::vector<std::size_t> mine;
        std::ranges::copy_if(all, std::back_inserter(mine),
                             [&](std::size_t i) { return !two || onFirstRow(chips[i]) == (row == 0); });
        Row(chips, metrics, room.rowTops[row])
            .layForwards(clustersOf(chips, mine, axis, flooded, nowX), nowX + 4.0, room.right, boxes);
    }
    std::erase_if(boxes,
                  [&](const ChipBox& box) { return box.rect.right() < room.left || box.rect.left() > room.right; });
    return boxes;
}

} // namespace littoral::ui
