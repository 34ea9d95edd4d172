#include "ui/views/stock_reading.h"

#include "plan/stock_words.h"
#include "quantity/print.h"
#include "sheet/figures.h"
#include "sheet/stock_sheet.h"

#include "ui/views/shop_paths.h"

#include <algorithm>
#include <cstdlib>

namespace treadle::views {

namespace {

/// All that the words of one group are made from.
struct Source {
    const edit::Session& session;
    const plan::StockGroup& group;
    PrintStyle style;

    [[nodiscard]] const plan::StockPiece& piece(int index) const {
        return group.pieces[static_cast<std::size_t>(index)];
    }
};

StockBarReading read_bar(const Source& source, const plan::BarPlan& bar) {
    const plan::BarKind& kind = source.group.kinds[static_cast<std::size_t>(bar.kind)];
    StockBarReading reading;
    const std::string times = std::to_string(bar.times);
    reading.title = plan::bar_words(kind, source.style);
    if (bar.times > 1)
        reading.title += " \u00d7 " + times;
    reading.left = plan::drop_words(source.group, bar, source.style);
    reading.spoken =
        plan::bar_words(kind, source.style) + (bar.times > 1 ? ", " + times + " alike: " : ": ");
    for (const plan::PieceCut& cut : bar.cuts) {
        const plan::StockPiece& piece = source.piece(cut.piece);
        StockCutReading line;
        line.part = piece.part;
        line.title = plan::piece_words(piece, source.session.plan(), source.style);
        line.stop = cut.last_is_end ? "the bar ends here"
                                    : "stop " + sheet::setting_text(cut.stop, source.style);
        line.spoken = line.title + ", " + line.stop;
        reading.spoken += line.spoken + "; ";
        reading.cuts.push_back(std::move(line));
    }
    reading.spoken += reading.left;
    return reading;
}

void read_problem(const Source& source, StockGroupReading& reading) {
    const base::Refusal& problem = *source.group.problem;
    reading.problem =
        problem.detail.empty() ? problem.reason : problem.reason + " " + problem.detail;
    reading.shop_page = shop_page_of(problem.field, source.session.shop());
    constexpr std::string_view k_part = "parts[";
    if (problem.field.rfind(k_part, 0) == 0)
        reading.part = std::atoi(problem.field.c_str() + k_part.size());
}

std::string looking_words(const plan::GroupPlan& plan, const StockSearch& search) {
    switch (search.state) {
    case StockSearch::State::missing:
        return " This browser cannot run the search.";
    case StockSearch::State::looking:
        return "; still looking";
    case StockSearch::State::over:
        return plan.done ? "" : "; no longer looking";
    case StockSearch::State::none:
        break;
    }
    return "";
}

StockGroupReading
read_group(const Source& source, const plan::GroupPlan& plan, const StockSearch& search) {
    StockGroupReading reading;
    reading.title = plan::stock_title(source.group, source.style);
    if (source.group.problem) {
        read_problem(source, reading);
        return reading;
    }
    reading.parting = plan::parting_words(source.group, source.style);
    reading.proven = plan.proven;
    reading.looking = search.state == StockSearch::State::looking && !plan.proven;
    reading.share = search.share;
    reading.percent = std::to_string(static_cast<int>(search.share * 100)) + " %";
    reading.proof = plan::proof_words(source.group, plan, source.style);
    if (!plan.has_plan && search.state == StockSearch::State::looking)
        reading.proof = "Looking for a plan";
    else if (!plan.proven)
        reading.proof += looking_words(plan, search);
    for (const plan::StockPiece& piece : source.group.pieces)
        if (const std::string words = plan::piece_caution(piece); !words.empty())
            reading.cautions.push_back(
                plan::piece_words(piece, source.session.plan(), source.style) + ": " + words);
    if (!plan.has_plan)
        return reading;
    reading.use = plan::use_words(source.group, plan, source.style);
    reading.sums = plan::sums_words(plan.sums, source.style);
    reading.longest = sheet::longest_bar(source.group, plan);
    for (const plan::BarPlan& bar : plan.bars)
        reading.bars.push_back(read_bar(source, bar));
    return reading;
}

} // namespace

StockReading& StockReadings::of(const edit::Session& session, const StockBoard& board) {
    if (kept_ && revision_ == session.revision() && change_ == board.change)
        return *kept_;
    const PrintStyle style = session.job().style;
    std::vector<StockGroupReading> before;
    if (kept_ && revision_ == session.revision())
        before = std::move(kept_->groups);
    StockReading reading;
    reading.total = plan::stock_words(board.groups, board.plan);
    const bool any = std::any_of(board.plan.groups.begin(),
                                 board.plan.groups.end(),
                                 [](const plan::GroupPlan& group) { return group.has_plan; });
    if (any)
        reading.sums = plan::sums_words(board.plan.sums, style);
    reading.not_from_bars = plan::not_from_bars_words(session.plan());
    for (std::size_t i = 0; i < board.groups.size(); ++i) {
        if (i < before.size() && news_[i] == board.news[i]) {
            reading.groups.push_back(std::move(before[i]));
            continue;
        }
        const plan::StockGroup& group = board.groups[i];
        const Source source{session, group, style};
        reading.groups.push_back(read_group(source, board.plan.groups[i], board.searches[i]));
    }
    if (std::any_of(reading.groups.begin(),
                    reading.groups.end(),
                    [](const StockGroupReading& group) { return group.looking; }))
        reading.total += "; still looking";
    kept_ = std::move(reading);
    revision_ = session.revision();
    change_ = board.change;
    news_ = board.news;
    return *kept_;
}

} // namespace treadle::views
