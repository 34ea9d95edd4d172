#include "calc/answer_builder.h"

namespace treadle::calc {

AnswerBuilder&
AnswerBuilder::add(const char* name, base::Result<Working> working, const std::string& note) {
    if (working.ok())
        answer_.figures.push_back({name, working->result.value});
    show(std::move(working));
    if (!fault_ && !note.empty()) {
        std::string& own = answer_.workings.back().note;
        own = own.empty() ? note : note + " " + own;
    }
    return *this;
}

AnswerBuilder& AnswerBuilder::show(base::Result<Working> working) {
    if (!working.ok()) {
        if (!fault_)
            fault_ = working.refusal();
    } else if (!fault_) {
        answer_.workings.push_back(std::move(working).value());
    }
    return *this;
}

AnswerBuilder& AnswerBuilder::figure(const char* name, AnyQuantity value) {
    answer_.figures.push_back({name, value});
    return *this;
}

AnswerBuilder& AnswerBuilder::list(const char* name, std::vector<Length> values) {
    answer_.figures.push_back({name, Length{}, std::move(values)});
    return *this;
}

base::Result<Answer> AnswerBuilder::finish() {
    if (fault_)
        return *fault_;
    return std::move(answer_);
}

} // namespace treadle::calc
