#include "platform/gestures.h"

#include <algorithm>
#include <cmath>

namespace treadle::platform {

namespace {

// A finger rolls a few pixels while it taps; 10 is common practice, no source.
constexpr float k_tap_px = 10;
// A mouse does not roll; it only trembles a little. Common practice, no source.
constexpr float k_click_px = 4;
constexpr float k_least_apart_px = 20;
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
        if (state_ != State::idle && (event.id == first_.id || event.id == second_.id))
            give_up();
        break;
    case PointerPhase::leave:
        if (state_ == State::idle)
            target_.hover_ends();
        break;
    }
}

void Gestures::down(const PointerEvent& event) {
    // One that comes down again was lost before it went up.
    if (state_ != State::idle && first_.down && event.id == first_.id)
        give_up();
    if (state_ != State::idle) {
        second_finger(event);
        return;
    }
    // A touch on something that glides only stops it.
    caught_glide_ = is_gliding();
    stop_glide();
    first_ = {event.id, event.x, event.y, true};
    second_ = {};
    kind_ = event.kind;
    start_x_ = last_x_ = event.x;
    start_y_ = last_y_ = event.y;
    last_seconds_ = event.seconds;
    speed_x_ = speed_y_ = 0;
    state_ = State::pressing;
    hold_ = target_.hold(event.x, event.y);
    if (!caught_glide_)
        target_.press(event.x, event.y);
}

void Gestures::second_finger(const PointerEvent& event) {
    if (second_.down)
        return; // a third one does nothing
    drop();
    second_ = {event.id, event.x, event.y, true};
    state_ = State::spent;
    if (kind_ != PointerKind::touch || event.kind != PointerKind::touch || !first_.down)
        return;
    last_x_ = (first_.x + second_.x) / 2;
    last_y_ = (first_.y + second_.y) / 2;
    last_apart_ = apart();
    if (target_.pinch_starts(last_x_, last_y_))
        state_ = State::pinching;
}

float Gestures::apart() const { return std::hypot(second_.x - first_.x, second_.y - first_.y); }

void Gestures::move(const PointerEvent& event) {
    if (state_ == State::idle) {
        if (event.kind != PointerKind::touch)
            target_.hover(event.x, event.y);
        return;
    }
    Finger* finger = first_.down && event.id == first_.id     ? &first_
                     : second_.down && event.id == second_.id ? &second_
                                                              : nullptr;
    if (finger == nullptr)
        return;
    finger->x = event.x;
    finger->y = event.y;
    if (state_ == State::pinching)
        return move_pinch();
    if (state_ == State::spent)
        return;
    const float dx = event.x - last_x_;
    const float dy = event.y - last_y_;
    const double dt = event.seconds - last_seconds_;
    if (dt > 0) {
        const float weight = 0.6F;
        speed_x_ += weight * (static_cast<float>(dx / dt) - speed_x_);
        speed_y_ += weight * (static_cast<float>(dy / dt) - speed_y_);
    }
    start_moving(event);
    if (state_ == State::scrolling)
        target_.drag_scroll(start_x_, start_y_, dx, dy);
    else if (state_ == State::dragging)
        target_.drag_handle(event.x - start_x_, event.y - start_y_);
    else if (state_ == State::pressing && kind_ != PointerKind::touch)
        target_.hover(event.x, event.y);
    last_x_ = event.x;
    last_y_ = event.y;
    last_seconds_ = event.seconds;
}

void Gestures::start_moving(const PointerEvent& event) {
    const bool touch = kind_ == PointerKind::touch;
    if (state_ != State::pressing || (!touch && hold_ == Hold::page))
        return;
    const float far = std::hypot(event.x - start_x_, event.y - start_y_);
    if (far <= (touch ? k_tap_px : k_click_px))
        return;
    if (hold_ == Hold::handle && !caught_glide_) {
        state_ = State::dragging; // the handle stays pressed
        return;
    }
    state_ = State::scrolling;
    target_.release(event.x, event.y, false);
}

void Gestures::move_pinch() {
    const float x = (first_.x + second_.x) / 2;
    const float y = (first_.y + second_.y) / 2;
    // Fingers that touch each other have no direction left to tell.
    const float now = std::max(apart(), k_least_apart_px);
    target_.pinch(x, y, now / std::max(last_apart_, k_least_apart_px), x - last_x_, y - last_y_);
    last_x_ = x;
    last_y_ = y;
    last_apart_ = now;
}

void Gestures::up(const PointerEvent& event) {
    if (state_ == State::idle)
        return;
    if (state_ == State::pinching || state_ == State::spent) {
        for (Finger* finger : {&first_, &second_})
            if (finger->down && finger->id == event.id)
                finger->down = false;
        state_ = first_.down || second_.down ? State::spent : State::idle;
        return;
    }
    if (event.id != first_.id)
        return;
    if (state_ == State::pressing) {
        // A finger that rolled a little still means what it started on.
        const bool touch = kind_ == PointerKind::touch;
        target_.release(touch ? start_x_ : event.x, touch ? start_y_ : event.y, !caught_glide_);
        if (touch)
            target_.hover_ends();
    } else if (state_ == State::dragging) {
        target_.drop_handle(true);
        target_.release(event.x, event.y, false);
    } else if (state_ == State::scrolling && event.seconds - last_seconds_ < k_rest_seconds &&
               std::hypot(speed_x_, speed_y_) > k_glide_least_px_per_s) {
        glide_x_ = speed_x_;
        glide_y_ = speed_y_;
    }
    first_.down = false;
    state_ = State::idle;
}

void Gestures::drop() {
    if (state_ == State::dragging)
        target_.drop_handle(false);
    if (state_ == State::pressing || state_ == State::dragging)
        target_.release(last_x_, last_y_, false);
}

bool Gestures::cancel_drag() {
    if (state_ != State::dragging)
        return false;
    drop();
    state_ = State::spent;
    return true;
}

void Gestures::give_up() {
    drop();
    target_.hover_ends();
    first_.down = second_.down = false;
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
