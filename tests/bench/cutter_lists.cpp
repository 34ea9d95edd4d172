// Lists of pieces with the answers that the native search gives, for the modules of the page to be
// held to: a line each of name, milliseconds (best of three), list and answer, with tabs between.
//
//   cutter_lists FILE WORK     the lists of a file, each with so much work at most
//   cutter_lists made COUNT    made-up ones, always the same

#include "archive/cut_text.h"

#include <algorithm>
#include <chrono>
#include <cstdint>
#include <cstdlib>
#include <fstream>
#include <iostream>
#include <sstream>
#include <string>

#include "cutting/answer.h"
#include "cutting/problem.h"

namespace {

using namespace treadle;

void answer(const std::string& name, const cutting::CutProblem& problem, long long work) {
    const auto list = cutting::cut_list(problem);
    if (!list) {
        std::cerr << name << ": " << list.refusal().field << ": " << list.refusal().reason << '\n';
        return;
    }
    cutting::CutAnswer found;
    double best_ms = 0.0;
    for (int time = 0; time < 3; ++time) {
        const auto from = std::chrono::steady_clock::now();
        found = cutting::solve(*list, work);
        const std::chrono::duration<double, std::milli> took =
            std::chrono::steady_clock::now() - from;
        best_ms = time == 0 ? took.count() : std::min(best_ms, took.count());
    }
    std::cout << name << '\t' << best_ms << '\t' << cutting::list_text(*list) << '\t'
              << cutting::answer_text(found) << '\n';
}

/// The same numbers on every machine.
class Numbers {
public:
    std::int64_t next(std::int64_t least, std::int64_t most) {
        state_ = state_ * 6364136223846793005ULL + 1442695040888963407ULL;
        const auto span = static_cast<std::uint64_t>(most - least + 1);
        return least + static_cast<std::int64_t>((state_ >> 33) % span);
    }

private:
    std::uint64_t state_ = 20250101;
};

/// A shop's list: few lengths in steps of 1/16, bars of 20 ft, at times drops, kerf, held ends.
cutting::CutProblem made(Numbers& numbers) {
    cutting::CutProblem problem;
    problem.kerf = numbers.next(0, 2);
    problem.least_end = numbers.next(0, 3) == 0 ? numbers.next(1, 40) : 0;
    problem.stock.push_back({3840, 1, std::nullopt});
    if (numbers.next(0, 1) == 0)
        problem.stock.push_back({numbers.next(600, 2400), 0, numbers.next(1, 3)});
    const std::int64_t lengths = numbers.next(1, 24);
    for (std::int64_t i = 0; i < lengths; ++i)
        problem.pieces.push_back({numbers.next(60, 1900), numbers.next(1, 12)});
    return problem;
}

} // namespace

int main(int count, char** words) {
    constexpr long long k_work_of_made = 300'000'000;
    if (count != 3) {
        std::cerr << "cutter_lists FILE WORK | cutter_lists made COUNT\n";
        return 2;
    }
    const std::string first = words[1];
    if (first == "made") {
        Numbers numbers;
        for (int i = 0; i < std::atoi(words[2]); ++i)
            answer("made_" + std::to_string(i), made(numbers), k_work_of_made);
        return 0;
    }
    std::ifstream file(first, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    const auto lists = archive::read_cut_text(text.str());
    if (!lists) {
        std::cerr << lists.refusal().field << ": " << lists.refusal().reason << '\n';
        return 2;
    }
    for (const archive::NamedCutProblem& list : *lists)
        answer(list.name, list.problem, std::atoll(words[2]));
    return 0;
}
