// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace littoral::facade {
struct LaneModel;
}

namespace littoral::ui {

class LaneView;
struct LaneItem;

/// The accessible tree of a LaneView: lanes, in each its rows, in each row its items, named as whole sentences.
/// Registers the factory; harmless when called again.
void installLaneAccess();
/// Tells assistive technology where the keyboard is now.
void announceLaneFocus(LaneView* view);

/// "Mill Race, 500 L, day 412. Established. ..." and "Mill Race, water change 40 %, 3 d over. Due 22 Nov".
[[nodiscard]] QString laneSentence(const facade::LaneModel& lane);
[[nodiscard]] QString itemSentence(const facade::LaneModel& lane, const LaneItem& item);

} // namespace littoral::ui
