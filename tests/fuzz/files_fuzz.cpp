// Whatever bytes come as a file of several jobs, a shop alone, the shelf or a lesson: bundle.h,
// shelf.h, lesson_file.h.
//
// The first byte says which. Nothing may crash, hang or be undefined. What was read is written,
// read back and written again to the identical bytes; a refusal names a field and a reason.

#include "archive/bundle.h"
#include "archive/lesson_file.h"
#include "archive/shelf.h"

#include <cstdint>
#include <string>

#include "fuzz/must.h"
#include "lesson/check.h"

using namespace treadle;
using fuzz::check_refusal;
using fuzz::must;

namespace {

void bundles(const std::string& bytes) {
    const auto bundle = archive::read_bundle(bytes);
    if (!bundle.ok())
        return check_refusal(bundle.refusal());
    for (const base::Refusal& refusal : bundle->refused)
        check_refusal(refusal);
    const std::string written = archive::write_bundle(bundle->jobs);
    const auto again = archive::read_bundle(written);
    must(again.ok() && again->refused.empty());
    must(archive::write_bundle(again->jobs) == written);
}

void shops(const std::string& bytes) {
    const auto shop = archive::read_shop_file(bytes);
    if (!shop.ok())
        return check_refusal(shop.refusal());
    for (const UnitSystem units : {UnitSystem::inch, UnitSystem::metric}) {
        const std::string written = archive::write_shop_file(*shop, units);
        const auto again = archive::read_shop_file(written);
        must(again.ok() && archive::write_shop_file(*again, units) == written);
    }
}

void shelves(const std::string& bytes) {
    const auto shelf = archive::read_shelf(bytes);
    if (!shelf.ok())
        return check_refusal(shelf.refusal());
    for (const base::Refusal& refusal : shelf->refused)
        check_refusal(refusal);
    for (const archive::ShelfEntry& entry : shelf->entries) {
        must(!entry.file.empty() && entry.file.front() != '/');
        must(("/" + entry.file + "/").find("/../") == std::string::npos);
        must(entry.file.find_first_of(":\\?#%") == std::string::npos);
    }
}

/// What was read is tried as `treadle check` does: every fault has a field and a reason.
void lessons(const std::string& bytes) {
    static const job::Catalog catalog = archive::read_catalog().value();
    const auto lesson = archive::read_lesson(bytes);
    if (!lesson.ok())
        return check_refusal(lesson.refusal());
    must(!lesson->steps.empty() && lesson->steps.size() <= lesson::k_most_steps);
    for (const unsigned seed : {0U, lesson::k_most_seed})
        for (const base::Refusal& fault : lesson::faults_of(*lesson, seed, catalog))
            check_refusal(fault);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size == 0)
        return 0;
    const std::string bytes(data + 1, data + size);
    must(archive::file_kind_words(archive::kind_of_file(bytes))[0] != '\0');
    switch (data[0] % 4) {
    case 0:
        bundles(bytes);
        break;
    case 1:
        shops(bytes);
        break;
    case 2:
        shelves(bytes);
        break;
    default:
        lessons(bytes);
    }
    return 0;
}
