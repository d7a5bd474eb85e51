// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/statement.h"

#include "core/store/failure.h"

#include <QSqlError>

namespace littoral::store {

Statement::Statement(QSqlQuery& query, bool prepared, QString path)
    : m_query(query)
    , m_path(std::move(path))
    , m_prepared(prepared)
{
}

Statement::~Statement()
{
    m_query.finish();
}

Statement& Statement::bind(const QVariant& value)
{
    m_query.bindValue(m_bound++, value);
    return *this;
}

Result<void> Statement::exec()
{
    m_bound = 0;
    if (!m_prepared || !m_query.exec()) {
        return sqlFailure(m_query.lastError(), m_path);
    }
    return {};
}

bool Statement::next()
{
    return m_query.next();
}

Result<void> Statement::end() const
{
    const QSqlError error = m_query.lastError();
    if (error.isValid()) {
        return sqlFailure(error, m_path);
    }
    return {};
}

} // namespace littoral::store
