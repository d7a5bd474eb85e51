// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/findings/findings.h"

#include <QJsonObject>
#include <vector>

/// One case of tests/data/findings/cases.json, built as a record: a row of one tank with one layout.
struct InventedCase
{
    QString id;
    QString intended;
    QString story;
    littoral::record::Row row;
    littoral::record::LayoutId layout{11};
    littoral::record::Moment now;

    [[nodiscard]] const littoral::record::LayoutRecord& record() const { return row.layouts.at(layout); }
};

[[nodiscard]] InventedCase inventedCase(const QJsonObject& object);
[[nodiscard]] std::vector<InventedCase> inventedCases();
