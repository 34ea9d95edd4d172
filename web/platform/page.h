// What a platform tells the page, and what it gets back: the other half of ports.h.
//
// A platform owns the canvas, the listeners and the mirror's elements. The page owns every
// decision: which control was meant, whether a drag scrolls, what is drawn.

#pragma once

#include <cstdint>
#include <string>

namespace treadle::platform {

enum class PointerKind : std::uint8_t { mouse, touch, pen };
enum class PointerPhase : std::uint8_t { down, move, up, cancel, leave };

/// One pointer event, in CSS pixels from the stage's top left corner.
struct PointerEvent {
    PointerPhase phase = PointerPhase::move;
    PointerKind kind = PointerKind::mouse;
    int id = 0;
    float x = 0;
    float y = 0;
    double seconds = 0; ///< time of the event, any zero
};

/// A wheel step, already normalised by the platform: 1 is one notch.
struct WheelEvent {
    float x = 0;
    float y = 0;
    float notches_x = 0;
    float notches_y = 0;
    bool zoom = false; ///< Ctrl or Cmd was held, or two fingers pinched a touchpad
};

/// A key that no input element took. Modifiers come with each event, so none can get stuck.
struct KeyEvent {
    std::string key;      ///< as in KeyboardEvent.key: "z", "Escape", "F2"
    bool control = false; ///< Ctrl, or Cmd on a Mac
    bool shift = false;
    bool alt = false;
};

/// Text that stands in a field while the user types: told at every letter, taken only at the end.
struct Typing {
    std::string id; ///< of the field that has the keyboard; empty: none
    std::string text;
    bool by_touch = false; ///< a finger went into it, and no key of a keyboard was pressed since
};

struct StageSize {
    float width = 0; ///< CSS pixels
    float height = 0;
    float density = 1; ///< device pixels to a CSS pixel
    bool coarse_pointer = false;
};

/// What the browser or the system prefers, told at the start and when it changes.
struct Preferences {
    bool dark = false;
    bool reduced_motion = false;
    bool more_contrast = false;
};

class Page {
public:
    virtual ~Page() = default;

    virtual void resize(const StageSize& size) = 0;
    virtual void prefer(const Preferences& preferences) = 0;
    virtual void pointer(const PointerEvent& event) = 0;
    /// True when the page used it. What it leaves of Ctrl and wheel is the browser's own zoom.
    virtual bool wheel(const WheelEvent& event) = 0;
    /// True when the page used the key, so that the browser does not.
    virtual bool key(const KeyEvent& event) = 0;

    // From the mirror's elements, by the id of their node.
    virtual void activate(const std::string& id) = 0;
    virtual void commit_text(const std::string& id, const std::string& value) = 0;
    virtual void typing(const Typing& typing) = 0;
    virtual void choose(const std::string& id, int index) = 0;
    virtual void focus(const std::string& id) = 0; ///< empty: nothing has the focus
    virtual void scrolled(const std::string& id, float offset) = 0;

    /// Makes what a picture needs. When Dear ImGui's atlas has no texture after it, the platform
    /// loads one before it calls frame().
    virtual void prepare() = 0;
    /// Makes one picture. The platform then draws what Dear ImGui holds, over a canvas cleared to
    /// the colour returned (ImU32): filling every pixel once more is what costs a weak tablet most.
    virtual std::uint32_t frame(double seconds_since_last) = 0;
    /// The last picture shows what has changed since: another follows at once, and the platform may
    /// leave this one undrawn.
    [[nodiscard]] virtual bool is_outdated() const { return false; }
    /// Changes of the mirror that the last frame made, as JSON for the platform; empty when none.
    [[nodiscard]] virtual std::string take_mirror_changes() = 0;
    /// What the last frame drew, as JSON for a test of the mirror.
    [[nodiscard]] virtual std::string drawn() const { return "{}"; }
};

} // namespace treadle::platform
