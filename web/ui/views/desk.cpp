#include "ui/views/desk.h"

namespace treadle::views {

int Desk::chosen_part() const {
    const auto& parts = session.job().parts;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (parts[i]->id == state.part)
            return static_cast<int>(i);
    }
    return plan::k_none;
}

} // namespace treadle::views
