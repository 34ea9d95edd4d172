// A layout as the job keeps it: what was asked for, and which parts it made.
//
// Data only: what a kind means and makes is core/assembly's. A part that was changed by hand is
// detached: the layout goes on without it, and changes to the layout leave it alone.

#pragma once

#include "base/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace treadle::job {

struct LayoutValue {
    std::string name; ///< of an input of the kind
    std::string text; ///< as typed, with its unit
};

/// One part that the layout stands for, under the name that stays when the layout changes.
struct MadePart {
    std::string role; ///< "post", "top-rail-2"
    std::string part; ///< id in the job; empty once the part was removed by hand
    bool detached = false;
};

struct Layout {
    std::string id;   ///< stable, unique in the job; made by edit
    std::string kind; ///< "guard-run"
    std::string mark; ///< beginning of the marks of its parts
    std::vector<LayoutValue> values;
    std::vector<MadePart> made;
};

inline constexpr std::size_t k_most_layouts = 200;
inline constexpr std::size_t k_most_layout_values = 60;
inline constexpr std::size_t k_most_made_parts = 200;
inline constexpr std::size_t k_longest_layout_mark = 40;

/// Texts clean and bounded, names and roles once each. Fields like "values[2].text".
[[nodiscard]] base::Result<Layout> checked(Layout layout);
/// Each of them sound, ids once each, and no part made by two.
[[nodiscard]] base::Result<std::vector<Layout>> checked(std::vector<Layout> layouts);

[[nodiscard]] bool same(const Layout& a, const Layout& b);
/// Null when there is none.
[[nodiscard]] const Layout* find_layout(const std::vector<Layout>& layouts, std::string_view id);

/// Where a part comes from: its layout and what it is there. Nulls for a part typed in by hand.
struct Origin {
    const Layout* layout = nullptr;
    const MadePart* made = nullptr;
};
[[nodiscard]] Origin origin_of(const std::vector<Layout>& layouts, std::string_view part_id);

} // namespace treadle::job
