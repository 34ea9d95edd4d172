// The least cost of small cases with everything in them: several lengths at prices of their own,
// few of some, drops for nothing, kerfs, ends that must be held.
//
// Every content of every bar is listed here by trying all, in the problem's own unit and by the
// words of the rule, and cbc (Debian: coinor-cbc) picks the cheapest that make every piece. Nothing
// of the search's own reductions, patterns or bounds is used.

#include <doctest/doctest.h>

#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <sstream>
#include <string>

#include "cutting/lists.h"

using namespace treadle;
using namespace treadle::test;

namespace {

CutProblem random_problem(std::mt19937& random) {
    const auto below = [&](std::uint32_t n) { return static_cast<std::int64_t>(random() % n); };
    CutProblem problem;
    const auto lengths = 1 + below(3);
    for (std::int64_t k = 0; k < lengths; ++k) {
        CutStock stock{120 + 24 * below(8), 0, std::nullopt};
        stock.cost = stock.length + below(2) * below(30); // by length, or dearer
        if (k > 0 && below(2) == 0)
            stock.available = 1 + below(3);
        problem.stock.push_back(stock);
    }
    for (auto drops = below(4); drops > 0; --drops)
        problem.stock.push_back({30 + below(80), 0, 1});
    problem.kerf = below(2) * (1 + below(3));
    problem.least_end = below(3) == 0 ? 4 + below(8) : 0;
    std::int64_t shortest = std::max<std::int64_t>(problem.least_end, 12);
    const auto types = 2 + below(4);
    for (std::int64_t i = 0; i < types; ++i)
        problem.pieces.push_back({shortest + below(70), 1 + below(3)});
    return problem;
}

bool can_be_cut(const CutProblem& problem,
                const CutStock& stock,
                std::int64_t metal,
                std::int64_t n) {
    const std::int64_t left = stock.length - metal;
    return (left >= (n - 1) * problem.kerf && left <= n * problem.kerf) || // no end
           left - n * problem.kerf >= problem.least_end;
}

/// The whole-number programme: x_k_n bars of kind k with the n-th content. Empty when no content
/// of any bar holds some piece.
std::string programme(const CutProblem& problem) {
    std::ostringstream cost;
    std::vector<std::ostringstream> made(problem.pieces.size());
    std::vector<std::ostringstream> used(problem.stock.size());
    std::ostringstream names;
    for (std::size_t k = 0; k < problem.stock.size(); ++k) {
        const CutStock& stock = problem.stock[k];
        std::vector<std::int64_t> counts(problem.pieces.size(), 0);
        int next = 0;
        const auto walk = [&](const auto& self, std::size_t i, std::int64_t metal, std::int64_t n) {
            if (metal > stock.length)
                return;
            if (i == problem.pieces.size()) {
                if (n == 0 || !can_be_cut(problem, stock, metal, n))
                    return;
                const std::string name = "x" + std::to_string(k) + "_" + std::to_string(next++);
                cost << " + " << stock.cost << " " << name << "\n"; // cbc reads no long lines
                used[k] << " + " << name << "\n";
                names << " " << name << "\n";
                for (std::size_t p = 0; p < counts.size(); ++p)
                    if (counts[p] > 0)
                        made[p] << " + " << counts[p] << " " << name << "\n";
                return;
            }
            for (std::int64_t c = 0; c <= problem.pieces[i].count; ++c) {
                counts[i] = c;
                self(self, i + 1, metal + c * problem.pieces[i].length, n + c);
            }
            counts[i] = 0;
        };
        walk(walk, 0, 0, 0);
    }
    for (const std::ostringstream& piece : made)
        if (piece.str().empty())
            return "";
    std::ostringstream lp;
    lp << "Minimize\n cost:" << cost.str() << "\nSubject To\n";
    for (std::size_t p = 0; p < problem.pieces.size(); ++p)
        lp << made[p].str() << " = " << problem.pieces[p].count << "\n";
    for (std::size_t k = 0; k < problem.stock.size(); ++k)
        if (problem.stock[k].available && !used[k].str().empty())
            lp << used[k].str() << " <= " << *problem.stock[k].available << "\n";
    lp << "General\n" << names.str() << "End\n";
    return lp.str();
}

/// The solver's least cost; -1 when there is no plan.
long long solved(const std::string& text) {
    if (text.empty())
        return -1;
    const std::string folder = TREADLE_WORK_DIR;
    const std::string problem = folder + "/cutting.lp";
    const std::string answer = folder + "/cutting.txt";
    std::ofstream(problem) << text;
    std::remove(answer.c_str());
    const std::string command = "cbc '" + problem +
                                "' ratio 0 allow 0 seconds 60 solve solution '" + answer +
                                "' >/dev/null 2>&1";
    REQUIRE_MESSAGE(std::system(command.c_str()) == 0, "cbc is missing: tests/install native");
    std::ifstream in(answer);
    std::string line;
    REQUIRE(std::getline(in, line));
    CAPTURE(line);
    if (line.rfind("Infeasible", 0) == 0 || line.rfind("Integer infeasible", 0) == 0)
        return -1;
    REQUIRE(line.rfind("Optimal", 0) == 0);
    std::istringstream words(line);
    std::string word;
    double value = -1.0;
    while (words >> word)
        if (word == "value")
            words >> value;
    return static_cast<long long>(value + 0.5);
}

} // namespace

TEST_CASE("two hundred small cases cost what a general solver finds") {
    std::mt19937 random(20261126);
    int several = 0;
    int with_drops = 0;
    int with_ends = 0;
    for (int done = 0; done < 200;) {
        const CutProblem problem = random_problem(random);
        auto list = cutting::cut_list(problem);
        if (!list.ok())
            continue; // a piece longer than every bar: no case
        CAPTURE(done);
        Search search(std::move(list).value());
        search.run(k_second);
        const long long least = solved(programme(problem));
        if (least < 0) {
            CHECK(!search.has_plan());
            ++done;
            continue;
        }
        REQUIRE(search.has_plan());
        CHECK(fault_of(problem, search) == "");
        CHECK(search.cost() == least);
        CHECK(search.bound() <= least);
        CHECK(search.proven());
        several += problem.stock.size() > 1 ? 1 : 0;
        with_drops += problem.stock.back().cost == 0 ? 1 : 0;
        with_ends += problem.least_end > 0 ? 1 : 0;
        ++done;
    }
    CHECK(several > 50);
    CHECK(with_drops > 50);
    CHECK(with_ends > 30);
}
