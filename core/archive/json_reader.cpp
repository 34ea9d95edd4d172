#include "archive/json_reader.h"

#include "base/text.h"
#include "quantity/parse.h"

#include <cmath>
#include <limits>

namespace treadle::archive {

namespace {

/// Names, marks and notes; longer ones are no text that a fabricator typed.
constexpr std::size_t k_longest_text = 4000;

const char* kind_words(Kind kind) {
    switch (kind) {
    case Kind::null:
        return "nothing";
    case Kind::truth:
        return "true or false";
    case Kind::number:
        return "a number";
    case Kind::text:
        return "text";
    case Kind::list:
        return "a list";
    case Kind::object:
        return "a group of named values";
    }
    return "";
}

template <class T, class Parse>
void read_quantity(const Place& at, T& out, const char* example, Parse parse) {
    if (at.node().kind == Kind::number) {
        at.refuse("A number alone has no unit.",
                  std::string("text with its unit, like ") + example);
        return;
    }
    if (!at.must_be(Kind::text))
        return;
    const base::Result<T> read = parse(at.tree().text_of(at.node()));
    if (read.ok())
        out = read.value();
    else
        at.refuse(read.refusal().reason, read.refusal().detail);
}

} // namespace

std::string Place::path() const {
    if (above_ == nullptr)
        return "";
    std::string way = above_->path();
    if (above_->node().kind == Kind::list)
        return way + "[" + std::to_string(position_) + "]";
    if (!way.empty())
        way += '.';
    return way + std::string(tree().key_of(node()));
}

void Place::refuse(std::string reason, std::string detail, std::string_view below) const {
    if (failed())
        return;
    std::string field = path();
    if (!below.empty()) {
        if (!field.empty() && below.front() != '[')
            field += '.';
        field += below;
    }
    if (field.empty())
        field = "file";
    reading_->refusal = base::Refusal{std::move(field), std::move(reason), std::move(detail)};
}

void Place::refuse(const base::Refusal& inside) const {
    refuse(inside.reason, inside.detail, inside.field);
}

bool Place::must_be(Kind kind) const {
    if (failed())
        return false;
    if (node().kind == kind)
        return true;
    refuse(std::string("This has to be ") + kind_words(kind) + ", not " + kind_words(node().kind) +
           ".");
    return false;
}

void read_value(const Place& at, std::string& out) {
    if (!at.must_be(Kind::text))
        return;
    const std::string_view text = at.tree().text_of(at.node());
    if (text.size() > k_longest_text)
        at.refuse("This text is too long.", "at most " + std::to_string(k_longest_text) + " bytes");
    else if (!base::is_clean_text(text))
        at.refuse("This text has control characters in it.");
    else
        out.assign(text);
}

void read_value(const Place& at, bool& out) {
    if (at.must_be(Kind::truth))
        out = at.node().truth;
}

void read_value(const Place& at, int& out) {
    if (!at.must_be(Kind::number))
        return;
    const double value = at.node().number;
    if (!(std::abs(value) <= std::numeric_limits<int>::max()) || value != std::floor(value))
        at.refuse("This has to be a whole number.");
    else
        out = static_cast<int>(value);
}

void read_value(const Place& at, double& out) {
    if (!at.must_be(Kind::number))
        return;
    if (!std::isfinite(at.node().number))
        at.refuse("This has to be a finite number.");
    else
        out = at.node().number + 0.0; // "-0.0" is nought, and is written as that
}

// A file must mean the same in every shop, so a number without a unit is refused: nullopt.

void read_value(const Place& at, Length& out) {
    read_quantity(at, out, "\"1-3/8 in\" or \"35 mm\"", [](std::string_view text) {
        return quantity::parse_length(text, std::nullopt, "");
    });
}

void read_value(const Place& at, Force& out) {
    read_quantity(at, out, "\"50 ton\" or \"450 kN\"", [](std::string_view text) {
        return quantity::parse_force(text, std::nullopt, "");
    });
}

void read_value(const Place& at, Stress& out) {
    read_quantity(at, out, "\"65 ksi\" or \"450 MPa\"", [](std::string_view text) {
        return quantity::parse_stress(text, std::nullopt, "");
    });
}

void read_value(const Place& at, Angle& out) {
    read_quantity(at, out, "\"90 deg\"", [](std::string_view text) {
        return quantity::parse_angle(text, "");
    });
}

void read_value(const Place& at, Density& out) {
    read_quantity(at, out, "\"7850 kg/m3\"", [](std::string_view text) {
        return quantity::parse_density(text, "");
    });
}

void read_value(const Place& at, Mass& out) {
    read_quantity(at, out, "\"50 lb\" or \"20 kg\"", [](std::string_view text) {
        return quantity::parse_mass(text, std::nullopt, "");
    });
}

void read_value(const Place& at, Power& out) {
    read_quantity(at, out, "\"3 hp\" or \"2.2 kW\"", [](std::string_view text) {
        return quantity::parse_power(text, "");
    });
}

void read_value(const Place& at, Voltage& out) {
    read_quantity(at, out, "\"230 V\"", [](std::string_view text) {
        return quantity::parse_voltage(text, "");
    });
}

void read_value(const Place& at, Duration& out) {
    double in_seconds = 0.0;
    read_value(at, in_seconds);
    out = quantity::seconds(in_seconds);
}

void refuse_word(const Place& at, const std::vector<const char*>& known) {
    std::string list;
    for (const char* word : known)
        list += (list.empty() ? "" : ", ") + std::string(word);
    at.refuse("This word is not known here.", "one of: " + list);
}

Members::Found Members::find(std::string_view key) {
    std::uint32_t child = at_.node().first;
    for (std::uint32_t i = 0; i < at_.node().size; ++i) {
        const Node& member = at_.tree().nodes[child];
        if (at_.tree().key_of(member) == key) {
            asked_ |= std::uint64_t{1} << i;
            return {child, static_cast<int>(i)};
        }
        child = member.next;
    }
    return {};
}

void Members::missing(std::string_view key) const { at_.refuse("This is missing.", "", key); }

void Members::pass_over(std::string_view key) {
    if (usable_ && !at_.failed())
        static_cast<void>(find(key));
}

void Members::finish() {
    if (!usable_ || at_.failed())
        return;
    std::uint32_t child = at_.node().first;
    for (std::uint32_t i = 0; i < at_.node().size; ++i) {
        const Node& member = at_.tree().nodes[child];
        if ((asked_ >> i & 1u) == 0) {
            Place(at_, child, static_cast<int>(i))
                .refuse("This entry is not known here; nothing was read, so that nothing is lost.");
            return;
        }
        child = member.next;
    }
}

} // namespace treadle::archive
