// One frame of the page, as views and widgets see it.
//
// A view never calls Dear ImGui: it cuts rectangles and calls widgets. Widgets draw through
// draw(), put a node into semantics() and ask here whether they were pressed.

#pragma once

#include "ui/theme/fonts.h"
#include "ui/theme/theme.h"
#include "ui/widgets/entry.h"
#include "ui/widgets/rect.h"
#include "ui/widgets/semantics.h"
#include "ui/widgets/surface.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

struct ImDrawList;

namespace treadle::ui {

/// How a control is held at this moment.
struct Touch {
    bool hovered = false;
    bool pressed = false; ///< a pointer is down on it
    bool focused = false;
};

/// A handle on its way: how far from where it was taken.
struct HandleDrag {
    enum class Phase : std::uint8_t { moves, dropped, cancelled };
    float dx = 0;
    float dy = 0;
    Phase phase = Phase::moves;
};

class Ui {
public:
    // ---- for views ----------------------------------------------------------------------------

    /// The whole stage.
    [[nodiscard]] const Rect& screen() const { return screen_; }
    [[nodiscard]] const Theme& theme() const { return theme_; }
    [[nodiscard]] const Metrics& size() const { return theme_.metrics; }
    /// Narrower than it is high, or under 700 px: one column.
    [[nodiscard]] bool is_narrow() const { return screen_.w < 700; }

    /// Ids made until pop_scope() begin with `part` and a slash. Prefer Scope.
    void push_scope(std::string_view part);
    void pop_scope();

    /// True once when this key came and nothing else took it: key("z", Mod::control).
    /// `shift` is told apart only for keys that have a name ("ArrowLeft"), not for signs.
    enum class Mod : std::uint8_t { none, shift, control, control_shift };
    [[nodiscard]] bool key(std::string_view name, Mod mod = Mod::none);

    /// False when `rect` is scrolled out of sight: a long list may skip the entry altogether.
    [[nodiscard]] bool is_visible(const Rect& rect) const;
    /// Scrolls the open scroll area so that `rect` stands at its top, from the next frame on.
    void bring_to_top(const Rect& rect);
    /// True also for what lies just out of sight. A long list gives the nodes of these entries: the
    /// keyboard and a screen reader go on to the next one, and the list follows them.
    [[nodiscard]] bool is_near(const Rect& rect) const;
    /// Scrolls the open scroll so far that `rect` is in sight.
    void bring_into_sight(const Rect& rect);
    void want_frame() { wants_frame_ = true; } ///< one more, as while something is computed
    void outdate() { wants_frame_ = is_outdated_ = true; } ///< this one need not be seen
    /// Puts the keyboard focus on the control with this full id, after this frame.
    void move_focus(std::string_view id) { focus_wish_ = id; }

    /// How far each area is scrolled, by its full id; also of areas that are not shown now.
    [[nodiscard]] std::map<std::string, float> scroll_offsets() const;
    void scroll_to(const std::string& full_id, float offset); ///< drawn already, or not yet

    /// Plain area in an ink; gives no node.
    void fill(const Rect& rect, Ink ink);
    void outline(const Rect& rect, Ink ink, float stroke);
    /// Rule along an edge of a region.
    void rule(float x0, float y0, float x1, float y1, Ink ink, float stroke);

    // ---- for widgets --------------------------------------------------------------------------

    [[nodiscard]] ImDrawList& draw() { return *draw_; }
    [[nodiscard]] Colour colour(Ink ink) const { return theme_.palette[ink]; }
    [[nodiscard]] const Fonts& fonts() const { return fonts_; }
    [[nodiscard]] Semantics& semantics() { return semantics_; }

    /// Adds the node of a thing that is only seen. The id is `id` in the open scope.
    Node& add_node(std::string_view id, Role role, const Rect& rect, std::string_view name);
    /// Adds the node of a thing that can be pressed, and makes it answer to pointers.
    /// The reference holds until the next node is added.
    Node& add_control(std::string_view id,
                      Role role,
                      const Rect& rect,
                      std::string_view name,
                      bool enabled = true);
    /// A rectangle that takes taps, drags and pinches where no control lies. It gives no node: what
    /// can be done on it needs controls as well.
    Surface& add_surface(std::string_view id, const Rect& rect);
    /// How the surface with this id in the open scope is looked at.
    [[nodiscard]] Surface& surface(std::string_view id) { return surfaces_[full_id(id)]; }
    /// Where it was tapped since the last frame.
    [[nodiscard]] std::optional<PointMm> take_tap(std::string_view id);
    /// A control that follows the pointer that takes it.
    Node& add_handle(std::string_view id, const Rect& rect, std::string_view name);
    [[nodiscard]] std::optional<HandleDrag> take_drag(const std::string& full_id);
    /// The keyboard is at a control of the open scope, or a pointer pressed there last.
    [[nodiscard]] bool has_attention() const;
    /// An id for a thing that has no name of its own, stable while the view keeps its order.
    [[nodiscard]] std::string next_id(std::string_view kind);

