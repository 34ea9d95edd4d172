// Puts an answer together from workings: a figure is its working's result, never computed again.

#pragma once

#include "base/result.h"
#include "calc/calculation.h"

#include <optional>
#include <string>
#include <vector>

namespace treadle::calc {

class AnswerBuilder {
public:
    /// The working, and its result as the figure; `note` is set before the working's own.
    AnswerBuilder&
    add(const char* name, base::Result<Working> working, const std::string& note = "");
    /// A working whose result is no output of its own.
    AnswerBuilder& show(base::Result<Working> working);
    /// A figure that a working already added shows among its values.
    AnswerBuilder& figure(const char* name, AnyQuantity value);
    /// Lengths that belong to the working before: places, ordinates.
    AnswerBuilder& list(const char* name, std::vector<Length> values);
    /// The first refusal met, or all of it.
    [[nodiscard]] base::Result<Answer> finish();

private:
    Answer answer_;
    std::optional<base::Refusal> fault_;
};

} // namespace treadle::calc
