// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/line_labels.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace littoral::ui {

namespace {

constexpr double kSampleStep = 5.0; // px between the places a line is felt at
constexpr std::size_t kMostSamples = 600;
constexpr std::size_t kCandidates = 28; // along a line
constexpr double kOwnInk = 2.0;         // cost of a sample of its own line under the name
constexpr double kOtherInk = 5.0;
constexpr double kLeftwards = 6.0; // cost of the left end against the right end
constexpr double kTooMuch = 30.0;  // a name that covers so much is left out

/// Points along the line at even steps, so that a long straight piece counts as much as a crooked one.
std::vector<QPointF> samplesOf(const std::vector<QPointF>& points)
{
    std::vector<QPointF> samples;
    for (std::size_t i = 0; i < points.size() && samples.size() < kMostSamples; ++i) {
        samples.push_back(points[i]);
        if (i + 1 == points.size()) {
            break;
        }
        const QPointF step = points[i + 1] - points[i];
        const int parts = std::min(200, static_cast<int>(std::hypot(step.x(), step.y()) / kSampleStep));
        for (int part = 1; part < parts; ++part) {
            samples.push_back(points[i] + step * (static_cast<double>(part) / parts));
        }
    }
    return samples;
}

double inkUnder(const QRectF& box, const std::vector<QPointF>& samples)
{
    return static_cast<double>(std::ranges::count_if(samples, [&](const QPointF& at) { return box.contains(at); }));
}

} // namespace

std::vector<std::optional<QRectF>> placeLineLabels(const std::vector<NamedLine>& lines, const QRectF& plot, double gap)
{
    std::vector<std::vector<QPointF>> samples;
    for (const NamedLine& line : lines) {
        samples.push_back(samplesOf(line.points));
    }
    std::vector<std::optional<QRectF>> placed(lines.size());
    const auto cost = [&](const QRectF& box, std::size_t own) {
        double sum = kLeftwards * (1.0 - (box.center().x() - plot.left()) / std::max(1.0, plot.width()));
        for (std::size_t i = 0; i < lines.size(); ++i) {
            sum += inkUnder(box.adjusted(-1, 1, 1, -1), samples[i]) * (i == own ? kOwnInk : kOtherInk);
            if (placed[i] && placed[i]->adjusted(-4, -1, 4, 1).intersects(box)) {
                return std::numeric_limits<double>::infinity();
            }
        }
        return sum;
    };
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const auto& along = samples[i];
        double best = kTooMuch;
        const std::size_t step = std::max<std::size_t>(1, along.size() / kCandidates);
        for (std::size_t at = 0; at < along.size(); at += step) {
            const QSizeF& text = lines[i].text;
            const std::array offers{QPointF(-text.width() / 2, -gap - text.height()), QPointF(-text.width() / 2, gap),
                                    QPointF(gap + 2, -text.height() / 2)};
            for (const QPointF& offer : offers) {
                const QRectF box(along[at] + offer, text);
                if (!plot.contains(box)) {
                    continue;
                }
                if (const double price = cost(box, i); price < best) {
                    best = price;
                    placed[i] = box;
                }
            }
        }
    }
    return placed;
}

} // namespace littoral::ui
