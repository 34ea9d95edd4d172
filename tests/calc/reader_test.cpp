// The rules between inputs: what goes with what, and what a grade refuses.

#include "calc/reader.h"
#include "calc/tables_for_tests.h"

#include <doctest/doctest.h>

using namespace treadle;
using calc::Input;
using test::ask;
using test::field_of;
using test::figure;
using test::good_input;

namespace {

Input::Object with(Input::Object in, const char* name, Input value) {
    in.emplace_back(name, std::move(value));
    return in;
}

Input::Object without(const Input::Object& in, const char* name) {
    Input::Object out;
    for (const auto& member : in)
        if (member.first != name)
            out.push_back(member);
    return out;
}

Input::Object changed(const Input::Object& in, const char* name, Input value) {
    return with(without(in, name), name, std::move(value));
}

} // namespace

TEST_CASE("a material and a strength together, or neither, are refused") {
    const auto punch = good_input("punch.force");
    CHECK(field_of(ask("punch.force", with(punch, "material", "A36"))) == "shear_strength");
    CHECK(field_of(ask("punch.force", without(punch, "shear_strength"))) == "material");
    const auto bend = good_input("bend.force");
    CHECK(field_of(ask("bend.force", with(bend, "material", "A36"))) == "tensile_strength");
}

TEST_CASE("a grade that refuses work refuses here, with its own reason") {
    for (const char* name : {"punch.largest",
                             "punch.die",
                             "shear.angle",
                             "bend.opening",
                             "bend.radius",
                             "bend.least_radius"}) {
        CAPTURE(name);
        const auto refused = ask(name, changed(good_input(name), "material", "wear-plate"));
        REQUIRE_FALSE(refused.ok());
        CHECK(refused.refusal().field == "material");
        CHECK(refused.refusal().reason == "Too hard for this.");
    }
    CHECK(field_of(ask("punch.largest", changed(good_input("punch.largest"), "material", "x"))) ==
          "material");
}

TEST_CASE("a size over the grade's last band is refused at the input it came from") {
    CHECK(field_of(ask("shear.bar",
                       {{"shape", "round"}, {"size", "1 in"}, {"material", "thin-only"}})) ==
          "size");
    CHECK(
        ask("shear.bar", {{"shape", "round"}, {"size", "1/2 in"}, {"material", "thin-only"}}).ok());
    CHECK(field_of(ask("bend.radius",
                       changed(good_input("bend.radius"), "material", "thin-only"))) == "material");
    CHECK(field_of(ask("bend.least_radius",
                       changed(good_input("bend.least_radius"), "material", "thin-only"))) ==
          "material");
}

TEST_CASE("an input without meaning beside the others is refused, not ignored") {
    const auto punch = good_input("punch.force");
    CHECK(field_of(ask("punch.force", changed(punch, "shape", "round"))) == "size2");
    CHECK(field_of(ask("punch.force", without(punch, "size2"))) == "size2");
    const auto flat = good_input("shear.flat");
    CHECK(field_of(ask("shear.flat", without(flat, "rake"))) == "penetration");
    const auto notch = good_input("notch.force");
    CHECK(field_of(ask("notch.force", with(notch, "width", "1 in"))) == "width");
    CHECK(field_of(ask("notch.force", without(notch, "angle"))) == "angle");
    CHECK(field_of(ask("notch.force", changed(notch, "shape", "rectangle"))) == "width");
    const auto bend = good_input("bend.force");
    CHECK(field_of(ask("bend.force", changed(bend, "method", "careful"))) == "k");
    CHECK(field_of(ask("bend.force", without(bend, "k"))) == "k");
    CHECK(field_of(ask("bend.blank",
                       with(with(good_input("bend.blank"), "k", "0.4"), "method", "din6935"))) ==
          "method");
}

TEST_CASE("lists and nested objects name the place of the fault") {
    const auto blank = good_input("bend.blank");
    CHECK(field_of(ask("bend.blank", changed(blank, "legs", "50 mm"))) == "legs");
    CHECK(field_of(ask("bend.blank",
                       changed(blank, "legs", Input::List{"50 mm", "nan", "50 mm"}))) == "legs[1]");
    CHECK(field_of(ask("bend.blank", changed(blank, "legs", Input::List{"50 mm", "50 mm"}))) ==
          "legs");
    CHECK(field_of(ask("bend.blank", changed(blank, "bends", Input::List{"90"}))) == "bends[0]");
    CHECK(field_of(ask("bend.blank",
                       changed(blank,
                               "bends",
                               Input::List{Input::Object{{"angle", "90"}, {"radius", "6 mm"}},
                                           Input::Object{{"angle", "90"}}}))) == "bends[1].radius");
    CHECK(field_of(ask("bend.blank", changed(blank, "thickness", Input::List{}))) == "thickness");
    CHECK(field_of(ask("section.weight", {{"section", Input::Object{{"shape", "flat"}}}})) ==
          "section.width");
    CHECK(field_of(ask("section.weight", {{"section", "L99x99"}})) == "section");
}
