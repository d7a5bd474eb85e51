// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/stock_model.h"

#include "core/care/age.h"
#include "core/care/limits.h"
#include "core/care/stock.h"
#include "core/care/water_state.h"
#include "core/facade/stock_parts.h"
#include "core/record/shown.h"

#include <QRegularExpression>
#include <algorithm>
#include <array>

namespace littoral::facade {

using namespace Qt::StringLiterals;
using record::Entry;
using record::EntryKind;

namespace {

struct Scale
{
    const char* parameter;
    double from;
    double to;
};
// Wide enough for what the species listed bear; one scale for all rows, so that they can be compared.
constexpr Scale kScales[]{{"ph", 4.0, 9.0},  {"gh", 0.0, 24.0},  {"kh", 0.0, 20.0}, {"temp", 16.0, 32.0},
                          {"tan", 0.0, 0.6}, {"nh3", 0.0, 0.05}, {"no2", 0.0, 1.0}, {"no3", 0.0, 60.0}};

double shown(const QString& parameter, double canonical)
{
    const record::Parameter* known = record::findParameter(parameter);
    return known == nullptr ? canonical : known->shown().fromCanonical(canonical);
}

/// From the unit that scales and species are written in (degrees, mg/L of the ion) to the one on show.
double fromUsual(const QString& parameter, double value)
{
    const record::Parameter* known = record::findParameter(parameter);
    return known == nullptr ? value
                            : known->shown().fromCanonical(record::inUsualUnits(*known).shown().toCanonical(value));
}

std::optional<forecast::Substance> substanceOf(const QString& parameter)
{
    return parameter == u"tan"_s   ? std::optional(forecast::Substance::TotalAmmonia)
           : parameter == u"nh3"_s ? std::optional(forecast::Substance::FreeAmmonia)
           : parameter == u"no2"_s ? std::optional(forecast::Substance::Nitrite)
           : parameter == u"no3"_s ? std::optional(forecast::Substance::Nitrate)
                                   : std::nullopt;
}

StockRange widened(const std::optional<StockRange>& range, double low, double high)
{
    return range ? StockRange{std::min(range->low, low), std::max(range->high, high)} : StockRange{low, high};
}

/// The least and the most of the 8-in-10 band over the coming fortnight.
std::optional<StockRange> aheadOf(const QString& parameter, forecast::Substance substance, const ForecastResult& result)
{
    const double now = result.inputs.request.tank.decisionDay;
    const auto& bands = result.forecast.substances[static_cast<std::size_t>(substance)].water;
    std::optional<StockRange> range;
    for (std::size_t i = 0; i < bands.size() && i < result.forecast.days.size(); ++i) {
        if (result.forecast.days[i] > now + kStockWaterDays) {
            break;
        }
        range = widened(range, shown(parameter, bands[i][1]), shown(parameter, bands[i][5]));
    }
    return range;
}

StockColumn column(const Scale& scale, const record::LayoutRecord& layout, const record::Moment& now,
                   const ForecastResult* result)
{
    StockColumn made;
    made.parameter = QString::fromLatin1(scale.parameter);
    made.from = fromUsual(made.parameter, scale.from);
    made.to = fromUsual(made.parameter, scale.to);
    // Free ammonia is reckoned from each reading of total ammonia with a pH near it.
    const bool free = made.parameter == u"nh3"_s;
    for (const record::Reading* reading : layout.readingsOf(free ? u"tan"_s : made.parameter)) {
        if (reading->at > now || record::daysBetween(reading->at, now) > kStockWaterDays) {
            continue;
        }
        const auto reckoned = free ? care::freeAmmoniaOf(layout, *reading) : std::nullopt;
        if (free && !reckoned) {
            continue;
        }
        const double value = free ? reckoned->mgN_per_L : shown(made.parameter, reading->value);
        made.water = widened(made.water, value, value);
        made.newest = value;
        ++made.readings;
    }
    const auto substance = substanceOf(made.parameter);
    made.isForecast = substance.has_value();
    if (substance && result != nullptr) {
        made.ahead = aheadOf(made.parameter, *substance, *result);
    }
    return made;
}

/// By species where one has its own range, else by the limits for all animals.
StockRange borne(const facts::Species& species, const QString& parameter, const AnimalLimits& limits)
{
    const auto of = [&](const facts::Span& span) {
        return StockRange{fromUsual(parameter, span.low), fromUsual(parameter, span.high)};
    };
    const auto upTo = [&](double limit) { return StockRange{0.0, shown(parameter, limit)}; };
    return parameter == u"ph"_s     ? of(species.ph)
           : parameter == u"gh"_s   ? of(species.gh_deg)
           : parameter == u"kh"_s   ? of(species.kh_deg)
           : parameter == u"temp"_s ? of(species.temperature_C)
           : parameter == u"tan"_s  ? upTo(limits.ammonia)
           : parameter == u"nh3"_s  ? upTo(limits.free)
           : parameter == u"no2"_s  ? upTo(limits.nitrite)
                                    : upTo(limits.nitrate);
}

StockCell cell(const facts::Species& species, const StockColumn& column, const AnimalLimits& limits)
{
    StockCell made;
    made.borne = borne(species, column.parameter, limits);
    const auto inside = [&](double value) {
        return value >= made.borne->low - 1e-9 && value <= made.borne->high + 1e-9;
    };
    if (column.water && column.newest) {
        const bool all = inside(column.water->low) && inside(column.water->high);
        made.suits = !inside(*column.newest) ? Suits::No : all ? Suits::Yes : Suits::Partly;
    }
    made.aheadLeaves = column.ahead && !inside(column.ahead->high);
    return made;
}

class Animals
{
public:
    Animals(StockModel& model, const record::LayoutRecord& layout, const AnimalLimits& limits,
            const record::Moment& now, const facts::FactBook& book)
        : m_model(model)
        , m_layout(layout)
        , m_limits(limits)
        , m_now(now)
        , m_book(book)
    {
    }

