// The plan put into words and pictures once, and kept while the plan stays the same.
//
// A frame draws from here and makes no text. A part's reading is kept as long as its plan is the
// same object, so that one edit in a long job reads one part anew.

#pragma once

#include "edit/session.h"

#include "ui/views/find_index.h"
#include "ui/views/kept_height.h"
#include "ui/views/layouts_reading.h"
#include "ui/views/limits_reading.h"
#include "ui/views/order_reading.h"
#include "ui/views/picture.h"
#include "ui/views/placing_reading.h"
#include "ui/views/remedy_reading.h"
#include "ui/views/stock_reading.h"
#include "ui/views/work_reading.h"
#include "ui/widgets/verdict.h"

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace treadle::views {

struct CheckReading {
    std::string sentence;
    ui::Verdict verdict = ui::Verdict::not_known;
    bool warning = false;
    bool deciding = false;
};

struct OperationReading {
    std::string title;
    std::string detail;
    std::string verdict;
    std::string margin;
    std::string tools;
    std::string spoken;     ///< all of the row in one sentence
    std::string on_drawing; ///< "Operation 2 on the drawing: Punch 13/16 round at 2, 5"
    std::string strip;      ///< what the strip shows, in words
    ui::Verdict mark = ui::Verdict::not_known;
    double low_share = 0; ///< lengths of the strip, for the picture only
    double high_share = 0;
    std::vector<CheckReading> checks; ///< the deciding one first, then what is not simply fitting
    std::vector<std::string> needs;
    std::string missing; ///< path of the datum of the shop that is not known; or empty
    int shop_page = 0;   ///< where the shop has it
};

struct BendReading {
    struct Stage {
        std::string place; ///< "Bend 2 of 4"
        std::string operation;
        std::string stop;
        std::string lies;
        Picture picture; ///< after it
    };
    std::vector<Stage> stages;        ///< in order; empty when there is none
    std::vector<std::string> blocked; ///< which leg meets what
    std::string none;                 ///< why there is no order
    std::optional<int> shop_page;     ///< where what is missing can be filled in
};

/// What cord or generator do, and how it is found.
struct PowerReading {
    std::string words;
    ui::Verdict mark = ui::Verdict::not_known;
    std::vector<std::vector<std::string>> workings;
};

struct PartReading {
    std::shared_ptr<const plan::PartPlan> plan;
    std::string mark;
    std::string count; ///< "× 8"
    std::string title; ///< "Plate 1/2 × 8 × 10"
    std::string line;  ///< title, grade, pieces
    std::string mass;  ///< "11.3 lb each, 68 lb in all"
    std::string blank; ///< blank length of a bent part, or empty
    std::string verdict;
    std::string short_verdict; ///< for a narrow column
    std::string spoken;
    std::string problem;
    ui::Verdict verdict_mark = ui::Verdict::not_known;
    Picture small;
    KeptHeight announced;                        ///< where it is listed as left out
    std::shared_ptr<const equipment::Shop> shop; ///< that the words name
    PrintStyle style;

    // Made when first asked for: of a long job most parts are only rows of a list.
    [[nodiscard]] const std::vector<OperationReading>& operations() const;
    /// "BP2: does not fit, 14 % over."
    [[nodiscard]] const std::string& announcement() const;

    /// From where a drawing is seen: while that stays, so do its targets.
    struct Seen {
        ui::PointMm zero;
        double scale = 0;
        ui::Rect rect;
        float target = 0;
        friend bool operator==(const Seen& a, const Seen& b) {
            return a.zero.x == b.zero.x && a.zero.y == b.zero.y && a.scale == b.scale &&
                   a.rect == b.rect && a.target == b.target;
        }
    };
    struct Target { ///< operations that are chosen on the drawing by one button
        ui::Rect rect;
        std::vector<int> operations;
        std::string name;
    };
    struct Kept {
        PictureRoom room;
        Picture picture;
        Seen seen;
        std::vector<Target> targets;
    };
    std::optional<Kept> flat; ///< made when first looked at
    std::optional<Kept> finished;
    std::optional<BendReading> bends;
    std::optional<std::vector<SpreadReading>> spreads; ///< of the legs

private:
    mutable std::vector<OperationReading> operations_;
    mutable std::string announcement_;
};

/// A picture at full size that can be printed.
struct TemplateReading {
    std::string key;
    std::string title;
    int pages = 0;
    std::string refusal; ///< why it cannot be printed, in place of pages
};

[[nodiscard]] ui::Verdict mark_of(plan::Outcome outcome);
/// The first operation with the part's own outcome, when that is not a plain fit.
[[nodiscard]] int first_trouble(const PartReading& part);

class Readings {
public:
    /// Says a source by its key; without it a working shows the key.
    std::function<std::string(std::string_view)> source_title;
    FindIndex find;
    RemedyReadings remedies;
    WorkReadings work;
    LimitsReadings limits;
    LayoutsReadings layouts;
    StockReadings stock;
    PlacingReading placing;

    /// Brings everything up to the session's revision. Cheap when nothing changed.
    void refresh(const edit::Session& session);

    [[nodiscard]] const std::vector<std::shared_ptr<PartReading>>& parts() const { return parts_; }
    [[nodiscard]] OrderReading& order(const edit::Session& session);
    /// What can hurt, of any work and of the stations that this plan uses.
    [[nodiscard]] const std::vector<std::string>& cautions(const edit::Session& session);
    /// What of this job can be printed at full size on this paper.
    [[nodiscard]] const std::vector<TemplateReading>& templates(const edit::Session& session,
                                                                const PaperWishes& wishes);
    /// Lines of the working of one operation, or of the part itself for plan::k_none.
    [[nodiscard]] const std::vector<std::vector<std::string>>&
    working(const edit::Session& session, int part, int operation);

    [[nodiscard]] const std::vector<PowerReading>& power(const edit::Session& session);

private:
    [[nodiscard]] std::vector<std::vector<std::string>>
    lines_of(const std::vector<Working>& workings, PrintStyle style) const;

    std::uint64_t revision_ = ~std::uint64_t{0};
    PrintStyle style_;
    std::optional<job::ToleranceClass> tolerance_;
    std::shared_ptr<const equipment::Shop> shop_;
    std::vector<std::shared_ptr<PartReading>> parts_;
    OrderReadings order_;
    std::vector<std::string> cautions_;
    std::optional<std::vector<TemplateReading>> templates_;
    std::string templates_for_; ///< paper and printer
    std::vector<PowerReading> power_;
    std::map<std::pair<int, int>, std::vector<std::vector<std::string>>> workings_;
};

} // namespace treadle::views
