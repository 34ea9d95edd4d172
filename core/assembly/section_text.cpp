#include "assembly/section_text.h"

#include "base/text.h"
#include "quantity/parse.h"

#include <algorithm>
#include <iterator>
#include <string>
#include <vector>

namespace treadle::assembly {

namespace {

using base::Refusal;
using base::Result;
using section::Shape;

constexpr const char* k_forms =
    "flat 1-1/2 x 3/8 in, square 3/4 in, round 3/4 in, tube 2 x 2 x 1/8 in, pipe 1.9 x 0.145 in, "
    "angle 2 x 2 x 1/4 in, or a designation";

struct Split {
    std::string word;
    std::vector<std::string> sizes;
};

/// The shape's word, and what stands between the crosses behind it.
Split split(std::string_view text) {
    Split out;
    std::string_view rest = base::trim(text);
    const std::size_t blank = rest.find(' ');
    out.word = base::to_lower_ascii(rest.substr(0, blank));
    rest = blank == std::string_view::npos ? std::string_view{} : rest.substr(blank);
    std::string size;
    for (std::size_t i = 0; i < rest.size(); ++i) {
        const bool times = rest.substr(i, 2) == "\xC3\x97"; // the sign ×
        if (!times && rest[i] != 'x' && rest[i] != 'X') {
            size += rest[i];
            continue;
        }
        out.sizes.emplace_back(base::trim(size));
        size.clear();
        i += times ? 1 : 0;
    }
    if (!base::trim(size).empty() || !out.sizes.empty())
        out.sizes.emplace_back(base::trim(size));
    return out;
}

bool is_shape_word(const std::string& word) {
    constexpr const char* k_words[] = {"flat", "square", "round", "tube", "pipe", "angle"};
    return std::find(std::begin(k_words), std::end(k_words), word) != std::end(k_words);
}

bool has_unit(const std::string& size) { return quantity::parse_length(size, {}, "size").ok(); }

/// What a size without a unit means: the unit of the last one decides.
UnitSystem system_of(const std::string& last, UnitSystem units) {
    if (!has_unit(last))
        return units;
    return last.find('m') == std::string::npos ? UnitSystem::inch : UnitSystem::metric;
}

Result<std::vector<Length>>
lengths(const std::vector<std::string>& sizes, UnitSystem units, std::string_view field) {
    std::vector<Length> out;
    const UnitSystem system = sizes.empty() ? units : system_of(sizes.back(), units);
    for (const std::string& size : sizes) {
        const auto read = quantity::parse_length(size, system, field);
        if (!read.ok())
            return read.refusal();
        out.push_back(*read);
    }
    return out;
}

/// Which sizes make which dimension, by the shape's word.
bool fill(Section& out, const std::string& word, const std::vector<Length>& sizes) {
    const std::size_t n = sizes.size();
    if (n == 0)
        return false;
    out.width = sizes[0];
    if (word == "flat" && n == 2) {
        out.shape = Shape::flat;
        out.thickness = sizes[1];
        return true;
    }
    if ((word == "square" || word == "round") && n == 1) {
        out.shape = word == "square" ? Shape::square : Shape::round;
        return true;
    }
    if (word == "pipe" && n == 2) {
        out.shape = Shape::pipe;
        out.thickness = sizes[1];
        return true;
    }
    if ((word == "tube" || word == "angle") && (n == 2 || n == 3)) {
        out.shape = word == "tube" ? Shape::square_tube : Shape::angle;
        out.height = n == 3 ? sizes[1] : sizes[0];
        out.thickness = sizes[n - 1];
        return true;
    }
    return false;
}

} // namespace

Result<Section> parse_section(std::string_view text,
                              UnitSystem units,
                              const section::SectionTable& table,
                              std::string_view field) {
    const std::string name(field);
    if (const section::CatalogSection* row = table.find(text))
        return row->section;
    const Split parts = split(text);
    const auto sizes = lengths(parts.sizes, units, field);
    if (!sizes.ok())
        return sizes.refusal();
    Section out;
    if (!fill(out, parts.word, *sizes))
        return Refusal{name, "This is no section that can be read.", k_forms};
    auto sound = section::checked(out);
    if (!sound.ok())
        return Refusal{name, sound.refusal().reason, sound.refusal().detail};
    return sound;
}

std::string section_with_units(std::string_view text, UnitSystem units) {
    std::string out(base::trim(text));
    const Split parts = split(text);
    // "Pipe 1-1/2 sch 40" is a designation: its sizes are none.
    if (!is_shape_word(parts.word) || parts.sizes.empty() || has_unit(parts.sizes.back()) ||
        !quantity::parse_length(parts.sizes.back(), units, "size").ok())
        return out;
    return out + (units == UnitSystem::inch ? " in" : " mm");
}

} // namespace treadle::assembly
