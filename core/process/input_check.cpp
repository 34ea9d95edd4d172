#include "process/input_check.h"

#include "base/text.h"

#include <cmath>
#include <string>

namespace treadle::process {

namespace {

constexpr double k_most_length_mm = 100'000.0;
constexpr double k_most_stress_mpa = 5'000.0;
constexpr double k_most_modulus_mpa = 1e6;
constexpr double k_most_force_n = 1e9;

/// "shear_strength" -> "The shear strength"
std::string in_words(const char* field) {
    std::string words = std::string("The ") + field;
    for (char& c : words)
        if (c == '_')
            c = ' ';
    return words;
}

} // namespace

void InputCheck::bounded(
    double value, bool zero_allowed, double most, const char* field, const char* bound) {
    if (failed())
        return;
    if (!std::isfinite(value))
        fault_ = base::Refusal{field, in_words(field) + " is not a number.", ""};
    else if (zero_allowed ? value < 0.0 : value <= 0.0)
        fault_ = base::Refusal{field,
                               in_words(field) +
                                   (zero_allowed ? " is below zero." : " must be above zero."),
                               ""};
    else if (value > most)
        fault_ = base::Refusal{field,
                               in_words(field) + " is too large to be meant: check its unit.",
                               std::string("at most ") + bound};
}

InputCheck& InputCheck::length(Length value, const char* field) {
    bounded(quantity::to_millimetres(value), false, k_most_length_mm, field, "100 m");
    return *this;
}

InputCheck& InputCheck::length_or_zero(Length value, const char* field) {
    bounded(quantity::to_millimetres(value), true, k_most_length_mm, field, "100 m");
    return *this;
}

InputCheck& InputCheck::stress(Stress value, const char* field) {
    bounded(quantity::to_megapascals(value), false, k_most_stress_mpa, field, "5000 MPa");
    return *this;
}

InputCheck& InputCheck::modulus(Stress value, const char* field) {
    bounded(quantity::to_megapascals(value), false, k_most_modulus_mpa, field, "1000 GPa");
    return *this;
}

InputCheck& InputCheck::force(Force value, const char* field) {
    bounded(quantity::to_newtons(value), false, k_most_force_n, field, "1000000 kN");
    return *this;
}

InputCheck& InputCheck::angle_within(Angle value, double low, double high, const char* field) {
    if (failed())
        return *this;
    const double degrees_value = quantity::to_degrees(value);
    if (!(degrees_value > low && degrees_value < high))
        fault_ = base::Refusal{field,
                               in_words(field) + " is outside its range.",
                               "over " + base::write_short(low, 3) + " and below " +
                                   base::write_short(high, 3) + " degrees"};
    return *this;
}

InputCheck& InputCheck::ratio(double value, double most, const char* field) {
    if (failed())
        return *this;
    if (!(value > 0.0 && value <= most))
        fault_ = base::Refusal{field,
                               in_words(field) + " is outside its range.",
                               "over 0 and up to " + base::write_short(most, 3)};
    return *this;
}

bool clearly_below(Length a, Length b) { return a < b * (1.0 - 1e-9); }

} // namespace treadle::process
