// SPDX-License-Identifier: GPL-3.0-or-later
// What is on show: the lists at the left.
#include "ui/pages/trends/trends_page.h"
#include "ui/widgets/trends/tick_list.h"
#include "ui/widgets/trends/trend_view.h"

#include <algorithm>
#include <array>
#include <utility>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

constexpr std::size_t kFirstParameters = 4; // charts a page opens with

struct Group
{
    const char* title;
    QStringList keys;
};

std::vector<Group> groups()
{
    return {
        {QT_TRANSLATE_NOOP("TrendsPage", "Nitrogen"), {u"tan"_s, u"nh3"_s, u"no2"_s, u"no3"_s}},
        {QT_TRANSLATE_NOOP("TrendsPage", "Carbonate"), {u"ph"_s, u"kh"_s, u"gh"_s, u"co2"_s}},
        {QT_TRANSLATE_NOOP("TrendsPage", "Nutrients"), {u"po4"_s, u"k"_s, u"fe"_s, u"ca"_s, u"mg"_s}},
        {QT_TRANSLATE_NOOP("TrendsPage", "Physical"), {u"temp"_s, u"cond"_s, u"tds"_s, u"do"_s, u"par"_s, u"flow"_s}},
        {QT_TRANSLATE_NOOP("TrendsPage", "Other"), {u"cl"_s, u"cu"_s, u"cylinder"_s}}};
}

/// Offered even before there is a reading of them.
bool isCommon(const QString& key)
{
    static const QStringList common{u"tan"_s, u"nh3"_s, u"no2"_s, u"no3"_s, u"ph"_s, u"kh"_s, u"gh"_s, u"temp"_s};
    return common.contains(key);
}

/// A short name for the list: long ones are told by their symbol there.
QString listName(const facade::TrendOffer& offer)
{
    const record::Parameter* known = record::findParameter(offer.key);
    return offer.name.size() > 20 && known != nullptr ? known->symbol : offer.name;
}

} // namespace

void TrendsPage::chooseParameters()
{
    m_shown.clear();
    std::vector<facade::TrendOffer> offers = facade::trendOffers(m_keeper.row(), m_layouts);
    // A young tank is about nitrogen and pH, whatever has the most readings; others show what is measured there.
    static const QStringList first{u"tan"_s, u"no2"_s, u"no3"_s, u"ph"_s};
    std::ranges::stable_sort(offers, [](const facade::TrendOffer& a, const facade::TrendOffer& b) {
        const bool early = first.contains(a.key);
        const bool late = first.contains(b.key);
        return early != late ? early : false;
    });
    for (const facade::TrendOffer& offer : offers) {
        if (offer.readings > 0 && !offer.reckoned && static_cast<std::size_t>(m_shown.size()) < kFirstParameters) {
            m_shown << offer.key;
        }
    }
    if (m_shown.isEmpty()) {
        m_shown = first;
    }
}

void TrendsPage::fillTanks()
{
    const record::Row& row = m_keeper.row();
    std::vector<TickLine> running, earlier;
    const auto lineOf = [&](const record::LayoutRecord& layout, const record::Tank& tank, bool current) {
        TickLine line;
        line.key = QString::number(layout.layout.id.value);
        line.text =
            current ? tank.name : tr("%1, %2", "tank, layout").arg(tank.name, record::layoutName(layout.layout));
        line.ticked = std::ranges::find(m_layouts, layout.layout.id) != m_layouts.end();
        const auto& tanks = m_view->model().tanks;
        const auto shown = std::ranges::find(tanks, layout.layout.id, &facade::TrendTank::layout);
        if (shown != tanks.end()) {
            line.style =
                tankStyle(m_view->model(), static_cast<std::size_t>(shown - tanks.begin()), m_view->selected());
        }
        return line;
    };
    for (const record::Tank& tank : row.tanks) {
        const record::LayoutRecord* current = row.currentLayout(tank.id, m_keeper.clock().now());
        for (const record::LayoutRecord* layout : row.layoutsOf(tank.id)) {
            (layout == current ? running : earlier).push_back(lineOf(*layout, tank, layout == current));
        }
    }
    std::vector<TickLine> lines;
    TickLine heading;
    heading.text = tr("Tanks");
    lines.push_back(heading);
    std::ranges::move(running, std::back_inserter(lines));
    if (!earlier.empty()) {
        heading.text = tr("Earlier layouts");
        lines.push_back(heading);
        std::ranges::move(earlier, std::back_inserter(lines));
    }
    m_tanks->setLines(std::move(lines));
}

void TrendsPage::fillParameters()
{
    const std::vector<facade::TrendOffer> offers = facade::trendOffers(m_keeper.row(), m_layouts);
    std::vector<TickLine> lines;
    for (const Group& group : groups()) {
        std::vector<TickLine> part;
        for (const QString& key : group.keys) {
            const auto offer = std::ranges::find(offers, key, &facade::TrendOffer::key);
            if (offer == offers.end() || (offer->readings == 0 && !isCommon(key) && !m_shown.contains(key))) {
                continue;
            }
            TickLine line;
            line.key = key;
            line.text = listName(*offer);
            line.mark = key;
            line.ticked = m_shown.contains(key);
            line.side =
                offer->reckoned ? tr("calc.", "worked out from other readings") : QString::number(offer->readings);
            part.push_back(std::move(line));
        }
        // The keeper's own order within the group.
        std::ranges::stable_sort(part, {}, [this](const TickLine& line) {
            const qsizetype place = m_order.indexOf(line.key);
            return place < 0 ? m_order.size() : place;
        });
        if (!part.empty()) {
            TickLine heading;
            heading.text = tr(group.title);
            lines.push_back(std::move(heading));
            std::ranges::move(part, std::back_inserter(lines));
        }
    }
    m_parameters->setLines(std::move(lines));
    // Charts stand in the order of the list.
    QStringList ordered = m_parameters->ticked();
    for (const QString& key : std::as_const(m_shown)) {
        if (!ordered.contains(key)) {
            ordered << key;
        }
    }
    m_shown = ordered;
}

void TrendsPage::takeChoice()
{
    std::vector<record::LayoutId> layouts;
    const QStringList keys = m_tanks->ticked();
    for (const QString& key : keys) {
        layouts.push_back(record::LayoutId{key.toLongLong()});
    }
    m_layouts = std::move(layouts);
    m_shown = m_parameters->ticked();
    m_order.clear();
    for (const TickLine& line : m_parameters->lines()) {
        m_order << line.key;
    }
    remember();
    refresh();
}

} // namespace littoral::ui
