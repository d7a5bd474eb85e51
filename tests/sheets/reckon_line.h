// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sheets/text_input.h"

#include <gtest/gtest.h>

namespace littoral::test {

/// The answer to a line as typed; a failed test and an empty answer when it is refused.
inline sheets::Answer reckon(const char* line)
{
    const auto request = sheets::parseLine(QString::fromUtf8(line));
    if (!request) {
        ADD_FAILURE() << line << ": " << request.error().sentence();
        return {};
    }
    const auto answer = sheets::evaluate(*request->sheet, request->values);
    if (!answer) {
        ADD_FAILURE() << line << ": " << answer.error().sentence();
        return {};
    }
    return *answer;
}

/// One result of a line, unrounded; NaN when there is none.
inline double valueOf(const char* line, const char* key)
{
    const sheets::Answer answer = reckon(line);
    const sheets::Figure* figure = answer.find(QString::fromLatin1(key));
    EXPECT_NE(figure, nullptr) << line << ": no " << key;
    return figure == nullptr ? std::numeric_limits<double>::quiet_NaN() : figure->value;
}

/// The sentence with which a line is refused; empty when it is not.
inline std::string refusal(const char* line)
{
    const auto request = sheets::parseLine(QString::fromUtf8(line));
    if (!request) {
        return request.error().sentence();
    }
    const auto answer = sheets::evaluate(*request->sheet, request->values);
    return answer ? std::string() : answer.error().sentence();
}

} // namespace littoral::test