    /// How the control with this full id is held.
    [[nodiscard]] Touch touch(const std::string& full_id) const;
    /// True once when it was pressed by pointer, key or screen reader.
    [[nodiscard]] bool take_activation(const std::string& full_id);
    [[nodiscard]] std::optional<std::string> take_text(const std::string& full_id);
    [[nodiscard]] std::optional<int> take_choice(const std::string& full_id);
    /// What is being typed into the field with this full id; none when the keyboard is elsewhere.
    [[nodiscard]] const platform::Typing* typing_in(const std::string& full_id) const;
    /// The field that has the keyboard tells what the number pad and the echo need of it.
    void enter(Entering entry) { entry_ = std::move(entry); }
    [[nodiscard]] PadWish pad_wish() const { return pad_wish_; }
    /// Scrolls the open area so that `rect` is seen whole, once after the keyboard came into a
    /// field and whenever the room for the page changes; not against the user's own scrolling.
    void keep_in_sight(const Rect& rect);
    /// After a control was drawn: its ring, when it has the keyboard.
    void draw_focus_ring(const std::string& full_id, const Rect& rect);

    // Scrolling: everything until end_scroll is clipped and moved.
    /// Returns where the content starts: `rect` moved by the offset.
    Rect begin_scroll(std::string_view id, const Rect& rect, std::string_view name);
    void end_scroll(float content_height);
    void begin_container(std::string_view id, Role role, const Rect& rect, std::string_view name);
    void end_container();

    /// Words that had no room and were drawn with the sign of a cut, for drawn().
    void note_cut(std::string_view words) { cut_words_.emplace_back(words); }
    /// What can be pressed in the last frame, as hit testing has it, and which words were cut:
    /// JSON for a test that compares it with the mirror. Costs nothing until it is asked for.
    [[nodiscard]] std::string drawn() const;

private:
    friend class Stage;
    enum class HitKind : std::uint8_t {
        control,
        native, ///< the element under the pointer answers by itself (input, select)
        surface,
        handle,
    };
    struct Hit {
        std::string id;
        Rect rect; ///< already clipped
        bool enabled = true;
        HitKind kind = HitKind::control;
    };
    struct ScrollState {
        float offset = 0;
        float content = 0;
        float height = 0;
    };
    struct ScrollHit {
        std::string id;
        Rect rect;
    };
    struct Activation {
        std::string id;
        int frames = 0; ///< it has waited; a press that nobody takes is forgotten
    };
    struct Origin {
        float x;
        float y;
    };

    void begin_frame(const Rect& screen, ImDrawList& draw);
    /// True when the mirror has changed.
    bool end_frame();
    [[nodiscard]] const Hit* hit(float x, float y) const;
    /// The surface there, whatever lies on it; null when there is none.
    [[nodiscard]] Surface* surface_at(float x, float y);
    [[nodiscard]] std::string full_id(std::string_view id) const;
    [[nodiscard]] Rect clip() const { return clips_.empty() ? screen_ : clips_.back(); }
    void add_hit(std::string_view full_id, const Rect& rect, bool enabled, HitKind kind);
    /// Scrolls the area under the point. True when something moved.
    bool scroll_at(float x, float y, float dy);

    Theme theme_;
    Fonts fonts_;
    Rect screen_;
    ImDrawList* draw_ = nullptr;
    Semantics semantics_;
    std::string scope_;
    std::vector<std::size_t> scope_lengths_;
    std::vector<int> counters_;
    std::vector<Rect> clips_;
    std::vector<Origin> origins_; ///< of the open containers: their nodes are placed from there
    std::vector<std::string> open_scrolls_;
    std::vector<ScrollHit> scroll_hits_;
    std::vector<ScrollHit> last_scroll_hits_;
    std::vector<Hit> hits_;
    std::size_t hit_count_ = 0;
    std::vector<Hit> last_hits_;
    std::size_t last_hit_count_ = 0;
    std::size_t modal_from_ = 0; ///< hits before this one lie under a dialog
    std::size_t last_modal_from_ = 0;
    std::size_t scroll_modal_from_ = 0;
    std::size_t last_scroll_modal_from_ = 0;
    std::map<std::string, ScrollState, std::less<>> scrolls_;
    std::vector<Activation> activations_;
    std::map<std::string, std::string> texts_;
    std::map<std::string, int> choices_;
    std::map<std::string, Surface, std::less<>> surfaces_;
    std::map<std::string, PointMm, std::less<>> taps_;
    std::string dragged_;
    std::optional<HandleDrag> drag_;
    struct Key {
        std::string name;
        Mod mod;
    };
    std::vector<Key> keys_;
    std::vector<Key> known_keys_; ///< asked for in the last frame: these the browser does not get
    std::string hovered_;
    std::string pressed_;
    std::string attended_; ///< pressed last
    std::string focused_;
    std::string focus_wish_;
    std::vector<std::string> cut_words_;
    platform::Typing typing_;
    std::optional<Entering> entry_;
    PadWish pad_wish_ = PadWish::by_touch;
    int frames_to_reveal_ = 0; ///< a first one may not know the height of the content yet
    bool wants_frame_ = false;
    bool is_outdated_ = false;
};

/// Ids inside this block begin with `part` and a slash.
class Scope {
public:
    Scope(Ui& ui, std::string_view part) : ui_(ui) { ui_.push_scope(part); }
    ~Scope() { ui_.pop_scope(); }
    Scope(const Scope&) = delete;
    Scope& operator=(const Scope&) = delete;

private:
    Ui& ui_;
};

} // namespace treadle::ui
