// The one door for a front end: job and shop, edits, undo, and a plan that is always fresh.
//
// An edit is a value that says what the new state of one thing is. It is checked whole; a refused
// edit changes nothing and says why, at its field.

#pragma once

#include "base/result.h"
#include "edit/layouts.h"
#include "equipment/shop.h"
#include "job/job.h"
#include "plan/plan.h"
#include "plan/wear.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace treadle::edit {

struct Document {
    job::Job job;
    std::shared_ptr<const equipment::Shop> shop;
};

struct SetJobNames { ///< name, note, due; parts untouched
    std::string name;
    std::string note;
    std::string due;
};
struct SetStyle {
    PrintStyle style;
};
struct SetTolerance { ///< class asked of the finished legs; none: nobody asks
    std::optional<job::ToleranceClass> tolerance;
};
/// Replaces the part with the same id. Like every edit of a single part it detaches one that a
/// layout made.
struct ReplacePart {
    job::Part part;
};
/// Adds a part; an empty id or a taken one gets a fresh id.
struct AddPart {
    job::Part part;
    int before = -1; ///< position, -1: at the end
};
/// Adds parts at the end in one step; each gets a fresh id.
struct AddParts {
    std::vector<job::Part> parts;
};
struct RemovePart {
    std::string id;
};
struct MovePart {
    std::string id;
    int to = 0;
};
struct MoveOperation { ///< within its part, to another place of the list
    std::string id;    ///< of the part
    int from = 0;
    int to = 0;
};
struct CopyOperation { ///< once more, right after itself
    std::string id;    ///< of the part
    int operation = 0;
};
struct ReplaceShop {
    equipment::Shop shop;
};
/// Adds the strokes of the plan to the tools of the crib that have a count.
struct BookStrokes {};
/// A tool comes back from the grinder: it counts from zero.
struct GroundTool {
    plan::EdgeKind kind = plan::EdgeKind::punch;
    int tool = 0; ///< index in the crib's list
};
struct UseMachine {  ///< puts another of the shop's machines to work
    int machine = 0; ///< as plan::machine_at counts them
};
struct SetOwnGrade { ///< adds or replaces by id
    Grade grade;
};
struct ReplaceDocument { ///< an opened or imported file; undoable like any edit
    Document document;
};

using Edit = std::variant<SetJobNames,
                          SetStyle,
                          SetTolerance,
                          ReplacePart,
                          AddPart,
                          AddParts,
                          RemovePart,
                          MovePart,
                          MoveOperation,
                          CopyOperation,
                          ReplaceShop,
                          BookStrokes,
                          GroundTool,
                          UseMachine,
                          SetOwnGrade,
                          AddLayout,
                          ChangeLayout,
                          RemoveLayout,
                          DetachPart,
                          ReplaceDocument>;

class Session {
public:
    static constexpr int k_undo_steps = 200;

    /// A state that undo or redo leads to, and the words of the edit between it and its neighbour
    /// on the way to the present.
    struct Step {
        std::shared_ptr<const Document> document;
        std::string words;
    };
    /// States oldest first, the one shown, and what undo took back, the next redo last.
    struct History {
        std::vector<Step> past;
        std::shared_ptr<const Document> now;
        std::vector<Step> future;
    };

    /// The document must have passed the archive's or the rooms' own checks.
    Session(Document document, std::shared_ptr<const job::Catalog> catalog);
    /// Goes on where another session stopped. Of a longer past the latest steps are kept.
    Session(History history, std::shared_ptr<const job::Catalog> catalog);

    [[nodiscard]] const job::Job& job() const { return document_->job; }
    [[nodiscard]] const equipment::Shop& shop() const { return *document_->shop; }
    [[nodiscard]] const job::Catalog& catalog() const { return *catalog_; }
    [[nodiscard]] const plan::Plan& plan() const { return plan_; }
    [[nodiscard]] const Document& document() const { return *document_; }

    /// Nothing when taken; a refusal when not, and then nothing has changed. An edit that says what
    /// already is so leaves no step behind.
    [[nodiscard]] std::optional<base::Refusal> apply(Edit edit);

    [[nodiscard]] bool can_undo() const { return !past_.empty(); }
    [[nodiscard]] bool can_redo() const { return !future_.empty(); }
    bool undo();
    bool redo();
    /// What undo or redo would take back, in words: "thickness of BP2".
    [[nodiscard]] std::string undo_words() const;
    [[nodiscard]] std::string redo_words() const;
    [[nodiscard]] const std::vector<Step>& past() const { return past_; }
    [[nodiscard]] const std::vector<Step>& future() const { return future_; }
    /// Rises with every change, undo and redo: a view compares it instead of contents.
    [[nodiscard]] std::uint64_t revision() const { return revision_; }
    /// Goes on counting where another session stopped that was shown before.
    void count_from(std::uint64_t revision) { revision_ = revision + 1; }

private:
    void take(std::shared_ptr<const Document> document);

    std::shared_ptr<const job::Catalog> catalog_;
    std::shared_ptr<const Document> document_;
    plan::Plan plan_;
    std::vector<Step> past_;
    std::vector<Step> future_;
    std::uint64_t revision_ = 0;
};

} // namespace treadle::edit
