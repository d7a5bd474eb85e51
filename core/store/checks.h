// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/record/ids.h"
#include "core/record/moment.h"

#include <QByteArray>
#include <QString>
#include <optional>

namespace littoral::store {

/// Collects what a record must fulfil before it is written; the first rule that is broken gives the Error. The rules
/// that need other rows are the writer's.
class Checks final
{
public:
    /// `subject`: what is being checked, as a person would call it ("This reading").
    explicit Checks(QString subject)
        : m_subject(std::move(subject))
    {
    }

    Checks& rule(bool holds, const QString& what, const QString& mend);
    Checks& hasTime(const record::Moment& moment);
    template <typename Tag> Checks& hasLayout(const record::Id<Tag>& id)
    {
        return rule(bool(id), noLayout(), chooseLayout());
    }
    template <typename Tag> Checks& hasTank(const record::Id<Tag>& id)
    {
        return rule(bool(id), noTank(), chooseTank());
    }
    Checks& hasParameter(const QString& key);
    Checks& hasUnit(const QString& key, const QString& unit);
    Checks& finite(std::initializer_list<std::optional<double>> numbers);
    Checks& notNegative(std::initializer_list<double> numbers);
    Checks& share(const std::optional<double>& number);
    Checks& isJson(const QByteArray& text);

    [[nodiscard]] Result<void> result() const;

private:
    [[nodiscard]] QString noLayout() const;
    [[nodiscard]] static QString chooseLayout();
    [[nodiscard]] QString noTank() const;
    [[nodiscard]] static QString chooseTank();

    QString m_subject;
    std::optional<Error> m_error;
};

} // namespace littoral::store
