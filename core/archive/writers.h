// Writes the rooms' values in the words of the file format: private to this room.
//
// What a reader fills in by itself is left out, so that a file says what somebody decided.

#pragma once

#include "archive/words.h"
#include "base/json_writer.h"
#include "equipment/shop.h"
#include "job/job.h"

#include <optional>
#include <string>
#include <string_view>

namespace treadle::archive {

class Writer {
public:
    explicit Writer(UnitSystem units, int indent = 2) : json(indent), units_(units) {}

    base::JsonWriter json; ///< for what is no quantity, word or list

    template <class Q>
    void quantity(std::string_view key, Q value) {
        json.field(key, text_of(value));
    }
    /// One item of a list.
    void text(Length value) { json.text(text_of(value)); }
    template <class Q>
    void unless_zero(std::string_view key, Q value) {
        if (value != Q{})
            quantity(key, value);
    }
    template <class Q>
    void if_known(std::string_view key, const std::optional<Q>& value) {
        if (value)
            quantity(key, *value);
    }
    /// The key ends in _s.
    void if_known(std::string_view key, const std::optional<Duration>& value) {
        if (value)
            json.field(key, quantity::to_seconds(*value));
    }
    void if_known(std::string_view key, const std::optional<int>& value) {
        if (value)
            json.field(key, *value);
    }
    void unless_empty(std::string_view key, const std::string& value) {
        if (!value.empty())
            json.field(key, value);
    }
    void unless_one(std::string_view key, int value) {
        if (value != 1)
            json.field(key, value);
    }
    void if_true(std::string_view key, bool value) {
        if (value)
            json.field(key, true);
    }
    template <class E>
    void word(std::string_view key, E value) {
        json.field(key, word_for(value));
    }
    template <class E>
    void word_unless(std::string_view key, E value, E usual) {
        if (value != usual)
            word(key, value);
    }
    /// An object per item, or nothing for an empty list.
    template <class List, class Write>
    void list(std::string_view key, const List& items, Write write) {
        if (items.empty())
            return;
        json.key(key).begin_array();
        for (const auto& item : items)
            write(item);
        json.end_array();
    }

private:
    [[nodiscard]] std::string text_of(Length value) const;
    [[nodiscard]] std::string text_of(Force value) const;
    [[nodiscard]] std::string text_of(Stress value) const;
    [[nodiscard]] std::string text_of(material::RatingBase value) const;
    [[nodiscard]] std::string text_of(Angle value) const;
    [[nodiscard]] std::string text_of(Density value) const;
    [[nodiscard]] std::string text_of(Mass value) const;
    [[nodiscard]] static std::string text_of(Power value);
    [[nodiscard]] static std::string text_of(Voltage value);

    UnitSystem units_;
};

/// The members of a job but for its parts.
void write_header(Writer& out, const job::Job& job);
void write_part(Writer& out, const job::Part& part);
void write_section(Writer& out, const section::Section& section);
void write_hole(Writer& out, const geometry::HoleOutline& hole);
void write_shop(Writer& out, const equipment::Shop& shop);

/// The job file on one line, its shop before its parts: near the dictionary of links, however many
/// parts there are.
[[nodiscard]] std::string write_line(const job::Job& job, const equipment::Shop& shop);

} // namespace treadle::archive
