// The cutter: core/cutting alone, as a small module that works beside the page.
//
// Text goes in and text comes out (cutting/answer.h). web/site/cutter.mjs calls it, in slices.

#include <emscripten.h>

#include <algorithm>
#include <cstddef>
#include <string>

#include "cutting/answer.h"
#include "cutting/search.h"

namespace {

using treadle::cutting::Search;

/// The text that crosses over, either way.
std::string& text() {
    static std::string only;
    return only;
}

} // namespace

extern "C" {

/// Where a list of this many bytes is to be written before it is opened.
EMSCRIPTEN_KEEPALIVE char* cutter_room(std::size_t bytes) {
    text().assign(bytes, ' ');
    return text().data();
}

/// A search for the list that was written; none when it is no list.
EMSCRIPTEN_KEEPALIVE Search* cutter_open() {
    auto list = treadle::cutting::read_list_text(text());
    return list ? new Search(std::move(list).value()) : nullptr;
}

EMSCRIPTEN_KEEPALIVE void cutter_close(Search* search) { delete search; }

/// Works on for a slice, and for no more than `most` in all: sliced anyhow, it comes to the same.
/// True while there is more to do. Work is a double here because the page has no whole numbers of
/// 64 bits.
EMSCRIPTEN_KEEPALIVE bool cutter_run(Search* search, double slice, double most) {
    const double left = most - static_cast<double>(search->work());
    search->run(static_cast<long long>(std::min(slice, left)));
    return !search->done() && static_cast<double>(search->work()) < most;
}

/// The best answer so far; stands until the next call.
EMSCRIPTEN_KEEPALIVE const char* cutter_answer(const Search* search) {
    text() = treadle::cutting::answer_text(treadle::cutting::answer_of(*search));
    return text().c_str();
}
}
