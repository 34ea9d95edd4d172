#include "layout/bolt.h"

#include "base/text.h"
#include "quantity/parse.h"

#include <cmath>
#include <iterator>
#include <span>
#include <string>

#include "layout/cards.h"
#include "layout/first_fault.h"

namespace treadle::layout {

namespace {

using base::Evidence;

constexpr base::CardSymbol k_hole_symbols[] = {
    {"d", "bolt diameter"}, {"w", "largest nominal width of the hole"}, {"l", "its length"}};

struct HoleRow {
    double bolt;
    double standard;
    double oversize;
    double short_length; ///< slots are as wide as the standard hole
    double long_length;
};
// AISC 360-16 table J3.3, inches.
constexpr HoleRow k_inch_rows[] = {
    {1.0 / 2, 9.0 / 16, 5.0 / 8, 11.0 / 16, 1.25},
    {5.0 / 8, 11.0 / 16, 13.0 / 16, 7.0 / 8, 1.5625},
    {3.0 / 4, 13.0 / 16, 15.0 / 16, 1.0, 1.875},
    {7.0 / 8, 15.0 / 16, 17.0 / 16, 1.125, 2.1875},
    {1.0, 1.125, 1.25, 1.3125, 2.5},
};
constexpr double k_inch_rule_from = 1.125; // d + 1/8, d + 5/16, d + 3/8 long, 2.5 d long
// AISC 360-16 table J3.3M, mm; M12 came with 360-22.
constexpr HoleRow k_metric_rows[] = {
    {12, 14, 16, 18, 30},
    {16, 18, 20, 22, 40},
    {20, 22, 24, 26, 50},
    {22, 24, 28, 30, 55},
    {24, 27, 30, 32, 60},
    {27, 30, 35, 37, 67},
    {30, 33, 38, 40, 75},
};
constexpr double k_metric_rule_from = 36.0; // d + 3, d + 8, d + 10 long, 2.5 d long
constexpr double k_largest_in = 4.0;
constexpr double k_largest_mm = 100.0;

double own_units(const Bolt& bolt) {
    return bolt.system == BoltSystem::inch ? quantity::to_inches(bolt.diameter)
                                           : quantity::to_millimetres(bolt.diameter);
}
Length in_own_units(const Bolt& bolt, double value) {
    return bolt.system == BoltSystem::inch ? inches(value) : millimetres(value);
}

bool same(double a, double b) { return std::abs(a - b) < 1e-6; }

base::Refusal no_row(const char* detail) {
    return {"bolt", "The table of holes has no bolt of this size.", detail};
}

base::Result<HoleRow> row_of(const Bolt& bolt) {
    const bool inch = bolt.system == BoltSystem::inch;
    const double d = own_units(bolt);
    const std::span<const HoleRow> rows =
        inch ? std::span<const HoleRow>(k_inch_rows) : std::span<const HoleRow>(k_metric_rows);
    for (const HoleRow& row : rows)
        if (same(row.bolt, d))
            return row;
    if (inch && d > k_inch_rule_from - 1e-6)
        return HoleRow{d, d + 0.125, d + 5.0 / 16, d + 0.375, 2.5 * d};
    if (!inch && d > k_metric_rule_from - 1e-6)
        return HoleRow{d, d + 3, d + 8, d + 10, 2.5 * d};
    return no_row(inch ? "1/2 to 4 in in steps of 1/8 in" : "M12, 16, 20, 22, 24, 27, 30, from 36");
}

base::Result<BoltHole> en_hole(const Bolt& bolt, HoleKind kind) {
    if (bolt.system != BoltSystem::metric)
        return base::Refusal{"bolt", "EN 1090-2 is for metric bolts.", ""};
    if (kind != HoleKind::standard)
        return base::Refusal{
            "kind", "Only the normal round holes of EN 1090-2 are known here.", "standard"};
    const double d = quantity::to_millimetres(bolt.diameter);
    const double more = d < 14.5 ? 1.0 : d < 24.5 ? 2.0 : 3.0;
    return BoltHole{millimetres(d + more), millimetres(d + more)};
}

const char* edition_words(HoleEdition edition) {
    switch (edition) {
    case HoleEdition::aisc_2016:
        return "AISC 360-16.";
    case HoleEdition::aisc_2022:
        return "AISC 360-22.";
    case HoleEdition::aisc_2010:
        return "AISC 360-10: 1/16 in less from 1 in up than in later editions (from memory).";
    case HoleEdition::en_1090:
        break;
    }
    return "EN 1090-2, from memory.";
}

/// Smallest diameter whose standard hole is not below `hole`, in the system's own units.
/// Above the rows, sizes come in `steps` to the unit.
double
next_up(std::span<const HoleRow> rows, double rule_from, double more, double steps, double hole) {
    for (const HoleRow& row : rows)
        if (row.standard > hole - 1e-6)
            return row.bolt;
    const double above = std::ceil((hole - more) * steps - 1e-6) / steps;
    return above > rule_from ? above : rule_from;
}

} // namespace

const base::FormulaCard k_bolt_hole_card{
    "bolt-hole",
    "Largest nominal hole for a bolt",
    "w, l by table J3.3 or J3.3M; from 1-1/8 in: d + 1/8, oversize d + 5/16, short d + 3/8, long "
    "2.5 d; from M36: d + 3, d + 8, d + 10, 2.5 d",
    k_hole_symbols,
    "steel to steel; 1/32 in over is tolerated; galvanising gives no larger hole",
    "aisc-360-16",
    Evidence::published,
    ""};
const base::FormulaCard k_bolt_hole_normal_en_card{"bolt-hole-normal-en",
                                                   "Normal round hole for a bolt",
                                                   "w = d + 1 to M14, d + 2 to M24, d + 3 above",
                                                   k_hole_symbols,
                                                   "normal round holes of metric bolts",
                                                   "en-1090-2",
                                                   Evidence::from_memory,
                                                   ""};

base::Result<Bolt> parse_bolt(std::string_view text, std::string_view field) {
    text = base::trim(text);
    Bolt bolt;
    const bool metric =
        text.size() > 1 && (text[0] == 'M' || text[0] == 'm') && text[1] >= '0' && text[1] <= '9';
    if (metric) {
        const auto number = base::read_number(text.substr(1));
        if (!number || *number != std::floor(*number) || *number > k_largest_mm)
            return base::Refusal{
                std::string(field), "No bolt of this size is known.", "M12 to M100"};
        bolt = {BoltSystem::metric, millimetres(*number)};
    } else {
        const auto diameter = quantity::parse_length(text, {}, field);
        if (!diameter.ok())
            return diameter.refusal();
        bolt.diameter = *diameter;
        const double eighths = quantity::to_inches(*diameter) * 8.0;
        if (!(eighths > 3.9 && eighths < k_largest_in * 8.0 + 0.1) ||
            !same(eighths, std::round(eighths)))
            return base::Refusal{std::string(field),
                                 "No bolt of this size is known.",
                                 "1/2 to 4 in in steps of 1/8 in, or M and a number"};
        bolt.diameter = inches(std::round(eighths) / 8.0);
    }
    const bool between = metric && bolt.diameter == millimetres(14.0); // EN 1090-2 names it
    if (const auto row = row_of(bolt); !row.ok() && !between)
        return base::Refusal{std::string(field), row.refusal().reason, row.refusal().detail};
    return bolt;
}

const char* hole_kind_word(HoleKind kind) {
    switch (kind) {
    case HoleKind::standard:
        return "standard";
    case HoleKind::oversize:
        return "oversize";
    case HoleKind::short_slot:
        return "short slot";
    case HoleKind::long_slot:
        break;
    }
    return "long slot";
}

base::Result<BoltHole> bolt_hole(const Bolt& bolt, HoleKind kind, HoleEdition edition) {
    if (edition == HoleEdition::en_1090)
        return en_hole(bolt, kind);
    const auto row = row_of(bolt);
    if (!row.ok())
        return row.refusal();
    if (bolt.diameter == millimetres(12.0) && edition != HoleEdition::aisc_2022)
        return no_row("M12 came with edition 360-22");
    double width = kind == HoleKind::oversize ? row->oversize : row->standard;
    const bool older_is_less = edition == HoleEdition::aisc_2010 &&
                               bolt.system == BoltSystem::inch && row->bolt > 1.0 - 1e-6;
    if (older_is_less && kind != HoleKind::oversize)
        width -= 1.0 / 16;
    double length = width;
    if (kind == HoleKind::short_slot)
        length = row->short_length;
    if (kind == HoleKind::long_slot)
        length = row->long_length;
    return BoltHole{in_own_units(bolt, width), in_own_units(bolt, length)};
}

base::Result<Working> bolt_hole_working(const Bolt& bolt, HoleKind kind, HoleEdition edition) {
    const auto hole = bolt_hole(bolt, kind, edition);
    if (!hole.ok())
        return hole.refusal();
    return Working{
        edition == HoleEdition::en_1090 ? &k_bolt_hole_normal_en_card : &k_bolt_hole_card,
        {{"d", bolt.diameter}, {"l", hole->length}},
        {"w", hole->width},
        std::string(edition_words(edition)) + " Kind of hole: " + hole_kind_word(kind) + "."};
}

base::Result<HoleKind> slot_kind(const Bolt& bolt, Length slot_length) {
    const auto row = row_of(bolt);
    if (!row.ok())
        return row.refusal();
    if (const auto fault = quantity::size_fault(slot_length, "slot_length"))
        return *fault;
    if (!clearly_less(bolt.diameter, slot_length))
        return base::Refusal{"slot_length", "The slot is no longer than its bolt is thick.", ""};
    if (!clearly_less(in_own_units(bolt, row->short_length), slot_length))
        return HoleKind::short_slot;
    if (!clearly_less(in_own_units(bolt, row->long_length), slot_length))
        return HoleKind::long_slot;
    return base::Refusal{"slot_length", "The slot is longer than a long slot may be.", ""};
}

base::Result<Bolt> bolt_of_hole(Length hole) {
    if (const auto fault = quantity::size_fault(hole, "hole"))
        return *fault;
    const Bolt inch{BoltSystem::inch,
                    inches(next_up(k_inch_rows, k_inch_rule_from, 0.125, 8.0, to_inches(hole)))};
    const Bolt metric{
        BoltSystem::metric,
        millimetres(next_up(k_metric_rows, k_metric_rule_from, 3.0, 1.0, to_millimetres(hole)))};
    if (hole > inches(k_largest_in + 0.125))
        return base::Refusal{"hole", "This is no hole for a bolt.", "up to 4-1/8 in"};
    for (const Bolt& bolt : {inch, metric})
        if (const auto row = row_of(bolt);
            row.ok() &&
            same(to_millimetres(in_own_units(bolt, row->standard)), to_millimetres(hole)))
            return bolt;
    return inch.diameter > metric.diameter ? inch : metric;
}

} // namespace treadle::layout
