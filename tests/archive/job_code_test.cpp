// The code on every sheet.

#include "archive/demo_files.h"
#include "archive/job_code.h"

#include <doctest/doctest.h>

using namespace treadle;

TEST_CASE("a job's code is its own, six letters that are not taken for one another") {
    const archive::File file = archive::read_file(archive_test::demo("demo-inch.json")).value();
    const std::string code = archive::job_code(file.job, file.shop);
    CHECK(code.size() == 6);
    CHECK(code.find_first_not_of("ABCDEFGHJKLMNPQRSTUVWXYZ23456789") == std::string::npos);
    CHECK(archive::job_code(file.job, file.shop) == code);
}

TEST_CASE("another count of one part is another code") {
    archive::File file = archive::read_file(archive_test::demo("demo-inch.json")).value();
    const std::string before = archive::job_code(file.job, file.shop);
    job::Part part = *file.job.parts[0];
    ++part.count;
    file.job.parts[0] = std::make_shared<const job::Part>(part);
    CHECK(archive::job_code(file.job, file.shop) != before);
}