    void add(const std::optional<StockWish>& wish)
    {
        for (const Entry& entry : m_layout.entries) {
            if (!care::isAboutPlants(entry)) {
                take(entry);
            }
        }
        std::erase_if(m_model.animals,
                      [](const AnimalRow& row) { return row.count <= 0 && row.place == StockPlace::Here; });
        std::ranges::stable_sort(m_model.animals, {}, &AnimalRow::place);
        if (const facts::Species* wished = wish ? m_book.speciesById(wish->species) : nullptr) {
            AnimalRow row;
            row.place = StockPlace::Considered;
            row.subject = wished->name;
            row.count = wish->count;
            m_model.animals.push_back(std::move(row));
        }
        for (AnimalRow& row : m_model.animals) {
            compare(row);
        }
    }

private:
    void take(const Entry& entry)
    {
        const int count = std::max(0, entry.count.value_or(1));
        if (entry.kind == EntryKind::Addition && entry.planned) {
            AnimalRow row;
            row.place = StockPlace::Planned;
            row.subject = entry.subject;
            row.count = count;
            row.since = entry.at;
            row.entry = entry.id;
            m_model.animals.push_back(std::move(row));
        } else if (entry.at <= m_now && !entry.planned && entry.kind == EntryKind::Addition) {
            AnimalRow& row = living(entry.subject);
            row.count += count;
            row.since = row.since.isValid() ? row.since : entry.at;
            row.entry = entry.id;
        } else if (entry.at <= m_now && !entry.planned && entry.kind == EntryKind::Loss) {
            AnimalRow& row = living(entry.subject);
            row.count -= count;
            row.lost += count;
        }
    }

    AnimalRow& living(const QString& subject)
    {
        for (AnimalRow& row : m_model.animals) {
            if (row.place == StockPlace::Here && row.subject.compare(subject, Qt::CaseInsensitive) == 0) {
                return row;
            }
        }
        AnimalRow row;
        row.subject = subject;
        m_model.animals.push_back(std::move(row));
        return m_model.animals.back();
    }

    void compare(AnimalRow& row) const
    {
        const facts::Species* species = speciesNamed(m_book, row.subject);
        if (species == nullptr) {
            row.cells.resize(m_model.columns.size());
            return;
        }
        row.species = *species;
        for (const StockColumn& column : m_model.columns) {
            row.cells.push_back(cell(*species, column, m_limits));
        }
        const auto gate = std::ranges::find(m_model.gates, species->gate, &care::GateState::key);
        row.gate = gate == m_model.gates.end() ? care::Known::Unknown : gate->state();
    }

