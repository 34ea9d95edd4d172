#include "assembly/raked_rail.h"

#include "assembly/cards.h"

namespace treadle::assembly {

namespace {

constexpr base::CardSymbol k_symbols[] = {{"L", "level, post face to post face"},
                                          {"A", "slope"},
                                          {"t", "depth of the rail, square to it"},
                                          {"s", "rail with square ends"}};

} // namespace

const base::FormulaCard k_raked_rail_card{"raked-rail",
                                          "Square-ended rail up a slope between posts",
                                          "s = L / cos A - t tan A",
                                          k_symbols,
                                          "one corner of each end touches its post",
                                          "derived-geometry",
                                          base::Evidence::derived,
                                          ""};

Length lost_by_square_ends(Length depth, const Rake& rake) { return depth * rake.tangent; }

base::Result<Length> raked_rail(Length level, Length depth, const Rake& rake) {
    const Length rail = rake.along(level) - lost_by_square_ends(depth, rake);
    if (!(rail > Length{}))
        return base::Refusal{"spacing", "Nothing is left of a rail between posts so close.", ""};
    return rail;
}

base::Result<Working> raked_rail_working(Length level, Length depth, const Rake& rake) {
    const auto rail = raked_rail(level, depth, rake);
    if (!rail.ok())
        return rail.refusal();
    return Working{
        &k_raked_rail_card, {{"L", level}, {"A", rake.angle}, {"t", depth}}, {"s", *rail}, ""};
}

} // namespace treadle::assembly
