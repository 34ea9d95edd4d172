// The cutting of stock on paper: bars to scale, and the plan of the bars for other programs.

#pragma once

#include "plan/stock_plan.h"
#include "sheet/drawing.h"

#include <string>
#include <vector>

namespace treadle::sheet {

/// The box of a bar across the page, and in the worksheet's list.
inline constexpr PictureBox k_bar_box{182.0, 16.0};
inline constexpr PictureBox k_list_bar_box{132.0, 16.0};

/// What becomes of a stretch of a bar: full, empty, hatched, dark.
enum class BarStretch { piece, kept, scrap, lost };
/// A sample of each for a legend; `lost` is kerf and trim.
[[nodiscard]] Drawing draw_bar_sample(BarStretch what, PictureBox box);

/// One bar to scale, from its datum end: pieces with their marks and running stops, trims, what is
/// left. Bars drawn with the same `longest` have the same scale. A path's operation is the index of
/// its piece on the bar.
[[nodiscard]] Drawing draw_bar(const plan::StockGroup& group,
                               const plan::BarPlan& bar,
                               const plan::Plan& plan,
                               PrintStyle style,
                               Length longest,
                               PictureBox box = k_bar_box);
/// The same bar where a row says the rest: without stops, over the whole of the box.
[[nodiscard]] Drawing draw_bar_row(const plan::StockGroup& group,
                                   const plan::BarPlan& bar,
                                   const plan::Plan& plan,
                                   PrintStyle style,
                                   Length longest,
                                   PictureBox box);
/// The longest bar that a group's plan cuts.
[[nodiscard]] Length longest_bar(const plan::StockGroup& group, const plan::GroupPlan& plan);

/// Pieces of one part that follow each other on a bar, with the places the stop is set to.
struct StopRun {
    int piece = 0; ///< of the group
    int count = 0;
    std::string words; ///< "6 × HP1 34-1/2"
    std::string stops; ///< "34-1/2, 69, 103-1/2"; "end" where the bar ends with the piece
};
[[nodiscard]] std::vector<StopRun> running_stops(const plan::StockGroup& group,
                                                 const plan::BarPlan& bar,
                                                 const plan::Plan& plan,
                                                 PrintStyle style);

/// Groups with kinds, bars, what to pull and buy, and the proof; SI units.
[[nodiscard]] std::string stock_json(const std::vector<plan::StockGroup>& groups,
                                     const plan::StockPlan& stock,
                                     const plan::Plan& plan,
                                     const job::Job& job);

} // namespace treadle::sheet
