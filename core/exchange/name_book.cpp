// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/name_book.h"

#include <QCoreApplication>
#include <algorithm>
#include <numeric>

namespace littoral::exchange {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Exchange", text);
}

QString folded(const QString& name)
{
    return name.trimmed().toCaseFolded();
}

QString kitKey(const QString& name, const QString& parameter)
{
    return parameter + u'\n' + folded(name);
}

/// Changes, insertions, deletions and swaps of neighbours that turn one into the other (optimal string alignment).
int editDistance(const QString& a, const QString& b)
{
    const auto width = static_cast<std::size_t>(b.size()) + 1;
    std::vector<int> before(width);
    std::vector<int> above(width);
    std::vector<int> row(width);
    std::iota(above.begin(), above.end(), 0);
    for (qsizetype i = 0; i < a.size(); ++i) {
        row[0] = static_cast<int>(i) + 1;
        for (qsizetype j = 0; j < b.size(); ++j) {
            const auto k = static_cast<std::size_t>(j) + 1;
            row[k] = std::min({above[k - 1] + (a[i] == b[j] ? 0 : 1), above[k] + 1, row[k - 1] + 1});
            if (i > 0 && j > 0 && a[i] == b[j - 1] && a[i - 1] == b[j]) {
                row[k] = std::min(row[k], before[k - 2] + 1);
            }
        }
        before.swap(above);
        above.swap(row);
    }
    return above.back();
}

QString withHelp(const QString& missing, const QString& wanted, QStringList names)
{
    names.sort(Qt::CaseInsensitive);
    if (const auto near = nearestName(wanted, names)) {
        return missing + u' ' + words("Did you mean \"%1\"?").arg(*near);
    }
    if (names.isEmpty()) {
        return missing;
    }
    return missing + u' ' + words("There are: %1.").arg(names.mid(0, 12).join(u", "_s));
}

} // namespace

std::optional<QString> nearestName(const QString& wanted, const QStringList& names)
{
    const QString target = folded(wanted).left(200);
    std::optional<QString> best;
    int bestDistance = std::max(2, static_cast<int>(target.size()) / 3) + 1;
    for (const QString& name : names) {
        const int distance = editDistance(target, folded(name).left(200));
        if (distance < bestDistance) {
            bestDistance = distance;
            best = name;
        }
    }
    return best;
}

NameBook::NameBook(const record::Row& row)
{
    for (const record::Tank& tank : row.tanks) {
        add(tank);
    }
    for (const record::SourceWater& source : row.sources) {
        add(source);
    }
    for (const record::TestKit& kit : row.kits) {
        add(kit);
    }
}

void NameBook::add(const record::Tank& tank)
{
    m_tanks.insert(folded(tank.name), tank.id);
    m_tankNames.insert(tank.id.value, tank.name);
}

void NameBook::add(const record::SourceWater& source)
{
    m_sources.insert(folded(source.name), source.id);
    m_sourceNames.insert(source.id.value, source.name);
}

void NameBook::add(const record::TestKit& kit)
{
    m_kits.insert(kitKey(kit.name, kit.parameter), {kit.id, kit.unit});
    m_kitNames.insert(kit.id.value, kit.name);
    m_kitParameters << kit.parameter + u'\n' + kit.name;
}

std::optional<record::TankId> NameBook::tank(const QString& name) const
{
    const auto found = m_tanks.constFind(folded(name));
    return found == m_tanks.cend() ? std::nullopt : std::optional(*found);
}

std::optional<record::SourceWaterId> NameBook::source(const QString& name) const
{
    const auto found = m_sources.constFind(folded(name));
    return found == m_sources.cend() ? std::nullopt : std::optional(*found);
}

std::optional<NameBook::Kit> NameBook::kit(const QString& name, const QString& parameter) const
{
    const auto found = m_kits.constFind(kitKey(name, parameter));
    return found == m_kits.cend() ? std::nullopt : std::optional(*found);
}

QString NameBook::nameOf(record::TankId id) const
{
    return m_tankNames.value(id.value);
}

QString NameBook::nameOf(record::SourceWaterId id) const
{
    return m_sourceNames.value(id.value);
}

QString NameBook::nameOf(record::KitId id) const
{
    return m_kitNames.value(id.value);
}

QString NameBook::noTank(const QString& name) const
{
    return withHelp(words("There is no tank \"%1\".").arg(name), name, m_tankNames.values());
}

QString NameBook::noSource(const QString& name) const
{
    return withHelp(words("There is no source water \"%1\".").arg(name), name, m_sourceNames.values());
}

QString NameBook::noKit(const QString& name, const QString& parameter) const
{
    QStringList names;
    for (const QString& entry : m_kitParameters) {
        if (entry.section(u'\n', 0, 0) == parameter) {
            names << entry.section(u'\n', 1);
        }
    }
    const record::Parameter* known = record::findParameter(parameter);
    return withHelp(words("There is no kit \"%1\" for %2.").arg(name, known == nullptr ? parameter : known->name), name,
                    names);
}

} // namespace littoral::exchange
