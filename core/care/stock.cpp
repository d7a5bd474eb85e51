// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/stock.h"

#include <algorithm>
#include <numeric>

namespace littoral::care {

using namespace Qt::StringLiterals;
using record::Entry;
using record::EntryKind;

namespace {

void addTo(std::vector<Animals>& all, const QString& subject, int count)
{
    const auto known = std::ranges::find_if(
        all, [&](const Animals& a) { return a.subject.compare(subject, Qt::CaseInsensitive) == 0; });
    if (known == all.end()) {
        all.push_back({subject, count});
    } else {
        known->count += count;
    }
}

} // namespace

bool isAboutPlants(const Entry& entry)
{
    static const QStringList units{u"plants"_s, u"plant"_s, u"pots"_s, u"cups"_s, u"stems"_s, u"portions"_s};
    return units.contains(entry.unit, Qt::CaseInsensitive) ||
           entry.subject.compare(u"plants"_s, Qt::CaseInsensitive) == 0;
}

bool Stock::anyShrimp() const
{
    return std::ranges::any_of(animals,
                               [](const Animals& a) { return a.subject.contains(u"shrimp"_s, Qt::CaseInsensitive); });
}

int Stock::count() const
{
    return std::accumulate(animals.begin(), animals.end(), 0, [](int sum, const Animals& a) { return sum + a.count; });
}

Stock stockAt(const record::LayoutRecord& layout, const record::Moment& at)
{
    Stock stock;
    for (const Entry& entry : layout.entries) {
        if (entry.planned || entry.at > at || isAboutPlants(entry)) {
            continue;
        }
        const int count = std::max(0, entry.count.value_or(1));
        if (entry.kind == EntryKind::Addition) {
            addTo(stock.animals, entry.subject, count);
            stock.added += count;
            if (!stock.firstAddition) {
                stock.firstAddition = entry.at;
            }
            stock.lastAddition = entry.at;
        } else if (entry.kind == EntryKind::Loss) {
            addTo(stock.animals, entry.subject, -count);
            stock.lost += count;
            stock.lastLoss = entry.at;
        }
    }
    std::erase_if(stock.animals, [](const Animals& a) { return a.count <= 0; });
    return stock;
}

} // namespace littoral::care
