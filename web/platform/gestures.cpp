#include "platform/gestures.h"

#include <algorithm>
#include <cmath>

namespace treadle::platform {

namespace {

// A finger rolls a few pixels while it taps; 10 is common practice, no source.
constexpr float k_tap_px = 10;
// A glide loses this share of its speed in a second; chosen by trying, like a page in a browser.
constexpr double k_glide_kept_per_second = 0.03;
constexpr float k_glide_stops_px_per_s = 25;
constexpr float k_glide_least_px_per_s = 120;
// A finger that rested before it was lifted throws nothing.
constexpr double k_rest_seconds = 0.08;

} // namespace

void Gestures::pointer(const PointerEvent& event) {
    switch (event.phase) {
    case PointerPhase::down:
        down(event);
        break;
    case PointerPhase::move:
        move(event);
        break;
    case PointerPhase::up:
        up(event);
        break;
    case PointerPhase::cancel:
        if (state_ != State::idle && event.id == id_)
            give_up();
        break;
    case PointerPhase::leave:
        if (state_ == State::idle)
            target_.hover_ends();
        break;
    }
}

void Gestures::down(const PointerEvent& event) {
    if (state_ != State::idle) {
        // A second finger: nobody meant a press by that.
        if (event.id != id_ && state_ == State::pressing) {
            target_.release(last_x_, last_y_, false);
            state_ = State::spent;
        }
        return;
    }
    // A touch on a gliding list only stops it.
    caught_glide_ = is_gliding();
    stop_glide();
    id_ = event.id;
    kind_ = event.kind;
    start_x_ = last_x_ = event.x;
    start_y_ = last_y_ = event.y;
    last_seconds_ = event.seconds;
    speed_x_ = speed_y_ = 0;
    state_ = State::pressing;
    if (!caught_glide_)
        target_.press(event.x, event.y);
}

void Gestures::move(const PointerEvent& event) {
    if (state_ == State::idle) {
        if (event.kind != PointerKind::touch)
            target_.hover(event.x, event.y);
        return;
    }
    if (event.id != id_)
        return;
    const float dx = event.x - last_x_;
    const float dy = event.y - last_y_;
    const double dt = event.seconds - last_seconds_;
    if (dt > 0) {
        const float weight = 0.6F;
        speed_x_ += weight * (static_cast<float>(dx / dt) - speed_x_);
        speed_y_ += weight * (static_cast<float>(dy / dt) - speed_y_);
    }
    if (state_ == State::pressing && kind_ == PointerKind::touch &&
        std::hypot(event.x - start_x_, event.y - start_y_) > k_tap_px) {
        state_ = State::scrolling;
        target_.release(event.x, event.y, false);
    }
    if (state_ == State::scrolling)
        target_.drag_scroll(start_x_, start_y_, dx, dy);
    else if (state_ == State::pressing && kind_ != PointerKind::touch)
        target_.hover(event.x, event.y);
    last_x_ = event.x;
    last_y_ = event.y;
    last_seconds_ = event.seconds;
}

void Gestures::up(const PointerEvent& event) {
    if (state_ == State::idle || event.id != id_)
        return;
    if (state_ == State::pressing) {
        // A finger that rolled a little still means what it started on.
        const bool touch = kind_ == PointerKind::touch;
        target_.release(touch ? start_x_ : event.x, touch ? start_y_ : event.y, !caught_glide_);
        if (touch)
            target_.hover_ends();
    } else if (state_ == State::scrolling && event.seconds - last_seconds_ < k_rest_seconds &&
               std::hypot(speed_x_, speed_y_) > k_glide_least_px_per_s) {
        glide_x_ = speed_x_;
        glide_y_ = speed_y_;
    }
    state_ = State::idle;
}

void Gestures::give_up() {
    if (state_ == State::pressing)
        target_.release(last_x_, last_y_, false);
    target_.hover_ends();
    state_ = State::idle;
}

bool Gestures::glide(double seconds) {
    if (!is_gliding())
        return false;
    const auto dt = static_cast<float>(std::clamp(seconds, 0.0, 0.1));
    target_.drag_scroll(start_x_, start_y_, glide_x_ * dt, glide_y_ * dt);
    const auto kept = static_cast<float>(std::pow(k_glide_kept_per_second, dt));
    glide_x_ *= kept;
    glide_y_ *= kept;
    if (std::hypot(glide_x_, glide_y_) < k_glide_stops_px_per_s)
        stop_glide();
    return true;
}

} // namespace treadle::platform
