// What a place of the machine can do, in words and as a picture; and the shop's machines beside
// each other. Worked out when it is looked at, kept until job or question change.

#pragma once

#include "edit/session.h"
#include "sheet/drawing_limits.h"

#include "ui/views/picture.h"
#include "ui/widgets/verdict.h"

#include <array>
#include <cstdint>
#include <memory>
#include <string>
#include <vector>

namespace treadle::views {

struct PartReading;

struct LimitRow {
    std::string size;
    std::string fits;
    std::string up_to;
    std::string stopped_by;
    std::string spoken; ///< "hole diameter 1-1/16: up to 1/2, with a certificate up to 5/8"
};
struct LimitPoint {
    sheet::LimitPlace at; ///< on the picture's axes
    ui::Verdict mark = ui::Verdict::not_known;
    bool same_grade = true;
    int part = 0;
    int operation = 0;
    std::string label;   ///< the part's mark
    std::string words;   ///< "Punch 13/16 round"
    std::string outcome; ///< "fits, other metal"
};
/// Points that would lie on each other under a finger; the worst of them stands for all.
struct LimitCluster {
    float x = 0; ///< pixels from the left and lower end of the axes
    float y = 0;
    std::size_t first = 0;
    std::string label;
    std::string spoken;
};

struct LimitsReading {
    std::string problem; ///< nothing can be drawn, and why
    std::string said;    ///< a reason beside the picture
    std::string note;    ///< what the picture takes for granted
    int shop_page = -1;  ///< where the missing datum is filled in
    std::string spoken;
    sheet::LimitsChart chart;
    std::vector<LimitRow> rows;
    std::vector<LimitPoint> points; ///< the worst first
    bool other_grades = false;      ///< some of them are of another metal

    struct Kept {
        float wide = 0;
        float high = 0;
        ui::Rect apart;
        std::vector<LimitCluster> clusters;
    };
    Kept kept;
    /// The chart in a room, and where its axes came to lie in the drawing.
    KeptPicture picture;
    sheet::Point axes_low;
    sheet::Point axes_high;
    std::array<KeptPicture, 2> samples; ///< of its legend
    /// In axes of this size in pixels; nearer than `apart` they are one. Made when a size changes.
    [[nodiscard]] const std::vector<LimitCluster>& clusters(float wide, float high, ui::Rect apart);
};

struct StopReading {
    std::string words;
    ui::Verdict mark = ui::Verdict::does_not_fit;
    int part = 0;
    int operation = plan::k_none;
};
struct MachineReading {
    std::string name;
    std::string words; ///< does the whole job, or what it does not
    std::string counts;
    std::string more; ///< stops that are not listed
    ui::Verdict mark = ui::Verdict::not_known;
    std::vector<StopReading> stops; ///< the first few
};

class LimitsReadings {
public:
    using Parts = std::vector<std::shared_ptr<PartReading>>;

    /// Names of the places and grades that can be asked about.
    [[nodiscard]] const std::vector<std::string>& places(const edit::Session& session);
    [[nodiscard]] const std::vector<std::string>& grades(const edit::Session& session);
    [[nodiscard]] int grade_index(const edit::Session& session, const std::string& id);
    [[nodiscard]] const std::string& grade_id(int index) const;

    [[nodiscard]] LimitsReading&
    of(const edit::Session& session, const Parts& parts, int place, const std::string& grade);
    [[nodiscard]] const std::vector<MachineReading>& machines(const edit::Session& session);

private:
    void refresh(const edit::Session& session);

    std::uint64_t revision_ = ~std::uint64_t{0};
    std::vector<plan::Mounting> mountings_;
    std::vector<std::string> places_;
    std::vector<std::string> grade_ids_;
    std::vector<std::string> grades_;
    int place_ = plan::k_none; ///< of the reading below
    std::string grade_;
    LimitsReading reading_;
    bool has_machines_ = false;
    std::vector<MachineReading> machines_;
};

} // namespace treadle::views
