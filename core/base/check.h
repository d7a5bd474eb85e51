// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdio>
#include <cstdlib>

/// Contract check for programmer's mistakes (never for input). On in every build but release.
#ifdef LITTORAL_CHECKS
#define LITTORAL_CHECK(condition)                                                                                      \
    do {                                                                                                               \
        if (!(condition)) {                                                                                            \
            std::fprintf(stderr, "%s:%d: contract broken: %s\n", __FILE__, __LINE__, #condition);                      \
            std::abort();                                                                                              \
        }                                                                                                              \
    } while (false)
#else
#define LITTORAL_CHECK(condition) static_cast<void>(sizeof((condition) ? 1 : 0))
#endif
