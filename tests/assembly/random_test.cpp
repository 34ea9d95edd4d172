// A thousand layouts of each kind with a fixed seed: every gap under its limit, sums that close,
// and parts that a shop with the tools can judge. Covers kind.cpp, kinds.cpp and pieces.cpp.

#include "plan/plan.h"

#include <cmath>
#include <set>
#include <string_view>

#include "assembly/ground.h"
#include "assembly/random_values.h"

using namespace treadle;

namespace {

constexpr int k_runs = 1000;
constexpr std::uint64_t k_seed = 20260417;

constexpr UnitSystem k_systems[] = {UnitSystem::inch, UnitSystem::metric};

/// A demo shop with the ratings filled in that it lacks on purpose (raked bars, a V against a
/// standing leg), so that what is left unsaid is ours, and a job that is empty.
struct Bench {
    equipment::Shop shop;
    job::Job job;

    explicit Bench(UnitSystem units) : shop(test::demo(units).shop) {
        for (equipment::Station& station : shop.machine.stations)
            if (!station.largest_mitre)
                station.largest_mitre = degrees(45.0);
        for (equipment::Attachment& attachment : shop.machine.attachments)
            if (!attachment.flange_clearance)
                attachment.flange_clearance = inches(3.0 / 8.0);
        job.style = {units, 16};
    }
};

/// Whether the crib has a saddle die for this pipe on that run; a die that nobody owns has no
/// limit.
bool owns_saddle(const Bench& bench, const job::Part& part, const job::Operation& operation) {
    const auto* saddle = std::get_if<job::Saddle>(&operation);
    if (saddle == nullptr)
        return true;
    for (const equipment::SaddleDie& die : bench.shop.crib.saddle_dies)
        if (std::abs(to_inches(die.branch_diameter - part.section.width)) < 0.02 &&
            std::abs(to_inches(die.run_diameter - saddle->run_diameter)) < 0.02)
            return true;
    return false;
}

/// Every operation that the shop has the tool for is answered, with yes or with no.
void check_planned(const Bench& bench, const assembly::RolePart& made, const std::string& mark) {
    job::Part part = made.part;
    part.id = "p1";
    const auto ref = std::make_shared<const job::Part>(part);
    const plan::PartPlan plan = plan::plan_part(ref, bench.job, bench.shop, test::catalog());
    CAPTURE(mark);
    CAPTURE(made.role);
    if (plan.problem)
        FAIL_CHECK(plan.problem->field << ": " << plan.problem->reason);
    for (std::size_t i = 0; i < plan.operations.size(); ++i) {
        const plan::OperationPlan& operation = plan.operations[i];
        if (operation.outcome != plan::Outcome::cannot_be_said ||
            !owns_saddle(bench, part, part.operations[i]))
            continue;
        std::string missing;
        for (const plan::Check& check : operation.checks)
            missing += check.missing + " ";
        FAIL_CHECK("operation " << i << " cannot be said: " << missing);
    }
}

/// n w + (n + 1) g = L for each side, from the figures as they are shown.
void check_sums(const assembly::Made& made) {
    std::vector<double> clear;
    std::vector<double> gap;
    std::vector<double> count;
    for (const assembly::Figure& figure : made.figures) {
        const auto begins = [&](std::string_view words) {
            return figure.words.rfind(words, 0) == 0;
        };
        if (begins("clear between posts, level") || begins("clear inside the frame"))
            clear.push_back(to_millimetres(std::get<Length>(figure.value)));
        if (begins("clear gap"))
            gap.push_back(to_millimetres(std::get<Length>(figure.value)));
        if (begins("pickets in a"))
            count.push_back(std::get<quantity::Number>(figure.value).value);
    }
    REQUIRE(clear.size() == gap.size());
    REQUIRE(clear.size() == count.size());
    REQUIRE(!clear.empty());
    double width = 0.0;
    for (const assembly::RolePart& part : made.parts)
        if (part.role == "picket")
            width = to_millimetres(part.part.section.width);
    for (std::size_t i = 0; i < clear.size(); ++i)
        CHECK(count[i] * width + (count[i] + 1.0) * gap[i] ==
              doctest::Approx(clear[i]).epsilon(1e-9));
}

bool has_pickets(std::string_view kind) {
    return kind == "guard-run" || kind == "guard-stair" || kind == "fence-run" || kind == "gate";
}

void check_one(const Bench& bench,
               const char* kind,
               const assembly::Values& values,
               const assembly::Ground& ground) {
    const auto made = assembly::make(kind, "L1", values, ground);
    if (!made.ok()) {
        FAIL_CHECK(made.refusal().field << ": " << made.refusal().reason);
        return;
    }
    for (const assembly::RuleLine& line : made->rules)
        if (line.sphere && line.words.rfind("opening between pickets", 0) == 0) {
            CHECK(line.value < line.limit);
            CHECK(line.held == assembly::Held::meets);
        }
    if (has_pickets(kind))
        check_sums(*made);
    std::set<std::string> roles;
    for (const assembly::RolePart& part : made->parts) {
        CHECK(roles.insert(part.role).second);
        check_planned(bench, part, kind);
    }
}

} // namespace

