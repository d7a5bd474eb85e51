// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/forecasts.h"
#include "core/facade/keeper.h"

#include <QStringList>

namespace littoral::ui {

/// A report asked for on the command line, made without a window.
struct ReportRequest
{
    QString kind; ///< one of reportKinds()
    QString tank; ///< name, for the case
    QString pdf;  ///< file to write
    bool byKit = false;
};

[[nodiscard]] QStringList reportKinds();
/// Writes the PDF from the open store. Faults: BadInput for a kind or tank that is not there, Storage for the file.
[[nodiscard]] Result<void> runReport(const ReportRequest& request, facade::Keeper& keeper,
                                     facade::Forecasts& forecasts);

} // namespace littoral::ui
