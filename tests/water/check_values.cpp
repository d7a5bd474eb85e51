// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/water/check_values.h"

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <ostream>
#include <sstream>

namespace {

/// Cells of one line; a cell may stand in double quotes.
std::vector<std::string> cells(const std::string& line)
{
    std::vector<std::string> found(1);
    bool quoted = false;
    for (const char c : line) {
        if (c == '"') {
            quoted = !quoted;
        } else if (c == ',' && !quoted) {
            found.emplace_back();
        } else {
            found.back() += c;
        }
    }
    return found;
}

std::vector<double> numbers(const std::string& text)
{
    std::vector<double> found;
    std::istringstream in(text);
    for (std::string part; std::getline(in, part, ';');) {
        found.push_back(std::stod(part));
    }
    return found;
}

bool holds(const std::string& rule, double expected, double actual)
{
    const double error = std::abs(actual - expected);
    if (rule == "exact") {
        return actual == expected;
    }
    if (rule.starts_with("abs:")) {
        return error <= std::stod(rule.substr(4));
    }
    if (rule.starts_with("rel:")) {
        return error <= std::stod(rule.substr(4)) * std::abs(expected);
    }
    if (rule.starts_with("not:rel:")) {
        return error > std::stod(rule.substr(8)) * std::abs(expected);
    }
    return false;
}

} // namespace

std::ostream& operator<<(std::ostream& out, const CheckValue& value)
{
    return out << value.id << ' ' << value.function << " = " << value.expected << " (" << value.tolerance << "), "
               << value.source << ", " << value.status;
}

namespace {

void readFile(const std::filesystem::path& path, std::vector<CheckValue>& rows)
{
    std::ifstream in(path);
    std::string line;
    std::getline(in, line); // headings
    while (std::getline(in, line)) {
        const std::vector<std::string> c = cells(line);
        if (c.size() == 7) {
            rows.push_back({c[0], c[1], numbers(c[2]), std::stod(c[3]), c[4], c[5], c[6]});
        }
    }
}

} // namespace

std::vector<CheckValue> checkValues()
{
    const std::filesystem::path data = LITTORAL_SOURCE_DIR "/tests/data";
    std::vector<std::filesystem::path> files{data / "check_values_water.csv"};
    for (const auto& entry : std::filesystem::directory_iterator(data / "water")) {
        files.push_back(entry.path());
    }
    std::ranges::sort(files);
    std::vector<CheckValue> rows;
    for (const std::filesystem::path& file : files) {
        readFile(file, rows);
    }
    return rows;
}

bool agrees(const CheckValue& value, double actual)
{
    std::istringstream in(value.tolerance);
    bool any = false;
    for (std::string rule; std::getline(in, rule, '|');) {
        any = any || holds(rule, value.expected, actual);
    }
    return any;
}
