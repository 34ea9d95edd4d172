#include "lesson/figure.h"

#include "quantity/parse.h"

namespace treadle::lesson {

namespace {

using base::Refusal;
using base::Result;

struct Base {
    double operator()(Angle value) const { return to_degrees(value); }
    double operator()(quantity::Number value) const { return value.value; }
    double operator()(quantity::Share value) const { return value.value; }
    template <class Q>
    double operator()(Q value) const {
        return value.in_base();
    }
};

template <class Q>
Result<AnyQuantity> as_any(const Result<Q>& read) {
    if (!read)
        return read.refusal();
    return AnyQuantity(*read);
}

/// How a text is read that shall be of the same kind.
struct ReadAs {
    std::string_view typed;
    static constexpr std::string_view k_field = "answer";

    Result<AnyQuantity> operator()(Length) const {
        return as_any(quantity::parse_length(typed, std::nullopt, k_field));
    }
    Result<AnyQuantity> operator()(Force) const {
        return as_any(quantity::parse_force(typed, std::nullopt, k_field));
    }
    Result<AnyQuantity> operator()(Stress) const {
        return as_any(quantity::parse_stress(typed, std::nullopt, k_field));
    }
    Result<AnyQuantity> operator()(Mass) const {
        return as_any(quantity::parse_mass(typed, std::nullopt, k_field));
    }
    Result<AnyQuantity> operator()(Angle) const {
        return as_any(quantity::parse_angle(typed, k_field));
    }
    Result<AnyQuantity> operator()(Voltage) const {
        return as_any(quantity::parse_voltage(typed, k_field));
    }
    Result<AnyQuantity> operator()(Current) const {
        return as_any(quantity::parse_current(typed, k_field));
    }
    Result<AnyQuantity> operator()(Power) const {
        return as_any(quantity::parse_power(typed, k_field));
    }
    Result<AnyQuantity> operator()(quantity::Number like) const {
        const auto read = quantity::parse_ratio(typed, k_field);
        if (!read)
            return read.refusal();
        return AnyQuantity(quantity::Number{*read, like.decimals});
    }
    Result<AnyQuantity> operator()(quantity::Share) const {
        const auto read = quantity::parse_ratio(typed, k_field);
        if (!read)
            return read.refusal();
        return AnyQuantity(quantity::Share{*read});
    }
    template <class Q>
    Result<AnyQuantity> operator()(Q) const {
        return Refusal{"answer", "A figure of this kind cannot be typed as an answer.", ""};
    }
};

} // namespace

double base_value(const AnyQuantity& figure) { return std::visit(Base{}, figure); }

std::string figure_text(const AnyQuantity& figure, PrintStyle style) {
    return quantity::print_working(figure, style);
}

std::string in_both_systems(const AnyQuantity& figure, PrintStyle style) {
    PrintStyle other = style;
    other.system = style.system == UnitSystem::inch ? UnitSystem::metric : UnitSystem::inch;
    const std::string first = figure_text(figure, style);
    const std::string second = figure_text(figure, other);
    return first == second ? first : first + " (" + second + ")";
}

bool can_be_asked(const AnyQuantity& figure) {
    return read_like(figure, figure_text(figure, {UnitSystem::metric, 16})).ok();
}

Result<AnyQuantity> read_like(const AnyQuantity& like, std::string_view typed) {
    return std::visit(ReadAs{typed}, like);
}

} // namespace treadle::lesson
