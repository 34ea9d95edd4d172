// Takes the inputs of one calculation out of the tree, and keeps the first fault.
//
// Names are checked against the calculation's own list when the reader is made: unknown, twice
// given and missing ones are refused before anything is computed. After a fault every further read
// gives zero; a calculation looks at failed() before it uses what it read.

#pragma once

#include "base/result.h"
#include "calc/calculation.h"
#include "calc/value.h"
#include "material/grade.h"
#include "quantity/quantity.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "layout/bolt.h"

namespace treadle::calc {

/// A strength, and where it came from in words for the working.
struct StrengthUsed {
    Stress value;
    std::string note; ///< "" when the asker gave it
};

class Reader {
public:
    Reader(const Input::Object& in, std::span<const InputSpec> specs, const Tables& tables);

    [[nodiscard]] bool has(const char* name) const { return find(name) != nullptr; }

    // Absent inputs read as zero; lists read as empty.
    [[nodiscard]] Length length(const char* name);
    [[nodiscard]] std::vector<Length> lengths(const char* name);
    /// One length, a list of them, or a list of lists set one after the other.
    [[nodiscard]] std::vector<Length> one_or_more(const char* name);
    [[nodiscard]] Force force(const char* name);
    [[nodiscard]] Stress stress(const char* name);
    [[nodiscard]] Angle angle(const char* name);
    [[nodiscard]] double ratio(const char* name);
    [[nodiscard]] Mass mass(const char* name);
    [[nodiscard]] Voltage voltage(const char* name);
    [[nodiscard]] Current current(const char* name);
    [[nodiscard]] Power power(const char* name);
    /// A whole number from `least` to `most`; zero when absent.
    [[nodiscard]] int count(const char* name, int least, int most);
    /// Nothing when absent or refused.
    [[nodiscard]] std::optional<layout::Bolt> bolt(const char* name);
    /// Place among the choices of the specification; -1 when absent.
    [[nodiscard]] int choice(const char* name);
    /// Null when absent or not known (then refused).
    [[nodiscard]] const Grade* material();
    [[nodiscard]] Section section(const char* name);
    struct Bend {
        Angle angle;
        Length radius;
    };
    [[nodiscard]] std::vector<Bend> bends(const char* name);

    /// `shear_strength` as given, or the material's upper tensile strength times its shear ratio.
    /// `size_field` is the input that the thickness was read from.
    [[nodiscard]] StrengthUsed shear_strength(Length thickness, const char* size_field);
    /// `tensile_strength` as given, or the material's upper one.
    [[nodiscard]] StrengthUsed tensile_strength(Length thickness,
                                                const char* size_field = "thickness");
    /// `share` as given, or the material's: inside radius over opening in air bending.
    [[nodiscard]] double air_bend_share();

    /// Keeps a refusal, unless one was found before.
    void refuse(base::Refusal refusal);
    /// Refuses a name that has no meaning beside the others.
    void refuse_if_given(const char* name, const char* why);
    void require(const char* name);

    [[nodiscard]] bool failed() const { return fault_.has_value(); }
    [[nodiscard]] const base::Refusal& refusal() const {
        TREADLE_EXPECT(failed());
        return *fault_;
    }

private:
    [[nodiscard]] const Input* find(const char* name) const;
    [[nodiscard]] const std::string* text(const char* name);
    [[nodiscard]] std::vector<Length> lengths_of(const char* name, const Input& input);
    [[nodiscard]] bool exactly_one(const char* a, const char* b);
    [[nodiscard]] StrengthUsed upper_strength(Length thickness, const char* size_field);

    template <class T>
    T keep(const base::Result<T>& result) {
        if (result.ok())
            return *result;
        refuse(result.refusal());
        return T{};
    }

    const Input::Object& in_;
    std::span<const InputSpec> specs_;
    const Tables& tables_;
    std::optional<base::Refusal> fault_;
};

} // namespace treadle::calc
