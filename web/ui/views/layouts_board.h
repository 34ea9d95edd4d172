// A layout on its way into the job, as it is being filled in: losing it loses no work.

#pragma once

#include "job/layout_record.h"

#include <string>
#include <vector>

namespace treadle::views {

struct LayoutBoard {
    bool open = false; ///< shown in the place of the parts
    std::string id;    ///< of the job's layout that is being changed; empty: a new one
    std::string kind;
    std::string mark;
    std::vector<job::LayoutValue> values;
    bool more = false;     ///< the inputs that may stay empty are shown
    bool workings = false; ///< the workings are shown
    int version = 0;       ///< rises with every change of the above
};

} // namespace treadle::views
