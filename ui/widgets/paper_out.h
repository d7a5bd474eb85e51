// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/paper.h"
#include "ui/widgets/ask.h"

#include <optional>

namespace littoral::ui {

enum class PaperTo { File, Printer };

/// Asks for a file or a printer and prints the job there. The sentence says where it went; nothing when the keeper
/// thought better of it. `proposed` is a file name without its ending.
[[nodiscard]] std::optional<Result<QString>> putOnPaper(Ask& ask, QWidget* parent, const PaperJob& job,
                                                        const QString& proposed, PaperTo to);

} // namespace littoral::ui
