#include "ui/views/remedy_reading.h"

#include "plan/remedy.h"

namespace treadle::views {

namespace {

RemedyReading read(plan::Remedy remedy, const edit::Session& session) {
    RemedyReading reading;
    reading.result = plan::remedy_result_words(remedy, session.shop(), session.job().style);
    reading.words = std::move(remedy.words);
    reading.why = std::move(remedy.why);
    // A strength that nobody has read may not be entered by a key: the words say what to look for.
    if (remedy.kind == plan::Remedy::Kind::certificate)
        reading.why = "Read it first, then enter what it says under Change sizes.";
    else
        reading.key = "Try it: " + reading.words + ", " + reading.result;
    if (remedy.kind != plan::Remedy::Kind::elsewhere)
        reading.ink = ui::ink_of(
            remedy.planned.outcome == plan::Outcome::fits ? ui::Verdict::fits : ui::Verdict::up_to);
    reading.part = std::move(remedy.part);
    return reading;
}

} // namespace

const std::vector<RemedyReading>&
RemedyReadings::of(const edit::Session& session, int part, int operation) {
    if (revision_ == session.revision() && part_ == part && operation_ == operation)
        return list_;
    revision_ = session.revision();
    part_ = part;
    operation_ = operation;
    list_.clear();
    const plan::PartPlan& plan = *session.plan().parts[static_cast<std::size_t>(part)];
    for (plan::Remedy& remedy : plan::remedies(plan,
                                               static_cast<std::size_t>(operation),
                                               session.job(),
                                               session.shop(),
                                               session.catalog()))
        list_.push_back(read(std::move(remedy), session));
    return list_;
}

} // namespace treadle::views
