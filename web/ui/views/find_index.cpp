#include "ui/views/find_index.h"

#include "plan/words.h"

#include "ui/views/find_commands.h"
#include "ui/views/find_figures.h"
#include "ui/views/help_topics.h"
#include "ui/views/places.h"
#include "ui/views/reading.h"
#include "ui/views/shop_pages.h"

#include <algorithm>

namespace treadle::views {

namespace {

constexpr std::array<const char*, k_found_kinds> k_names = {
    "Places and commands", "Parts", "Operations", "Figures", "Shop", "Help"};

/// Keeps the closest lines of one kind, and counts the others.
void keep(FoundGroup& group, int rank, const auto& make) {
    auto& found = group.found;
    const bool full = found.size() == FindIndex::k_listed;
    if (full && found.back().rank >= rank) {
        ++group.more;
        return;
    }
    if (full) {
        ++group.more;
        found.pop_back();
    }
    Found line = make();
    line.rank = rank;
    const auto at =
        std::find_if(found.begin(), found.end(), [&](const Found& one) { return one.rank < rank; });
    found.insert(at, std::move(line));
}

Found part_line(const PartReading& reading, int part) {
    Found line{reading.mark + "  " + reading.title, "Under Parts: " + reading.verdict, {}, 0};
    line.at = {FoundKind::part, Place::parts, Command::none, part};
    return line;
}

std::string place_of(const PartReading& reading, int operation) {
    return reading.mark + ", operation " + std::to_string(operation + 1);
}

Found operation_line(const PartReading& reading, int part, int operation) {
    const OperationReading& done = reading.operations()[static_cast<std::size_t>(operation)];
    Found line{done.title, place_of(reading, operation) + ": " + done.verdict, {}, 0};
    line.at = {FoundKind::operation, Place::parts, Command::none, part, operation};
    return line;
}

} // namespace

// ---- lines --------------------------------------------------------------------------------------

void FindIndex::add_fixed(UnitSystem system) {
    fixed_lines_.clear();
    const auto add = [&](Found line, const std::string& words) {
        fixed_lines_.push_back({std::move(line), find_text(words, system)});
    };
    for (std::size_t i = 0; i < place_names().size(); ++i) {
        FoundAt at;
        at.place = static_cast<Place>(i);
        add({place_names()[i], "A place of the page", at, 0}, place_names()[i]);
    }
    for (const CommandName& command : command_names()) {
        FoundAt at;
        at.command = command.command;
        add({command.name, std::string("Do it now: ") + command.where, at, 0},
            std::string(command.name) + " " + command.also);
    }
    for (const HelpTopic* topic : help_topics()) {
        FoundAt at;
        at.kind = FoundKind::help;
        at.place = Place::help;
        at.topic = topic->id;
        add({topic->title, std::string("Help, ") + section_name(topic->section), at, 0},
            std::string(topic->title) + " " + topic->also + " " + topic->words);
    }
    figures_.clear();
    for (const FigureName& figure : figure_names())
        figures_.push_back(find_text(std::string(figure.name) + " " + figure.also, system));
}

void FindIndex::add_shop(const equipment::Shop& shop, PrintStyle style) {
    shop_lines_.clear();
    const auto add = [&](std::string title, std::string where, int page, int tool) {
        FoundAt at;
        at.kind = FoundKind::shop;
        at.place = Place::shop;
        at.shop_page = page;
        at.tool = tool;
        FindText text = find_text(title + " " + where, style.system);
        shop_lines_.push_back({{std::move(title), std::move(where), at, 0}, std::move(text)});
    };
    const std::vector<ShopPage> pages = shop_pages(shop);
    for (std::size_t i = 0; i < pages.size(); ++i) {
        const ShopPage& page = pages[i];
        const int at = static_cast<int>(i);
        add(page.title, "Shop: " + page.detail, at, plan::k_none);
        const auto tools = [&](const auto& list, const char* word) {
            for (std::size_t tool = 0; tool < list.size(); ++tool)
                add(std::string(word) + " " + tool_words(list[tool], style),
                    "Shop: " + page.title,
                    at,
                    static_cast<int>(tool));
        };
        if (page.kind == ShopPage::Kind::crib) {
            const auto& crib = shop.crib;
            const std::array lists = {0, 1, 2, 3, 4};
            if (page.index == lists[0])
                tools(crib.punches, "Punch");
            else if (page.index == lists[1])
                tools(crib.dies, "Die");
            else if (page.index == lists[2])
                tools(crib.vees, "V block");
            else if (page.index == lists[3])
                tools(crib.brake_punches, "Brake punch");
            else
                tools(crib.saddle_dies, "Saddle die");
        } else if (page.kind == ShopPage::Kind::rack) {
            for (const equipment::StockBar& bar : shop.rack)
                add(plan::section_title(bar.section, style) + ", " +
                        quantity::print(bar.length, style),
                    "Shop: Rack, " + bar.grade,
                    at,
                    plan::k_none);
        }
    }
}

void FindIndex::refresh(const edit::Session& session,
                        const std::vector<std::shared_ptr<PartReading>>& parts) {
    if (revision_ == session.revision())
        return;
    const PrintStyle style = session.job().style;
    const bool first = revision_ == ~std::uint64_t{0};
    const bool same_style = !first && style == style_;
    if (!same_style)
        add_fixed(style.system);
    if (!same_style || shop_ != session.document().shop)
        add_shop(session.shop(), style);
    revision_ = session.revision();
    style_ = style;
    shop_ = session.document().shop;

    std::vector<std::shared_ptr<const PartLines>> lines;
    lines.reserve(parts.size());
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const std::shared_ptr<PartReading>& reading = parts[i];
        // One edit moves entries by at most one place.
        std::shared_ptr<const PartLines> kept;
        for (const std::size_t at : {i, i + 1, i == 0 ? i : i - 1})
            if (!kept && at < parts_.size() && parts_[at]->reading == reading)
                kept = parts_[at];
        if (!kept) {
            PartLines made;
            made.reading = reading;
            made.part = find_text(reading->mark + " " + reading->line + " " +
                                      reading->plan->part->note + " " + reading->verdict,
                                  style.system);
            for (const OperationReading& operation : reading->operations())
                made.operations.push_back(find_text(operation.title + " " + operation.detail + " " +
                                                        operation.verdict + " " + reading->mark,
                                                    style.system));
            for (const plan::OperationPlan& operation : reading->plan->operations)
                for (const plan::Check& check : operation.checks)
                    made.rules |= rule_bit(check.rule);
            kept = std::make_shared<const PartLines>(std::move(made));
        }
        lines.push_back(std::move(kept));
    }
    parts_ = std::move(lines);
}

