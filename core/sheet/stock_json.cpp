// The bars to cut for other programs: SI units, keys that end in their unit.

#include "base/json_writer.h"
#include "plan/stock_words.h"
#include "plan/words.h"
#include "sheet/stock_sheet.h"

#include <cmath>

namespace treadle::sheet {

namespace {

using base::JsonWriter;

double short_of(double value) { return std::round(value * 1e6) / 1e6; }
double mm(Length value) { return short_of(quantity::to_millimetres(value)); }

const char* aim_key(plan::StockAim aim) {
    switch (aim) {
    case plan::StockAim::bars:
        return "bars";
    case plan::StockAim::length:
        return "length_mm";
    case plan::StockAim::money:
        return "money";
    }
    return "";
}

const char* parting_key(plan::Parting parting) {
    switch (parting) {
    case plan::Parting::shear:
        return "shear";
    case plan::Parting::slug:
        return "shear with slug";
    case plan::Parting::saw:
        return "saw";
    }
    return "";
}

/// Cost and bound in what the aim counts.
double in_aim(const plan::StockGroup& group, std::int64_t cost) {
    switch (group.aim) {
    case plan::StockAim::bars:
        return static_cast<double>(cost);
    case plan::StockAim::length:
        return mm(group.step * static_cast<double>(cost));
    case plan::StockAim::money:
        return static_cast<double>(cost) / 100.0;
    }
    return 0.0;
}

void write_mass(JsonWriter& json, const char* name, const std::optional<Mass>& mass) {
    if (mass)
        json.field(name, short_of(quantity::to_kilograms(*mass)));
    else
        json.key(name).null();
}

void write_price(JsonWriter& json, const std::optional<double>& price) {
    if (price)
        json.field("price", short_of(*price));
    else
        json.key("price").null();
}

void write_sums(JsonWriter& json, const plan::StockSums& sums) {
    json.key("sums").begin_object();
    write_mass(json, "taken_kg", sums.taken);
    write_mass(json, "bought_kg", sums.bought);
    write_mass(json, "parts_kg", sums.parts);
    write_mass(json, "kept_kg", sums.kept);
    write_mass(json, "scrap_kg", sums.scrap);
    write_price(json, sums.price);
    json.end_object();
}

void write_question(JsonWriter& json,
                    const plan::StockGroup& group,
                    const plan::Plan& plan,
                    PrintStyle style) {
    json.field("section", plan::stock_title(group, style)).field("grade", group.grade);
    json.field("cut_by", parting_key(group.parting)).field("kerf_mm", mm(group.kerf));
    json.field("least_end_mm", mm(group.least_end)).field("end_trim_mm", mm(group.trim));
    json.field("shared_mitre_mm", mm(group.shared_mitre)).key("keep_drop_mm");
    if (group.keep_drop)
        json.number(mm(*group.keep_drop));
    else
        json.null();
    json.key("pieces").begin_array();
    for (const plan::StockPiece& piece : group.pieces) {
        const job::Part& part = *plan.parts[static_cast<std::size_t>(piece.part)]->part;
        json.begin_object().field("part", part.id).field("mark", part.mark);
        json.field("length_mm", mm(piece.length)).field("counted_mm", mm(piece.counted));
        json.field("count", piece.count).field("outcome", plan::outcome_key(piece.outcome));
        json.end_object();
    }
    json.end_array().key("stock").begin_array();
    for (const plan::BarKind& kind : group.kinds) {
        json.begin_object().field("length_mm", mm(kind.length)).field("drop", kind.drop);
        json.field("owned", kind.owned).field("can_buy", kind.can_buy);
        write_price(json, kind.price);
        json.end_object();
    }
    json.end_array();
}

void write_bars(JsonWriter& json,
                const plan::StockGroup& group,
                const plan::GroupPlan& planned,
                const plan::Plan& plan) {
    json.key("bars").begin_array();
    for (const plan::BarPlan& bar : planned.bars) {
        const plan::BarKind& kind = group.kinds[static_cast<std::size_t>(bar.kind)];
        json.begin_object().field("stock", bar.kind).field("length_mm", mm(kind.length));
        json.field("times", bar.times).field("pulled", bar.pulled);
        json.key("cuts").begin_array();
        for (const plan::PieceCut& cut : bar.cuts) {
            const auto piece = static_cast<std::size_t>(cut.piece);
            const auto part = static_cast<std::size_t>(group.pieces[piece].part);
            json.begin_object().field("mark", plan.parts[part]->part->mark);
            json.field("piece", cut.piece).field("from_mm", mm(cut.from));
            json.field("stop_mm", mm(cut.stop)).field("last_is_end", cut.last_is_end).end_object();
        }
        json.end_array().field("drop_mm", mm(bar.drop)).field("kept", bar.kept).end_object();
    }
    json.end_array().key("use").begin_array();
    for (const plan::KindUse& use : planned.use)
        json.begin_object()
            .field("stock", use.kind)
            .field("pull", use.pull)
            .field("buy", use.buy)
            .end_object();
    json.end_array().key("kept").begin_array();
    for (const plan::KeptDrop& drop : planned.kept)
        json.begin_object()
            .field("length_mm", mm(drop.length))
            .field("count", drop.count)
            .end_object();
    json.end_array();
}

void write_answer(JsonWriter& json,
                  const plan::StockGroup& group,
                  const plan::GroupPlan& planned,
                  const plan::Plan& plan,
                  PrintStyle style) {
    json.field("has_plan", planned.has_plan).field("proven", planned.proven);
    json.field("proof", plan::proof_words(group, planned, style));
    if (group.problem) {
        json.key("problem").begin_object().field("field", group.problem->field);
        json.field("reason", group.problem->reason).field("detail", group.problem->detail);
        json.end_object();
    }
    if (!planned.has_plan)
        return;
    json.field("whole_bars", planned.whole_bars).field("drops_used", planned.drops_used);
    json.field("aim", aim_key(group.aim)).field("cost", in_aim(group, planned.cost));
    json.field("bound", in_aim(group, planned.bound)).key("work").integer(planned.work);
    write_bars(json, group, planned, plan);
    write_sums(json, planned.sums);
}

} // namespace

std::string stock_json(const std::vector<plan::StockGroup>& groups,
                       const plan::StockPlan& stock,
                       const plan::Plan& plan,
                       const job::Job& job) {
    JsonWriter json(2);
    json.begin_object().field("job", job.name);
    json.field("summary", plan::stock_words(groups, stock));
    json.field("complete", stock.complete).field("proven", stock.proven);
    json.key("groups").begin_array();
    for (std::size_t i = 0; i < groups.size(); ++i) {
        json.begin_object();
        write_question(json, groups[i], plan, job.style);
        write_answer(json, groups[i], stock.groups[i], plan, job.style);
        json.end_object();
    }
    json.end_array().key("not_from_bars").begin_array();
    for (const int part : plan::not_from_bars(plan))
        json.text(plan.parts[static_cast<std::size_t>(part)]->part->mark);
    json.end_array();
    write_sums(json, stock.sums);
    json.end_object();
    return json.take() + "\n";
}

} // namespace treadle::sheet
