#include "ui/views/state.h"

namespace treadle::views {

const Fault* find_fault(const State& state, const std::string& field) {
    for (const Fault& fault : state.faults) {
        if (fault.field == field)
            return &fault;
    }
    return nullptr;
}

void clear_fault(State& state, const std::string& field) {
    std::erase_if(state.faults, [&](const Fault& fault) { return fault.field == field; });
}

void set_fault(State& state, Fault fault) {
    clear_fault(state, fault.field);
    state.faults.push_back(std::move(fault));
}

} // namespace treadle::views
