// A figure while it is being typed: what it would be read as, and how it may be changed by keys.
//
// A view tells with a FigureKind how its field reads text; no widget knows an inch from a newton.

#pragma once

#include "platform/page.h"
#include "ui/widgets/rect.h"

#include <array>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace treadle::ui {

/// What a field says back to what is typed in it.
struct Echo {
    struct Choice {
        std::string typed; ///< text that stands for it
        std::string words;
    };
    std::string words;   ///< what it is read as; empty when it cannot be read
    std::string trouble; ///< why not
    std::string allowed; ///< how it is written
    std::vector<Choice> choices;
};

struct FigureKind {
    std::function<Echo(std::string_view typed)> echo;
    /// The text one step up (1) or down (-1); none: the figure has no steps.
    std::function<std::optional<std::string>(std::string_view typed, int steps)> step;
    std::string_view step_words;           ///< "1/16"
    std::array<std::string_view, 2> units; ///< marks that a key adds, such as "in"; may be empty
    bool feet = false;                     ///< feet, inches and dashes are written in it
};

/// The field that has the keyboard, as it was drawn in this frame.
struct Entering {
    std::string id;
    std::string label;
    std::string value; ///< what the page holds
    std::string typed; ///< what stands in the field now
    Rect box;
    FigureKind kind;
    bool by_touch = false;
};

/// When the number pad is drawn.
enum class PadWish : std::uint8_t { by_touch, always, never };

} // namespace treadle::ui
