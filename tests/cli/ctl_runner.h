// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <QTemporaryDir>
#include <gtest/gtest.h>
#include <vector>

namespace littoral::test {

struct Outcome
{
    int code = -1;
    QByteArray out;
    QByteArray err;
};

/// Runs the built littoralctl in a directory of its own, with the clock standing at 2026-11-25 08:00 UTC.
class Ctl : public ::testing::Test
{
protected:
    void SetUp() override;

    [[nodiscard]] Outcome run(const QStringList& arguments,
                              const QString& now = QStringLiteral("2026-11-25T08:00:00Z")) const;
    /// Runs and expects `code`.
    QByteArray expect(int code, const QStringList& arguments) const;

    [[nodiscard]] QString path(const QString& name) const { return m_directory.filePath(name); }
    QString write(const QString& name, const QByteArray& bytes) const;
    [[nodiscard]] QByteArray read(const QString& name) const;
    /// A store with one tank, "Heron Reach", flooded 2026-11-09 10:00 UTC, of readings and a plan; returns its path.
    [[nodiscard]] QString storeWithTank(const QString& name = QStringLiteral("row.littoral"),
                                        const QString& tank = QStringLiteral("Heron Reach")) const;

private:
    QTemporaryDir m_directory;
};

/// The tank file storeWithTank imports.
[[nodiscard]] QByteArray tankFile(const QString& name);

/// Lines of CSV output as cells, by the plain rule that none of ours holds a separator here.
[[nodiscard]] std::vector<QStringList> cells(const QByteArray& csv);

} // namespace littoral::test
