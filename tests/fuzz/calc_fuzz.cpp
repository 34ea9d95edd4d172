// Whatever bytes come: a line of `treadle calc -`, one calculation's inputs, or one quantity.
//
// The first byte says which. Nothing may crash, hang or be undefined; an answer is finite, a
// refusal names a field and a reason, and a quantity that was read is written back to itself.

#include "archive/archive.h"
#include "calc/answer_json.h"
#include "calc/calculation.h"
#include "quantity/parse.h"

#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>
#include <variant>

using namespace treadle;

namespace {

void must(bool holds) {
    if (!holds)
        std::abort();
}

const job::Catalog& catalog() {
    static const job::Catalog read = archive::read_catalog().value();
    return read;
}

struct Finite {
    template <class Q>
    bool operator()(Q q) const {
        return quantity::is_finite(q);
    }
    bool operator()(quantity::Number q) const { return std::isfinite(q.value); }
    bool operator()(quantity::Share q) const { return std::isfinite(q.value); }
};

void check_refusal(const base::Refusal& refusal) {
    must(!refusal.reason.empty());
    must(!calc::refusal_json(refusal).empty());
}

void check_answer(std::string_view name, const calc::Input& input) {
    const auto answer = calc::run(name, input, {catalog().grades, catalog().sections});
    if (!answer.ok()) {
        check_refusal(answer.refusal());
        must(!answer.refusal().field.empty());
        return;
    }
    for (const calc::Figure& figure : answer->figures) {
        if (figure.list)
            for (const Length length : *figure.list)
                must(is_finite(length));
        else
            must(std::visit(Finite{}, figure.value));
    }
    must(!calc::answer_json(name, *answer).empty());
}

void line(std::string_view text) {
    const auto request = archive::read_calc_line(text);
    if (request.ok())
        check_answer(request->name, request->input);
    else
        check_refusal(request.refusal());
}

/// One byte for the calculation, then `name` by a byte and the value up to a newline, over and
/// over: most of what the mutations make reaches the formulas.
void inputs(std::string_view text) {
    if (text.empty())
        return;
    const auto all = calc::all();
    const calc::Calculation& calculation = *all[static_cast<unsigned char>(text[0]) % all.size()];
    text.remove_prefix(1);
    calc::Input::Object in;
    while (!text.empty() && in.size() < 16) {
        const auto which = static_cast<unsigned char>(text[0]) % calculation.inputs.size();
        text.remove_prefix(1);
        const std::size_t end = text.find('\n');
        in.emplace_back(calculation.inputs[which].name, calc::Input(text.substr(0, end)));
        text = end == std::string_view::npos ? std::string_view{} : text.substr(end + 1);
    }
    check_answer(calculation.name, calc::Input(std::move(in)));
}

template <class Q>
void check_read(const base::Result<Q>& read) {
    if (read.ok())
        must(quantity::is_finite(*read));
    else
        check_refusal(read.refusal());
}

void quantities(std::string_view text) {
    using quantity::UnitSystem;
    const auto length = quantity::parse_length(text, UnitSystem::inch, "x");
    check_read(length);
    check_read(quantity::parse_length(text, UnitSystem::metric, "x"));
    check_read(quantity::parse_length(text, {}, "x"));
    if (length.ok()) {
        for (const UnitSystem system : {UnitSystem::inch, UnitSystem::metric}) {
            const auto back =
                quantity::parse_length(quantity::write_exact(*length, system), {}, "x");
            must(back.ok() && *back == *length);
        }
        must(!quantity::print(*length, {UnitSystem::inch, 16}).empty());
        must(!quantity::print_feet(*length, {UnitSystem::inch, 64}).empty());
    }
    check_read(quantity::parse_force(text, UnitSystem::inch, "x"));
    check_read(quantity::parse_stress(text, UnitSystem::metric, "x"));
    check_read(quantity::parse_angle(text, "x"));
    check_read(quantity::parse_mass(text, UnitSystem::inch, "x"));
    check_read(quantity::parse_density(text, "x"));
    check_read(quantity::parse_voltage(text, "x"));
    check_read(quantity::parse_current(text, "x"));
    check_read(quantity::parse_power(text, "x"));
    const auto ratio = quantity::parse_ratio(text, "x");
    must(!ratio.ok() || std::isfinite(*ratio));
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size == 0)
        return 0;
    const std::string bytes(data + 1, data + size);
    switch (data[0] % 4) {
    case 0:
        quantities(bytes);
        break;
    case 1:
        line(bytes);
        break;
    default:
        inputs(bytes);
    }
    return 0;
}
