// How long the search takes in a job of 1,000 parts: making its lines, and one letter more.
//
// The demo job is copied. Best of many rounds, so that a busy machine counts less. Prints; never
// fails on time.

#include "archive/archive.h"

#include "assets/embedded.h"
#include "ui/views/find_index.h"
#include "ui/views/reading.h"

#include <algorithm>
#include <cstdio>
#include <memory>
#include <string>

#include "best_ms.h"

using namespace treadle;

namespace {

job::Job copies(const job::Job& job, std::size_t parts) {
    job::Job many = job;
    many.parts.clear();
    for (std::size_t i = 0; i < parts; ++i) {
        job::Part part = *job.parts[i % job.parts.size()];
        part.id = "b" + std::to_string(i);
        part.mark += "-" + std::to_string(i);
        many.parts.push_back(std::make_shared<const job::Part>(std::move(part)));
    }
    return many;
}

} // namespace

int main() {
    archive::File file =
        archive::read_file(assets::embedded("demo/demo-inch.json").value_or("")).value();
    file.job = copies(file.job, 1000);
    edit::Session session(
        {std::move(file.job), std::make_shared<const equipment::Shop>(std::move(file.shop))},
        std::make_shared<const job::Catalog>(archive::read_catalog().value()));
    views::Readings readings;
    readings.refresh(session);
    std::size_t operations = 0;
    for (const job::PartRef& part : session.job().parts)
        operations += part->operations.size();
    std::printf("%zu parts, %zu operations\n", session.job().parts.size(), operations);
    std::printf("all lines made: %.2f ms\n", bench::best_ms(10, [&] {
                    views::FindIndex index;
                    index.refresh(session, readings.parts());
                }));
    views::FindIndex index;
    index.refresh(session, readings.parts());
    job::Part part = *session.job().parts[500];
    double best = 1e9;
    for (int i = 0; i < 10; ++i) {
        ++part.count;
        if (session.apply(edit::ReplacePart{part}))
            std::printf("refused\n");
        readings.refresh(session);
        best = std::min(best, bench::best_ms(1, [&] { index.refresh(session, readings.parts()); }));
    }
    std::printf("lines after one edit: %.3f ms\n", best);
    for (const char* typed : {"p",
                              "pu",
                              "punch",
                              "punch 13/16",
                              "t",
                              "tonnage",
                              "throat",
                              "bend deduction",
                              "hb1-500",
                              "qqq"})
        std::printf("%-16s %.2f ms, %zu groups\n",
                    typed,
                    bench::best_ms(20, [&] { (void)index.find(typed, plan::k_none); }),
                    index.find(typed, plan::k_none).size());
    return 0;
}
