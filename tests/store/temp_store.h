// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/store.h"

#include <QTemporaryDir>
#include <functional>
#include <gtest/gtest.h>

namespace littoral::testing {

/// A store in a folder of its own that goes with the test.
class TempStore final
{
public:
    TempStore();

    [[nodiscard]] QString path(const QString& name = QStringLiteral("row.littoral")) const
    {
        return m_folder.filePath(name);
    }
    [[nodiscard]] QString folder() const { return m_folder.path(); }
    store::Store& operator*() { return *m_store; }
    store::Store* operator->() { return m_store.get(); }
    void close() { m_store.reset(); }
    void reopen();

private:
    QTemporaryDir m_folder;
    std::unique_ptr<store::Store> m_store;
};

/// Ids of one record of every kind, all hanging on one tank, plus a second tank that takes media from the first.
struct Everything
{
    record::TankId tank;
    record::TankId otherTank;
    record::LayoutId layout;
    record::LayoutId otherLayout;
    record::SourceWaterId source;
    record::KitId kit;
    record::ReadingId reading;
    record::EntryId entry;
    record::EntryId transfer;
    record::PhotoId photo;
    record::SupplyId supply;
    record::TaskTemplateId taskTemplate;
    record::TaskId task;
    record::TargetId target;
    record::PlanId plan;
    record::ForecastId forecast;
    record::RegimenId regimen;
    record::SourceWaterId osmosis; ///< the two parts of `source`
    record::SourceWaterId rain;
    record::JourneyId journey;
};

/// Puts one of everything, with every field filled in, in one edit.
[[nodiscard]] Everything fill(store::Store& store);

[[nodiscard]] record::Moment moment(const char* iso);
[[nodiscard]] record::Tank tankNamed(const QString& name);
[[nodiscard]] record::Layout layoutIn(record::TankId tank);
[[nodiscard]] record::Reading readingOf(record::TankId tank, record::LayoutId layout, const QString& typed,
                                        const record::Moment& at);

/// Every row of every table that the journal covers, as text: equal texts, equal stores.
[[nodiscard]] QString dump(const QString& path);
/// First column of the first row of a query on the file.
[[nodiscard]] QVariant ask(const QString& path, const QString& sql);
/// Runs statements on the file past the program, as another tool would.
void tamper(const QString& path, const QStringList& statements);

/// An error a person can act on: what, where and how to mend it.
[[nodiscard]] ::testing::AssertionResult complete(const Error& error, Fault fault);

/// Runs `body` in a child process that has no rights beyond a common user's (also when the tests run as root); true
/// when it returned true.
[[nodiscard]] bool asCommonUser(const std::function<bool()>& body);

template <typename T>::testing::AssertionResult succeeded(const Result<T>& result)
{
    if (result) {
        return ::testing::AssertionSuccess();
    }
    return ::testing::AssertionFailure() << result.error().sentence();
}

} // namespace littoral::testing
