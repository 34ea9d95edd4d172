// Reads the tree into our values, and knows the way to each of them: private to this room.
//
// The first fault is kept and everything after it is left alone, so that the readers of the rooms'
// types are plain lists of fields. Nobody uses what they made before Reading::refusal is looked at.

#pragma once

#include "archive/json_tree.h"
#include "archive/words.h"
#include "base/result.h"
#include "quantity/duration.h"
#include "quantity/electrical.h"
#include "quantity/quantity.h"

#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

namespace treadle::archive {

/// One file being read.
struct Reading {
    const Tree& tree;
    std::optional<base::Refusal> refusal;
};

/// A value and the way to it. Lives no longer than the place above it.
class Place {
public:
    Place(Reading& reading, std::uint32_t index) : reading_(&reading), index_(index) {}
    Place(const Place& above, std::uint32_t index, int position)
        : reading_(above.reading_),
          above_(&above),
          index_(index),
          position_(position) {}

    [[nodiscard]] const Node& node() const { return reading_->tree.nodes[index_]; }
    [[nodiscard]] const Tree& tree() const { return reading_->tree; }
    [[nodiscard]] bool failed() const { return reading_->refusal.has_value(); }
    [[nodiscard]] std::string path() const; ///< "parts[3].length"; the root's is empty

    /// Keeps the first fault only. `below` is a field inside this value, "" for the value itself.
    void refuse(std::string reason, std::string detail = "", std::string_view below = "") const;
    void refuse(const base::Refusal& inside) const;
    [[nodiscard]] bool must_be(Kind kind) const;

private:
    Reading* reading_;
    const Place* above_ = nullptr;
    std::uint32_t index_;
    int position_ = 0;
};

void read_value(const Place& at, std::string& out);
void read_value(const Place& at, bool& out);
void read_value(const Place& at, int& out);
void read_value(const Place& at, double& out);
void read_value(const Place& at, Length& out);
void read_value(const Place& at, Force& out);
void read_value(const Place& at, Stress& out);
void read_value(const Place& at, Angle& out);
void read_value(const Place& at, Density& out);
void read_value(const Place& at, Mass& out);
void read_value(const Place& at, Power& out);
void read_value(const Place& at, Voltage& out);
/// A plain number of seconds: its key ends in _s.
void read_value(const Place& at, Duration& out);

void refuse_word(const Place& at, const std::vector<const char*>& known);

template <class E, std::enable_if_t<std::is_enum_v<E>, int> = 0>
void read_value(const Place& at, E& out) {
    if (!at.must_be(Kind::text))
        return;
    const std::string_view text = at.tree().text_of(at.node());
    std::vector<const char*> known;
    for (const auto& word : Words<E>::k_list) {
        if (text == word.text) {
            out = word.value;
            return;
        }
        known.push_back(word.text);
    }
    refuse_word(at, known);
}

template <class T>
void read_value(const Place& at, std::optional<T>& out) {
    read_value(at, out.emplace());
}

template <class T>
void read_value(const Place& at, std::vector<T>& out) {
    if (!at.must_be(Kind::list))
        return;
    out.reserve(at.node().size);
    std::uint32_t child = at.node().first;
    for (std::uint32_t i = 0; i < at.node().size && !at.failed(); ++i) {
        out.emplace_back();
        read_value(Place(at, child, static_cast<int>(i)), out.back());
        child = at.tree().nodes[child].next;
    }
}

/// The members of one object. finish() refuses those that nobody asked for, so that nothing a file
/// says is lost without a word.
class Members {
public:
    explicit Members(const Place& at) : at_(at), usable_(at.must_be(Kind::object)) {}

    template <class T>
    Members& need(std::string_view key, T& out) {
        read(key, out, true);
        return *this;
    }
    /// Leaves `out` as it is when the member is not there.
    template <class T>
    Members& may(std::string_view key, T& out) {
        read(key, out, false);
        return *this;
    }
    /// Counts as asked for, whatever it holds.
    void pass_over(std::string_view key);
    void finish();

private:
    struct Found {
        std::uint32_t index = k_no_value;
        int position = 0;
    };
    [[nodiscard]] Found find(std::string_view key);
    void missing(std::string_view key) const;

    template <class T>
    void read(std::string_view key, T& out, bool needed) {
        if (!usable_ || at_.failed())
            return;
        const Found found = find(key);
        if (found.index != k_no_value)
            read_value(Place(at_, found.index, found.position), out);
        else if (needed)
            missing(key);
    }

    const Place& at_;
    bool usable_;
    std::uint64_t asked_ = 0; ///< one bit a member: k_most_members is 64
};

} // namespace treadle::archive
