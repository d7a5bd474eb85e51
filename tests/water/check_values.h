// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <iosfwd>
#include <string>
#include <vector>

/// A row of tests/data/check_values_water.csv or of a file in tests/data/water: what a function must give, to what
/// tolerance, and who says so.
struct CheckValue
{
    std::string id;
    std::string function;
    std::vector<double> inputs;
    double expected = 0.0;
    std::string tolerance; ///< "abs:x", "rel:x", "a|b" either, "exact", "not:rel:x" must differ by more
    std::string source;
    std::string status; ///< published, arithmetic, from memory
};

std::ostream& operator<<(std::ostream& out, const CheckValue& value);

/// Every row of all the files; a file that cannot be read has none.
std::vector<CheckValue> checkValues();

/// Does `actual` satisfy the row's tolerance? False as well for a tolerance it does not understand.
bool agrees(const CheckValue& value, double actual);
