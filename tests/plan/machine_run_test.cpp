#include "plan/fixture.h"
#include "plan/machine_run.h"

#include <utility>

using namespace treadle;
using plan::MachineRun;
using plan::MachineStep;
using plan::MachineWork;
using plan::Tick;

namespace {

MachineStep step(const char* place, MachineWork kind, int ticks, int pieces, int before = 0) {
    MachineStep made;
    made.kind = kind;
    made.key = {place, "sum"};
    made.part = kind == MachineWork::set_up ? plan::k_none : 0;
    made.pieces = pieces;
    made.made_before = before;
    for (int i = 0; i < ticks; ++i)
        made.ticks.push_back({i == 1 ? Tick::Kind::first_made : Tick::Kind::stop, {}, 0});
    return made;
}

plan::MachineSteps steps() {
    plan::MachineSteps list;
    list.steps = {step("set", MachineWork::set_up, 3, 0),
                  step("first", MachineWork::first_piece, 3, 1),
                  step("run", MachineWork::run, 0, 5, 1),
                  step("next", MachineWork::run, 1, 6)};
    return list;
}

} // namespace

TEST_CASE("lines are ticked one after the other, then pieces are counted, and all goes back") {
    MachineRun run = plan::resume(steps(), {});
    run.at = 3;
    CHECK(plan::next_tick(run, 3) == 0);
    REQUIRE(plan::add_one(run));
    CHECK(plan::next_tick(run, 3) == plan::k_none);
    CHECK(plan::pieces_done(run, 3) == 0);
    for (int i = 0; i < 6; ++i)
        REQUIRE(plan::add_one(run));
    CHECK(plan::is_complete(run, 3));
    CHECK_FALSE(plan::add_one(run));
    for (int i = 0; i < 7; ++i)
        REQUIRE(plan::take_back(run));
    CHECK_FALSE(plan::take_back(run));
    CHECK_FALSE(plan::is_begun(run, 3));
}

TEST_CASE("the first piece counts with the others at its place") {
    MachineRun run = plan::resume(steps(), {});
    run.at = 1;
    CHECK(plan::pieces_done(run, 1) == 0);
    REQUIRE(plan::add_one(run));
    CHECK(plan::pieces_done(run, 1) == 0);
    REQUIRE(plan::add_one(run)); // made
    CHECK(plan::pieces_done(run, 1) == 1);
    run.at = 2;
    CHECK(plan::pieces_done(run, 2) == 1);
    CHECK(plan::pieces_of(run.list.steps[2]) == 6);
    run.at = 1;
    REQUIRE(plan::take_back(run)); // not made after all
    CHECK(plan::pieces_done(run, 2) == 0);
}

TEST_CASE("next and back stop at the ends and lose nothing") {
    MachineRun run = plan::resume(steps(), {});
    CHECK_FALSE(plan::go_back(run));
    REQUIRE(plan::add_one(run));
    for (int i = 0; i < 3; ++i)
        REQUIRE(plan::go_next(run));
    CHECK_FALSE(plan::go_next(run));
    for (int i = 0; i < 3; ++i)
        REQUIRE(plan::go_back(run));
    CHECK(run.done[0].ticked == 1);
    CHECK(plan::open_steps(run).size() == 4);
}

TEST_CASE("a record brings place and counts back") {
    MachineRun run = plan::resume(steps(), {});
    run.at = 3;
    for (int i = 0; i < 4; ++i)
        REQUIRE(plan::add_one(run));
    job::Progress progress;
    plan::record(run, progress);
    const MachineRun again = plan::resume(steps(), progress);
    CHECK(again.at == 3);
    CHECK(again.done[3].ticked == 1);
    CHECK(again.done[3].pieces == 3);
}

TEST_CASE("a record of the work leaves the boxes of the worksheet as they are") {
    job::Progress progress;
    job::tick(progress, "hold/1", true);
    plan::record(plan::MachineRun{}, progress);
    CHECK(job::is_ticked(progress, "hold/1"));
}

TEST_CASE("another content of the same place counts from zero and is said, until it is begun") {
    MachineRun run = plan::resume(steps(), {});
    run.at = 3;
    REQUIRE(plan::add_one(run));
    job::Progress progress;
    plan::record(run, progress);
    plan::MachineSteps changed = steps();
    changed.steps[3].key.content = "other";
    MachineRun now = plan::resume(changed, progress);
    CHECK(plan::has_changed(now, 3));
    CHECK_FALSE(plan::is_begun(now, 3));
    plan::record(now, progress); // and it is still said after a reload
    now = plan::resume(changed, progress);
    CHECK(plan::has_changed(now, 3));
    REQUIRE(plan::add_one(now));
    CHECK_FALSE(plan::has_changed(now, 3));
    plan::record(now, progress);
    CHECK_FALSE(plan::has_changed(plan::resume(changed, progress), 3));
}

TEST_CASE("a step that is gone leaves the work at the first open one") {
    job::Progress progress;
    progress.at = "nowhere";
    progress.steps = {{"set", "sum", 3, 0}, {"gone", "sum", 1, 0}};
    const MachineRun run = plan::resume(steps(), progress);
    CHECK(run.at == 1);
}

TEST_CASE("fewer pieces than were counted are complete") {
    job::Progress progress;
    progress.steps = {{"next", "sum", 1, 60}};
    const MachineRun run = plan::resume(steps(), progress);
    CHECK(run.done[3].pieces == 6);
    CHECK(plan::is_complete(run, 3));
}

TEST_CASE("checking from the start goes through the set-up again and keeps the pieces") {
    MachineRun run = plan::resume(steps(), {});
    for (int i = 0; i < 3; ++i)
        REQUIRE(plan::add_one(run));
    run.at = 3;
    for (int i = 0; i < 3; ++i)
        REQUIRE(plan::add_one(run));
    plan::check_from_start(run);
    CHECK(run.at == 0);
    CHECK(run.done[0].ticked == 0);
    CHECK(run.done[3].ticked == 0);
    CHECK(run.done[3].pieces == 2);
    const auto progress = plan::set_up_progress(run, 0);
    CHECK(progress.steps == 4);
    CHECK(progress.complete == 0);
}

TEST_CASE("without steps nothing can be done, and nothing goes wrong") {
    MachineRun run = plan::resume({}, {});
    CHECK_FALSE(plan::add_one(run));
    CHECK_FALSE(plan::take_back(run));
    CHECK_FALSE(plan::go_next(run));
    CHECK_FALSE(plan::go_back(run));
    plan::check_from_start(run);
    job::Progress progress;
    plan::record(run, progress);
    CHECK(progress.steps.empty());
}
