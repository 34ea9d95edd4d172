// Trial strips, class of tolerance and repeatability in a file, and back.

#include "archive/archive.h"
#include "archive/demo_files.h"

#include <doctest/doctest.h>

using namespace treadle;
using archive_test::demo;

namespace {

archive::File back(const archive::File& file) {
    auto read = archive::read_file(archive::write_file(file.job, file.shop));
    if (!read.ok())
        FAIL(read.refusal().field << ": " << read.refusal().reason);
    return std::move(read).value();
}

archive::File with_trial() {
    archive::File file = archive::read_file(demo("demo-inch.json")).value();
    equipment::TrialRecord record;
    record.grade = "304";
    record.thickness = inches(1.0 / 3.0);
    record.opening = millimetres(1000.0 / 7.0);
    record.radius = inches(0.1234567);
    record.angle = degrees(88.8);
    record.grain = material::Grain::along;
    record.strips = {{millimetres(201.1), millimetres(103.3), millimetres(104.4)},
                     {millimetres(202.2), millimetres(105.5), millimetres(106.6)}};
    file.shop.trials = {record, record};
    file.shop.trials[1].grain = material::Grain::unknown;
    file.shop.rules.stop_repeat = millimetres(1.0 / 3.0);
    file.shop.rules.cut_repeat = inches(1.0 / 64.0);
    return file;
}

} // namespace

TEST_CASE("trial strips come back as they were measured") {
    const archive::File was = with_trial();
    const archive::File is = back(was);
    REQUIRE(is.shop.trials.size() == 2);
    const equipment::TrialRecord& record = is.shop.trials[0];
    CHECK(record.grade == "304");
    CHECK(record.thickness == was.shop.trials[0].thickness);
    CHECK(record.opening == was.shop.trials[0].opening);
    CHECK(record.radius == was.shop.trials[0].radius);
    CHECK(record.angle == was.shop.trials[0].angle);
    CHECK(record.grain == material::Grain::along);
    REQUIRE(record.strips.size() == 2);
    CHECK(record.strips[1].blank == millimetres(202.2));
    CHECK(record.strips[1].leg_a == millimetres(105.5));
    CHECK(record.strips[1].leg_b == millimetres(106.6));
    CHECK(is.shop.trials[1].grain == material::Grain::unknown);
    CHECK(is.shop.rules.stop_repeat == was.shop.rules.stop_repeat);
    CHECK(is.shop.rules.cut_repeat == was.shop.rules.cut_repeat);
}

TEST_CASE("each class of tolerance comes back, and none stays none") {
    archive::File file = with_trial();
    for (const auto grade : {job::ToleranceClass::fine,
                             job::ToleranceClass::medium,
                             job::ToleranceClass::coarse,
                             job::ToleranceClass::very_coarse}) {
        file.job.tolerance = grade;
        CHECK(back(file).job.tolerance == grade);
    }
    file.job.tolerance.reset();
    file.shop.rules.stop_repeat.reset();
    file.shop.trials.clear();
    const archive::File none = back(file);
    CHECK_FALSE(none.job.tolerance);
    CHECK_FALSE(none.shop.rules.stop_repeat);
    CHECK(none.shop.trials.empty());
}

TEST_CASE("a strip at fault is named with its place in the file") {
    archive::File file = with_trial();
    file.shop.trials[1].strips[0].leg_b = millimetres(1000.0);
    const auto read = archive::read_file(archive::write_file(file.job, file.shop));
    REQUIRE_FALSE(read.ok());
    CHECK(read.refusal().field == "shop.trials[1].strips[0].leg_b");
}
