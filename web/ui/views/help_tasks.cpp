// Short tasks, and the keys of the keyboard. The page's own; "under X" names a place or a section.

#include "ui/views/help_topics.h"

namespace treadle::views {

namespace {

constexpr HelpTopic
task(const char* id, const char* title, const char* words, Place place, const char* also = "") {
    return {id, HelpSection::tasks, title, words, also, place};
}

constexpr std::array k_tasks = {
    task("start-own",
         "Start a job of your own",
         "New empty job under Jobs begins one with your shop; the job that was open stays kept. "
         "Then "
         "add the first part under Parts.",
         Place::jobs,
         "new begin empty"),
    task("add-part",
         "Add a part",
         "Add a part, under the list. Give it a mark, a shape, its sizes, the grade and how many. "
         "Then add what is done to it: punch, cut, notch, bend, saddle.",
         Place::parts,
         "new piece mark"),
    task("type-sizes",
         "Type a size",
         "As on the tape: 3 1/2, 3-1/2, 3.5, 4' 6-1/2 or 89 mm. A number without a unit counts in "
         "the job's unit, which the key at the top right changes; nothing typed is lost by it.",
         Place::parts,
         "inch fraction feet millimetre unit enter number"),
    task("read-verdict",
         "See why something does not fit",
         "Choose the operation: what was checked stands below it, the deciding check first, and "
         "what would make it fit. Show working has formula, values and source.",
         Place::parts,
         "verdict remedy why"),
    task("fill-missing",
         "Mend a \"cannot be said\"",
         "Choose the operation. Fill in under Shop leads to the station, attachment or tool whose "
         "figure is not known. Take it from the machine's plate or manual.",
         Place::parts,
         "missing not known unknown"),
    task("enter-machine",
         "Enter your machine",
         "The first entries under Shop are the machine, its stations and attachments. What stays "
         "empty is not known, and is then said to be not known.",
         Place::shop,
         "rating plate station ironworker"),
    task("enter-tools",
         "Enter your tools",
         "Punches, Dies, V blocks, Brake punches and Saddle dies have a list each, under Shop. "
         "Add one copies the last one.",
         Place::shop,
         "crib punch die"),
    task("put-in-order",
         "Put parts or operations in another order",
         "Choose one: its keys Move up and Move down change its place, and so do Ctrl and the "
         "arrow keys. Bends stand along the part in their order.",
         Place::parts,
         "move sort reorder up down"),
    task("copy-part",
         "Make one more like it",
         "Copy this part stands at the end of its sizes, Copy this operation at the end of an "
         "operation's.",
         Place::parts,
         "duplicate double again"),
    task("see-order",
         "See the order of work",
         "Set-ups with their tools, settings and steps are under Order. A step leads to its "
         "operation.",
         Place::order,
         "set-up sequence"),
    task("cut-bars",
         "Cut the pieces from bars",
         "Enter the lengths that you have or can buy as Rack under Shop. The plan of cuts is under "
         "Bars; a bar opens to its cuts with the running stop.",
         Place::bars,
         "stock nesting kerf drop"),
    task("see-limits",
         "See what the machine can do",
         "Choose a station and a grade under Limits: the largest thickness for each size of tool.",
         Place::limits,
         "capacity chart"),
    task("trial-strip",
         "Enter a trial strip",
         "Bend a strip of the same metal in the same V and measure it. Trial strips, the last "
         "entry under Shop, turns it into a K that the blanks use.",
         Place::shop,
         "k factor bend test"),
    task("print",
         "Print the worksheet",
         "Choose the paper and Print, under Sheets. Look at the worksheet shows it first.",
         Place::sheets,
         "paper pdf sheet"),
    task("keep-job",
         "Keep a job, or take it to another device",
         "Every job is kept in this browser after each change; Jobs lists them, with a trash and "
         "states to go back to. Save file makes a file of job and shop; Open file reads it, here "
         "or elsewhere, and replaces nothing.",
         Place::jobs,
         "save open export import backup"),
};

constexpr HelpTopic
key(const char* id, const char* title, const char* words, const char* also = "") {
    return {id, HelpSection::keys, title, words, also, std::nullopt};
}

constexpr std::array k_keys = {
    key("key-find", "Ctrl + K", "Find anything. Cmd + K on a Mac.", "search shortcut"),
    key("key-undo", "Ctrl + Z", "Undo the last change.", "shortcut"),
    key("key-redo", "Ctrl + Y", "Redo. Ctrl + Shift + Z does the same.", "shortcut"),
    key("key-tab", "Tab", "To the next key or field. Shift + Tab goes back.", "shortcut focus"),
    key("key-enter",
        "Enter or Space",
        "Presses the key that has the ring. Enter in a field takes what was typed; in the search "
        "it opens the first line.",
        "shortcut"),
    key("key-escape",
        "Escape",
        "In a field brings back what was there. Closes the search.",
        "shortcut"),
    key("key-arrows", "Up and Down", "Move among the lines of the search.", "shortcut arrow"),
    key("key-move",
        "Ctrl + Up, Ctrl + Down",
        "Move the part or the operation whose line has the ring to another place in its list.",
        "shortcut arrow order"),
};

} // namespace

std::span<const HelpTopic> help_tasks() { return k_tasks; }
std::span<const HelpTopic> help_keys() { return k_keys; }

} // namespace treadle::views
