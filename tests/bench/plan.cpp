// How long a plan takes, and whether the time grows with the number of operations or faster.
//
// The demo job is copied until it has 100, 1,000 and 10,000 operations, each part a part of its own
// (nothing is shared, so nothing can be planned once for many). Then one part of 1,000 is changed.
// Best of many rounds, so that a busy machine counts less. Prints; never fails on time.

#include "plan/plan.h"

#include "archive/archive.h"
#include "sheet/worksheet.h"

#include <cstdio>
#include <fstream>
#include <memory>
#include <sstream>
#include <string>

#include "best_ms.h"

using namespace treadle;

namespace {

/// Until there are so many parts or operations, whichever comes first.
job::Job copies(const job::Job& job, std::size_t parts, std::size_t operations) {
    job::Job many = job;
    many.parts.clear();
    std::size_t made = 0;
    for (std::size_t i = 0; i < parts && made < operations; ++i) {
        job::Part part = *job.parts[i % job.parts.size()];
        part.id = "b" + std::to_string(i);
        made += part.operations.size();
        many.parts.push_back(std::make_shared<const job::Part>(std::move(part)));
    }
    return many;
}

/// One part is replaced by another of the same kind with one piece more.
void one_edit(const job::Job& demo, const equipment::Shop& shop, const job::Catalog& catalog) {
    job::Job job = copies(demo, 1000, ~std::size_t{0});
    const plan::Plan before = plan::make_plan(job, shop, catalog);
    job::Part part = *job.parts[500];
    ++part.count;
    job.parts[500] = std::make_shared<const job::Part>(std::move(part));
    plan::Plan after;
    const double ms =
        bench::best_ms(100, [&] { after = plan::replan(before, job, shop, catalog); });
    std::printf("one edit among 1,000 parts: %.3f ms, %zu set-ups\n", ms, after.order.size());
}

int refused(const char* what, const base::Refusal& refusal) {
    std::printf("%s: %s: %s\n", what, refusal.field.c_str(), refusal.reason.c_str());
    return 1;
}

} // namespace

int main() {
    std::ifstream in(TREADLE_SOURCE_DIR "/assets/demo/demo-inch.json", std::ios::binary);
    std::ostringstream bytes;
    bytes << in.rdbuf();
    const auto demo = archive::read_file(bytes.str());
    if (!demo)
        return refused("demo job", demo.refusal());
    const auto catalog = archive::read_catalog();
    if (!catalog)
        return refused("catalogue", catalog.refusal());

    std::printf("operations   parts  plan ms  us/operation  read ms  JSON ms\n");
    for (const std::size_t operations : {100u, 1000u, 10000u}) {
        const job::Job job = copies(demo->job, ~std::size_t{0}, operations);
        const std::string file = archive::write_file(job, demo->shop);
        plan::Plan plan;
        const double plan_ms =
            bench::best_ms(20, [&] { plan = plan::make_plan(job, demo->shop, *catalog); });
        // Larger than a file may be is refused at once: then there is no time to tell.
        const bool readable = archive::read_file(file).ok();
        const double read_ms = bench::best_ms(5, [&] { (void)archive::read_file(file); });
        std::string json;
        const double json_ms =
            bench::best_ms(5, [&] { json = sheet::plan_json(plan, job, demo->shop); });
        std::printf("%10zu %7zu %8.2f %13.3f ",
                    operations,
                    job.parts.size(),
                    plan_ms,
                    1000.0 * plan_ms / static_cast<double>(operations));
        if (readable)
            std::printf("%8.2f ", read_ms);
        else
            std::printf("       - ");
        std::printf("%8.2f\n", json_ms);
    }
    one_edit(demo->job, demo->shop, *catalog);
    return 0;
}
