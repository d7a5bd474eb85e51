// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/supplies.h"

#include "core/water/gas_supply.h"

#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace littoral::care {

using namespace Qt::StringLiterals;
using record::Entry;
using record::EntryKind;

namespace {

// Judgement: enough to order something and have it come.
constexpr int kLeadDays = 7;
constexpr int kDateLeadDays = 14;
// The present use: long enough for a dose once a week, short enough to follow a change of habit (judgement).
constexpr double kUseWindowDays = 28.0;
constexpr double kShortestUseDays = 3.0;
constexpr double kLongestDaysLeft = 3650.0; // further off than that is no date

struct UnitScale
{
    const char* code;
    char measure; ///< 'm' mass, 'v' volume
    double factor;
};
constexpr std::array kScales{UnitScale{"mg", 'm', 0.001}, UnitScale{"g", 'm', 1.0}, UnitScale{"kg", 'm', 1000.0},
                             UnitScale{"ml", 'v', 1.0}, UnitScale{"l", 'v', 1000.0}};

const UnitScale* scaleOf(const QString& unit)
{
    const QString plain = unit.trimmed().toLower();
    const auto found =
        std::ranges::find_if(kScales, [&](const UnitScale& scale) { return plain == QLatin1String(scale.code); });
    return found == kScales.end() ? nullptr : &*found;
}

bool isSame(const QString& a, const QString& b)
{
    return a.trimmed().compare(b.trimmed(), Qt::CaseInsensitive) == 0;
}

/// One use of a supply, in its own unit.
struct Used
{
    record::Moment at;
    double amount = 0.0;
};

/// Goes through the record for whatever used a supply up since it was opened.
class Counter final
{
public:
    Counter(const record::Row& row, const record::Supply& supply, const SupplyUse& use, const record::Moment& now)
        : m_row(row)
        , m_supply(supply)
        , m_use(use)
        , m_now(now)
    {
    }

    void count(SupplyStanding& standing)
    {
        for (const auto& [id, layout] : m_row.layouts) {
            for (const Entry& entry : layout.entries) {
                if (!entry.planned && counts(entry.at)) {
                    countEntry(entry, layout, standing);
                }
            }
            if (m_supply.kind == u"kit"_s) {
                countTests(layout, standing);
            }
        }
    }

    [[nodiscard]] double total() const
    {
        double sum = 0.0;
        for (const Used& used : m_used) {
            sum += used.amount;
        }
        return sum;
    }

    /// Of the last four weeks, or since it was opened where that is less; nothing before three days.
    [[nodiscard]] std::optional<double> perDay() const
    {
        const record::Moment opened = record::Moment::fromLocal(m_supply.opened, QTime(0, 0));
        const double days = std::min(kUseWindowDays, record::daysBetween(opened, m_now));
        if (days < kShortestUseDays) {
            return std::nullopt;
        }
        double sum = 0.0;
        for (const Used& used : m_used) {
            sum += record::daysBetween(used.at, m_now) <= days ? used.amount : 0.0;
        }
        return sum > 0.0 ? std::optional(sum / days) : std::nullopt;
    }

private:
    [[nodiscard]] bool counts(const record::Moment& at) const
    {
        return at <= m_now && at.localDate() >= m_supply.opened;
    }

    void countEntry(const Entry& entry, const record::LayoutRecord& layout, SupplyStanding& standing)
    {
        if (entry.kind == EntryKind::Dose && isSame(entry.subject, m_supply.name) && entry.amount) {
            const auto amount = inUnit(*entry.amount, entry.unit, m_supply.unit);
            if (amount) {
                m_used.push_back({entry.at, *amount});
            }
            ++(amount ? standing.doses : standing.uncounted);
        }
        if (entry.kind == EntryKind::WaterChange && entry.fraction && m_use.perLitre && isFrom(entry, layout)) {
            const record::Tank* tank = m_row.tank(layout.layout.tank);
            const auto net = tank == nullptr ? std::nullopt : record::netVolume(*tank, layout.layout);
            if (net) {
                m_used.push_back({entry.at, *m_use.perLitre * *entry.fraction * net->litres});
                ++standing.changes;
            }
        }
    }

