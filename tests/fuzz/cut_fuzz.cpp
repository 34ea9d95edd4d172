// Whatever bytes come as cutting lists, as a list for the worker or as its answer: cut_text.h,
// problem.h, answer.h, and a short search.
//
// The first byte says which. Nothing may crash, hang or be undefined; what was read is a list whose
// plans hold and cost no less than their bound, and a refusal names a field and a reason.

#include "archive/cut_text.h"

#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>

#include "cutting/answer.h"
#include "cutting/problem.h"

using namespace treadle;

namespace {

constexpr long long k_work = 1'000'000;

void must(bool holds) {
    if (!holds)
        std::abort();
}

void check_refusal(const base::Refusal& refusal) {
    must(!refusal.field.empty() && !refusal.reason.empty());
}

void search(const cutting::CutList& list) {
    const cutting::CutAnswer answer = cutting::solve(list, k_work);
    must(!answer.has_plan || cutting::is_plan(list, answer.bars));
    must(!answer.has_plan || answer.bound <= answer.cost);
    const auto same = cutting::read_answer_text(list, cutting::answer_text(answer));
    must(same.ok() && same->cost == answer.cost && same->bound == answer.bound);
}

void lists(std::string_view text) {
    const auto read = archive::read_cut_text(text);
    if (!read.ok())
        return check_refusal(read.refusal());
    for (const archive::NamedCutProblem& named : *read) {
        const auto list = cutting::cut_list(named.problem);
        if (!list.ok()) {
            check_refusal(list.refusal());
            continue;
        }
        const auto same = cutting::read_list_text(cutting::list_text(*list));
        must(same.ok() && same->length == list->length && same->demand == list->demand);
        if (list->size() <= 64 && list->longest_fill() <= 20'000)
            search(*list);
    }
}

void of_worker(std::string_view text) {
    const std::size_t end = text.find('\n');
    const auto list = cutting::read_list_text(text.substr(0, end));
    if (!list.ok())
        return check_refusal(list.refusal());
    if (list->size() <= 64 && list->longest_fill() <= 20'000)
        search(*list);
    if (end == std::string_view::npos)
        return;
    const auto answer = cutting::read_answer_text(*list, text.substr(end + 1));
    if (!answer.ok())
        check_refusal(answer.refusal());
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size == 0)
        return 0;
    const std::string text(data + 1, data + size);
    if (data[0] % 2 == 0)
        lists(text);
    else
        of_worker(text);
    return 0;
}
