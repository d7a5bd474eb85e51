// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/reset_forecast.h"
#include "core/wording/numbers.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <limits>

namespace littoral::facade {

using namespace Qt::StringLiterals;

namespace {

// Places of forecast::kQuantiles.
enum Quantile : std::size_t { k10 = 1, k90 = 5 };

QString words(const char* text)
{
    return QCoreApplication::translate("Reset", text);
}

QString days(long count)
{
    return count == 1 ? words("a day")
                      : QCoreApplication::translate("Reset", "%n days", nullptr, static_cast<int>(count));
}

class Teller
{
public:
    explicit Teller(const ResetForecast& made)
        : m_made(made)
        , m_today(made.now.localDate())
    {
    }

    [[nodiscard]] ResetTable tell() const
    {
        ResetTable table;
        table.headline = headline();
        table.heads = {words("Readings clear for"), words("Carry on"), words("changes"), words("Start afresh"),
                       words("changes")};
        for (std::size_t i = 0; i < m_made.keep.gates.size() && i < m_made.fresh.gates.size(); ++i) {
            const ResetGate& keep = m_made.keep.gates[i];
            const ResetGate& fresh = m_made.fresh.gates[i];
            table.rows.push_back({words("%1 %2").arg(keep.key, keep.title), when(m_made.keep, keep), work(keep),
                                  when(m_made.fresh, fresh), work(fresh)});
        }
        table.sentences = sentences();
        return table;
    }

private:
    [[nodiscard]] QDate day(const ResetWay& way, double age) const
    {
        return std::max(way.flooded.plusDays(age).localDate(), m_today);
    }

    /// "now", "4–9 Dec, 8 in 10", "not by 24 Jan: 3 in 10".
    [[nodiscard]] QString when(const ResetWay& way, const ResetGate& gate) const
    {
        const forecast::DateOdds& odds = gate.odds;
        if (std::isfinite(odds.day[k90])) {
            return odds.day[k90] <= way.ageNow
                       ? words("clear now")
                       : words("%1, 8 in 10")
                             .arg(wording::dateRangeText(day(way, odds.day[k10]), day(way, odds.day[k90]), m_today));
        }
        const QString last = wording::dateText(day(way, odds.lastDay), m_today);
        return std::isfinite(odds.day[k10]) ? words("from %1; not by %2: %3")
                                                  .arg(wording::dateText(day(way, odds.day[k10]), m_today), last,
                                                       wording::oddsText(odds.notByLast))
                                            : words("not by %1: %2").arg(last, wording::oddsText(odds.notByLast));
    }

    [[nodiscard]] static QString work(const ResetGate& gate)
    {
        return gate.changes < 0.05 ? words("none")
                                   : words("%1, %2").arg(wording::numberText(gate.changes, gate.changes < 9.5 ? 1 : 0),
                                                         wording::litresText(gate.litres));
    }

    [[nodiscard]] QString headline() const
    {
        const auto median = [](const ResetWay& way) {
            return way.gates.empty() ? std::numeric_limits<double>::infinity()
                                     : way.gates.front().odds.day[3] - way.ageNow;
        };
        const double keep = median(m_made.keep);
        const double fresh = median(m_made.fresh);
        if (!std::isfinite(keep) && !std::isfinite(fresh)) {
            return words("On neither way do the readings clear for the first animals within the forecast.");
        }
        if (!std::isfinite(fresh)) {
            return words("Carrying on clears for the first animals; a fresh start does not within the forecast.");
        }
        if (!std::isfinite(keep)) {
            return words("A fresh start clears for the first animals; carrying on does not within the forecast.");
        }
        const long apart = std::lround(fresh - keep);
        return apart == 0  ? words("Both ways clear for the first animals at about the same time.")
               : apart > 0 ? words("A fresh start clears for the first animals about %1 later than carrying on, by the "
                                   "middle members.")
                                 .arg(days(apart))
                           : words("A fresh start clears for the first animals about %1 earlier than carrying on, by "
                                   "the middle members.")
                                 .arg(days(-apart));
    }

    [[nodiscard]] QString workText(const QString& sentence, const ResetWay& way) const
    {
        return sentence.arg(wording::numberText(kResetWindow_d, 0), wording::numberText(way.changes, 0),
                            wording::litresText(way.litres));
    }

    [[nodiscard]] QStringList sentences() const
    {
        QStringList said;
        said << workText(words("Carrying on as planned: in %1 days %2 water changes, %3."), m_made.keep)
             << workText(words("A fresh start: in %1 days %2 water changes, %3, and filling the tank anew besides."),
                         m_made.fresh)
             << (m_made.keep.fitted
                     ? words("Carrying on is fitted to %1 readings of this layout.").arg(m_made.keep.readings)
                     : words("The readings of this layout contradict the model, so carrying on is shown with the wide "
                             "bands of no readings at all."))
             << words(
                    "The fresh start has no reading to rest on: it is the prior for %1, today, with the same bed new, "
                    "the same planting, water and gas, no animals and no feed.")
                    .arg(startWords(m_made.start));
        said << m_made.fresh.assumed;
        if (m_made.fresh.learned.isEmpty()) {
            said << words("Nothing was learned from earlier layouts for it: none of the row has enough readings and "
                          "something in common, or learning is switched off.");
        } else {
            said << m_made.fresh.learned;
        }
        said << words("Ammonia and nitrite alone are forecast. Plants, algae, animals, money and the evening it takes "
                      "are yours to weigh.");
        return said;
    }

    const ResetForecast& m_made;
    const QDate m_today;
};

} // namespace

ResetTable resetTable(const ResetForecast& made)
{
    return Teller(made).tell();
}

QString startWords(record::StartMethod start)
{
    switch (start) {
    case record::StartMethod::NewMedia:
        return words("new media");
    case record::StartMethod::MatureMedia:
        return words("mature media, a third of a filter");
    case record::StartMethod::Starter:
        return words("new media and a bacteria starter");
    case record::StartMethod::DryStart:
        return words("a dry start");
    case record::StartMethod::DarkStart:
        break;
    }
    return words("a dark start");
}

} // namespace littoral::facade
