// Jobs of square bar to cut, for the stock's tests. Invented; sizes as the rows need them.

#pragma once

#include "plan/fixture.h"
#include "plan/stock_plan.h"

#include <memory>
#include <string>
#include <vector>

namespace treadle::test {

inline constexpr long long k_stock_work = 200'000'000;

struct StockBench {
    job::Job job;
    equipment::Shop shop = test::shop();
    job::Catalog catalog;
    Section section;
    plan::Plan plan;
    std::vector<plan::StockGroup> groups;
    plan::StockPlan stock;

    StockBench() {
        catalog.grades.rows = {a36()};
        section.shape = section::Shape::square;
        section.width = inches(1.0);
        for (equipment::Station& station : shop.machine.stations) {
            station.least_piece = Length{};
            station.largest_mitre = degrees(45.0);
        }
    }
    /// The station that shears the bench's section.
    equipment::Station& shear() {
        const bool flat = section.shape == section::Shape::flat;
        return shop.machine.stations[flat ? 1 : section.shape == section::Shape::angle ? 3 : 2];
    }
    job::Part&
    add(Length length, int count, std::vector<job::Operation> operations = {job::Cut{}}) {
        job::Part part;
        part.id = part.mark = "P" + std::to_string(job.parts.size() + 1);
        part.grade = "A36";
        part.section = section;
        part.length = length;
        part.count = count;
        part.operations = std::move(operations);
        auto made = std::make_shared<job::Part>(std::move(part));
        job.parts.push_back(made);
        return *made;
    }
    equipment::StockBar& bar(Length length, std::optional<int> count = std::nullopt) {
        shop.rack.push_back({section, "A36", length, count});
        return shop.rack.back();
    }
    equipment::StockBar& drop(Length length, int count = 1) {
        bar(length, count).drop = true;
        return shop.rack.back();
    }
    const plan::GroupPlan& solve() {
        plan = plan::make_plan(job, shop, catalog);
        groups = plan::stock_groups(plan, job, shop, catalog);
        stock = plan::stock_plan(groups, plan::stock_answers(groups, k_stock_work));
        REQUIRE(groups.size() == stock.groups.size());
        REQUIRE_FALSE(groups.empty());
        return stock.groups.front();
    }
    [[nodiscard]] const plan::StockGroup& group() const { return groups.front(); }
    /// Proven least number of whole bars.
    int bars() {
        const plan::GroupPlan& made = solve();
        CHECK_MESSAGE(made.proven, (group().problem ? group().problem->reason : "not proven"));
        return made.whole_bars;
    }
    std::string problem() {
        const plan::GroupPlan& made = solve();
        CHECK_FALSE(made.has_plan);
        CHECK_FALSE(stock.complete);
        return group().problem ? group().problem->field : "none";
    }
};

/// What is wrong with a plan of bars, piece by piece; empty when nothing is.
inline std::string fault_in(const plan::StockGroup& group, const plan::GroupPlan& made) {
    std::vector<int> cut(group.pieces.size(), 0);
    std::vector<int> used(group.kinds.size(), 0);
    const Length none = millimetres(1e-6);
    for (const plan::BarPlan& bar : made.bars) {
        const plan::BarKind& kind = group.kinds.at(static_cast<std::size_t>(bar.kind));
        used[static_cast<std::size_t>(bar.kind)] += bar.times;
        Length at = group.trim + group.shared_mitre;
        Length before = kind.length;
        for (std::size_t i = 0; i < bar.cuts.size(); ++i) {
            const plan::PieceCut& one = bar.cuts[i];
            const plan::StockPiece& piece = group.pieces.at(static_cast<std::size_t>(one.piece));
            cut[static_cast<std::size_t>(one.piece)] += bar.times;
            at += piece.counted + (i == 0 ? Length{} : group.kerf);
            if (at - one.stop > none || one.stop - at > none)
                return "a stop is not the sum before it";
            if (piece.length - before > group.step)
                return "not longest first";
            before = piece.length;
        }
        const bool last_cut = !bar.cuts.back().last_is_end;
        const Length end = at + bar.drop + group.trim + (last_cut ? group.kerf : Length{});
        const Length off = end - kind.length;
        // The last cut may take the end with it, so there a whole kerf is too much.
        const bool takes_end = last_cut && bar.drop == Length{} && off > Length{};
        if (off < -none || (off > none && !(takes_end && off <= group.kerf + none)))
            return "pieces, cuts, trims and what is left are not the bar";
        if (last_cut && bar.drop > Length{} && group.least_end - bar.drop > none)
            return "an end that cannot be held";
    }
    for (std::size_t i = 0; i < cut.size(); ++i)
        if (cut[i] != group.pieces[i].count)
            return "a piece is cut too often or not at all";
    for (const plan::KindUse& use : made.use) {
        const auto kind = static_cast<std::size_t>(use.kind);
        if (use.pull + use.buy != used[kind] || use.pull > group.kinds[kind].owned ||
            (use.buy > 0 && (!group.kinds[kind].can_buy || use.pull < group.kinds[kind].owned)))
            return "pulled and bought is not what is used";
    }
    return "";
}

} // namespace treadle::test
