// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/template_preview.h"

#include "core/care/rounds.h"

#include <algorithm>

namespace littoral::facade {

namespace {

std::optional<care::DueItem> firstOf(std::vector<care::DueItem> items, const QString& key)
{
    const auto found = std::ranges::find(items, key, &care::DueItem::templateKey);
    return found == items.end() ? std::nullopt : std::optional(std::move(*found));
}

} // namespace

std::vector<TemplatePreview> previewTemplate(const record::Row& row, const care::WorkTemplate& work,
                                             const record::Moment& now, int days)
{
    const QDate until = now.localDate().addDays(days);
    const care::TemplateSet only{{work}, {}};
    std::vector<TemplatePreview> lines;
    for (const record::Tank& tank : row.tanks) {
        const record::LayoutRecord* layout = row.currentLayout(tank.id, now);
        if (layout == nullptr || layout->layout.ended || layout->layout.flooded > now) {
            continue;
        }
        if (work.wholeRow) {
            const care::Desk desk = care::deskFor(row, *layout, now, until);
            return {{{}, {}, true, firstOf(care::rowRoundsOf(work, desk), work.key)}};
        }
        const bool applies = care::variantFor(work, care::circumstances(row, *layout, now)) != nullptr;
        lines.push_back(
            {tank.id, tank.name, applies, firstOf(care::dueWork(row, layout->layout.id, now, until, only), work.key)});
    }
    return lines;
}

} // namespace littoral::facade
