#include "section/cards.h"

#include <array>

namespace treadle::section {

namespace {

using base::CardSymbol;
using base::Evidence;
using base::FormulaCard;

constexpr std::array k_mass_symbols{
    CardSymbol{"A", "area of the theoretical outline"},
    CardSymbol{"rho", "density of the metal, in kg/m3"},
    CardSymbol{"m", "mass per length"},
};

constexpr FormulaCard k_mass{
    "mass-per-length",
    "Theoretical mass of a bar per length",
    "m = A rho",
    k_mass_symbols,
    "Nominal sizes. Angles with a root radius by EN 10056; inch angles by the sharp outline, which "
    "their catalogue weights follow; sloped channel flanges by their mean thickness; rolled bars "
    "may weigh a few per cent more or less",
    "derived-geometry",
    Evidence::derived,
    "",
};

constexpr std::array<const FormulaCard*, 1> k_cards{&k_mass};

} // namespace

std::span<const FormulaCard* const> cards() { return k_cards; }

const FormulaCard& mass_card() { return k_mass; }

} // namespace treadle::section
