// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QtGlobal>
#include <compare>
#include <functional>

namespace littoral::record {

/// Identity of one kind of record. Zero is "none". Ids are never reused and survive undo and redo.
template <typename Tag> struct Id
{
    qint64 value = 0;

    [[nodiscard]] explicit operator bool() const { return value != 0; }
    auto operator<=>(const Id&) const = default;
};

using TankId = Id<struct TankTag>;
using LayoutId = Id<struct LayoutTag>;
using SourceWaterId = Id<struct SourceWaterTag>;
using KitId = Id<struct KitTag>;
using ReadingId = Id<struct ReadingTag>;
using EntryId = Id<struct EntryTag>;
using PhotoId = Id<struct PhotoTag>;
using SupplyId = Id<struct SupplyTag>;
using TaskTemplateId = Id<struct TaskTemplateTag>;
using TaskId = Id<struct TaskTag>;
using TargetId = Id<struct TargetTag>;
using PlanId = Id<struct PlanTag>;
using RegimenId = Id<struct RegimenTag>;
using ForecastId = Id<struct ForecastTag>;
using JourneyId = Id<struct JourneyTag>;

} // namespace littoral::record

template <typename Tag> struct std::hash<littoral::record::Id<Tag>>
{
    std::size_t operator()(const littoral::record::Id<Tag>& id) const noexcept { return std::hash<qint64>{}(id.value); }
};