    StockModel& m_model;
    const record::LayoutRecord& m_layout;
    const AnimalLimits m_limits;
    const record::Moment& m_now;
    const facts::FactBook& m_book;
};

Status statusOf(const AnimalRow& row)
{
    if (!row.species) {
        return Status::Unknown;
    }
    const bool serious = !row.concerns.empty() && row.concerns.front().serious;
    const auto any = [&](Suits suits) { return std::ranges::count(row.cells, suits, &StockCell::suits) > 0; };
    if (any(Suits::No)) {
        return Status::Act;
    }
    if (row.place != StockPlace::Here && row.gate == care::Known::Unmet) {
        return Status::Waiting;
    }
    if (serious || any(Suits::Partly) || std::ranges::any_of(row.cells, &StockCell::aheadLeaves)) {
        return Status::Watch;
    }
    if (row.place != StockPlace::Here && row.gate == care::Known::Unknown) {
        return Status::Unknown;
    }
    const auto unknown = std::ranges::count(row.cells, Suits::Unknown, &StockCell::suits);
    return unknown == static_cast<std::ptrdiff_t>(row.cells.size()) ? Status::Unknown : Status::Ok;
}

void addGiven(StockModel& model, const record::LayoutRecord& layout, const record::Moment& now)
{
    if (layout.layout.lightPar > 0.0) {
        model.par = layout.layout.lightPar;
    }
    if (layout.layout.lightHours > 0.0) {
        model.lightHours = layout.layout.lightHours;
    }
    if (layout.layout.co2 == record::Co2Mode::Pressurised) {
        model.co2_mg_per_L = layout.layout.co2Target_mg_per_L;
    }
    for (const Entry& entry : layout.entries) {
        if (entry.planned || entry.at > now) {
            continue;
        }
        if (entry.kind == EntryKind::LightChange) {
            model.lightHours = entry.amount ? entry.amount : model.lightHours;
            model.par = entry.second ? entry.second : model.par;
        } else if (entry.kind == EntryKind::Co2Change && entry.amount) {
            model.co2_mg_per_L = entry.amount;
        }
    }
    const record::Reading* read = layout.newest(u"co2"_s, now);
    if (read != nullptr && record::daysBetween(read->at, now) <= kStockWaterDays) {
        model.co2_mg_per_L = read->value;
    }
}

QStringList wordsOf(const QString& text)
{
    static const QRegularExpression between(u"[^\\p{L}\\p{N}]+"_s);
    QStringList words = text.toCaseFolded().split(between, Qt::SkipEmptyParts);
    for (QString& word : words) {
        // "tetras" and "tetra" are the same animal.
        if (word.size() > 3 && word.endsWith(u's')) {
            word.chop(1);
        }
    }
    return words;
}

/// Level of `value` among steps that end at these edges, 0..4.
double level(double value, const std::array<double, 4>& edges)
{
    double below = 0.0;
    for (std::size_t i = 0; i < edges.size(); ++i) {
        if (value <= edges[i]) {
            return static_cast<double>(i) + std::max(0.0, value - below) / (edges[i] - below);
        }
        below = edges[i];
    }
    return static_cast<double>(edges.size());
}

} // namespace

bool AnimalRow::waterSuits() const
{
    return std::ranges::none_of(cells, [](const StockCell& one) { return one.suits == Suits::No; });
}

std::optional<double> StockModel::lightSum() const
{
    return par && lightHours ? std::optional(*par * *lightHours * 0.0036) : std::nullopt;
}

int StockModel::animalCount() const
{
    int count = 0;
    for (const AnimalRow& row : animals) {
        count += row.place == StockPlace::Here ? row.count : 0;
    }
    return count;
}

double lightLevel(double mol_per_m2_d)
{
    return level(mol_per_m2_d, {2.5, 4.0, 6.0, 9.0});
}

double co2Level(double mg_per_L)
{
    return level(mg_per_L, {5.0, 15.0, 30.0, 45.0});
}

const facts::Species* speciesNamed(const facts::FactBook& book, const QString& subject)
{
    const QStringList wanted = wordsOf(subject);
    if (wanted.isEmpty()) {
        return nullptr;
    }
    const facts::Species* found = nullptr;
    int holding = 0;
    for (const facts::Species& species : book.species) {
        const QStringList name = wordsOf(species.name);
        if (species.id == subject || wordsOf(species.scientific) == wanted || name == wanted) {
            return &species;
        }
        if (std::ranges::all_of(wanted, [&](const QString& word) { return name.contains(word); })) {
            found = &species;
            ++holding;
        }
    }
    return holding == 1 ? found : nullptr;
}

AnimalLimits animalLimits(const record::Row& row, const record::LayoutRecord& layout, const record::Moment& at)
{
    const care::Limits limits = care::limitsOf(row);
    const bool poor = care::isPoorInChloride(row, layout, at);
    return {limits.ammoniaClear, poor ? limits.nitriteAnimalsPoorChloride : limits.nitriteAnimals,
            limits.freeAmmoniaAnimals, limits.nitrateAnimals};
}

StockModel stockOf(const record::Row& row, record::LayoutId id, const record::Moment& now, const facts::FactBook& book,
                   const ForecastResult* forecast, const std::optional<StockWish>& wish)
{
    StockModel model;
    const record::LayoutRecord* layout = row.layout(id);
    const record::Tank* tank = layout == nullptr ? nullptr : row.tank(layout->layout.tank);
    if (tank == nullptr) {
        return model;
    }
    model.tank = tank->id;
    model.layout = id;
    model.name = tank->name;
    model.glass_L = record::glassVolume_L(*tank);
    const auto net = record::netVolume(*tank, layout->layout);
    model.net_L = net ? net->litres : 0.0;
    model.ageDays = care::ageDays(layout->layout, now.localDate());
    model.running = layout->layout.flooded <= now && !layout->layout.ended;
    model.gates = care::gateStates(row, id, now);
    for (const Scale& scale : kScales) {
        model.columns.push_back(column(scale, *layout, now, forecast));
    }
    addGiven(model, *layout, now);
    Animals(model, *layout, animalLimits(row, *layout, now), now, book).add(wish);
    addConcerns(model, *layout, now);
    for (AnimalRow& animal : model.animals) {
        animal.status = statusOf(animal);
    }
    addPlants(model, *layout, now, book);
    addMoves(model, row, now);
    addClock(model, *layout, now);
    return model;
}

} // namespace littoral::facade
