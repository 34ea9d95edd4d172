// What the view at the machine shows: the step, put into words and a picture once.

#pragma once

#include "plan/machine_run.h"
#include "sheet/machine_words.h"

#include "ui/views/reading.h"

#include <cstdint>
#include <string>
#include <vector>

namespace treadle::views {

struct AtMachineBoard {
    bool is_made = false; ///< steps are listed only once somebody asks for them
    plan::MachineRun run;
    // Of the step shown:
    sheet::MachineWords words;
    Picture picture;
    bool has_picture = false;
    std::string count;     ///< "4"
    std::string of;        ///< "of 6"
    std::string count_of;  ///< "punched", "ticked"
    std::string plus_name; ///< what the next tap does, spoken
    std::string minus_name;
    bool can_add = false;
    bool can_take_back = false;
    bool changed = false; ///< since the work on it was begun

    bool at_end = false; ///< past the last step
    bool is_held = false;
    bool came_back = false; ///< the page was closed meanwhile
    std::string note;       ///< why it is held
    std::string when;       ///< of the last tap
    std::string resume;     ///< "You were at step 3: 4 of 12 punched."
    std::string open;       ///< steps that are not complete
    std::vector<std::string> not_here;
    std::vector<std::string> set_ups; ///< "3 of 8 steps done", by set-up of the order
    bool is_begun = false;            ///< anything of this job
    bool can_stay_awake = true;
    std::string not_kept; ///< why counts would not survive the page
};

} // namespace treadle::views
