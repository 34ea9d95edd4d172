// How long `treadle calc -` takes for 100,000 lines: every calculation in turn, with the examples
// of its own list. Prints; never fails on time. Built on request: ninja bench_calc_lines.

#include "cli/calc_lines.h"

#include "archive/archive.h"
#include "calc/answer_json.h"
#include "calc/valid_input.h"

#include <chrono>
#include <cstdio>
#include <string>
#include <vector>

using namespace treadle;

int main() {
    const auto catalog = archive::read_catalog();
    if (!catalog) {
        std::printf("catalogue: %s\n", catalog.refusal().reason.c_str());
        return 1;
    }
    const calc::Tables tables{catalog->grades, catalog->sections};
    std::vector<std::string> lines;
    for (const calc::Calculation* calculation : calc::all())
        for (const calc::InputSpec& spec : calculation->inputs)
            if (const auto in = test::valid_input(*calculation, spec.name, tables))
                lines.push_back(calc::request_json(calculation->name, calc::Input(*in)) + "\n");

    constexpr std::size_t k_lines = 100'000;
    std::string all;
    for (std::size_t i = 0; i < k_lines; ++i)
        all += lines[i * 7919 % lines.size()]; // 7919: a prime, so that kinds alternate
    for (int round = 0; round < 3; ++round) {
        cli::CalcLines answers(*catalog);
        const auto start = std::chrono::steady_clock::now();
        std::size_t bytes = 0;
        constexpr std::size_t k_piece = 64 * 1024;
        for (std::size_t at = 0; at < all.size(); at += k_piece)
            bytes += answers.take(std::string_view(all).substr(at, k_piece)).size();
        const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
        std::printf("%zu lines of %zu kinds: %.2f s, %.1f MB of answers\n",
                    k_lines,
                    lines.size(),
                    took.count(),
                    static_cast<double>(bytes) / 1e6);
    }
    return 0;
}
