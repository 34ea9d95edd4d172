#include "edit/session.h"

#include "edit/added_parts.h"
#include "edit/changes.h"
#include "edit/operations.h"
#include "plan/machines.h"

#include <algorithm>
#include <string_view>

namespace treadle::edit {

namespace {

using base::Refusal;

/// The document an edit leads to, and what the undo button says; no document: nothing changes.
struct Outcome {
    std::shared_ptr<const Document> document;
    std::string words;
};
using Applied = base::Result<Outcome>;

/// Everything of a job but its parts, so that one name is not paid for with a thousand parts.
std::optional<Refusal> fault_without_parts(const job::Job& job) {
    job::Job light;
    light.name = job.name;
    light.note = job.note;
    light.due = job.due;
    light.style = job.style;
    light.own_grades = job.own_grades;
    light.layouts = job.layouts;
    const auto sound = job::checked(std::move(light));
    if (sound.ok())
        return std::nullopt;
    return sound.refusal();
}

int position_of(const job::Job& job, std::string_view id) {
    for (std::size_t i = 0; i < job.parts.size(); ++i)
        if (job.parts[i]->id == id)
            return static_cast<int>(i);
    return -1;
}

Refusal no_such_part() { return {"id", "There is no such part in this job.", ""}; }

Outcome changed(const Document& document, std::string words) {
    return {std::make_shared<const Document>(document), std::move(words)};
}

/// The same document with another crib.
Applied with_crib(const Document& now, equipment::Crib crib, std::string words) {
    equipment::Shop shop = *now.shop;
    shop.crib = std::move(crib);
    auto sound = equipment::checked(std::move(shop));
    if (!sound.ok())
        return sound.refusal();
    Document next = now;
    next.shop = std::make_shared<const equipment::Shop>(std::move(sound).value());
    return changed(next, std::move(words));
}

/// The same document with one part made anew; `words` end where its mark follows.
template <class Make>
Applied with_part(const Document& now, std::string_view id, const Make& make, std::string words) {
    const int at = position_of(now.job, id);
    if (at < 0)
        return no_such_part();
    Document next = now;
    job::PartRef& part = next.job.parts[static_cast<std::size_t>(at)];
    auto made = make(*part);
    if (!made.ok())
        return made.refusal();
    auto sound = job::checked(std::move(made).value());
    if (!sound.ok())
        return sound.refusal();
    part = std::make_shared<const job::Part>(std::move(sound).value());
    words += part->mark;
    return changed(next, words + detach(next.job, id));
}

/// Sets the count of one tool to zero; false when there is no such tool.
template <class Tool>
bool count_from_zero(std::vector<Tool>& tools, int index) {
    if (index < 0 || index >= static_cast<int>(tools.size()))
        return false;
    tools[static_cast<std::size_t>(index)].strokes_since_grind = 0;
    return true;
}

struct Apply {
    const Document& now;
    const plan::Plan& plan;
    const job::Catalog& catalog;

    Applied operator()(SetJobNames& edit) const {
        Document next = now;
        const bool name = next.job.name != edit.name;
        const bool note = next.job.note != edit.note;
        const bool due = next.job.due != edit.due;
        if (!name && !note && !due)
            return Outcome{};
        next.job.name = std::move(edit.name);
        next.job.note = std::move(edit.note);
        next.job.due = std::move(edit.due);
        if (auto fault = fault_without_parts(next.job))
            return *fault;
        const bool one =
            static_cast<int>(name) + static_cast<int>(note) + static_cast<int>(due) == 1;
        return changed(next,
                       !one   ? "name and notes of the job"
                       : name ? "name of the job"
                       : note ? "note of the job"
                              : "due date");
    }

    Applied operator()(SetStyle& edit) const {
        if (now.job.style == edit.style)
            return Outcome{};
        Document next = now;
        next.job.style = edit.style;
        if (auto fault = fault_without_parts(next.job))
            return *fault;
        return changed(next, "units");
    }

    Applied operator()(SetTolerance& edit) const {
        if (now.job.tolerance == edit.tolerance)
            return Outcome{};
        Document next = now;
        next.job.tolerance = edit.tolerance;
        return changed(next, "tolerance of the legs");
    }

    Applied operator()(ReplacePart& edit) const {
        const int at = position_of(now.job, edit.part.id);
        if (at < 0)
            return no_such_part();
        auto sound = job::checked(std::move(edit.part));
        if (!sound.ok())
            return sound.refusal();
        const job::Part& before = *now.job.parts[static_cast<std::size_t>(at)];
        std::string words = change_words(before, sound.value());
        if (words.empty())
            return Outcome{};
        Document next = now;
        next.job.parts[static_cast<std::size_t>(at)] =
            std::make_shared<const job::Part>(std::move(sound).value());
        words += detach(next.job, before.id);
        return changed(next, std::move(words));
    }

