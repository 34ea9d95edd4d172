#include "archive/link.h"

#include "archive/base64url.h"
#include "archive/packed.h"
#include "archive/shelf.h"
#include "archive/short_words.h"
#include "archive/writers.h"

#include <algorithm>
#include <charconv>
#include <utility>

namespace treadle::archive {

namespace {

using base::Refusal;
using base::Result;

constexpr std::string_view k_job_name = "j";
constexpr std::string_view k_version_begin = "1.";
constexpr std::size_t k_sum_size = 4;
constexpr std::size_t k_longest_wish = 40;
constexpr std::size_t k_longest_page = 500;
constexpr int k_last_step = 100'000;

Refusal damaged() {
    return {"link",
            "This link was cut short or changed on the way; nothing was opened.",
            "Ask for it once more, or for the job file."};
}

std::string sum_bytes(std::string_view packed) {
    const std::uint32_t sum = check_sum(packed);
    std::string bytes;
    for (unsigned shift = 32; shift > 0; shift -= 8)
        bytes += static_cast<char>((sum >> (shift - 8)) & 255U);
    return bytes;
}

/// What stands after '#', or all of it.
std::string_view fragment_in(std::string_view text) {
    const std::size_t mark = text.find('#');
    return mark == std::string_view::npos ? text : text.substr(mark + 1);
}

/// Calls `take(name, value)` for each part between '&' that has a name.
template <class Take>
void each_part(std::string_view fragment, Take take) {
    while (!fragment.empty()) {
        const std::size_t end = std::min(fragment.find('&'), fragment.size());
        const std::string_view part = fragment.substr(0, end);
        const std::size_t equals = part.find('=');
        if (equals != std::string_view::npos)
            take(part.substr(0, equals), part.substr(equals + 1));
        fragment.remove_prefix(std::min(fragment.size(), end + 1));
    }
}

bool is_wish(std::string_view value) {
    return !value.empty() && value.size() <= k_longest_wish &&
           std::all_of(value.begin(), value.end(), [](char c) {
               return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-' || c == ',';
           });
}

std::optional<int> step_in(std::string_view value) {
    int step = 0;
    const char* const end = value.data() + value.size();
    const auto [at, fault] = std::from_chars(value.data(), end, step);
    if (fault != std::errc{} || at != end || step < 0 || step > k_last_step)
        return std::nullopt;
    return step;
}

/// A name of a lesson, or a file as a shelf names it.
bool is_lesson(std::string_view value) { return is_wish(value) || is_shelf_file(value); }

std::string with_wishes(std::string fragment, const LinkWishes& wishes) {
    for (const auto& [name, value] : {std::pair("view", &wishes.view),
                                      std::pair("lock", &wishes.lock),
                                      std::pair("hide", &wishes.hide)})
        if (is_wish(*value))
            fragment += std::string("&") + name + "=" + *value;
    if (wishes.step)
        fragment += "&step=" + std::to_string(*wishes.step);
    return fragment;
}

/// "12.TEXT": a link of a version that this one does not read.
Refusal fault_of_version(std::string_view value) {
    const std::size_t dot = value.find('.');
    int version = 0;
    const char* const end = value.data() + std::min(dot, value.size());
    const auto [at, fault] = std::from_chars(value.data(), end, version);
    if (dot == std::string_view::npos || fault != std::errc{} || at != end || version < 2)
        return damaged();
    return {"version",
            "This link was made by a newer Treadle; nothing was opened.",
            "this one reads version " + std::to_string(k_link_version)};
}

/// The job file that is packed in the text after "1.".
Result<std::string> file_in(std::string_view text) {
    const auto bytes = from_base64url(text);
    if (!bytes || bytes->size() <= k_sum_size)
        return damaged();
    const std::string_view packed = std::string_view(*bytes).substr(k_sum_size);
    if (sum_bytes(packed) != std::string_view(*bytes).substr(0, k_sum_size))
        return damaged();
    const LinkDictionary& dictionary = link_dictionary();
    auto in_short = unpack(packed, dictionary.text, k_largest_linked);
    if (!in_short)
        return Refusal{"link", in_short.refusal().reason, in_short.refusal().detail};
    auto json = lengthened(*in_short, dictionary.words, k_largest_linked);
    if (!json)
        return Refusal{"link", json.refusal().reason, json.refusal().detail};
    return json;
}

} // namespace

Result<std::string>
write_link(const job::Job& job, const equipment::Shop& shop, const LinkWishes& wishes) {
    const LinkDictionary& dictionary = link_dictionary();
    const std::string json = write_line(job, shop);
    const auto in_short = shortened(json, dictionary.words);
    if (!in_short)
        return in_short.refusal();
    const std::string packed = pack(*in_short, dictionary.text);
    std::string fragment = std::string(k_job_name) + "=" + std::string(k_version_begin) +
                           to_base64url(sum_bytes(packed) + packed);
    fragment = with_wishes(std::move(fragment), wishes);
    if (json.size() > k_largest_linked || fragment.size() > k_long_link)
        return Refusal{"link",
                       "This job is too long for a link; send the job file instead.",
                       "the link would have " + std::to_string(fragment.size()) +
                           " letters, and many programs cut it after " +
                           std::to_string(k_long_link)};
    return fragment;
}

Result<std::string> write_lesson_link(const LinkWishes& wishes) {
    if (!is_lesson(wishes.lesson))
        return Refusal{"link",
                       "This lesson was opened from a file, which no link can find.",
                       "put it on the shelf of the host"};
    std::string fragment = "lesson=" + wishes.lesson;
    if (wishes.seed)
        fragment += "&seed=" + std::to_string(*wishes.seed);
    return with_wishes(std::move(fragment), wishes);
}

Result<std::string> link_address(std::string_view page, std::string_view fragment) {
    const bool printed = std::all_of(page.begin(), page.end(), [](char c) {
        return c > ' ' && c < '\x7f' && c != '"' && c != '<' && c != '>' && c != '#';
    });
    const bool known = page.substr(0, 8) == "https://" || page.substr(0, 7) == "http://";
    if (!known || !printed || page.size() > k_longest_page)
        return Refusal{"base",
                       "Where the page is has to be an address of http or https, without a #.",
                       "https://host/path/"};
    return std::string(page) + "#" + std::string(fragment);
}

Result<Link> read_link(std::string_view text) {
    const std::string_view fragment = fragment_in(text);
    if (fragment.size() > k_largest_fragment)
        return Refusal{"link",
                       "This is longer than any link to a job; nothing was opened.",
                       "at most " + std::to_string(k_largest_fragment) + " letters"};
    std::optional<std::string_view> value;
    bool twice = false;
    each_part(fragment, [&](std::string_view name, std::string_view said) {
        if (name != k_job_name)
            return;
        twice = value.has_value();
        value = said;
    });
    if (!value)
        return Refusal{"link", "There is no job in this address.", ""};
    if (twice)
        return damaged();
    if (value->substr(0, k_version_begin.size()) != k_version_begin)
        return fault_of_version(*value);
    const auto json = file_in(value->substr(k_version_begin.size()));
    if (!json)
        return json.refusal();
    auto file = read_file(*json);
    if (!file)
        return file.refusal();
    return Link{std::move(file).value(), read_wishes(fragment)};
}

LinkWishes read_wishes(std::string_view text) {
    LinkWishes wishes;
    const std::string_view fragment = fragment_in(text);
    if (fragment.size() > k_largest_fragment)
        return wishes;
    each_part(fragment, [&](std::string_view name, std::string_view value) {
        std::string* const said = name == "view"   ? &wishes.view
                                  : name == "lock" ? &wishes.lock
                                  : name == "hide" ? &wishes.hide
                                                   : nullptr;
        if (said != nullptr && is_wish(value))
            *said = value;
        if (name == "step")
            wishes.step = step_in(value);
        if (name == "seed")
            wishes.seed = step_in(value);
        if (name == "lesson" && is_lesson(value))
            wishes.lesson = value;
    });
    return wishes;
}

bool holds_job(std::string_view text) {
    bool found = false;
    each_part(fragment_in(text), [&](std::string_view name, std::string_view) {
        found = found || name == k_job_name;
    });
    return found;
}

} // namespace treadle::archive
