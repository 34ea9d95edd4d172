#include "assembly/random_values.h"

namespace treadle::test {

namespace {

using assembly::Values;

constexpr const char* k_posts[] = {"tube 2 x 2 x 1/8 in", "square 1-1/4 in", "pipe 1.9 x 0.145 in"};
constexpr const char* k_rails[] = {"flat 1-1/2 x 3/8 in", "flat 2 x 1/4 in", "channel"};
constexpr const char* k_bars[] = {"square 1/2 in", "square 3/4 in", "round 5/8 in", "round 3/4 in"};
constexpr const char* k_steps[] = {"", "1/16 in", "1/8 in"};

std::string rail(Dice& dice) {
    const std::string text = dice.pick(k_rails);
    return text[0] == 'c' ? "C3x4.1" : text;
}

Values guard(Dice& dice) {
    constexpr const char* k_rules[] = {"irc", "ibc", "uk"};
    constexpr const char* k_joints[] = {"welded", "punched"};
    Values values{{"rule", dice.pick(k_rules)},
                  {"run", dice.inches(24, 480)},
                  {"height", dice.inches(36, 48)},
                  {"bottom_gap", dice.inches(1, 3.5)},
                  {"spacing", dice.inches(48, 96)},
                  {"post", dice.pick(k_posts)},
                  {"top_rail", rail(dice)},
                  {"bottom_rail", rail(dice)},
                  {"picket", dice.pick(k_bars)},
                  {"joint", dice.pick(k_joints)},
                  {"step", dice.pick(k_steps)},
                  {"grade", "A36"}};
    if (dice.chance()) {
        values.push_back({"run_2", dice.inches(24, 240)});
        values.push_back({"cap", "flat 2 x 3/8 in"});
    }
    return values;
}

Values stair(Dice& dice) {
    constexpr const char* k_rules[] = {"irc", "ibc", "uk"};
    constexpr const char* k_joints[] = {"welded", "punched"};
    return {{"rule", dice.pick(k_rules)},
            {"riser", dice.inches(5, 8)},
            {"tread", dice.inches(9, 13)},
            {"run", dice.inches(40, 240)},
            {"height", dice.inches(34, 44)},
            {"bottom_gap", dice.inches(0, 1.0)},
            {"spacing", dice.inches(40, 72)},
            {"post", dice.pick(k_posts)},
            {"top_rail", rail(dice)},
            {"bottom_rail", rail(dice)},
            {"picket", dice.pick(k_bars)},
            {"joint", dice.pick(k_joints)},
            {"step", dice.pick(k_steps)},
            {"grade", "A36"}};
}

Values fence(Dice& dice) {
    constexpr const char* k_rules[] = {"common", "pool"};
    constexpr const char* k_manners[] = {"raked", "stepped"};
    constexpr const char* k_slopes[] = {"0", "4 %", "12 %"};
    constexpr const char* k_joints[] = {"face", "punched"};
    return {{"rule", dice.pick(k_rules)},
            {"run", dice.inches(60, 960)},
            {"height", dice.inches(60, 96)},
            {"bottom_gap", dice.inches(1, 2)},
            {"spacing", dice.inches(60, 96)},
            {"post", dice.pick(k_posts)},
            {"rail", rail(dice)},
            {"picket", dice.pick(k_bars)},
            {"joint", dice.pick(k_joints)},
            {"slope", dice.pick(k_slopes)},
            {"manner", dice.pick(k_manners)},
            {"step", dice.pick(k_steps)},
            {"grade", "A36"}};
}

Values gate(Dice& dice) {
    constexpr const char* k_leaves[] = {"one", "two"};
    return {{"opening", dice.inches(36, 168)},
            {"leaves", dice.pick(k_leaves)},
            {"height", dice.inches(36, 80)},
            {"bottom_gap", dice.inches(1, 2)},
            {"frame", "tube 1-1/2 x 1/8 in"},
            {"picket", dice.pick(k_bars)},
            {"brace", "diagonal"},
            {"brace_bar", "flat 1-1/4 x 1/4 in"},
            {"grade", "A36"}};
}

Values frame(Dice& dice) {
    constexpr const char* k_angles[] = {
        "angle 1-1/2 x 1-1/2 x 1/8 in", "angle 2 x 2 x 3/16 in", "angle 2 x 2 x 1/4 in"};
    constexpr const char* k_corners[] = {"mitre", "butt", "notch-and-fold"};
    return {{"corner", dice.pick(k_corners)},
            {"width", dice.inches(8, 60)},
            {"height", dice.inches(8, 60)},
            {"bar", dice.pick(k_angles)},
            {"grade", "A36"}};
}

Values plate(Dice& dice) {
    constexpr const char* k_bolts[] = {"1/2 in", "5/8 in", "3/4 in"};
    return {{"length", dice.inches(6, 14)},
            {"width", dice.inches(6, 9)},
            {"thickness", "3/8 in"},
            {"bolt", dice.pick(k_bolts)},
            {"edge_length", dice.inches(1.25, 2)},
            {"edge_width", dice.inches(1.25, 2)},
            {"grade", "A36"}};
}

Values clip(Dice& dice) {
    constexpr const char* k_bolts[] = {"1/2 in", "5/8 in"};
    constexpr const char* k_bolt_counts[] = {"1", "2", "3"};
    return {{"angle", "angle 3 x 3 x 1/4 in"},
            {"bolt", dice.pick(k_bolts)},
            {"bolts", dice.pick(k_bolt_counts)},
            {"spacing", dice.inches(2.5, 4)},
            {"end", dice.inches(1.25, 2)},
            {"grade", "A36"}};
}

/// Branches and runs that the saddle dies of the demo crib are for.
Values branch(Dice& dice) {
    const bool large = dice.chance();
    Values values{{"branch", large ? "pipe 1.66 x 0.14 in" : "pipe 1.315 x 0.133 in"},
                  {"run", large ? "1.9 in" : "1.66 in"},
                  {"centres", dice.inches(8, 60)},
                  {"grade", "A53-B"}};
    if (dice.chance())
        values.push_back({"second_run", values[1].text});
    if (dice.chance())
        values.push_back({"angle", std::to_string(dice.roll(40, 90, 5)) + " deg"});
    return values;
}

Values pipe_rail(Dice& dice) {
    constexpr const char* k_rules[] = {"osha", "irc", "ibc", "uk"};
    return {{"rule", dice.pick(k_rules)},
            {"run", dice.inches(48, 480)},
            {"height", dice.inches(36, 46)},
            {"spacing", dice.inches(48, 96)},
            {"pipe", "pipe 1.9 x 0.145 in"},
            {"grade", "A53-B"}};
}

Values u_bracket(Dice& dice) {
    return {{"width", dice.inches(3, 7)},
            {"height", dice.inches(2.5, 4)},
            {"bar", "flat 2 x 1/4 in"},
            {"bolt", "1/2 in"},
            {"end", "1 in"},
            {"grade", "A36"}};
}

Values strap(Dice& dice) {
    return {{"first", dice.inches(3, 5)},
            {"offset", dice.inches(2, 4)},
            {"last", dice.inches(3, 5)},
            {"bar", "flat 1-1/2 x 3/16 in"},
            {"grade", "A36"}};
}

Values hanger(Dice& dice) {
    return {{"width", dice.inches(3, 6)},
            {"depth", dice.inches(2, 4)},
            {"ear", dice.inches(2.25, 3)},
            {"bar", "flat 1-1/2 x 3/16 in"},
            {"grade", "A36"}};
}

Values ring(Dice& dice) {
    constexpr const char* k_stock[] = {"round 1/2 in", "square 1/2 in", "flat 2 x 1/4 in"};
    return {{"bar", dice.pick(k_stock)}, {"diameter", dice.inches(6, 36)}, {"grade", "A36"}};
}

Values hook(Dice& dice) {
    constexpr const char* k_stock[] = {"round 3/8 in", "round 1/2 in", "square 1/2 in"};
    return {{"bar", dice.pick(k_stock)},
            {"diameter", dice.inches(2, 6)},
            {"shank", dice.inches(2, 12)},
            {"grade", "A36"}};
}

} // namespace

const std::vector<RandomKind>& random_kinds() {
    static const std::vector<RandomKind> kinds{{"guard-run", guard},
                                               {"guard-stair", stair},
                                               {"fence-run", fence},
                                               {"gate", gate},
                                               {"frame", frame},
                                               {"base-plate", plate},
                                               {"clip-angle", clip},
                                               {"pipe-branch", branch},
                                               {"pipe-rail", pipe_rail},
                                               {"u-bracket", u_bracket},
                                               {"strap", strap},
                                               {"hanger", hanger},
                                               {"ring", ring},
                                               {"hook", hook},
                                               {"eye", hook}};
    return kinds;
}

} // namespace treadle::test
