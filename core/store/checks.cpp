// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/checks.h"

#include "core/record/parameter.h"
#include "core/store/failure.h"

#include <QJsonDocument>
#include <QStringList>
#include <algorithm>
#include <cmath>

namespace littoral::store {

using namespace Qt::StringLiterals;

Checks& Checks::rule(bool holds, const QString& what, const QString& mend)
{
    if (!holds && !m_error) {
        m_error = failure(Fault::BadInput, what, m_subject, mend);
    }
    return *this;
}

Checks& Checks::hasTime(const record::Moment& moment)
{
    return rule(moment.isValid(), Words::tr("It has no date and time."),
                Words::tr("Give the day and time it belongs to."));
}

QString Checks::noLayout() const
{
    return Words::tr("It does not say which layout it belongs to.");
}

QString Checks::chooseLayout()
{
    return Words::tr("Choose a layout; a tank without one needs its layout added first.");
}

QString Checks::noTank() const
{
    return Words::tr("It does not say which tank it belongs to.");
}

QString Checks::chooseTank()
{
    return Words::tr("Choose a tank.");
}

Checks& Checks::hasParameter(const QString& key)
{
    const record::Parameter* parameter = record::findParameter(key);
    return rule(parameter != nullptr && parameter->key == key, Words::tr("There is no parameter \"%1\".").arg(key),
                Words::tr("Use one of the parameters the program lists."));
}

Checks& Checks::hasUnit(const QString& key, const QString& unit)
{
    const record::Parameter* parameter = record::findParameter(key);
    if (parameter == nullptr) {
        return *this;
    }
    QStringList codes;
    for (const record::Unit& option : parameter->units) {
        codes << option.code;
    }
    return rule(codes.contains(unit), Words::tr("%1 cannot be given in \"%2\".").arg(parameter->name, unit),
                Words::tr("Units it takes: %1.").arg(codes.join(u", "_s)));
}

Checks& Checks::finite(std::initializer_list<std::optional<double>> numbers)
{
    const bool all = std::ranges::all_of(numbers, [](const auto& number) { return !number || std::isfinite(*number); });
    return rule(all, Words::tr("One of its numbers is not a number."), Words::tr("Type the number again."));
}

Checks& Checks::notNegative(std::initializer_list<double> numbers)
{
    const bool all = std::ranges::all_of(numbers, [](double number) { return std::isfinite(number) && number >= 0.0; });
    return rule(all, Words::tr("One of its measures is below zero."),
                Words::tr("Type the measure again; zero stands for not given."));
}

Checks& Checks::share(const std::optional<double>& number)
{
    return rule(!number || (*number >= 0.0 && *number <= 1.0), Words::tr("A share must lie between 0 and 100 %."),
                Words::tr("Type the percentage again."));
}

Checks& Checks::isJson(const QByteArray& text)
{
    QJsonParseError error;
    QJsonDocument::fromJson(text, &error);
    return rule(text.isEmpty() || (error.error == QJsonParseError::NoError && QString::fromUtf8(text).toUtf8() == text),
                Words::tr("Its contents are not valid JSON."),
                Words::tr("Make it again from its page, or correct the file it came from."));
}

Result<void> Checks::result() const
{
    if (m_error) {
        return *m_error;
    }
    return {};
}

} // namespace littoral::store
