// How long a plan takes, and whether the time grows with the number of parts or faster.
//
// The demo job is copied until it has 100, 1,000 and 10,000 parts, each a part of its own (nothing
// is shared, so nothing can be planned once for many). Best of five, so that a busy machine counts
// less. Prints; never fails on time.

#include "plan/plan.h"

#include "archive/archive.h"
#include "sheet/worksheet.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <fstream>
#include <memory>
#include <sstream>
#include <string>

using namespace treadle;

namespace {

template <class Work>
double best_ms(Work work) {
    double best = 0.0;
    for (int i = 0; i < 5; ++i) {
        const auto start = std::chrono::steady_clock::now();
        work();
        const std::chrono::duration<double, std::milli> took =
            std::chrono::steady_clock::now() - start;
        best = i == 0 ? took.count() : std::min(best, took.count());
    }
    return best;
}

job::Job copies(const job::Job& job, std::size_t parts) {
    job::Job many = job;
    many.parts.clear();
    for (std::size_t i = 0; i < parts; ++i) {
        job::Part part = *job.parts[i % job.parts.size()];
        part.id = "b" + std::to_string(i);
        many.parts.push_back(std::make_shared<const job::Part>(std::move(part)));
    }
    return many;
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

    std::printf("   parts  plan ms  ms/part  read ms  JSON ms\n");
    for (const std::size_t parts : {100u, 1000u, 10000u}) {
        const job::Job job = copies(demo->job, parts);
        const std::string file = archive::write_file(job, demo->shop);
        plan::Plan plan;
        const double plan_ms = best_ms([&] { plan = plan::make_plan(job, demo->shop, *catalog); });
        // Larger than a file may be is refused at once: then there is no time to tell.
        const bool readable = archive::read_file(file).ok();
        const double read_ms = best_ms([&] { (void)archive::read_file(file); });
        std::string json;
        const double json_ms = best_ms([&] { json = sheet::plan_json(plan, job, demo->shop); });
        std::printf("%8zu %8.2f %8.5f ", parts, plan_ms, plan_ms / static_cast<double>(parts));
        if (readable)
            std::printf("%8.2f ", read_ms);
        else
            std::printf("       - ");
        std::printf("%8.2f\n", json_ms);
    }
    return 0;
}
