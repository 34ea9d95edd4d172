// Keeps where somebody is on the page over a reload: a second after the last picture, and in the
// moment before the page may be gone. Draws nothing for it.

#pragma once

#include "platform/ports.h"
#include "ui/views/state.h"
#include "ui/widgets/ui.h"

#include <functional>
#include <string>

#include "place_text.h"

namespace treadle::web {

class PlaceKeeper {
public:
    PlaceKeeper(platform::Ports& ports, views::State& state) : ports_(ports), state_(state) {}

    /// Reads what was kept; answers once.
    void load(std::function<void()> answer);
    /// Puts it back, and keeps the place from now on. What is chosen may be missing in the job.
    void restore();

    void before_frame(ui::Ui& ui);
    void after_frame(const ui::Ui& ui);
    /// At once: an edit is about to be stored, and who comes back to it comes back here.
    void keep();
    /// Keeps it now, for this tab alone as well: the next page of the tab opens there, whatever the
    /// other tabs have kept.
    void flush(std::function<void()> done);

private:
    void wait();

    platform::Ports& ports_;
    views::State& state_;
    std::string kept_; ///< as it lies in the store
    PlaceBeside beside_;
    bool is_to_scroll_ = false;
    bool is_waiting_ = false;
};

} // namespace treadle::web
