// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/case_file.h"
#include "core/facade/reset_forecast.h"

#include <QObject>
#include <memory>

namespace littoral::facade {

class Keeper;

/// Reviews worked out off the calling thread; the newest question wins, answers arrive by signal. The comparison of
/// carrying on with starting afresh takes longer and comes after the review, if it is wanted.
class CaseDesk final : public QObject
{
    Q_OBJECT

public:
    /// `keeper` outlives the desk.
    explicit CaseDesk(Keeper& keeper, QObject* parent = nullptr);
    ~CaseDesk() override;

    /// Returns at once. What is asked is answered from the row as it is now.
    void ask(const CaseRequest& request);
    /// Compares carrying on with a fresh start by this method, unless that has been asked of the record as it is.
    void weighReset(record::LayoutId layout, record::StartMethod start);
    [[nodiscard]] std::shared_ptr<const ResetForecast> reset() const;
    [[nodiscard]] bool isWeighing() const;
    /// Blocks until the review is there; with the comparison as well, if `resets` (tests, pictures).
    void wait(bool resets);

signals:
    void ready(const littoral::facade::CaseFile& file);
    void resetReady();
    /// The comparison cannot be made; a sentence that says why.
    void resetFailed(const QString& sentence);

private:
    struct Private;
    std::unique_ptr<Private> d;
};

} // namespace littoral::facade
