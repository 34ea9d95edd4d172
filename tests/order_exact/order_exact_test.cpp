// The fewest set-ups of a job, found by a general solver that knows nothing of our search.
//
// The job is written as a whole-number programme: which group of work each visit is for, and in
// which visit each operation is done. cbc (Debian: coinor-cbc) finds the fewest visits; the plan
// must need exactly so many and say that it is proven. Large jobs, out of its reach, are held
// against somebody who goes round the shop, station by station.

#include "plan/fixture.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <map>
#include <random>
#include <sstream>
#include <string>
#include <tuple>

using namespace treadle;
using namespace treadle::test;

namespace {

/// Operations that must follow each other; which group each belongs to.
struct Work {
    int groups = 0;
    std::vector<int> station;                         ///< by group
    std::vector<std::vector<std::vector<int>>> parts; ///< part, stage, operation: its group
};

/// Read from the job itself: cut, notch, punch, then each bend by itself.
Work work_of(const plan::Plan& plan) {
    std::map<std::tuple<int, double, double, double>, int> known;
    Work work;
    for (const auto& part : plan.parts) {
        std::vector<std::vector<int>> stages(3);
        for (std::size_t i = 0; i < part->operations.size(); ++i) {
            const job::Operation& operation = part->part->operations[i];
            const plan::Tooling& tools = part->operations[i].tools;
            const int kind = std::holds_alternative<job::Cut>(operation)     ? 0
                             : std::holds_alternative<job::Notch>(operation) ? 1
                             : std::holds_alternative<job::Punch>(operation) ? 2
                                                                             : 3;
            const int group = known
                                  .try_emplace({kind,
                                                quantity::to_millimetres(tools.punch_size.size),
                                                quantity::to_millimetres(tools.opening),
                                                static_cast<double>(tools.attachment)},
                                               static_cast<int>(known.size()))
                                  .first->second;
            if (group == static_cast<int>(work.station.size()))
                work.station.push_back(tools.station);
            if (kind < 3)
                stages[static_cast<std::size_t>(kind)].push_back(group);
            else
                stages.push_back({group});
        }
        work.parts.push_back({});
        for (auto& stage : stages)
            if (!stage.empty())
                work.parts.back().push_back(std::move(stage));
    }
    work.groups = static_cast<int>(known.size());
    return work;
}

std::string name(const char* letter, std::size_t a, int b) {
    return letter + std::to_string(a) + "_" + std::to_string(b);
}

/// v_t_g: visit t is for group g. d_n_t: operation n is done in visit t.
std::string programme(const Work& work, int visits) {
    std::ostringstream lp;
    std::string binaries;
    lp << "Minimize\n count:";
    for (int t = 0; t < visits; ++t)
        for (int g = 0; g < work.groups; ++g) {
            lp << " + " << name("v", static_cast<std::size_t>(t), g);
            binaries += " " + name("v", static_cast<std::size_t>(t), g) + "\n";
        }
    lp << "\nSubject To\n";
    const auto visit = [&](int t, const char* sign) {
        for (int g = 0; g < work.groups; ++g)
            lp << sign << name("v", static_cast<std::size_t>(t), g);
    };
    for (int t = 0; t < visits; ++t) {
        visit(t, " + "); // one group a visit; idle visits stand at the end
        lp << " <= 1\n";
        if (t == 0)
            continue;
        visit(t - 1, " + ");
        visit(t, " - ");
        lp << " >= 0\n";
    }
    std::size_t next = 0;
    for (const auto& stages : work.parts) {
        std::vector<std::size_t> before;
        for (const auto& stage : stages) {
            std::vector<std::size_t> here;
            for (const int group : stage) {
                const std::size_t n = next++;
                here.push_back(n);
                for (int t = 0; t < visits; ++t) {
                    lp << " + " << name("d", n, t);
                    binaries += " " + name("d", n, t) + "\n";
                }
                lp << " = 1\n";
                for (int t = 0; t < visits; ++t)
                    lp << name("d", n, t) << " - " << name("v", static_cast<std::size_t>(t), group)
                       << " <= 0\n";
                for (const std::size_t earlier : before) // never done before what it waits for
                    for (int t = 0; t < visits; ++t) {
                        for (int u = 0; u <= t; ++u)
                            lp << " + " << name("d", earlier, u) << " - " << name("d", n, u);
                        lp << " >= 0\n";
                    }
            }
            before = here;
        }
    }
    lp << "Binaries\n" << binaries << "End\n";
    return lp.str();
}

/// The solver's least number of visits, -1 for none.
int solved(const std::string& text) {
    const std::string folder = TREADLE_WORK_DIR;
    const std::string problem = folder + "/order.lp";
    const std::string answer = folder + "/order.txt";
    std::ofstream(problem) << text;
    std::remove(answer.c_str());
    const std::string command =
        "cbc '" + problem + "' seconds 60 solve solution '" + answer + "' >/dev/null 2>&1";
    REQUIRE_MESSAGE(std::system(command.c_str()) == 0, "cbc is missing: tests/install native");
    std::ifstream in(answer);
    std::string word;
    std::string line;
    REQUIRE(std::getline(in, line));
    CAPTURE(line);
    if (line.rfind("Optimal", 0) != 0)
        return -1;
    std::istringstream words(line);
    double value = -1.0;
    while (words >> word)
        if (word == "value")
            words >> value;
    return static_cast<int>(value + 0.5);
}

/// Up to four parts of one metal; bends over two or three V openings in any sequence.
job::Job random_job(std::mt19937& random) {
    job::Job job;
    const auto parts = 2 + random() % 3;
    for (std::size_t p = 0; p < parts; ++p) {
        job::Part part = plate(inches(0.25), inches(4.0), Length{});
        part.id = part.mark = "P" + std::to_string(p);
        const auto bends = 1 + random() % 4;
        part.legs.assign(bends + 1, inches(9.0));
        for (std::size_t b = 0; b < bends; ++b) {
            job::Bend bend;
            bend.angle = degrees(20.0); // shallow: no leg comes near a tool
            bend.radius = inches(0.4 + 0.12 * static_cast<double>(random() % 3));
            part.operations.emplace_back(bend);
        }
        if (random() % 2 == 0)
            part.operations.emplace_back(
                one_hole(inches(random() % 2 == 0 ? 0.8125 : 1.0625), inches(3.0), inches(2.0)));
        if (random() % 2 == 0)
            part.operations.emplace_back(job::Cut{});
        job.parts.push_back(std::make_shared<const job::Part>(part));
    }
    return job;
}

/// Without the brake's outline no order of bends is computed: they stand as they are drawn.
equipment::Shop bending_shop() {
    equipment::Shop s = test::shop();
    s.crib.vees = {{inches(2.5), inches(10.0), 1},
                   {inches(3.25), inches(10.0), 1},
                   {inches(4.0), inches(10.0), 1}};
    return s;
}

} // namespace