    [[nodiscard]] bool isFrom(const Entry& entry, const record::LayoutRecord& layout) const
    {
        return !m_use.source || (entry.source ? entry.source : layout.layout.source) == m_use.source;
    }

    /// A kit counted in tests: each reading made with the kit of that name is one.
    void countTests(const record::LayoutRecord& layout, SupplyStanding& standing)
    {
        for (const record::Reading& reading : layout.readings) {
            const record::TestKit* kit = m_row.kit(reading.kit);
            if (kit != nullptr && isSame(kit->name, m_supply.name) && counts(reading.at)) {
                m_used.push_back({reading.at, 1.0});
                ++standing.doses;
            }
        }
    }

    const record::Row& m_row;
    const record::Supply& m_supply;
    const SupplyUse& m_use;
    const record::Moment& m_now;
    std::vector<Used> m_used;
};

void setDaysLeft(SupplyStanding& standing, const record::Moment& now)
{
    if (!standing.remaining || !standing.perDay) {
        return;
    }
    const auto left = water::daysLeft(*standing.remaining, *standing.perDay);
    if (left && *left <= kLongestDaysLeft) {
        standing.daysLeft = *left;
        standing.runsOut = now.localDate().addDays(static_cast<qint64>(std::floor(*left)));
    }
}

/// Weighings of the tank's cylinder since this one was put on, oldest first.
std::vector<const record::Reading*> weighingsOf(const record::Row& row, const record::Supply& supply,
                                                const SupplyUse& use, const record::Moment& now)
{
    std::vector<const record::Reading*> found;
    for (const record::LayoutRecord* layout : row.layoutsOf(use.tank)) {
        for (const record::Reading* reading : layout->readingsOf(u"cylinder"_s)) {
            if (reading->at <= now && (!supply.opened.isValid() || reading->at.localDate() >= supply.opened)) {
                found.push_back(reading);
            }
        }
    }
    std::ranges::stable_sort(found, {}, [](const record::Reading* reading) { return reading->at.utcMs(); });
    return found;
}

void weigh(const record::Row& row, const record::Supply& supply, const SupplyUse& use, const record::Moment& now,
           SupplyStanding& standing)
{
    const std::vector<const record::Reading*> weighings = weighingsOf(row, supply, use, now);
    if (weighings.empty() || !use.empty_g) {
        return;
    }
    const record::Reading& last = *weighings.back();
    standing.basis = SupplyBasis::Weighings;
    standing.unit = u"g"_s;
    standing.stated = supply.amount ? inUnit(*supply.amount, supply.unit, u"g"_s) : std::nullopt;
    standing.weighings = static_cast<int>(weighings.size());
    standing.remaining = std::max(0.0, last.value - *use.empty_g);
    const auto first = std::ranges::find_if(weighings, [&](const record::Reading* reading) {
        return record::daysBetween(reading->at, last.at) <= kUseWindowDays;
    });
    standing.since = (*first)->at.localDate();
    const double days = record::daysBetween((*first)->at, last.at);
    if (const auto used = water::weighedUse_g_per_d((*first)->value, last.value, days)) {
        standing.perDay = *used;
        // What went out since the last weighing is gone, too.
        standing.remaining = std::max(0.0, *standing.remaining - *used * record::daysBetween(last.at, now));
    }
}

} // namespace

QString supplyUseKey(record::SupplyId supply)
{
    return u"supply.use.%1"_s.arg(supply.value);
}

SupplyUse supplyUse(const record::Row& row, record::SupplyId supply)
{
    const QJsonObject kept = QJsonDocument::fromJson(row.settings.value(supplyUseKey(supply)).toUtf8()).object();
    const auto positive = [&](const QString& key) {
        const double value = kept[key].toDouble();
        return value > 0.0 ? std::optional(value) : std::nullopt;
    };
    SupplyUse use;
    use.perLitre = positive(u"per_litre"_s);
    use.empty_g = positive(u"empty_g"_s);
    use.source.value = kept[u"source"_s].toInteger();
    use.tank.value = kept[u"tank"_s].toInteger();
    return use;
}

