// Private to the room: the lines that are ticked at the machine.

#pragma once

#include "plan/machine_steps.h"

#include <string>
#include <vector>

namespace treadle::sheet {

struct TickInputs {
    const plan::Plan& plan;
    const job::Job& job;
    const equipment::Shop& shop;
};

[[nodiscard]] std::vector<std::string> tick_words(const TickInputs& in,
                                                  const plan::MachineStep& step);
/// "punched", "cut", "notched", "bent", "shaped".
[[nodiscard]] const char* done_word(const job::Operation& operation);

} // namespace treadle::sheet
