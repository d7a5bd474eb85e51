// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <QSqlQuery>
#include <QString>
#include <QVariant>

namespace littoral::store {

/// A prepared statement on loan from its Connection: values are bound in order, and it is finished when it goes out of
/// scope, so that none is left open at commit or close. Borrow one text only once at a time.
class Statement final
{
public:
    Statement(QSqlQuery& query, bool prepared, QString path);
    ~Statement();
    Statement(const Statement&) = delete;
    Statement& operator=(const Statement&) = delete;

    /// Binds the next '?'.
    Statement& bind(const QVariant& value);
    /// Runs it; may be called again after binding anew.
    [[nodiscard]] Result<void> exec();
    /// Steps to the next row. False at the end and on failure: ask end() which.
    [[nodiscard]] bool next();
    /// After the last row: whether the end was reached soundly.
    [[nodiscard]] Result<void> end() const;
    [[nodiscard]] QVariant value(int column) const { return m_query.value(column); }
    [[nodiscard]] bool isNull(int column) const { return m_query.isNull(column); }
    [[nodiscard]] const QSqlQuery& row() const { return m_query; }
    [[nodiscard]] int changedRows() const { return m_query.numRowsAffected(); }

private:
    QSqlQuery& m_query;
    QString m_path;
    int m_bound = 0;
    bool m_prepared;
};

} // namespace littoral::store
