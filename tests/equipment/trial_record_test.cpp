// What a shop may enter as its trial strips: core/equipment/trial_record.cpp.

#include "equipment/shop.h"
#include "equipment/trial_record.h"

#include <doctest/doctest.h>

using namespace treadle;
using namespace treadle::equipment;

namespace {

TrialRecord sound() {
    TrialRecord record;
    record.grade = "A36";
    record.thickness = inches(0.25);
    record.opening = inches(2.0);
    record.radius = inches(0.25);
    record.angle = degrees(90.0);
    record.strips = {{inches(6.0), inches(3.221), inches(3.221)}};
    return record;
}

template <class Change>
std::string fault(Change change) {
    TrialRecord record = sound();
    change(record);
    const auto found = trial_record_fault(record);
    return found ? found->field : "none";
}

} // namespace

TEST_CASE("each field of a trial is asked for, and is a size") {
    CHECK(fault([](TrialRecord&) {}) == "none");
    CHECK(fault([](TrialRecord& r) { r.grade.clear(); }) == "grade");
    CHECK(fault([](TrialRecord& r) { r.thickness = Length{}; }) == "thickness");
    CHECK(fault([](TrialRecord& r) { r.opening = -inches(1.0); }) == "opening");
    CHECK(fault([](TrialRecord& r) { r.radius = Length{}; }) == "radius");
    CHECK(fault([](TrialRecord& r) { r.angle = Angle{}; }) == "angle");
    CHECK(fault([](TrialRecord& r) { r.angle = degrees(180.0); }) == "angle");
    CHECK(fault([](TrialRecord& r) { r.angle = degrees(179.9); }) == "none");
}

TEST_CASE("one strip is needed, and its legs are shorter than it was cut") {
    CHECK(fault([](TrialRecord& r) { r.strips.clear(); }) == "strips");
    CHECK(fault([](TrialRecord& r) { r.strips.resize(k_most_trial_strips, r.strips[0]); }) ==
          "none");
    CHECK(fault([](TrialRecord& r) { r.strips.resize(k_most_trial_strips + 1, r.strips[0]); }) ==
          "strips");
    CHECK(fault([](TrialRecord& r) { r.strips[0].leg_b = inches(6.0); }) == "strips[0].leg_b");
    CHECK(fault([](TrialRecord& r) { r.strips[0].leg_a = Length{}; }) == "strips[0].leg_a");
    CHECK(fault([](TrialRecord& r) { r.strips[0].blank = Length{}; }) == "strips[0].blank");
}

TEST_CASE("a shop names the record at fault, and how true its stop and shear repeat") {
    Shop shop;
    shop.trials = {sound(), sound()};
    shop.rules.stop_repeat = inches(0.01);
    CHECK(checked(shop).ok());
    shop.trials[1].strips[0].leg_a = inches(7.0);
    CHECK(checked(shop).refusal().field == "trials[1].strips[0].leg_a");
    shop.trials.clear();
    shop.rules.stop_repeat = Length{};
    CHECK(checked(shop).refusal().field == "rules.stop_repeat");
    shop.rules.stop_repeat.reset();
    shop.rules.cut_repeat = -inches(0.01);
    CHECK(checked(shop).refusal().field == "rules.cut_repeat");
}
