// What a shop owns: the machine as its plate describes it, attachments, tooling, stock, house
// rules.
//
// Anything not known stays empty. An empty rating is never a guess: the plan says "cannot be said"
// and names it. Rated pairs are dominated, never interpolated.

#pragma once

#include "base/result.h"
#include "equipment/power_supply.h"
#include "equipment/trial_record.h"
#include "equipment/work_times.h"
#include "geometry/hole.h"
#include "material/grade.h"
#include "quantity/print.h"
#include "quantity/quantity.h"
#include "section/section.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace treadle::equipment {

enum class StationKind { punch, flat_shear, angle_shear, bar_shear, notcher, table };
[[nodiscard]] const char* station_word(StationKind kind);

/// One line of a rating plate: all of these at once. Which ones are used depends on the station:
/// flat shear thickness x width; angle shear leg x leg x thickness; bar shear round or square size.
struct RatedSize {
    Length thickness;
    Length width;  ///< flat: width; angle: longer leg
    Length round;  ///< bar shear: diameter
    Length square; ///< bar shear: side
};

/// A punch holder: what it takes.
struct Holder {
    std::string name;
    Length largest_punch; ///< circumscribed diameter
    bool keyed = false;   ///< keeps shaped punches from turning
};

struct Station {
    std::string id;
    std::string name;
    StationKind kind = StationKind::punch;
    std::optional<Force> force;
    std::optional<material::RatingBase> base; ///< tensile strength the plate was worked out with
    std::vector<RatedSize> rated;
    std::optional<Length> throat;   ///< from the stroke's centre line to the frame
    std::optional<Length> daylight; ///< open height over the die or table
    std::optional<Length> stroke;
    std::optional<Length> blade;        ///< shear: blade length
    std::optional<Length> least_piece;  ///< shear: shortest end the hold-down can grip
    std::optional<Angle> largest_mitre; ///< shear: 0 when only square
    /// punch: least distance from a hole centre to a standing leg, that the tool body needs
    std::optional<Length> flange_clearance;
    std::optional<Length> least_thickness; ///< shear: thinner metal folds into the blades' gap
    std::optional<Length> slug_opening;    ///< narrowest place that a slug has to fall through
    std::optional<Length> slug_loss;       ///< shear: width that falls out; none: nothing is lost
    std::optional<Length> table_length;    ///< what stock lies on, along it, tool in the middle
    std::vector<Holder> holders;
    std::vector<std::string> excludes; ///< stations that may not run while this one does
};

enum class AttachmentKind { brake, vee_notcher, rectangular_notcher, saddle_notcher };
[[nodiscard]] const char* attachment_word(AttachmentKind kind);

/// Bolted to a station; the smaller of both forces counts.
struct Attachment {
    std::string id;
    std::string name;
    AttachmentKind kind = AttachmentKind::brake;
    std::vector<std::string> stations; ///< ids it fits
    std::optional<Force> force;
    std::optional<material::RatingBase> base; ///< saddle notcher: what its dies' walls count at
    std::optional<Length> length;             ///< brake: longest bend; notcher: tool along the edge
    std::optional<Length> depth;              ///< notcher: deepest bite
    std::optional<Length> largest_thickness;
    std::optional<Angle> vee_included;      ///< V notcher: angle of its blades
    std::optional<Length> flange_clearance; ///< notcher: nearest its cut comes to a standing leg
    std::optional<Length> stroke;
    std::optional<Length> bed_width;   ///< brake: what the V block stands on, across the bend line
    std::optional<Length> ram_width;   ///< brake: what the punch hangs on
    std::optional<Length> open_height; ///< brake: bed to ram, ram up
    std::optional<Length>
        least_gauge; ///< brake: nearest that the back stop comes to the punch line
};

