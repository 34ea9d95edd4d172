#include "archive/job_card.h"

#include "base/text.h"

#include <algorithm>
#include <charconv>
#include <utility>

namespace treadle::archive {

namespace {

using base::Refusal;
using base::Result;

constexpr std::string_view k_card = "treadle-card";
constexpr std::string_view k_point = "treadle-point";
constexpr std::size_t k_longest = 4000;
constexpr std::size_t k_largest_card = 16'384;
constexpr int k_most = 1'000'000;

/// On one line, cut between two letters.
std::string one_line(std::string_view text) {
    std::string line(text.substr(0, k_longest));
    while (line.size() < text.size() && !line.empty() &&
           (static_cast<unsigned char>(text[line.size()]) & 0xC0U) == 0x80U)
        line.pop_back();
    std::replace_if(
        line.begin(), line.end(), [](char c) { return c == '\n' || c == '\r'; }, ' ');
    return line;
}

std::optional<int> number_from(std::string_view text) {
    int number = 0;
    const auto [at, fault] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (fault != std::errc{} || at != text.data() + text.size() || number < 0 || number > k_most)
        return std::nullopt;
    return number;
}

std::string_view take_line(std::string_view& rest) {
    const std::size_t end = std::min(rest.find('\n'), rest.size());
    const std::string_view line = rest.substr(0, end);
    rest.remove_prefix(std::min(rest.size(), end + 1));
    return line;
}

Refusal not_this(std::string_view field) {
    return {std::string(field), "This is not what Treadle stored here, or it was damaged.", ""};
}

std::optional<Refusal> fault_of_title(std::string_view line, std::string_view expected) {
    const std::size_t blank = line.find(' ');
    if (blank == std::string_view::npos || line.substr(0, blank) != expected)
        return not_this("format");
    if (line.substr(blank + 1) != "1")
        return Refusal{"version",
                       "This was stored by another version of Treadle; nothing was changed.",
                       "this one reads version 1"};
    return std::nullopt;
}

/// False for what has no business there.
bool take(JobCard& card, std::string_view name, std::string_view value) {
    const auto number = number_from(value);
    if (name == "name")
        card.name = value;
    else if (name == "edited")
        card.edited = value;
    else if (!number)
        return false;
    else if (name == "parts")
        card.parts = *number;
    else if (name == "since-copy")
        card.since_copy = *number;
    else if (name == "invented")
        card.invented = *number == 1;
    else if (name == "damaged")
        card.is_damaged = *number == 1;
    else if (name == "trash")
        card.trash = *number;
    else
        return false;
    return true;
}

} // namespace

std::string card_key(std::string_view job) { return std::string(k_card_prefix) + std::string(job); }

std::string points_prefix(std::string_view job) { return "point/" + std::string(job) + "/"; }

std::string write_card(const JobCard& card) {
    std::string text = std::string(k_card) + " 1\n";
    text += "name " + one_line(card.name) + "\nedited " + one_line(card.edited) + "\n";
    const auto number = [&text](const char* name, int value) {
        if (value > 0)
            text += std::string(name) + " " + std::to_string(std::min(value, k_most)) + "\n";
    };
    number("parts", card.parts);
    number("since-copy", card.since_copy);
    number("invented", card.invented ? 1 : 0);
    number("damaged", card.is_damaged ? 1 : 0);
    if (card.trash)
        text += "trash " + std::to_string(std::clamp(*card.trash, 0, k_most)) + "\n";
    return text;
}

Result<JobCard> read_card(std::string_view bytes) {
    if (bytes.size() > k_largest_card || !base::is_clean_text(bytes))
        return not_this("card");
    if (auto fault = fault_of_title(take_line(bytes), k_card))
        return *fault;
    JobCard card;
    while (!bytes.empty()) {
        const std::string_view line = take_line(bytes);
        const std::size_t blank = line.find(' ');
        if (blank == std::string_view::npos ||
            !take(card, line.substr(0, blank), line.substr(blank + 1)))
            return not_this("card");
    }
    return card;
}

std::string write_point(const Point& point, std::string_view file) {
    std::string text = std::string(k_point) + " 1\n";
    text += one_line(point.why) + "\n" + one_line(point.when) + "\n";
    text += point.is_pinned ? "pinned\n" : "\n";
    return text.append(file);
}

Result<ReadPoint> read_point(std::string_view bytes) {
    if (auto fault = fault_of_title(take_line(bytes), k_point))
        return *fault;
    ReadPoint read;
    read.point.why = take_line(bytes);
    read.point.when = take_line(bytes);
    const std::string_view pinned = take_line(bytes);
    if (!base::is_clean_text(read.point.why) || !base::is_clean_text(read.point.when) ||
        (pinned != "pinned" && !pinned.empty()) || bytes.empty())
        return not_this("point");
    read.point.is_pinned = !pinned.empty();
    read.file = bytes;
    return read;
}

std::string write_days(const SeenDays& days) {
    return std::to_string(days.count) + " " + one_line(days.last);
}

SeenDays read_days(std::string_view bytes) {
    const std::size_t blank = bytes.find(' ');
    const auto count = number_from(bytes.substr(0, blank));
    if (blank == std::string_view::npos || !count || !base::is_clean_text(bytes))
        return {};
    return {*count, std::string(bytes.substr(blank + 1))};
}

} // namespace treadle::archive
