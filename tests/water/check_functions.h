// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <functional>
#include <limits>
#include <map>
#include <string>
#include <vector>

/// What the check rows call, by name. A name may carry arguments after colons ("rise:KNO3:NO3").
namespace littoral::test {

using Inputs = std::vector<double>;
using Function = std::function<double(const Inputs&)>;
using FunctionMap = std::map<std::string, Function>;
using NamedFunction = std::function<double(const std::vector<std::string>&, const Inputs&)>;

inline constexpr double kNothing = std::numeric_limits<double>::quiet_NaN();

inline double orNothing(const Result<double>& result)
{
    return result ? *result : kNothing;
}

FunctionMap basicFunctions();
FunctionMap carbonateFunctions();
FunctionMap gasFunctions();
FunctionMap dosingFunctions();
std::map<std::string, NamedFunction> saltFunctions();

/// The function of a row, arguments bound; empty when there is none of that name.
Function functionNamed(const std::string& name);

} // namespace littoral::test