TEST_CASE("a thousand of each kind, inch and metric: gaps under the limit, sums exact, every part "
          "answered") {
    std::set<std::string_view> kinds;
    for (const UnitSystem units : k_systems) {
        const Bench bench(units);
        for (const test::RandomKind& random : test::random_kinds()) {
            kinds.insert(random.kind);
            test::Dice dice(k_seed, units);
            for (int run = 0; run < k_runs; ++run) {
                const assembly::Values values = random.values(dice);
                CAPTURE(random.kind);
                CAPTURE(run);
                check_one(bench, random.kind, values, test::ground(units));
            }
        }
    }
    for (const assembly::Kind* kind : assembly::kinds())
        CHECK(kinds.count(kind->id) == 1);
}

TEST_CASE("the holes of a punched rail stand where its pickets are, the gaps under the limit") {
    int rails = 0;
    for (const UnitSystem units : k_systems) {
        test::Dice dice(k_seed, units);
        for (int run = 0; run < k_runs; ++run) {
            assembly::Values values = test::random_kinds()[0].values(dice);
            test::set(values, "joint", "punched");
            const auto made = test::made("guard-run", values, units);
            const double limit =
                to_inches(test::rule(made, test::rule(made, made.rules[0].rule).rule).limit);
            const double width = to_inches(test::part(made, "picket").section.width);
            for (const char* role : {"top-rail", "bottom-rail"}) {
                const job::Part& rail = test::part(made, role);
                double before = -width / 2.0;
                for (const job::Operation& operation : rail.operations)
                    if (const auto* punch = std::get_if<job::Punch>(&operation))
                        for (const job::HoleCentre& at : job::centres(punch->at)) {
                            CHECK(to_inches(at.x) - width - before < limit);
                            CHECK(to_inches(at.x) - width - before > 0.0);
                            before = to_inches(at.x);
                        }
                CHECK(to_inches(rail.length) - width / 2.0 - before < limit);
                ++rails;
            }
        }
    }
    CHECK(rails == 2 * 2 * k_runs);
}

TEST_CASE("the same values make the same parts, whatever was made before") {
    test::Dice dice(k_seed);
    for (const test::RandomKind& random : test::random_kinds()) {
        const assembly::Values values = random.values(dice);
        const auto first = test::made(random.kind, values);
        const auto second = test::made(random.kind, values);
        REQUIRE(first.parts.size() == second.parts.size());
        for (std::size_t i = 0; i < first.parts.size(); ++i) {
            CHECK(first.parts[i].role == second.parts[i].role);
            CHECK(first.parts[i].part.length == second.parts[i].part.length);
            CHECK(first.parts[i].part.mark.rfind("L1-", 0) == 0);
        }
        CHECK_FALSE(first.elevation.description.empty());
        CHECK_FALSE(first.elevation.outlines.empty());
        CHECK_FALSE(first.cautions.empty());
    }
}
