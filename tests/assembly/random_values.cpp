#include "assembly/random_values.h"

namespace treadle::test {

namespace {

using assembly::Values;

constexpr const char* k_posts[] = {"tube 2 x 2 x 1/8 in", "square 1-1/4 in", "pipe 1.9 x 0.145 in"};
constexpr const char* k_rails[] = {"flat 1-1/2 x 3/8 in", "flat 2 x 1/4 in", "channel"};
constexpr const char* k_bars[] = {"square 1/2 in", "square 3/4 in", "round 5/8 in", "round 3/4 in"};
constexpr const char* k_steps[] = {"", "1/16 in", "1/8 in"};

constexpr const char* k_posts_mm[] = {"tube 50 x 50 x 3 mm", "square 30 mm", "pipe 48.3 x 3.2 mm"};
constexpr const char* k_rails_mm[] = {"flat 40 x 10 mm", "flat 50 x 6 mm", "flat 60 x 8 mm"};
constexpr const char* k_bars_mm[] = {"square 12 mm", "square 20 mm", "round 12 mm", "round 16 mm"};
constexpr const char* k_steps_mm[] = {"", "1 mm", "2 mm"};

std::string rail(Dice& dice) {
    const std::string text = dice.pick(k_rails, k_rails_mm);
    return text[0] == 'c' ? "C3x4.1" : text;
}

const char* steel(const Dice& dice) { return dice.either("A36", "S275JR"); }

Values guard(Dice& dice) {
    constexpr const char* k_rules[] = {"irc", "ibc", "uk"};
    constexpr const char* k_joints[] = {"welded", "punched"};
    Values values{{"rule", dice.pick(k_rules)},
                  {"run", dice.length(24, 480)},
                  {"height", dice.length(36, 48)},
                  {"bottom_gap", dice.length(1, 3.5)},
                  {"spacing", dice.length(48, 96)},
                  {"post", dice.pick(k_posts, k_posts_mm)},
                  {"top_rail", rail(dice)},
                  {"bottom_rail", rail(dice)},
                  {"picket", dice.pick(k_bars, k_bars_mm)},
                  {"joint", dice.pick(k_joints)},
                  {"step", dice.pick(k_steps, k_steps_mm)},
                  {"grade", steel(dice)}};
    if (dice.chance()) {
        values.push_back({"run_2", dice.length(24, 240)});
        values.push_back({"cap", dice.either("flat 2 x 3/8 in", "flat 50 x 10 mm")});
    }
    return values;
}

Values stair(Dice& dice) {
    constexpr const char* k_rules[] = {"irc", "ibc", "uk"};
    constexpr const char* k_joints[] = {"welded", "punched"};
    Values values{{"rule", dice.pick(k_rules)},
                  {"riser", dice.length(5, 8)},
                  {"tread", dice.length(9, 13)},
                  {"run", dice.length(40, 240)},
                  {"height", dice.length(34, 44)},
                  {"bottom_gap", dice.length(0, 1.0)},
                  {"spacing", dice.length(40, 72)},
                  {"post", dice.pick(k_posts, k_posts_mm)},
                  {"top_rail", rail(dice)},
                  {"bottom_rail", rail(dice)},
                  {"picket", dice.pick(k_bars, k_bars_mm)},
                  {"joint", dice.pick(k_joints)},
                  {"step", dice.pick(k_steps, k_steps_mm)},
                  {"grade", steel(dice)}};
    if (dice.chance())
        values.push_back({"upper_landing", dice.length(24, 120)});
    if (dice.chance())
        values.push_back({"lower_landing", dice.length(24, 120)});
    return values;
}

Values fence(Dice& dice) {
    constexpr const char* k_rules[] = {"common", "pool"};
    constexpr const char* k_manners[] = {"raked", "stepped"};
    constexpr const char* k_slopes[] = {"0", "4 %", "12 %"};
    constexpr const char* k_joints[] = {"face", "punched"};
    return {{"rule", dice.pick(k_rules)},
            {"run", dice.length(60, 960)},
            {"height", dice.length(60, 96)},
            {"bottom_gap", dice.length(1, 2)},
            {"spacing", dice.length(60, 96)},
            {"post", dice.pick(k_posts, k_posts_mm)},
            {"rail", rail(dice)},
            {"picket", dice.pick(k_bars, k_bars_mm)},
            {"joint", dice.pick(k_joints)},
            {"slope", dice.pick(k_slopes)},
            {"manner", dice.pick(k_manners)},
            {"step", dice.pick(k_steps, k_steps_mm)},
            {"grade", steel(dice)}};
}

Values gate(Dice& dice) {
    constexpr const char* k_leaves[] = {"one", "two"};
    return {{"opening", dice.length(36, 168)},
            {"leaves", dice.pick(k_leaves)},
            {"height", dice.length(36, 80)},
            {"bottom_gap", dice.length(1, 2)},
            {"frame", dice.either("tube 1-1/2 x 1/8 in", "tube 40 x 40 x 3 mm")},
            {"picket", dice.pick(k_bars, k_bars_mm)},
            {"brace", "diagonal"},
            {"brace_bar", dice.either("flat 1-1/4 x 1/4 in", "flat 30 x 6 mm")},
            {"grade", steel(dice)}};
}

Values frame(Dice& dice) {
    constexpr const char* k_angles[] = {
        "angle 1-1/2 x 1-1/2 x 1/8 in", "angle 2 x 2 x 3/16 in", "angle 2 x 2 x 1/4 in"};
    constexpr const char* k_angles_mm[] = {"angle 40 x 40 x 4 mm", "angle 50 x 50 x 5 mm"};
    constexpr const char* k_corners[] = {"mitre", "butt", "notch-and-fold"};
    return {{"corner", dice.pick(k_corners)},
            {"width", dice.length(8, 60)},
            {"height", dice.length(8, 60)},
            {"bar", dice.pick(k_angles, k_angles_mm)},
            {"grade", steel(dice)}};
}

Values even_frame(Dice& dice) {
    constexpr const char* k_angles[] = {"angle 1-1/2 x 1-1/2 x 1/8 in", "angle 2 x 2 x 1/4 in"};
    constexpr const char* k_angles_mm[] = {"angle 40 x 40 x 4 mm", "angle 50 x 50 x 5 mm"};
    constexpr const char* k_corners[] = {"mitre", "notch-and-fold"};
    return {{"sides", std::to_string(static_cast<int>(dice.roll(3, 12, 1)))},
            {"side", dice.length(8, 36)},
            {"corner", dice.pick(k_corners)},
            {"bar", dice.pick(k_angles, k_angles_mm)},
            {"grade", steel(dice)}};
}

Values gusset(Dice& dice) {
    Values values{{"leg_a", dice.length(4, 16)},
                  {"leg_b", dice.length(3, 8)},
                  {"thickness", dice.either("1/4 in", "6 mm")},
                  {"grade", steel(dice)}};
    if (dice.chance()) {
        values.push_back({"clip", dice.length(0.5, 1)});
        values.push_back({"weld", dice.either("1/4 in", "6 mm")});
    }
    return values;
}

Values plate(Dice& dice) {
    constexpr const char* k_bolts[] = {"1/2 in", "5/8 in", "3/4 in"};
    constexpr const char* k_bolts_mm[] = {"M16", "M20"};
    return {{"length", dice.length(6, 14)},
            {"width", dice.length(6, 9)},
            {"thickness", dice.either("3/8 in", "10 mm")},
            {"bolt", dice.pick(k_bolts, k_bolts_mm)},
            {"edge_length", dice.length(1.25, 2)},
            {"edge_width", dice.length(1.25, 2)},
            {"grade", steel(dice)}};
}

Values clip(Dice& dice) {
    constexpr const char* k_bolts[] = {"1/2 in", "5/8 in"};
    constexpr const char* k_bolts_mm[] = {"M16", "M20"};
    constexpr const char* k_bolt_counts[] = {"1", "2", "3"};
    Values values{{"angle", dice.either("angle 3 x 3 x 1/4 in", "angle 80 x 80 x 8 mm")},
                  {"bolt", dice.pick(k_bolts, k_bolts_mm)},
                  {"bolts", dice.pick(k_bolt_counts)},
                  {"spacing", dice.length(2.5, 4)},
                  {"end", dice.length(1.25, 2)},
                  {"grade", steel(dice)}};
    // No table of gages for metric angles is at hand: there they are given.
    if (dice.metric())
        for (const char* gage : {"gage_a", "gage_b"})
            values.push_back({gage, "45 mm"});
    return values;
}

/// Branches and runs that the saddle dies of the demo crib are for.
Values branch(Dice& dice) {
    const bool large = dice.chance();
    const char* inch_branch = large ? "pipe 1.66 x 0.14 in" : "pipe 1.315 x 0.133 in";
    const char* inch_run = large ? "1.9 in" : "1.66 in";
    Values values{{"branch", dice.either(inch_branch, "pipe 33.7 x 3.2 mm")},
                  {"run", dice.either(inch_run, "48.3 mm")},
                  {"centres", dice.length(8, 60)},
                  {"grade", dice.either("A53-B", "S235JR")}};
    if (dice.chance())
        values.push_back({"second_run", values[1].text});
    if (dice.chance())
        values.push_back({"angle", std::to_string(dice.roll(40, 90, 5)) + " deg"});
    return values;
}

Values pipe_rail(Dice& dice) {
    constexpr const char* k_rules[] = {"osha", "irc", "ibc", "uk"};
    Values values{{"rule", dice.pick(k_rules)},
                  {"run", dice.length(48, 480)},
                  {"height", dice.length(36, 46)},
                  {"spacing", dice.length(48, 96)},
                  {"pipe", dice.either("pipe 1.9 x 0.145 in", "pipe 48.3 x 3.2 mm")},
                  {"grade", dice.either("A53-B", "S235JR")}};
    if (dice.chance())
        values.push_back({"run_2", dice.length(24, 240)});
    return values;
}

Values handrail(Dice& dice) {
    constexpr const char* k_rules[] = {"ada", "osha"};
    constexpr const char* k_ends[] = {"open", "returned"};
    return {{"rule", dice.pick(k_rules)},
            {"riser", dice.length(5, 8)},
            {"tread", dice.length(9, 13)},
            {"run", dice.length(30, 240)},
            {"height", dice.length(34, 38)},
            {"pipe", dice.either("pipe 1.66 x 0.14 in", "pipe 42.4 x 3.2 mm")},
            {"wall_clear", dice.length(1.5, 3)},
            {"ends", dice.pick(k_ends)},
            {"grade", dice.either("A53-B", "S235JR")}};
}

Values u_bracket(Dice& dice) {
    return {{"width", dice.length(3, 7)},
            {"height", dice.length(2.5, 4)},
            {"bar", dice.either("flat 2 x 1/4 in", "flat 50 x 6 mm")},
            {"bolt", dice.either("1/2 in", "M16")},
            {"end", dice.either("1 in", "25 mm")},
            {"grade", steel(dice)}};
}

Values strap(Dice& dice) {
    return {{"first", dice.length(3, 5)},
            {"offset", dice.length(2, 4)},
            {"last", dice.length(3, 5)},
            {"bar", dice.either("flat 1-1/2 x 3/16 in", "flat 40 x 5 mm")},
            {"grade", steel(dice)}};
}

Values hanger(Dice& dice) {
    return {{"width", dice.length(3, 6)},
            {"depth", dice.length(2, 4)},
            {"ear", dice.length(2.25, 3)},
            {"bar", dice.either("flat 1-1/2 x 3/16 in", "flat 40 x 5 mm")},
            {"grade", steel(dice)}};
}

Values ring(Dice& dice) {
    constexpr const char* k_stock[] = {"round 1/2 in", "square 1/2 in", "flat 2 x 1/4 in"};
    constexpr const char* k_stock_mm[] = {"round 12 mm", "square 12 mm", "flat 50 x 6 mm"};
    return {{"bar", dice.pick(k_stock, k_stock_mm)},
            {"diameter", dice.length(6, 36)},
            {"grade", steel(dice)}};
}

Values hook(Dice& dice) {
    constexpr const char* k_stock[] = {"round 3/8 in", "round 1/2 in", "square 1/2 in"};
    constexpr const char* k_stock_mm[] = {"round 10 mm", "round 12 mm", "square 12 mm"};
    return {{"bar", dice.pick(k_stock, k_stock_mm)},
            {"diameter", dice.length(2, 6)},
            {"shank", dice.length(2, 12)},
            {"grade", steel(dice)}};
}

} // namespace

const std::vector<RandomKind>& random_kinds() {
    static const std::vector<RandomKind> kinds{{"guard-run", guard},
                                               {"guard-stair", stair},
                                               {"fence-run", fence},
                                               {"gate", gate},
                                               {"frame", frame},
                                               {"even-frame", even_frame},
                                               {"base-plate", plate},
                                               {"gusset", gusset},
                                               {"clip-angle", clip},
                                               {"pipe-branch", branch},
                                               {"pipe-rail", pipe_rail},
                                               {"handrail", handrail},
                                               {"u-bracket", u_bracket},
                                               {"strap", strap},
                                               {"hanger", hanger},
                                               {"ring", ring},
                                               {"hook", hook},
                                               {"eye", hook}};
    return kinds;
}

} // namespace treadle::test
