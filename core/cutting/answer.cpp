#include "cutting/answer.h"

#include <algorithm>
#include <charconv>
#include <optional>

#include "cutting/problem.h"

namespace treadle::cutting {

namespace {

using base::Refusal;
using base::Result;

constexpr std::int64_t k_largest = std::int64_t{1} << 60;

/// Whole numbers, a blank between two.
class Numbers {
public:
    explicit Numbers(std::string_view text) : text_(text) {}

    /// The next number; remembers when there was none in the range.
    std::int64_t next(std::int64_t least, std::int64_t most) {
        while (!text_.empty() && text_.front() == ' ')
            text_.remove_prefix(1);
        std::int64_t number = 0;
        const char* last = text_.data() + text_.size();
        const auto [end, fault] = std::from_chars(text_.data(), last, number);
        sound_ = sound_ && fault == std::errc{} && number >= least && number <= most;
        text_.remove_prefix(static_cast<std::size_t>(end - text_.data()));
        return sound_ ? number : least;
    }
    int next_int(std::int64_t least, std::int64_t most) {
        return static_cast<int>(next(least, most));
    }
    [[nodiscard]] bool sound() const { return sound_; }
    [[nodiscard]] bool ended() const { return sound_ && text_.empty(); }

private:
    std::string_view text_;
    bool sound_ = true;
};

class Text {
public:
    Text& put(std::int64_t number) {
        if (!text_.empty())
            text_ += ' ';
        text_ += std::to_string(number);
        return *this;
    }
    [[nodiscard]] std::string take() { return std::move(text_); }

private:
    std::string text_;
};

} // namespace

CutAnswer answer_of(const Search& search) {
    CutAnswer answer;
    answer.has_plan = search.has_plan();
    if (answer.has_plan) {
        answer.bars = search.best();
        answer.cost = search.cost();
    }
    answer.bound = search.bound();
    answer.done = search.done();
    answer.work = search.work();
    return answer;
}

CutAnswer solve(const CutList& list, long long work) {
    Search search(list);
    search.run(work);
    return answer_of(search);
}

std::string list_text(const CutList& list) {
    Text text;
    text.put(static_cast<std::int64_t>(list.size()));
    for (std::size_t i = 0; i < list.size(); ++i)
        text.put(list.length[i]).put(list.demand[i]);
    text.put(static_cast<std::int64_t>(list.stock.size()));
    for (const StockKind& kind : list.stock)
        text.put(kind.open).put(kind.full).put(kind.closed).put(kind.cost).put(kind.available);
    text.put(list.ends ? 1 : 0).put(list.unit).put(list.scale).put(list.kerf);
    return text.take();
}

Result<CutList> read_list_text(std::string_view text) {
    Numbers in(text);
    CutList list;
    const std::int64_t pieces = in.next(1, static_cast<std::int64_t>(k_most_lengths));
    for (std::int64_t i = 0; i < pieces && in.sound(); ++i) {
        const std::int64_t longest = list.length.empty() ? k_longest_fill : list.length.back() - 1;
        list.length.push_back(in.next_int(1, longest));
        list.demand.push_back(in.next_int(1, k_most_pieces));
    }
    const std::int64_t kinds = in.next(1, static_cast<std::int64_t>(k_most_lengths));
    for (std::int64_t k = 0; k < kinds && in.sound(); ++k) {
        StockKind kind;
        kind.open = in.next_int(0, k_longest_fill);
        kind.full = in.next_int(0, k_longest_fill);
        kind.closed = in.next_int(0, k_longest_fill);
        kind.cost = in.next(0, k_longest_bar);
        kind.available = in.next_int(0, k_no_limit);
        list.stock.push_back(kind);
    }
    list.ends = in.next(0, 1) == 1;
    list.unit = in.next(1, k_longest_bar);
    list.scale = in.next(1, k_longest_bar);
    list.kerf = in.next(0, k_longest_bar);
    if (!in.ended())
        return Refusal{"list", "This is no list of pieces to cut.", ""};
    for (const StockKind& kind : list.stock)
        if (kind.open > kind.closed || (!kind.limited() && kind.cost == 0) ||
            kind.cost % list.unit != 0)
            return Refusal{"list", "This is no list of bars to cut.", ""};
    for (const int length : list.length)
        if (std::none_of(list.stock.begin(), list.stock.end(), [&](const StockKind& kind) {
                return kind.available > 0 && kind.takes(length);
            }))
            return Refusal{"list", "A piece of this list goes into no bar.", ""};
    return list;
}

std::string answer_text(const CutAnswer& answer) {
    Text text;
    text.put(answer.has_plan ? 1 : 0).put(answer.bound).put(answer.done ? 1 : 0).put(answer.work);
    text.put(static_cast<std::int64_t>(answer.bars.size()));
    for (const CutBars& bar : answer.bars) {
        std::int64_t lengths = 0;
        for (const int count : bar.pattern.counts)
            lengths += count > 0 ? 1 : 0;
        text.put(bar.pattern.stock).put(bar.times).put(lengths);
        for (std::size_t i = 0; i < bar.pattern.counts.size(); ++i)
            if (bar.pattern.counts[i] > 0)
                text.put(static_cast<std::int64_t>(i)).put(bar.pattern.counts[i]);
    }
    return text.take();
}

Result<CutAnswer> read_answer_text(const CutList& list, std::string_view text) {
    const Refusal refusal{"answer", "This is no plan for these pieces.", ""};
    Numbers in(text);
    CutAnswer answer;
    answer.has_plan = in.next(0, 1) == 1;
    answer.bound = in.next(0, k_largest);
    answer.done = in.next(0, 1) == 1;
    answer.work = in.next(0, k_largest);
    const std::int64_t bars = in.next(0, k_most_pieces);
    for (std::int64_t b = 0; b < bars && in.sound(); ++b) {
        CutBars bar;
        bar.pattern.counts.assign(list.size(), 0);
        bar.pattern.stock = in.next_int(0, static_cast<std::int64_t>(list.stock.size()) - 1);
        bar.times = in.next_int(1, k_most_pieces);
        const std::int64_t lengths = in.next(1, static_cast<std::int64_t>(list.size()));
        for (std::int64_t n = 0; n < lengths && in.sound(); ++n) {
            const auto piece = in.next(0, static_cast<std::int64_t>(list.size()) - 1);
            bar.pattern.counts[static_cast<std::size_t>(piece)] = in.next_int(1, k_most_pieces);
        }
        answer.bars.push_back(std::move(bar));
    }
    if (!in.ended() || answer.has_plan != !answer.bars.empty())
        return refusal;
    if (answer.has_plan && !is_plan(list, answer.bars))
        return refusal;
    answer.cost = cost_of(list, answer.bars);
    if (answer.has_plan && answer.bound > answer.cost)
        return refusal;
    return answer;
}

} // namespace treadle::cutting