QString supplyUseText(const SupplyUse& use)
{
    QJsonObject kept;
    if (use.perLitre) {
        kept.insert(u"per_litre"_s, *use.perLitre);
    }
    if (use.empty_g) {
        kept.insert(u"empty_g"_s, *use.empty_g);
    }
    if (use.source) {
        kept.insert(u"source"_s, use.source.value);
    }
    if (use.tank) {
        kept.insert(u"tank"_s, use.tank.value);
    }
    return kept.isEmpty() ? QString() : QString::fromUtf8(QJsonDocument(kept).toJson(QJsonDocument::Compact));
}

const std::vector<QString>& supplyKinds()
{
    static const std::vector<QString> kinds{u"conditioner"_s, u"salt"_s, u"starter"_s, u"fertiliser"_s,
                                            u"kit"_s,         u"co2"_s,  u"other"_s};
    return kinds;
}

std::optional<double> inUnit(double amount, const QString& from, const QString& to)
{
    if (isSame(from, to)) {
        return amount;
    }
    const UnitScale* a = scaleOf(from);
    const UnitScale* b = scaleOf(to);
    if (a == nullptr || b == nullptr || a->measure != b->measure) {
        return std::nullopt;
    }
    return amount * a->factor / b->factor;
}

QDate SupplyStanding::wanted() const
{
    const QDate byAmount = runsOut.isValid() ? runsOut.addDays(-kLeadDays) : QDate();
    const QDate byDate = expires.isValid() ? expires.addDays(-kDateLeadDays) : QDate();
    return byAmount.isValid() && byDate.isValid() ? std::min(byAmount, byDate) : byAmount.isValid() ? byAmount : byDate;
}

bool SupplyStanding::wantedByDate() const
{
    return expires.isValid() && wanted() == expires.addDays(-kDateLeadDays);
}

QString SupplyStanding::key() const
{
    return supply ? u"supply.%1"_s.arg(supply.value) : u"kit.%1"_s.arg(kit.value);
}

SupplyStanding standingOf(const record::Row& row, const record::Supply& supply, const record::Moment& now)
{
    SupplyStanding standing;
    standing.supply = supply.id;
    standing.name = supply.name;
    standing.kind = supply.kind;
    standing.unit = supply.unit;
    standing.stated = standing.remaining = supply.amount;
    standing.since = supply.opened;
    standing.expires = supply.expires;
    const SupplyUse use = supplyUse(row, supply.id);
    if (use.tank) {
        weigh(row, supply, use, now, standing);
    }
    if (standing.basis != SupplyBasis::Weighings && supply.amount && supply.opened.isValid()) {
        Counter counter(row, supply, use, now);
        counter.count(standing);
        if (standing.doses + standing.changes > 0) {
            standing.basis = SupplyBasis::Doses;
            standing.remaining = std::max(0.0, *supply.amount - counter.total());
            standing.perDay = counter.perDay();
        }
    }
    setDaysLeft(standing, now);
    return standing;
}

std::vector<SupplyStanding> supplyStandings(const record::Row& row, const record::Moment& now)
{
    std::vector<SupplyStanding> all;
    for (const record::Supply& supply : row.supplies) {
        all.push_back(standingOf(row, supply, now));
    }
    for (const record::TestKit& kit : row.kits) {
        if (!kit.retired && kit.expires.isValid()) {
            SupplyStanding standing;
            standing.kit = kit.id;
            standing.name = kit.name;
            standing.kind = u"kit"_s;
            standing.basis = SupplyBasis::Date;
            standing.expires = kit.expires;
            all.push_back(std::move(standing));
        }
    }
    std::ranges::stable_sort(all, [](const SupplyStanding& a, const SupplyStanding& b) {
        const auto rank = [](const SupplyStanding& s) {
            return std::pair(s.wanted().isValid() ? s.wanted().toJulianDay() : std::numeric_limits<qint64>::max(),
                             s.name.toCaseFolded());
        };
        return rank(a) < rank(b);
    });
    return all;
}

} // namespace littoral::care
