#include "cli/calc_lines.h"

#include "archive/archive.h"
#include "calc/answer_json.h"
#include "calc/calculation.h"

namespace treadle::cli {

void CalcLines::answer(std::string_view line, std::string& out) const {
    if (too_long_) {
        out += calc::refusal_json({"line", "The line is too long.", ""});
    } else if (const auto request = archive::read_calc_line(line); !request.ok()) {
        out += calc::refusal_json(request.refusal());
    } else {
        const auto answer =
            calc::run(request->name, request->input, {catalog_.grades, catalog_.sections});
        out += answer.ok() ? calc::answer_json(request->name, answer.value())
                           : calc::refusal_json(answer.refusal());
    }
    out += '\n';
}

std::string CalcLines::take(std::string_view piece) {
    std::string out;
    while (!piece.empty()) {
        const std::size_t end = piece.find('\n');
        const std::string_view part = piece.substr(0, end);
        too_long_ = too_long_ || begun_.size() + part.size() > k_longest_line;
        if (end == std::string_view::npos) {
            if (!too_long_)
                begun_ += part;
            break;
        }
        if (begun_.empty())
            answer(part, out);
        else
            answer(begun_.append(part), out);
        begun_.clear();
        too_long_ = false;
        piece.remove_prefix(end + 1);
    }
    return out;
}

std::string CalcLines::end() {
    std::string out;
    if (!begun_.empty() || too_long_)
        answer(begun_, out);
    begun_.clear();
    too_long_ = false;
    return out;
}

} // namespace treadle::cli
