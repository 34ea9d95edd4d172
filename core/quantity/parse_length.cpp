// parse_length of parse.h.

#include "base/text.h"
#include "quantity/amount_text.h"
#include "quantity/parse.h"

#include <string>

namespace treadle::quantity {

namespace {

enum class Unit { none, inch, foot, millimetre, centimetre, metre, unknown };

constexpr const char* k_examples = "Write for example 1-3/8 in, 4' 6-1/2\" or 35 mm.";

Unit unit_of(std::string_view word) {
    if (word == "in" || word == "inch" || word == "inches")
        return Unit::inch;
    if (word == "ft" || word == "foot" || word == "feet")
        return Unit::foot;
    if (word == "mm")
        return Unit::millimetre;
    if (word == "cm")
        return Unit::centimetre;
    if (word == "m")
        return Unit::metre;
    return Unit::unknown;
}

Unit take_unit(AmountReader& reader) {
    reader.skip_blanks();
    if (reader.take('"'))
        return Unit::inch;
    if (reader.take('\''))
        return reader.take('\'') ? Unit::inch : Unit::foot;
    const std::string_view word = reader.take_word();
    if (word.empty())
        return Unit::none;
    const Unit unit = unit_of(word);
    if (unit == Unit::inch || unit == Unit::foot)
        reader.take('.'); // "in." and "ft." are abbreviations
    return unit;
}

/// One length being read: the text, whose field it is, and what a bare number means.
class LengthParser {
public:
    LengthParser(std::string_view text, BareUnit bare, std::string_view field)
        : reader_(text),
          bare_(bare),
          field_(field) {}

    base::Result<Length> parse() {
        negative_ = reader_.take_minus();
        const std::optional<Amount> first = reader_.take_amount();
        if (!first)
            return refuse(reader_.fault(), k_examples);
        reader_.skip_blanks();
        if (reader_.peek() == '-' || reader_.at_number())
            return feet_by_dashes(*first);
        const Unit unit = take_unit(reader_);
        reader_.skip_blanks();
        if (unit == Unit::unknown)
            return refuse("The unit is not one of length.", "mm, cm, m, in, ft, ' or \"");
        if (unit == Unit::foot && !reader_.at_end())
            return inches_after_feet(*first);
        if (!reader_.at_end())
            return refuse("Something follows that does not belong to a length.", k_examples);
        return unit == Unit::none ? without_unit(*first) : in_unit(first->value, unit);
    }

private:
    [[nodiscard]] base::Refusal refuse(std::string reason, std::string detail) const {
        return {std::string(field_), std::move(reason), std::move(detail)};
    }

    /// Feet go through inches, so that 6 ft and 72 in are the same length to the last bit.
    [[nodiscard]] base::Result<Length> in_unit(double value, Unit unit) const {
        const double amount = negative_ ? -value : value;
        Length length;
        switch (unit) {
        case Unit::inch:
            length = inches(amount);
            break;
        case Unit::foot:
            length = inches(amount * 12.0);
            break;
        case Unit::centimetre:
            length = millimetres(amount * 10.0);
            break;
        case Unit::metre:
            length = metres(amount);
            break;
        case Unit::millimetre:
        case Unit::none:
        case Unit::unknown:
            length = millimetres(amount);
            break;
        }
        if (!is_finite(length))
            return refuse("The number is too large.", "below 100 m (328 ft)");
        return length;
    }

    [[nodiscard]] base::Result<Length> without_unit(const Amount& amount) const {
        if (amount.value == 0.0)
            return Length{}; // nothing is nothing in any unit
        if (!bare_)
            return refuse("The unit is missing.", "Add in or mm.");
        if (*bare_ == UnitSystem::inch)
            return in_unit(amount.value, Unit::inch);
        // Nobody writes sixteenths of a millimetre: an inch fraction typed in a metric shop.
        if (amount.fraction)
            return refuse("A fraction needs its unit here.", "Add in, or write a decimal in mm.");
        return in_unit(amount.value, Unit::millimetre);
    }

    /// 5-3-1/2. What could be two things is refused and both are named.
    base::Result<Length> feet_by_dashes(const Amount& feet) {
        const bool dashed = reader_.take('-');
        reader_.skip_blanks();
        const std::optional<Amount> rest = reader_.take_amount();
        if (!rest)
            return refuse(reader_.fault(), k_examples);
        const Unit unit = take_unit(reader_);
        reader_.skip_blanks();
        if (!reader_.at_end() || (unit != Unit::none && unit != Unit::inch) || !feet.whole)
            return refuse("There is more than one number, and they are not feet and inches.",
                          k_examples);
        if (rest->whole) {
            const std::string a = base::write_number(feet.value);
            const std::string b = base::write_number(rest->value);
            return refuse("This can be read as " + a + " ft " + b + " in or as " + a + " in and " +
                              b + " parts of an inch with the lower number left out.",
                          "Write " + a + "' " + b + "\" or for example " + a + "-" + b + "/16.");
        }
        if (!dashed || !rest->fraction)
            return refuse("There is more than one number, and they are not feet and inches.",
                          k_examples);
        return feet_and_inches(feet.value, rest->value);
    }

    base::Result<Length> inches_after_feet(const Amount& feet) {
        reader_.take('-');
        reader_.skip_blanks();
        const std::optional<Amount> rest = reader_.take_amount();
        if (!rest)
            return refuse(reader_.fault(), k_examples);
        const Unit unit = take_unit(reader_);
        reader_.skip_blanks();
        if ((unit != Unit::none && unit != Unit::inch) || !reader_.at_end())
            return refuse("Only inches can follow feet.", k_examples);
        if (!feet.whole)
            return refuse("Feet have to be a whole number when inches follow.", k_examples);
        return feet_and_inches(feet.value, rest->value);
    }

    [[nodiscard]] base::Result<Length> feet_and_inches(double whole_feet, double inch_part) const {
        if (!(inch_part < 12.0))
            return refuse("Inches beside feet have to be below 12.", k_examples);
        return in_unit(whole_feet * 12.0 + inch_part, Unit::inch);
    }

    AmountReader reader_;
    BareUnit bare_;
    std::string_view field_;
    bool negative_ = false;
};

} // namespace

base::Result<Length> parse_length(std::string_view text, BareUnit bare, std::string_view field) {
    const base::Result<std::string> plain = plain_text(text, field);
    if (!plain)
        return plain.refusal();
    return LengthParser(*plain, bare, field).parse();
}

} // namespace treadle::quantity
