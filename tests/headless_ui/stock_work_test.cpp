// web/stock_work: what is asked of the search beside the page, and what becomes of its answers.

#include "archive/archive.h"
#include "edit/session.h"

#include "assets/embedded.h"
#include "platform/headless/headless.h"

#include <doctest/doctest.h>

#include <memory>
#include <string>
#include <utility>

#include "cutting/answer.h"
#include "stock_work.h"

namespace {

using namespace treadle;
using State = views::StockSearch::State;

std::string cut_at_once(const std::string& list, long long work) {
    const auto read = cutting::read_list_text(list);
    return read ? cutting::answer_text(cutting::solve(*read, work)) : "";
}

edit::Session demo() {
    archive::File file =
        archive::read_file(assets::embedded("demo/demo-inch.json").value_or("")).value();
    return edit::Session(
        {std::move(file.job), std::make_shared<const equipment::Shop>(std::move(file.shop))},
        std::make_shared<const job::Catalog>(archive::read_catalog().value()));
}

/// One piece more of the first part that has a list of its own.
void add_a_piece(edit::Session& session, const views::StockBoard& board) {
    for (const plan::StockGroup& group : board.groups) {
        if (group.problem)
            continue;
        job::Part part = *session.job().parts[static_cast<std::size_t>(group.pieces.front().part)];
        ++part.count;
        REQUIRE(!session.apply(edit::ReplacePart{std::move(part)}));
        return;
    }
}

} // namespace

TEST_CASE("every section with bars is searched once, and comes to a plan") {
    platform::headless::HeadlessPorts ports;
    ports.cutter = cut_at_once;
    web::StockWork work(ports);
    const edit::Session session = demo();
    work.refresh(session);
    const views::StockBoard& board = work.board();
    std::size_t searched = 0;
    for (std::size_t i = 0; i < board.groups.size(); ++i) {
        const bool sound = !board.groups[i].problem;
        searched += sound ? 1 : 0;
        CHECK(board.plan.groups[i].has_plan == sound);
        CHECK((board.searches[i].state == State::over) == sound);
    }
    CHECK(searched > 5);
    CHECK(ports.lists.size() == searched);
    work.refresh(session);
    CHECK(ports.lists.size() == searched);
}

TEST_CASE("an edit asks for the list that it changed and for no other") {
    platform::headless::HeadlessPorts ports;
    ports.cutter = cut_at_once;
    web::StockWork work(ports);
    edit::Session session = demo();
    work.refresh(session);
    const std::size_t asked = ports.lists.size();
    add_a_piece(session, work.board());
    work.refresh(session);
    CHECK(ports.lists.size() == asked + 1);
    REQUIRE(session.undo());
    work.refresh(session);
    CHECK(ports.lists.size() == asked + 1); // the answer was kept
    CHECK(ports.stopped.empty());
}

TEST_CASE("a search that is not over stops when its list is no longer wanted") {
    platform::headless::HeadlessPorts ports;
    ports.cutter = [](const std::string& list, long long) { return cut_at_once(list, 1); };
    web::StockWork work(ports);
    edit::Session session = demo();
    work.refresh(session);
    int looking = 0;
    for (const views::StockSearch& search : work.board().searches)
        looking += search.state == State::looking ? 1 : 0;
    REQUIRE(looking > 0);
    REQUIRE(!session.apply(edit::ReplaceShop{}));
    work.refresh(session);
    CHECK(static_cast<int>(ports.stopped.size()) == looking);
}

TEST_CASE("no search and answers that are no plans are said, and nothing is planned from them") {
    for (const char* answer : {"", "1 1 1 1 1 0 1 1 0 1", "nonsense"}) {
        platform::headless::HeadlessPorts ports;
        ports.cutter = [&](const std::string&, long long) { return answer; };
        web::StockWork work(ports);
        work.refresh(demo());
        const views::StockBoard& board = work.board();
        for (std::size_t i = 0; i < board.groups.size(); ++i) {
            CHECK(!board.plan.groups[i].has_plan);
            CHECK(board.searches[i].state ==
                  (board.groups[i].problem ? State::none : State::missing));
        }
    }
}
