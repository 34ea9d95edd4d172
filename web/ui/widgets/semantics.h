// What a screen reader, a keyboard and a browser test see: one node for each thing drawn.
//
// Each widget adds its node in the frame that draws it. The list is compared with the last frame's
// and only the differences leave, so a still picture costs nothing.

#pragma once

#include "ui/widgets/rect.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace treadle::ui {

enum class Role : std::uint8_t {
    button,
    tab,
    row,    ///< a list entry that can be chosen; a button that says whether it is pressed
    toggle, ///< checkbox
    text,   ///< text field
    number, ///< text field for a figure with its unit
    choice, ///< select
    heading,
    words,   ///< plain text
    message, ///< text with a meaning: an error, a refusal
    picture, ///< drawing, verdict mark, strip: an image with a sentence
    // Containers: nodes added until they end are inside.
    group,
    tabs,
    list,
    scroll,
    dialog,
};

[[nodiscard]] bool is_container(Role role);
/// As the platform is told it: "button", "tab", …
[[nodiscard]] const char* role_word(Role role);

struct Node {
    std::string id; ///< stable from frame to frame, unique in a frame
    Role role = Role::words;
    std::string name;
    std::string value;
    std::string note;  ///< longer description, why disabled, unit
    std::string error; ///< what is wrong with a field's value
    std::vector<std::string> options;
    int selected = -1; ///< of options
    int level = 0;     ///< of a heading; line count of a text field
    bool enabled = true;
    bool on = false;   ///< checked, selected or pressed
    bool live = false; ///< a text field that gives every letter at once
    bool keeps_focus =
        false;       ///< a container: pressing what is in it leaves the keyboard where it is
    int parent = -1; ///< index of the container
    Rect rect;       ///< inside a scroll: from the top left of its content
    float content_height = 0;
    float offset = 0; ///< of a scroll
};

class Semantics {
public:
    void begin_frame();
    /// A fresh node in reused memory, inside the open container.
    Node& add(std::string_view id, Role role);
    /// The node added last.
    [[nodiscard]] Node& last() { return nodes_[count_ - 1]; }
    /// Nodes added from now on are inside the container added last.
    void open_last();
    /// Ends the innermost container and gives it back.
    Node& close();
    /// Compares with the last frame. False when nothing changed.
    /// `focus_wish`: id of the node that is to get the keyboard, or empty.
    bool end_frame(std::string_view focus_wish);

    /// The changes of the last frame, as JSON: {"nodes":[…changed…], "order":[[id,parent]…] when
    /// it changed, "focus":id when wished}; empty when nothing changed. To be taken each frame.
    [[nodiscard]] std::string take_changes() { return std::exchange(changes_, {}); }

    [[nodiscard]] std::size_t size() const { return last_count_; } ///< of the last frame
    [[nodiscard]] const Node& at(std::size_t index) const { return last_[index]; }
    /// Null when no such node was drawn in the last frame.
    [[nodiscard]] const Node* find(std::string_view id) const;

private:
    /// Two things of one id would share one element: the later one gets another id. Such a view
    /// is wrong (presses go to the first), but the page stays whole.
    void part_namesakes();
    /// Ids and containers are those of the last frame, one by one.
    [[nodiscard]] bool has_same_order() const;

    std::vector<Node> nodes_; ///< longer than count_: the rest is memory to reuse
    std::vector<Node> last_;
    std::size_t count_ = 0;
    std::size_t last_count_ = 0;
    std::vector<int> open_;
    std::string changes_;
};

} // namespace treadle::ui
