// Tells a tap from a drag.
//
// A touch that moves no more than 10 CSS pixels is a tap and presses what it started on. A touch
// that moves further scrolls and presses nothing, and goes on with inertia when it is let go.
// A mouse or a pen presses when it is let go on what it started on; sliding off presses nothing.
// Only the first pointer counts: a second finger ends the gesture.

#pragma once

#include "platform/page.h"

namespace treadle::platform {

/// Where gestures go. Positions in CSS pixels on the stage.
class GestureTarget {
public:
    virtual ~GestureTarget() = default;
    virtual void hover(float x, float y) = 0;
    virtual void hover_ends() = 0;
    virtual void press(float x, float y) = 0;
    /// The press is over. `acts` when the pointer is to act on what lies under (x, y).
    virtual void release(float x, float y, bool acts) = 0;
    /// Scrolls what lay under the start of the drag.
    virtual void drag_scroll(float start_x, float start_y, float dx, float dy) = 0;
};

class Gestures {
public:
    explicit Gestures(GestureTarget& target) : target_(target) {}

    void pointer(const PointerEvent& event);
    /// Moves what still glides. True while it does, so that the next frame is asked for.
    bool glide(double seconds);
    void stop_glide() { glide_x_ = glide_y_ = 0; }
    [[nodiscard]] bool is_gliding() const { return glide_x_ != 0 || glide_y_ != 0; }

private:
    enum class State : std::uint8_t { idle, pressing, scrolling, spent };

    void down(const PointerEvent& event);
    void move(const PointerEvent& event);
    void up(const PointerEvent& event);
    void give_up();

    GestureTarget& target_;
    State state_ = State::idle;
    PointerKind kind_ = PointerKind::mouse;
    int id_ = 0;
    float start_x_ = 0, start_y_ = 0;
    float last_x_ = 0, last_y_ = 0;
    double last_seconds_ = 0;
    float speed_x_ = 0, speed_y_ = 0; ///< px/s, smoothed over the last moves
    float glide_x_ = 0, glide_y_ = 0; ///< px/s after letting go
    bool caught_glide_ = false;
};

} // namespace treadle::platform
