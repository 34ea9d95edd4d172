#include "layout/guard_limit.h"

#include <iterator>
#include <string>

#include "layout/cards.h"
#include "layout/first_fault.h"

namespace treadle::layout {

namespace {

using base::Evidence;

constexpr base::CardSymbol k_symbols[] = {
    {"least", "least allowed"}, {"greatest", "greatest allowed"}, {"x", "what is planned"}};
constexpr base::CardSymbol k_midrail_symbols[] = {{"h", "top edge over the surface"},
                                                  {"m", "midrail over the surface"}};

constexpr const char* k_local = "by the rule; the adopted local code governs";

constexpr double k_none = -1.0;
constexpr const char* k_memory = "This row is from memory.";

constexpr GuardLimit k_rows[] = {
    {"irc-drop", "drop above which a guard is needed", &k_guard_limit_irc_card, k_none, 30},
    {"irc-guard-height", "guard of a dwelling", &k_guard_limit_irc_card, 36, k_none},
    {"irc-stair-guard-height", "guard of a dwelling's stair", &k_guard_limit_irc_card, 34, k_none},
    {"irc-opening", "opening", &k_guard_limit_irc_card, k_none, 4, 25.4, "", true},
    {"irc-stair-opening",
     "open side of a stair",
     &k_guard_limit_irc_card,
     k_none,
     4.375,
     25.4,
     "",
     true},
    {"irc-stair-triangle",
     "triangle under the rail",
     &k_guard_limit_irc_card,
     k_none,
     6,
     25.4,
     "",
     true},
    {"ibc-guard-height", "guard", &k_guard_limit_ibc_card, 42, k_none, 25.4, k_memory},
    {"ibc-opening",
     "opening up to 36 in",
     &k_guard_limit_ibc_card,
     k_none,
     4,
     25.4,
     k_memory,
     true},
    {"ibc-upper-opening",
     "opening from 36 to 42 in",
     &k_guard_limit_ibc_card,
     k_none,
     4.375,
     25.4,
     k_memory,
     true},
    {"ibc-stair-triangle",
     "triangle under the rail",
     &k_guard_limit_ibc_card,
     k_none,
     6,
     25.4,
     k_memory,
     true},
    {"ibc-relaxed-opening",
     "opening in relaxed places",
     &k_guard_limit_ibc_card,
     k_none,
     21,
     25.4,
     "Text of the 2000 edition.",
     true},
    {"ibc-2000-upper-opening",
     "opening from 34 to 42 in",
     &k_guard_limit_ibc_card,
     k_none,
     8,
     25.4,
     "The 2000 edition; later ones ask less.",
     true},
    {"osha-top-edge",
     "top edge of a guardrail",
     &k_guard_limit_osha_card,
     39,
     45,
     25.4,
     "42 in, 3 in up or down; may be higher when all else holds.",
     false,
     true},
    {"osha-opening", "openings and upright members apart", &k_guard_limit_osha_card, k_none, 19},
    {"osha-stair-rail-height",
     "stair rail system",
     &k_guard_limit_osha_card,
     42,
     k_none,
     25.4,
     "Installed after 17 January 2017."},
    {"osha-handrail-height", "handrail", &k_guard_limit_osha_card, 30, 38},
    {"osha-finger-room", "handrail to a wall", &k_guard_limit_osha_card, 2.25, k_none},
    {"osha-toeboard-height", "toeboard", &k_guard_limit_osha_card, 3.5, k_none, 25.4, k_memory},
    {"osha-toeboard-gap",
     "gap under a toeboard",
     &k_guard_limit_osha_card,
     k_none,
     0.25,
     25.4,
     k_memory},
    {"ada-handrail-height", "handrail over nosing or ramp", &k_guard_limit_ada_card, 34, 38},
    {"ada-round-grip", "outside of a round grip", &k_guard_limit_ada_card, 1.25, 2},
    {"ada-grip-perimeter", "perimeter of another grip", &k_guard_limit_ada_card, 4, 6.25},
    {"ada-grip-across", "another grip across", &k_guard_limit_ada_card, k_none, 2.25},
    {"ada-wall-clearance",
     "handrail to a wall",
     &k_guard_limit_ada_card,
     1.5,
     k_none,
     25.4,
     "OSHA asks 2-1/4 in."},
    {"ada-extension", "level extension of a handrail", &k_guard_limit_ada_card, 12, k_none},
    {"pool-barrier-height", "pool barrier", &k_guard_limit_pool_card, 48, k_none},
    {"pool-opening",
     "opening of a pool barrier",
     &k_guard_limit_pool_card,
     k_none,
     4,
     25.4,
     "",
     true},
    {"pool-picket-gap",
     "gap where rails are under 45 in apart",
     &k_guard_limit_pool_card,
     k_none,
     1.75},
    {"pool-bottom-gap", "gap under a barrier, over grade", &k_guard_limit_pool_card, k_none, 2},
    {"uk-opening", "opening", &k_guard_limit_uk_card, k_none, 100, 1.0, "", true},
    {"uk-guard-height", "guard", &k_guard_limit_uk_card, 1100, k_none, 1.0},
    {"uk-stair-guard-height",
     "guard of a dwelling's stair",
     &k_guard_limit_uk_card,
     900,
     k_none,
     1.0},
};

std::string note_of(const GuardLimit& limit, Length value) {
    std::string note = std::string("Rule ") + limit.rule + ": " + limit.what + ". ";
    if (*limit.remark != '\0')
        note += std::string(limit.remark) + " ";
    const auto most = greatest_of(limit);
    if (limit.may_exceed && most && clearly_less(*most, value))
        note += "Higher than usual: every other demand must still hold. ";
    return note + "The adopted local code governs.";
}

quantity::Fault value_fault(const GuardLimit& limit, Length value) {
    if (const auto fault = quantity::place_fault(value, "value"))
        return fault;
    if (value == Length{})
        return std::nullopt;
    const auto least = least_of(limit);
    const auto most = greatest_of(limit);
    if (least && clearly_less(value, *least))
        return base::Refusal{"value", "This is less than the rule asks.", note_of(limit, value)};
    const bool over = most && (limit.sphere ? !clearly_less(value, *most) //
                                            : clearly_less(*most, value));
    if (over && !limit.may_exceed)
        return base::Refusal{"value", "This is more than the rule allows.", note_of(limit, value)};
    return std::nullopt;
}

base::Result<Working> bound_working(const GuardLimit& limit,
                                    Length value,
                                    const char* symbol,
                                    const std::optional<Length>& bound) {
    if (const auto fault = value_fault(limit, value))
        return *fault;
    if (!bound)
        return base::Refusal{"rule", "The rule has no such bound.", ""};
    Working working{limit.card, {}, {symbol, *bound}, note_of(limit, value)};
    if (value > Length{})
        working.values.push_back({"x", value});
    return working;
}

} // namespace

const base::FormulaCard k_guard_limit_irc_card{"guard-limit-irc",
                                               "Guards of dwellings",
                                               "least and greatest by the table",
                                               k_symbols,
                                               k_local,
                                               "irc-r312",
                                               Evidence::published,
                                               ""};
const base::FormulaCard k_guard_limit_ibc_card{"guard-limit-ibc",
                                               "Guards of buildings",
                                               "least and greatest by the table",
                                               k_symbols,
                                               k_local,
                                               "ibc-1015",
                                               Evidence::from_memory,
                                               ""};
const base::FormulaCard k_guard_limit_osha_card{"guard-limit-osha",
                                                "Guardrails and stair rails at work",
                                                "least and greatest by the table",
                                                k_symbols,
                                                k_local,
                                                "osha-1910-29",
                                                Evidence::published,
                                                ""};
const base::FormulaCard k_guard_limit_ada_card{"guard-limit-ada",
                                               "Handrails that a hand can hold",
                                               "least and greatest by the table",
                                               k_symbols,
                                               k_local,
                                               "ada-505",
                                               Evidence::published,
                                               ""};
const base::FormulaCard k_guard_limit_pool_card{"guard-limit-pool",
                                                "Barriers round pools",
                                                "least and greatest by the table",
                                                k_symbols,
                                                k_local,
                                                "ispsc-305",
                                                Evidence::published,
                                                ""};
const base::FormulaCard k_guard_limit_uk_card{"guard-limit-uk",
                                              "Guards in the United Kingdom",
                                              "least and greatest by the table",
                                              k_symbols,
                                              k_local,
                                              "uk-document-k",
                                              Evidence::from_memory,
                                              ""};
const base::FormulaCard k_guard_midrail_card{"guard-midrail",
                                             "Height of a single midrail",
                                             "m = h / 2",
                                             k_midrail_symbols,
                                             "no wall or parapet of 21 in stands there",
                                             "osha-1910-29",
                                             Evidence::published,
                                             ""};

std::span<const GuardLimit> guard_limits() { return k_rows; }

const GuardLimit* find_guard_limit(std::string_view rule) {
    for (const GuardLimit& row : k_rows)
        if (rule == row.rule)
            return &row;
    return nullptr;
}

std::optional<Length> least_of(const GuardLimit& limit) {
    if (limit.least < 0.0)
        return std::nullopt;
    return millimetres(limit.least * limit.unit_mm);
}

std::optional<Length> greatest_of(const GuardLimit& limit) {
    if (limit.greatest < 0.0)
        return std::nullopt;
    return millimetres(limit.greatest * limit.unit_mm);
}

base::Result<Working> least_limit_working(const GuardLimit& limit, Length value) {
    return bound_working(limit, value, "least", least_of(limit));
}

base::Result<Working> greatest_limit_working(const GuardLimit& limit, Length value) {
    return bound_working(limit, value, "greatest", greatest_of(limit));
}

base::Result<Working> midrail_working(Length top_edge) {
    if (const auto fault = quantity::size_fault(top_edge, "top_edge"))
        return *fault;
    const GuardLimit* rule = find_guard_limit("osha-top-edge");
    TREADLE_EXPECT(rule != nullptr);
    if (auto fault = value_fault(*rule, top_edge)) {
        fault->field = "top_edge";
        return *fault;
    }
    return Working{
        &k_guard_midrail_card, {{"h", top_edge}}, {"m", top_edge / 2.0}, note_of(*rule, top_edge)};
}

} // namespace treadle::layout