    Applied operator()(AddPart& edit) const {
        const int count = static_cast<int>(now.job.parts.size());
        if (edit.before < -1 || edit.before > count)
            return Refusal{"before", "There is no such place in the list.", ""};
        if (edit.part.id.empty() || position_of(now.job, edit.part.id) >= 0)
            edit.part.id = fresh_id(now.job);
        auto sound = job::checked(std::move(edit.part));
        if (!sound.ok())
            return sound.refusal();
        Document next = now;
        const int at = edit.before == -1 ? count : edit.before;
        std::string words = "part " + sound.value().mark + " added";
        next.job.parts.insert(next.job.parts.begin() + at,
                              std::make_shared<const job::Part>(std::move(sound).value()));
        return changed(next, std::move(words));
    }

    Applied operator()(AddParts& edit) const {
        if (edit.parts.empty())
            return Outcome{};
        const std::size_t count = edit.parts.size();
        std::string words = count == 1 ? "part " + edit.parts[0].mark + " added"
                                       : std::to_string(count) + " parts added";
        auto next = with_parts(now.job, std::move(edit.parts));
        if (!next.ok())
            return next.refusal();
        return changed(Document{std::move(next).value(), now.shop}, std::move(words));
    }

    Applied operator()(RemovePart& edit) const {
        const int at = position_of(now.job, edit.id);
        if (at < 0)
            return no_such_part();
        Document next = now;
        std::string words =
            "part " + next.job.parts[static_cast<std::size_t>(at)]->mark + " removed";
        next.job.parts.erase(next.job.parts.begin() + at);
        words += detach(next.job, edit.id, true);
        return changed(next, std::move(words));
    }

    Applied operator()(MovePart& edit) const {
        const int at = position_of(now.job, edit.id);
        if (at < 0)
            return no_such_part();
        if (edit.to < 0 || edit.to >= static_cast<int>(now.job.parts.size()))
            return Refusal{"to", "There is no such place in the list.", ""};
        if (edit.to == at)
            return Outcome{};
        Document next = now;
        auto& parts = next.job.parts;
        job::PartRef moved = parts[static_cast<std::size_t>(at)];
        parts.erase(parts.begin() + at);
        std::string words = "place of " + moved->mark;
        parts.insert(parts.begin() + edit.to, std::move(moved));
        return changed(next, std::move(words));
    }

    Applied operator()(MoveOperation& edit) const {
        if (edit.from == edit.to)
            return Outcome{};
        return with_part(
            now,
            edit.id,
            [&](job::Part part) { return with_moved(std::move(part), edit.from, edit.to); },
            "place of operation " + std::to_string(edit.from + 1) + " of ");
    }

    Applied operator()(CopyOperation& edit) const {
        return with_part(
            now,
            edit.id,
            [&](job::Part part) { return with_copied(std::move(part), edit.operation); },
            "operation " + std::to_string(edit.operation + 2) + " added to ");
    }

    Applied operator()(ReplaceShop& edit) const {
        auto sound = equipment::checked(std::move(edit.shop));
        if (!sound.ok())
            return sound.refusal();
        Document next = now;
        next.shop = std::make_shared<const equipment::Shop>(std::move(sound).value());
        return changed(next, "machine and tools");
    }

    Applied operator()(UseMachine& edit) const {
        if (edit.machine < 0 || edit.machine >= plan::machine_count(*now.shop))
            return Refusal{"machine", "The shop has no such machine.", ""};
        if (edit.machine == 0)
            return Outcome{};
        Document next = now;
        next.shop =
            std::make_shared<const equipment::Shop>(plan::shop_with(*now.shop, edit.machine));
        return changed(next, "machine in use");
    }

    Applied operator()(BookStrokes&) const {
        bool counted = false;
        for (const plan::ToolWear& wear : plan::tool_wear(plan, *now.shop))
            counted = counted || wear.before.has_value();
        if (!counted)
            return Refusal{"shop.crib",
                           "No tool that this job uses has a stroke count to add to.",
                           "Enter its strokes since the last grinding, or say that it is ground."};
        return with_crib(now, plan::with_strokes(plan, *now.shop), "strokes of this job booked");
    }

    Applied operator()(GroundTool& edit) const {
        equipment::Crib crib = now.shop->crib;
        const bool found =
            edit.kind == plan::EdgeKind::punch ? count_from_zero(crib.punches, edit.tool)
            : edit.kind == plan::EdgeKind::die ? count_from_zero(crib.dies, edit.tool)
                                               : count_from_zero(crib.saddle_dies, edit.tool);
        if (!found)
            return Refusal{"tool", "There is no such tool in the crib.", ""};
        return with_crib(now,
                         std::move(crib),
                         "grinding of " +
                             plan::edge_words(edit.kind, edit.tool, *now.shop, now.job.style));
    }

