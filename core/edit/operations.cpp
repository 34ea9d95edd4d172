#include "edit/operations.h"

#include <algorithm>
#include <string>

namespace treadle::edit {

namespace {

using base::Refusal;

bool has(const job::Part& part, int index) {
    return index >= 0 && index < static_cast<int>(part.operations.size());
}

Refusal not_there(const job::Part& part, const char* field, const char* what) {
    const std::size_t count = part.operations.size();
    const std::string range = count == 0
                                  ? "It has no operations."
                                  : "Its operations go from 1 to " + std::to_string(count) + ".";
    return {field, std::string("Part ") + part.mark + " has no such " + what + ".", range};
}

} // namespace

base::Result<job::Part> with_moved(job::Part part, int from, int to) {
    if (!has(part, from))
        return not_there(part, "operation", "operation");
    if (!has(part, to))
        return not_there(part, "to", "place in its list");
    const auto begin = part.operations.begin();
    if (from < to)
        std::rotate(begin + from, begin + from + 1, begin + to + 1);
    else
        std::rotate(begin + to, begin + from, begin + from + 1);
    return part;
}

base::Result<job::Part> with_copied(job::Part part, int at) {
    if (!has(part, at))
        return not_there(part, "operation", "operation");
    const job::Operation copy = part.operations[static_cast<std::size_t>(at)];
    if (std::holds_alternative<job::Bend>(copy)) {
        const auto end = part.operations.begin() + at + 1;
        const auto leg = std::count_if(part.operations.begin(), end, [](const auto& one) {
            return std::holds_alternative<job::Bend>(one);
        });
        if (leg < static_cast<long>(part.legs.size()))
            part.legs.insert(part.legs.begin() + leg, part.legs[static_cast<std::size_t>(leg)]);
    }
    part.operations.insert(part.operations.begin() + at + 1, copy);
    return part;
}

} // namespace treadle::edit
