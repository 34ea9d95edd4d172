// U-bracket, offset strap and hanger of flat bar, from their finished sizes.
//
// U        outside width = inside + 2 t
// Offset   leg between the bends, outer face to outer face: (D + t (1 - cos A)) / sin A,
//          for 90 degrees D + t                                            card offset-leg
// Hanger   ears turn outward at the top of a U: ear + t, depth + t, inside + 2 t

#include <cmath>

#include "assembly/bent_flat.h"
#include "assembly/cards.h"
#include "assembly/kinds.h"

namespace treadle::assembly {

namespace {

using base::Result;
using calc::InputKind;

enum class Given { inside, outside };

constexpr calc::InputSpec k_u[] = {
    {"width", InputKind::length, true, "between the legs, or over them", "", "4 in"},
    {"height", InputKind::length, true, "of the legs, outside", "", "3 in"},
    {"given", InputKind::word, false, "which width", "inside|outside"},
};
constexpr calc::InputSpec k_offset[] = {
    {"first", InputKind::length, true, "first leg, outside", "", "3 in"},
    {"offset", InputKind::length, true, "face to the same face of the other leg", "", "2 in"},
    {"last", InputKind::length, true, "last leg, outside", "", "3 in"},
    {"angle",
     InputKind::angle,
     false,
     "turned through at each bend; 90 if not given",
     "",
     "60 deg"},
};
constexpr calc::InputSpec k_hat[] = {
    {"width", InputKind::length, true, "inside, between the uprights", "", "4 in"},
    {"depth", InputKind::length, true, "inside, from the ears' upper face to the seat", "", "3 in"},
    {"ear", InputKind::length, true, "from the upright's face to the end", "", "2-1/4 in"},
};
constexpr auto k_u_inputs = joined(k_u, k_flat_inputs);
constexpr auto k_offset_inputs = joined(k_offset, k_flat_inputs);
constexpr auto k_hat_inputs = joined(k_hat, k_flat_inputs);

constexpr base::CardSymbol k_symbols[] = {{"D", "offset, face to the same face"},
                                          {"t", "thickness"},
                                          {"A", "turned through at each bend, up to 90 degrees"},
                                          {"L", "leg between, outside apex to outside apex"}};

Result<Made> make_u(Inputs& in, const std::string& mark) {
    const FlatBar flat = read_flat(in);
    const Length width = in.size("width");
    const Length height = in.size("height");
    const auto given = in.word<Given>("given");
    if (in.failed())
        return in.refusal();
    const Length both = 2.0 * flat.thickness();
    const Length outside = given == Given::inside ? width + both : width;
    if (!(outside > both))
        return base::Refusal{"width", "The legs leave nothing between them.", ""};
    const Angle square = degrees(90.0);
    auto made = bent_flat(flat,
                          {"bracket", "U", "U-bracket"},
                          mark,
                          {height, outside, height},
                          {{square}, {square}},
                          "height");
    if (!made.ok())
        return made;
    Made out = std::move(made).value();
    out.figures.push_back({"width inside", outside - both});
    return out;
}

Result<Made> make_offset(Inputs& in, const std::string& mark) {
    const FlatBar flat = read_flat(in);
    const Length first = in.size("first");
    const Length last = in.size("last");
    const Length offset = in.size("offset");
    const Angle angle = in.angle_or("angle", degrees(90.0));
    if (!in.failed() && !(angle >= degrees(10.0) && angle <= degrees(90.0)))
        in.refuse({"angle",
                   "The bends of an offset turn through a part of a right angle.",
                   "10 to 90 deg"});
    if (in.failed())
        return in.refusal();
    const bool square = angle == degrees(90.0);
    const double cosine = square ? 0.0 : std::cos(angle.in_radians());
    const double sine = square ? 1.0 : std::sin(angle.in_radians());
    const Length between = (offset + flat.thickness() * (1.0 - cosine)) / sine;
    auto made = bent_flat(flat,
                          {"strap", "S", "offset strap"},
                          mark,
                          {first, between, last},
                          {{angle, true}, {angle, false}},
                          "offset");
    if (!made.ok())
        return made;
    Made out = std::move(made).value();
    out.workings.push_back({&k_offset_leg_card,
                            {{"D", offset}, {"t", flat.thickness()}, {"A", angle}},
                            {"L", between},
                            ""});
    return out;
}

Result<Made> make_hanger(Inputs& in, const std::string& mark) {
    const FlatBar flat = read_flat(in);
    const Length width = in.size("width");
    const Length depth = in.size("depth");
    const Length ear = in.size("ear");
    if (in.failed())
        return in.refusal();
    const Length t = flat.thickness();
    const Angle square = degrees(90.0);
    // Ear and seat turn opposite ways, so an upright reaches from outer face to outer face.
    const std::vector<Length> legs{ear + t, depth + t, width + 2.0 * t, depth + t, ear + t};
    auto made = bent_flat(flat,
                          {"hanger", "H", "hanger"},
                          mark,
                          legs,
                          {{square, true}, {square, false}, {square, false}, {square, true}},
                          ear < depth ? "ear" : "depth");
    if (!made.ok())
        return made;
    Made out = std::move(made).value();
    out.figures.push_back({"over the ears", width + 2.0 * (ear + t)});
    return out;
}

} // namespace

const base::FormulaCard k_offset_leg_card{"offset-leg",
                                          "Leg between the two bends of an offset",
                                          "L = (D + t (1 - cos A)) / sin A",
                                          k_symbols,
                                          "bends of one angle, opposite ways",
                                          "derived-geometry",
                                          base::Evidence::derived,
                                          ""};

const Kind k_u_bracket{"u-bracket",
                       "U-bracket",
                       "A flat with two bends, by its inside or outside width.",
                       k_u_inputs,
                       make_u};
const Kind k_strap{"strap",
                   "Offset strap",
                   "A flat that steps from one face to another.",
                   k_offset_inputs,
                   make_offset};
const Kind k_hanger{"hanger",
                    "Hanger with ears",
                    "A U of flat with ears turned outward, for pipe or bar.",
                    k_hat_inputs,
                    make_hanger};

} // namespace treadle::assembly