/// Where a tool is there more than once, its strokes are those of the one in use.
struct PunchTool {
    geometry::HoleOutline hole;
    int count = 1;
    std::optional<int> strokes_since_grind = std::nullopt;
    std::optional<int> regrind_after = std::nullopt; ///< strokes; else the house rule's
};
struct DieTool {
    geometry::HoleOutline hole; ///< opening
    int count = 1;
    std::optional<int> strokes_since_grind = std::nullopt;
    std::optional<int> regrind_after = std::nullopt;
};
struct VBlock {
    Length opening;
    Length length;
    int count = 1;
    std::optional<Length> width = std::nullopt; ///< of the block, across the bend line
    std::optional<Length> height = std::nullopt;
};
struct BrakePunch {
    Length nose;
    Length length;
    int count = 1;
    std::optional<Length> width = std::nullopt;   ///< of the body above the wedge
    std::optional<Length> height = std::nullopt;  ///< nose to ram
    std::optional<Angle> included = std::nullopt; ///< of the wedge
};
struct SaddleDie {
    Length run_diameter;    ///< outside diameter of the pipe that the shaped end sits on
    Length branch_diameter; ///< outside diameter of the pipe that is shaped
    Length largest_wall;
    std::optional<Length> least_wall = std::nullopt; ///< a thinner one collapses in it
    std::optional<int> strokes_since_grind = std::nullopt;
    std::optional<int> regrind_after = std::nullopt;
};

struct Crib {
    std::vector<PunchTool> punches;
    std::vector<DieTool> dies;
    std::vector<VBlock> vees;
    std::vector<BrakePunch> brake_punches;
    std::vector<SaddleDie> saddle_dies;
};

struct StockBar {
    Section section;
    std::string grade;
    Length length;
    std::optional<int> count = std::nullopt;    ///< in the rack; none: can be bought, any number
    std::optional<double> price = std::nullopt; ///< of one, in the shop's money
    bool drop = false;                          ///< left over from a bar, length as measured
};

struct Machine {
    std::string name;
    bool invented = false;
    int operators = 1;
    std::vector<Station> stations;
    std::vector<Attachment> attachments;
};

/// What the house has decided for itself.
struct HouseRules {
    double least_margin = 0.10;         ///< spare share under which a fit is called tight
    double blank_k = 0.0;               ///< K measured on trial strips; 0: DIN 6935
    int blank_denominator = 32;         ///< blanks are rounded up to this fraction, or 0.5 mm
    std::optional<Length> stripper_gap; ///< over the stock; largest 1/4 in
    Length notch_overlap = quantity::inches(0.125);
    std::optional<Mass> lift_limit;       ///< what one person may lift here
    std::optional<Length> support_length; ///< longer pieces get a stand or a second hand
    std::optional<int> regrind_after;     ///< strokes a cutting edge makes between two grindings
    std::optional<int> batch_pieces;      ///< that a cart or rack takes between two stations
    std::optional<Mass> batch_mass;
    std::optional<int> check_every;    ///< after the first piece, one in so many is measured
    std::string marking;               ///< how a piece gets its mark: "paint on the far end"
    std::optional<Length> stop_repeat; ///< either way, of a bend set at the back stop
    std::optional<Length> cut_repeat;  ///< either way, of a blank sheared to a stop
    std::optional<Length> saw_kerf;    ///< what a saw cut takes
    std::optional<Length> end_trim;    ///< cut off each end of a bar, the cut in it; none: nothing
    std::optional<Length> keep_drop;   ///< left-overs from this length on go back to the rack
    WorkTimes times;
};

struct Shop {
    std::string name;
    Machine machine;                     ///< the one in use: every plan is made for it
    std::vector<Machine> other_machines; ///< the shop's others; crib, rack and rules serve all
    Crib crib;
    std::vector<StockBar> rack;
    std::vector<TrialRecord> trials; ///< measured bends: before the house's K and the tables
    HouseRules rules;
    PowerSupply supply;
};

/// Structure: unique ids, positive finite sizes, attachments that name stations that exist.
[[nodiscard]] base::Result<Shop> checked(Shop shop);

[[nodiscard]] const Station* find_station(const Machine& machine, std::string_view id);

} // namespace treadle::equipment
