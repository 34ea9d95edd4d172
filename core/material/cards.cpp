#include "material/cards.h"

namespace treadle::material {

namespace {

constexpr base::CardSymbol k_shear_symbols[] = {
    {"S", "shear strength of the strongest metal"},
    {"r", "shear over tensile strength"},
    {"Rm", "tensile strength of the strongest metal that the grade allows"},
};

constexpr const base::FormulaCard* k_cards[] = {&k_shear_strength_card};

} // namespace

const base::FormulaCard k_shear_strength_card{
    "shear-strength",
    "Shear strength of a grade",
    "S = r Rm",
    k_shear_symbols,
    "r 0.80 for steel and 0.70 for aluminium and copper, above what tables of typical metal print; "
    "up to the thickness that the grade's row covers",
    "common-practice-shear",
    base::Evidence::common_practice,
    "",
};

std::span<const base::FormulaCard* const> cards() { return k_cards; }

} // namespace treadle::material
