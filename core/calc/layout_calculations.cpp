#include "calc/answer_builder.h"
#include "calc/calculations.h"
#include "calc/layout_inputs.h"

#include "layout/cards.h"
#include "layout/gauge.h"
#include "layout/running.h"
#include "layout/stock.h"

namespace treadle::calc {

namespace {

using base::Result;

constexpr InputSpec k_gauge_inputs[] = {
    {"gauge", InputKind::count, true, "gauge number", "", "16"},
    {"metal",
     InputKind::word,
     true,
     "the same number is another thickness in each; tube is its wall",
     "steel|galvanised|stainless|aluminium|tube"},
};
constexpr OutputSpec k_gauge_outputs[] = {{"thickness", "mm", "nominal"}};
constexpr const base::FormulaCard* k_gauge_cards[] = {&layout::k_gauge_steel_card,
                                                      &layout::k_gauge_galvanised_card,
                                                      &layout::k_gauge_stainless_card,
                                                      &layout::k_gauge_aluminium_card,
                                                      &layout::k_gauge_tube_card};

Result<Answer> answer_gauge(Reader& in) {
    const int gauge = in.count("gauge", 1, 99);
    const auto metal = word_or_first<layout::GaugeMetal>(in, "metal");
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("thickness", layout::gauge_working(gauge, metal)).finish();
}

constexpr InputSpec k_running_inputs[] = {
    {"length", InputKind::length, true, "of the part", "", "23-7/16 in"},
    {"first", InputKind::length, true, "datum to the first place", "", "1-1/2 in"},
    {"last", InputKind::length, true, "last place to the other end", "", "1-1/2 in"},
    {"count", InputKind::count, true, "places", "", "6"},
    {"step", InputKind::length, false, "places are rounded to it; else not", "", "1/16 in"},
};
constexpr OutputSpec k_running_outputs[] = {
    {"pitch", "mm", "not rounded"},
    {"positions", "mm", "list: each place from the datum"},
};
constexpr const base::FormulaCard* k_running_cards[] = {&layout::k_running_card};

Result<Answer> answer_running(Reader& in) {
    layout::RunningQuestion q;
    q.length = in.length("length");
    q.first = in.length("first");
    q.last = in.length("last");
    q.count = in.count("count", 2, 1000);
    q.step = size_given(in, "step");
    if (in.failed())
        return in.refusal();
    const auto places = layout::running_places(q);
    if (!places.ok())
        return places.refusal();
    return AnswerBuilder()
        .add("pitch", layout::running_working(q))
        .list("positions", places->places)
        .finish();
}

constexpr InputSpec k_usable_inputs[] = {
    {"length", InputKind::length, true, "of the bar", "", "21 ft"},
    {"trim_start", InputKind::length, false, "cut off first", "", "1/2 in"},
    {"trim_end", InputKind::length, false, "left at the far end", "", "1/2 in"},
};
constexpr OutputSpec k_usable_outputs[] = {{"usable", "mm", "usable length"}};
constexpr const base::FormulaCard* k_usable_cards[] = {&layout::k_bar_usable_card};

layout::Bar read_bar(Reader& in) {
    return {in.length("length"), in.length("trim_start"), in.length("trim_end")};
}

Result<Answer> answer_usable(Reader& in) {
    const layout::Bar bar = read_bar(in);
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("usable", layout::usable_working(bar)).finish();
}

constexpr InputSpec k_pieces_inputs[] = {
    {"length", InputKind::length, true, "of the bar", "", "21 ft"},
    {"piece", InputKind::length, true, "of each piece", "", "36 in"},
    {"kerf", InputKind::length, false, "lost by each cut; none on a shear", "", "1/16 in"},
    {"trim_start", InputKind::length, false, "cut off first", "", "1/2 in"},
    {"trim_end", InputKind::length, false, "left at the far end", "", "1/2 in"},
    {"holdable", InputKind::length, false, "shortest rest the hold-down holds", "", "4 in"},
};
constexpr OutputSpec k_pieces_outputs[] = {
    {"count", "", "pieces"},
    {"drop", "mm", "what is left"},
};
constexpr const base::FormulaCard* k_pieces_cards[] = {&layout::k_bar_pieces_card,
                                                       &layout::k_bar_usable_card};

Result<Answer> answer_pieces(Reader& in) {
    layout::EqualPieces q;
    q.bar = read_bar(in);
    q.piece = in.length("piece");
    q.kerf = in.length("kerf");
    q.holdable = size_given(in, "holdable");
    if (in.failed())
        return in.refusal();
    const auto pieces = layout::pieces_of_bar(q);
    if (!pieces.ok())
        return pieces.refusal();
    return AnswerBuilder()
        .show(layout::usable_working(q.bar))
        .add("count", layout::pieces_working(q))
        .figure("drop", pieces->drop)
        .finish();
}

} // namespace

const Calculation k_gauge_thickness{"gauge.thickness",
                                    "Thickness of sheet or tube wall by gauge",
                                    k_gauge_inputs,
                                    k_gauge_outputs,
                                    k_gauge_cards,
                                    answer_gauge};
const Calculation k_running_places{"running.places",
                                   "Equal pitch, each place from one datum",
                                   k_running_inputs,
                                   k_running_outputs,
                                   k_running_cards,
                                   answer_running};
const Calculation k_bar_usable{"bar.usable",
                               "Usable length of a bar",
                               k_usable_inputs,
                               k_usable_outputs,
                               k_usable_cards,
                               answer_usable};
const Calculation k_bar_pieces{"bar.pieces",
                               "Equal pieces out of a bar",
                               k_pieces_inputs,
                               k_pieces_outputs,
                               k_pieces_cards,
                               answer_pieces};

} // namespace treadle::calc
