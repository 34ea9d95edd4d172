// Pieces that the readers of a lesson share: private to this room.

#pragma once

#include "archive/readers.h"

#include <cstddef>
#include <string>
#include <vector>

#include "lesson/lesson.h"

namespace treadle::archive {

/// What the seed chooses from: sets, the values of one input, or a range of lengths.
void read_value(const Place& at, lesson::Varied& out);

template <class T>
void check_count(const Place& at, const std::vector<T>& list, std::size_t most, const char* field) {
    if (!at.failed() && list.size() > most)
        at.refuse(
            "There are more than a lesson may hold.", "at most " + std::to_string(most), field);
}

} // namespace treadle::archive
