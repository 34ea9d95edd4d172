#include "stock_work.h"

#include <algorithm>
#include <utility>

namespace treadle::web {

namespace {

using views::StockSearch;

/// A search gets so much: ten seconds or more, for the few lists that are not proven long before.
constexpr long long k_most_work = 10'000'000'000;
/// Searches that have ended are kept for undo, so many at most.
constexpr std::size_t k_most_kept = 64;

} // namespace

void StockWork::refresh(const edit::Session& session) {
    if (revision_ != session.revision()) {
        revision_ = session.revision();
        board_.groups =
            plan::stock_groups(session.plan(), session.job(), session.shop(), session.catalog());
        for (auto& [text, search] : searches_)
            search.wanted = false;
        texts_.clear();
        board_.news.clear();
        for (const plan::StockGroup& group : board_.groups) {
            texts_.push_back(group.problem ? std::string() : cutting::list_text(group.list));
            if (!group.problem)
                ask(texts_.back(), group.list);
        }
        drop_unwanted();
        has_news_ = true;
    }
    if (has_news_)
        put_together();
}

void StockWork::ask(const std::string& text, const cutting::CutList& list) {
    const auto [place, is_new] = searches_.try_emplace(text);
    Search& search = place->second;
    search.wanted = true;
    if (!is_new)
        return;
    search.list = list;
    search.news = ++last_news_;
    search.state.state = StockSearch::State::looking;
    search.ticket = ports_.cut(
        text, k_most_work, [this, text](const std::string& answer) { answered(text, answer); });
}

void StockWork::answered(const std::string& text, const std::string& answer) {
    const auto found = searches_.find(text);
    if (found == searches_.end())
        return;
    Search& search = found->second;
    has_news_ = true;
    search.news = ++last_news_;
    auto read = cutting::read_answer_text(search.list, answer);
    if (!read) {
        // Whatever was answered before still stands.
        search.state.state =
            search.answer.has_plan ? StockSearch::State::over : StockSearch::State::missing;
        return;
    }
    search.answer = std::move(read).value();
    const bool over = search.answer.done || search.answer.work >= k_most_work;
    search.state.state = over ? StockSearch::State::over : StockSearch::State::looking;
    search.state.share = static_cast<double>(search.answer.work) / static_cast<double>(k_most_work);
}

void StockWork::drop_unwanted() {
    const bool too_many = searches_.size() > k_most_kept;
    for (auto place = searches_.begin(); place != searches_.end();) {
        const Search& search = place->second;
        const bool looking = search.state.state == StockSearch::State::looking;
        if (search.wanted || !(looking || too_many)) {
            ++place;
            continue;
        }
        if (looking)
            ports_.stop_cut(search.ticket);
        place = searches_.erase(place);
    }
}

/// Only groups with news are planned anew.
void StockWork::put_together() {
    has_news_ = false;
    std::vector<plan::GroupPlan> plans = std::move(board_.plan.groups);
    plans.resize(texts_.size());
    board_.searches.resize(texts_.size());
    board_.news.resize(texts_.size(), 0);
    Search none;
    none.news = 1;
    for (std::size_t i = 0; i < texts_.size(); ++i) {
        const auto found = searches_.find(texts_[i]);
        const Search& search = found == searches_.end() ? none : found->second;
        if (std::exchange(board_.news[i], search.news) == search.news)
            continue;
        plans[i] = plan::group_plan(board_.groups[i], search.answer);
        board_.searches[i] = search.state;
    }
    board_.plan = plan::sum_up(std::move(plans));
    ++board_.change;
}

} // namespace treadle::web
