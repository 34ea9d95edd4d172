// What every fuzzer asks of an answer.

#pragma once

#include "base/result.h"

#include <cstdio>
#include <cstdlib>

namespace treadle::fuzz {

/// Says which claim broke: with optimization on, the stack alone does not tell.
inline void must(bool holds,
                 const char* file = __builtin_FILE(),
                 unsigned line = __builtin_LINE()) {
    if (holds)
        return;
    std::fprintf(stderr, "%s:%u does not hold\n", file, line);
    std::abort();
}

/// A refusal says where and why.
inline void check_refusal(const base::Refusal& refusal) {
    must(!refusal.field.empty() && !refusal.reason.empty());
}

} // namespace treadle::fuzz
