// Tells a tap from a drag, and a drag from a pinch.
//
// A touch that moves no more than 10 CSS pixels is a tap and presses what it started on. A touch
// that moves further scrolls and presses nothing, and goes on with inertia when it is let go.
// A mouse or a pen presses when it is let go on what it started on; sliding off presses nothing.
// On a surface that is zoomed, and on a handle, any pointer drags.
// A second finger ends what the first began: over a surface the two zoom it, elsewhere they do
// nothing until both are gone.

#pragma once

#include "platform/page.h"

namespace treadle::platform {

/// What a drag from a place means.
enum class Hold : std::uint8_t {
    page,    ///< a finger scrolls, a mouse does nothing
    surface, ///< any pointer moves the surface
    handle,  ///< any pointer takes the handle along
};

/// Where gestures go. Positions in CSS pixels on the stage.
class GestureTarget {
public:
    virtual ~GestureTarget() = default;
    virtual void hover(float x, float y) = 0;
    virtual void hover_ends() = 0;
    virtual void press(float x, float y) = 0;
    /// The press is over. `acts` when the pointer is to act on what lies under (x, y).
    virtual void release(float x, float y, bool acts) = 0;
    [[nodiscard]] virtual Hold hold(float x, float y) = 0;
    /// Scrolls or moves what lay under the start of the drag.
    virtual void drag_scroll(float start_x, float start_y, float dx, float dy) = 0;
    /// The handle that was pressed has come so far from its place.
    virtual void drag_handle(float dx, float dy) = 0;
    /// It is let go there, or goes back to its place.
    virtual void drop_handle(bool takes) = 0;
    /// Two fingers are down around a point. False: there is nothing to zoom.
    virtual bool pinch_starts(float x, float y) = 0;
    /// The fingers' middle is at (x, y) and came by (dx, dy); their distance grew by `factor`.
    virtual void pinch(float x, float y, float factor, float dx, float dy) = 0;
};

class Gestures {
public:
    explicit Gestures(GestureTarget& target) : target_(target) {}

    void pointer(const PointerEvent& event);
    /// Moves what still glides. True while it does, so that the next frame is asked for.
    bool glide(double seconds);
    void stop_glide() { glide_x_ = glide_y_ = 0; }
    [[nodiscard]] bool is_gliding() const { return glide_x_ != 0 || glide_y_ != 0; }
    /// A handle that is on its way goes back. True when there was one.
    bool cancel_drag();

private:
    enum class State : std::uint8_t { idle, pressing, scrolling, dragging, pinching, spent };
    struct Finger {
        int id = 0;
        float x = 0;
        float y = 0;
        bool down = false;
    };

    void down(const PointerEvent& event);
    void second_finger(const PointerEvent& event);
    void move(const PointerEvent& event);
    void move_pinch();
    void start_moving(const PointerEvent& event);
    void up(const PointerEvent& event);
    void give_up();
    /// Ends what one finger was doing without an effect.
    void drop();
    [[nodiscard]] float apart() const;

    GestureTarget& target_;
    State state_ = State::idle;
    PointerKind kind_ = PointerKind::mouse;
    Hold hold_ = Hold::page;
    Finger first_;
    Finger second_;
    float start_x_ = 0, start_y_ = 0;
    float last_x_ = 0, last_y_ = 0; ///< of the first finger; of the middle while two pinch
    float last_apart_ = 0;
    double last_seconds_ = 0;
    float speed_x_ = 0, speed_y_ = 0; ///< px/s, smoothed over the last moves
    float glide_x_ = 0, glide_y_ = 0; ///< px/s after letting go
    bool caught_glide_ = false;
};

} // namespace treadle::platform
