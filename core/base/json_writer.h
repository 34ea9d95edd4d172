// Writes JSON text, in the order it is told. Reading JSON is the archive's.
//
// Keeps the library that reads JSON out of every room but one.

#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace treadle::base {

class JsonWriter {
public:
    /// `indent` spaces a level; 0 writes everything on one line.
    explicit JsonWriter(int indent = 0) : indent_(indent) {
        out_.reserve(k_usual_size);
        has_items_.reserve(16);
    }

    JsonWriter& begin_object();
    JsonWriter& end_object();
    JsonWriter& begin_array();
    JsonWriter& end_array();
    JsonWriter& key(std::string_view name);
    JsonWriter& text(std::string_view value);
    JsonWriter& number(double value); ///< not finite is written as null
    JsonWriter& integer(long long value);
    JsonWriter& boolean(bool value);
    JsonWriter& null();

    JsonWriter& field(std::string_view name, std::string_view value) {
        return key(name).text(value);
    }
    JsonWriter& field(std::string_view name, const char* value) { return key(name).text(value); }
    JsonWriter& field(std::string_view name, double value) { return key(name).number(value); }
    JsonWriter& field(std::string_view name, int value) { return key(name).integer(value); }
    JsonWriter& field(std::string_view name, bool value) { return key(name).boolean(value); }

    [[nodiscard]] const std::string& str() const { return out_; }
    [[nodiscard]] std::string take() { return std::move(out_); }

private:
    /// Most answers fit: they are written without moving house.
    static constexpr std::size_t k_usual_size = 4096;

    void before_value();
    void new_line();

    std::string out_;
    std::vector<bool> has_items_; ///< one per open level
    int indent_ = 0;
    bool after_key_ = false;
};

} // namespace treadle::base
