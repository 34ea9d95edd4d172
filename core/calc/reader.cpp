#include "calc/reader.h"

#include "base/text.h"
#include "process/input_check.h"
#include "quantity/parse.h"

#include <algorithm>
#include <cmath>

namespace treadle::calc {

namespace {

// More legs or bends than any bar has: a slip, or an attempt to keep the program busy.
constexpr std::size_t k_most_items = 1000;

bool is_known(std::span<const InputSpec> specs, const std::string& name) {
    return std::any_of(
        specs.begin(), specs.end(), [&](const InputSpec& spec) { return name == spec.name; });
}

/// Place of a word among "a|b|c"; -1 when it is none of them.
int place_in(std::string_view choices, std::string_view word) {
    for (int place = 0; !choices.empty(); ++place) {
        const std::size_t bar = choices.find('|');
        if (choices.substr(0, bar) == word)
            return place;
        choices = bar == std::string_view::npos ? std::string_view{} : choices.substr(bar + 1);
    }
    return -1;
}

std::string in_mpa(Stress stress) {
    return base::write_short(quantity::to_megapascals(stress), 1) + " MPa";
}

} // namespace

Reader::Reader(const Input::Object& in, std::span<const InputSpec> specs, const Tables& tables)
    : in_(in),
      specs_(specs),
      tables_(tables) {
    for (std::size_t i = 0; i < in.size(); ++i) {
        const std::string& name = in[i].first;
        if (!is_known(specs, name))
            refuse({name.empty() ? "in" : name, "This calculation has no such input.", ""});
        for (std::size_t j = 0; j < i && !failed(); ++j)
            if (in[j].first == name)
                refuse({name, "This input is given twice.", ""});
        if (failed())
            return;
    }
    for (const InputSpec& spec : specs)
        if (spec.required)
            require(spec.name);
}

const Input* Reader::find(const char* name) const {
    for (const Input::Member& member : in_)
        if (member.first == name)
            return &member.second;
    return nullptr;
}

void Reader::refuse(base::Refusal refusal) {
    if (!failed())
        fault_ = std::move(refusal);
}

void Reader::refuse_if_given(const char* name, const char* why) {
    if (has(name))
        refuse({name, why, ""});
}

void Reader::require(const char* name) {
    if (!has(name))
        refuse({name, "This input is missing.", ""});
}

const std::string* Reader::text(const char* name) {
    if (failed())
        return nullptr;
    const Input* input = find(name);
    if (input == nullptr)
        return nullptr;
    if (input->text() == nullptr)
        refuse({name, "This input is a single value, not a list or an object.", ""});
    return input->text();
}

Length Reader::length(const char* name) {
    const std::string* t = text(name);
    return t == nullptr ? Length{} : keep(quantity::parse_length(*t, {}, name));
}

Force Reader::force(const char* name) {
    const std::string* t = text(name);
    return t == nullptr ? Force{} : keep(quantity::parse_force(*t, {}, name));
}

Stress Reader::stress(const char* name) {
    const std::string* t = text(name);
    return t == nullptr ? Stress{} : keep(quantity::parse_stress(*t, {}, name));
}

Angle Reader::angle(const char* name) {
    const std::string* t = text(name);
    return t == nullptr ? Angle{} : keep(quantity::parse_angle(*t, name));
}

Mass Reader::mass(const char* name) {
    const std::string* t = text(name);
    return t == nullptr ? Mass{} : keep(quantity::parse_mass(*t, {}, name));
}

Voltage Reader::voltage(const char* name) {
    const std::string* t = text(name);
    return t == nullptr ? Voltage{} : keep(quantity::parse_voltage(*t, name));
}

Current Reader::current(const char* name) {
    const std::string* t = text(name);
    return t == nullptr ? Current{} : keep(quantity::parse_current(*t, name));
}

Power Reader::power(const char* name) {
    const std::string* t = text(name);
    return t == nullptr ? Power{} : keep(quantity::parse_power(*t, name));
}

double Reader::ratio(const char* name) {
    const std::string* t = text(name);
    return t == nullptr ? 0.0 : keep(quantity::parse_ratio(*t, name));
}

int Reader::count(const char* name, int least, int most) {
    const std::string* t = text(name);
    if (t == nullptr)
        return 0;
    const double value = keep(quantity::parse_ratio(*t, name));
    if (!failed() && !(value >= least && value <= most && value == std::floor(value)))
        refuse({name,
                "This input is a whole number within its bounds.",
                "from " + std::to_string(least) + " to " + std::to_string(most)});
    return failed() ? 0 : static_cast<int>(value);
}

std::optional<layout::Bolt> Reader::bolt(const char* name) {
    const std::string* t = text(name);
    if (t == nullptr)
        return std::nullopt;
    const auto bolt = layout::parse_bolt(*t, name);
    if (!bolt.ok()) {
        refuse(bolt.refusal());
        return std::nullopt;
    }
    return *bolt;
}

int Reader::choice(const char* name) {
    const std::string* t = text(name);
    if (t == nullptr)
        return -1;
    for (const InputSpec& spec : specs_) {
        if (std::string_view(spec.name) != name)
            continue;
        const int place = place_in(spec.choices, *t);
        if (place < 0)
            refuse({name, "This word is not one of the choices.", spec.choices});
        return place;
    }
    return -1;
}

std::vector<Length> Reader::lengths(const char* name) {
    const Input* input = failed() ? nullptr : find(name);
    return input == nullptr ? std::vector<Length>{} : lengths_of(name, *input);
}

std::vector<Length> Reader::lengths_of(const char* name, const Input& input) {
    std::vector<Length> out;
    if (input.list() == nullptr || input.list()->empty() || input.list()->size() > k_most_items) {
        refuse({name, "This input is a list of lengths.", "1 to 1000"});
        return out;
    }
    for (const Input& item : *input.list()) {
        const std::string field = std::string(name) + "[" + std::to_string(out.size()) + "]";
        if (item.text() == nullptr) {
            refuse({field, "A length is a single value.", ""});
            return out;
        }
        out.push_back(keep(quantity::parse_length(*item.text(), {}, field)));
    }
    return out;
}

std::vector<Length> Reader::one_or_more(const char* name) {
    const Input* input = failed() ? nullptr : find(name);
    if (input == nullptr)
        return {};
    if (input->text() != nullptr)
        return {length(name)};
    if (input->list() == nullptr || input->list()->empty() ||
        input->list()->front().list() == nullptr)
        return lengths(name);
    Input::List flat;
    for (const Input& item : *input->list()) {
        if (item.list() == nullptr) {
            refuse({name, "Every item is a list here, or none is.", ""});
            return {};
        }
        flat.insert(flat.end(), item.list()->begin(), item.list()->end());
    }
    return lengths_of(name, Input(std::move(flat)));
}

std::vector<Reader::Bend> Reader::bends(const char* name) {
    static constexpr InputSpec k_specs[] = {
        {"angle", InputKind::angle, true, "turned through"},
        {"radius", InputKind::length, true, "inside radius"},
    };
    std::vector<Bend> out;
    const Input* input = failed() ? nullptr : find(name);
    if (input == nullptr)
        return out;
    if (input->list() == nullptr || input->list()->empty() ||
        input->list()->size() > k_most_items) {
        refuse({name, "This input is a list of bends.", "1 to 1000"});
        return out;
    }
    for (const Input& item : *input->list()) {
        const std::string field = std::string(name) + "[" + std::to_string(out.size()) + "]";
        if (item.object() == nullptr) {
            refuse({field, "A bend is an object of angle and radius.", ""});
            return out;
        }
        Reader bend(*item.object(), k_specs, tables_);
        out.push_back({bend.angle("angle"), bend.length("radius")});
        if (bend.failed())
            refuse(
                {field + "." + bend.refusal().field, bend.refusal().reason, bend.refusal().detail});
    }
    return out;
}

Section Reader::section(const char* name) {
    static constexpr InputSpec k_specs[] = {
        {"shape",
         InputKind::word,
         true,
         "shape",
         "flat|plate|angle|channel|round|square|pipe|square_tube"},
        {"width", InputKind::length, true, "width, leg, flange, diameter or side"},
        {"height", InputKind::length, false, "height, other leg or depth"},
        {"thickness", InputKind::length, false, "thickness, web or wall"},
        {"flange_thickness", InputKind::length, false, "mean flange of a channel"},
        {"root_radius", InputKind::length, false, "fillet, or outside corner of a tube"},
    };
    const Input* input = failed() ? nullptr : find(name);
    if (input == nullptr)
        return {};
    if (const std::string* designation = input->text()) {
        const section::CatalogSection* row = tables_.sections.find(*designation);
        if (row == nullptr) {
            refuse({name, "No section of this designation is in the catalogue.", ""});
            return {};
        }
        return row->section;
    }
    if (input->object() == nullptr) {
        refuse({name, "A section is a designation, or an object of shape and sizes.", ""});
        return {};
    }
    Reader sizes(*input->object(), k_specs, tables_);
    Section out;
    out.shape = static_cast<section::Shape>(std::max(sizes.choice("shape"), 0));
    out.width = sizes.length("width");
    out.height = sizes.length("height");
    out.thickness = sizes.length("thickness");
    out.flange_thickness = sizes.length("flange_thickness");
    out.root_radius = sizes.length("root_radius");
    process::InputCheck check;
    check.length_or_zero(out.width, "width")
        .length_or_zero(out.height, "height")
        .length_or_zero(out.thickness, "thickness")
        .length_or_zero(out.flange_thickness, "flange_thickness")
        .length_or_zero(out.root_radius, "root_radius");
    if (sizes.failed() || check.failed()) {
        base::Refusal fault = sizes.failed() ? sizes.refusal() : check.refusal();
        fault.field = std::string(name) + "." + fault.field;
        refuse(std::move(fault));
        return {};
    }
    return keep(section::checked(out)); // its fields begin with "section." themselves
}

const Grade* Reader::material() {
    const std::string* t = text("material");
    if (t == nullptr)
        return nullptr;
    const Grade* grade = tables_.grades.find(*t);
    if (grade == nullptr)
        refuse({"material", "No grade of this name is in the table.", ""});
    return grade;
}

bool Reader::exactly_one(const char* a, const char* b) {
    if (has(a) && has(b))
        refuse({b, std::string("Give this or ") + a + ", not both.", ""});
    if (!has(a) && !has(b))
        refuse({a, std::string("This input, or ") + b + " in its place, is missing.", ""});
    return !failed();
}

StrengthUsed Reader::upper_strength(Length thickness, const char* size_field) {
    const Grade* grade = material();
    process::InputCheck check; // before the band: a band cannot be found for a size that is none
    check.length(thickness, size_field);
    if (check.failed())
        refuse(check.refusal());
    if (failed() || grade == nullptr)
        return {};
    const auto upper = material::upper_tensile(*grade, thickness);
    if (!upper.ok()) {
        base::Refusal fault = upper.refusal();
        if (fault.field == "thickness")
            fault.field = size_field;
        refuse(std::move(fault));
        return {};
    }
    return {upper->value,
            "Strongest " + grade->name + " that its grade allows: tensile strength " +
                in_mpa(upper->value) + "."};
}

StrengthUsed Reader::shear_strength(Length thickness, const char* size_field) {
    if (failed() || !exactly_one("material", "shear_strength"))
        return {};
    if (has("shear_strength"))
        return {stress("shear_strength"), ""};
    const Grade* grade = material();
    if (grade != nullptr && grade->refusal.cutting)
        refuse({"material", grade->refusal.reason, ""});
    StrengthUsed used = upper_strength(thickness, size_field);
    if (failed() || grade == nullptr)
        return {};
    used.value = material::shear_strength(*grade, used.value);
    used.note += " Shear strength taken as " + base::write_short(grade->shear_ratio, 3) + " of it.";
    return used;
}

StrengthUsed Reader::tensile_strength(Length thickness, const char* size_field) {
    if (failed() || !exactly_one("material", "tensile_strength"))
        return {};
    if (has("tensile_strength"))
        return {stress("tensile_strength"), ""};
    const Grade* grade = material();
    if (grade != nullptr && grade->refusal.bending)
        refuse({"material", grade->refusal.reason, ""});
    return upper_strength(thickness, size_field);
}

double Reader::air_bend_share() {
    if (failed() || !exactly_one("material", "share"))
        return 0.0;
    if (has("share"))
        return ratio("share");
    const Grade* grade = material();
    if (grade == nullptr)
        return 0.0;
    if (grade->refusal.bending)
        refuse({"material", grade->refusal.reason, ""});
    if (!(grade->air_bend_share > 0.0))
        refuse({"material", "No air-bend radius is known for this metal: try a strip.", ""});
    return grade->air_bend_share;
}

} // namespace treadle::calc
