#include "cli/cut_command.h"

#include "archive/cut_text.h"
#include "base/json_writer.h"
#include "calc/answer_json.h"
#include "cli/files.h"

#include <charconv>
#include <chrono>
#include <cstdio>
#include <optional>

#include "cutting/search.h"

namespace treadle::cli {

namespace {

using base::Refusal;
using base::Result;
using cutting::CutList;
using cutting::Search;

constexpr int k_answered = 0;
constexpr int k_not_said = 1;
constexpr int k_refused = 2;
constexpr long long k_usual_work = 1'000'000'000;
constexpr const char* k_example = "treadle cut FILE [--work N] [--plans OUT.json]";

struct Asked {
    std::string file;
    std::string plans;
    long long work = k_usual_work;
};

Result<Asked> asked_in(const std::vector<std::string>& words) {
    Asked asked;
    for (std::size_t i = 1; i < words.size(); ++i) {
        const bool more = i + 1 < words.size();
        if (words[i] == "--work" && more) {
            const auto work = work_in(words[++i]);
            if (!work)
                return Refusal{"work", "The work is a whole number above zero.", k_example};
            asked.work = *work;
        } else if (words[i] == "--plans" && more && asked.plans.empty()) {
            asked.plans = words[++i];
        } else if (words[i].rfind("--", 0) != 0 && asked.file.empty()) {
            asked.file = words[i];
        } else {
            return Refusal{"command", "This word is not known here.", words[i]};
        }
    }
    if (asked.file.empty())
        return Refusal{"file", "A file with cutting lists is needed.", k_example};
    return asked;
}

int refused(const Refusal& refusal) {
    return say(calc::refusal_json(refusal) + "\n") ? k_refused : k_not_said;
}

/// Name, bars, bound, proven or open, work, seconds.
std::string line_of(const std::string& name, const Search& search, double seconds) {
    long long bars = 0;
    for (const cutting::CutBars& bar : search.best())
        bars += bar.times;
    // One kind of bar: cost counts bars. Several: the bound is of the cost.
    const bool one_kind = search.list().stock.size() == 1;
    const std::int64_t cost = search.list().stock.front().cost;
    const long long bound = one_kind ? (search.bound() + cost - 1) / cost : search.bound();
    char time[32];
    std::snprintf(time, sizeof time, "%.6f", seconds);
    return name + " " + (search.has_plan() ? std::to_string(bars) : "-") + " " +
           std::to_string(bound) + (search.proven() ? " proven " : " open ") +
           std::to_string(search.work()) + " " + time + "\n";
}

void write_bars(base::JsonWriter& json, const Search& search, const cutting::CutProblem& problem) {
    const CutList& list = search.list();
    json.key("bars").begin_array();
    for (const cutting::CutBars& bar : search.best()) {
        json.begin_object().field("count", bar.times);
        if (problem.stock.size() > 1)
            json.key("stock").integer(
                problem.stock[static_cast<std::size_t>(bar.pattern.stock)].length);
        json.key("pieces").begin_array();
        for (std::size_t i = 0; i < list.size(); ++i)
            if (bar.pattern.counts[i] > 0)
                json.begin_array()
                    .integer(cutting::own_length(list, i))
                    .integer(bar.pattern.counts[i])
                    .end_array();
        json.end_array().end_object();
    }
    json.end_array();
}

void write_certificate(base::JsonWriter& json, const Search& search) {
    const cutting::Certificate& certificate = search.certificate();
    const CutList& list = search.list();
    json.key("certificate").begin_object().key("prices").begin_array();
    for (std::size_t i = 0; i < list.size(); ++i)
        json.begin_array()
            .integer(cutting::own_length(list, i))
            .integer(certificate.prices[i])
            .end_array();
    json.end_array().key("largest").integer(certificate.per_cost);
    if (list.stock.size() > 1) {
        json.key("largest_by_stock").begin_array();
        for (const std::int64_t largest : certificate.largest)
            json.integer(largest);
        json.end_array();
    }
    json.key("bound")
        .integer(search.certificate_bound())
        .field("rest_by_search", search.bound() > search.certificate_bound())
        .end_object();
}

} // namespace

std::optional<long long> work_in(const std::string& word) {
    long long work = 0;
    const char* last = word.data() + word.size();
    const auto [end, fault] = std::from_chars(word.data(), last, work);
    if (fault != std::errc{} || end != last || work <= 0)
        return std::nullopt;
    return work;
}

int cut_command(const std::vector<std::string>& words) {
    const auto asked = asked_in(words);
    if (!asked.ok())
        return refused(asked.refusal());
    const auto bytes = read_bytes(asked->file, archive::k_largest_cut_text);
    if (!bytes.ok())
        return refused(bytes.refusal());
    const auto problems = archive::read_cut_text(*bytes);
    if (!problems.ok())
        return refused(problems.refusal());
    std::vector<CutList> lists;
    for (const archive::NamedCutProblem& named : *problems) {
        auto list = cutting::cut_list(named.problem);
        if (!list.ok()) {
            Refusal refusal = list.refusal();
            refusal.field = named.name + "." + refusal.field;
            return refused(refusal);
        }
        lists.push_back(std::move(list).value());
    }
    base::JsonWriter json;
    json.begin_object();
    std::string lines; // held back while the plans may still be refused their place
    for (std::size_t i = 0; i < lists.size(); ++i) {
        const auto start = std::chrono::steady_clock::now();
        Search search(std::move(lists[i]));
        search.run(asked->work);
        const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
        const archive::NamedCutProblem& named = (*problems)[i];
        const std::string line = line_of(named.name, search, took.count());
        if (asked->plans.empty()) {
            if (!say(line))
                return k_not_said;
            continue;
        }
        lines += line;
        json.key(named.name).begin_object();
        write_bars(json, search, named.problem);
        write_certificate(json, search);
        json.end_object();
    }
    json.end_object();
    if (!asked->plans.empty())
        if (const auto fault = write_bytes(asked->plans, json.take() + "\n", asked->file))
            return refused(*fault);
    return say(lines) ? k_answered : k_not_said;
}

} // namespace treadle::cli
