// Someone who edits at random, from a seed that is printed on failure.

#pragma once

#include "edit/session.h"
#include "sheet/sample.h"

#include <random>
#include <string>
#include <utility>

namespace treadle::edit_test {

class Hand { ///< someone who edits at random, also wrongly
public:
    explicit Hand(unsigned seed) : random_(seed) {}

    edit::Edit next(const edit::Session& s) {
        const auto& parts = s.job().parts;
        const int kind = parts.empty() ? 1 : below(9);
        if (kind == 1)
            return edit::AddPart{sheet_test::base_plate(), -1};
        if (kind == 6)
            return edit::SetJobNames{"Job " + std::to_string(below(3)), "", ""};
        if (kind == 7)
            return edit::SetStyle{
                {below(2) == 0 ? UnitSystem::inch : UnitSystem::metric, 8 << below(3)}};
        if (kind == 8)
            return other_shop(s);
        const auto& part = parts[static_cast<std::size_t>(below(static_cast<int>(parts.size())))];
        if (kind == 2 && parts.size() > 3)
            return edit::RemovePart{part->id};
        if (kind == 3)
            return edit::MovePart{part->id, below(static_cast<int>(parts.size()) + 1)};
        return edit::ReplacePart{changed(*part)};
    }

    int below(int limit) { return static_cast<int>(random_() % static_cast<unsigned>(limit)); }

private:
    edit::Edit other_shop(const edit::Session& s) {
        if (below(2) == 0) {
            Grade grade = test::a36();
            grade.bands[0].tensile_upper = ksi(70.0 + below(10));
            return edit::SetOwnGrade{grade};
        }
        equipment::Shop shop = s.shop();
        shop.machine.stations[0].force = us_tons(10.0 + 10.0 * below(5));
        return edit::ReplaceShop{shop};
    }

    job::Part changed(job::Part part) {
        switch (below(5)) {
        case 0:
            part.section.thickness = inches(0.125 * below(8));
            break; // nought is refused
        case 1:
            part.count = below(5);
            break;
        case 2:
            if (!part.operations.empty() && part.legs.empty())
                part.operations.pop_back();
            break;
        case 3:
            part.length = inches(4.0 + below(20));
            break;
        default:
            part.note = "note " + std::to_string(below(3));
            break;
        }
        return part;
    }

    std::mt19937 random_;
};

inline edit::Session session() {
    sheet_test::Sample sample;
    return edit::Session({sample.job, std::make_shared<const equipment::Shop>(sample.shop)},
                         std::make_shared<const job::Catalog>(sample.catalog));
}

} // namespace treadle::edit_test
