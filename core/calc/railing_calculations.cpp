#include "calc/answer_builder.h"
#include "calc/calculations.h"
#include "calc/layout_inputs.h"

#include "layout/cards.h"
#include "layout/guard_limit.h"
#include "layout/picket.h"

namespace treadle::calc {

namespace {

using base::Result;
using quantity::Number;

Number whole(int value) { return {static_cast<double>(value), 0}; }

constexpr InputSpec k_picket_inputs[] = {
    {"opening", InputKind::length, true, "post face to post face", "", "72 in"},
    {"picket", InputKind::length, true, "least width across, along the rail", "", "3/4 in"},
    {"limit", InputKind::length, true, "on the clear gap", "", "4 in"},
    {"ends", InputKind::word, false, "what stands at the posts; gap if not given", "gap|picket"},
    {"step", InputKind::length, false, "positions are rounded to it; else not", "", "1/16 in"},
};
constexpr OutputSpec k_picket_outputs[] = {
    {"gap", "mm", "clear, not rounded"},
    {"count", "", "pickets"},
    {"pitch", "mm", "face to face, not rounded"},
    {"largest_gap", "mm", "after the rounding of the positions"},
    {"positions", "mm", "list: near face of each picket from the first post"},
};
constexpr const base::FormulaCard* k_picket_cards[] = {&layout::k_picket_gap_card,
                                                       &layout::k_picket_gap_closed_card};

Result<Answer> answer_picket(Reader& in) {
    layout::PicketQuestion q;
    q.opening = in.length("opening");
    q.picket = in.length("picket");
    q.limit = in.length("limit");
    q.ends = word_or_first<layout::PanelEnds>(in, "ends");
    q.step = size_given(in, "step");
    if (in.failed())
        return in.refusal();
    const auto made = layout::picket_layout(q);
    if (!made.ok())
        return made.refusal();
    return AnswerBuilder()
        .add("gap", layout::picket_working(q))
        .figure("count", whole(made->count))
        .figure("pitch", made->pitch)
        .figure("largest_gap", made->largest_gap)
        .list("positions", made->faces)
        .finish();
}

constexpr InputSpec k_post_inputs[] = {
    {"run", InputKind::length, true, "over all, a post at either end", "", "30 ft"},
    {"post", InputKind::length, true, "width along the run", "", "2 in"},
    {"greatest_spacing", InputKind::length, true, "of posts, on centres", "", "8 ft"},
};
constexpr OutputSpec k_post_outputs[] = {
    {"clear", "mm", "post face to post face"},
    {"panels", "", "how many"},
    {"posts", "", "how many"},
};
constexpr const base::FormulaCard* k_post_cards[] = {&layout::k_post_panels_card};

Result<Answer> answer_post(Reader& in) {
    const layout::PostQuestion q{
        in.length("run"), in.length("post"), in.length("greatest_spacing")};
    if (in.failed())
        return in.refusal();
    const auto made = layout::post_layout(q);
    if (!made.ok())
        return made.refusal();
    return AnswerBuilder()
        .add("clear", layout::post_working(q))
        .figure("panels", whole(made->panels))
        .figure("posts", whole(made->panels + 1))
        .finish();
}

constexpr InputSpec k_tread_inputs[] = {
    {"tread", InputKind::length, true, "level depth of a tread", "", "10 in"},
    {"count", InputKind::count, true, "pickets on each tread", "", "2"},
    {"picket", InputKind::length, true, "width across", "", "3/4 in"},
    {"limit", InputKind::length, true, "on the clear gap", "", "4-3/8 in"},
};
constexpr OutputSpec k_tread_outputs[] = {{"gap", "mm", "level, clear"}};
constexpr const base::FormulaCard* k_tread_cards[] = {&layout::k_picket_per_tread_card};

Result<Answer> answer_tread(Reader& in) {
    const Length tread = in.length("tread");
    const int count = in.count("count", 1, 20);
    const Length picket = in.length("picket");
    const Length limit = in.length("limit");
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("gap", layout::per_tread_working(tread, count, picket, limit))
        .finish();
}

constexpr InputSpec k_guard_inputs[] = {
    {"rule", InputKind::word, true, "by name", layout::k_guard_rules},
    {"value", InputKind::length, false, "what is planned; refused outside the rule", "", "40 in"},
};
constexpr OutputSpec k_guard_outputs[] = {
    {"least", "mm", "where the rule has one"},
    {"greatest", "mm", "where the rule has one; a sphere must stay under it"},
};
constexpr const base::FormulaCard* k_guard_cards[] = {&layout::k_guard_limit_irc_card,
                                                      &layout::k_guard_limit_ibc_card,
                                                      &layout::k_guard_limit_osha_card,
                                                      &layout::k_guard_limit_ada_card,
                                                      &layout::k_guard_limit_pool_card,
                                                      &layout::k_guard_limit_uk_card};

Result<Answer> answer_guard(Reader& in) {
    const int place = in.choice("rule");
    const Length value = size_given(in, "value");
    if (in.failed() || place < 0)
        return in.refusal();
    const layout::GuardLimit& limit = layout::guard_limits()[static_cast<std::size_t>(place)];
    AnswerBuilder answer;
    if (layout::least_of(limit))
        answer.add("least", layout::least_limit_working(limit, value));
    if (layout::greatest_of(limit))
        answer.add("greatest", layout::greatest_limit_working(limit, value));
    return answer.finish();
}

constexpr InputSpec k_midrail_inputs[] = {
    {"top_edge", InputKind::length, true, "over the walking surface", "", "42 in"},
};
constexpr OutputSpec k_midrail_outputs[] = {{"height", "mm", "of a single midrail"}};
constexpr const base::FormulaCard* k_midrail_cards[] = {&layout::k_guard_midrail_card};

Result<Answer> answer_midrail(Reader& in) {
    const Length top_edge = in.length("top_edge");
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("height", layout::midrail_working(top_edge)).finish();
}

} // namespace

const Calculation k_picket_spacing{"picket.spacing",
                                   "Pickets with equal clear gaps",
                                   k_picket_inputs,
                                   k_picket_outputs,
                                   k_picket_cards,
                                   answer_picket};
const Calculation k_picket_per_tread{"picket.per_tread",
                                     "Gap with so many pickets on each tread",
                                     k_tread_inputs,
                                     k_tread_outputs,
                                     k_tread_cards,
                                     answer_tread};
const Calculation k_post_spacing{
    "post.spacing", "Posts along a run", k_post_inputs, k_post_outputs, k_post_cards, answer_post};
const Calculation k_guard_limit{"guard.limit",
                                "Bounds of a code for guards, handrails and fences",
                                k_guard_inputs,
                                k_guard_outputs,
                                k_guard_cards,
                                answer_guard};
const Calculation k_guard_midrail{"guard.midrail",
                                  "Height of a single midrail at work",
                                  k_midrail_inputs,
                                  k_midrail_outputs,
                                  k_midrail_cards,
                                  answer_midrail};

} // namespace treadle::calc
