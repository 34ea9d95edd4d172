// Cutting lists as text: what is read, and each refusal at its line.

#include "archive/cut_text.h"

#include <doctest/doctest.h>

using namespace treadle;

namespace {

std::string list(const std::string& middle, const std::string& name = "a") {
    return "instance " + name + "\n" + middle + "end\n";
}

base::Refusal refusal_of(const std::string& text) {
    const auto read = archive::read_cut_text(text);
    if (read.ok()) {
        FAIL_CHECK("was read: " << text.substr(0, 200));
        return {};
    }
    CHECK_FALSE(read.refusal().reason.empty());
    return read.refusal();
}

std::string field_of(const std::string& text) { return refusal_of(text).field; }

} // namespace

TEST_CASE("a list with everything in it") {
    const auto read = archive::read_cut_text("# bars of the shop\n"
                                             "instance posts_and_rails\n"
                                             "stock 3840 cost 52 # 20 ft\n"
                                             "stock 1920 count 3 cost 20\n"
                                             "stock 700 count 0\n"
                                             "kerf 2\n"
                                             "least_end 48\n"
                                             "optimum ? 5 6\n"
                                             "note anything at all\n"
                                             "types 2\n"
                                             "1200 8\n"
                                             "\t 310   12 \n"
                                             "\n"
                                             "end\n"
                                             "instance second\nstock 100\n40 1\nend");
    REQUIRE(read.ok());
    REQUIRE(read->size() == 2);
    const archive::NamedCutProblem& first = read->front();
    CHECK(first.name == "posts_and_rails");
    REQUIRE(first.problem.stock.size() == 3);
    CHECK(first.problem.stock[0].length == 3840);
    CHECK(first.problem.stock[0].cost == 52);
    CHECK(!first.problem.stock[0].available.has_value());
    CHECK(first.problem.stock[1].available == 3);
    CHECK(first.problem.stock[1].cost == 20);
    CHECK(first.problem.stock[2].available == 0);
    CHECK(first.problem.stock[2].cost == 1);
    CHECK(first.problem.kerf == 2);
    CHECK(first.problem.least_end == 48);
    REQUIRE(first.problem.pieces.size() == 2);
    CHECK(first.problem.pieces[1].length == 310);
    CHECK(first.problem.pieces[1].count == 12);
    CHECK(read->back().problem.kerf == 0);
}

TEST_CASE("lines may end as they do elsewhere") {
    const auto read = archive::read_cut_text("instance a\r\nstock 100\r\n40 2\r\nend\r\n");
    REQUIRE(read.ok());
    CHECK(read->front().name == "a");
    CHECK(read->front().problem.pieces[0].count == 2);
}

TEST_CASE("equal lengths may stand twice") {
    const auto read = archive::read_cut_text(list("stock 100\ntypes 2\n40 2\n40 3\n"));
    REQUIRE(read.ok());
    CHECK(read->front().problem.pieces.size() == 2);
}

TEST_CASE("a fault is refused at its line") {
    CHECK(field_of("stock 100\n") == "line 1");                       // before its name
    CHECK(field_of("\n\nend\n") == "line 3");                         // the end of none
    CHECK(field_of("instance\n") == "line 1");                        // no name
    CHECK(field_of("instance a b\n") == "line 1");                    // two
    CHECK(field_of("instance a\ninstance b\n") == "line 2");          // in another
    CHECK(field_of(list("stock 100\n4 1\n") + list("")) == "line 5"); // twice
    CHECK(field_of(list("stock\n")) == "line 2");                     // without length
    CHECK(field_of(list("stock 1 cost\n")) == "line 2");              // without a number
    CHECK(field_of(list("stock 1 price 3\n")) == "line 2");           // not known
    CHECK(field_of(list("stock x\n")) == "line 2");                   // no number
    CHECK(field_of(list("stock 1 count 1.5\n")) == "line 2");         // not whole
    CHECK(field_of(list("stock 1\n40\n")) == "line 3");               // no count
    CHECK(field_of(list("stock 1\n40 1 1\n")) == "line 3");           // three numbers
    CHECK(field_of(list("stock 1\n40 x\n")) == "line 3");             // no number
    CHECK(field_of(list("stock 1\n40\" 1\n")) == "line 3");           // a unit
    CHECK(field_of(list("stock 1\n+4 1\n")) == "line 3");             // a sign too many
    CHECK(field_of(list("stock 1\nkerf 1e3\n")) == "line 3");         // not plain
    CHECK(field_of(list("stock 1\nleast_end\n")) == "line 3");        // nothing
    CHECK(field_of(list("stock 1\ntypes 2\n40 1\n")) == "line 5");    // one short
    CHECK(field_of(list("stock 1\ntypes 0\n40 1\n")) == "line 5");    // one too many
    CHECK(field_of(list("stock 1\ngrain 3\n")) == "line 3");          // not known
}

TEST_CASE("numbers too large to hold are refused, not wrapped") {
    CHECK(field_of(list("stock 1\n9223372036854775808 1\n")) == "line 3");
    CHECK(field_of(list("stock 1\n1 99999999999999999999999\n")) == "line 3");
    CHECK(field_of(list("stock -9223372036854775809\n")) == "line 2");
    // In range: read as they are, refused by cut_list, which knows how long a bar may be.
    const auto read = archive::read_cut_text(list("stock 9223372036854775807\n-5 0\n"));
    REQUIRE(read.ok());
    CHECK(read->front().problem.stock[0].length == INT64_MAX);
    CHECK(read->front().problem.pieces[0].length == -5);
}

TEST_CASE("a long word is not repeated in full") {
    const base::Refusal refusal = refusal_of(list("stock " + std::string(100'000, '7') + "\n"));
    CHECK(refusal.field == "line 2");
    CHECK(refusal.reason.size() < 200);
}

TEST_CASE("a file that is cut off is refused wherever it ends") {
    const std::string whole = list("stock 100\nkerf 2\ntypes 2\n40 2\n30 3\n");
    for (std::size_t end = 0; end + 2 < whole.size(); ++end) {
        CAPTURE(end);
        CHECK(!archive::read_cut_text(std::string_view(whole).substr(0, end)).ok());
    }
    CHECK(field_of("instance a\nstock 100\n4 1\n") == "line 3");
}

TEST_CASE("a file without a list, or too large, is refused as a whole") {
    CHECK(field_of("") == "file");
    CHECK(field_of("# nothing\n\n") == "file");
    const base::Refusal large = refusal_of(std::string(archive::k_largest_cut_text + 1, '\n'));
    CHECK(large.field == "file");
    CHECK(large.reason + large.detail == "The file is too large.at most 64 MB");
}

TEST_CASE("bytes that are no text are refused") {
    CHECK(field_of(list(std::string("stock 1\n4\0 1\n", 13))) == "line 3");
    CHECK(field_of(list("stock 1\n\xC2\xBD 1\n")) == "line 3");
}

TEST_CASE("many lists are read in one go") {
    std::string text;
    for (int n = 0; n < 100'000; ++n)
        text += list("stock 9\n4 1\n", "n" + std::to_string(n));
    const auto read = archive::read_cut_text(text);
    REQUIRE(read.ok());
    CHECK(read->size() == 100'000);
    CHECK(field_of(text + list("", "n77")) == "line 400001");
}
