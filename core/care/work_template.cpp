// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/work_template.h"
#include "core/record/source_profile.h"

#include <QFile>
#include <algorithm>

namespace littoral::care {

using namespace Qt::StringLiterals;

namespace {

constexpr double kFreshReadingDays = 3.0;

template <typename T> bool anyOrNone(const std::vector<T>& wanted, T actual)
{
    return wanted.empty() || std::ranges::find(wanted, actual) != wanted.end();
}

bool same(const std::optional<bool>& wanted, bool actual)
{
    return !wanted || *wanted == actual;
}

/// By an entry's subject, a reading's parameter, or "topup" for any top-up.
bool hasRecorded(const record::LayoutRecord& layout, const QString& subject, const record::Moment& now)
{
    const bool entered = std::ranges::any_of(layout.entries, [&](const record::Entry& e) {
        const bool topUp = e.kind == record::EntryKind::TopUp && subject == u"topup"_s;
        return !e.planned && e.at <= now && (topUp || e.subject == subject);
    });
    return entered || layout.newest(subject, now) != nullptr;
}

bool readsBelow(const record::LayoutRecord& layout, const QString& parameter, double limit, const record::Moment& now)
{
    const record::Reading* newest = layout.newest(parameter, now);
    return newest != nullptr && record::daysBetween(newest->at, now) <= kFreshReadingDays && newest->value < limit;
}

bool holdsSize(const Condition& condition, const Circumstances& at)
{
    if (!condition.netBelow_L && !condition.netFrom_L) {
        return true;
    }
    if (!at.net_L) {
        return false;
    }
    return (!condition.netBelow_L || *at.net_L < *condition.netBelow_L) &&
           (!condition.netFrom_L || *at.net_L >= *condition.netFrom_L);
}

} // namespace

const WorkTemplate* TemplateSet::find(const QString& key) const
{
    const auto found = std::ranges::find(all, key, &WorkTemplate::key);
    return found == all.end() ? nullptr : &*found;
}

const std::vector<WorkTemplate>& builtInTemplates()
{
    static const std::vector<WorkTemplate> all = [] {
        QFile file(u":/littoral/facts/task_templates.json"_s);
        if (!file.open(QIODevice::ReadOnly)) {
            return std::vector<WorkTemplate>();
        }
        auto parsed = parseTemplates(file.readAll());
        return parsed ? std::move(parsed).value() : std::vector<WorkTemplate>();
    }();
    return all;
}

TemplateSet templatesFor(const record::Row& row)
{
    TemplateSet set{builtInTemplates(), {}};
    for (const record::TaskTemplate& own : row.templates) {
        const auto known = std::ranges::find(set.all, own.key, &WorkTemplate::key);
        if (own.disabled) {
            if (known != set.all.end()) {
                set.all.erase(known);
            }
            continue;
        }
        auto parsed = parseTemplate(own.definition);
        if (!parsed) {
            set.problems.push_back(parsed.error());
            continue;
        }
        parsed->key = own.key;
        if (known != set.all.end()) {
            *known = std::move(parsed).value();
        } else {
            set.all.push_back(std::move(parsed).value());
        }
    }
    return set;
}

Circumstances circumstances(const record::Row& row, const record::LayoutRecord& layout, const record::Moment& now)
{
    Circumstances at{&row, &layout, stockAt(layout, now), std::nullopt, false, now};
    if (const record::Tank* tank = row.tank(layout.layout.tank)) {
        if (const auto net = record::netVolume(*tank, layout.layout)) {
            at.net_L = net->litres;
        }
    }
    const record::SourceWater* source = row.source(layout.layout.source);
    at.pureWater = source != nullptr && !record::isAllFromTap(row.sources, *source);
    return at;
}

bool holds(const Condition& condition, const Circumstances& at)
{
    const record::Layout& layout = at.layout->layout;
    const bool plain = anyOrNone(condition.start, layout.start) && anyOrNone(condition.bed, layout.bed) &&
                       anyOrNone(condition.co2, layout.co2) && same(condition.rockHardens, layout.rockHardens) &&
                       same(condition.animals, at.stock.any()) && same(condition.shrimp, at.stock.anyShrimp()) &&
                       same(condition.plants, layout.plants != record::PlantDensity::None) &&
                       same(condition.pureWater, at.pureWater) && holdsSize(condition, at);
    if (!plain || (!condition.recorded.isEmpty() && !hasRecorded(*at.layout, condition.recorded, at.now))) {
        return false;
    }
    return std::ranges::all_of(condition.readingBelow, [&](const auto& limit) {
        return readsBelow(*at.layout, limit.first, limit.second, at.now);
    });
}

const Variant* variantFor(const WorkTemplate& work, const Circumstances& at)
{
    if (!holds(work.applies, at)) {
        return nullptr;
    }
    const auto found = std::ranges::find_if(work.variants, [&](const Variant& v) { return holds(v.when, at); });
    return found == work.variants.end() ? nullptr : &*found;
}

} // namespace littoral::care
