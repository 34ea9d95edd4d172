// Numbers from a seed: the same for everybody who opens a lesson with that seed, on every machine.
//
// Own whole-number arithmetic on 32 bits, which natively and in the page is the same to the bit:
//   state = (seed + 1) * 2654435769 + (step + 1) * 2246822519 + (place + 1) * 3266489917
//   mixed by three rounds of shift-exclusive-or and odd multiplication, as hash functions do
//   choice = the upper half of mixed * number of choices (64 bits)
// The three odd constants are primes near 2^32 times fractions that have no small ratio; any odd
// constants would do: tests ask only that neighbours differ and that all choices come up.

#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

#include "lesson/lesson.h"

namespace treadle::lesson {

/// From 0 to below `choices`, which is one or more.
[[nodiscard]] std::size_t
pick(unsigned seed, std::size_t step, std::size_t place, std::size_t choices);

/// The step's inputs as this seed has them.
[[nodiscard]] calc::Input::Object inputs_of(const Asked& asked, unsigned seed, std::size_t step);
/// The part of a trial as this seed has it. There is one at least.
[[nodiscard]] const job::PartRef& part_of(const Trial& trial, unsigned seed, std::size_t step);

/// `over` put in place of the members of the same name, or added.
void put_over(calc::Input::Object& in, const calc::Input::Object& over);
void leave_out(calc::Input::Object& in, const std::vector<std::string>& names);
[[nodiscard]] const calc::Input* find_input(const calc::Input::Object& in, std::string_view name);

/// {size} becomes the input of that name. A name that is none stays as it stands.
[[nodiscard]] std::string filled(std::string_view words, const calc::Input::Object& in);
/// The first {name} in it that is no input; empty: none.
[[nodiscard]] std::string unknown_name(std::string_view words, const calc::Input::Object& in);

} // namespace treadle::lesson
