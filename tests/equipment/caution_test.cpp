// For which stroke a caution is meant. The rows of this test are its own.

#include "equipment/caution.h"

#include <doctest/doctest.h>

using namespace treadle;
using equipment::applies;
using equipment::AttachmentKind;
using equipment::Caution;
using equipment::CautionCase;
using equipment::StationKind;
using equipment::Work;
using material::Family;

namespace {

Caution row() {
    Caution made;
    made.id = "one";
    made.words = "Words.";
    return made;
}

} // namespace

TEST_CASE("a caution is for what its lists name, and an empty list is for all") {
    Caution caution = row();
    const CautionCase punching{Work::punch, Family::carbon_steel, StationKind::punch, {}};
    CHECK(applies(caution, punching));
    caution.works = {Work::bend, Work::notch};
    CHECK_FALSE(applies(caution, punching));
    caution.works = {Work::punch};
    CHECK(applies(caution, punching));
    caution.metals = {Family::stainless_steel};
    CHECK_FALSE(applies(caution, punching));
    caution.metals.push_back(Family::carbon_steel);
    caution.stations = {StationKind::table};
    CHECK_FALSE(applies(caution, punching));
}

TEST_CASE("a tool bolted to a station is at both") {
    Caution caution = row();
    const CautionCase at{Work::notch, {}, StationKind::table, AttachmentKind::vee_notcher};
    caution.attachments = {AttachmentKind::vee_notcher};
    CHECK(applies(caution, at));
    caution.attachments = {AttachmentKind::brake};
    CHECK_FALSE(applies(caution, at));
    caution.stations = {StationKind::table};
    CHECK(applies(caution, at));
    // Nothing bolted on: a row for an attachment alone is not meant.
    caution.stations.clear();
    CHECK_FALSE(applies(caution, {Work::notch, {}, StationKind::notcher, {}}));
}

TEST_CASE("what is not known gets every caution it might need") {
    Caution caution = row();
    caution.metals = {Family::aluminium};
    caution.attachments = {AttachmentKind::brake};
    CHECK(applies(caution, {Work::bend, {}, {}, {}}));
}

TEST_CASE("general cautions are said once for the job, never for a stroke") {
    Caution caution = row();
    caution.general = true;
    CHECK_FALSE(applies(caution, {}));
}

TEST_CASE("an anchor is said with how it was read") {
    Caution caution = row();
    CHECK(equipment::anchor_words(caution) == "common practice, no source");
    caution.anchor = "29 CFR 1910.212(a)(1)";
    caution.evidence = base::Evidence::published;
    CHECK(equipment::anchor_words(caution) == "29 CFR 1910.212(a)(1)");
    caution.evidence = base::Evidence::from_memory;
    CHECK(equipment::anchor_words(caution) == "29 CFR 1910.212(a)(1), from memory");
}

TEST_CASE("a table names each row once, with words and with what stands behind it") {
    CHECK_FALSE(equipment::fault_in({row()}));
    CHECK(equipment::fault_in({row(), row()})->field == "cautions[1].id");
    Caution without = row();
    without.words.clear();
    CHECK(equipment::fault_in({without}));
    Caution unfounded = row();
    unfounded.evidence = base::Evidence::published;
    CHECK(equipment::fault_in({unfounded})->field == "cautions[0].anchor");
}
