// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/widgets/ask.h"

namespace littoral::ui {

/// Ask with the desktop's own file dialogs.
class FileAsk final : public Ask
{
public:
    [[nodiscard]] QString storeToOpen(QWidget* parent, const QString& startIn) override;
    [[nodiscard]] QString storeToMake(QWidget* parent, const QString& proposed) override;
    [[nodiscard]] QStringList csvFiles(QWidget* parent) override;
    [[nodiscard]] QString exportFolder(QWidget* parent) override;
    [[nodiscard]] QString backupFile(QWidget* parent, const QString& proposed) override;
    [[nodiscard]] QString photo(QWidget* parent) override;
    [[nodiscard]] QString fileToWrite(QWidget* parent, const QString& title, const QString& proposed,
                                      const QString& suffix) override;
    [[nodiscard]] std::unique_ptr<QPagedPaintDevice> printer(QWidget* parent, const QString& title) override;
};

} // namespace littoral::ui
