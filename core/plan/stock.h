// What has to be cut from bars, section by section, as whole numbers that the search can take.
//
// Units    steps of 1/64 in or 0.1 mm, coarser where bars are very long; pieces, kerfs and ends
//          rounded up, bars down: always against us.
// Kerf     shear: nothing, or the slug of its own (slug_loss); saw: the house's saw_kerf. Pieces of
//          one section come from the same bars, so the wider kerf of the group counts for all.
// Trim     end_trim goes off each end of every bar, its own cut in it. Both are cut while the bar
//          is long, so they can be held.
// Mitres   Pieces whose ends all have one and the same angle share their cuts: with b = width x
//          tan(angle) a piece of overall length L takes L - b, and every bar b once more. This
//          needs the next piece turned over where both ends lean apart (a frame's side); an angle
//          or channel cannot be turned over, so there only ends that lean alike share. If one
//          piece of the group is cut otherwise, all of them count their overall length: careful,
//          and one more piece never makes the others shorter.
// Plates   and what is slit to width are not bars: they are listed, not nested here.

#pragma once

#include "plan/plan.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "cutting/cut_list.h"

namespace treadle::plan {

enum class Parting { shear, slug, saw };

struct StockPiece {
    int part = 0;   ///< of the plan
    Length length;  ///< to cut: overall, of a bent part its blank
    Length counted; ///< what it takes of a bar, without the kerf
    int count = 1;
    Outcome outcome = Outcome::fits; ///< of its part: what cannot be made is listed all the same
};

/// Bars of one length, owned or to be bought.
struct BarKind {
    Length length;
    bool drop = false; ///< left over, measured; used before whole bars
    int owned = 0;     ///< in the rack: pulled before any is bought
    bool can_buy = false;
    std::optional<double> price; ///< of one, in the shop's money
};

/// What the search makes least of. Drops cost nothing.
enum class StockAim {
    bars,   ///< whole bars: there is one length of them; drops, where there is nothing else
    length, ///< length of whole bars
    money   ///< in hundredths: every length has its price
};

struct StockGroup {
    Section section;
    std::string grade;
    std::vector<StockPiece> pieces; ///< as in the plan
    std::vector<BarKind> kinds;     ///< whole bars first, longest first
    Parting parting = Parting::shear;
    Length kerf;
    Length least_end;                ///< shorter ends cannot be held for the last cut
    Length trim;                     ///< off each end
    Length shared_mitre;             ///< what a bar takes once where mitres are shared; else zero
    bool turned = false;             ///< every other piece with a shared mitre is turned over
    std::optional<Length> keep_drop; ///< left-overs from here on are kept
    std::optional<quantity::MassPerLength> weight;
    /// Why nothing is planned: a datum that is missing, no bar, a piece longer than every bar.
    /// Paths are the shop's ("rules.saw_kerf") or the job's ("parts[2].length").
    std::optional<base::Refusal> problem;
    StockAim aim = StockAim::bars;
    Length step;           ///< what one unit of the list is worth
    cutting::CutList list; ///< empty with a problem; its stock is `kinds`, one for one
};

/// Groups in the order of their first parts.
[[nodiscard]] std::vector<StockGroup> stock_groups(const Plan& plan,
                                                   const job::Job& job,
                                                   const equipment::Shop& shop,
                                                   const job::Catalog& catalog);

/// Parts, by index, that no bar list can hold: plates, and what is slit to width.
[[nodiscard]] std::vector<int> not_from_bars(const Plan& plan);

} // namespace treadle::plan
