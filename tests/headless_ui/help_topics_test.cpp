#include "process/cards.h"
#include "section/cards.h"

#include "ui/views/find_commands.h"
#include "ui/views/find_figures.h"
#include "ui/views/help_topics.h"
#include "ui/views/places.h"
#include "ui/views/shop_pages.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <string>

using namespace treadle;
using namespace treadle::views;

namespace {

bool is_place_or_section(const std::string& word) {
    const auto names = place_names();
    if (std::find(names.begin(), names.end(), word) != names.end())
        return true;
    return std::any_of(k_help_sections.begin(), k_help_sections.end(), [&](HelpSection section) {
        return word == section_name(section);
    });
}

/// Every capitalised word after "under " in the words of a topic.
std::vector<std::string> places_named(const std::string& words) {
    std::vector<std::string> named;
    for (std::size_t at = words.find("under "); at != std::string::npos;
         at = words.find("under ", at + 1)) {
        std::size_t end = at + 6;
        while (end < words.size() && std::isalpha(static_cast<unsigned char>(words[end])) != 0)
            ++end;
        const std::string word = words.substr(at + 6, end - at - 6);
        if (!word.empty() && std::isupper(static_cast<unsigned char>(word[0])) != 0)
            named.push_back(word);
    }
    return named;
}

std::vector<std::string> titles_of_workings() {
    std::vector<std::string> titles;
    for (const base::FormulaCard* card : process::cards())
        titles.emplace_back(card->title);
    for (const base::FormulaCard* card : section::cards())
        titles.emplace_back(card->title);
    return titles;
}

} // namespace

TEST_CASE("every topic of Help has an id of its own, a title and words") {
    std::set<std::string> ids;
    for (const HelpTopic* topic : help_topics()) {
        CAPTURE(topic->id);
        CHECK(ids.insert(topic->id).second);
        CHECK(find_topic(topic->id) == topic);
        CHECK(std::string(topic->title).size() > 0);
        const std::string words = topic->words;
        CHECK(words.size() > 10);
        CHECK(words.back() == '.');
    }
    CHECK(find_topic("nobody") == nullptr);
    CHECK(help_terms().size() >= 25);
    CHECK(help_terms().size() <= 40);
    CHECK(help_tasks().size() >= 10);
    CHECK(help_tasks().size() <= 15);
}

TEST_CASE("every place that Help names is there") {
    int named = 0;
    for (const HelpTopic* topic : help_topics()) {
        CAPTURE(topic->id);
        for (const std::string& word : places_named(topic->words)) {
            CAPTURE(word);
            CHECK(is_place_or_section(word));
            ++named;
        }
    }
    CHECK(named >= 10);
    for (const HelpTopic& task : help_tasks())
        CHECK(task.place.has_value());
    for (const CommandName& command : command_names())
        for (const std::string& word : places_named(command.where))
            CHECK(is_place_or_section(word));
}

TEST_CASE("no key of the keyboard is a letter by itself") {
    for (const HelpTopic& key : help_keys()) {
        CAPTURE(key.title);
        CHECK(std::string(key.title).size() > 1);
    }
}

TEST_CASE("a working leads to the term that it is about") {
    const auto id_of = [](const char* title) {
        const HelpTopic* topic = topic_of(title);
        return std::string(topic ? topic->id : "");
    };
    CHECK(id_of("Force to punch a hole") == "tonnage");
    CHECK(id_of("Force to strip the stock from the punch") == "stripper");
    CHECK(id_of("What a bend takes off the sum of the outside legs") == "bend-deduction");
    CHECK(id_of("Clearance between punch and die, both sides together") == "die-clearance");
    CHECK(id_of("throat") == "throat");
    CHECK(id_of("A thing that nobody explains").empty());
    CHECK(id_of("").empty());
}

TEST_CASE("the working that a figure of the search opens is the title of a formula") {
    const std::vector<std::string> titles = titles_of_workings();
    int with_working = 0;
    for (const FigureName& figure : figure_names()) {
        if (*figure.working == '\0')
            continue;
        CAPTURE(figure.name);
        ++with_working;
        CHECK(figure.operations != 0);
        CHECK(std::any_of(titles.begin(), titles.end(), [&](const std::string& title) {
            return title.rfind(figure.working, 0) == 0;
        }));
    }
    CHECK(with_working >= 15);
}
