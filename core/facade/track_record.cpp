// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/track_record.h"

#include "core/care/gates.h"
#include "core/facade/case_kits.h"
#include "core/facade/gate_dates.h"
#include "core/forecast/milestones.h"
#include "core/forecast/observation.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>
#include <cmath>
#include <limits>

namespace littoral::facade {

using namespace Qt::StringLiterals;

namespace {

constexpr double kScoredDays = 28.0;
constexpr int kReadingsForWidening = 30;
constexpr double kMostWidening = 2.5;
/// Clear readings must have gone on this long before a date counts as come about.
constexpr double kClearFor_d = 7.0;
constexpr int kClearReadings = 2;
/// A colour at the 0.25 step is not clear in whichever unit the card prints it.
constexpr double kBelowStep = 0.8;

/// Shares of probability that the seven quantiles stand for: half-way to their neighbours, the ends to 0 and 1.
constexpr std::array<double, 7> kShares{0.0625, 0.1125, 0.2, 0.25, 0.2, 0.1125, 0.0625};

struct Series
{
    double unitsPerMgN = 1.0;
    std::vector<forecast::Band> bands; ///< one per kept day
};

/// A kept forecast read back.
struct Kept
{
    record::Moment flooded;
    record::Moment asOf;
    std::vector<double> days;
    std::map<QString, Series> series;
    forecast::Band complete{};
    std::map<QString, forecast::Band> gates; ///< by key
};

forecast::Band bandFrom(const QJsonArray& array)
{
    forecast::Band band{};
    for (std::size_t i = 0; i < band.size(); ++i) {
        const QJsonValue value = array.at(static_cast<qsizetype>(i));
        band[i] = value.isDouble() ? value.toDouble() : std::numeric_limits<double>::infinity();
    }
    return band;
}

/// Nothing for a body that is not of a version known here.
std::optional<Kept> readBack(const record::IssuedForecast& issued)
{
    const QJsonObject body = QJsonDocument::fromJson(issued.body).object();
    if (body.value(u"version"_s).toInt() != 1) {
        return std::nullopt;
    }
    Kept kept;
    kept.flooded = record::Moment::fromIso(body.value(u"flooded"_s).toString());
    kept.asOf = issued.asOf;
    const QJsonArray days = body.value(u"days"_s).toArray();
    for (const QJsonValue& day : days) {
        kept.days.push_back(day.toDouble());
    }
    const QJsonArray all = body.value(u"series"_s).toArray();
    for (const QJsonValue& value : all) {
        const QJsonObject object = value.toObject();
        Series series;
        series.unitsPerMgN = object.value(u"units_per_mgn"_s).toDouble(1.0);
        const QJsonArray bands = object.value(u"bands"_s).toArray();
        for (const QJsonValue& band : bands) {
            series.bands.push_back(bandFrom(band.toArray()));
        }
        if (series.bands.size() == kept.days.size() && series.unitsPerMgN > 0.0) {
            kept.series[object.value(u"parameter"_s).toString()] = std::move(series);
        }
    }
    kept.complete = bandFrom(body.value(u"complete"_s).toObject().value(u"days"_s).toArray());
    const QJsonArray gates = body.value(u"gates"_s).toArray();
    for (const QJsonValue& value : gates) {
        const QJsonObject gate = value.toObject();
        kept.gates[gate.value(u"gate"_s).toString()] = bandFrom(gate.value(u"days"_s).toArray());
    }
    return kept.flooded.isValid() && !kept.days.empty() ? std::optional(kept) : std::nullopt;
}

/// The band at any day between the first and the last kept.
std::optional<forecast::Band> bandAt(const Kept& kept, const Series& series, double day)
{
    const auto after = std::ranges::lower_bound(kept.days, day);
    if (after == kept.days.end() || (after == kept.days.begin() && *after > day)) {
        return std::nullopt;
    }
    const auto i = static_cast<std::size_t>(after - kept.days.begin());
    if (i == 0 || *after == day) {
        return series.bands[i];
    }
    const double share = (day - kept.days[i - 1]) / (kept.days[i] - kept.days[i - 1]);
    forecast::Band band{};
    for (std::size_t q = 0; q < band.size(); ++q) {
        band[q] = (1.0 - share) * series.bands[i - 1][q] + share * series.bands[i][q];
    }
    return band;
}

/// Does a step of the card belong to what was read?
bool covers(const forecast::CaseReading& reading, double step)
{
    if (reading.below) {
        return step < reading.high;
    }
    if (std::isinf(reading.high)) {
        return step > reading.low;
    }
    return step >= reading.low && step <= reading.high;
}

/// First and last step of the card that a reading stands for: those it covers, else the nearest.
std::pair<std::size_t, std::size_t> stepsOf(const forecast::Kit& kit, const forecast::CaseReading& reading)
{
    constexpr double kRounding = 1e-6; // of values that went through the canonical unit and back
    forecast::CaseReading wide = reading;
    wide.low = reading.low * (1.0 - kRounding);
    if (!reading.below) {
        wide.high = reading.high * (1.0 + kRounding);
    }
    std::optional<std::pair<std::size_t, std::size_t>> found;
    for (std::size_t k = 0; k < kit.steps.size(); ++k) {
        if (covers(wide, kit.steps[k])) {
            found = {found ? found->first : k, k};
        }
    }
    if (found) {
        return *found;
    }
    const double value = reading.below ? 0.0 : reading.low;
    const auto nearest = std::ranges::min_element(kit.steps, {}, [&](double step) { return std::fabs(step - value); });
    const auto k = static_cast<std::size_t>(nearest - kit.steps.begin());
    return {k, k};
}

/// Predictive probability below the reading, half of its own step counted. `band` in the kit's unit.
double midProbability(const forecast::Kit& kit, const forecast::CaseReading& reading, const forecast::Band& band)
{
    double probability = 0.0;
    if (kit.steps.size() < 2) {
        const forecast::ReadingModel model(kit, reading);
        for (std::size_t q = 0; q < band.size(); ++q) {
            const auto tails = model.tails(band[q]);
            probability += kShares[q] * 0.5 * (tails.atMost + 1.0 - tails.atLeast);
        }
        return probability;
    }
    const forecast::CardOdds card(kit);
    const auto [first, last] = stepsOf(kit, reading);
    std::vector<double> odds(card.count());
    for (std::size_t q = 0; q < band.size(); ++q) {
        card(band[q], odds);
        for (std::size_t k = 0; k <= last; ++k) {
            probability += kShares[q] * (k < first ? 1.0 : 0.5) * odds[k];
        }
    }
    return probability;
}

void count(HeldBands& held, double probability)
{
    const double off = std::fabs(probability - 0.5);
    ++held.readings;
    held.inside50 += off <= 0.25 ? 1 : 0;
    held.inside80 += off <= 0.40 ? 1 : 0;
    held.inside95 += off <= 0.475 ? 1 : 0;
    held.pit.push_back(probability);
}

/// The kit's first step above zero; that of the common card for digital kits. Kit unit.
double firstStep(const forecast::Kit& kit)
{
    if (kit.steps.size() >= 2) {
        return kit.steps[1];
    }
    switch (kit.substance) {
    case forecast::Substance::Nitrite:
        return 0.25 / 3.28454 * kit.unitsPerMgN;
    case forecast::Substance::Nitrate:
        return 5.0 / 4.42680 * kit.unitsPerMgN;
    default:
        return 0.25 / 1.21588 * kit.unitsPerMgN;
    }
}

double scaledDistance(double a, double b, double c0)
{
    return std::fabs(std::log1p(a / c0) - std::log1p(b / c0));
}

class Scorer final
{
public:
    Scorer(const record::Row& row, TrackRecord& out)
        : m_row(row)
        , m_out(out)
    {
    }

