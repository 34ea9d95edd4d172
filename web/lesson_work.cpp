#include "lesson_work.h"

#include "plan/capacity.h"

#include "assets/embedded.h"

#include <algorithm>
#include <utility>

#include "lesson/numbers.h"
#include "lesson_blocks.h"

namespace treadle::web {

namespace {

using Do = views::LessonAsk::Do;

std::string row_detail(const Course& course) {
    std::string detail = std::to_string(course.lesson.steps.size()) + " steps. " +
                         lesson::count_words(lesson::count(course.lesson, course.record)) + ".";
    if (!course.from.empty())
        detail += " From " + course.from + ".";
    return detail;
}

/// The first part of this mark, and what of it is looked at.
void choose(views::State& state, const lesson::Demonstration& show, const edit::Session& session) {
    using Opens = lesson::Demonstration::Opens;
    state.place = show.opens == Opens::parts ? views::Place::parts : views::Place::limits;
    state.limits_machines = show.opens == Opens::machines;
    state.limits_grade = show.grade;
    for (const job::PartRef& part : session.job().parts)
        if (state.part.empty() || part->mark == show.part) {
            state.part = part->id;
            state.operation = part->operations.empty() ? -1 : 0;
        }
    state.detail_open = !show.part.empty();
}

/// Of the station or attachment with this id among the places of the picture; the first when none.
int place_index(const std::string& id, const equipment::Shop& shop) {
    const std::vector<plan::Mounting> places = plan::capacity_places(shop.machine);
    for (std::size_t i = 0; i < places.size(); ++i) {
        const plan::Mounting& place = places[i];
        const std::string& own =
            place.attachment != plan::k_none
                ? shop.machine.attachments[static_cast<std::size_t>(place.attachment)].id
                : shop.machine.stations[static_cast<std::size_t>(place.station)].id;
        if (own == id)
            return static_cast<int>(i);
    }
    return 0;
}

} // namespace

LessonWork::LessonWork(std::shared_ptr<const job::Catalog> catalog)
    : catalog_(std::move(catalog)) {}

void LessonWork::begin() {
    if (!std::exchange(has_read_, true)) {
        auto lessons = archive::read_built_in_lessons();
        if (!lessons)
            board_.trouble = "The lessons could not be read. " + lessons.refusal().field + ": " +
                             lessons.refusal().reason;
        else
            for (archive::BuiltInLesson& one : std::move(lessons).value())
                courses_.push_back(
                    {std::move(one.id), "", false, std::move(one.lesson), 0, {}, {}});
    }
    refresh();
}

std::optional<base::Refusal>
LessonWork::open_file(const std::string& name, std::string_view bytes, bool on_shelf) {
    auto lesson = archive::read_lesson(bytes);
    if (!lesson)
        return lesson.refusal();
    begin();
    const auto same = std::find_if(courses_.begin(), courses_.end(), [&](const Course& course) {
        return course.from == name && course.on_shelf == on_shelf;
    });
    Course course;
    course.id = "file-" + std::to_string(courses_.size());
    course.from = name;
    course.on_shelf = on_shelf;
    course.lesson = std::move(lesson).value();
    if (same != courses_.end()) {
        course.id = same->id;
        *same = std::move(course);
        open_course(static_cast<std::size_t>(same - courses_.begin()));
    } else {
        courses_.push_back(std::move(course));
        open_course(courses_.size() - 1);
    }
    return std::nullopt;
}

bool LessonWork::open_wished(const archive::LinkWishes& wishes) {
    begin();
    const auto found = std::find_if(courses_.begin(), courses_.end(), [&](const Course& course) {
        return course.id == wishes.lesson || (course.on_shelf && course.from == wishes.lesson);
    });
    if (found == courses_.end())
        return false;
    open_course(static_cast<std::size_t>(found - courses_.begin()));
    if (wishes.seed)
        found->record.seed = std::min(static_cast<unsigned>(*wishes.seed), lesson::k_most_seed);
    hides_answers_ = wishes.hide == "answers";
    board_.is_presenting = wishes.view == "present";
    const int last = static_cast<int>(found->lesson.steps.size());
    go(*found, static_cast<std::size_t>(std::clamp(wishes.step.value_or(1), 1, last) - 1));
    refresh();
    return true;
}

void LessonWork::open_course(std::size_t index) {
    open_ = index;
    before_reset_.reset();
    go(courses_[index], courses_[index].step);
    refresh();
}

void LessonWork::go(Course& course, std::size_t step) {
    course.step = std::min(step, course.lesson.steps.size() - 1);
    show_demonstration(course);
}

void LessonWork::show_demonstration(const Course& course) {
    shown_.reset();
    const lesson::Step& step = course.lesson.steps[course.step];
    if (step.kind != lesson::StepKind::demonstration)
        return;
    auto file = archive::read_file(
        assets::embedded(archive::demo_path(step.demonstration.job)).value_or(""));
    if (!file)
        return;
    edit::Document document{std::move(file->job),
                            std::make_shared<const equipment::Shop>(std::move(file->shop))};
    shown_ = std::make_unique<Demonstrated>(
        Demonstrated{edit::Session(std::move(document), catalog_), {}, {}, {}});
    shown_->readings.source_title = source_title;
    choose(shown_->state, step.demonstration, shown_->session);
    shown_->state.limits_place = place_index(step.demonstration.place, shown_->session.shop());
}

void LessonWork::take_shown() {
    if (shown_ == nullptr)
        return;
    for (views::Ask& ask : std::exchange(shown_->asks, {})) {
        if (auto* const plain = std::get_if<views::PlainEdit>(&ask)) {
            if (const auto refusal = shown_->session.apply(std::move(plain->edit)))
                announce(refusal->reason);
            else if (!plain->select_part.empty())
                shown_->state.part = plain->select_part;
        } else if (auto* const field = std::get_if<views::FieldEdit>(&ask)) {
            if (const auto refusal = shown_->session.apply(std::move(field->edit)))
                views::set_fault(shown_->state, {field->field, field->typed, refusal->reason});
            else
                views::clear_fault(shown_->state, field->field);
        } else if (const auto* const wish = std::get_if<views::Wish>(&ask)) {
            if (*wish == views::Wish::undo)
                shown_->session.undo();
            else if (*wish == views::Wish::redo)
                shown_->session.redo();
        }
    }
}

void LessonWork::say(const lesson::Judgement& judged) {
    announce((judged.step.empty() ? "" : "Wrong step: " + judged.step + ". ") + judged.words);
}

void LessonWork::answer(Course& course) {
    const lesson::Step& step = course.lesson.steps[course.step];
    if (step.kind != lesson::StepKind::exercise)
        return;
    LessonStepState& state = course.states[course.step];
    const auto key = lesson::key_of(
        step, course.step, course.record.seed, {catalog_->grades, catalog_->sections});
    state.said = key ? lesson::judge(*key, state.typed, course.lesson.style())
                     : lesson::Judgement{lesson::Mark::unreadable,
                                         "",
                                         "This exercise does not work: " + key.refusal().reason};
    lesson::note(course.record, course.step, state.typed, *state.said);
    say(*state.said);
}

void LessonWork::pick(Course& course, plan::Outcome outcome) {
    const lesson::Step& step = course.lesson.steps[course.step];
    if (step.kind != lesson::StepKind::verdict)
        return;
    const lesson::TrialPlan plan =
        lesson::plan_trial(lesson::part_of(step.trial, course.record.seed, course.step),
                           step.trial,
                           course.lesson.style(),
                           *catalog_);
    LessonStepState& state = course.states[course.step];
    state.picked = outcome;
    state.said = lesson::judge(step, plan, outcome);
    lesson::note(course.record,
                 course.step,
                 std::string("it ") + lesson::outcome_words(outcome),
                 *state.said);
    say(*state.said);
}

void LessonWork::reset(Course& course, bool all) {
    before_reset_ = course;
    if (all) {
        course.record.tried.clear();
        course.states.clear();
        go(course, 0);
    } else {
        course.record.tried.erase(course.step);
        course.states.erase(course.step);
    }
    announce(all ? "The lesson begins anew." : "This exercise begins anew.");
}

void LessonWork::use_seed(Course& course, unsigned seed) {
    before_reset_ = course;
    course.record = {seed, {}};
    course.states.clear();
    announce("Numbers of set " + std::to_string(seed) + ".");
}

void LessonWork::take(const views::LessonAsk& ask) {
    if (ask.what == Do::open)
        for (std::size_t i = 0; i < courses_.size(); ++i)
            if (courses_[i].id == ask.text)
                return open_course(i);
    Course* const course = open();
    if (course != nullptr && !move(*course, ask.what))
        work(*course, ask);
    refresh();
}

/// From step to step, and what concerns the lesson as a whole. False when it is neither.
bool LessonWork::move(Course& course, Do what) {
    switch (what) {
    case Do::close:
        open_ = ~std::size_t{0};
        board_.is_presenting = false;
        shown_.reset();
        return true;
    case Do::next:
        go(course, course.step + 1);
        return true;
    case Do::back:
        go(course, course.step - (course.step > 0 ? 1 : 0));
        return true;
    case Do::present:
        board_.is_presenting = !board_.is_presenting;
        return true;
    case Do::new_numbers:
        use_seed(course, (course.record.seed + 1) % (lesson::k_most_seed + 1));
        return true;
    case Do::reset_step:
    case Do::reset_all:
        reset(course, what == Do::reset_all);
        return true;
    case Do::undo_reset:
        if (before_reset_) {
            course = std::move(*before_reset_);
            before_reset_.reset();
            go(course, course.step);
        }
        return true;
    case Do::begin_again:
        show_demonstration(course);
        return true;
    default:
        return false;
    }
}

/// On the step that is open.
void LessonWork::work(Course& course, const views::LessonAsk& ask) {
    LessonStepState& state = course.states[course.step];
    switch (ask.what) {
    case Do::answer:
        state.typed = ask.text;
        state.said.reset();
        return;
    case Do::check:
        return answer(course);
    case Do::pick:
        return pick(course, static_cast<plan::Outcome>(ask.choice));
    case Do::hint:
        state.hinted = true;
        return;
    case Do::reveal:
    case Do::reveal_all:
        return reveal(course, ask.what == Do::reveal_all);
    case Do::cover:
        state.revealed = 0;
        return;
    case Do::break_it:
        state.broken = true;
        return;
    default:
        return;
    }
}

void LessonWork::reveal(Course& course, bool all) {
    const StepSight sight{course, *catalog_, source_title, hides_answers_, board_.is_presenting};
    const std::vector<std::string> lines = solution_lines(sight);
    LessonStepState& state = course.states[course.step];
    const std::size_t before = state.revealed;
    state.revealed = all ? lines.size() : std::min(lines.size(), state.revealed + 1);
    if (lesson::is_question(sight.step().kind))
        lesson::note_look(course.record, course.step);
    std::string words;
    for (std::size_t i = before; i < state.revealed; ++i)
        words += (words.empty() ? "" : " ") + lines[i];
    announce(words);
}

void LessonWork::refresh() {
    board_.rows.clear();
    for (const Course& course : courses_)
        board_.rows.push_back(
            {course.id, course.lesson.title, course.lesson.about, row_detail(course)});
    const Course* const course = open();
    board_.is_open = course != nullptr;
    board_.blocks.clear();
    board_.foot.clear();
    board_.shows = shown_ != nullptr;
    if (course == nullptr) {
        views::LessonKey leave;
        leave.id = "leave";
        leave.label = "Back to the job";
        leave.ask.what = Do::leave;
        board_.head = {std::move(leave)};
        return;
    }
    const StepSight sight{*course, *catalog_, source_title, hides_answers_, board_.is_presenting};
    board_.title = course->lesson.title;
    board_.step = course->id + "-" + std::to_string(course->step);
    board_.step_title = sight.step().title;
    board_.place = "Step " + std::to_string(course->step + 1) + " of " +
                   std::to_string(course->lesson.steps.size()) + ". " +
                   lesson::step_kind_words(sight.step().kind) + ". Numbers of set " +
                   std::to_string(course->record.seed) + ".";
    board_.blocks = step_blocks(sight);
    board_.head = head_keys(sight, before_reset_.has_value());
    board_.foot = foot_keys(sight);
}

lesson::Results LessonWork::results() const {
    if (open_ >= courses_.size())
        return {};
    return lesson::results(courses_[open_].lesson, courses_[open_].record, *catalog_);
}

base::Result<std::string> LessonWork::link() const {
    if (open_ >= courses_.size())
        return base::Refusal{"link", "No lesson is open.", ""};
    const Course& course = courses_[open_];
    if (!course.from.empty() && !course.on_shelf)
        return base::Refusal{"link",
                             "This lesson was opened from a file, which no link can find.",
                             "put it on the shelf of the host"};
    archive::LinkWishes wishes;
    wishes.lesson = course.from.empty() ? course.id : course.from;
    wishes.seed = static_cast<int>(course.record.seed);
    wishes.step = static_cast<int>(course.step) + 1;
    if (hides_answers_)
        wishes.hide = "answers";
    return archive::write_lesson_link(wishes);
}

} // namespace treadle::web
