// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/photos.h"

#include <algorithm>
#include <iterator>

namespace littoral::facade {

std::vector<record::Photo> photosOfLayout(Keeper& keeper, record::LayoutId layout)
{
    if (!keeper.hasStore()) {
        return {};
    }
    auto found = keeper.store()->photos(layout);
    return found ? std::move(found).value() : std::vector<record::Photo>();
}

std::vector<record::Photo> photosOf(Keeper& keeper, record::TankId tank)
{
    std::vector<record::Photo> all;
    for (const record::LayoutRecord* layout : keeper.row().layoutsOf(tank)) {
        std::ranges::move(photosOfLayout(keeper, layout->layout.id), std::back_inserter(all));
    }
    std::ranges::stable_sort(all, [](const record::Photo& a, const record::Photo& b) { return a.at < b.at; });
    return all;
}

Result<QByteArray> photoBytes(Keeper& keeper, record::PhotoId id)
{
    if (!keeper.hasStore()) {
        return Error{Fault::NotFound, Keeper::tr("No store is open.").toStdString(), {}, {}};
    }
    return keeper.store()->photoBytes(id);
}

} // namespace littoral::facade
