// Takes the inputs of one layout out of its values and keeps the first fault: private to the room.
//
// On top of the reader of calculations, which does names, units and choices; this adds sections as
// they are typed, grades of the job's own, and what is usual where nothing was given.

#pragma once

#include "calc/reader.h"
#include "calc/value.h"

#include <array>
#include <string>

#include "assembly/kind.h"

namespace treadle::assembly {

/// Inputs of one kind and those that it shares with another.
template <std::size_t N, std::size_t M>
[[nodiscard]] consteval std::array<calc::InputSpec, N + M>
joined(const calc::InputSpec (&own)[N], const calc::InputSpec (&shared)[M]) {
    std::array<calc::InputSpec, N + M> out{};
    for (std::size_t i = 0; i < N + M; ++i)
        out[i] = i < N ? own[i] : shared[i - N];
    return out;
}

class Inputs {
public:
    Inputs(const Kind& kind, const Values& values, const Ground& ground);
    Inputs(const Inputs&) = delete;
    Inputs& operator=(const Inputs&) = delete;

    [[nodiscard]] bool has(const char* name) const { return reader_.has(name); }
    [[nodiscard]] bool failed() const { return reader_.failed(); }
    [[nodiscard]] const base::Refusal& refusal() const { return reader_.refusal(); }
    void refuse(base::Refusal refusal) { reader_.refuse(std::move(refusal)); }
    void refuse_if_given(const char* name, const char* why) { reader_.refuse_if_given(name, why); }
    /// Refuses at this name, whatever the formula called it.
    void refuse_at(const char* name, const base::Refusal& inside);

    /// Above zero where given; zero when absent.
    [[nodiscard]] Length size(const char* name);
    [[nodiscard]] Length size_or(const char* name, Length usual);
    /// Zero or more; `usual` when absent.
    [[nodiscard]] Length place_or(const char* name, Length usual);
    [[nodiscard]] int count_or(const char* name, int least, int most, int usual);
    [[nodiscard]] Angle angle_or(const char* name, Angle usual);
    [[nodiscard]] double ratio_or(const char* name, double usual);
    /// Place among the choices; the first when absent.
    [[nodiscard]] int choice(const char* name);
    template <class Enum>
    [[nodiscard]] Enum word(const char* name) {
        return static_cast<Enum>(choice(name));
    }
    [[nodiscard]] std::optional<layout::Bolt> bolt(const char* name) { return reader_.bolt(name); }
    [[nodiscard]] Section section(const char* name);
    /// The id of a grade that the job can use; `usual` when absent.
    [[nodiscard]] std::string grade(const char* name, const std::string& usual = "");

    [[nodiscard]] UnitSystem units() const { return ground_.units; }
    /// One figure in inches, one in millimetres: what is usual differs by more than rounding.
    [[nodiscard]] Length usual(double in_inches, double in_mm) const {
        return units() == UnitSystem::inch ? inches(in_inches) : millimetres(in_mm);
    }

private:
    [[nodiscard]] const std::string* text(const char* name) const;

    const Ground& ground_;
    calc::Input::Object object_;
    calc::Tables tables_;
    calc::Reader reader_;
};

} // namespace treadle::assembly
