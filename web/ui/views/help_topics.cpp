#include "ui/views/help_topics.h"

#include <algorithm>

namespace treadle::views {

const char* section_name(HelpSection section) {
    switch (section) {
    case HelpSection::keys:
        return "Keys";
    case HelpSection::terms:
        return "Terms";
    case HelpSection::tasks:
        return "How to";
    case HelpSection::screen:
        return "Screen";
    case HelpSection::hurt:
        return "What can hurt";
    case HelpSection::about:
        return "About";
    }
    return "";
}

std::vector<const HelpTopic*> help_topics() {
    std::vector<const HelpTopic*> list;
    for (const auto topics : {help_tasks(), help_terms(), help_keys()})
        for (const HelpTopic& topic : topics)
            list.push_back(&topic);
    return list;
}

const HelpTopic* find_topic(std::string_view id) {
    for (const auto topics : {help_tasks(), help_terms(), help_keys()})
        for (const HelpTopic& topic : topics)
            if (topic.id == id)
                return &topic;
    return nullptr;
}

namespace {

bool begins_with(std::string_view text, std::string_view start) {
    const auto lower = [](char c) {
        return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    };
    return text.size() >= start.size() &&
           std::equal(start.begin(), start.end(), text.begin(), [&](char a, char b) {
               return lower(a) == lower(b);
           });
}

} // namespace

const HelpTopic* topic_of(std::string_view title) {
    const HelpTopic* best = nullptr;
    std::size_t longest = 0;
    const auto try_phrase = [&](const HelpTopic& term, std::string_view phrase) {
        if (phrase.size() <= longest || !begins_with(title, phrase))
            return;
        best = &term;
        longest = phrase.size();
    };
    for (const HelpTopic& term : help_terms()) {
        try_phrase(term, term.title);
        std::string_view also = term.also;
        while (!also.empty()) {
            const std::size_t end = std::min(also.find("; "), also.size());
            try_phrase(term, also.substr(0, end));
            also.remove_prefix(std::min(also.size(), end + 2));
        }
    }
    return best;
}

} // namespace treadle::views
