#include "calc/answer_builder.h"
#include "calc/calculations.h"
#include "calc/layout_inputs.h"

#include "layout/angle_gage.h"
#include "layout/bolt_room.h"
#include "layout/cards.h"
#include "layout/edge.h"
#include "layout/spacing.h"

namespace treadle::calc {

namespace {

using base::Result;
using layout::Bolt;
using layout::BoltSystem;
using layout::HoleEdition;
using layout::HoleKind;

constexpr const char* k_kinds = "standard|oversize|short slot|long slot";

constexpr InputSpec k_hole_inputs[] = {
    {"bolt", InputKind::bolt, true, "inch diameter, or M and a number", "", "3/4 in"},
    {"kind", InputKind::word, false, "of hole; standard when not given", k_kinds},
    {"edition", InputKind::word, false, "360-16 when not given", "360-16|360-22|360-10|en-1090"},
};
constexpr OutputSpec k_hole_outputs[] = {
    {"width", "mm", "largest nominal width, or diameter"},
    {"length", "mm", "of a slot; the width for a round hole"},
};
constexpr const base::FormulaCard* k_hole_cards[] = {&layout::k_bolt_hole_card,
                                                     &layout::k_bolt_hole_normal_en_card};

Result<Answer> answer_hole(Reader& in) {
    const auto bolt = in.bolt("bolt");
    const auto kind = word_or_first<HoleKind>(in, "kind");
    const auto edition = word_or_first<HoleEdition>(in, "edition");
    if (in.failed() || !bolt)
        return in.refusal();
    const auto hole = layout::bolt_hole(*bolt, kind, edition);
    if (!hole.ok())
        return hole.refusal();
    return AnswerBuilder()
        .add("width", layout::bolt_hole_working(*bolt, kind, edition))
        .figure("length", hole->length)
        .finish();
}

constexpr InputSpec k_edge_inputs[] = {
    {"bolt", InputKind::bolt, false, "inch diameter, or M and a number", "", "3/4 in"},
    {"hole", InputKind::length, false, "round hole, in place of bolt", "", "13/16 in"},
    {"edge", InputKind::word, false, "sheared when not given", "sheared|rolled|sawn|flame-cut"},
    {"rule", InputKind::word, false, "careful when not given", "careful|360-16|en-1993"},
    {"kind", InputKind::word, false, "of hole; standard when not given", k_kinds},
    {"slot_axis", InputKind::word, false, "to the edge; square if not given", "square|parallel"},
    {"slot_length", InputKind::length, false, "as long as allowed if not given", "", "1-1/4 in"},
    {"thickness", InputKind::length, false, "of the part, for greatest_edge", "", "1/4 in"},
};
constexpr OutputSpec k_edge_outputs[] = {
    {"least_edge", "mm", "centre of the hole to the edge"},
    {"slot_addition", "mm", "what an oversize or slotted hole has added to it"},
    {"least_spacing", "mm", "centre to centre"},
    {"preferred_spacing", "mm", "centre to centre, 3 d"},
    {"greatest_edge", "mm", "with a thickness"},
};
constexpr const base::FormulaCard* k_edge_cards[] = {&layout::k_edge_least_card,
                                                     &layout::k_edge_least_sheared_card,
                                                     &layout::k_edge_least_en_card,
                                                     &layout::k_edge_slot_addition_card,
                                                     &layout::k_edge_greatest_card,
                                                     &layout::k_hole_spacing_card,
                                                     &layout::k_hole_spacing_en_card};

/// The bolt, or the one that a hole of this size takes.
std::optional<Bolt> bolt_or_hole(Reader& in) {
    if (in.has("bolt") == in.has("hole")) {
        in.refuse(
            {in.has("bolt") ? "hole" : "bolt", "Give the bolt or the hole, one of them.", ""});
        return std::nullopt;
    }
    if (in.has("bolt"))
        return in.bolt("bolt");
    in.refuse_if_given("kind", "A hole by its size is a round standard hole.");
    const Length hole = in.length("hole");
    if (in.failed())
        return std::nullopt;
    const auto bolt = layout::bolt_of_hole(hole);
    if (!bolt.ok()) {
        in.refuse(bolt.refusal());
        return std::nullopt;
    }
    return *bolt;
}

bool is_slot(HoleKind kind) { return kind == HoleKind::short_slot || kind == HoleKind::long_slot; }

Result<layout::EdgeQuestion> read_edge(Reader& in) {
    layout::EdgeQuestion q;
    const auto bolt = bolt_or_hole(in);
    q.kind = word_or_first<HoleKind>(in, "kind");
    q.axis = word_or_first<layout::SlotAxis>(in, "slot_axis");
    // Only the sheared edge had a column of its own.
    q.edge = in.choice("edge") > 0 ? layout::EdgeKind::rolled : layout::EdgeKind::sheared;
    q.rule = word_or_first<layout::EdgeRule>(in, "rule");
    q.slot_length = size_given(in, "slot_length");
    q.hole = in.length("hole");
    if (!is_slot(q.kind)) {
        in.refuse_if_given("slot_length", "Only a slot has a length of its own.");
        in.refuse_if_given("slot_axis", "Only a slot has a long axis.");
    }
    if (in.failed() || !bolt)
        return in.refusal();
    q.bolt = *bolt;
    return q;
}

/// What lies along the row: the hole given, the slot given, or the largest of the kind.
Result<Length> hole_along(const layout::EdgeQuestion& q, HoleEdition edition) {
    if (q.hole > Length{})
        return q.hole;
    if (q.slot_length > Length{})
        return q.slot_length;
    const auto hole = layout::bolt_hole(q.bolt, q.kind, edition);
    if (!hole.ok())
        return hole.refusal();
    return hole->length;
}

Result<Answer> answer_edge(Reader& in) {
    auto asked = read_edge(in);
    const Length thickness = size_given(in, "thickness");
    if (in.failed() || !asked.ok())
        return in.refusal();
    layout::EdgeQuestion q = *asked;
    const bool en = q.rule == layout::EdgeRule::en_1993;
    const bool metric = q.bolt.system == BoltSystem::metric;
    const auto along = hole_along(q, en && metric ? HoleEdition::en_1090 : HoleEdition::aisc_2022);
    if (!along.ok())
        return along.refusal();
    q.hole = *along;
    AnswerBuilder answer;
    answer.add("least_edge", layout::least_edge_working(q));
    if (!en && q.kind != HoleKind::standard)
        answer.add("slot_addition", layout::slot_addition_working(q));
    answer.add("least_spacing",
               en ? layout::least_spacing_en_working(*along)
                  : layout::least_spacing_working(q.bolt, *along));
    if (!en)
        answer.add("preferred_spacing", layout::preferred_spacing_working(q.bolt));
    if (in.has("thickness"))
        answer.add("greatest_edge", layout::greatest_edge_working(thickness, q.bolt.system));
    return answer.finish();
}

constexpr InputSpec k_pitch_inputs[] = {
    {"thickness", InputKind::length, true, "of the thinner part", "", "1/4 in"},
    {"surface", InputKind::word, false, "weathering when not given", "weathering|painted"},
    {"system", InputKind::word, false, "which limit; inch when not given", "inch|metric"},
};
constexpr OutputSpec k_pitch_outputs[] = {{"pitch", "mm", "greatest, centre to centre"}};
constexpr const base::FormulaCard* k_pitch_cards[] = {&layout::k_hole_greatest_pitch_card};

Result<Answer> answer_pitch(Reader& in) {
    const Length thickness = in.length("thickness");
    const auto surface = word_or_first<layout::Surface>(in, "surface");
    const auto system = word_or_first<BoltSystem>(in, "system");
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("pitch", layout::greatest_pitch_working(thickness, surface, system))
        .finish();
}

constexpr InputSpec k_clear_inputs[] = {
    {"bolt", InputKind::bolt, true, "inch diameter, or M and a number", "", "3/4 in"},
    {"kind", InputKind::word, false, "of hole; standard when not given", k_kinds},
    {"spacing", InputKind::length, false, "centre to centre, slots end to end", "", "6 in"},
    {"edge_distance", InputKind::length, false, "in place of spacing", "", "2 in"},
};
constexpr OutputSpec k_clear_outputs[] = {{"clear", "mm", "metal between"}};
constexpr const base::FormulaCard* k_clear_cards[] = {&layout::k_hole_clear_card};

Result<Answer> answer_clear(Reader& in) {
    const auto bolt = in.bolt("bolt");
    const auto kind = word_or_first<HoleKind>(in, "kind");
    const Length spacing = in.length("spacing");
    const Length edge = in.length("edge_distance");
    if (in.has("spacing") == in.has("edge_distance"))
        in.refuse({in.has("spacing") ? "edge_distance" : "spacing",
                   "Give spacing or edge_distance, one of them.",
                   ""});
    if (in.failed() || !bolt)
        return in.refusal();
    const auto hole = layout::bolt_hole(*bolt, kind, HoleEdition::aisc_2022);
    if (!hole.ok())
        return hole.refusal();
    return AnswerBuilder()
        .add("clear",
             in.has("spacing") ? layout::clear_between_working(*bolt, hole->length, spacing)
                               : layout::clear_to_edge_working(hole->length, edge))
        .finish();
}

constexpr InputSpec k_room_inputs[] = {
    {"bolt", InputKind::bolt, true, "inch diameter", "", "3/4 in"},
    {"fillet_end", InputKind::length, false, "heel to the end of the fillet", "", "1/2 in"},
    {"socket", InputKind::length, false, "outside of the socket in use", "", "1-3/4 in"},
};
constexpr OutputSpec k_room_outputs[] = {
    {"across_flats", "mm", "heavy hex head"},
    {"across_corners", "mm", "heavy hex head"},
    {"washer_gage", "mm", "least gage for a washer clear of the fillet"},
    {"wall_distance", "mm", "least distance from a wall for the socket"},
};
constexpr const base::FormulaCard* k_room_cards[] = {
    &layout::k_bolt_hex_card, &layout::k_bolt_washer_room_card, &layout::k_bolt_socket_room_card};

Result<Answer> answer_room(Reader& in) {
    const auto bolt = in.bolt("bolt");
    const Length fillet_end = in.length("fillet_end");
    const Length socket = in.length("socket");
    if (in.failed() || !bolt)
        return in.refusal();
    AnswerBuilder answer;
    answer.add("across_flats", layout::across_flats_working(*bolt))
        .add("across_corners", layout::across_corners_working(*bolt));
    if (in.has("fillet_end"))
        answer.add("washer_gage", layout::washer_room_working(*bolt, fillet_end));
    if (in.has("socket"))
        answer.add("wall_distance", layout::socket_room_working(socket));
    return answer.finish();
}

constexpr InputSpec k_gage_inputs[] = {
    {"leg", InputKind::length, true, "of the angle", "", "6 in"},
};
constexpr OutputSpec k_gage_outputs[] = {
    {"g", "mm", "heel to the single line"},
    {"g1", "mm", "heel to the first of two lines, legs from 5 in"},
    {"g2", "mm", "first line to the second, legs from 5 in"},
};
constexpr const base::FormulaCard* k_gage_cards[] = {&layout::k_angle_gage_card};

Result<Answer> answer_gage(Reader& in) {
    const Length leg = in.length("leg");
    if (in.failed())
        return in.refusal();
    const auto gages = layout::angle_gages(leg);
    if (!gages.ok())
        return gages.refusal();
    AnswerBuilder answer;
    answer.add("g", layout::angle_gage_working(leg, 0));
    if (gages->first > Length{})
        answer.add("g1", layout::angle_gage_working(leg, 1))
            .add("g2", layout::angle_gage_working(leg, 2));
    return answer.finish();
}

constexpr InputSpec k_between_inputs[] = {
    {"leg_a", InputKind::length, true, "one leg of the angle", "", "4 in"},
    {"leg_b", InputKind::length, true, "the other", "", "3 in"},
    {"thickness", InputKind::length, true, "of the angle", "", "1/4 in"},
};
constexpr OutputSpec k_between_outputs[] = {{"gage", "mm", "between holes, legs laid flat"}};
constexpr const base::FormulaCard* k_between_cards[] = {&layout::k_angle_gage_between_card};

Result<Answer> answer_between(Reader& in) {
    const layout::BothLegs legs{in.length("leg_a"), in.length("leg_b"), in.length("thickness")};
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("gage", layout::gage_between_working(legs)).finish();
}

} // namespace

const Calculation k_hole_for_bolt{"hole.for_bolt",
                                  "Largest nominal hole for a bolt",
                                  k_hole_inputs,
                                  k_hole_outputs,
                                  k_hole_cards,
                                  answer_hole};
const Calculation k_hole_edge{"hole.edge",
                              "Edge distances and spacing of bolt holes",
                              k_edge_inputs,
                              k_edge_outputs,
                              k_edge_cards,
                              answer_edge};
const Calculation k_hole_greatest_pitch{"hole.greatest_pitch",
                                        "Greatest distance between bolts",
                                        k_pitch_inputs,
                                        k_pitch_outputs,
                                        k_pitch_cards,
                                        answer_pitch};
const Calculation k_hole_clear{"hole.clear",
                               "Metal left between holes, or to the edge",
                               k_clear_inputs,
                               k_clear_outputs,
                               k_clear_cards,
                               answer_clear};
const Calculation k_bolt_room{"bolt.room",
                              "Room for a bolt's head, washer and socket",
                              k_room_inputs,
                              k_room_outputs,
                              k_room_cards,
                              answer_room};
const Calculation k_angle_gage{"angle.gage",
                               "Usual gages in the leg of an angle",
                               k_gage_inputs,
                               k_gage_outputs,
                               k_gage_cards,
                               answer_gage};
const Calculation k_angle_gage_between{"angle.gage_between",
                                       "Distance between a hole in each leg of an angle",
                                       k_between_inputs,
                                       k_between_outputs,
                                       k_between_cards,
                                       answer_between};

} // namespace treadle::calc
