// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheets/sheet.h"

#include <algorithm>

namespace littoral::sheets {

Input Input::number(QString key, QString label, QString unit, double lowest, double highest)
{
    Input input;
    input.key = std::move(key);
    input.label = std::move(label);
    input.unit = std::move(unit);
    input.lowest = lowest;
    input.highest = highest;
    return input;
}

Input Input::choice(QString key, QString label, std::vector<Choice> choices)
{
    Input input;
    input.key = std::move(key);
    input.label = std::move(label);
    input.kind = InputKind::Choice;
    input.exact = true;
    input.preset = choices.front().code;
    input.choices = std::move(choices);
    return input;
}

Input Input::series(QString key, QString label, QString unit, double lowest, double highest)
{
    Input input = number(std::move(key), std::move(label), std::move(unit), lowest, highest);
    input.kind = InputKind::Series;
    input.exact = true;
    return input;
}

Input Input::presetTo(QString text) const
{
    Input changed = *this;
    changed.preset = std::move(text);
    return changed;
}

Input Input::mayBeEmpty() const
{
    Input changed = *this;
    changed.optional = true;
    return changed;
}

Input Input::decided() const
{
    Input changed = *this;
    changed.exact = true;
    return changed;
}

Input Input::usually(double error) const
{
    Input changed = *this;
    changed.usualError = error;
    return changed;
}

Input Input::filled(FillFrom from, QString fillKey, QString unitCode) const
{
    Input changed = *this;
    changed.fill = {from, std::move(fillKey), std::move(unitCode)};
    return changed;
}

const Figure* Answer::find(const QString& key) const
{
    const auto found = std::ranges::find(results, key, &Figure::key);
    return found == results.end() ? nullptr : &*found;
}

const Input* Sheet::input(const QString& wanted) const
{
    const auto found =
        std::ranges::find_if(inputs, [&](const Input& i) { return i.key.compare(wanted, Qt::CaseInsensitive) == 0; });
    return found == inputs.end() ? nullptr : &*found;
}

} // namespace littoral::sheets
