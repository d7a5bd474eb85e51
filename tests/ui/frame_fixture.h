// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/forecasts.h"
#include "core/facade/keeper.h"
#include "ui/theme/theme.h"
#include "ui/widgets/ask.h"

#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace littoral::ui::test {

/// Answers file questions from what the test put down.
class FakeAsk final : public Ask
{
public:
    QString storeToOpen(QWidget*, const QString&) override { return open; }
    QString storeToMake(QWidget*, const QString&) override { return make; }
    QStringList csvFiles(QWidget*) override { return csv; }
    QString exportFolder(QWidget*) override { return folder; }
    QString backupFile(QWidget*, const QString&) override { return backup; }
    QString photo(QWidget*) override { return picture; }

    QString open, make, folder, backup, picture;
    QStringList csv;
};

/// A new store in a folder of its own, at half past seven on a Wednesday.
class FrameTest : public ::testing::Test
{
protected:
    FrameTest();

    [[nodiscard]] QString path(const QString& name) const { return m_folder.filePath(name); }
    /// A tank flooded `daysAgo`, with kits for ammonia, nitrite and nitrate in the row.
    record::TankId addTank(const QString& name, int daysAgo);
    void addKits();
    [[nodiscard]] record::LayoutId layoutOf(record::TankId tank) const;
    record::ReadingId read(record::TankId tank, const QString& parameter, const QString& typed, int daysAgo);
    [[nodiscard]] std::size_t readingCount() const;

    QTemporaryDir m_folder;
    record::FixedClock m_clock;
    facade::Keeper m_keeper;
    facade::Forecasts m_forecasts;
    Theme m_theme;
    FakeAsk m_ask;
};

} // namespace littoral::ui::test
