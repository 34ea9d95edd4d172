#include "layout/bolt_room.h"

#include <cmath>
#include <numbers>

#include "layout/cards.h"
#include "layout/first_fault.h"

namespace treadle::layout {

namespace {

using base::Evidence;

constexpr base::CardSymbol k_hex_symbols[] = {
    {"d", "bolt diameter"}, {"F", "across flats"}, {"C", "across corners"}};
constexpr base::CardSymbol k_washer_symbols[] = {
    {"k", "heel to the end of the fillet"}, {"W", "outside of the washer"}, {"g", "least gage"}};
constexpr base::CardSymbol k_socket_symbols[] = {{"S", "outside of the socket"},
                                                 {"e", "bolt to the wall"}};

struct WasherRow {
    double bolt;
    double outside;
};
// ASTM F436, inches, from memory.
constexpr WasherRow k_washers[] = {
    {0.5, 1.0625}, {0.625, 1.3125}, {0.75, 1.46875}, {0.875, 1.75}, {1.0, 2.0}};

constexpr double k_largest_hex_in = 1.5;

} // namespace

const base::FormulaCard k_bolt_hex_card{"bolt-hex",
                                        "Head of a heavy hex structural bolt",
                                        "F = 1.5 d + 1/8 in, C = F / cos 30",
                                        k_hex_symbols,
                                        "1/2 to 1-1/2 in",
                                        "asme-b18-2-6",
                                        Evidence::from_memory,
                                        ""};
const base::FormulaCard k_bolt_washer_room_card{"bolt-washer-room",
                                                "Least gage for a washer clear of the fillet",
                                                "g = k + W / 2",
                                                k_washer_symbols,
                                                "hardened washers for 1/2 to 1 in bolts",
                                                "astm-f436",
                                                Evidence::from_memory,
                                                ""};
const base::FormulaCard k_bolt_socket_room_card{"bolt-socket-room",
                                                "Least distance of a bolt from a wall for a socket",
                                                "e = S / 2 + 1/16 in",
                                                k_socket_symbols,
                                                "the socket in use, measured",
                                                "common-practice-layout",
                                                Evidence::common_practice,
                                                ""};

base::Result<Length> across_flats(const Bolt& bolt) {
    if (bolt.system != BoltSystem::inch || bolt.diameter > inches(k_largest_hex_in + 1e-6))
        return base::Refusal{"bolt", "Heads are known for inch bolts alone.", "1/2 to 1-1/2 in"};
    return 1.5 * bolt.diameter + inches(0.125);
}

base::Result<Working> across_flats_working(const Bolt& bolt) {
    const auto flats = across_flats(bolt);
    if (!flats.ok())
        return flats.refusal();
    return Working{&k_bolt_hex_card, {{"d", bolt.diameter}}, {"F", *flats}, "From memory."};
}

base::Result<Working> across_corners_working(const Bolt& bolt) {
    const auto flats = across_flats(bolt);
    if (!flats.ok())
        return flats.refusal();
    return Working{&k_bolt_hex_card,
                   {{"d", bolt.diameter}, {"F", *flats}},
                   {"C", *flats / std::cos(std::numbers::pi / 6.0)},
                   "From memory."};
}

base::Result<Length> washer_diameter(const Bolt& bolt) {
    if (bolt.system == BoltSystem::inch)
        for (const WasherRow& row : k_washers)
            if (std::abs(to_inches(bolt.diameter) - row.bolt) < 1e-6)
                return inches(row.outside);
    return base::Refusal{"bolt", "No washer is known for this bolt.", "1/2 to 1 in"};
}

base::Result<Working> washer_room_working(const Bolt& bolt, Length fillet_end) {
    const auto washer = washer_diameter(bolt);
    if (!washer.ok())
        return washer.refusal();
    if (const auto fault = quantity::size_fault(fillet_end, "fillet_end"))
        return *fault;
    return Working{&k_bolt_washer_room_card,
                   {{"k", fillet_end}, {"W", *washer}},
                   {"g", fillet_end + *washer / 2.0},
                   "At a smaller gage the washer rides on the fillet."};
}

base::Result<Working> socket_room_working(Length socket) {
    if (const auto fault = quantity::size_fault(socket, "socket"))
        return *fault;
    return Working{
        &k_bolt_socket_room_card, {{"S", socket}}, {"e", socket / 2.0 + inches(1.0 / 16.0)}, ""};
}

} // namespace treadle::layout