    void score(const record::LayoutRecord& layout, const Kept& kept)
    {
        for (const record::Reading& reading : layout.readings) {
            const auto series = kept.series.find(reading.parameter);
            const double ahead = record::daysBetween(kept.asOf, reading.at);
            if (series == kept.series.end() || ahead <= 0.0 || ahead > kScoredDays) {
                continue;
            }
            if (auto band = bandAt(kept, series->second, record::daysBetween(kept.flooded, reading.at))) {
                scoreReading(layout, reading, kept.asOf, *band, series->second.unitsPerMgN);
            }
        }
    }

private:
    void scoreReading(const record::LayoutRecord& layout, const record::Reading& reading, const record::Moment& asOf,
                      forecast::Band band, double bandUnits)
    {
        const forecast::Kit kit = likelihoodKit(kitOf(m_row, reading));
        for (double& quantile : band) {
            quantile *= kit.unitsPerMgN / bandUnits;
        }
        const double probability = midProbability(kit, likelihoodReading(reading, kit), band);
        const record::Reading* before = layout.newest(reading.parameter, asOf);
        const double c0 = firstStep(kit);
        for (HeldBands* held : {&m_out.all, &m_out.layouts[layout.layout.id], &m_out.parameters[reading.parameter]}) {
            count(*held, probability);
            if (before != nullptr) {
                const double truth = reading.value * kit.unitsPerMgN;
                ++held->compared;
                held->error += scaledDistance(band[3], truth, c0);
                held->persistence += scaledDistance(before->value * kit.unitsPerMgN, truth, c0);
            }
        }
    }

