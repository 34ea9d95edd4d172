// An answer, or the reason why there is none.
//
// A Refusal is said to the fabricator as it stands: what is wrong, and at which field.
// It never carries half an answer beside it.

#pragma once

#include "base/contracts.h"

#include <string>
#include <utility>
#include <variant>

namespace treadle::base {

/// Why a question cannot be answered.
struct Refusal {
    std::string field;  ///< the input it belongs to, e.g. "thickness"; dotted and indexed for paths
    std::string reason; ///< one sentence a fabricator understands
    std::string detail; ///< allowed range, or what would mend it; may be empty
    friend bool operator==(const Refusal& a, const Refusal& b) {
        return a.field == b.field && a.reason == b.reason && a.detail == b.detail;
    }
};

/// Either a T or a Refusal.
template <class T>
class [[nodiscard]] Result {
public:
    Result(T value) : state_(std::in_place_index<0>, std::move(value)) {}
    Result(Refusal refusal) : state_(std::in_place_index<1>, std::move(refusal)) {}

    [[nodiscard]] bool ok() const { return state_.index() == 0; }
    explicit operator bool() const { return ok(); }

    [[nodiscard]] const T& value() const& {
        TREADLE_EXPECT(ok());
        return *std::get_if<0>(&state_);
    }
    [[nodiscard]] T&& value() && {
        TREADLE_EXPECT(ok());
        return std::move(*std::get_if<0>(&state_));
    }
    const T& operator*() const& { return value(); }
    const T* operator->() const { return &value(); }

    [[nodiscard]] const Refusal& refusal() const {
        TREADLE_EXPECT(!ok());
        return *std::get_if<1>(&state_);
    }

private:
    std::variant<T, Refusal> state_;
};

} // namespace treadle::base
