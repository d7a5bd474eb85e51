// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/problems.h"

#include <QCoreApplication>

namespace littoral::exchange {

using namespace Qt::StringLiterals;

void Problems::add(const QString& place, const QString& sentence)
{
    ++m_count;
    if (m_shown.size() < kShown) {
        m_shown << place + u": "_s + sentence;
    }
}

QStringList Problems::sentences() const
{
    QStringList all = m_shown;
    if (m_count > kShown) {
        all << QCoreApplication::translate("Exchange", "Further problems, not listed: %1.").arg(m_count - kShown);
    }
    return all;
}

} // namespace littoral::exchange
