#include "archive/parts_list_section.h"

#include "base/text.h"
#include "quantity/input_limits.h"
#include "quantity/parse.h"
#include "quantity/print.h"

#include <array>
#include <cmath>
#include <optional>
#include <vector>

namespace treadle::archive {

namespace {

using base::Refusal;
using base::Result;
using section::Shape;

/// What a word in front of the sizes means. `exact`: all sizes are said, the catalogue adds none.
enum class Kind {
    flat,
    plate,
    angle,
    equal_angle,
    channel,
    round,
    square,
    round_tube,
    tube,
    square_tube,
    pipe
};
struct KindWord {
    std::string_view word;
    Kind kind;
    bool exact = false;
};
constexpr std::array k_words{KindWord{"flat", Kind::flat},
                             KindWord{"flat bar", Kind::flat},
                             KindWord{"flatbar", Kind::flat},
                             KindWord{"fb", Kind::flat},
                             KindWord{"fl", Kind::flat},
                             KindWord{"flt", Kind::flat},
                             KindWord{"flach", Kind::flat},
                             KindWord{"flachstahl", Kind::flat},
                             KindWord{"flst", Kind::flat},
                             KindWord{"pletina", Kind::flat},
                             KindWord{"plate", Kind::plate},
                             KindWord{"pl", Kind::plate},
                             KindWord{"blech", Kind::plate},
                             KindWord{"bl", Kind::plate},
                             KindWord{"chapa", Kind::plate},
                             KindWord{"l", Kind::angle},
                             KindWord{"angle", Kind::angle, true},
                             KindWord{"angle iron", Kind::angle},
                             KindWord{"ang", Kind::angle},
                             KindWord{"ua", Kind::angle},
                             KindWord{"ea", Kind::equal_angle},
                             KindWord{"winkel", Kind::angle},
                             KindWord{"winkelstahl", Kind::angle},
                             KindWord{"angular", Kind::angle},
                             KindWord{"channel", Kind::channel, true},
                             KindWord{"round", Kind::round},
                             KindWord{"round bar", Kind::round},
                             KindWord{"rd", Kind::round},
                             KindWord{"rb", Kind::round},
                             KindWord{"rod", Kind::round},
                             KindWord{"rund", Kind::round},
                             KindWord{"rundstahl", Kind::round},
                             KindWord{"redondo", Kind::round},
                             KindWord{"square", Kind::square},
                             KindWord{"square bar", Kind::square},
                             KindWord{"sq", Kind::square},
                             KindWord{"sq bar", Kind::square},
                             KindWord{"vierkant", Kind::square},
                             KindWord{"vkt", Kind::square},
                             KindWord{"cuadrado", Kind::square},
                             KindWord{"round tube", Kind::round_tube},
                             KindWord{"chs", Kind::round_tube},
                             KindWord{"tube", Kind::tube, true},
                             KindWord{"rect tube", Kind::tube},
                             KindWord{"rhs", Kind::tube},
                             KindWord{"hss", Kind::tube},
                             KindWord{"square tube", Kind::square_tube},
                             KindWord{"shs", Kind::square_tube},
                             KindWord{"pipe", Kind::pipe},
                             KindWord{"rohr", Kind::pipe}};

bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_letter(char c) { return c >= 'a' && c <= 'z'; }

const KindWord* kind_of(std::string_view word) {
    for (const KindWord& known : k_words)
        if (known.word == word)
            return &known;
    return nullptr;
}

/// Lower case, with an x for the multiplication sign and without its blanks at the ends.
std::string plain(std::string_view text) {
    constexpr std::string_view k_times = "\u00D7";
    std::string out;
    for (std::size_t at = 0; at < text.size(); ++at) {
        const bool times = text.substr(at, k_times.size()) == k_times || text[at] == '*';
        out += times ? 'x' : text[at];
        at += times && text[at] != '*' ? k_times.size() - 1 : 0;
    }
    return base::to_lower_ascii(base::trim(out));
}

/// The text of a section taken apart: word, sizes, a radius, a name.
struct Said {
    const KindWord* kind = nullptr;
    std::vector<std::string> sizes;
    std::string radius;
    std::string name; ///< in brackets at the end
};

/// "(name)" at the end, taken off.
std::string take_name(std::string_view& text) {
    const std::size_t open = text.find(" (");
    if (text.empty() || text.back() != ')' || open == std::string_view::npos)
        return "";
    const std::string name(text.substr(open + 2, text.size() - open - 3));
    text = base::trim(text.substr(0, open));
    return name;
}

/// The kind in front of the sizes or behind them; what is left are the sizes.
const KindWord* take_kind(std::string& text) {
    std::size_t end = 0;
    while (end < text.size() && (is_letter(text[end]) || text[end] == ' ' || text[end] == '.'))
        ++end;
    // A point belongs to ".5", not to the word.
    while (end > 0 && end < text.size() && text[end - 1] == '.' && is_digit(text[end]))
        --end;
    std::string_view word = base::trim(std::string_view(text).substr(0, end));
    while (!word.empty() && word.back() == '.')
        word = base::trim(word.substr(0, word.size() - 1));
    if (const KindWord* kind = kind_of(word)) {
        text.erase(0, end);
        return kind;
    }
    if (!word.empty())
        return nullptr;
    std::size_t begin = text.size();
    while (begin > 0 && (is_letter(text[begin - 1]) || text[begin - 1] == ' '))
        --begin;
    std::string_view behind = base::trim(std::string_view(text).substr(begin));
    // "50 x 10 mm flat": the unit stays with the sizes.
    std::size_t from = begin + (std::string_view(text).substr(begin).find(behind));
    for (const std::string_view unit : {"mm ", "in ", "cm "})
        if (behind.substr(0, unit.size()) == unit) {
            behind.remove_prefix(unit.size());
            from += unit.size();
        }
    const KindWord* kind = kind_of(base::trim(behind));
    if (kind != nullptr)
        text.erase(from);
    return kind;
}

Said taken_apart(std::string_view cell) {
    Said said;
    std::string_view bare = base::trim(cell);
    said.name = take_name(bare);
    std::string text = plain(bare);
    said.kind = take_kind(text);
    if (said.kind == nullptr)
        return said;
    if (const std::size_t r = text.rfind(" r "); r != std::string::npos) {
        said.radius = text.substr(r + 3);
        text.erase(r);
    }
    for (std::size_t from = 0; from <= text.size();) {
        const std::size_t x = std::min(text.find('x', from), text.size());
        const std::string_view size = base::trim(std::string_view(text).substr(from, x - from));
        if (!size.empty() || x < text.size() || !said.sizes.empty())
            said.sizes.emplace_back(size);
        from = x + 1;
    }
    return said;
}

std::string_view unit_at_end(std::string_view text) {
    std::size_t begin = text.size();
    while (begin > 0 && is_letter(text[begin - 1]))
        --begin;
    if (begin == text.size() && begin > 0 && (text.back() == '"' || text.back() == '\''))
        return text.substr(begin - 1);
    return begin < text.size() && begin > 0 ? text.substr(begin) : std::string_view{};
}

bool close(Length a, Length b) { return std::fabs(to_millimetres(a - b)) < 1e-6; }

/// Sizes that the trade says leave the radius to the catalogue.
bool has_radius(const KindWord& word) {
    const bool hollow = word.kind == Kind::tube || word.kind == Kind::square_tube;
    return !word.exact && (hollow || word.kind == Kind::angle || word.kind == Kind::equal_angle);
}

/// The catalogue's section of the same outer sizes, which knows its radii.
const Section* of_same_sizes(const Section& made, const section::SectionTable& table) {
    for (const section::CatalogSection& row : table.rows) {
        const Section& other = row.section;
        if (other.shape == made.shape && close(other.width, made.width) &&
            close(other.height, made.height) && close(other.thickness, made.thickness))
            return &other;
    }
    return nullptr;
}

Refusal refuse(std::string reason, std::string detail) {
    return {"section", std::move(reason), std::move(detail)};
}

/// Sizes of a flat or a plate: the smaller is the thickness, whichever stands first.
Result<Section> flat_of(Shape shape, std::vector<Length> sizes, const SectionCells& cells) {
    const bool from_columns = sizes.empty();
    for (const auto& [text, unit, field] :
         {std::tuple{&cells.width, &cells.width_unit, "width"},
          std::tuple{&cells.thickness, &cells.thickness_unit, "thickness"}}) {
        if (text->empty())
            continue;
        const auto read = length_in(*text, *unit, cells.mark, field);
        if (!read.ok())
            return read.refusal();
        sizes.push_back(read.value());
    }
    if (sizes.size() != 2)
        return sizes.size() < 2 ? refuse("The width and the thickness are both needed.",
                                         "for example FB 3 x 1/2 or PL 1/2 x 6")
                                : refuse("There are more than two sizes for a flat.",
                                         "width and thickness, with units when they differ");
    Section made;
    made.shape = shape;
    made.width = from_columns ? sizes[0] : larger(sizes[0], sizes[1]);
    made.thickness = from_columns ? sizes[1] : smaller(sizes[0], sizes[1]);
    return made;
}

Result<Section> shaped(const Said& said, const std::vector<Length>& sizes) {
    const std::size_t n = sizes.size();
    Section made;
    const auto set = [&made](Shape shape, Length width, Length height, Length thickness) {
        made.shape = shape;
        made.width = width;
        made.height = height;
        made.thickness = thickness;
    };
    switch (said.kind->kind) {
    case Kind::angle:
    case Kind::equal_angle:
        if (n != 2 && n != 3)
            return refuse("An angle has two legs and a thickness.", "for example L 2 x 2 x 1/4");
        if (n == 3 && said.kind->kind == Kind::equal_angle && sizes[0] != sizes[1])
            return refuse("These legs are not equal.", "L or UA for an unequal angle");
        set(Shape::angle, sizes[0], sizes[n - 2], sizes[n - 1]);
        return made;
    case Kind::channel:
        if (n != 4)
            return refuse("A channel is said by its name, or by all its sizes.",
                          "C6X8.2, or channel with depth x flange x web x flange thickness");
        set(Shape::channel, sizes[1], sizes[0], sizes[2]);
        made.flange_thickness = sizes[3];
        return made;
    case Kind::round:
    case Kind::square:
        if (n != 1)
            return refuse("One size is needed.", "the diameter or the side");
        set(said.kind->kind == Kind::round ? Shape::round : Shape::square, sizes[0], {}, {});
        return made;
    case Kind::round_tube:
        if (n != 2)
            return refuse("A round tube has an outside diameter and a wall.", "CHS 33.7 x 2.6 mm");
        set(Shape::pipe, sizes[0], {}, sizes[1]);
        return made;
    case Kind::tube:
    case Kind::square_tube:
        if (n != 3 && !(n == 2 && said.kind->kind == Kind::square_tube))
            return refuse("A tube has two sides and a wall.", "for example HSS 2 x 2 x 1/8");
        set(Shape::square_tube, sizes[0], sizes[n - 2], sizes[n - 1]);
        return made;
    case Kind::pipe:
        return refuse("A pipe without its schedule can be a nominal or an outside size.",
                      "pipe 1-1/2 sch 40, or round tube with outside diameter x wall");
    case Kind::flat:
    case Kind::plate:
        break;
    }
    return refuse("This section cannot be read.", "");
}

Result<std::vector<Length>> sizes_of(const Said& said, const SectionCells& cells) {
    // "flat bar 50x10 mm": the unit at the end is that of all.
    std::string unit = cells.unit;
    if (!said.sizes.empty())
        if (const std::string_view last = unit_at_end(said.sizes.back()); !last.empty())
            unit = last;
    std::vector<Length> sizes;
    for (const std::string& text : said.sizes) {
        const auto size = length_in(text, unit, cells.mark, "section");
        if (!size.ok())
            return size.refusal();
        sizes.push_back(size.value());
    }
    return sizes;
}

Result<Section>
made_of(const Said& said, const SectionCells& cells, const section::SectionTable& table) {
    const auto sizes = sizes_of(said, cells);
    if (!sizes.ok())
        return sizes.refusal();
    const Kind kind = said.kind->kind;
    const bool flat = kind == Kind::flat || kind == Kind::plate;
    if (!flat && !(cells.width.empty() && cells.thickness.empty()))
        return refuse("Only flats and plates have their sizes in columns of their own.",
                      "this section's sizes behind its word, and those cells empty");
    auto made = flat ? flat_of(kind == Kind::flat ? Shape::flat : Shape::plate, *sizes, cells)
                     : shaped(said, *sizes);
    if (!made.ok())
        return made.refusal();
    Section section = std::move(made).value();
    if (!said.radius.empty()) {
        const auto radius = length_in(said.radius, cells.unit, cells.mark, "section");
        if (!radius.ok())
            return radius.refusal();
        section.root_radius = radius.value();
    } else if (has_radius(*said.kind) && said.name.empty()) {
        if (const Section* known = of_same_sizes(section, table))
            section = *known;
    }
    if (!said.name.empty())
        section.designation = said.name;
    for (const Length size : {section.width, section.height, section.thickness})
        if (auto fault = quantity::place_fault(size, "section"))
            return *fault;
    auto sound = section::checked(section);
    if (!sound.ok())
        return refuse(sound.refusal().reason, sound.refusal().detail);
    return sound;
}

} // namespace

Result<Length>
length_in(std::string_view text, std::string_view unit, DecimalMark mark, std::string_view field) {
    const std::string figure = plain_figure(text, mark);
    auto read = quantity::parse_length(figure, std::nullopt, field);
    // Millimetres and inches are told apart by the parser's own rule: no fraction of a millimetre.
    if (!read.ok() && read.refusal().reason == "The unit is missing." && !unit.empty())
        return unit == "mm"
                   ? quantity::parse_length(figure, UnitSystem::metric, field)
                   : quantity::parse_length(figure + " " + std::string(unit), std::nullopt, field);
    return read;
}

Result<Section> section_in(const SectionCells& cells, const section::SectionTable& table) {
    if (cells.text.empty()) {
        if (cells.width.empty() || cells.thickness.empty())
            return refuse("The section is missing.", "for example FB 3 x 1/2 or L3X3X1/4");
        return made_of(Said{kind_of("flat"), {}, "", ""}, cells, table);
    }
    const section::CatalogSection* row = table.find(cells.text);
    // A plate of the catalogue has the width of a whole sheet, which no part of a list has.
    if (row != nullptr && row->section.shape != Shape::plate && cells.width.empty())
        return row->section;
    const Said said = taken_apart(cells.text);
    if (said.kind == nullptr)
        return refuse("This section is not known here.",
                      "a name of the catalogue, or flat, plate, angle, round, square or tube with "
                      "its sizes");
    if (said.kind->kind == Kind::pipe) {
        std::string name = base::to_lower_ascii(cells.text);
        std::erase(name, '"');
        if (const section::CatalogSection* pipe = table.find(name))
            return pipe->section;
    }
    return made_of(said, cells, table);
}

bool looks_like_section(std::string_view text, const section::SectionTable& table) {
    if (table.find(text) != nullptr)
        return true;
    const Said said = taken_apart(text);
    return said.kind != nullptr && !said.sizes.empty() && !said.sizes[0].empty() &&
           (is_digit(said.sizes[0][0]) || said.sizes[0][0] == '.');
}

} // namespace treadle::archive
