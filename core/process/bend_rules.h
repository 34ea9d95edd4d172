// Bending beyond the plain V: shop rules, bars, bottoming, work, travel, ductility, hard way.
//
// Symbols   t  thickness   L  length along the bend   V  opening or span   Fu  tensile strength
//           Zp  plastic modulus   h  stroke   m  mean over peak force   r  inside radius
//           q  reduction of area   e  elongation or outer strain   b  width in the plane of bending
// Formula   F = 575 t^2 / V ton per ft; 650 t^2 / V kN per m   cards k_shop_force_..._card
//           F = 4 k Fu Zp / V, k = max(1.33, 1 + 4 h / V)      card k_bar_bend_card
//           F = n Fair                                         card k_bottoming_card
//           W = F h m                                          card k_bend_work_card
//           V = r / share                                      card k_opening_for_radius_card
//           r = t (0.5 / q - 1); r = t (1 / e - 1) / 2         cards k_ductility_..._card
//           e = b / (2 R + b); R = b (1 - e) / (2 e)           cards k_hard_way_..._card
// Valid     cold bending of sound metal; shop rules for mild steel only
// Source    sources.json: common-practice-bending, derived-mechanics, lange-oehler,
//           kalpakjian-schmid, derived-geometry
// Rounding  none here; the caller rounds, against us

#pragma once

#include "base/result.h"
#include "process/air_bend.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

#include <optional>

namespace treadle::process {

/// Rules on shop walls for mild steel: they know no strength.
enum class ShopForce { tons_per_foot, kilonewtons_per_metre };
struct ShopBend {
    Length thickness;
    Length length;
    Length opening;
};
[[nodiscard]] base::Result<Working> shop_force_working(const ShopBend& bend, ShopForce rule);

enum class BentBar { round, square, flat_hard_way };
struct BarBend {
    BentBar shape = BentBar::round;
    Length size;      ///< diameter, side, or the width that lies in the plane of bending
    Length thickness; ///< of a flat
    Length span;
    Stress tensile_strength;
    std::optional<double> factor; ///< none: the careful one
};
[[nodiscard]] base::Result<Working> bar_bend_working(const BarBend& bend);

enum class Press { bottoming, coining };
/// Times of the air-bend force; none: the top of what is said in shops.
[[nodiscard]] base::Result<Working>
bottoming_working(Force air_bend, Press press, std::optional<double> times);

/// Mean over peak force: 1 is the upper estimate.
[[nodiscard]] base::Result<Working> bend_work_working(Force force, Length stroke, double share);

[[nodiscard]] base::Result<Working>
punch_travel_working(Length opening, Length radius, Length thickness, Angle angle);

struct WantedRadius {
    Length thickness;
    Length radius;
    double share = 0.0; ///< radius over opening, by metal
};
[[nodiscard]] base::Result<Working> opening_for_radius_working(const WantedRadius& bend);

[[nodiscard]] base::Result<Working> radius_by_reduction_working(Length thickness, double reduction);
[[nodiscard]] base::Result<Working> radius_by_elongation_working(Length thickness,
                                                                 double elongation);

[[nodiscard]] base::Result<Working> hard_way_strain_working(Length width, Length radius);
[[nodiscard]] base::Result<Working> hard_way_radius_working(Length width, double strain);

} // namespace treadle::process