TEST_CASE("a hundred random jobs need as many set-ups as a general solver finds") {
    std::mt19937 random(20261125);
    int more_than_groups = 0;
    for (int round = 0; round < 100; ++round) {
        CAPTURE(round);
        const Bench bench;
        const plan::Plan plan = plan::make_plan(random_job(random), bending_shop(), bench.catalog);
        REQUIRE(plan.outcome <= plan::Outcome::fits_up_to);
        const Work work = work_of(plan);
        const int ours = static_cast<int>(plan.order.size());
        CHECK(plan.order_proven);
        CHECK(plan.least_set_ups == ours);
        CHECK(solved(programme(work, ours)) == ours);
        more_than_groups += ours > work.groups ? 1 : 0;
    }
    // Jobs whose every group is set up once would show nothing.
    CHECK(more_than_groups >= 30);
    MESSAGE(more_than_groups, " of 100 jobs need a group twice");
}

namespace {

/// Hundreds of parts: cut, holes of up to six sizes, and bends over three V openings.
job::Job large_job(std::mt19937& random, std::size_t parts) {
    job::Job job;
    for (std::size_t p = 0; p < parts; ++p) {
        job::Part part = plate(inches(0.25), inches(4.0), inches(12.0));
        part.id = part.mark = "P" + std::to_string(p);
        const auto bends = random() % 5;
        if (bends > 0) {
            part.length = Length{};
            part.legs.assign(bends + 1, inches(9.0));
        }
        for (std::size_t b = 0; b < bends; ++b) {
            job::Bend bend;
            bend.angle = degrees(20.0);
            bend.radius = inches(0.4 + 0.12 * static_cast<double>(random() % 3));
            part.operations.emplace_back(bend);
        }
        for (auto holes = random() % 3; holes > 0; --holes)
            part.operations.emplace_back(
                one_hole(inches(0.4375 + 0.125 * static_cast<double>(random() % 6)),
                         inches(2.0 * static_cast<double>(holes)),
                         inches(2.0)));
        if (part.operations.empty() || random() % 2 == 0)
            part.operations.emplace_back(job::Cut{});
        job.parts.push_back(std::make_shared<const job::Part>(part));
    }
    return job;
}

/// Set-ups of somebody who does at each station all that is ready there, then goes to the next.
std::size_t station_by_station(const Work& work) {
    std::vector<std::vector<std::vector<int>>> left = work.parts;
    std::size_t set_ups = 0;
    std::size_t parts = left.size();
    const int stations = 1 + *std::max_element(work.station.begin(), work.station.end());
    for (int at = 0; parts > 0; at = (at + 1) % stations)
        for (bool any = true; any;) {
            any = false;
            for (int group = 0; group < work.groups; ++group) {
                bool did = false;
                if (work.station[static_cast<std::size_t>(group)] != at)
                    continue;
                for (auto& stages : left)
                    while (!stages.empty() && std::erase(stages.front(), group) > 0) {
                        did = true;
                        if (!stages.front().empty())
                            break;
                        stages.erase(stages.begin());
                        if (stages.empty())
                            --parts;
                    }
                set_ups += did ? 1 : 0;
                any = any || did;
            }
        }
    return set_ups;
}

} // namespace

TEST_CASE("fifty random jobs of hundreds of parts: never more set-ups than station by station") {
    std::mt19937 random(20261126);
    int fewer = 0;
    for (int round = 0; round < 50; ++round) {
        CAPTURE(round);
        const Bench bench;
        const plan::Plan plan =
            plan::make_plan(large_job(random, 100 + random() % 300), bending_shop(), bench.catalog);
        REQUIRE(plan.outcome <= plan::Outcome::fits_up_to);
        const Work work = work_of(plan);
        const std::size_t round_the_shop = station_by_station(work);
        CHECK(plan.order.size() <= round_the_shop);
        CHECK(plan.least_set_ups <= static_cast<int>(plan.order.size()));
        fewer += plan.order.size() < round_the_shop ? 1 : 0;
    }
    CHECK(fewer > 0);
    MESSAGE(fewer, " of 50 jobs need fewer");
}
