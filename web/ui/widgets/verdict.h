// How an answer looks: shape, word and ink together, so that none is needed alone.

#pragma once

#include "ui/widgets/text.h"
#include "ui/widgets/ui.h"

#include <string_view>

namespace treadle::ui {

enum class Verdict : std::uint8_t {
    fits,         ///< full disc
    up_to,        ///< half disc: fits up to a strength that is said
    does_not_fit, ///< cross
    not_known,    ///< broken square
};

[[nodiscard]] Ink ink_of(Verdict verdict);

/// Only the shape, without a node.
void draw_verdict_shape(Ui& ui, Verdict verdict, float centre_x, float centre_y, float size);

/// A point in a picture that can be pressed: shape, and words below it, on a ground of paper.
/// `rect` is what a finger has to hit. Words in quiet ink when it is not `firm`.
struct VerdictPoint {
    Verdict verdict = Verdict::not_known;
    std::string_view label;
    std::string_view spoken;
    bool firm = true;
};
bool verdict_point(Ui& ui, std::string_view id, const Rect& rect, const VerdictPoint& point);

enum class MarkLayout : std::uint8_t { beside, below };

/// Shape and word. `spoken` names what it is about ("BP1: fits"); the word alone when empty.
/// Pass an empty `spoken` and `silent` true inside a row that says it already.
struct Mark {
    Verdict verdict = Verdict::not_known;
    std::string_view word;
    std::string_view spoken;
    MarkLayout layout = MarkLayout::beside;
    TextSize size = TextSize::body;
    bool silent = false;
};
void verdict_mark(Ui& ui, const Rect& rect, const Mark& mark);

/// Demand against offer. Solid to what the weakest metal of the grade asks, hatched to what the
/// strongest asks. The upright stroke is the offer and stands at the same place in every strip of
/// one width, so that a column of them can be compared.
struct Strip {
    double low_share = 0;                 ///< demand over offer, weakest metal
    double high_share = 0;                ///< demand over offer, strongest metal
    Verdict verdict = Verdict::not_known; ///< not_known: empty strip with a broken outline
    std::string_view spoken;              ///< the whole sentence
};
void demand_strip(Ui& ui, const Rect& rect, const Strip& strip);

/// One sentence with a verdict's ink and shape before it. Wraps. Returns the height used.
float message_line(Ui& ui, const Rect& rect, Verdict verdict, std::string_view words);

/// Height that message_line() would use.
[[nodiscard]] float message_height(const Ui& ui, float width, std::string_view words);

/// A number in a ring, as beside an operation; filled when chosen.
void number_ring(Ui& ui, float centre_x, float centre_y, int number, bool chosen);

} // namespace treadle::ui
