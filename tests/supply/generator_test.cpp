#include <doctest/doctest.h>

#include <string>

#include "supply/cards.h"
#include "supply/generator.h"

using namespace treadle;
using namespace treadle::supply;

namespace {

const Motor k_motor{quantity::horsepower(3.0), quantity::volts(230.0), Phases::single};

std::string card(const base::Result<Working>& working) {
    REQUIRE(working.ok());
    return working->card->id;
}

} // namespace

TEST_CASE("generator-running, generator-power, generator-surge and generator-triple") {
    CHECK(card(generator_running_working(k_motor)) == "generator-running");
    CHECK(card(generator_power_working(k_motor, 0.75)) == "generator-power");
    CHECK(card(generator_surge_working(k_motor, 'K')) == "generator-surge");
    CHECK(card(generator_triple_working(k_motor)) == "generator-triple");
    CHECK(generator_power_working(k_motor, 0.75)->note.find("assumption") != std::string::npos);
    CHECK(generator_power_working(k_motor, 0.8)->note.empty());
}

TEST_CASE("three times the running load starts no motor of code K") {
    // Known disagreement: 3 x 3.91 = 11.7 kVA by the rule of thumb, 26.97 kVA by the code letter.
    const auto by_rule = std::get<ApparentPower>(generator_triple_working(k_motor)->result.value);
    const auto needed =
        std::get<ApparentPower>(generator_surge_working(k_motor, 'K')->result.value);
    CHECK(by_rule / needed < 0.5);
}

TEST_CASE("an efficiency is a share") {
    for (const double bad : {0.0, -0.1, 1.01})
        CHECK(generator_power_working(k_motor, bad).refusal().field == "efficiency");
    CHECK(generator_power_working(k_motor, 1.0).ok());
}

TEST_CASE("generator-derated: higher and hotter never gives more") {
    Derating at;
    at.rating = quantity::watts(7000.0);
    CHECK(*derated(at) == at.rating);
    Power last = at.rating;
    for (double h = 500.0; h < 12'000.0; h += 500.0) {
        at.altitude = quantity::feet(h);
        CHECK(*derated(at) < last);
        last = *derated(at);
    }
    at.fahrenheit_over = 10.0;
    CHECK(*derated(at) < last);
    CHECK(card(derated_working(at)) == "generator-derated");
}

TEST_CASE("a height, a rate and a heat out of range are refused") {
    Derating at;
    at.rating = quantity::watts(7000.0);
    at.altitude = quantity::metres(6001.0);
    CHECK(derated(at).refusal().field == "altitude");
    at.altitude = quantity::feet(19'000.0);
    at.per_thousand_feet = 0.05; // 95 % lost
    CHECK(derated(at).refusal().field == "altitude");
    at.altitude = {};
    at.per_thousand_feet = 0.2;
    CHECK(derated(at).refusal().field == "rate");
    at.per_thousand_feet = 0.03;
    at.fahrenheit_over = -1.0;
    CHECK(derated(at).refusal().field == "over_temperature_f");
    at.fahrenheit_over = 0.0;
    at.rating = {};
    CHECK(derated(at).refusal().field == "rating");
}