    Applied operator()(SetOwnGrade& edit) const {
        Document next = now;
        auto& grades = next.job.own_grades;
        const auto known = std::find_if(grades.begin(), grades.end(), [&](const Grade& grade) {
            return grade.id == edit.grade.id;
        });
        std::string words = "grade " + edit.grade.name;
        if (known != grades.end())
            *known = std::move(edit.grade);
        else
            grades.push_back(std::move(edit.grade));
        if (same(grades, now.job.own_grades))
            return Outcome{};
        if (auto fault = fault_without_parts(next.job))
            return *fault;
        return changed(next, std::move(words));
    }

    template <class LayoutEdit>
    Applied laid_out(const LayoutEdit& edit) const {
        auto next = with_layout(now.job, edit, catalog);
        if (!next.ok())
            return next.refusal();
        if (next->words.empty())
            return Outcome{};
        return changed({next->job, now.shop}, next->words);
    }
    Applied operator()(AddLayout& edit) const { return laid_out(edit); }
    Applied operator()(ChangeLayout& edit) const { return laid_out(edit); }
    Applied operator()(RemoveLayout& edit) const { return laid_out(edit); }
    Applied operator()(DetachPart& edit) const { return laid_out(edit); }

    Applied operator()(ReplaceDocument& edit) const {
        if (edit.document.shop == nullptr)
            return Refusal{"shop", "The file has no shop.", ""};
        auto job = job::checked(std::move(edit.document.job));
        if (!job.ok())
            return job.refusal();
        auto shop = equipment::checked(*edit.document.shop);
        if (!shop.ok())
            return shop.refusal();
        Document next{std::move(job).value(),
                      std::make_shared<const equipment::Shop>(std::move(shop).value())};
        return changed(next, "opening of a file");
    }
};

/// True when parts that are the same objects have the same plan in both.
bool same_ground(const Document& a, const Document& b) {
    return a.shop == b.shop && a.job.style == b.job.style &&
           same(a.job.own_grades, b.job.own_grades);
}

} // namespace

Session::Session(Document document, std::shared_ptr<const job::Catalog> catalog)
    : Session(History{{}, std::make_shared<const Document>(std::move(document)), {}},
              std::move(catalog)) {}

Session::Session(History history, std::shared_ptr<const job::Catalog> catalog)
    : catalog_(std::move(catalog)),
      document_(std::move(history.now)),
      past_(std::move(history.past)),
      future_(std::move(history.future)) {
    TREADLE_EXPECT(catalog_ != nullptr && document_ != nullptr && document_->shop != nullptr);
    if (past_.size() > static_cast<std::size_t>(k_undo_steps))
        past_.erase(past_.begin(), past_.end() - k_undo_steps);
    plan_ = plan::make_plan(document_->job, *document_->shop, *catalog_);
}

void Session::take(std::shared_ptr<const Document> document) {
    const bool reuse = same_ground(*document_, *document);
    document_ = std::move(document);
    plan_ = reuse ? plan::replan(plan_, document_->job, *document_->shop, *catalog_)
                  : plan::make_plan(document_->job, *document_->shop, *catalog_);
    ++revision_;
}

std::optional<base::Refusal> Session::apply(Edit edit) {
    auto applied = std::visit(Apply{*document_, plan_, *catalog_}, edit);
    if (!applied.ok())
        return applied.refusal();
    Outcome outcome = std::move(applied).value();
    if (outcome.document == nullptr)
        return std::nullopt;
    past_.push_back({document_, std::move(outcome.words)});
    if (past_.size() > static_cast<std::size_t>(k_undo_steps))
        past_.erase(past_.begin());
    future_.clear();
    take(std::move(outcome.document));
    return std::nullopt;
}

bool Session::undo() {
    if (past_.empty())
        return false;
    Step step = std::move(past_.back());
    past_.pop_back();
    future_.push_back({document_, std::move(step.words)});
    take(std::move(step.document));
    return true;
}

bool Session::redo() {
    if (future_.empty())
        return false;
    Step step = std::move(future_.back());
    future_.pop_back();
    past_.push_back({document_, std::move(step.words)});
    take(std::move(step.document));
    return true;
}

std::string Session::undo_words() const { return past_.empty() ? "" : past_.back().words; }
std::string Session::redo_words() const { return future_.empty() ? "" : future_.back().words; }

} // namespace treadle::edit