    const record::Row& m_row;
    TrackRecord& m_out;
};

/// When readings of one parameter became clear for good.
struct Clearing
{
    std::optional<record::Moment> at; ///< halfway between the last that was not clear and the first that was
    bool settled = false;             ///< clear for long enough, or never anything else
};

Clearing clearingOf(const record::Row& row, const record::LayoutRecord& layout, const QString& parameter, double limit)
{
    Clearing clearing;
    const record::Reading* before = nullptr;
    const record::Reading* first = nullptr;
    int clear = 0;
    const std::vector<const record::Reading*> readings = layout.readingsOf(parameter);
    for (const record::Reading* reading : readings) {
        const bool digital = kitOf(row, *reading).steps.size() < 2;
        if (reading->value < (digital ? 1.0 : kBelowStep) * limit && reading->censoring != record::Censoring::Above) {
            first = first == nullptr ? reading : first;
            ++clear;
        } else {
            before = reading;
            first = nullptr;
            clear = 0;
        }
    }
    if (first == nullptr || clear < kClearReadings ||
        record::daysBetween(first->at, readings.back()->at) < kClearFor_d) {
        return clearing;
    }
    clearing.settled = true;
    if (before != nullptr) {
        clearing.at = before->at.plusDays(0.5 * record::daysBetween(before->at, first->at));
    }
    return clearing;
}

/// When the cycle was complete as the readings tell; nothing when it is not, or was so from the first reading on.
std::optional<record::Moment> completedAt(const record::Row& row, const record::LayoutRecord& layout)
{
    const Clearing ammonia = clearingOf(row, layout, u"tan"_s, forecast::kClearAmmonia_mgN_per_L);
    const Clearing nitrite = clearingOf(row, layout, u"no2"_s, forecast::kClearNitrite_mgN_per_L);
    if (!ammonia.settled || !nitrite.settled || (!ammonia.at && !nitrite.at)) {
        return std::nullopt;
    }
    if (!ammonia.at || !nitrite.at) {
        return ammonia.at ? ammonia.at : nitrite.at;
    }
    return std::max(*ammonia.at, *nitrite.at);
}

void scoreDate(HeldDates& dates, const Kept& kept, const forecast::Band& said, const record::Moment& truth)
{
    if (kept.asOf >= truth) {
        return; // it had come about by then
    }
    const double day = record::daysBetween(kept.flooded, truth);
    ++dates.closed;
    dates.inside80 += day >= said[1] && day <= said[5] ? 1 : 0;
    if (std::isfinite(said[3])) {
        dates.errors_d.push_back(said[3] - day);
    }
}

/// What came about in one layout, worked out once for all its forecasts.
struct CameAbout
{
    std::optional<record::Moment> complete;
    std::map<QString, std::vector<GateOpening>> gates; ///< by key
};

CameAbout cameAbout(const record::Row& row, const record::LayoutRecord& layout)
{
    CameAbout truth;
    truth.complete = completedAt(row, layout);
    for (const forecast::GateRule& gate : care::gateRules(row, layout.layout.id)) {
        truth.gates[QString::fromStdString(gate.key)] = gateOpenings(layout, gate);
    }
    return truth;
}

void scoreDates(TrackRecord& record, const Kept& kept, const CameAbout& truth)
{
    if (truth.complete) {
        scoreDate(record.dates, kept, kept.complete, *truth.complete);
    }
    for (const auto& [key, openings] : truth.gates) {
        const auto said = kept.gates.find(key);
        const auto next = std::ranges::find_if(
            openings, [&](const GateOpening& opening) { return !opening.shut || *opening.shut > kept.asOf; });
        // A forecast made while the gate stood open had nothing to say about it.
        if (said != kept.gates.end() && next != openings.end() && next->opened > kept.asOf) {
            scoreDate(record.gates[key], kept, said->second, next->opened);
        }
    }
}

/// Inverse of the normal distribution's probability above one half, by halving.
double normalAt(double probability)
{
    double low = 0.0;
    double high = 6.0;
    for (int i = 0; i < 60; ++i) {
        const double middle = 0.5 * (low + high);
        (forecast::normalCdf(middle) < probability ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

/// How much wider the middle 80 % would have had to be to hold 80 % of the readings.
double wideningOf(const std::vector<double>& pit)
{
    if (pit.size() < static_cast<std::size_t>(kReadingsForWidening)) {
        return 1.0;
    }
    std::vector<double> off;
    for (const double p : pit) {
        off.push_back(std::min(std::fabs(p - 0.5), 0.4999));
    }
    const auto place = static_cast<std::ptrdiff_t>(std::ceil(0.8 * static_cast<double>(off.size()))) - 1;
    std::nth_element(off.begin(), off.begin() + place, off.end());
    return std::clamp(normalAt(0.5 + off[static_cast<std::size_t>(place)]) / normalAt(0.9), 1.0, kMostWidening);
}

} // namespace

TrackRecord trackRecord(const record::Row& row, const std::vector<record::IssuedForecast>& issued)
{
    TrackRecord record;
    Scorer scorer(row, record);
    std::map<record::LayoutId, CameAbout> truths;
    for (const record::IssuedForecast& one : issued) {
        const record::LayoutRecord* layout = row.layout(one.layout);
        const auto kept = layout == nullptr ? std::nullopt : readBack(one);
        if (!kept) {
            continue;
        }
        ++record.forecasts;
        scorer.score(*layout, *kept);
        auto truth = truths.find(one.layout);
        if (truth == truths.end()) {
            truth = truths.emplace(one.layout, cameAbout(row, *layout)).first;
        }
        scoreDates(record, *kept, truth->second);
    }
    record.inflation = wideningOf(record.all.pit);
    return record;
}

Result<TrackRecord> trackRecord(const record::Row& row, const store::Store& store)
{
    std::vector<record::IssuedForecast> all;
    for (const auto& [id, layout] : row.layouts) {
        auto issued = store.issuedForecasts(id);
        if (!issued) {
            return issued.error();
        }
        std::ranges::move(*issued, std::back_inserter(all));
    }
    return trackRecord(row, all);
}

} // namespace littoral::facade
