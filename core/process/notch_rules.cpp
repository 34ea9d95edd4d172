#include "process/notch_rules.h"

#include "geometry/notch.h"
#include "process/cards.h"
#include "process/input_check.h"
#include "process/notch.h"

#include <numbers>

namespace treadle::process {

namespace {

using base::Evidence;

constexpr base::CardSymbol k_bite_symbols[] = {
    {"L", "length of the cut edge"},
    {"b", "length of the tool"},
    {"o", "overlap of two bites"},
    {"d", "depth of the notch"},
};
constexpr base::CardSymbol k_vee_symbols[] = {
    {"d", "depth of the V"},
    {"leg", "leg that is notched"},
    {"t", "thickness of the standing leg"},
    {"m", "width of the mouth"},
    {"L", "length of the cut edge"},
    {"v", "included angle"},
};
constexpr base::CardSymbol k_slot_symbols[] = {
    {"L", "length of the cut edge"},
    {"w", "width of the slot"},
    {"d", "depth from the edge"},
};

/// Sound sizes, an overlap that the bites stand, and a depth.
base::Result<int> checked_bites(const NotchBites& notch, Length depth) {
    const auto bites = notch_bites(notch.along, notch.tool, notch.overlap);
    if (!bites.ok())
        return bites.refusal();
    InputCheck check;
    check.length(depth, "depth");
    if (check.failed())
        return check.refusal();
    return *bites;
}

base::Result<geometry::NotchOutline> vee(Length depth, Angle included) {
    InputCheck check;
    check.length(depth, "depth").angle_within(included, 0.0, 180.0, "angle");
    if (check.failed())
        return check.refusal();
    return geometry::checked(
        {geometry::NotchShape::vee, geometry::NotchPlace::edge, {}, depth, included});
}

} // namespace

const base::FormulaCard k_first_bite_card{"notch-first-bite",
                                          "Edge that the first bite of a notch cuts",
                                          "L = b + 2 d",
                                          k_bite_symbols,
                                          "notch from an edge, both ends closed",
                                          "derived-geometry",
                                          Evidence::derived,
                                          ""};
const base::FormulaCard k_later_bite_card{"notch-later-bite",
                                          "Edge that each later bite cuts",
                                          "L = (b - o) + d",
                                          k_bite_symbols,
                                          "one end open already: the load is to one side",
                                          "derived-geometry",
                                          Evidence::derived,
                                          ""};
const base::FormulaCard k_vee_depth_card{"vee-depth",
                                         "Depth of a V that lets a leg fold",
                                         "d = leg - t",
                                         k_vee_symbols,
                                         "sharp fold on the inside face of the standing leg",
                                         "derived-geometry",
                                         Evidence::derived,
                                         ""};
const base::FormulaCard k_vee_mouth_card{"vee-mouth",
                                         "Width of the mouth of a V",
                                         "m = 2 d tan(v / 2)",
                                         k_vee_symbols,
                                         "straight sides",
                                         "derived-geometry",
                                         Evidence::derived,
                                         ""};
const base::FormulaCard k_vee_cut_card{"vee-cut",
                                       "Length of the cut edge of a V",
                                       "L = 2 d / cos(v / 2)",
                                       k_vee_symbols,
                                       "straight sides, both at once",
                                       "derived-geometry",
                                       Evidence::derived,
                                       ""};
const base::FormulaCard k_slot_notch_card{"slot-notch",
                                          "Cut edge of a slot from the edge, round at its end",
                                          "L = 2 (d - w / 2) + pi w / 2",
                                          k_slot_symbols,
                                          "depth at least half of the width",
                                          "derived-geometry",
                                          Evidence::derived,
                                          ""};

base::Result<Working> notch_bites_working(const NotchBites& notch) {
    const auto bites = notch_bites(notch.along, notch.tool, notch.overlap);
    if (!bites.ok())
        return bites.refusal();
    return Working{&k_notch_bites_card,
                   {{"Ltot", notch.along}, {"b", notch.tool}, {"o", notch.overlap}},
                   {"n", quantity::Number{static_cast<double>(*bites), 0}},
                   *bites > 1 && notch.overlap <= Length{}
                       ? "No overlap leaves a fin: 1/16 to 1/8 in is usual."
                       : ""};
}

base::Result<Working> first_bite_working(const NotchBites& notch, Length depth) {
    const auto bites = checked_bites(notch, depth);
    if (!bites.ok())
        return bites.refusal();
    const Length bite = smaller(notch.tool, notch.along);
    return Working{&k_first_bite_card, {{"b", bite}, {"d", depth}}, {"L", bite + 2.0 * depth}, ""};
}

base::Result<Working> later_bite_working(const NotchBites& notch, Length depth) {
    const auto bites = checked_bites(notch, depth);
    if (!bites.ok())
        return bites.refusal();
    const Length cut = *bites > 1 ? notch.tool - notch.overlap + depth : Length{};
    return Working{&k_later_bite_card,
                   {{"b", notch.tool}, {"o", notch.overlap}, {"d", depth}},
                   {"L", cut},
                   *bites > 1 ? "" : "One bite is enough."};
}

base::Result<Working> vee_depth_working(Length leg, Length thickness) {
    InputCheck check;
    check.length(leg, "leg").length(thickness, "thickness");
    if (check.failed())
        return check.refusal();
    if (!clearly_below(thickness, leg))
        return base::Refusal{"thickness", "The leg is not longer than the metal is thick.", ""};
    return Working{&k_vee_depth_card, {{"leg", leg}, {"t", thickness}}, {"d", leg - thickness}, ""};
}

base::Result<Working> vee_mouth_working(Length depth, Angle included) {
    const auto notch = vee(depth, included);
    if (!notch.ok())
        return notch.refusal();
    return Working{&k_vee_mouth_card,
                   {{"d", depth}, {"v", included}},
                   {"m", geometry::mouth(*notch)},
                   "Leave about 1/32 in at the root for the weld (common practice)."};
}

base::Result<Working> vee_cut_working(Length depth, Angle included) {
    const auto notch = vee(depth, included);
    if (!notch.ok())
        return notch.refusal();
    return Working{
        &k_vee_cut_card, {{"d", depth}, {"v", included}}, {"L", geometry::cut_length(*notch)}, ""};
}

base::Result<Working> slot_notch_working(Length width, Length depth) {
    InputCheck check;
    check.length(width, "width").length(depth, "depth");
    if (check.failed())
        return check.refusal();
    if (clearly_below(depth, width / 2.0))
        return base::Refusal{"depth", "The round end is deeper than the slot.", "from width / 2"};
    return Working{&k_slot_notch_card,
                   {{"w", width}, {"d", depth}},
                   {"L", 2.0 * (depth - width / 2.0) + std::numbers::pi / 2.0 * width},
                   ""};
}

} // namespace treadle::process
