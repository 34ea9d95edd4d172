// Help: short tasks, terms, keys, how the screen is set, what can hurt, and what this program is.

#pragma once

#include "ui/views/desk.h"
#include "ui/views/help_topics.h"

namespace treadle::views {

void help_view(Desk& desk, const ui::Rect& rect);

void open_help(Desk& desk, HelpSection section);
/// Goes to one topic and brings it into sight.
void open_topic(Desk& desk, std::string_view id);
/// A key with a question mark that leads to a term. Draws nothing when there is no such topic.
void topic_key(Desk& desk, const ui::Rect& rect, const HelpTopic* topic);

} // namespace treadle::views