// ---- finding ------------------------------------------------------------------------------------

void FindIndex::find_figures(const FindQuery& query, int chosen_part, FoundGroup& group) const {
    constexpr int k_of_one_figure = 3;
    const std::size_t count = parts_.size();
    const std::size_t start =
        chosen_part == plan::k_none ? 0 : static_cast<std::size_t>(chosen_part);
    for (std::size_t f = 0; f < figures_.size(); ++f) {
        const FigureName& figure = figure_names()[f];
        int rank = 0;
        FindQuery rest; // what is no name of a figure names the operation
        for (const FindWord& word : query) {
            const int one = find_rank(word, figures_[f]);
            rank += one;
            if (one == 0)
                rest.push_back(word);
        }
        int found = 0;
        for (std::size_t i = 0; rank > 0 && i < count && found < k_of_one_figure; ++i) {
            const std::size_t part = (start + i) % count;
            const PartLines& lines = *parts_[part];
            const bool worked = *figure.working != '\0';
            if (!worked && (lines.rules & rule_bit(figure.rule)) == 0)
                continue;
            const PartReading& reading = *lines.reading;
            for (std::size_t o = 0; o < lines.operations.size() && found < k_of_one_figure; ++o) {
                const auto& checks = reading.plan->operations[o].checks;
                const bool has =
                    worked ? (figure.operations &
                              operation_bit(reading.plan->part->operations[o])) != 0
                           : std::any_of(checks.begin(), checks.end(), [&](const auto& check) {
                                 return check.rule == figure.rule;
                             });
                if (!has || (!rest.empty() && find_rank(rest, lines.operations[o]) == 0))
                    continue;
                ++found;
                keep(group, rank, [&] {
                    const int at = static_cast<int>(o);
                    Found line{figure.name,
                               (worked ? "Working of " : "Check of ") + place_of(reading, at) +
                                   ", " + reading.operations()[o].title,
                               {},
                               0};
                    line.at = {FoundKind::figure,
                               Place::parts,
                               Command::none,
                               static_cast<int>(part),
                               at,
                               figure.working};
                    return line;
                });
            }
        }
    }
}

std::vector<FoundGroup> FindIndex::find(std::string_view typed, int chosen_part) const {
    const FindQuery query = find_query(typed, style_.system);
    std::array<FoundGroup, k_found_kinds> groups;
    for (std::size_t i = 0; i < groups.size(); ++i) {
        groups[i].kind = static_cast<FoundKind>(i);
        groups[i].name = k_names[i];
    }
    const auto group = [&](FoundKind kind) -> FoundGroup& {
        return groups[static_cast<std::size_t>(kind)];
    };
    for (const auto* lines : {&fixed_lines_, &shop_lines_})
        for (const Line& line : *lines)
            if (const int rank = find_rank(query, line.text); rank > 0)
                keep(group(line.what.at.kind), rank, [&] { return line.what; });
    for (std::size_t part = 0; part < parts_.size(); ++part) {
        const PartLines& lines = *parts_[part];
        const int at = static_cast<int>(part);
        if (const int rank = find_rank(query, lines.part); rank > 0)
            keep(group(FoundKind::part), rank, [&] { return part_line(*lines.reading, at); });
        for (std::size_t o = 0; o < lines.operations.size(); ++o)
            if (const int rank = find_rank(query, lines.operations[o]); rank > 0)
                keep(group(FoundKind::operation), rank, [&] {
                    return operation_line(*lines.reading, at, static_cast<int>(o));
                });
    }
    find_figures(query, chosen_part, group(FoundKind::figure));
    std::vector<FoundGroup> result;
    for (FoundGroup& one : groups)
        if (!one.found.empty())
            result.push_back(std::move(one));
    std::stable_sort(result.begin(), result.end(), [](const FoundGroup& a, const FoundGroup& b) {
        return a.found.front().rank > b.found.front().rank;
    });
    return result;
}

const std::vector<FoundGroup>& FindIndex::found(const std::string& typed, int chosen_part) {
    if (!last_ || last_->typed != typed || last_->revision != revision_)
        last_ = Last{typed, revision_, find(typed, chosen_part)};
    return last_->groups;
}

} // namespace treadle::views
