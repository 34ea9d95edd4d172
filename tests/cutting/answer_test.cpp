// Lists and answers as text: what is written is read back, anything else is refused.

#include <doctest/doctest.h>

#include "cutting/answer.h"
#include "cutting/lists.h"

using namespace treadle;
using namespace treadle::test;
using cutting::CutAnswer;

namespace {

/// Two kinds of bar, one of them limited, a kerf and an end to hold.
CutList several() {
    CutProblem problem = shop_list(5, true, 8, 30);
    problem.stock.push_back({2880, 1, 3});
    problem.least_end = 16;
    return list_of(problem);
}

bool refused(const CutList& list, const std::string& text) {
    const auto answer = cutting::read_answer_text(list, text);
    CHECK((answer.ok() || answer.refusal().field == "answer"));
    return !answer.ok();
}

} // namespace

TEST_CASE("a list is the same list after its text") {
    for (const CutList& list : {list_of(shop_list(3, false, 20, 60)), several()}) {
        const auto read = cutting::read_list_text(cutting::list_text(list));
        REQUIRE(read.ok());
        CHECK(read->length == list.length);
        CHECK(read->demand == list.demand);
        CHECK(read->ends == list.ends);
        CHECK(read->unit == list.unit);
        CHECK(read->scale == list.scale);
        CHECK(read->kerf == list.kerf);
        REQUIRE(read->stock.size() == list.stock.size());
        for (std::size_t k = 0; k < list.stock.size(); ++k) {
            CHECK(read->stock[k].open == list.stock[k].open);
            CHECK(read->stock[k].full == list.stock[k].full);
            CHECK(read->stock[k].closed == list.stock[k].closed);
            CHECK(read->stock[k].cost == list.stock[k].cost);
            CHECK(read->stock[k].available == list.stock[k].available);
        }
    }
}

TEST_CASE("an answer is the same answer after its text") {
    const CutList list = several();
    const CutAnswer answer = cutting::solve(list, k_second / 10);
    REQUIRE(answer.has_plan);
    const auto read = cutting::read_answer_text(list, cutting::answer_text(answer));
    REQUIRE(read.ok());
    CHECK(read->cost == answer.cost);
    CHECK(read->bound == answer.bound);
    CHECK(read->done == answer.done);
    CHECK(read->work == answer.work);
    CHECK(read->proven() == answer.proven());
    REQUIRE(read->bars.size() == answer.bars.size());
    for (std::size_t b = 0; b < answer.bars.size(); ++b) {
        CHECK(read->bars[b].times == answer.bars[b].times);
        CHECK(read->bars[b].pattern.stock == answer.bars[b].pattern.stock);
        CHECK(read->bars[b].pattern.counts == answer.bars[b].pattern.counts);
    }
}

TEST_CASE("an answer without a plan is one too") {
    const CutList list = several();
    const auto read = cutting::read_answer_text(list, cutting::answer_text({}));
    REQUIRE(read.ok());
    CHECK(!read->has_plan);
    CHECK(!read->proven());
}

TEST_CASE("an answer that was changed is no plan") {
    const CutList list = several();
    const CutAnswer answer = cutting::solve(list, k_second / 10);
    const auto changed = [&](auto change) {
        CutAnswer other = answer;
        change(other);
        return cutting::answer_text(other);
    };
    CHECK(!refused(list, cutting::answer_text(answer)));
    CHECK(refused(list, changed([](CutAnswer& a) { a.bars.pop_back(); })));
    CHECK(refused(list, changed([](CutAnswer& a) { ++a.bars.front().times; })));
    CHECK(refused(list, changed([](CutAnswer& a) { a.bars.push_back(a.bars.front()); })));
    CHECK(refused(list, changed([](CutAnswer& a) { a.bound = a.cost + 1; })));
    CHECK(refused(list, changed([](CutAnswer& a) { a.has_plan = false; })));
    CHECK(refused(list, changed([](CutAnswer& a) { a.bars.clear(); })));
    CHECK(refused(list, changed([](CutAnswer& a) { a.bars.front().pattern.stock = 2; })));
    CHECK(refused(list, changed([](CutAnswer& a) {
                      ++*std::find_if(a.bars.front().pattern.counts.begin(),
                                      a.bars.front().pattern.counts.end(),
                                      [](int count) { return count > 0; });
                  })));
    // The answer to another list.
    CHECK(refused(list_of(shop_list(6, true, 8, 30)), cutting::answer_text(answer)));
}

TEST_CASE("text that is cut off or not numbers is refused") {
    const CutList list = several();
    const std::string answer = cutting::answer_text(cutting::solve(list, k_second / 10));
    const std::string problem = cutting::list_text(list);
    for (std::size_t end = 0; end < answer.size(); ++end)
        CHECK(refused(list, answer.substr(0, end)));
    for (std::size_t end = 0; end + 1 < problem.size(); ++end) {
        const auto read = cutting::read_list_text(std::string_view(problem).substr(0, end));
        CHECK(!read.ok());
    }
    for (const char* text : {"x", "-1", "1 x", "99999999999999999999", "1 1 1 1 1", "1e3"}) {
        CHECK(refused(list, text));
        const auto read = cutting::read_list_text(text);
        REQUIRE(!read.ok());
        CHECK(read.refusal().field == "list");
    }
    CHECK(refused(list, answer + " 1"));
    CHECK(!cutting::read_list_text(problem + " 1").ok());
}

TEST_CASE("a list no cut_list makes is refused") {
    // pieces: one of 50, asked for once; bars: open, full, closed, cost, available; then ends,
    // unit, scale, kerf.
    CHECK(cutting::read_list_text("1 50 1 1 100 0 100 1 2147483647 0 1 1 0").ok());
    CHECK(!cutting::read_list_text("1 0 1 1 100 0 100 1 2147483647 0 1 1 0").ok());
    CHECK(!cutting::read_list_text("1 50 0 1 100 0 100 1 2147483647 0 1 1 0").ok());
    CHECK(!cutting::read_list_text("2 50 1 50 1 1 100 0 100 1 2147483647 0 1 1 0").ok());
    CHECK(
        !cutting::read_list_text("1 50 1 1 101 0 100 1 2147483647 0 1 1 0").ok()); // open > closed
    CHECK(!cutting::read_list_text("1 50 1 1 100 0 100 0 2147483647 0 1 1 0").ok()); // free, no end
    CHECK(!cutting::read_list_text("1 50 1 1 100 0 100 3 2147483647 0 2 1 0").ok()); // 3 not of 2
    CHECK(!cutting::read_list_text("1 50 1 1 40 0 40 1 2147483647 0 1 1 0").ok());   // too long
    CHECK(!cutting::read_list_text("1 50 1 1 0 0 0 1 2147483647 0 1 1 0").ok());     // no bar
    CHECK(!cutting::read_list_text("1 50 1 1 100 0 100 1 0 0 1 1 0").ok());          // none left
}
