#include "archive/cut_text.h"

#include "archive/beginning.h"

#include <algorithm>
#include <charconv>
#include <optional>
#include <set>

namespace treadle::archive {

namespace {

using base::Refusal;
using base::Result;
using Words = std::vector<std::string_view>;

Words words_of(std::string_view line) {
    Words words;
    while (!line.empty()) {
        const std::size_t start = line.find_first_not_of(" \t\r");
        if (start == std::string_view::npos)
            break;
        line.remove_prefix(start);
        const std::size_t end = std::min(line.find_first_of(" \t\r"), line.size());
        words.push_back(line.substr(0, end));
        line.remove_prefix(end);
    }
    return words;
}

std::optional<std::int64_t> whole_number(std::string_view word) {
    std::int64_t number = 0;
    const char* last = word.data() + word.size();
    const auto [end, fault] = std::from_chars(word.data(), last, number);
    if (fault != std::errc{} || end != last)
        return std::nullopt;
    return number;
}

class Reader {
public:
    Result<std::vector<NamedCutProblem>> read(std::string_view text) {
        if (text.size() > k_largest_cut_text)
            return Refusal{"file", "The file is too large.", "at most 64 MB"};
        while (!text.empty() && !refusal_) {
            const std::size_t end = std::min(text.find('\n'), text.size());
            const std::string_view line = text.substr(0, end);
            text.remove_prefix(std::min(end + 1, text.size()));
            ++line_;
            const Words words = words_of(line.substr(0, line.find('#')));
            if (!words.empty())
                take(words);
        }
        if (!refusal_ && open_)
            refuse("The file ends inside a list.", "end");
        if (!refusal_ && problems_.empty())
            return Refusal{"file", "There is no cutting list in the file.", "instance NAME"};
        if (refusal_)
            return *refusal_;
        return std::move(problems_);
    }

private:
    void refuse(std::string reason, std::string detail) {
        refusal_ = Refusal{"line " + std::to_string(line_), std::move(reason), std::move(detail)};
    }

    std::int64_t number(std::string_view word) {
        const auto value = whole_number(word);
        if (!value)
            refuse("\"" + beginning(word, 40) + "\" is not a whole number in range.", "");
        return value.value_or(0);
    }

    void take(const Words& words) {
        if (words[0] == "instance")
            return begin(words);
        if (!open_)
            return refuse("A list starts with its name.", "instance NAME");
        cutting::CutProblem& problem = problems_.back().problem;
        if (words[0] == "optimum" || words[0] == "note")
            return;
        if (words[0] == "stock")
            return stock(words, problem);
        if (words[0] == "end")
            return end(problem);
        if (words.size() != 2)
            return refuse("This line is not understood.", "length count");
        if (words[0] == "types")
            types_ = number(words[1]);
        else if (words[0] == "kerf")
            problem.kerf = number(words[1]);
        else if (words[0] == "least_end")
            problem.least_end = number(words[1]);
        else
            problem.pieces.push_back({number(words[0]), number(words[1])});
    }

    void begin(const Words& words) {
        if (open_ || words.size() != 2)
            return refuse("A list starts with its name, after the end of the one before.",
                          "instance NAME");
        if (!names_.insert(std::string(words[1])).second)
            return refuse("Two lists have this name.", std::string(words[1]));
        problems_.push_back({std::string(words[1]), {}});
        open_ = true;
        types_.reset();
    }

    void stock(const Words& words, cutting::CutProblem& problem) {
        if (words.size() < 2 || words.size() % 2 != 0)
            return refuse("This line is not understood.", "stock LENGTH [cost COST] [count BARS]");
        cutting::CutStock stock;
        stock.length = number(words[1]);
        for (std::size_t w = 2; w + 1 < words.size(); w += 2) {
            const std::int64_t value = number(words[w + 1]);
            if (words[w] == "cost")
                stock.cost = value;
            else if (words[w] == "count")
                stock.available = value;
            else
                return refuse("This word is not known here.", std::string(words[w]));
        }
        problem.stock.push_back(stock);
    }

    void end(const cutting::CutProblem& problem) {
        open_ = false;
        if (types_ && *types_ != static_cast<std::int64_t>(problem.pieces.size()))
            refuse("The list has " + std::to_string(problem.pieces.size()) + " lengths, not the " +
                       std::to_string(*types_) + " that it announced.",
                   "");
    }

    std::vector<NamedCutProblem> problems_;
    std::set<std::string> names_;
    bool open_ = false;
    std::optional<std::int64_t> types_;
    std::size_t line_ = 0;
    std::optional<Refusal> refusal_;
};

} // namespace

Result<std::vector<NamedCutProblem>> read_cut_text(std::string_view text) {
    return Reader{}.read(text);
}

} // namespace treadle::archive
