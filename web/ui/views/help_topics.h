// What Help says: terms of the trade, short tasks, keys of the keyboard. Data, in our own words.

#pragma once

#include "ui/views/state.h"

#include <array>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace treadle::views {

enum class HelpSection { keys, terms, tasks, screen, hurt, about };
inline constexpr std::array k_help_sections = {HelpSection::tasks,
                                               HelpSection::terms,
                                               HelpSection::keys,
                                               HelpSection::screen,
                                               HelpSection::hurt,
                                               HelpSection::about};
[[nodiscard]] const char* section_name(HelpSection section);

struct HelpTopic {
    const char* id; ///< unique; a "?" key and the search open it
    HelpSection section;
    const char* title;
    const char* words;
    const char* also = "";                     ///< other words for it, "; " between them
    std::optional<Place> place = std::nullopt; ///< where it is done: a key leads there
};

[[nodiscard]] std::span<const HelpTopic> help_terms();
[[nodiscard]] std::span<const HelpTopic> help_tasks();
[[nodiscard]] std::span<const HelpTopic> help_keys();
/// All of them.
[[nodiscard]] std::vector<const HelpTopic*> help_topics();
/// Null when there is none.
[[nodiscard]] const HelpTopic* find_topic(std::string_view id);
/// The term with whose title or other words this title of a working begins; null when there is
/// none.
[[nodiscard]] const HelpTopic* topic_of(std::string_view title);

} // namespace treadle::views
