// The plan put into words and pictures once, and kept while the plan stays the same.
//
// A frame draws from here and makes no text. A part's reading is kept as long as its plan is the
// same object, so that one edit in a long job reads one part anew.

#pragma once

#include "edit/session.h"
#include "sheet/drawing.h"

#include "ui/views/find_index.h"
#include "ui/views/limits_reading.h"
#include "ui/views/remedy_reading.h"
#include "ui/views/stock_reading.h"
#include "ui/views/work_reading.h"
#include "ui/widgets/drawing.h"
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

/// A drawing with its points turned into what the painter takes.
struct Picture {
    struct Line {
        std::vector<ui::PointMm> points;
        bool closed = false;
        sheet::Pen pen = sheet::Pen::outline;
        sheet::Fill fill = sheet::Fill::none;
        int operation = plan::k_none;
    };
    struct Round {
        ui::PointMm centre;
        double radius_mm = 0;
        sheet::Pen pen = sheet::Pen::outline;
        sheet::Fill fill = sheet::Fill::paper;
        int operation = plan::k_none;
    };
    struct Word {
        ui::PointMm at;
        std::string text;
        sheet::Anchor anchor = sheet::Anchor::middle;
        bool bold = false;
        int operation = plan::k_none;
    };
    struct Ring { ///< number of an operation
        ui::PointMm at;
        int operation = 0;
    };
    std::vector<Line> lines;
    std::vector<Round> rounds;
    std::vector<Word> words;
    std::vector<Ring> rings;
    ui::BoundsMm bounds;
    std::string description;
};
[[nodiscard]] Picture to_picture(const sheet::Drawing& drawing);

/// The height of an entry as it came out last: a long list leaves out what is far out of sight, and
/// keeps its place.
struct KeptHeight {
    float width = -1; ///< and the height of the type it was measured with
    float type = 0;
    float height = 0;
};

/// Room for a drawing in pixels, and the height of the type in it.
struct PictureRoom {
    float wide = 0;
    float high = 0;
    float type = 16;
    friend bool operator==(const PictureRoom& a, const PictureRoom& b) {
        return a.wide == b.wide && a.high == b.high && a.type == b.type;
    }
};

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
    std::string spoken; ///< all of the row in one sentence
    std::string strip;  ///< what the strip shows, in words
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
    std::string announcement;  ///< "BP2: does not fit, 14 % over."
    std::string spoken;
    std::string problem;
    ui::Verdict verdict_mark = ui::Verdict::not_known;
    Picture small;
    KeptHeight announced; ///< where it is listed as left out
    std::vector<OperationReading> operations;
    struct Kept {
        PictureRoom room;
        Picture picture;
    };
    std::optional<Kept> flat; ///< made when first looked at
    std::optional<Kept> finished;
    std::optional<BendReading> bends;
    std::optional<std::vector<SpreadReading>> spreads; ///< of the legs
};

struct StepReading {
    std::string title;  ///< "BP2"
    std::string detail; ///< "× 6   Punch 13/16 round, 24 strokes"
    std::string spoken;
    std::string notes; ///< mark, batches, what is measured
    int part = 0;
    int operation = 0;
    KeptHeight drawn;
};
struct SetUpReading {
    std::string title;
    std::string tools;
    std::string strokes;
    std::vector<std::string> settings;
    std::vector<StepReading> steps;
    KeptHeight head;
    KeptHeight all_steps;
};

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
    StockReadings stock;

    /// Brings everything up to the session's revision. Cheap when nothing changed.
    void refresh(const edit::Session& session);

    [[nodiscard]] const std::vector<std::shared_ptr<PartReading>>& parts() const { return parts_; }
    [[nodiscard]] const std::vector<SetUpReading>& order() const { return order_; }
    [[nodiscard]] std::vector<SetUpReading>& order() { return order_; }
    [[nodiscard]] const std::vector<std::string>& shopping() const { return shopping_; }
    [[nodiscard]] const std::string& totals() const { return totals_; }
    [[nodiscard]] const std::string& time() const { return time_; }
    /// What can hurt, of any work and of the stations that this plan uses.
    [[nodiscard]] const std::vector<std::string>& cautions(const edit::Session& session);
    /// Lines of the working of one operation, or of the part itself for plan::k_none.
    [[nodiscard]] const std::vector<std::vector<std::string>>&
    working(const edit::Session& session, int part, int operation);

private:
    std::uint64_t revision_ = ~std::uint64_t{0};
    PrintStyle style_;
    std::optional<job::ToleranceClass> tolerance_;
    std::shared_ptr<const equipment::Shop> shop_;
    std::vector<std::shared_ptr<PartReading>> parts_;
    std::vector<SetUpReading> order_;
    std::vector<std::string> shopping_;
    std::string totals_;
    std::string time_;
    std::vector<std::string> cautions_;
    std::map<std::pair<int, int>, std::vector<std::vector<std::string>>> workings_;
};

/// The drawing for a place of this size, made anew when the size changes.
[[nodiscard]] const Picture&
picture_of(PartReading& reading, bool finished_shape, PrintStyle style, PictureRoom room);

} // namespace treadle::views
