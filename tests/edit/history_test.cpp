// A session's history as text, and back: random edits, fixed seed, printed on failure.

#include "archive/archive.h"
#include "archive/history.h"
#include "archive/journal.h"
#include "edit/hand.h"
#include "edit/session.h"

#include <doctest/doctest.h>

using namespace treadle;
using edit::Document;
using edit::Session;
using edit_test::Hand;

namespace {

constexpr unsigned k_seed = 4711;

archive::Moment moment(const Document& document) { return {document.job, document.shop}; }

std::string bytes(const archive::Moment& at) { return archive::write_file(at.job, *at.shop); }
std::string bytes(const Document& at) { return archive::write_file(at.job, *at.shop); }

archive::Moment led(const archive::Moment& from, const archive::Moment& to) {
    const auto step = archive::read_step(archive::write_step(from, to, "some words"));
    REQUIRE(step.ok());
    CHECK(step->words == "some words");
    auto after = archive::apply_step(from, *step);
    REQUIRE(after.ok());
    return std::move(after).value();
}

/// What a store holds after a base and the steps of a session's past and future.
std::vector<archive::StoredBytes> stored(const Session& session) {
    using archive::RecordKind;
    std::vector<const Document*> states;
    std::vector<std::string> words;
    for (const Session::Step& step : session.past()) {
        states.push_back(step.document.get());
        words.push_back(step.words);
    }
    states.push_back(&session.document());
    for (auto step = session.future().rbegin(); step != session.future().rend(); ++step) {
        states.push_back(step->document.get());
        words.push_back(step->words);
    }
    archive::RecordName at{1, "tab"};
    archive::Head head{at, at, at};
    std::vector<archive::StoredBytes> store;
    store.push_back({archive::record_key("main", RecordKind::base, at),
                     archive::write_record(at, std::nullopt, bytes(*states.front()))});
    for (std::size_t i = 1; i < states.size(); ++i) {
        const archive::RecordName before = at;
        ++at.number;
        const std::string step =
            archive::write_step(moment(*states[i - 1]), moment(*states[i]), words[i - 1]);
        store.push_back({archive::record_key("main", RecordKind::step, at),
                         archive::write_record(at, before, step)});
        head.last = at;
        if (i == session.past().size())
            head.cursor = at;
    }
    store.push_back({archive::head_key("main", 1), archive::write_head(head)});
    return store;
}

Session read_back(const std::vector<archive::StoredBytes>& store, const Session& like) {
    const auto journal = archive::read_journal("main", store);
    REQUIRE(journal.ok());
    CHECK_FALSE(journal->trouble.has_value());
    const auto document = [&](std::size_t i) {
        const archive::Moment& at = journal->moments[i];
        return std::make_shared<const Document>(Document{at.job, at.shop});
    };
    Session::History history;
    for (std::size_t i = 0; i < journal->cursor; ++i)
        history.past.push_back({document(i), journal->words[i]});
    history.now = document(journal->cursor);
    for (std::size_t i = journal->words.size(); i > journal->cursor; --i)
        history.future.push_back({document(i), journal->words[i - 1]});
    return Session(history, std::make_shared<const job::Catalog>(like.catalog()));
}

} // namespace

TEST_CASE("a step's text leads from each state to the next and back, byte for byte") {
    CAPTURE(k_seed);
    Session s = edit_test::session();
    Hand hand(k_seed);
    archive::Moment before = moment(s.document());
    int steps = 0;
    for (int i = 0; i < 400; ++i) {
        const auto revision = s.revision();
        static_cast<void>(s.apply(hand.next(s)));
        if (s.revision() == revision)
            continue;
        ++steps;
        const archive::Moment after = moment(s.document());
        REQUIRE(bytes(led(before, after)) == bytes(after));
        REQUIRE(bytes(led(after, before)) == bytes(before));
        before = after;
    }
    CHECK(steps > 200);
}

TEST_CASE("a step's text shares with the state before it all that it does not change") {
    Session s = edit_test::session();
    const archive::Moment before = moment(s.document());
    job::Part part = *s.job().parts.front();
    ++part.count;
    REQUIRE_FALSE(s.apply(edit::ReplacePart{part}).has_value());
    const archive::Moment after = led(before, moment(s.document()));
    CHECK(after.shop == before.shop);
    REQUIRE(after.job.parts.size() == before.job.parts.size());
    CHECK(after.job.parts.front() != before.job.parts.front());
    for (std::size_t i = 1; i < after.job.parts.size(); ++i)
        CHECK(after.job.parts[i] == before.job.parts[i]);
}

TEST_CASE("a step's text is as long as the edit, not as the job") {
    Session s = edit_test::session();
    for (int i = 0; i < 300; ++i)
        REQUIRE_FALSE(s.apply(edit::AddPart{*s.job().parts.front(), -1}).has_value());
    const archive::Moment before = moment(s.document());
    const std::size_t whole = bytes(before).size();
    REQUIRE_FALSE(s.apply(edit::RemovePart{s.job().parts[150]->id}).has_value());
    CHECK(archive::write_step(before, moment(s.document()), "").size() < whole / 100);
}

TEST_CASE("a session read back from its store has the same past, present and future") {
    CAPTURE(k_seed);
    Session s = edit_test::session();
    Hand hand(k_seed);
    for (int i = 0; i < 300; ++i)
        static_cast<void>(s.apply(hand.next(s)));
    for (int i = 0; i < 30; ++i)
        REQUIRE(s.undo());
    Session again = read_back(stored(s), s);
    CHECK(again.past().size() == s.past().size());
    CHECK(again.future().size() == 30);
    const auto equal = [&] {
        REQUIRE(bytes(again.document()) == bytes(s.document()));
        REQUIRE(again.undo_words() == s.undo_words());
        REQUIRE(again.redo_words() == s.redo_words());
    };
    equal();
    while (s.redo()) {
        REQUIRE(again.redo());
        equal();
    }
    CHECK_FALSE(again.redo());
    while (s.undo()) {
        REQUIRE(again.undo());
        equal();
    }
    CHECK_FALSE(again.undo());
}

TEST_CASE("of a longer past the latest two hundred steps are kept") {
    Session s = edit_test::session();
    Session::History history;
    for (int i = 0; i < 230; ++i)
        history.past.push_back(
            {std::make_shared<const Document>(s.document()), "step " + std::to_string(i)});
    history.now = std::make_shared<const Document>(s.document());
    Session again(history, std::make_shared<const job::Catalog>(s.catalog()));
    CHECK(again.past().size() == 200);
    CHECK(again.past().front().words == "step 30");
    CHECK(again.undo_words() == "step 229");
}
