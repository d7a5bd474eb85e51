// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

namespace littoral::exchange {

/// What is wrong with the files of an import, each sentence with its place. Every problem is counted; the first kShown
/// are kept in words, so that a file in the wrong format does not answer with ten thousand lines.
class Problems final
{
public:
    static constexpr int kShown = 50;

    void add(const QString& place, const QString& sentence);

    [[nodiscard]] bool isEmpty() const { return m_count == 0; }
    [[nodiscard]] int count() const { return m_count; }
    /// The first kShown, and a closing sentence with the number of those left out.
    [[nodiscard]] QStringList sentences() const;

private:
    QStringList m_shown;
    int m_count = 0;
};

} // namespace littoral::exchange
