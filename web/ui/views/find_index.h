// All that can be found on the page, made ready to be searched, and what a typed word finds in it.
//
// Made anew only for what changed: a part's lines stay as long as its reading is the same object.

#pragma once

#include "edit/session.h"

#include "ui/views/find_text.h"
#include "ui/views/state.h"

#include <array>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace treadle::views {

struct PartReading;

enum class FoundKind : std::uint8_t { place, part, operation, figure, shop, help };
inline constexpr std::size_t k_found_kinds = 6;

/// What a found line opens. Indexes are plan::k_none where they say nothing.
struct FoundAt {
    FoundKind kind = FoundKind::place;
    Place place = Place::parts;
    Command command = Command::none;
    int part = plan::k_none;
    int operation = plan::k_none;
    const char* working = ""; ///< how the title of the working begins; empty: the checks open
    int shop_page = 0;
    int tool = plan::k_none;
    const char* topic = "";
};

struct Found {
    std::string title;
    std::string where;
    FoundAt at;
    int rank = 0;
};

struct FoundGroup {
    FoundKind kind = FoundKind::place;
    const char* name = "";
    std::vector<Found> found; ///< the closest first
    int more = 0;             ///< that were found and are not listed
};

class FindIndex {
public:
    static constexpr std::size_t k_listed = 6; ///< of one kind

    /// Brings the lines up to the session. Cheap when nothing changed.
    void refresh(const edit::Session& session,
                 const std::vector<std::shared_ptr<PartReading>>& parts);

    /// Groups with something in them, the one with the closest line first. The chosen part's
    /// figures stand before those of others.
    [[nodiscard]] std::vector<FoundGroup> find(std::string_view typed, int chosen_part) const;
    /// The same, kept from frame to frame while nothing changed.
    [[nodiscard]] const std::vector<FoundGroup>& found(const std::string& typed, int chosen_part);

private:
    struct PartLines {
        std::shared_ptr<PartReading> reading;
        FindText part;
        std::vector<FindText> operations;
        std::uint64_t rules = 0; ///< a bit for each rule that was checked
    };
    struct Line {
        Found what;
        FindText text;
    };
    void add_shop(const equipment::Shop& shop, PrintStyle style);
    void add_fixed(UnitSystem system);
    void find_figures(const FindQuery& query, int chosen_part, FoundGroup& group) const;

    std::uint64_t revision_ = ~std::uint64_t{0};
    PrintStyle style_;
    std::shared_ptr<const equipment::Shop> shop_;
    std::vector<std::shared_ptr<const PartLines>> parts_;
    std::vector<Line> shop_lines_;
    std::vector<Line> fixed_lines_; ///< places, commands and help
    std::vector<FindText> figures_; ///< of the table in find_figures.cpp
    struct Last {
        std::string typed;
        std::uint64_t revision = 0;
        std::vector<FoundGroup> groups;
    };
    std::optional<Last> last_;
};

} // namespace treadle::views
