// What is wished for on paper: kept on the device, part of no job.

#pragma once

#include <string>
#include <vector>

namespace treadle::views {

/// A printer whose bars were measured.
struct MeasuredPrinter {
    std::string name;
    double x = 1.0; ///< across: wanted over measured
    double y = 1.0; ///< along
};
inline constexpr std::size_t k_most_printers = 12;

/// In the order of sheet::SheetKinds.
enum class SheetKind { summary, tools, set_ups, cutting, parts, workings };
inline constexpr int k_sheet_kinds = 6;

struct PaperWishes {
    bool letter = true;
    bool chosen_paper = false; ///< else the job's units say which
    int units = 0;             ///< of sheet::SheetUnits
    unsigned kinds = (1U << k_sheet_kinds) - 1U;
    std::vector<MeasuredPrinter> printers;
    int printer = -1; ///< none
};
[[nodiscard]] inline bool wants(const PaperWishes& wishes, SheetKind kind) {
    return (wishes.kinds >> static_cast<unsigned>(kind) & 1U) != 0;
}

} // namespace treadle::views
