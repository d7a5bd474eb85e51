// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/due.h"

namespace littoral::facade {

/// When a template would next ask for its work on one tank.
struct TemplatePreview
{
    record::TankId tank; ///< none: asked once for the whole row
    QString name;
    bool applies = false; ///< its conditions hold for the layout that runs now
    std::optional<care::DueItem> next;
};

/// Every running tank in row order, or one line for work that is asked once for the row; rounds up to `days` ahead.
[[nodiscard]] std::vector<TemplatePreview> previewTemplate(const record::Row& row, const care::WorkTemplate& work,
                                                           const record::Moment& now, int days = 120);

} // namespace littoral::facade
