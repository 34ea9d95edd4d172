#include "ui/views/desk.h"

#include <utility>

namespace treadle::views {

// Not inline: GCC 12 takes what a variant does not hold for something it reads.
void Desk::ask(Ask what) { asks.push_back(std::move(what)); }

int Desk::chosen_part() const {
    const auto& parts = session.job().parts;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (parts[i]->id == state.part)
            return static_cast<int>(i);
    }
    return plan::k_none;
}

} // namespace treadle::views
