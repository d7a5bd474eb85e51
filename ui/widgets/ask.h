// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPagedPaintDevice>
#include <QString>
#include <QStringList>
#include <memory>

class QWidget;

namespace littoral::ui {

/// Questions only the file system can answer. Behind an interface so that tests answer without a window; an empty
/// answer means the keeper thought better of it.
class Ask
{
public:
    virtual ~Ask() = default;
    [[nodiscard]] virtual QString storeToOpen(QWidget* parent, const QString& startIn) = 0;
    [[nodiscard]] virtual QString storeToMake(QWidget* parent, const QString& proposed) = 0;
    [[nodiscard]] virtual QStringList csvFiles(QWidget* parent) = 0;
    /// A folder to write the record to as CSV files.
    [[nodiscard]] virtual QString exportFolder(QWidget* parent) = 0;
    [[nodiscard]] virtual QString backupFile(QWidget* parent, const QString& proposed) = 0;
    [[nodiscard]] virtual QString photo(QWidget* parent) = 0;
    /// A file to write a copy to; `suffix` without the dot.
    [[nodiscard]] virtual QString fileToWrite(QWidget* parent, const QString& title, const QString& proposed,
                                              const QString& suffix)
    {
        Q_UNUSED(parent);
        Q_UNUSED(title);
        Q_UNUSED(proposed);
        Q_UNUSED(suffix);
        return {};
    }
    /// A printer, chosen and ready; nullptr when there is none or the keeper thought better of it.
    [[nodiscard]] virtual std::unique_ptr<QPagedPaintDevice> printer(QWidget* parent, const QString& title)
    {
        Q_UNUSED(parent);
        Q_UNUSED(title);
        return nullptr;
    }
};

} // namespace littoral::ui
